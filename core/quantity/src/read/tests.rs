//! What is read, what is refused and with which words, and that nothing makes the reader fall over.

use super::{Parts, read, read_angle, read_difference, read_share, read_slope, read_turbidity};
use crate::{Dimension, UNITS};

fn one(text: &str, expect: Dimension) -> f64 {
    match read(text, expect).expect(text).parts {
        Parts::One(value) => value,
        other => unreachable!("{text}: {other:?}"),
    }
}

/// Expected values follow from the definitions of the inch, the litre and the US gallon by hand.
#[test]
fn single_values() {
    for (text, metres) in [
        ("0.6 m", 0.6),
        ("600mm", 0.6),
        ("24 in", 0.6096),
        ("2 ft 6 in", 0.762),
        ("2' 6\"", 0.762),
        ("2'-6\"", 0.762),
        ("2′ 6″", 0.762),
        ("-2 ft 6 in", -0.762),
        ("2 feet 6 inches", 0.762),
        ("1/2 in", 0.0127),
        ("2 1/2 in", 0.0635),
        ("2-1/2 in", 0.0635),
        ("2½ in", 0.0635),
        ("2 ft 6 1/2 in", 0.7747),
        ("1/3 ft", 0.1016),
        ("+0.92 m", 0.92),
        ("-0.1 m", -0.1),
        ("\u{2212}0.1 m", -0.1),
        ("±0.00 m", 0.0),
        ("+/-0.00 m", 0.0),
        (" 1.2e-7 m ", 1.2e-7),
        (".5 m", 0.5),
    ] {
        assert_eq!(one(text, Dimension::LENGTH), metres, "{text}");
    }
    assert_eq!(one("12 m³/h", Dimension::FLOW), 12.0 / 3600.0);
    assert_eq!(one("3000 gal(US)/h", Dimension::FLOW), 11.356_235_352 / 3600.0);
    assert_eq!(one("28 °C", Dimension::TEMPERATURE), 301.15);
    assert_eq!(one("28 C", Dimension::TEMPERATURE), 301.15);
    assert_eq!(one("65 %", Dimension::NUMBER), 0.65);
    assert_eq!(one("7.4", Dimension::NUMBER), 7.4);
    assert_eq!(one("1 h 30 min", Dimension::TIME), 5400.0);
    assert_eq!(one("6 per hour", Dimension::FREQUENCY), 6.0 / 3600.0);
    assert_eq!(one("30 mA", Dimension::CURRENT), 0.03);
}

#[test]
fn ranges_and_spreads() {
    let length = |text| read(text, Dimension::LENGTH).expect(text);
    assert_eq!(length("10 to 16 mm").parts, Parts::Range { low: 0.01, high: 0.016 });
    assert_eq!(length("0.5 m to 70 cm").parts, Parts::Range { low: 0.5, high: 0.7 });
    assert_eq!(length("0.60 m ± 20 mm").parts, Parts::Spread { value: 0.6, tolerance: 0.02 });
    assert_eq!(length("0.60 m +/- 20 mm").parts, Parts::Spread { value: 0.6, tolerance: 0.02 });
    assert_eq!(length("0.60 ± 0.02 m").parts, Parts::Spread { value: 0.6, tolerance: 0.02 });
    assert_eq!(length("2 m ± 5 %").parts, Parts::Spread { value: 2.0, tolerance: 0.1 });
    let carapace = length("SCL 18 to 24 cm");
    assert_eq!((carapace.prefix, carapace.unit.symbol), (Some("SCL"), "cm"));
    assert_eq!(carapace.parts, Parts::Range { low: 0.18, high: 0.24 });
    let warm = |text| read(text, Dimension::TEMPERATURE).expect(text).parts;
    assert_eq!(warm("24 to 27 °C"), Parts::Range { low: 297.15, high: 300.15 });
    for text in ["28 °C ± 2 °C", "28 ± 2 °C", "28 °C ± 2 K"] {
        assert_eq!(warm(text), Parts::Spread { value: 301.15, tolerance: 2.0 }, "{text}");
    }
    let spread = warm("82 °F ± 9 °F");
    assert_eq!(spread.high() - spread.value(), 5.0);
}

