//! Finding units: by spelling, the nearest to a misspelling, and the trade's usual one for a dimension.

use std::sync::LazyLock;

use crate::spelling::Spelling;
use crate::table::refused::{REFUSED, Refused};
use crate::{Dimension, System, UNITS, Unit};

/// All spellings in their one form, sorted; made once, searched by halves.
static BY_SPELLING: LazyLock<Vec<(Vec<u8>, &'static Unit)>> = LazyLock::new(|| {
    let mut all: Vec<_> = UNITS
        .iter()
        .flat_map(|unit| {
            std::iter::once(&unit.symbol).chain(unit.spellings).map(move |spelling| (*spelling, unit))
        })
        .filter_map(|(spelling, unit)| Some((Spelling::of(spelling)?.as_bytes().to_vec(), unit)))
        .collect();
    all.sort_by(|a, b| a.0.cmp(&b.0));
    all
});

/// The unit with this spelling; the empty one is that of a bare number. `None` for unknown and for refused spellings.
pub fn unit(spelling: &str) -> Option<&'static Unit> {
    // Most are typed in their one form already.
    find(spelling.as_bytes()).or_else(|| find(Spelling::of(spelling)?.as_bytes()))
}

/// Slots of the table of spellings; a power of two, several times as many as there are spellings.
const SLOTS: usize = 2048;

/// The positions in [`BY_SPELLING`] counted from 1, each in its slot or, where that is taken, in the next free one.
static SLOTTED: LazyLock<Vec<u16>> = LazyLock::new(|| {
    let mut slots = vec![0_u16; SLOTS];
    for (at, (form, _)) in BY_SPELLING.iter().enumerate() {
        let mut slot = slot_of(form);
        while slots[slot] != 0 {
            slot = (slot + 1) % SLOTS;
        }
        slots[slot] = at as u16 + 1;
    }
    slots
});

fn slot_of(form: &[u8]) -> usize {
    let mix = |sum: u32, byte: &u8| (sum ^ u32::from(*byte)).wrapping_mul(0x0100_0193);
    let sum = form.iter().fold(0x811c_9dc5, mix);
    (sum ^ (sum >> 15)) as usize % SLOTS
}

/// The unit whose spelling has this form.
pub(crate) fn find(form: &[u8]) -> Option<&'static Unit> {
    let mut slot = slot_of(form);
    loop {
        let at = usize::from(SLOTTED[slot]).checked_sub(1)?;
        let (known, unit) = &BY_SPELLING[at];
        if known == form {
            return Some(unit);
        }
        slot = (slot + 1) % SLOTS;
    }
}

/// The refused spellings in their one form.
static REFUSED_FORMS: LazyLock<Vec<(Vec<u8>, &'static Refused)>> = LazyLock::new(|| {
    REFUSED
        .iter()
        .filter_map(|entry| Some((Spelling::of(entry.spelling)?.as_bytes().to_vec(), entry)))
        .collect()
});

/// The entry for a spelling with more than one reading.
pub(crate) fn refused(spelling: &str) -> Option<&'static Refused> {
    let form = Spelling::of(spelling)?;
    REFUSED_FORMS.iter().find(|(known, _)| known == form.as_bytes()).map(|(_, entry)| *entry)
}

/// The known symbol nearest to a spelling, those of the expected dimension first among equals; `None` if none is near.
pub(crate) fn nearest(spelling: &str, expect: Dimension) -> Option<&'static str> {
    let allowed = (spelling.chars().count() / 3).max(1);
    let steps_to = |unit: &'static Unit| {
        // Lengths further apart than the steps allowed need no comparing.
        if unit.symbol.is_empty() || unit.symbol.len().abs_diff(spelling.len()) > allowed + 2 {
            return None;
        }
        let same_but_case = unit.symbol.eq_ignore_ascii_case(spelling);
        let steps = if same_but_case { 0 } else { strsim::osa_distance(unit.symbol, spelling) };
        (steps <= allowed).then_some((steps, unit.dimension != expect, unit.symbol))
    };
    let (steps, elsewhere, symbol) =
        UNITS.iter().filter_map(steps_to).min_by_key(|found| (found.0, found.1))?;
    // A short symbol is one step from nearly everything: then only the expected dimension is worth offering.
    let near = steps <= spelling.chars().count() / 3 || !elsewhere;
    near.then_some(symbol)
}

