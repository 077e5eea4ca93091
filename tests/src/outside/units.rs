//! Units against another program and against their definitions.

use haulout_quantity::Basis::{self, Published, Recalled};

use super::{Row, call};

fn factor(symbol: &str) -> f64 {
    haulout_quantity::unit(symbol).map_or(f64::NAN, |unit| unit.difference_to_si(1.0))
}

fn kelvin(symbol: &str, value: f64) -> f64 {
    haulout_quantity::unit(symbol).map_or(f64::NAN, |unit| unit.to_si(value))
}

const YARD: (&str, Basis) = ("definition: yard and pound agreement of 1959, SI brochure table 8", Recalled);
const FAHRENHEIT: (&str, Basis) = ("pint 0.25.3, Quantity(82, 'degF').to('kelvin')", Published);

const fn pint(symbol: &'static str, source: &'static str, work: fn() -> f64, expected: f64) -> Row {
    call("", symbol, (source, Published), work, (expected, "SI", 1e-14))
}

const fn defined(symbol: &'static str, work: fn() -> f64, expected: f64) -> Row {
    call("", symbol, YARD, work, (expected, "SI", 1e-15))
}

pub(super) const ROWS: &[Row] = &[
    pint(
        "gal(US)",
        "pint 0.25.3, UnitRegistry()('gallon').to_base_units()",
        || factor("gal(US)"),
        0.0037854117839999993,
    ),
    pint(
        "gal(UK)",
        "pint 0.25.3, UnitRegistry()('imperial_gallon').to_base_units()",
        || factor("gal(UK)"),
        0.004546090000000002,
    ),
    pint(
        "gal(US)/min",
        "pint 0.25.3, UnitRegistry()('gallon/minute').to_base_units()",
        || factor("gal(US)/min"),
        6.309019639999999e-05,
    ),
    pint("psi", "pint 0.25.3, UnitRegistry()('psi').to_base_units()", || factor("psi"), 6894.7572931683635),
    pint(
        "hp",
        "pint 0.25.3, UnitRegistry()('horsepower').to_base_units()",
        || factor("hp"),
        745.6998715822701,
    ),
    pint("lbf", "pint 0.25.3, UnitRegistry()('lbf').to_base_units()", || factor("lbf"), 4.4482216152605005),
    pint(
        "ft3/s",
        "pint 0.25.3, UnitRegistry()('ft**3/s').to_base_units()",
        || factor("ft3/s"),
        0.028316846591999994,
    ),
    pint(
        "lb/ft3",
        "pint 0.25.3, UnitRegistry()('lb/ft**3').to_base_units()",
        || factor("lb/ft3"),
        16.01846337396015,
    ),
    pint("oz", "pint 0.25.3, UnitRegistry()('oz').to_base_units()", || factor("oz"), 0.028349523125000005),
    pint(
        "in3",
        "pint 0.25.3, UnitRegistry()('inch**3').to_base_units()",
        || factor("in3"),
        1.6387063999999996e-05,
    ),
    pint(
        "ft/min",
        "pint 0.25.3, UnitRegistry()('ft/minute').to_base_units()",
        || factor("ft/min"),
        0.0050799999999999994,
    ),
    pint(
        "fc",
        "pint 0.25.3, UnitRegistry()('lumen/ft**2').to_base_units()",
        || factor("fc"),
        10.763910416709724,
    ),
    pint(
        "deg",
        "pint 0.25.3, UnitRegistry()('degree').to_base_units()",
        || factor("deg"),
        0.017453292519943295,
    ),
    pint(
        "mol/m2/d",
        "pint 0.25.3, UnitRegistry()('mol/m**2/day').to_base_units()",
        || factor("mol/m2/d"),
        1.1574074074074073e-05,
    ),
    pint(
        "in(Hg)",
        "pint 0.25.3, UnitRegistry()('inHg').to_base_units()",
        || factor("in(Hg)"),
        3386.3886403409997,
    ),
    pint("kWh", "pint 0.25.3, UnitRegistry()('kWh').to_base_units()", || factor("kWh"), 3600000.0),
    defined("in", || factor("in"), 0.0254),
    defined("ft", || factor("ft"), 0.3048),
    defined("yd", || factor("yd"), 0.9144),
    defined("lb", || factor("lb"), 0.45359237),
    defined("h", || factor("h"), 3600.0),
    defined("L", || factor("L"), 0.001),
    call("", "82 °F", FAHRENHEIT, || kelvin("°F", 82.0), (300.927_777_777_777_8, "K", 1e-14)),
];
