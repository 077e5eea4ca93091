//! The pen of the generator: chance, and numbers written in units, levels and places as a designer writes them.

use serde_json::{Value, json};

use super::{Manner, Units};

/// Feet and inches in metres, by definition (international yard and pound agreement of 1959).
const FOOT: f64 = 0.3048;

/// Draws by chance (splitmix64, Steele, Lea and Flood 2014) and writes what was drawn.
pub(super) struct Pen {
    state: u64,
    /// How it writes.
    pub(super) manner: Manner,
    /// Metres in the unit of the drawing.
    unit: f64,
}

impl Pen {
    pub(super) fn new(seed: u64, manner: Manner) -> Self {
        let mut pen = Pen { state: seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x5eed, manner, unit: 1.0 };
        // Drawn in every manner, so that the same seed stays the same design.
        let mixed = *pen.pick(&[1.0, 1.0, 0.01, 0.001, FOOT, FOOT / 12.0]);
        pen.unit = match manner.units {
            Units::Mixed => mixed,
            Units::Metric => 1.0,
            Units::Us => FOOT,
        };
        pen
    }

    /// The word for the unit of the drawing.
    pub(super) fn unit_word(&self) -> &'static str {
        let words = [("m", 1.0), ("cm", 0.01), ("mm", 0.001), ("ft", FOOT), ("in", FOOT / 12.0)];
        words.iter().find(|(_, metres)| *metres == self.unit).map_or("m", |(word, _)| word)
    }

    fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// One of `count`, from 0.
    pub(super) fn below(&mut self, count: usize) -> usize {
        (self.next() % count.max(1) as u64) as usize
    }

    /// True once in `times`.
    pub(super) fn once_in(&mut self, times: usize) -> bool {
        self.below(times) == 0
    }

    /// One of several.
    pub(super) fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[self.below(from.len())]
    }

    /// Between two numbers, in whole steps, so that both can be typed.
    pub(super) fn between(&mut self, low: f64, high: f64, step: f64) -> f64 {
        let steps = ((high - low) / step).round() as usize + 1;
        tidy(low + step * self.below(steps) as f64)
    }

    /// A value given in SI, in one of these units: symbol, factor, metric or not.
    fn written(&mut self, si: f64, units: &[(&str, f64, bool)]) -> String {
        let taste = self.below(units.len());
        let of = |metric: bool| units.iter().find(|u| u.2 == metric).unwrap_or(&units[0]);
        match self.manner.units {
            Units::Mixed => {
                let (symbol, factor, _) = units[taste];
                format!("{} {symbol}", round(si / factor, 4))
            }
            Units::Metric => format!("{} {}", tidy(si / of(true).1), of(true).0),
            Units::Us => format!("{} {}", si / of(false).1, of(false).0),
        }
    }

    /// A length.
    pub(super) fn length(&mut self, metres: f64) -> String {
        let inch = FOOT / 12.0;
        self.written(
            metres,
            &[
                ("m", 1.0, true),
                ("cm", 0.01, true),
                ("mm", 0.001, true),
                ("in", inch, false),
                ("ft", FOOT, false),
            ],
        )
    }

    /// A length between two, in steps of `step`.
    pub(super) fn some_length(&mut self, low: f64, high: f64, step: f64) -> String {
        let metres = self.between(low, high, step);
        self.length(metres)
    }

    /// An area in m².
    pub(super) fn area(&mut self, square_metres: f64) -> String {
        let square_inch = FOOT * FOOT / 144.0;
        self.written(square_metres, &[("m2", 1.0, true), ("cm2", 1e-4, true), ("in2", square_inch, false)])
    }

    /// A volume in m³.
    pub(super) fn volume(&mut self, cubic_metres: f64) -> String {
        // 231 cubic inches.
        let gallon = 231.0 * 0.0254 * 0.0254 * 0.0254;
        self.written(cubic_metres, &[("m3", 1.0, true), ("L", 1e-3, true), ("gal(US)", gallon, false)])
    }

    /// A flow in m³/h.
    pub(super) fn flow(&mut self, cubic_metres_an_hour: f64) -> String {
        let gallon = 231.0 * 0.0254 * 0.0254 * 0.0254 * 60.0;
        let units = [("m3/h", 1.0, true), ("L/min", 0.06, true), ("gal(US)/min", gallon, false)];
        self.written(cubic_metres_an_hour, &units)
    }

    /// A mass in kg.
    pub(super) fn mass(&mut self, kilograms: f64) -> String {
        self.written(kilograms, &[("kg", 1.0, true), ("g", 1e-3, true), ("lb", 0.453_592_37, false)])
    }

    /// A mass of feed in g a day.
    pub(super) fn feed(&mut self, grams: f64) -> String {
        self.written(grams, &[("g/d", 1.0, true), ("oz/d", 453.592_37 / 16.0, false)])
    }

    /// A temperature, or a band of them, in °C.
    pub(super) fn warmth(&mut self, celsius: f64) -> String {
        let (taste, form) = (self.below(2), self.below(3));
        let us = match self.manner.units {
            Units::Mixed => taste == 1,
            Units::Metric => false,
            Units::Us => true,
        };
        let (of, by, symbol) = if us { (celsius * 1.8 + 32.0, 1.8, "°F") } else { (celsius, 1.0, "°C") };
        let (of, by) = (tidy(of), tidy(by));
        match form {
            0 => format!("{of} {symbol}"),
            1 => format!("{of} to {} {symbol}", tidy(of + 2.0 * by)),
            _ => format!("{of} ± {by} {symbol}"),
        }
    }

    /// A difference of temperatures in K.
    pub(super) fn swing(&mut self, kelvin: f64) -> String {
        let taste = self.below(2);
        let us = match self.manner.units {
            Units::Mixed => taste == 1,
            Units::Metric => false,
            Units::Us => true,
        };
        if us { format!("{} °F difference", tidy(kelvin * 1.8)) } else { format!("{kelvin} K") }
    }

    /// A number in the unit of the drawing.
    fn bare(&self, metres: f64) -> f64 {
        match self.manner.units {
            Units::Us => metres / self.unit,
            _ => tidy(metres / self.unit),
        }
    }

    /// A length of a drawing that does not move with it.
    pub(super) fn span(&self, metres: f64) -> Value {
        json!(self.bare(metres))
    }

    /// Two lengths of a drawing that do not move with it.
    pub(super) fn spans(&self, x: f64, y: f64) -> Value {
        json!([self.bare(x), self.bare(y)])
    }

    /// A place in plan, where the whole drawing has been put.
    pub(super) fn place(&self, x: f64, y: f64) -> Value {
        let [x, y] = self.put(x, y);
        json!([self.bare(x), self.bare(y)])
    }

    /// A place in space, heights unmoved.
    pub(super) fn place_at(&self, x: f64, y: f64, z: f64) -> Value {
        let [x, y] = self.put(x, y);
        json!([self.bare(x), self.bare(y), self.bare(z)])
    }

    /// Places in plan.
    pub(super) fn places(&self, places: &[[f64; 2]]) -> Value {
        places.iter().map(|[x, y]| self.place(*x, *y)).collect()
    }

    fn put(&self, x: f64, y: f64) -> [f64; 2] {
        let [x, y] = [tidy(x), tidy(y)];
        let placing = self.manner.placing;
        let [along, across] = self.turned(x, y);
        [along + placing.by[0], across + placing.by[1]]
    }

    /// A direction, turned with the drawing.
    pub(super) fn turned(&self, x: f64, y: f64) -> [f64; 2] {
        let turn = self.manner.placing.turn.to_radians();
        let (sin, cos) = (libm::sin(turn), libm::cos(turn));
        if turn == 0.0 { [x, y] } else { [x * cos - y * sin, x * sin + y * cos] }
    }

    /// The way of a copy, turned with the drawing.
    pub(super) fn way(&self, x: f64, y: f64) -> Value {
        let [x, y] = self.turned(tidy(x), tidy(y));
        self.spans(x, y)
    }

    /// An angle that turns with the drawing, `times` over.
    pub(super) fn turn(&self, degrees: f64, times: f64) -> String {
        format!("{} deg", degrees + times * self.manner.placing.turn)
    }

    /// A level over the datum, with a sign as levels have it.
    pub(super) fn level(&mut self, metres: f64) -> Value {
        let text = self.length(metres);
        json!(if metres >= 0.0 { format!("+{text}") } else { text })
    }

    /// A level hung on another.
    pub(super) fn hung(&mut self, way: &str, on: &str, by: f64) -> Value {
        let by = self.length(by);
        let mut level = serde_json::Map::new();
        level.insert(way.to_owned(), json!(on));
        level.insert("by".to_owned(), json!(by));
        Value::Object(level)
    }

    /// The value with a standing, now and then, or still to be decided.
    pub(super) fn stood(&mut self, value: Value) -> Value {
        match self.below(40) {
            0 => json!("to be decided"),
            1..=4 => {
                let status = *self.pick(&["measured", "maker", "declared"]);
                json!({ "value": value, "status": status, "by": "life support", "on": "2026-10-30" })
            }
            _ => value,
        }
    }
}

/// Without the dust of binary fractions.
fn tidy(value: f64) -> f64 {
    round(value, 9)
}

fn round(value: f64, digits: i32) -> f64 {
    let scale = libm::pow(10.0, f64::from(digits));
    (value * scale).round() / scale
}
