//! Doors: what an animal has to get over when one stands open, and what is left under the leaf.

use haulout_calc::containment::OVER;
use haulout_model::{About, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use super::door;
use super::footing::FOOTING;

const fn card(id: &'static str, title: &'static str, about: About, unit: [&'static str; 2]) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: unit[0], us_unit: unit[1], resolution: None }
}

/// The barrier a door stands in, with the group, as a subject.
fn barrier_of(sheet: Sheet<'_>, at: Subject, group_at: Subject) -> Known<Subject> {
    let door = door(sheet, at);
    let Some(named) = door.barrier.given() else {
        return Err(Gap::from(door.barrier.missing()).into());
    };
    let Some(index) = sheet.design().barrier_named(named.name()) else {
        let what = format!("there is no barrier \"{}\"", named.name());
        return Err(Gap::at(GapKind::LeadsNowhere, what, named.seat().origin).into());
    };
    let pair = About::BarrierGroup.of_two(sheet.design(), index, group_at.index());
    pair.ok_or_else(|| {
        let what = format!("the barrier \"{}\" bounds no space of this group", named.name());
        Gap::at(GapKind::Unsound, what, named.seat().origin).into()
    })
}

/// Height of the sill of an open door over the highest footing at its barrier.
pub static SILL_HEIGHT: Figure<Line<Length>> = Figure {
    card: &card("sill-height", "height of the sill over the highest footing", About::DoorGroup, ["m", "ft"]),
    work: |sheet, at| {
        let part = |about| at.part(about).expect("a door-group has a door and a group");
        let (door_at, group_at) = (part(About::Door), part(About::Group));
        let sill = crate::level(sheet, &door(sheet, door_at).sill);
        let footing = barrier_of(sheet, door_at, group_at).and_then(|pair| FOOTING.of(sheet, pair));
        sheet.work(&OVER, (sill, footing).all()?)
    },
};

/// Gap under the leaf, worn.
pub static GAP_UNDER: Figure<Line<Length>> = Figure {
    card: &card("gap-under", "gap under the leaf", About::Door, ["mm", "in"]),
    work: |sheet, at| door(sheet, at).gap_under.on(sheet),
};

/// A second door stands behind it.
pub static LOBBY: Figure<Line<bool>> = Figure {
    card: &card("lobby", "second door behind it", About::Door, ["", ""]),
    work: |sheet, at| door(sheet, at).lobby.on(sheet),
};
