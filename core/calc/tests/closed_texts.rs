//! Every closed formula of hydraulics and water, worked again from its own printed text.

use haulout_calc::formula::{FormulaCard, Kind};
use haulout_calc::hydraulics::{device, fittings, pipe, pump, system, turnover};
use haulout_calc::water;
use haulout_quantity::si::*;

/// A reader of the texts: numbers in SI (a unit after one is passed over), symbols, operators, functions.
struct Reader<'a> {
    rest: &'a str,
    values: Vec<(&'a str, f64)>,
}

impl<'a> Reader<'a> {
    fn take(&mut self, sign: char) -> bool {
        self.rest = self.rest.trim_start();
        let Some(rest) = self.rest.strip_prefix(sign) else {
            return false;
        };
        self.rest = rest;
        true
    }

    fn word(&mut self) -> &'a str {
        self.rest = self.rest.trim_start();
        let end = self.rest.find(|c: char| !(c.is_alphanumeric() || "_.·".contains(c)));
        let (word, rest) = self.rest.split_at(end.unwrap_or(self.rest.len()));
        self.rest = rest;
        word
    }

    fn sum(&mut self) -> f64 {
        let mut total = self.product();
        loop {
            if self.take('+') {
                total += self.product();
            } else if self.take('-') {
                total -= self.product();
            } else {
                return total;
            }
        }
    }

    fn product(&mut self) -> f64 {
        let mut total = self.power();
        loop {
            if self.take('×') {
                total *= self.power();
            } else if self.take('/') {
                total /= self.power();
            } else {
                return total;
            }
        }
    }

    fn power(&mut self) -> f64 {
        if self.take('-') {
            return -self.power();
        }
        let base = self.atom();
        if self.take('^') { libm::pow(base, self.power()) } else { base }
    }

    fn atom(&mut self) -> f64 {
        if self.take('(') {
            let inner = self.sum();
            assert!(self.take(')'), "closing bracket before {:?}", self.rest);
            return inner;
        }
        let word = self.word();
        match word {
            "pi" => std::f64::consts::PI,
            "exp" => libm::exp(self.atom()),
            _ if word.starts_with(|c: char| c.is_ascii_digit()) => {
                for unit in [" m/s2", " kg/m3", " Pa·s", " Pa", " K"] {
                    self.rest = self.rest.strip_prefix(unit).unwrap_or(self.rest);
                }
                word.parse().expect("a number starts with a digit")
            }
            _ => self.values.iter().find(|(symbol, _)| *symbol == word).expect("a symbol of the card").1,
        }
    }
}

fn from_text(card: &FormulaCard, values: &[f64]) -> f64 {
    assert_eq!(card.kind, Kind::Closed, "{}", card.name);
    assert_eq!(card.symbols.len(), values.len(), "{}", card.name);
    let values = card.symbols.iter().copied().zip(values.iter().copied()).collect();
    let mut reader = Reader { rest: card.text, values };
    let result = reader.sum();
    assert_eq!(reader.rest.trim(), "", "{}", card.name);
    result
}

fn same(card: &FormulaCard, values: &[f64], have: f64) {
    let text = from_text(card, values);
    assert!((text - have).abs() <= 1e-12 * have.abs(), "{}: {text} against {have}", card.name);
}

/// Makes a quantity from a number in SI.
macro_rules! si {
    ($kind:ident, $value:expr) => {
        $kind { dimension: Default::default(), units: Default::default(), value: $value }
    };
}

macro_rules! check {
    ($formula:expr, $($kind:ident $value:expr),+) => {{
        let arguments = ($(si!($kind, $value),)+);
        let have = $formula.work(arguments).expect("within the range of the method").value;
        same($formula.card, &[$($value),+], have);
    }};
}

#[test]
fn texts_say_what_the_functions_do() {
    check!(pipe::VELOCITY, VolumeRate 0.0031, Length 0.047);
    check!(pipe::REYNOLDS, Velocity 1.7, Length 0.047, KinematicViscosity 1.1e-6);
    check!(pipe::FRICTION_FACTOR_LAMINAR, Ratio 730.0);
    check!(pipe::FRICTION_HEAD, Ratio 0.021, Length 17.0, Length 0.047, Velocity 1.7);
    check!(pipe::RIBBED_HOSE_HEAD, Ratio 2.2, Length 0.7);
    check!(fittings::FITTINGS_HEAD, Ratio 5.3, Velocity 1.7);
    check!(device::DEVICE_HEAD, Length 0.8, VolumeRate 0.0031, VolumeRate 0.0042);
    check!(system::TOTAL_HEAD, Length 1.1, Length 0.7, Length 0.31, Length 0.83);
    check!(pump::PUMP_HEAD, VolumeRate 0.0031, VolumeRate 0.003, Length 7.1, VolumeRate 0.004, Length 5.2);
    check!(pump::HYDRAULIC_POWER, MassDensity 997.3, VolumeRate 0.0031, Length 6.9);
    check!(turnover::TURNOVER, Volume 31.0, VolumeRate 0.0031);
    check!(turnover::LABEL_TURNOVER, Volume 31.0, VolumeRate 0.0052);
    check!(water::DENSITY, ThermodynamicTemperature 299.3);
    check!(water::DYNAMIC_VISCOSITY, ThermodynamicTemperature 299.3);
    check!(water::KINEMATIC_VISCOSITY, DynamicViscosity 0.00087, MassDensity 996.9);
    check!(water::VAPOUR_PRESSURE, ThermodynamicTemperature 299.3);
}
