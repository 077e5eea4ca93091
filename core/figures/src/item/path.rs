//! How far an item is from the water, by the shortest path round fixed partitions, its case and its cord taken off.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Outline;
use haulout_calc::reach::{Partition, Surroundings, shortest_path};
use haulout_model::electrical::Partition as Stated;
use haulout_model::{State, Subject, TrackPoints};
use haulout_quantity::si::Length;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Assembly, Datum, Entry, Figure, FigureCard, Gap, Known, Line, LineId, Sheet};

use super::{cord, extent, item, length_card, pick, pool_of};
use crate::pool::pool;

type Counted = Arc<Option<Partition>>;

static PARTITION: Formula<(Arc<TrackPoints>, Length, bool), Counted> = Formula {
    card: &pick(
        "partition to go round",
        "partition",
        "its line and top where it is fixed, closed and insulating; otherwise none",
        &["line", "top", "solid"],
        "IEC 60364-7-702:2010: dimensions take account of walls and fixed partitions, as reported by a published guide to pools and fountains",
    ),
    run: |(line, top, solid)| Ok(Arc::new(solid.then(|| Partition { line: line.0.clone(), top: top.value }))),
};

/// Water, rim, place of the item, then partitions and the outline of the room.
static PATH: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "shortest path from the water round fixed partitions",
        result: "L",
        text: "level where nothing stands between and round ends; a string over a top",
        symbols: &[],
        kind: Kind::Search,
        basis: Basis::Published,
        source: "NFPA 70 (2020) 680.22(A), as in the 2022 California Electrical Code: the shortest path a cord would follow without piercing a floor, wall or door",
        range: "partitions drawn as lines in plan with one top each",
    },
    run: |data| {
        let [water, rim, x, y, z, rest @ ..] = data else {
            return Err(Refusal::new("a path leads from water with a rim to a place"));
        };
        let number = |datum: &Datum| Length::take(datum).value;
        let (to, level) = ([number(x), number(y)], number(z));
        let water = <Arc<Outline>>::take(water).as_ref().clone();
        let mut around = Surroundings { water, rim: number(rim), partitions: room(rest) };
        around.partitions.extend(counted(rest));
        let found = shortest_path(&around, to, level);
        if found.is_finite() {
            return Ok(Length::from_si(found));
        }
        // An item let into a wall of the room, or drawn beyond it, is measured as if that wall were not there.
        around.partitions = counted(rest);
        Ok(Length::from_si(shortest_path(&around, to, level)))
    },
};

fn things<T: Send + Sync + 'static>(data: &[Datum]) -> Vec<Arc<T>> {
    let thing = |datum: &Datum| match datum {
        Datum::Thing(thing) => Arc::clone(thing).downcast().ok(),
        Datum::Number(_) => None,
    };
    data.iter().filter_map(thing).collect()
}

fn counted(data: &[Datum]) -> Vec<Partition> {
    things::<Option<Partition>>(data).iter().filter_map(|p| p.as_ref().clone()).collect()
}

/// Walls of the room have no top that anything is handed over.
fn room(data: &[Datum]) -> Vec<Partition> {
    let outlines = things::<Outline>(data);
    let sides = outlines.iter().flat_map(|outline| outline.sides());
    sides.map(|(a, b)| Partition { line: vec![a, b], top: f64::INFINITY }).collect()
}

static FREE: Formula<(Length, Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "what is left of a path when case and cord are taken off",
        result: "D",
        text: "max(0 m, L - e - c)",
        symbols: &["L", "e", "c"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "a plug-in item is where its cord reaches",
        range: "any lengths",
    },
    run: |(path, extent, cord)| Ok((path - extent - cord).max(Length::from_si(0.0))),
};

/// Shortest path from the water to the centre of the item.
pub static WATER_PATH: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        resolution: Some("to a hundredth of a millimetre round partitions"),
        ..length_card("water-path", "shortest path from the water", &[])
    },
    work: path,
};

/// The same less the reach of case and cord.
pub static WATER_DISTANCE: Figure<Line<Length>> = Figure {
    card: &length_card("water-distance", "distance from the water, case and cord taken off", &[]),
    work: |sheet, at| {
        let item = item(sheet, at);
        let lines = (WATER_PATH.of(sheet, at), extent(sheet, item), cord(sheet, item)).all()?;
        sheet.work(&FREE, lines)
    },
};

fn path(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let (item, pool) = (item(sheet, at), pool(sheet, pool_of(at)));
    let mut lines = vec![
        crate::outline(sheet, &pool.outline).map(Line::id),
        crate::level(sheet, &pool.levels.rim).map(Line::id),
    ];
    lines.extend(item.at.iter().map(|number| number.on(sheet).map(Line::id)));
    lines.extend(partitions(sheet));
    // A room that is not drawn has no walls: the path can only become shorter by that.
    if sheet.design().hall.outline.state().given().is_some() {
        lines.push(crate::outline(sheet, &sheet.design().hall.outline).map(Line::id));
    }
    sheet.assemble(&PATH, &lines.all()?)
}

/// The partitions; a list that is not stated is a gap, none has to be said.
fn partitions(sheet: Sheet<'_>) -> Vec<Known<LineId>> {
    let list = &sheet.design().electrical.partitions;
    match list.state() {
        State::None => Vec::new(),
        State::Given(partitions) => partitions.iter().map(|p| partition(sheet, p).map(Line::id)).collect(),
        State::Absent | State::Undecided => {
            list.missing().map(|missing| Err(Gap::from(missing).into())).into_iter().collect()
        }
    }
}

fn partition(sheet: Sheet<'_>, stated: &Stated) -> Known<Line<Counted>> {
    let parts = (stated.line.on(sheet), crate::level(sheet, &stated.top), stated.solid.on(sheet));
    sheet.construct(&PARTITION, parts.all()?)
}
