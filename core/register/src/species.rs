//! Species by key and Latin name. What nobody has published is left out, not guessed.

use haulout_quantity::Basis::{Published, Recalled, Reported};

use crate::given::Own;
use crate::value::Value;

/// A species and what is known of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Species {
    /// The key a design uses.
    pub key: &'static str,
    /// Latin name.
    pub latin: &'static str,
    /// Common name, for printing.
    pub common: &'static str,
    /// Full-grown body length: straight carapace length of turtles, snout to vent of others.
    pub body_length: Option<Value>,
    /// Lowest water temperature in the warm season.
    pub water_low: Option<Value>,
    /// Highest water temperature in the warm season.
    pub water_high: Option<Value>,
    /// What a house annex gave in the place of rows of the other tables.
    pub own: Option<&'static Own>,
}

/// A value every species may have, by the name scripts and pages use.
pub struct Trait {
    /// Its name.
    pub name: &'static str,
    /// Out of a species.
    pub of: fn(&'static Species) -> Option<&'static Value>,
}

/// All the traits there are.
pub const TRAITS: &[Trait] = &[
    Trait { name: "body-length", of: |s| s.body_length.as_ref() },
    Trait { name: "water-low", of: |s| s.water_low.as_ref() },
    Trait { name: "water-high", of: |s| s.water_high.as_ref() },
    Trait { name: "body", of: |s| s.habit().map(|h| &h.body) },
    Trait { name: "climbs", of: |s| s.habit().map(|h| &h.climbs) },
    Trait { name: "jumps", of: |s| s.habit().map(|h| &h.jumps) },
    Trait { name: "digs", of: |s| s.habit().map(|h| &h.digs) },
    Trait { name: "hazardous", of: |s| s.habit().map(|h| &h.hazardous) },
    Trait { name: "basks", of: |s| s.bask().map(|b| &b.basks) },
    Trait { name: "bask-low", of: |s| s.bask().and_then(|b| b.surface_low.as_ref()) },
    Trait { name: "bask-high", of: |s| s.bask().and_then(|b| b.surface_high.as_ref()) },
    Trait { name: "uv-low", of: |s| s.bask().and_then(|b| b.uv_low.as_ref()) },
    Trait { name: "uv-high", of: |s| s.bask().and_then(|b| b.uv_high.as_ref()) },
    Trait { name: "mass", of: |s| s.bask().and_then(|b| b.mass.as_ref()) },
    Trait { name: "walks-the-bed", of: |s| s.gait().map(|g| &g.walks_the_bed) },
];

const AT: &str = "Austria, 2. Tierhaltungsverordnung, BGBl. II 486/2004, Annex 3 (water temperature, summer)";
const REPTTRAITS: &str =
    "Oskyrko et al. 2024, ReptTraits, Sci. Data 11:243 (maximum straight carapace length)";
const GEIGER: &str = "Jaffe, Slater & Alfaro 2011, Biol. Lett. 7:558, as shipped with the R package geiger (maximum carapace length)";

const fn water(low: f64, high: f64) -> (Option<Value>, Option<Value>) {
    (
        Some(Value::celsius("lowest water temperature", low, Published, AT)),
        Some(Value::celsius("highest water temperature", high, Published, AT)),
    )
}

const fn turtle(
    key: &'static str,
    latin: &'static str,
    common: &'static str,
    length: Value,
    band: (Option<Value>, Option<Value>),
) -> Species {
    Species {
        body_length: Some(length),
        water_low: band.0,
        water_high: band.1,
        ..Species::new(key, latin, common)
    }
}

const fn carapace(metres: f64, source: &'static str) -> Value {
    Value::length("carapace length, full-grown", metres, Reported, source)
}

const fn vent(metres: f64, source: &'static str) -> Value {
    Value::length("snout to vent, full-grown", metres, Reported, source)
}

/// A species without a shell, its water not known yet.
const fn long(
    key: &'static str,
    latin: &'static str,
    common: &'static str,
    body_length: Option<Value>,
) -> Species {
    Species { body_length, ..Species::new(key, latin, common) }
}

/// The species the program knows.
pub static SPECIES: &[Species] = &[
    turtle(
        "emys-orbicularis",
        "Emys orbicularis",
        "European pond turtle",
        carapace(0.20, GEIGER),
        water(20.0, 28.0),
    ),
    turtle(
        "mauremys-reevesii",
        "Mauremys reevesii",
        "Reeves' turtle",
        carapace(0.236, GEIGER),
        water(22.0, 28.0),
    ),
    turtle(
        "trachemys-scripta",
        "Trachemys scripta",
        "slider",
        carapace(0.264, REPTTRAITS),
        water(22.0, 30.0),
    ),
    turtle(
        "chrysemys-picta",
        "Chrysemys picta",
        "painted turtle",
        carapace(0.25, REPTTRAITS),
        water(22.0, 28.0),
    ),
    turtle(
        "pseudemys-concinna",
        "Pseudemys concinna",
        "river cooter",
        carapace(0.33, REPTTRAITS),
        water(24.0, 30.0),
    ),
    turtle(
        "graptemys-pseudogeographica",
        "Graptemys pseudogeographica",
        "false map turtle",
        carapace(0.27, GEIGER),
        water(20.0, 28.0),
    ),
    turtle(
        "sternotherus-odoratus",
        "Sternotherus odoratus",
        "common musk turtle",
        carapace(0.14, REPTTRAITS),
        water(20.0, 28.0),
    ),
    turtle(
        "pelodiscus-sinensis",
        "Pelodiscus sinensis",
        "Chinese softshell",
        carapace(0.33, REPTTRAITS),
        water(25.0, 30.0),
    ),
    turtle(
        "chelydra-serpentina",
        "Chelydra serpentina",
        "snapping turtle",
        carapace(0.47, GEIGER),
        water(22.0, 28.0),
    ),
    Species {
        key: "cuora-amboinensis",
        latin: "Cuora amboinensis",
        common: "Amboina box turtle",
        body_length: Some(carapace(0.20, GEIGER)),
        water_low: Some(Value::celsius(
            "lowest water temperature",
            24.0,
            Recalled,
            "keepers' usage, from memory",
        )),
        water_high: Some(Value::celsius(
            "highest water temperature",
            28.0,
            Recalled,
            "keepers' usage, from memory",
        )),
        own: None,
    },
    Species {
        key: "chelodina-longicollis",
        latin: "Chelodina longicollis",
        common: "eastern long-necked turtle",
        body_length: Some(carapace(0.282, REPTTRAITS)),
        water_low: None,
        water_high: None,
        own: None,
    },
    long(
        "physignathus-cocincinus",
        "Physignathus cocincinus",
        "Chinese water dragon",
        Some(vent(0.25, "lizard trait set (greatest snout-vent length)")),
    ),
    long(
        "paleosuchus-palpebrosus",
        "Paleosuchus palpebrosus",
        "Cuvier's dwarf caiman",
        Some(vent(0.90, "Amniote life-history database (male, snout to vent)")),
    ),
    long(
        "nerodia-fasciata",
        "Nerodia fasciata",
        "banded water snake",
        Some(vent(0.81, "Amniote life-history database (female, snout to vent)")),
    ),
    turtle(
        "mauremys-sinensis",
        "Mauremys sinensis",
        "Chinese stripe-necked turtle",
        carapace(0.24, GEIGER),
        (None, None),
    ),
    turtle("mauremys-leprosa", "Mauremys leprosa", "Spanish terrapin", carapace(0.18, GEIGER), (None, None)),
    turtle(
        "pseudemys-nelsoni",
        "Pseudemys nelsoni",
        "Florida red-bellied cooter",
        carapace(0.305, REPTTRAITS),
        water(24.0, 30.0),
    ),
    turtle(
        "graptemys-ouachitensis",
        "Graptemys ouachitensis",
        "Ouachita map turtle",
        carapace(0.25, REPTTRAITS),
        water(20.0, 28.0),
    ),
    turtle(
        "malaclemys-terrapin",
        "Malaclemys terrapin",
        "diamondback terrapin",
        carapace(0.19, REPTTRAITS),
        (None, None),
    ),
    turtle(
        "siebenrockiella-crassicollis",
        "Siebenrockiella crassicollis",
        "black marsh turtle",
        carapace(0.20, REPTTRAITS),
        (None, None),
    ),
    turtle(
        "apalone-spinifera",
        "Apalone spinifera",
        "spiny softshell",
        carapace(0.498, GEIGER),
        (None, None),
    ),
    turtle(
        "podocnemis-unifilis",
        "Podocnemis unifilis",
        "yellow-spotted river turtle",
        carapace(0.45, REPTTRAITS),
        (None, None),
    ),
    turtle(
        "chelodina-expansa",
        "Chelodina expansa",
        "broad-shelled turtle",
        carapace(0.50, REPTTRAITS),
        (None, None),
    ),
    long(
        "varanus-salvator",
        "Varanus salvator",
        "Asian water monitor",
        Some(vent(
            1.17,
            "Meiri 2018, Traits of lizards of the world, doi 10.1111/geb.12773 (greatest snout-vent length)",
        )),
    ),
    long(
        "varanus-mertensi",
        "Varanus mertensi",
        "Mertens' water monitor",
        Some(vent(
            0.542,
            "Meiri 2018, Traits of lizards of the world, doi 10.1111/geb.12773 (greatest snout-vent length)",
        )),
    ),
    long(
        "basiliscus-plumifrons",
        "Basiliscus plumifrons",
        "plumed basilisk",
        Some(vent(
            0.25,
            "Meiri 2018, Traits of lizards of the world, doi 10.1111/geb.12773 (greatest snout-vent length)",
        )),
    ),
    long(
        "hydrosaurus-amboinensis",
        "Hydrosaurus amboinensis",
        "Amboina sailfin lizard",
        Some(vent(
            0.35,
            "Meiri 2018, Traits of lizards of the world, doi 10.1111/geb.12773 (greatest snout-vent length)",
        )),
    ),
    long(
        "intellagama-lesueurii",
        "Intellagama lesueurii",
        "eastern water dragon",
        Some(vent(
            0.289,
            "Meiri 2018, Traits of lizards of the world, doi 10.1111/geb.12773 (greatest snout-vent length)",
        )),
    ),
    long(
        "shinisaurus-crocodilurus",
        "Shinisaurus crocodilurus",
        "Chinese crocodile lizard",
        Some(vent(
            0.165,
            "Meiri 2018, Traits of lizards of the world, doi 10.1111/geb.12773 (greatest snout-vent length)",
        )),
    ),
    long(
        "caiman-crocodilus",
        "Caiman crocodilus",
        "spectacled caiman",
        Some(vent(0.96, "Amniote life-history database (male, snout to vent)")),
    ),
    long(
        "natrix-tessellata",
        "Natrix tessellata",
        "dice snake",
        Some(vent(0.979, "Oskyrko et al. 2024, ReptTraits, Sci. Data 11:243 (maximum snout-vent length)")),
    ),
];

/// The species of a key or a Latin name; upper and lower case are the same.
pub fn find(name: &str) -> Option<&'static Species> {
    SPECIES.iter().find(|s| s.key.eq_ignore_ascii_case(name) || s.latin.eq_ignore_ascii_case(name))
}

#[cfg(test)]
mod tests {
    use super::{SPECIES, TRAITS, find};

    #[test]
    fn keys_and_latin_names_stand_once_and_are_found() {
        for species in SPECIES {
            assert_eq!(find(species.key), Some(species));
            assert_eq!(find(&species.latin.to_uppercase()), Some(species));
        }
        let keys: std::collections::BTreeSet<_> = SPECIES.iter().map(|s| s.key).collect();
        assert_eq!(keys.len(), SPECIES.len());
    }

    #[test]
    fn every_value_has_a_source_and_every_band_its_two_ends_in_order() {
        for species in SPECIES {
            for value in TRAITS.iter().filter_map(|t| (t.of)(species)) {
                assert!(value.source.len() > 10, "{}: {}", species.key, value.what);
            }
            if let (Some(low), Some(high)) = (species.water_low, species.water_high) {
                assert!(low.value < high.value, "{}", species.key);
            }
        }
    }
}
