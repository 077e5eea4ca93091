//! How species bask: whether they do, how warm the surface wants to be, how much ultraviolet, and what they weigh.

use haulout_quantity::Basis::{self, CommonPractice, Published, Recalled, Reported};

use crate::species::Species;
use crate::value::Value;

/// How one species basks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bask {
    /// Key of the species.
    pub key: &'static str,
    /// Hauls out to bask: 1, or 0 for one that seldom leaves the water for it.
    pub basks: Value,
    /// Least temperature of the basking place.
    pub surface_low: Option<Value>,
    /// Greatest temperature of the basking place.
    pub surface_high: Option<Value>,
    /// Least UV index at the back: the lower end of the averages of its zone.
    pub uv_low: Option<Value>,
    /// Greatest UV index at the back: the upper end of the maxima of its zone.
    pub uv_high: Option<Value>,
    /// The greatest mass on record.
    pub mass: Option<Value>,
}

const KEEPERS: &str = "keepers' usage, from memory";
const AT_HEATER: &str =
    "Austria, 2. Tierhaltungsverordnung, BGBl. II 486/2004, Annex 3 (under the radiant heater)";
const AT_SPOT: &str = "upper end: Austria, 2. Tierhaltungsverordnung, BGBl. II 486/2004, Annex 3 (spot to 35 °C; for Intellagama as a secondary page quotes it); lower end from keepers' usage";
const CZ: &str = "Czech decree 451/2021 Sb., § 8(5): heated dry place of 35 to 50 °C for crocodilians";
const CZ_SMALL: &str =
    "Czech decree 451/2021 Sb., § 8(5): heated dry place of 25 to 27 °C for Osteolaemus and Paleosuchus";
const SURFACE: &str =
    "keepers' practice for turtles: 30 to 38 °C at the surface; printed advice runs from 29 to 45 °C";
const MONITORS: &str = "keepers' practice for monitors: 45 to 60 °C at the surface; it conflicts with the Austrian ordinance (BGBl. II 486/2004, Annex 3), which has a spot of 35 °C at most";
const REPTTRAITS: &str = "Oskyrko et al. 2024, ReptTraits, Sci. Data 11:243 (maximum body mass)";
const ZONES_BY_MEMORY: &str = "zones of Ferguson et al. 2010, Zoo Biol. 29, as quoted by secondary pages; the zone of the species recalled from Baines et al. 2016, J. Zoo Aquar. Res. 4(1):42-63";

/// The UV zones of Ferguson et al. 2010: lower end of the average, upper end of the maximum UV index.
const ZONES: [(f64, f64); 4] = [(0.0, 1.4), (0.7, 3.0), (1.0, 7.4), (2.6, 9.5)];

const fn row(key: &'static str, basks: f64) -> Bask {
    Bask {
        key,
        basks: Value::number("basks", basks, Recalled, KEEPERS),
        surface_low: None,
        surface_high: None,
        uv_low: None,
        uv_high: None,
        mass: None,
    }
}

const fn basks(key: &'static str) -> Bask {
    row(key, 1.0)
}

/// Seldom hauls out to bask; it still climbs on what is there.
const fn stays_in(key: &'static str) -> Bask {
    row(key, 0.0)
}

impl Bask {
    const fn warm(mut self, low: f64, high: f64, basis: Basis, source: &'static str) -> Self {
        self.surface_low = Some(Value::celsius("least temperature of the basking place", low, basis, source));
        self.surface_high =
            Some(Value::celsius("greatest temperature of the basking place", high, basis, source));
        self
    }

    /// Where the zone is between two, the band reaches from the lower one's low end to the upper one's high end.
    const fn zone(mut self, first: usize, last: usize, basis: Basis, source: &'static str) -> Self {
        let (low, high) = (ZONES[first - 1].0, ZONES[last - 1].1);
        self.uv_low = Some(Value::number("least UV index at the back", low, basis, source));
        self.uv_high = Some(Value::number("greatest UV index at the back", high, basis, source));
        self
    }

    const fn mass(mut self, kilograms: f64, source: &'static str) -> Self {
        self.mass = Some(Value::kilograms("greatest body mass", kilograms, Reported, source));
        self
    }
}

