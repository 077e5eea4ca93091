//! What a broken joint puts on the floor, and what the floor can hold.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_model::hall::Space;
use haulout_model::{About, State, Subject};
use haulout_quantity::si::{Area, Length, Volume, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Many, Sheet};

use super::back::PLAN_AREA;
use super::ladder::LOWER;
use crate::circuit::circuit;
use crate::item::said_none;
use crate::pool::bed::BED;
use crate::pool::pool;
use crate::pool::volume::VOLUME_BELOW;

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

pub(crate) static HIGHER: Many<Length, Length> = Many {
    card: &law("higher of levels", "z_max", "max", &[], Kind::Closed),
    run: |levels| {
        let higher = |a: Length, b: Length| if b > a { b } else { a };
        levels
            .iter()
            .copied()
            .reduce(higher)
            .ok_or_else(|| Refusal::new("there is no level to take the higher of"))
    },
};

pub(super) static BETWEEN: Formula<(Volume, Volume), Volume> = Formula {
    card: &law("water between two levels", "V", "V_high - V_low", &["V_high", "V_low"], Kind::Closed),
    run: |(high, low)| Ok(high - low),
};

static BUNDED: Formula<(Area, Length, Length), Volume> = Formula {
    card: &law(
        "water a bund holds",
        "V_b",
        "A × max(0, z_bund - z_floor)",
        &["A", "z_bund", "z_floor"],
        Kind::Closed,
    ),
    run: |(area, bund, floor)| Ok(area * if bund > floor { bund - floor } else { Length::from_si(0.0) }),
};

static NO_BUND: Formula<(Area, bool), Volume> = Formula {
    card: &law(
        "water a floor without a bund holds",
        "V_b",
        "none, as the file says",
        &["A", "said"],
        Kind::Pick,
    ),
    run: |(_area, _said)| Ok(Volume::from_si(0.0)),
};

const fn card(
    id: &'static str,
    title: &'static str,
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Circuit, axes: &[], unit, us_unit, resolution: None }
}

/// The pool a circuit draws from.
pub(crate) fn drawn_from(sheet: Sheet<'_>, at: Subject) -> Known<Subject> {
    let from = &circuit(sheet, at).from;
    let Some(reference) = from.given() else { return Err(Gap::from(from.missing()).into()) };
    crate::pool::named(sheet, reference)
}

/// Where the pump stops drawing: at the cut-out, or where the lowest of its intakes draws air.
pub static STOP_LEVEL: Figure<Line<Length>> = Figure {
    card: &card("stop-level", "level at which the pump stops drawing", "m", "ft"),
    work: |sheet, at| {
        let own = circuit(sheet, at);
        let intakes = match own.intakes.missing() {
            Some(missing) => Err(Gap::from(missing).into()),
            None => {
                let tops: Vec<Known<Line<Length>>> =
                    own.intakes.items().iter().map(|i| crate::level(sheet, &i.level)).collect();
                tops.all().and_then(|tops| sheet.fold(&LOWER, &tops))
            }
        };
        if matches!(own.cut_out.state(), State::None) {
            return intakes;
        }
        let (intakes, cut_out) = (intakes, crate::level(sheet, &own.cut_out)).all()?;
        sheet.fold(&HIGHER, &[intakes, cut_out])
    },
};

/// What a joint that parts behind the pump puts on the floor until the pump stops drawing.
pub static JOINT_LOSS: Figure<Line<Volume>> = Figure {
    card: &card("joint-loss", "water lost through a parted joint", "m3", "gal(US)"),
    work: |sheet, at| {
        let from = drawn_from(sheet, at)?;
        let water = crate::level(sheet, &pool(sheet, from).levels.water);
        let (bed, water, stop) = (BED.of(sheet, from), water, STOP_LEVEL.of(sheet, at)).all()?;
        let full = sheet.construct(&VOLUME_BELOW, (bed, water))?;
        sheet.work(&BETWEEN, (full, sheet.construct(&VOLUME_BELOW, (bed, stop))?))
    },
};

/// The space the pump of a circuit stands in, by the electrical item it is.
///
/// # Errors
/// A gap where the item or its space is not stated.
pub fn pump_space<'s>(sheet: Sheet<'s>, at: Subject) -> Known<&'s Space> {
    let link = &circuit(sheet, at).pump.item;
    let Some(reference) = link.given() else { return Err(Gap::from(link.missing()).into()) };
    let design = sheet.design();
    let item = design.electrical.items.items().iter().find(|item| item.id == reference.name());
    let item = item.ok_or_else(|| {
        let what = format!("there is no electrical item \"{}\"", reference.name());
        Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin)
    })?;
    let Some(space) = item.space.given() else { return Err(Gap::from(item.space.missing()).into()) };
    let found = design.space_named(space.name()).map(|i| &design.hall.spaces.items()[i]);
    found.ok_or_else(|| {
        let what = format!("there is no space \"{}\"", space.name());
        Gap::at(GapKind::LeadsNowhere, what, space.seat().origin).into()
    })
}

/// What the bund round the pump holds; nothing where the file says that there is none.
pub static BUND: Figure<Line<Volume>> = Figure {
    card: &card("bund", "water the bund round the pump holds", "m3", "gal(US)"),
    work: |sheet, at| {
        let space = pump_space(sheet, at)?;
        let outline = crate::outline(sheet, &space.outline);
        let area = outline.and_then(|outline| sheet.construct(&PLAN_AREA, (outline,)));
        if matches!(space.bund.state(), State::None) {
            return sheet.work(&NO_BUND, (area?, said_none(sheet, space.bund.seat().origin)));
        }
        let levels = (crate::level(sheet, &space.bund), crate::level(sheet, &space.floor_level)).all();
        let (area, (bund, floor)) = (area, levels).all()?;
        sheet.work(&BUNDED, (area, bund, floor))
    },
};

/// What the floor drain beside the pump takes; nothing where the file says that there is no drain.
pub fn floor_drain(sheet: Sheet<'_>, at: Subject) -> Option<Known<Line<VolumeRate>>> {
    match pump_space(sheet, at) {
        Ok(space) if space.floor_drain.flow.is_none() => None,
        Ok(space) => Some(space.floor_drain.flow.on(sheet)),
        Err(gaps) => Some(Err(gaps)),
    }
}