#[test]
fn kinds_of_numbers_and_differences() {
    assert_eq!(read_difference("9 °F").expect("nine").parts, Parts::One(5.0));
    assert_eq!(read_difference("2 °C").expect("two").unit.symbol, "K");
    assert_eq!(read_angle("180 deg").expect("half a turn").parts, Parts::One(std::f64::consts::PI));
    assert!(read_angle("65 %").is_err() && read_share("14 deg").is_err() && read_share("2 NTU").is_err());
    assert!(read_turbidity("2").is_err() && read_turbidity("2 NTU").is_ok());
}

/// tan 14° by the half-angle identity sin 28° / (1 + cos 28°), with sine and cosine to nine figures, recalled.
#[test]
fn slopes() {
    let slope = |text| read_slope(text).expect(text).parts.value();
    assert_eq!(slope("1 in 4"), 0.25);
    assert_eq!(slope("25 %"), 0.25);
    assert!((slope("14 deg") - 0.469_471_563 / 1.882_947_593).abs() < 1e-9);
    let refused = read_slope("1:4").expect_err("two readings").message;
    assert_eq!(refused, "\"1:4\" may be rise to run or run to rise: write the rise first, as \"1 in 4\"");
    assert!(read_slope("1/4").is_err() && read_slope("90 deg").is_err() && read_slope("1 in 0").is_err());
}

#[test]
fn refusals_say_what_to_write() {
    let table: &[(&str, Dimension, &str)] = &[
        ("0,6 m", Dimension::LENGTH, "0,6 has a decimal comma: write \"0.6 m\""),
        (
            "3,000 L",
            Dimension::VOLUME,
            "3,000 may be thousands or decimals: write \"3000 L\", or \"3.000 L\" with a decimal point",
        ),
        ("1,234.5 m", Dimension::LENGTH, "1,234.5 is written with commas: write \"1234.5 m\""),
        (
            "300 gal",
            Dimension::VOLUME,
            "gal can be read in more than one way: the US gallon is 3.785 L, the UK gallon 4.546 L; write \"300 gal(US)\" or \"300 gal(UK)\"",
        ),
        (
            "20 m3",
            Dimension::FLOW,
            "20 m3 is a volume, expected is a flow such as \"1 m3/h\" or \"1 gal(US)/min\"",
        ),
        ("0.6", Dimension::LENGTH, "0.6 has no unit; expected is a length: write \"0.6 m\" or \"0.6 ft\""),
        ("5 M3/H", Dimension::FLOW, "\"M3/H\" is no unit that is known here; the nearest is \"m3/h\""),
        ("24-27 °C", Dimension::TEMPERATURE, "a dash may be a minus or a range: write \"24 to 27 °C\""),
        ("27 to 24 °C", Dimension::TEMPERATURE, "\"27 to 24 °C\" runs downwards: write the lower end first"),
        ("", Dimension::LENGTH, "nothing is written; expected is a length such as \"1 m\" or \"1 ft\""),
        ("NaN m", Dimension::LENGTH, "\"NaN m\" stands where a number is expected, such as 0.6"),
        ("1e999 m", Dimension::LENGTH, "1e999 is beyond what can be computed with"),
        ("-300 °C", Dimension::TEMPERATURE, "\"-300 °C\" is below absolute zero, -273.15 °C"),
        (
            "± 20 mm",
            Dimension::LENGTH,
            "\"± 20 mm\" gives a tolerance without a value; write it as \"0.60 m ± 20 mm\"",
        ),
    ];
    for (text, expect, message) in table {
        assert_eq!(read(text, *expect).expect_err(text).message, *message);
    }
    for text in [
        "inf m",
        "3 000 m",
        "2 ft 14 in",
        "1 in 4",
        "1/0 in",
        "0.6 m extra",
        "28 °C",
        "2 ppm",
        "5 °F difference",
    ] {
        assert!(read(text, Dimension::LENGTH).is_err(), "{text}");
    }
    assert!(read(&"9".repeat(201), Dimension::NUMBER).is_err());
}