/// The baskers and those that are not, in the order of the species.
pub static BASKERS: &[Bask] = &[
    basks("emys-orbicularis").warm(35.0, 45.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(1.599, REPTTRAITS),
    basks("mauremys-reevesii").warm(35.0, 40.0, Published, AT_HEATER).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(3.767, REPTTRAITS),
    basks("trachemys-scripta").warm(35.0, 40.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(2.731, REPTTRAITS),
    basks("chrysemys-picta").warm(35.0, 40.0, Published, AT_HEATER).zone(3, 3, Reported, "zones of Ferguson et al. 2010, Zoo Biol. 29, as given for painted turtles in Animal Scene, January 2022").mass(2.006, REPTTRAITS),
    basks("pseudemys-concinna").warm(25.0, 40.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(8.771, REPTTRAITS),
    basks("graptemys-pseudogeographica").warm(25.0, 40.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(2.473, REPTTRAITS),
    stays_in("sternotherus-odoratus").warm(35.0, 40.0, Published, AT_HEATER).zone(1, 2, Recalled, ZONES_BY_MEMORY).mass(0.399, REPTTRAITS),
    basks("pelodiscus-sinensis").warm(25.0, 40.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(4.329, REPTTRAITS),
    stays_in("chelydra-serpentina").warm(35.0, 45.0, Published, AT_HEATER).zone(1, 2, Recalled, ZONES_BY_MEMORY).mass(35.0, REPTTRAITS),
    basks("cuora-amboinensis").warm(30.0, 38.0, CommonPractice, SURFACE).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(2.261, REPTTRAITS),
    basks("chelodina-longicollis").warm(30.0, 38.0, CommonPractice, SURFACE).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(1.293, REPTTRAITS),
    basks("physignathus-cocincinus").warm(30.0, 35.0, Reported, AT_SPOT).zone(2, 3, Recalled, ZONES_BY_MEMORY),
    basks("paleosuchus-palpebrosus").warm(25.0, 27.0, Published, CZ_SMALL).zone(1, 2, Recalled, ZONES_BY_MEMORY).mass(19.999, REPTTRAITS),
    basks("nerodia-fasciata").warm(28.0, 35.0, Recalled, KEEPERS).zone(2, 2, Recalled, ZONES_BY_MEMORY).mass(1.432, "Amniote life-history database (large adults)"),
    basks("mauremys-sinensis").warm(30.0, 38.0, CommonPractice, SURFACE).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(2.833, REPTTRAITS),
    basks("mauremys-leprosa").warm(30.0, 38.0, CommonPractice, SURFACE).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(2.261, REPTTRAITS),
    basks("pseudemys-nelsoni").warm(25.0, 40.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(6.266, REPTTRAITS),
    basks("graptemys-ouachitensis").warm(25.0, 40.0, Published, AT_HEATER).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(1.795, REPTTRAITS),
    basks("malaclemys-terrapin").warm(30.0, 38.0, CommonPractice, SURFACE).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(1.599, REPTTRAITS),
    basks("siebenrockiella-crassicollis").warm(30.0, 38.0, CommonPractice, SURFACE).mass(1.262, REPTTRAITS),
    basks("apalone-spinifera").warm(30.0, 38.0, CommonPractice, SURFACE).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(14.274, REPTTRAITS),
    basks("podocnemis-unifilis").warm(30.0, 38.0, CommonPractice, SURFACE).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(13.585, REPTTRAITS),
    stays_in("chelodina-expansa").warm(30.0, 38.0, CommonPractice, SURFACE).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(9.45, REPTTRAITS),
    basks("varanus-salvator").warm(45.0, 60.0, CommonPractice, MONITORS).zone(2, 3, Recalled, ZONES_BY_MEMORY).mass(8.6, "Amniote life-history database (male)"),
    basks("varanus-mertensi").warm(45.0, 60.0, CommonPractice, MONITORS).zone(2, 3, Recalled, ZONES_BY_MEMORY),
    basks("basiliscus-plumifrons").warm(30.0, 35.0, Reported, AT_SPOT).zone(2, 3, Recalled, ZONES_BY_MEMORY),
    basks("hydrosaurus-amboinensis").warm(30.0, 35.0, Reported, AT_SPOT).zone(2, 3, Recalled, ZONES_BY_MEMORY),
    basks("intellagama-lesueurii").warm(30.0, 35.0, Reported, AT_SPOT).zone(3, 3, Recalled, ZONES_BY_MEMORY),
    basks("shinisaurus-crocodilurus").warm(26.0, 30.0, Recalled, KEEPERS).zone(1, 2, Recalled, ZONES_BY_MEMORY),
    basks("caiman-crocodilus").warm(35.0, 50.0, Published, CZ).zone(3, 3, Recalled, ZONES_BY_MEMORY).mass(73.381, REPTTRAITS),
    basks("natrix-tessellata").warm(28.0, 35.0, Recalled, KEEPERS).zone(2, 2, Recalled, ZONES_BY_MEMORY),
];

impl Species {
    /// How it basks, where somebody has written it down.
    pub fn bask(&self) -> Option<&'static Bask> {
        let own = self.own.and_then(|own| own.bask.as_ref());
        own.or_else(|| BASKERS.iter().find(|b| b.key == self.key))
    }
}

#[cfg(test)]
mod tests {
    use super::BASKERS;
    use crate::{SPECIES, find};

    #[test]
    fn every_species_has_one_row_in_order_and_every_band_two_ends() {
        let keys: Vec<&str> = BASKERS.iter().map(|b| b.key).collect();
        let species: Vec<&str> = SPECIES.iter().map(|s| s.key).collect();
        assert_eq!(keys, species);
        for bask in BASKERS {
            assert_eq!(find(bask.key).and_then(|s| s.bask()), Some(bask));
            let bands = [(bask.surface_low, bask.surface_high), (bask.uv_low, bask.uv_high)];
            for (low, high) in bands {
                assert_eq!(low.is_some(), high.is_some(), "{}", bask.key);
                assert!(low.zip(high).is_none_or(|(l, h)| l.value < h.value), "{}", bask.key);
            }
        }
    }

    /// A turtle between zones 2 and 3: 0.7 from the averages of the lower, 7.4 from the maxima of the upper.
    #[test]
    fn a_zone_between_two() {
        let reeves = find("mauremys-reevesii").and_then(|s| s.bask()).expect("it is in the register");
        assert_eq!(reeves.uv_low.map(|v| v.value), Some(0.7));
        assert_eq!(reeves.uv_high.map(|v| v.value), Some(7.4));
    }

    /// A slip in a table shows as a turtle of cork or of lead: mass over the cube of the shell length lies between 0.05
    /// and 0.5 g/cm3 for measured adults of most kinds; greatest masses and lengths come from different animals, so the
    /// lower end is wider here.
    #[test]
    fn masses_and_lengths_belong_together() {
        use crate::Build;
        let turtles = SPECIES.iter().filter(|s| s.habit().is_some_and(|h| h.build == Build::Turtle));
        for species in turtles {
            let length = species.body_length.map_or(0.0, |v| v.value);
            let Some(mass) = species.bask().and_then(|b| b.mass) else { continue };
            let density = mass.value / length.powi(3) / 1000.0;
            assert!((0.02..0.5).contains(&density), "{}: {density}", species.key);
        }
    }
}
