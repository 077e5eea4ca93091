//! How species get about in water: those that walk on the bed have to reach the air standing.

use haulout_quantity::Basis::{self, Recalled, Reported};

use crate::species::Species;
use crate::value::Value;

/// How one species gets about in water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gait {
    /// Key of the species.
    pub key: &'static str,
    /// Walks on the bed rather than swims: yes is 1, no is 0.
    pub walks_the_bed: Value,
}

const KEEPERS: &str = "keepers' usage, from memory";

const fn gait(key: &'static str, walks: bool, basis: Basis, source: &'static str) -> Gait {
    let value = if walks { 1.0 } else { 0.0 };
    Gait { key, walks_the_bed: Value::number("walks on the bed", value, basis, source) }
}

/// What the program knows of it, in the order of the species.
pub static GAITS: &[Gait] = &[
    gait(
        "emys-orbicularis",
        false,
        Reported,
        "htvoe.at, care sheet of a society of turtle keepers: swims and basks",
    ),
    gait("mauremys-reevesii", false, Recalled, KEEPERS),
    gait("trachemys-scripta", false, Recalled, KEEPERS),
    gait("chrysemys-picta", false, Recalled, KEEPERS),
    gait("pseudemys-concinna", false, Recalled, KEEPERS),
    gait("graptemys-pseudogeographica", false, Recalled, KEEPERS),
    gait("sternotherus-odoratus", true, Recalled, KEEPERS),
    gait("pelodiscus-sinensis", false, Recalled, KEEPERS),
    gait("chelydra-serpentina", true, Recalled, KEEPERS),
    gait("cuora-amboinensis", false, Recalled, KEEPERS),
    gait("chelodina-longicollis", false, Recalled, KEEPERS),
    gait("physignathus-cocincinus", false, Recalled, KEEPERS),
    gait("paleosuchus-palpebrosus", false, Recalled, KEEPERS),
    gait("nerodia-fasciata", false, Recalled, KEEPERS),
];

impl Species {
    /// How it gets about in water, where somebody has written it down.
    pub fn gait(&self) -> Option<&'static Gait> {
        let own = self.own.and_then(|own| own.gait.as_ref());
        own.or_else(|| GAITS.iter().find(|g| g.key == self.key))
    }
}

#[cfg(test)]
mod tests {
    use super::GAITS;
    use crate::find;

    #[test]
    fn every_gait_belongs_to_a_species() {
        for gait in GAITS {
            let species = find(gait.key).expect("a gait belongs to a species of the register");
            assert_eq!(species.gait(), Some(gait), "{} stands twice", gait.key);
        }
    }
}