#[test]
fn a_slip_points_at_its_bytes() {
    let slip = read("0.60 m ± 20 kg", Dimension::LENGTH).expect_err("a mass");
    assert_eq!(&"0.60 m ± 20 kg"[slip.at], "kg");
}

/// 50 000 texts mutated from sound ones by a xorshift generator: none may panic, and every slip lies within its text.
#[test]
fn mutated_texts_never_panic() {
    let seeds = [
        "2 ft 6 1/2 in",
        "24 to 27 °C",
        "0.60 m ± 20 mm",
        "1 in 4",
        "SCL 18 to 24 cm",
        "3000 gal(US)/h",
        "2'-6½\"",
    ];
    let bits: Vec<char> =
        "0123456789.,-+/±°µ²³'\"′″½ toinmftgal(US)eE%:\u{2212}\u{2013}Ø^·\u{a0}".chars().collect();
    let mut state: u64 = 0x9E37_79B9_7F4A_7C15;
    let mut next = move |below: usize| {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state % below as u64) as usize
    };
    for _ in 0..50_000 {
        let mut text: Vec<char> = seeds[next(seeds.len())].chars().collect();
        for _ in 0..=next(5) {
            let at = next(text.len() + 1);
            match next(3) {
                0 => text.insert(at, bits[next(bits.len())]),
                1 if at < text.len() => drop(text.remove(at)),
                _ if at < text.len() => text[at] = bits[next(bits.len())],
                _ => {}
            }
        }
        let text: String = text.into_iter().collect();
        let expect = UNITS[next(UNITS.len())].dimension;
        for read in
            [read(&text, expect), read(&text, Dimension::LENGTH), read_slope(&text), read_difference(&text)]
        {
            match read {
                Ok(stated) => {
                    assert!(stated.parts.low().is_finite() && stated.parts.low() <= stated.parts.high())
                }
                Err(slip) => assert!(text.get(slip.at).is_some() && !slip.message.is_empty(), "{text}"),
            }
        }
    }
}

/// The quick way for usual spellings reads as the careful one does, whatever number stands before whatever unit.
#[test]
fn the_quick_way_reads_as_the_careful_one() {
    let numbers = ["0.6", "+1.25", "-300", "12.", "1e3", "1 1/2", "999999999999999999999"];
    let tails = ["", " ", " to 9 m", " ×", "2", " 6 in"];
    let spelt = crate::UNITS.iter().flat_map(|unit| {
        std::iter::once(&unit.symbol).chain(unit.spellings).map(move |spelling| (unit, *spelling))
    });
    let mut quick = 0;
    for (unit, spelling) in spelt {
        for (number, tail) in numbers.iter().flat_map(|n| tails.iter().map(move |t| (n, t))) {
            for (gap, dimension) in [(" ", unit.dimension), ("", unit.dimension), (" ", Dimension::LENGTH)] {
                let text = format!("{number}{gap}{spelling}{tail}");
                for difference in [false, true] {
                    let reading = super::Reading { dimension, difference };
                    let Some(short) = reading.usual(&text) else { continue };
                    assert_eq!(Ok(short), reading.any(&text), "{text}");
                    quick += 1;
                }
            }
        }
    }
    assert!(quick > 1000, "{quick} went the quick way");
}

/// A sign of multiplication is no part of a unit, neither between two nor left behind one.
#[test]
fn a_times_sign_is_refused() {
    for text in ["3 ft3 ×", "3 kN × m", "3 × m", "3 m ×"] {
        for dimension in [Dimension::VOLUME, Dimension::LENGTH, Dimension::NUMBER] {
            assert!(read(text, dimension).is_err(), "{text}");
        }
    }
}
