//! Designs whose basking places and waters stand exactly at the ends of the bands of a species, and just beyond.

use haulout_engine::Rule;
use haulout_register::{SPECIES, Species, Value};

use super::moved::Played;
use crate::load;

/// What a design of one room says where its places are warm and bright, and the species it keeps.
const WARM: &str = "\"surface-temperature\": \"36 °C\"";
const BRIGHT: &str = "\"uv-index\": 2.0";
const KEPT: [&str; 2] = ["trachemys-scripta", "emys-orbicularis"];
/// What a design of one warm pool says of its water.
const WATER: &str = "\"temperature\": \"25 °C\", \"swing\": \"1 K\"";

/// How far beyond the end a place may be and still be taken in by a band moved by 5 %.
const BEYOND: f64 = 0.02;

/// For every species with bands and every end of them designs at the end, and a little outside.
pub fn at_the_ends(rules: &[Rule]) -> Vec<Played> {
    let warm = |rule: &str, species: &Species, value: &Value, out: f64| {
        let celsius = value.value - 273.15;
        let text = format!("\"surface-temperature\": \"{} °C\"", celsius * (1.0 + out));
        played(rules, rule, species, &[(WARM, text)])
    };
    let bright = |species: &Species, middle: f64, value: &Value, out: f64| {
        let warm = format!("\"surface-temperature\": \"{middle} °C\"");
        let text = format!("\"uv-index\": {}", value.value * (1.0 + out));
        played(rules, "ultraviolet-where-it-is-warm", species, &[(WARM, warm), (BRIGHT, text)])
    };
    let water = |species: &Species, low: f64, high: f64| {
        let text = format!("\"temperature\": \"{low} to {high} °C\"");
        played(rules, "water-in-every-band", species, &[(WATER, text)])
    };
    let mut all = Vec::new();
    for species in SPECIES {
        if let (Some(low), Some(high)) = (&species.water_low, &species.water_high) {
            let (low, high) = (low.value - 273.15, high.value - 273.15);
            all.push(water(species, low, high));
            all.push(water(species, low * (1.0 - BEYOND), high));
            all.push(water(species, low, high * (1.0 + BEYOND)));
        }
        let Some(bask) = species.bask().filter(|b| b.basks.value > 0.5) else { continue };
        let warmth = bask.surface_low.as_ref().zip(bask.surface_high.as_ref());
        let uv = bask.uv_low.as_ref().zip(bask.uv_high.as_ref());
        for beyond in [0.0, BEYOND] {
            if let Some((low, high)) = warmth {
                all.push(warm("surface-warm-enough", species, low, -beyond));
                all.push(warm("surface-not-too-hot", species, high, beyond));
            }
            if let Some(((low, high), (dark, light))) = warmth.zip(uv) {
                let middle = (low.value + high.value) / 2.0 - 273.15;
                all.push(bright(species, middle, dark, -beyond));
                all.push(bright(species, middle, light, beyond));
            }
        }
    }
    all.into_iter().flatten().collect()
}

/// The first marked example of a rule with another species and other numbers.
fn played(rules: &[Rule], rule: &str, species: &Species, said: &[(&str, String)]) -> Option<Played> {
    let rule = rules.iter().find(|r| r.card.id == rule)?;
    let first = rule.examples.first()?;
    let own = KEPT.iter().fold(first.design.to_string(), |text, kept| text.replace(kept, species.key));
    let text = said.iter().fold(own, |text, (was, now)| text.replace(was, now));
    let name = format!("{} at the end of its band: {}", species.latin, said.last()?.1);
    let subject = first.subject.to_string();
    Some(Played { name, rule: Some(rule.card.id.to_string()), subject, loaded: load(&text).ok()? })
}
