//! Whether a number is one that is met with, and if not, which slip of the pen would explain it.

use haulout_quantity::{Dimension, Unit, unit};

/// A number as it was written, with the range in which numbers of its sort are met with, SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suspect {
    /// In SI.
    pub value: f64,
    /// Least and greatest that are met with, SI.
    pub range: (f64, f64),
    /// The unit it was written in; none for a plain number.
    pub unit: Option<&'static Unit>,
    /// Its dimension.
    pub dimension: Dimension,
    /// Whether it is a difference of temperatures.
    pub difference: bool,
}

/// A slip that would explain a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Slip {
    /// The decimal point: as written times this.
    Point(f64),
    /// The unit: the same number in this one.
    Unit(&'static Unit),
}

/// Feet to metres and back is good to this.
const RELATIVE: f64 = 1e-9;

/// Factors a lost or doubled decimal point makes; the smaller slips come first.
const POINTS: [f64; 6] = [0.1, 10.0, 0.01, 100.0, 0.001, 1000.0];

/// Units that are written for one another on drawings and data sheets.
const SWAPPED: &[&str] = &[
    "cm",
    "ft",
    "mm",
    "in",
    "m",
    "m2",
    "ft2",
    "l",
    "gal(US)",
    "m3",
    "ft3",
    "l/min",
    "l/h",
    "m3/h",
    "gal(US)/min",
    "gal(US)/h",
    "°C",
    "°F",
    "g",
    "kg",
    "lb",
    "W",
    "kW",
    "mA",
    "A",
];

impl Suspect {
    /// Whether the number lies in its range; the ends are in it.
    pub fn is_plausible(&self) -> bool {
        self.met_with(self.value)
    }

    fn met_with(&self, value: f64) -> bool {
        let (low, high) = self.range;
        let slack = |end: f64| RELATIVE * value.abs().max(end.abs());
        value >= low - slack(low) && value <= high + slack(high)
    }

    /// The number as it was written.
    pub fn typed(&self) -> f64 {
        self.in_unit(self.value)
    }

    /// A number of the same sort in the unit this one was written in.
    pub fn in_unit(&self, si: f64) -> f64 {
        match self.unit {
            None => si,
            Some(unit) if self.difference => unit.difference_of_si(si),
            Some(unit) => unit.of_si(si),
        }
    }

    fn read_in(&self, unit: Option<&Unit>, typed: f64) -> f64 {
        match unit {
            None => typed,
            Some(unit) if self.difference => unit.difference_to_si(typed),
            Some(unit) => unit.to_si(typed),
        }
    }

    /// The slips that would bring the number into its range: the least shift of the decimal point that does, then the
    /// units in which the same figures would do, those most often mistaken for one another first.
    pub fn slips(&self) -> Vec<Slip> {
        let typed = self.typed();
        let other = |u: &&'static Unit| {
            u.dimension == self.dimension && self.unit.is_some_and(|own| own.symbol != u.symbol)
        };
        let units = SWAPPED.iter().filter_map(|s| unit(s)).filter(other);
        let by_unit = units.filter(|u| self.met_with(self.read_in(Some(u), typed))).map(Slip::Unit);
        let by_point = POINTS.into_iter().filter(|f| self.met_with(self.read_in(self.unit, typed * f)));
        by_point.map(Slip::Point).take(1).chain(by_unit).collect()
    }
}

#[cfg(test)]
mod tests {
    use haulout_quantity::{Dimension, unit};

    use super::{Slip, Suspect};

    fn length(typed: f64, symbol: &str, range: (f64, f64)) -> Suspect {
        let unit = unit(symbol);
        let value = unit.expect("a known unit").to_si(typed);
        Suspect { value, range, unit, dimension: Dimension::LENGTH, difference: false }
    }

    fn named(slips: &[Slip]) -> Vec<String> {
        let name = |slip: &Slip| match slip {
            Slip::Point(by) => format!("x {by}"),
            Slip::Unit(unit) => unit.symbol.to_owned(),
        };
        slips.iter().map(name).collect()
    }

    #[test]
    fn a_pool_six_metres_deep() {
        let depth = length(6.0, "m", (0.0, 3.0));
        assert!(!depth.is_plausible());
        // 0.6 m; 6 mm, 6 cm, 6 in = 0.152 m and 6 ft = 1.83 m all lie in the range too.
        assert_eq!(named(&depth.slips()), ["x 0.1", "cm", "ft", "mm", "in"]);
    }

    #[test]
    fn an_animal_of_twenty_four_metres() {
        // 24 m: 2.4 m by the point, 24 cm by the unit; 24 in = 0.61 m too.
        let size = length(24.0, "m", (0.02, 4.0));
        assert_eq!(named(&size.slips()), ["x 0.1", "cm", "mm", "in"]);
    }

    #[test]
    fn the_ends_are_met_with_in_any_unit() {
        // 3 m is 9.842519685039370 ft.
        assert!(length(3.0 / 0.3048, "ft", (0.0, 3.0)).is_plausible());
        assert!(!length(3.01, "m", (0.0, 3.0)).is_plausible());
    }

    #[test]
    fn degrees_fahrenheit_written_as_celsius() {
        let unit = unit("°C");
        let value = unit.expect("known").to_si(78.0);
        let range = (283.15, 308.15);
        let water = Suspect { value, range, unit, dimension: Dimension::TEMPERATURE, difference: false };
        // 78 °F is 25.6 °C; 7.8 °C lies below the range.
        assert_eq!(named(&water.slips()), ["°F"]);
        let hot = Suspect { value: 313.15, ..water };
        assert_eq!(named(&hot.slips()), Vec::<String>::new());
    }
}
