//! The register of one run: the built-in tables with what house annexes add to them and put in the place of their values.

use std::sync::Mutex;

use crate::authority::{AUTHORITIES, Authority, Matter};
use crate::nearest::nearest_of;
use crate::species::{SPECIES, Species, TRAITS};
use crate::value::Value;

/// Species and authorities as one run sees them. What annexes add lives to the end of the process, because lines of the
/// sheet point at it; two runs with different annexes have different registers and do not see each other's.
#[derive(Debug, Default)]
pub struct Register {
    species: Vec<&'static Species>,
    authorities: Vec<&'static Authority>,
    /// Values by address, for they have no names of their own, with the position of the annex each came from.
    came: Vec<(usize, u16)>,
    /// Names that were not known, with the key nearest to each: designs of one house share them.
    strangers: Mutex<Vec<(String, &'static str)>>,
}

/// Strangers that are remembered at most.
const STRANGERS: usize = 64;

impl Clone for Register {
    fn clone(&self) -> Self {
        let Register { species, authorities, came, .. } = self;
        let (species, authorities, came) = (species.clone(), authorities.clone(), came.clone());
        Register { species, authorities, came, strangers: Mutex::default() }
    }
}

fn address(value: &'static Value) -> usize {
    std::ptr::from_ref(value) as usize
}

impl Register {
    /// The species of a key or a Latin name; that of an annex before the built-in one. Upper and lower case are the same.
    pub fn find(&self, name: &str) -> Option<&'static Species> {
        let own = self.species.iter().copied();
        own.chain(SPECIES).find(|s| s.key.eq_ignore_ascii_case(name) || s.latin.eq_ignore_ascii_case(name))
    }

    /// The key nearest to a name that is not known.
    pub fn nearest(&self, name: &str) -> &'static str {
        let of =
            |known: &Vec<(String, &'static str)>| known.iter().find(|(n, _)| n == name).map(|(_, key)| *key);
        // Nothing panics while it is locked; if it did, what is remembered would still be right.
        if let Some(key) = self.strangers.lock().ok().and_then(|known| of(&known)) {
            return key;
        }
        let key = nearest_of(self.species().into_iter(), name);
        if let Ok(mut known) = self.strangers.lock()
            && known.len() < STRANGERS
        {
            known.push((name.to_owned(), key));
        }
        key
    }

    /// All species: the built-in ones, each as the annexes left it, then those that annexes added.
    pub fn species(&self) -> Vec<&'static Species> {
        let own = |key: &str| self.species.iter().copied().find(|s| s.key == key);
        let built_in = SPECIES.iter().map(|s| own(s.key).unwrap_or(s));
        let added = self.species.iter().copied().filter(|s| SPECIES.iter().all(|b| b.key != s.key));
        built_in.chain(added).collect()
    }

    /// All authorities, built-in ones first, so that their positions stay what they are.
    pub fn authorities(&self) -> impl Iterator<Item = &'static Authority> + '_ {
        AUTHORITIES.iter().chain(self.authorities.iter().copied())
    }

    /// The authority at a position.
    pub fn authority(&self, at: u16) -> Option<&'static Authority> {
        self.authorities().nth(usize::from(at))
    }

    /// The position of an authority by its matter and id.
    pub fn position(&self, matter: Matter, id: &str) -> Option<u16> {
        self.authorities().position(|a| a.matter == matter && a.id == id).map(|at| at as u16)
    }

    /// Whether a position is that of an authority an annex added.
    pub fn is_added(&self, at: u16) -> bool {
        usize::from(at) >= AUTHORITIES.len()
    }

    /// The position of the annex a value came from; none when it is built in.
    pub fn annex_of(&self, value: &'static Value) -> Option<u16> {
        let wanted = address(value);
        self.came.iter().find(|(known, _)| *known == wanted).map(|(_, annex)| *annex)
    }

    /// Adds an authority.
    pub fn add_authority(&mut self, authority: Authority) {
        self.authorities.push(Box::leak(Box::new(authority)));
    }

    /// Puts a species into the register, in the place of the one with its key, with values an annex gives by the names
    /// of [`TRAITS`]; what it does not give stays as `base` has it.
    ///
    /// # Errors
    /// The names of values that are missing beside those given: the habits of a species are known together or not at all.
    pub fn put_species(
        &mut self,
        base: &Species,
        values: &[(&'static str, Value)],
        annex: u16,
    ) -> Result<&'static Species, Vec<&'static str>> {
        let species: &'static Species = Box::leak(Box::new(base.with(values)?));
        for (name, _) in values {
            let found = TRAITS.iter().find(|t| t.name == *name).and_then(|t| (t.of)(species));
            self.came.extend(found.map(|value| (address(value), annex)));
        }
        self.species.retain(|s| s.key != species.key);
        self.species.push(species);
        self.strangers = Mutex::default();
        Ok(species)
    }

    /// Whether nothing differs from the built-in tables.
    pub fn is_empty(&self) -> bool {
        self.species.is_empty() && self.authorities.is_empty()
    }
}

#[cfg(test)]
mod tests {
    use haulout_quantity::Basis;

    use super::Register;
    use crate::{SPECIES, Species, TRAITS, Value, find};

    const SOURCE: &str = "studbook of the house, 2025";

    fn given(name: &str) -> Value {
        let sample = SPECIES.iter().find_map(|s| {
            let known = TRAITS.iter().find(|t| t.name == name)?;
            (known.of)(s)
        });
        Value { value: 1.0, source: SOURCE, ..*sample.expect("every trait is known of some species") }
    }

    /// Every trait can be given by an annex, alone or with those it is known together with.
    #[test]
    fn every_trait_can_be_given() {
        let new = Species::new("testudo-nova", "Testudo nova", "new turtle");
        for wanted in TRAITS {
            let mut values = vec![(wanted.name, given(wanted.name))];
            let mut register = Register::default();
            if let Err(missing) = register.put_species(&new, &values, 0) {
                values.extend(missing.into_iter().map(|name| (name, given(name))));
            }
            let species = register.put_species(&new, &values, 0).expect("nothing is missing now");
            let value = (wanted.of)(species).unwrap_or_else(|| unreachable!("{} was given", wanted.name));
            assert_eq!((value.source, register.annex_of(value)), (SOURCE, Some(0)), "{}", wanted.name);
        }
    }

    #[test]
    fn one_value_is_put_in_place_and_the_others_stay() {
        let base = find("emys-orbicularis").expect("it is built in");
        let mut register = Register::default();
        let value = Value::celsius("highest water temperature", 26.0, Basis::Reported, SOURCE);
        register.put_species(base, &[("water-high", value)], 3).expect("one value is enough");
        let species = register.find("EMYS ORBICULARIS").expect("it is there");
        assert_eq!(species.water_high.map(|v| v.value), Some(299.15));
        assert_eq!((species.water_low, species.habit()), (base.water_low, base.habit()));
        assert_eq!(register.species().len(), SPECIES.len());
        assert!(Register::default().find("emys-orbicularis") == Some(base), "another run does not see it");
    }
}
