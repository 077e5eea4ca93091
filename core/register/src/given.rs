//! A species with values that were given from outside, by the names of its traits.

use crate::basking::Bask;
use crate::gait::Gait;
use crate::habit::{Build, Habit};
use crate::species::Species;
use crate::value::Value;

/// Rows of the side tables that belong to one species and stand before those of the tables.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Own {
    pub(crate) habit: Option<Habit>,
    pub(crate) bask: Option<Bask>,
    pub(crate) gait: Option<Gait>,
}

/// Values by the names of their traits.
struct Given<'v>(&'v [(&'static str, Value)]);

impl Given<'_> {
    /// The value given, or the one known so far.
    fn or(&self, name: &str, known: Option<Value>) -> Option<Value> {
        self.0.iter().find(|(given, _)| *given == name).map(|(_, value)| *value).or(known)
    }

    fn any(&self, names: &[&str]) -> bool {
        self.0.iter().any(|(given, _)| names.contains(given))
    }
}

const HABITS: [&str; 5] = ["body", "climbs", "jumps", "digs", "hazardous"];
const BASKING: [&str; 6] = ["basks", "bask-low", "bask-high", "uv-low", "uv-high", "mass"];

impl Species {
    /// A species nothing is known of.
    pub const fn new(key: &'static str, latin: &'static str, common: &'static str) -> Self {
        Species { key, latin, common, body_length: None, water_low: None, water_high: None, own: None }
    }

    /// The species with some values in the place of its own.
    ///
    /// # Errors
    /// The names of values that have to be given beside these.
    pub(crate) fn with(&self, values: &[(&'static str, Value)]) -> Result<Self, Vec<&'static str>> {
        let given = Given(values);
        let mut missing = Vec::new();
        let own = Own {
            habit: self.given_habit(&given, &mut missing),
            bask: self.given_bask(&given, &mut missing),
            gait: self.given_gait(&given),
        };
        if !missing.is_empty() {
            return Err(missing);
        }
        Ok(Species {
            body_length: given.or("body-length", self.body_length),
            water_low: given.or("water-low", self.water_low),
            water_high: given.or("water-high", self.water_high),
            own: Some(Box::leak(Box::new(own))),
            ..*self
        })
    }

    fn given_habit(&self, given: &Given<'_>, missing: &mut Vec<&'static str>) -> Option<Habit> {
        let known = self.habit().copied();
        if !given.any(&HABITS) {
            return known;
        }
        let before = known.map(|h| [h.body, h.climbs, h.jumps, h.digs, h.hazardous]);
        let values = std::array::from_fn(|at| given.or(HABITS[at], before.map(|b| b[at])));
        missing.extend(HABITS.iter().zip(&values).filter(|(_, v)| v.is_none()).map(|(name, _)| *name));
        let [Some(body), Some(climbs), Some(jumps), Some(digs), Some(hazardous)] = values else {
            return None;
        };
        Some(Habit { key: self.key, build: Build::of(body.value), body, climbs, jumps, digs, hazardous })
    }

    fn given_bask(&self, given: &Given<'_>, missing: &mut Vec<&'static str>) -> Option<Bask> {
        let known = self.bask().copied();
        if !given.any(&BASKING) {
            return known;
        }
        let Some(basks) = given.or("basks", known.map(|b| b.basks)) else {
            missing.push("basks");
            return None;
        };
        Some(Bask {
            key: self.key,
            basks,
            surface_low: given.or("bask-low", known.and_then(|b| b.surface_low)),
            surface_high: given.or("bask-high", known.and_then(|b| b.surface_high)),
            uv_low: given.or("uv-low", known.and_then(|b| b.uv_low)),
            uv_high: given.or("uv-high", known.and_then(|b| b.uv_high)),
            mass: given.or("mass", known.and_then(|b| b.mass)),
        })
    }

    fn given_gait(&self, given: &Given<'_>) -> Option<Gait> {
        let known = self.gait().map(|g| g.walks_the_bed);
        let walks_the_bed = given.or("walks-the-bed", known)?;
        Some(Gait { key: self.key, walks_the_bed })
    }
}
