//! What feeds an item: mains or extra-low voltage, what trips, and from what voltage codes begin to mind.

use haulout_calc::formula::Formula;
use haulout_model::Subject;
use haulout_quantity::si::{ElectricCurrent, ElectricPotential};
use haulout_sheet::{All, Known, Limit, Line, Sheet};

use super::{item, pick, said_none};

const MAINS: u16 = 0;
const SELV_AC: u16 = 1;
const SELV_DC: u16 = 2;
const TERMS: &str = "terms of IEC 60364-4-41 (recalled)";

static FROM_MAINS: Formula<(u16,), bool> = Formula {
    card: &pick("fed from the mains", "mains", "neither extra-low voltage nor separated", &["supply"], TERMS),
    run: |(supply,)| Ok(supply == MAINS),
};

static EXTRA_LOW: Formula<(u16,), bool> = Formula {
    card: &pick("fed with extra-low voltage", "SELV", "SELV, AC or DC", &["supply"], TERMS),
    run: |(supply,)| Ok(supply == SELV_AC || supply == SELV_DC),
};

static NOT_EXTRA_LOW: Formula<(u16,), bool> = Formula {
    card: &pick("not fed with extra-low voltage", "not SELV", "mains or separated", &["supply"], TERMS),
    run: |(supply,)| Ok(supply != SELV_AC && supply != SELV_DC),
};

static BY_SUPPLY: Formula<(u16, ElectricPotential, ElectricPotential), ElectricPotential> = Formula {
    card: &pick(
        "voltage allowed for a supply",
        "U",
        "U_dc for DC, otherwise U_ac",
        &["supply", "U_ac", "U_dc"],
        TERMS,
    ),
    run: |(supply, ac, dc)| Ok(if supply == SELV_DC { dc } else { ac }),
};

static ABOVE: Formula<(ElectricPotential, ElectricPotential), bool> = Formula {
    card: &pick(
        "above the low-voltage contact limit",
        "above",
        "voltage of more than the limit",
        &["U", "U_c"],
        "NFPA 70 (2020) article 100, as in the 2022 California Electrical Code",
    ),
    run: |(voltage, limit)| Ok(voltage.value > limit.value * (1.0 + 1e-9)),
};

fn supply(sheet: Sheet<'_>, at: Subject) -> Known<Line<u16>> {
    Ok(item(sheet, at).supply.on(sheet)?.option())
}

/// Whether the mains feed the item.
///
/// # Errors
/// A gap when its supply is not stated.
pub fn from_mains(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&FROM_MAINS, (supply(sheet, at)?,))
}

/// Whether extra-low voltage feeds it.
///
/// # Errors
/// As [`from_mains`].
pub fn extra_low(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&EXTRA_LOW, (supply(sheet, at)?,))
}

/// Whether anything but extra-low voltage feeds it.
///
/// # Errors
/// As [`from_mains`].
pub fn not_extra_low(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&NOT_EXTRA_LOW, (supply(sheet, at)?,))
}

/// Its voltage.
///
/// # Errors
/// A gap when it is not stated.
pub fn voltage(sheet: Sheet<'_>, at: Subject) -> Known<Line<ElectricPotential>> {
    item(sheet, at).voltage.on(sheet)
}

/// The limit for its kind of supply: one for AC, one for DC.
///
/// # Errors
/// As [`from_mains`].
pub fn voltage_allowed(
    sheet: Sheet<'_>,
    at: Subject,
    ac: &'static Limit,
    dc: &'static Limit,
) -> Known<Line<ElectricPotential>> {
    sheet.work(&BY_SUPPLY, (supply(sheet, at)?, sheet.limit(ac), sheet.limit(dc)))
}

/// Whether its voltage is above the contact limit for AC or DC.
///
/// # Errors
/// Gaps for supply and voltage.
pub fn above_contact_limit(
    sheet: Sheet<'_>,
    at: Subject,
    ac: &'static Limit,
    dc: &'static Limit,
) -> Known<Line<bool>> {
    let lines = (voltage(sheet, at), voltage_allowed(sheet, at, ac, dc)).all()?;
    sheet.work(&ABOVE, lines)
}

/// What it trips at: a current, or the plain no of a file that says `"none"`.
pub enum Trips {
    /// Rated residual current.
    At(Line<ElectricCurrent>),
    /// There is no such protection; the line is a no with its place.
    Never(Line<bool>),
}

/// Its protection by residual current.
///
/// # Errors
/// A gap when nothing is said about it.
pub fn trips(sheet: Sheet<'_>, at: Subject) -> Known<Trips> {
    let stated = &item(sheet, at).residual_current;
    if stated.is_none() {
        return Ok(Trips::Never(said_none(sheet, stated.seat().origin)));
    }
    stated.on(sheet).map(Trips::At)
}
