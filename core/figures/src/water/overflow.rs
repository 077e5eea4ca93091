//! What comes into a pool by pump, and what its overflows can take away.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::mouth::{CREST_BEHIND_GRILLE, PIPE_MOUTHS, PIPES_BEHIND_GRILLE};
use haulout_calc::hydraulics::weir::FLOW_OVER;
use haulout_model::circuit::Circuit;
use haulout_model::overflow::Overflow;
use haulout_model::returns::Return;
use haulout_model::{About, State, Subject};
use haulout_quantity::si::{Length, Ratio, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, Known, Line, Many, Sheet};

use super::ladder::{holding_top, leads_to};
use super::lip::{ROUND_CREST, ROUNDED, SHARP_CREST};
use crate::circuit::duty::DELIVERED_FLOW;
use crate::intake::STILL_OPEN;
use crate::item::said_none;
use crate::pool::pool;

const fn law(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind,
        basis: Basis::Published,
        source: "arithmetic",
        range: "any numbers",
    }
}

pub(crate) static FLOWS: Many<VolumeRate, VolumeRate> =
    Many { card: &law("sum of flows", "Q", "+", &[], Kind::Closed), run: |q| Ok(q.iter().copied().sum()) };

static SHARE_OF_FLOW: Formula<(Ratio, VolumeRate), VolumeRate> = Formula {
    card: &law("share of a flow", "Q", "s × Q_all", &["s", "Q_all"], Kind::Closed),
    run: |(share, flow)| Ok(share * flow),
};

static OVER_INVERT: Formula<(Length, Length), Length> = Formula {
    card: &law("head over an invert", "h", "max(0, z_top - z_inv)", &["z_top", "z_inv"], Kind::Closed),
    run: |(top, invert)| Ok(if top > invert { top - invert } else { Length::from_si(0.0) }),
};

static OF_KIND: Formula<(VolumeRate, u16), VolumeRate> = Formula {
    card: &law("flow into an overflow of its kind", "Q_o", "Q", &["Q", "kind"], Kind::Closed),
    run: |(flow, _kind)| Ok(flow),
};

static STANDS_READY: Formula<(VolumeRate, bool), VolumeRate> = Formula {
    card: &law(
        "flow into an overflow of last resort",
        "Q_e",
        "Q if it stands ready for the day the others are blocked, otherwise nothing",
        &["Q", "ready"],
        Kind::Pick,
    ),
    run: |(flow, ready)| Ok(if ready { flow } else { VolumeRate::from_si(0.0) }),
};

static NO_OVERFLOW: Formula<(bool,), VolumeRate> = Formula {
    card: &law("flow into no overflow", "Q_e", "none, as the file says", &["said"], Kind::Pick),
    run: |(_said,)| Ok(VolumeRate::from_si(0.0)),
};

static RATIO: Formula<(VolumeRate, VolumeRate), Ratio> = Formula {
    card: &law("overflow against inflow", "r", "Q_e / Q_in", &["Q_e", "Q_in"], Kind::Closed),
    run: |(out, comes)| {
        if comes.value <= 0.0 {
            return Err(Refusal::new(
                "no pump returns water to this pool, so there is nothing to hold its overflow against",
            ));
        }
        Ok(out / comes)
    },
};

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: &'static str,
) -> FigureCard {
    let us_unit = if unit.is_empty() { "" } else { "gal(US)/min" };
    FigureCard { id, title, about: About::Pool, axes, unit, us_unit, resolution: None }
}

/// What pumps give back to a pool.
pub static PUMPED_INFLOW: Figure<Line<VolumeRate>> = Figure {
    card: &card("pumped-inflow", "flow pumped into the pool", &[Axis::Filter], "m3/h"),
    work: |sheet, at| {
        let mut flows: Vec<Known<Line<VolumeRate>>> = Vec::new();
        let circuits = &sheet.design().circuits;
        flows.extend(circuits.missing().map(|m| Err(Gap::from(m).into())));
        for (i, circuit) in circuits.items().iter().enumerate() {
            let serves = circuit.serves.items().iter().any(|r| r.name() == pool(sheet, at).id);
            let silent = circuit.returns.missing().filter(|_| serves);
            flows.extend(silent.map(|m| Err(Gap::from(m).into())));
            let own = circuit.returns.items().iter().filter(|r| leads_to(sheet, &r.into, at));
            flows.extend(own.map(|r| of_return(sheet, Subject::nth(About::Circuit, i), circuit, r)));
        }
        sheet.fold(&FLOWS, &flows.all()?)
    },
};

/// What comes out of a return: its share, or everything where it is the only one.
pub(crate) fn of_return(
    sheet: Sheet<'_>,
    at: Subject,
    circuit: &Circuit,
    own: &Return,
) -> Known<Line<VolumeRate>> {
    let flow = DELIVERED_FLOW.of(sheet, at);
    if !own.share.is_given() && circuit.returns.items().len() == 1 {
        return flow;
    }
    sheet.work(&SHARE_OF_FLOW, (own.share.on(sheet), flow).all()?)
}

/// Option of an overflow that is a pipe end.
const PIPE: u16 = 0;

/// What an overflow takes when the water stands at a level, half its grille blocked.
fn taken(sheet: Sheet<'_>, at: Subject, own: &Overflow, level: Line<Length>) -> Known<Line<VolumeRate>> {
    let invert = match (own.invert.state(), own.weir.level.state()) {
        (State::Given(_), _) => crate::level(sheet, &own.invert),
        (_, State::Given(_)) => crate::level(sheet, &own.weir.level),
        _ => crate::level(sheet, &pool(sheet, at).levels.overflow),
    };
    let (kind, invert) = (own.kind.on(sheet), invert).all()?;
    let head = sheet.work(&OVER_INVERT, (level, invert))?;
    let flow = match sheet.option_of(kind) {
        PIPE => pipes(sheet, own, head),
        _ => crest(sheet, own, head),
    };
    sheet.work(&OF_KIND, (flow.map_err(|gaps| gaps.because(kind.id()))?, kind.option()))
}