/// What the trade usually writes for a dimension, metric and US. The rest take the first of the table.
const USUAL: &[(Dimension, &str, &str)] = &[
    (Dimension::LENGTH, "m", "ft"),
    (Dimension::AREA, "m2", "ft2"),
    (Dimension::VOLUME, "m3", "gal(US)"),
    (Dimension::FLOW, "m3/h", "gal(US)/min"),
    (Dimension::TEMPERATURE, "°C", "°F"),
    (Dimension::VELOCITY, "m/s", "ft/s"),
    (Dimension::MASS, "kg", "lb"),
    (Dimension::MASS_FLOW, "g/d", "lb/d"),
    (Dimension::TIME, "h", "h"),
    (Dimension::FREQUENCY, "/h", "/h"),
    (Dimension::PRESSURE, "kPa", "psi"),
    (Dimension::ENERGY, "kWh", "kWh"),
    (Dimension::POWER, "W", "W"),
    (Dimension::KINEMATIC_VISCOSITY, "m2/s", "ft2/s"),
    (Dimension::DENSITY, "kg/m3", "lb/ft3"),
];

/// The trade's usual unit of a dimension; where the table holds none, the bare number, whose value then is in SI.
pub fn unit_for(dimension: Dimension, system: System) -> &'static Unit {
    let usual = USUAL.iter().find(|(of, _, _)| *of == dimension);
    let symbol = usual.map(|(_, metric, us)| if system == System::Us { *us } else { *metric });
    let of_dimension = || UNITS.iter().filter(|unit| unit.dimension == dimension);
    symbol
        .and_then(unit)
        .or_else(|| of_dimension().find(|unit| unit.system == system))
        .or_else(|| of_dimension().next())
        .or_else(|| unit(""))
        .unwrap_or(&UNITS[0])
}

/// The unit for a difference of temperatures: K, in the US "°F difference".
///
/// Not °C or °F: "2 °C" for a rise of two degrees, read back as a temperature, would be 275.15 K.
pub fn difference_unit(system: System) -> &'static Unit {
    let symbol = if system == System::Us { "°F difference" } else { "K" };
    unit(symbol).unwrap_or(&UNITS[0])
}

#[cfg(test)]
mod tests {
    use super::{BY_SPELLING, difference_unit, nearest, refused, unit, unit_for};
    use crate::table::refused::REFUSED;
    use crate::{Dimension, System, UNITS};

    #[test]
    fn every_spelling_leads_to_one_unit() {
        for pair in BY_SPELLING.windows(2) {
            let same = pair[0].0 == pair[1].0 && pair[0].1 != pair[1].1;
            assert!(!same, "{} and {}", pair[0].1.symbol, pair[1].1.symbol);
        }
        let spellings: usize = UNITS.iter().map(|unit| 1 + unit.spellings.len()).sum();
        assert_eq!(BY_SPELLING.len(), spellings, "a spelling is too long for its form");
        assert!(2 * spellings < super::SLOTS, "the table of spellings fills up: double it");
    }

    #[test]
    fn refused_spellings_are_no_units_and_what_they_offer_is() {
        for entry in REFUSED {
            assert!(unit(entry.spelling).is_none(), "{}", entry.spelling);
            assert!(refused(entry.spelling).is_some());
            assert!(entry.instead.iter().all(|offer| unit(offer).is_some()), "{}", entry.spelling);
        }
    }

    #[test]
    fn usual_units_have_the_dimension_asked_for() {
        for unit in UNITS {
            for system in [System::Metric, System::Us, System::Neutral] {
                assert_eq!(unit_for(unit.dimension, system).dimension, unit.dimension);
            }
        }
        assert_eq!(unit_for(Dimension::VOLUME, System::Us).symbol, "gal(US)");
        assert_eq!(unit_for(Dimension::LINE_LOAD, System::Us).symbol, "lbf/ft");
        assert_eq!(unit_for(Dimension::NUMBER, System::Us).symbol, "");
        assert_eq!(difference_unit(System::Us).symbol, "°F difference");
        assert_eq!(difference_unit(System::Metric).symbol, "K");
    }

    #[test]
    fn misspellings_find_their_neighbour() {
        assert_eq!(nearest("M3/H", Dimension::FLOW), Some("m3/h"));
        assert_eq!(nearest("Kpa", Dimension::PRESSURE), Some("kPa"));
        assert_eq!(nearest("CM", Dimension::LENGTH), Some("cm"));
        assert_eq!(nearest("furlong", Dimension::LENGTH), None);
    }
}
