//! The species whose name is nearest to one that is not known.

use crate::species::{SPECIES, Species};

/// The built-in key nearest to a name that is not known.
pub fn nearest(name: &str) -> &'static str {
    nearest_of(SPECIES.iter(), name)
}

/// The key, among these species, nearest to a name by key or by Latin name; the first of several, none of none.
pub(crate) fn nearest_of(species: impl Iterator<Item = &'static Species>, name: &str) -> &'static str {
    let wanted = name.to_lowercase();
    let names = species.enumerate().flat_map(|(at, species)| {
        let latin = species.latin.to_lowercase();
        [species.key.to_owned(), latin].map(|name| (letters_apart(&wanted, &name), at, species.key, name))
    });
    let mut names: Vec<(usize, usize, &str, String)> = names.collect();
    // The likeliest first: once one is found, a name with more other letters than that need not be compared letter by letter.
    names.sort_unstable_by_key(|(least, at, ..)| (*least, *at));
    let mut found = (usize::MAX, usize::MAX, "");
    for (least, at, key, name) in &names {
        if (*least, *at) < (found.0, found.1) {
            let apart = strsim::osa_distance(&wanted, name);
            found = if (apart, *at) < (found.0, found.1) { (apart, *at, *key) } else { found };
        }
    }
    found.2
}

/// How many letters one name has that the other has not, whatever their order: no fewer steps lead from one to the other.
fn letters_apart(one: &str, other: &str) -> usize {
    let mut counts = [0_i16; 256];
    one.bytes().for_each(|letter| counts[usize::from(letter)] += 1);
    other.bytes().for_each(|letter| counts[usize::from(letter)] -= 1);
    let (more, fewer) =
        counts.iter().fold((0_i16, 0_i16), |(more, fewer), n| (more + n.max(&0), fewer - n.min(&0)));
    // Letters beyond ASCII are several bytes; a step may change four at once.
    let each = if one.is_ascii() && other.is_ascii() { 1 } else { 4 };
    usize::from(more.max(fewer).unsigned_abs()).div_ceil(each)
}

#[cfg(test)]
mod tests {
    use super::{SPECIES, letters_apart, nearest};

    #[test]
    fn a_slip_of_the_pen_finds_the_species() {
        assert_eq!(nearest("Emis orbicularis"), "emys-orbicularis");
        assert_eq!(nearest("mauremys-reevesi"), "mauremys-reevesii");
    }

    #[test]
    fn the_letters_never_rule_out_the_nearest() {
        for name in ["Emis", "caiman crocodile", "tortue d'Hermann à l'eau", ""] {
            let wanted = name.to_lowercase();
            for species in SPECIES {
                let steps = strsim::osa_distance(&wanted, species.key);
                assert!(letters_apart(&wanted, species.key) <= steps, "{name}, {}", species.key);
            }
        }
    }
}
