//! Limits of a script's card: a quantity whose unit says what it measures, and the way in which it is tighter.

use haulout_quantity::{Basis, Dimension, Parts, Stated, UNITS, unit};
use haulout_sheet::{Limit, Tighter};
use serde::Deserialize;

/// A limit as the card writes it.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LimitEntry {
    pub(crate) name: String,
    what: String,
    value: Written,
    tighter: Way,
    basis: BasisWord,
    source: String,
}

#[derive(Debug, Deserialize)]
#[serde(untagged)]
enum Written {
    Number(f64),
    Quantity(String),
}

#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Way {
    Higher,
    Lower,
}

#[derive(Debug, Clone, Copy, Deserialize)]
enum BasisWord {
    #[serde(rename = "published")]
    Published,
    #[serde(rename = "reported")]
    Reported,
    #[serde(rename = "common practice")]
    CommonPractice,
    #[serde(rename = "recalled")]
    Recalled,
}

impl LimitEntry {
    /// The words of the value, for pointing at it; a number has none.
    pub(crate) fn written(&self) -> Option<&str> {
        match &self.value {
            Written::Quantity(text) => Some(text),
            Written::Number(_) => None,
        }
    }

    /// The limit of the rule `rule`.
    ///
    /// # Errors
    /// A sentence when the value is no single quantity.
    ///
    /// The card of a limit is static, because the sheet keys its lines by it. A script is compiled once in a
    /// process and its rule lives to the end of it, so what is leaked here is what would be kept anyway.
    pub(crate) fn card(&self, rule: &'static str) -> Result<&'static Limit, String> {
        let (value, dimension, unit) = self.quantity()?;
        if self.source.trim().is_empty() {
            return Err(
                "a limit names its source; a value of the house says so, such as \"house standard of 2026\""
                    .into(),
            );
        }
        Ok(Box::leak(Box::new(Limit {
            rule,
            name: leaked(&self.name),
            row: "",
            what: leaked(&self.what),
            value,
            unit,
            dimension,
            tighter: match self.tighter {
                Way::Higher => Tighter::Higher,
                Way::Lower => Tighter::Lower,
            },
            basis: match self.basis {
                BasisWord::Published => Basis::Published,
                BasisWord::Reported => Basis::Reported,
                BasisWord::CommonPractice => Basis::CommonPractice,
                BasisWord::Recalled => Basis::Recalled,
            },
            source: leaked(&self.source),
        })))
    }

    fn quantity(&self) -> Result<(f64, Dimension, &'static str), String> {
        let text = match &self.value {
            Written::Number(n) => return Ok((*n, Dimension::NUMBER, "")),
            Written::Quantity(text) => text,
        };
        let stated = read_any(text)?;
        match stated.parts {
            Parts::One(value) => Ok((value, stated.unit.dimension, stated.unit.symbol)),
            _ => Err(format!("\"{text}\" holds several numbers; a limit is one: divide it into two limits")),
        }
    }
}

/// Text that lives as long as the process, for the same reason as the limit it belongs to.
pub(crate) fn leaked(text: &str) -> &'static str {
    Box::leak(text.to_owned().into_boxed_str())
}

/// Reads a quantity of whatever dimension its unit has.
fn read_any(text: &str) -> Result<Stated, String> {
    let tail = text.trim_start_matches(|c: char| !c.is_alphabetic() && !"%°'\"".contains(c)).trim();
    if let Some(unit) = unit(tail) {
        return haulout_quantity::read(text, unit.dimension).map_err(|slip| slip.message);
    }
    let mut tried: Vec<Dimension> = Vec::new();
    for unit in UNITS {
        if !tried.contains(&unit.dimension) {
            tried.push(unit.dimension);
            if let Ok(stated) = haulout_quantity::read(text, unit.dimension) {
                return Ok(stated);
            }
        }
    }
    Err(format!(
        "\"{text}\" cannot be read as a quantity: write a number and a unit, such as \"0.4 m\" or \"12 m3/h\""
    ))
}

#[cfg(test)]
mod tests {
    use super::read_any;
    use haulout_quantity::Dimension;

    /// The values follow from the definitions of the units by hand: 1 ft = 0.3048 m, 12 m³ in 3600 s.
    #[test]
    fn the_unit_says_what_is_measured() {
        for (text, value, dimension) in [
            ("0.4 m", 0.4, Dimension::LENGTH),
            ("2 ft 6 in", 0.762, Dimension::LENGTH),
            ("12 m3/h", 12.0 / 3600.0, Dimension::FLOW),
            ("25 °C", 298.15, Dimension::TEMPERATURE),
            ("65 %", 0.65, Dimension::NUMBER),
            ("2.5", 2.5, Dimension::NUMBER),
        ] {
            let stated = read_any(text).expect(text);
            assert_eq!((stated.parts.value(), stated.unit.dimension), (value, dimension), "{text}");
        }
    }

    #[test]
    fn a_slip_is_told_in_the_words_of_the_reader_or_in_our_own() {
        assert_eq!(read_any("0,4 m").expect_err("comma"), "0,4 has a decimal comma: write \"0.4 m\"");
        assert!(read_any("0.4 fathoms").expect_err("no unit of the table").contains("such as \"0.4 m\""));
        assert!(read_any("").is_err());
    }
}
