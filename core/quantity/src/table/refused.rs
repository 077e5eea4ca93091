//! Spellings with more than one reading: refused, with both readings offered.

/// A spelling, why it is refused, and what may be written instead.
pub(crate) struct Refused {
    pub(crate) spelling: &'static str,
    pub(crate) why: &'static str,
    pub(crate) instead: &'static [&'static str],
}

const fn refused(spelling: &'static str, why: &'static str, instead: &'static [&'static str]) -> Refused {
    Refused { spelling, why, instead }
}

const GALLONS: &str = "the US gallon is 3.785 L, the UK gallon 4.546 L";

pub(crate) const REFUSED: &[Refused] = &[
    refused("gal", GALLONS, &["gal(US)", "gal(UK)"]),
    refused("gal/min", GALLONS, &["gal(US)/min", "gal(UK)/min"]),
    refused("gal/h", GALLONS, &["gal(US)/h", "gal(UK)/h"]),
    refused("gal/d", GALLONS, &["gal(US)/d"]),
    refused("gpm", GALLONS, &["gal(US)/min", "gal(UK)/min"]),
    refused("gph", GALLONS, &["gal(US)/h", "gal(UK)/h"]),
    refused("gpd", GALLONS, &["gal(US)/d"]),
    refused("GPM", GALLONS, &["gal(US)/min", "gal(UK)/min"]),
    refused("GPH", GALLONS, &["gal(US)/h", "gal(UK)/h"]),
    refused("gpm/ft2", GALLONS, &["gal(US)/(min ft2)"]),
    refused("fl oz", "the US and the UK fluid ounce differ by 4 %", &["fl oz(US)", "mL"]),
    refused("floz", "the US and the UK fluid ounce differ by 4 %", &["fl oz(US)", "mL"]),
    refused("qt", "the US quart is 0.946 L, the UK quart 1.137 L", &["qt(US)", "L"]),
    refused("pt", "the US pint is 0.473 L, the UK pint 0.568 L", &["fl oz(US)", "mL"]),
    refused(
        "ton",
        "the US ton is 907 kg, the UK ton 1016 kg, the metric one 1000 kg",
        &["t", "ton(US)", "ton(UK)"],
    ),
    refused("ppm", "parts of mass, of volume or of molecules are meant", &["mg/L"]),
    refused("ppb", "parts of mass, of volume or of molecules are meant", &["ug/L"]),
    refused(
        "dH",
        "degrees of hardness differ between countries; a German one is 17.8 mg/L of CaCO3",
        &["mg/L"],
    ),
    refused(
        "°dH",
        "degrees of hardness differ between countries; a German one is 17.8 mg/L of CaCO3",
        &["mg/L"],
    ),
    refused("M", "molar, million or metre may be meant", &["m", "mol/L"]),
    refused("cal", "the calorie has several definitions", &["J"]),
    refused("kcal", "the calorie has several definitions", &["kJ"]),
    refused("VA", "apparent power is no power that can be added to watts", &["W"]),
];
