//! What sort of thing an item is, as codes divide them: receptacles, switchgear, luminaires, what works under water.

use haulout_calc::formula::Formula;
use haulout_model::Subject;
use haulout_quantity::Measure;
use haulout_quantity::si::{ElectricPotential, Length};
use haulout_sheet::{All, Known, Limit, Line, Sheet};

use super::height::HEIGHT_OVER_WATER;
use super::path::WATER_DISTANCE;
use super::zone::NOTHING;
use super::{item, pick};

/// Feet to metres and back is good to this: what is just so far off counts as beside.
const BORDER: f64 = 1.0 + 1e-9;
const SOCKET: u16 = 0;
const SWITCH: u16 = 1;
const LUMINAIRES: [u16; 2] = [2, 3];
const PUMP: u16 = 5;
const SWITCHGEAR: [u16; 3] = [SWITCH, 6, 7];
const NEC: &str = "NFPA 70 (2020) article 680, as in the 2022 California Electrical Code";
const IEC: &str = "IEC 60364-7-702:2010, as reported by guides to its national editions";

static A_SOCKET: Formula<(u16,), bool> = Formula {
    card: &pick("receptacle", "socket", "socket", &["kind"], NEC),
    run: |(kind,)| Ok(kind == SOCKET),
};

static GEAR: Formula<(u16,), bool> = Formula {
    card: &pick("switchgear", "gear", "socket, switch, control gear or transformer", &["kind"], IEC),
    run: |(kind,)| Ok(kind == SOCKET || SWITCHGEAR.contains(&kind)),
};

static EQUIPMENT: Formula<(u16, bool, bool), bool> = Formula {
    card: &pick(
        "switch, or other equipment above the contact limit",
        "equipment",
        "dry, and a switch, or above the limit and neither socket nor luminaire",
        &["kind", "above", "submersed"],
        NEC,
    ),
    run: |(kind, above, submersed)| {
        let other = kind != SOCKET && !LUMINAIRES.contains(&kind);
        Ok(!submersed && (kind == SWITCH || (above && other)))
    },
};

static OVERHEAD: Formula<(u16, bool, bool), bool> = Formula {
    card: &pick(
        "luminaire over or beside the water",
        "luminaire",
        "dry luminaire or lamp above the contact limit",
        &["kind", "above", "submersed"],
        NEC,
    ),
    run: |(kind, above, submersed)| Ok(LUMINAIRES.contains(&kind) && above && !submersed),
};

static UNDER_WATER: Formula<(u16, bool, Length), bool> = Formula {
    card: &pick(
        "luminaire under this water",
        "luminaire",
        "luminaire or lamp that is submersed here",
        &["kind", "submersed", "D"],
        NEC,
    ),
    run: |(kind, submersed, distance)| {
        Ok(LUMINAIRES.contains(&kind) && submersed && distance.value <= NOTHING)
    },
};

static TRIPPED: Formula<(u16, bool, Length, Length, Length), bool> = Formula {
    card: &pick(
        "near enough to need ground-fault protection",
        "near",
        "above the contact limit; sockets and pumps to d_s, switchgear never, the rest to d_o",
        &["kind", "above", "D", "d_s", "d_o"],
        NEC,
    ),
    run: |(kind, above, distance, sockets, others)| {
        let reach = match kind {
            SOCKET | PUMP => sockets,
            kind if SWITCHGEAR.contains(&kind) => Length::from_si(0.0),
            _ => others,
        };
        // 20 ft typed in metres must not fall on the other side.
        Ok(above && distance < reach * (1.0 - 1e-9))
    },
};

static BESIDE: Formula<(Length, Length, Length, Length), bool> = Formula {
    card: &pick("metal beside the water", "near", "within d and lower than h", &["D", "H", "d", "h"], NEC),
    run: |(distance, height, wide, high)| Ok(distance <= wide * BORDER && height <= high * BORDER),
};

