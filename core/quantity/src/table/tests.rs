//! Factors against their definitions and against another program's.

use crate::{Kind, UNITS, print, read, read_difference, unit};

fn factor(symbol: &str) -> f64 {
    unit(symbol).expect(symbol).factor
}

fn near(got: f64, expected: f64, relative: f64) -> bool {
    (got - expected).abs() <= relative * expected.abs()
}

/// Definitions, recalled: the yard and pound agreement of 1959 (yard, pound), 231 in³ (US gallon), 4.546 09 L
/// (UK gallon), SI brochure table 8 (minute, hour, day, litre, tonne); each value is written out, not computed.
#[test]
fn factors_by_definition() {
    let table = [
        ("in", 0.0254),
        ("ft", 0.3048),
        ("yd", 0.9144),
        ("lb", 0.453_592_37),
        ("gal(US)", 3.785_411_784e-3),
        ("gal(UK)", 4.546_09e-3),
        ("ft3", 0.028_316_846_592),
        ("ft2", 0.092_903_04),
        ("lbf", 4.448_221_615_260_5),
        ("Btu(IT)", 1_055.055_852_62),
        ("h", 3600.0),
        ("d", 86_400.0),
        ("L", 1e-3),
        ("t", 1000.0),
    ];
    for (symbol, exact) in table {
        assert_eq!(factor(symbol), exact, "{symbol}");
    }
}

/// Rounded factors as NIST SP 811 (2008), appendix B.8, prints them; recalled, not read in its own text.
#[test]
fn factors_as_printed() {
    let table = [
        ("psi", 6894.757),
        ("psf", 47.880_26),
        ("hp", 745.6999),
        ("Btu(IT)/h", 0.293_071_07),
        ("gal(US)/min", 6.309_020e-5),
        ("ft(H2O)", 2989.067),
        ("in(H2O)", 249.0889),
        ("in(Hg)", 3386.389),
        ("lbf/ft", 14.593_90),
        ("lb/ft3", 16.018_46),
        ("Btu(IT)/(h ft2 °F)", 5.678_263),
    ];
    for (symbol, printed) in table {
        assert!(near(factor(symbol), printed, 3e-7), "{symbol}: {}", factor(symbol));
    }
}

/// pint 0.25.3, `UnitRegistry()(name).to_base_units().magnitude`. Its Btu is rounded and therefore not asked for.
const PINT: &[(&str, &str, f64)] = &[
    ("gal(US)", "gallon", 0.0037854117839999993),
    ("gal(UK)", "imperial_gallon", 0.004546090000000002),
    ("gal(US)/min", "gallon/minute", 6.309019639999999e-05),
    ("gal(UK)/min", "imperial_gallon/minute", 7.57681666666667e-05),
    ("gal(US)/h", "gallon/hour", 1.0515032733333332e-06),
    ("psi", "psi", 6894.7572931683635),
    ("psf", "lbf/ft**2", 47.88025898033586),
    ("hp", "horsepower", 745.6998715822701),
    ("PS", "metric_horsepower", 735.49875),
    ("lbf", "lbf", 4.4482216152605005),
    ("lbf/ft", "lbf/ft", 14.59390293720637),
    ("ft lbf", "ft*lbf", 1.3558179483314001),
    ("ft3/s", "ft**3/s", 0.028316846591999994),
    ("ft2/ft3", "ft**2/ft**3", 3.2808398950131235),
    ("lb/ft3", "lb/ft**3", 16.01846337396015),
    ("lb/d", "lb/day", 5.249911689814815e-06),
    ("oz", "oz", 0.028349523125000005),
    ("yd3", "yd**3", 0.764554857984),
    ("gal(US)/(min ft2)", "gallon/minute/ft**2", 0.0006790972222222222),
    ("kWh", "kWh", 3600000.0),
    ("fc", "lumen/ft**2", 10.763910416709724),
    ("in3", "inch**3", 1.6387063999999996e-05),
    ("ft/min", "ft/minute", 0.0050799999999999994),
    ("ton(US)", "short_ton", 907.1847400000001),
    ("ton(UK)", "long_ton", 1016.0469088000001),
    ("oz/yd2", "oz/yd**2", 0.0339057474748823),
    ("fl oz(US)", "fluid_ounce", 2.9573529562499994e-05),
    ("qt(US)", "quart", 0.0009463529459999998),
    ("deg", "degree", 0.017453292519943295),
    ("µS/cm", "microsiemens/cm", 9.999999999999999e-05),
    ("mol/m2/d", "mol/m**2/day", 1.1574074074074073e-05),
    ("mJ/cm2", "mJ/cm**2", 10.0),
    ("lbf/ft3", "lbf/ft**3", 157.08746384624627),
    ("in(Hg)", "inHg", 3386.3886403409997),
    ("kip", "kip", 4448.221615260501),
];

#[test]
fn factors_as_pint_has_them() {
    for (symbol, name, magnitude) in PINT {
        assert!(near(factor(symbol), *magnitude, 1e-14), "{symbol}, {name}: {} {magnitude}", factor(symbol));
    }
}

/// pint 0.25.3, `Quantity(82, "degF").to("kelvin")`: 300.927 777 777 777 8.
#[test]
fn temperatures_are_shifted() {
    let fahrenheit = unit("°F").expect("known");
    assert!(near(fahrenheit.to_si(82.0), 300.927_777_777_777_8, 1e-15));
    assert_eq!(unit("°C").expect("known").to_si(28.0), 301.15);
    assert!(near(fahrenheit.of_si(273.15), 32.0, 1e-13));
}

/// A generator of pseudo-random bits (xorshift64, Marsaglia 2003): the same on every machine.
fn next(state: &mut u64) -> u64 {
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    *state
}

#[test]
fn what_is_printed_reads_back_to_the_printed_digits() {
    let mut state = 0x2545_F491_4F6C_DD1D;
    for unit in UNITS {
        for _ in 0..200 {
            let digits = 3 + (next(&mut state) % 12) as u32;
            let mantissa = (next(&mut state) % 1_000_000) as f64 / 1e5 + 0.1;
            let value = mantissa * libm::exp10((next(&mut state) % 15) as f64 - 7.0);
            let text = print(unit.to_si(value), unit, digits);
            let stated = if unit.kind == Kind::Difference {
                read_difference(&text)
            } else {
                read(&text, unit.dimension)
            };
            let stated = stated.unwrap_or_else(|slip| fail(&text, &slip.message));
            assert_eq!(stated.unit.symbol, unit.symbol, "{text}");
            let half = 10f64.powi(1 - digits as i32) * value.abs() + 1e-12 * unit.shift;
            assert!((unit.of_si(stated.parts.value()) - value).abs() <= half, "{text} {value}");
        }
    }
}

fn fail(text: &str, message: &str) -> ! {
    unreachable!("{text}: {message}")
}