fn pipes(sheet: Sheet<'_>, own: &Overflow, head: Line<Length>) -> Known<Line<VolumeRate>> {
    let (bore, count) = (own.bore.on(sheet), own.count.on(sheet)).all()?;
    if own.net_area.is_none() {
        return sheet.construct(&PIPE_MOUTHS, (head, bore, count));
    }
    let area = own.net_area.on(sheet)?;
    sheet.construct(&PIPES_BEHIND_GRILLE, (head, bore, count, area, sheet.register(&STILL_OPEN, None)))
}

fn crest(sheet: Sheet<'_>, own: &Overflow, head: Line<Length>) -> Known<Line<VolumeRate>> {
    let (kind, width) = (own.weir.kind.on(sheet), own.weir.width.on(sheet)).all()?;
    let value = if sheet.option_of(kind) == ROUNDED { &ROUND_CREST } else { &SHARP_CREST };
    let coefficient = sheet.register(value, Some(kind.id()));
    if own.net_area.is_none() {
        return sheet.work(&FLOW_OVER, (coefficient, width, head));
    }
    let area = own.net_area.on(sheet).map_err(|gaps| gaps.because(kind.id()))?;
    sheet.construct(&CREST_BEHIND_GRILLE, (head, width, coefficient, area, sheet.register(&STILL_OPEN, None)))
}

/// The sum over the overflows of a pool; that there are none is no gap, they then take nothing.
fn sum_of<'s>(
    sheet: Sheet<'s>,
    at: Subject,
    one: impl Fn(&'s Overflow) -> Known<Line<VolumeRate>>,
) -> Known<Line<VolumeRate>> {
    let overflows = &pool(sheet, at).overflows;
    match (overflows.state(), overflows.missing()) {
        (State::None, Some(none)) => sheet.work(&NO_OVERFLOW, (said_none(sheet, none.origin),)),
        (_, Some(missing)) => Err(Gap::from(missing).into()),
        _ => {
            let flows: Vec<Known<Line<VolumeRate>>> = overflows.items().iter().map(one).collect();
            sheet.fold(&FLOWS, &flows.all()?)
        }
    }
}

/// What all overflows of a pool take together when the water stands at a level.
///
/// # Errors
/// A gap where one of them is not stated far enough.
pub fn all_take(sheet: Sheet<'_>, at: Subject, level: Line<Length>) -> Known<Line<VolumeRate>> {
    sum_of(sheet, at, |own| taken(sheet, at, own, level))
}

/// What the overflows of last resort take when the water stands at the top of what holds it.
pub static EMERGENCY_CAPACITY: Figure<Line<VolumeRate>> = Figure {
    card: &card("emergency-overflow", "what the overflows of last resort take", &[], "m3/h"),
    work: |sheet, at| {
        let top = holding_top(sheet, at)?;
        sum_of(sheet, at, |own| {
            let lines = (taken(sheet, at, own, top), own.emergency.on(sheet)).all()?;
            sheet.work(&STANDS_READY, lines)
        })
    },
};

/// The same against what is pumped in, the filters clean.
pub static EMERGENCY_RATIO: Figure<Line<Ratio>> = Figure {
    card: &card(
        "emergency-overflow-ratio",
        "overflows of last resort against the pumped flow",
        &[Axis::Filter],
        "",
    ),
    work: |sheet, at| {
        let lines = (EMERGENCY_CAPACITY.of(sheet, at), PUMPED_INFLOW.of(sheet, at)).all()?;
        sheet.work(&RATIO, lines)
    },
};

/// Whether a pump feeds the pool.
///
/// # Errors
/// A gap where it is not stated.
pub fn pump_fed(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    pool(sheet, at).pump_fed.on(sheet)
}

/// What the fill runs with; where the file says that there is no fill, a no with its place.
pub fn fill_flow(sheet: Sheet<'_>, at: Subject) -> Result<Known<Line<VolumeRate>>, Line<bool>> {
    let flow = &pool(sheet, at).fill.flow;
    if flow.is_none() { Err(said_none(sheet, flow.seat().origin)) } else { Ok(flow.on(sheet)) }
}

/// A level so much under the top of what holds the water.
///
/// # Errors
/// A gap where the rim or the top of the liner is missing.
pub fn below_the_top(sheet: Sheet<'_>, at: Subject, by: Line<Length>) -> Known<Line<Length>> {
    sheet.work(&crate::terms::BELOW, (holding_top(sheet, at)?, by))
}

static PARTED: Formula<(u16,), bool> = Formula {
    card: &law(
        "parted by air",
        "yes",
        "backflow protection is an air gap or a break tank",
        &["backflow"],
        Kind::Pick,
    ),
    run: |(backflow,)| Ok(backflow <= BREAK_TANK),
};

/// Option of a break tank; the air gap stands before it.
const BREAK_TANK: u16 = 1;

/// Whether air parts the fill from the pool.
///
/// # Errors
/// A gap where the protection is not stated.
pub fn parted_by_air(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&PARTED, (pool(sheet, at).fill.backflow.on(sheet)?.option(),))
}

/// The gap between the end of the fill and the highest water.
pub static AIR_GAP: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "air-gap",
        title: "air gap of the fill",
        about: About::Pool,
        axes: &[],
        unit: "mm",
        us_unit: "in",
        resolution: None,
    },
    work: |sheet, at| pool(sheet, at).fill.air_gap.on(sheet),
};