static BY_KIND: Formula<(u16, ElectricPotential, ElectricPotential), ElectricPotential> = Formula {
    card: &pick(
        "voltage allowed under water",
        "U",
        "U_p for pumps, otherwise U_l",
        &["kind", "U_l", "U_p"],
        NEC,
    ),
    run: |(kind, luminaires, pumps)| Ok(if kind == PUMP { pumps } else { luminaires }),
};

fn kind(sheet: Sheet<'_>, at: Subject) -> Known<Line<u16>> {
    Ok(item(sheet, at).kind.on(sheet)?.option())
}

/// Whether it works under water on purpose.
///
/// # Errors
/// A gap when that is not stated.
pub fn submersed(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    item(sheet, at).submersed.on(sheet)
}

/// Whether it is bonded.
///
/// # Errors
/// A gap when that is not stated.
pub fn bonded(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    item(sheet, at).bonded.on(sheet)
}

/// Whether it is a receptacle.
///
/// # Errors
/// A gap when its kind is not stated.
pub fn is_socket(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&A_SOCKET, (kind(sheet, at)?,))
}

/// Whether it is a socket, a switch, control gear or a transformer.
///
/// # Errors
/// As [`is_socket`].
pub fn is_switchgear(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&GEAR, (kind(sheet, at)?,))
}

/// Whether it is a dry switch, or other dry equipment above the contact limit.
///
/// # Errors
/// Gaps for its kind, its voltage and whether it is submersed.
pub fn is_equipment(sheet: Sheet<'_>, at: Subject, above: Known<Line<bool>>) -> Known<Line<bool>> {
    let lines = (kind(sheet, at), above, submersed(sheet, at)).all()?;
    sheet.work(&EQUIPMENT, lines)
}

/// Whether it is a dry luminaire above the contact limit.
///
/// # Errors
/// As [`is_equipment`].
pub fn is_overhead(sheet: Sheet<'_>, at: Subject, above: Known<Line<bool>>) -> Known<Line<bool>> {
    let lines = (kind(sheet, at), above, submersed(sheet, at)).all()?;
    sheet.work(&OVERHEAD, lines)
}

/// Whether it is a luminaire under the water of this pool.
///
/// # Errors
/// Gaps for its kind, its place and whether it is submersed.
pub fn is_under_water(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let lines = (kind(sheet, at), submersed(sheet, at), WATER_DISTANCE.of(sheet, at)).all()?;
    sheet.work(&UNDER_WATER, lines)
}

/// Whether it is near enough to need ground-fault protection: sockets and pumps by one distance, the rest by another.
///
/// # Errors
/// Gaps for its kind, its voltage and its place.
pub fn needs_tripping(
    sheet: Sheet<'_>,
    at: Subject,
    above: Known<Line<bool>>,
    sockets: &'static Limit,
    others: &'static Limit,
) -> Known<Line<bool>> {
    let (kind, above, distance) = (kind(sheet, at), above, WATER_DISTANCE.of(sheet, at)).all()?;
    sheet.work(&TRIPPED, (kind, above, distance, sheet.limit(sockets), sheet.limit(others)))
}

/// Whether it is beside the water: within one distance and lower than another over the water.
///
/// # Errors
/// Gaps for its place.
pub fn is_beside(
    sheet: Sheet<'_>,
    at: Subject,
    wide: &'static Limit,
    high: &'static Limit,
) -> Known<Line<bool>> {
    let (distance, height) = (WATER_DISTANCE.of(sheet, at), HEIGHT_OVER_WATER.of(sheet, at)).all()?;
    sheet.work(&BESIDE, (distance, height, sheet.limit(wide), sheet.limit(high)))
}

/// The voltage allowed under water: one for luminaires and the rest, one for pumps.
///
/// # Errors
/// As [`is_socket`].
pub fn voltage_under_water(
    sheet: Sheet<'_>,
    at: Subject,
    luminaires: &'static Limit,
    pumps: &'static Limit,
) -> Known<Line<ElectricPotential>> {
    sheet.work(&BY_KIND, (kind(sheet, at)?, sheet.limit(luminaires), sheet.limit(pumps)))
}
