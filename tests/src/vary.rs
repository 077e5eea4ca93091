//! Example designs varied by chance: numbers scaled, yes and no turned, parts left out or said to be none.
//!
//! A generator knows how rooms are built and leaves much unsaid; an example says nearly everything. Varied, it comes to every answer a
//! rule can give.

use serde_json::{Map, Number, Value};

use crate::load;

/// Pseudo-random bits (xorshift64, Marsaglia 2003): the same on every machine.
struct Dice(u64);

impl Dice {
    fn below(&mut self, end: u64) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0 % end.max(1)
    }
}

/// Names, dates and words that mean nothing when they are changed alone.
const KEPT: &[&str] = &[
    "edition", "id", "kind", "space", "project", "held-to", "on", "until", "by", "from", "repeats", "stage",
];

/// What values are multiplied by.
const FACTORS: &[f64] = &[0.0, 0.2, 0.5, 0.8, 0.95, 1.05, 1.25, 2.0, 5.0];

/// A variation of a design that is read without a problem; the same seed gives the same one.
pub fn varied(seed: u64, text: &str) -> String {
    let whole: Value = serde_json::from_str(text).expect("an example is JSON");
    let mut dice = Dice(0x9e37_79b9_7f4a_7c15 ^ seed.wrapping_mul(0x2545_f491_4f6c_dd1d).max(1));
    // A change in this many; less and less until the design can be read.
    let mut rarely = 4 + dice.below(40);
    loop {
        let mut value = whole.clone();
        change(&mut value, &mut dice, rarely);
        let text = value.to_string();
        if load(&text).is_ok() {
            return text;
        }
        rarely += 1 + rarely / 4;
    }
}

fn change(value: &mut Value, dice: &mut Dice, rarely: u64) {
    match value {
        Value::Object(members) => members_of(members, dice, rarely),
        // Coordinates are one drawing: a corner moved alone is another one, and mostly none.
        Value::Array(items) if items.iter().all(Value::is_number) => {}
        Value::Array(items) => items.iter_mut().for_each(|item| change(item, dice, rarely)),
        leaf if dice.below(rarely) == 0 => leaf_of(leaf, dice),
        _ => {}
    }
}

fn members_of(members: &mut Map<String, Value>, dice: &mut Dice, rarely: u64) {
    let keys: Vec<String> = members.keys().filter(|key| !KEPT.contains(&key.as_str())).cloned().collect();
    for key in keys {
        let fate = dice.below(6 * rarely);
        if fate == 0 {
            members.shift_remove(&key);
        } else if fate == 1 {
            members[&key] = Value::from(if dice.below(4) == 0 { "to be decided" } else { "none" });
        } else if let Some(member) = members.get_mut(&key) {
            change(member, dice, rarely);
        }
    }
}

fn leaf_of(leaf: &mut Value, dice: &mut Dice) {
    let factor = FACTORS[dice.below(FACTORS.len() as u64) as usize];
    match leaf {
        Value::Bool(yes) => *yes = !*yes,
        Value::Number(number) => {
            let whole = number.is_u64() || number.is_i64();
            let scaled = number.as_f64().unwrap_or(0.0) * factor;
            let scaled = if whole { scaled.ceil() } else { (scaled * 1e4).round() / 1e4 };
            let new = if whole { Some(Number::from(scaled as i64)) } else { Number::from_f64(scaled) };
            *number = new.unwrap_or_else(|| Number::from(0));
        }
        Value::String(text) if text.starts_with(|c: char| c.is_ascii_digit() || "+-".contains(c)) => {
            *text = scaled(text, factor);
        }
        _ => {}
    }
}

/// Every number of a text multiplied.
fn scaled(text: &str, factor: f64) -> String {
    let (mut out, mut digits) = (String::new(), String::new());
    let put = |out: &mut String, digits: &mut String| {
        match digits.parse::<f64>() {
            // Four places are more than anybody types.
            Ok(number) => out.push_str(&format!("{}", (number * factor * 1e4).round() / 1e4)),
            Err(_) => out.push_str(digits),
        }
        digits.clear();
    };
    for c in text.chars() {
        // The 2 of m2 belongs to its unit.
        let in_unit = digits.is_empty() && out.ends_with(|c: char| c.is_alphabetic());
        if (c.is_ascii_digit() || (c == '.' && !digits.is_empty())) && !in_unit {
            digits.push(c);
        } else {
            put(&mut out, &mut digits);
            out.push(c);
        }
    }
    put(&mut out, &mut digits);
    out
}

#[cfg(test)]
mod tests {
    use super::scaled;

    #[test]
    fn units_stay_what_they_are() {
        assert_eq!(scaled("0.6 m3/h", 2.0), "1.2 m3/h");
        assert_eq!(scaled("24 to 26 °C", 0.5), "12 to 13 °C");
        assert_eq!(scaled("+0.85 m", 0.2), "+0.17 m");
        assert_eq!(scaled("2 ft 6 in", 2.0), "4 ft 12 in");
    }
}
