//! The zone of the water's surroundings that an item is in: 0 in the basin, 1 and 2 round it, 3 outside.

use haulout_calc::formula::Formula;
use haulout_model::Subject;
use haulout_quantity::Measure;
use haulout_quantity::si::{Length, Ratio};
use haulout_sheet::{All, Known, Limit, Line, Sheet};

use super::height::HEIGHT_OVER_RIM;
use super::path::WATER_DISTANCE;
use super::{pick, water};

const SOURCE: &str = "zones of IEC 60364-7-702:2010, as reported by guides to BS 7671 section 702 and to CEI 64-8/7; that fountains have no zone 2 by a secondary text, against one guide that draws it";
/// Feet to metres and back is good to this: an item on the border is outside.
const BORDER: f64 = 1.0 - 1e-9;
/// As near as this to the water or its rim is in the basin, metres.
pub(super) const NOTHING: f64 = 1e-9;
const FOUNTAIN: u16 = 2;
const OTHER_WATER: u16 = 3;

/// What zones measure: width of zone 1, of zone 2 beyond it, and their height.
#[derive(Clone, Copy)]
pub struct ZoneLimits {
    /// Width of zone 1.
    pub first: &'static Limit,
    /// Width of zone 2.
    pub second: &'static Limit,
    /// Height of both over rim and floor.
    pub height: &'static Limit,
}

static ZONE: Formula<(Length, Length, u16, Length, Length, Length), Ratio> = Formula {
    card: &pick(
        "zone an item is in",
        "zone",
        "0 in the basin, 1 to d_1 from the water, 2 to d_1 + d_2 unless nobody enters, both up to h_z; 3 outside",
        &["D", "h", "class", "d_1", "d_2", "h_z"],
        SOURCE,
    ),
    run: |(distance, height, class, first, second, tall)| {
        let second = if class == FOUNTAIN { Length::from_si(0.0) } else { second };
        let within = |reach: Length| distance < reach * BORDER;
        let zone = match (class == OTHER_WATER || height >= tall * BORDER, distance.value <= NOTHING) {
            (true, _) => 3.0,
            (false, true) if height.value <= NOTHING => 0.0,
            _ if within(first) => 1.0,
            _ if within(first + second) => 2.0,
            _ => 3.0,
        };
        Ok(Ratio::from_si(zone))
    },
};

static NEAR: Formula<(Ratio,), bool> = Formula {
    card: &pick("in zone 0 or 1", "near", "zone of at most 1", &["zone"], SOURCE),
    run: |(zone,)| Ok(zone.value < 1.5),
};

static ZONED: Formula<(Ratio,), bool> = Formula {
    card: &pick("in a zone", "zoned", "zone of at most 2", &["zone"], SOURCE),
    run: |(zone,)| Ok(zone.value < 2.5),
};

static INGRESS: Formula<(Ratio, Ratio, Ratio, Ratio), Ratio> = Formula {
    card: &pick(
        "numeral asked for in a zone",
        "X",
        "that of the zone, nothing outside",
        &["zone", "X_0", "X_1", "X_2"],
        SOURCE,
    ),
    run: |(zone, basin, first, second)| {
        let numerals = [basin, first, second];
        Ok(numerals.get(zone.value as usize).copied().unwrap_or(Ratio::from_si(0.0)))
    },
};

/// The zone an item is in.
///
/// # Errors
/// Everything missing for its distance, its height and the class of the water.
pub fn zone(sheet: Sheet<'_>, at: Subject, limits: ZoneLimits) -> Known<Line<Ratio>> {
    let (distance, height) = (WATER_DISTANCE.of(sheet, at), HEIGHT_OVER_RIM.of(sheet, at));
    let (distance, height, class) = (distance, height, water::classed(sheet)).all()?;
    let [first, second, tall] = [limits.first, limits.second, limits.height].map(|l| sheet.limit(l));
    sheet.work(&ZONE, (distance, height, class, first, second, tall))
}

/// Whether it is in zone 0 or 1.
///
/// # Errors
/// As [`zone`].
pub fn in_zone_one(sheet: Sheet<'_>, at: Subject, limits: ZoneLimits) -> Known<Line<bool>> {
    sheet.work(&NEAR, (zone(sheet, at, limits)?,))
}

/// Whether it is in any zone.
///
/// # Errors
/// As [`zone`].
pub fn in_a_zone(sheet: Sheet<'_>, at: Subject, limits: ZoneLimits) -> Known<Line<bool>> {
    sheet.work(&ZONED, (zone(sheet, at, limits)?,))
}

/// The numeral of protection against water asked for where the item is, out of those for zones 0, 1 and 2.
///
/// # Errors
/// As [`zone`].
pub fn numeral_asked(
    sheet: Sheet<'_>,
    at: Subject,
    limits: ZoneLimits,
    numerals: [&'static Limit; 3],
) -> Known<Line<Ratio>> {
    let [basin, first, second] = numerals.map(|l| sheet.limit(l));
    sheet.work(&INGRESS, (zone(sheet, at, limits)?, basin, first, second))
}
