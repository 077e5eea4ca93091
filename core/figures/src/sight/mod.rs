//! What is seen of the bed from each viewing position, through the surface and through panels.

pub mod bed;
pub mod panel;
pub mod pool;

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Bed;
use haulout_calc::sight::{Front, Panel, View, Ways, places};
use haulout_model::barrier::Barrier;
use haulout_model::panel::Panel as StatedPanel;
use haulout_model::visitor::{Guard, Position};
use haulout_model::{About, List, Reference, State, Subject, TrackPoints};
use haulout_quantity::Basis;
use haulout_quantity::si::Length;
use haulout_sheet::{
    All, Assembly, Datum, Entry, Figure, FigureCard, Gap, GapKind, Known, Line, LineId, Sheet,
};

use crate::pool::bed::BED;
use crate::terms::ABOVE;

/// How finely a bed is looked at.
pub(crate) const GRAIN: &str =
    "about 150 places of the bed, each for the same plan area: a share to about one part in a hundred";

/// A place of the bed with the ways in water along which it is seen.
#[derive(Debug, Clone)]
pub(crate) struct Place {
    pub(crate) depth: f64,
    pub(crate) ways: Ways,
}

/// The bed of a pool as one position sees it.
#[derive(Debug, Clone)]
pub(crate) struct Seen {
    pub(crate) places: Vec<Place>,
    pub(crate) panels: Vec<Panel>,
}

/// Depths within this of the greatest are the deep bed, metres: gravel is never raked flatter.
const DEEP: f64 = 0.05;

impl Seen {
    /// The places of the deep bed.
    pub(crate) fn deep(&self) -> impl Iterator<Item = &Place> {
        let deepest = self.places.iter().map(|p| p.depth).fold(0.0, f64::max);
        self.places.iter().filter(move |p| p.depth >= deepest - DEEP)
    }
}

const fn drawn(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "front",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "geometry of straight rays; at the face of the water Snell's law with n = 1.333",
        range: "a flat surface; plane upright panels whose thickness is neglected; what lies in the pool hides nothing",
    }
}

/// Options of a barrier's kind that one sees through: glass, acrylic, mesh.
const SEEN_THROUGH: [u16; 3] = [1, 2, 4];

static BY_BARRIER: Formula<(Arc<TrackPoints>, Length, u16), Arc<Front>> = Formula {
    card: &drawn(
        "barrier one does not see through",
        "the line, closed to its top unless it is glass, acrylic or mesh",
        &["line", "top", "kind"],
    ),
    run: |(line, top, kind)| {
        let opaque_to = if SEEN_THROUGH.contains(&kind) { f64::NEG_INFINITY } else { top.value };
        Ok(Arc::new(Front { line: line.0.clone(), opaque_to }))
    },
};

static BY_GUARD: Formula<(Arc<TrackPoints>, Length), Arc<Front>> = Formula {
    card: &drawn("guard one does not see through", "the line, closed to the level", &["line", "level"]),
    run: |(line, level)| Ok(Arc::new(Front { line: line.0.clone(), opaque_to: level.value })),
};

/// A panel and, by their lines, the fronts it is let into.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Opening {
    panel: Panel,
    fronts: Vec<Arc<Front>>,
}

static OPENING: Assembly<Arc<Opening>> = Assembly {
    card: &drawn("panel in its front", "wet face from sill to head, and the fronts it is let into", &[]),
    run: |data| match data {
        [line, sill, head, fronts @ ..] => {
            let line = Arc::<TrackPoints>::take(line).0.clone();
            let (sill, head) = (Length::take(sill).value, Length::take(head).value);
            let panel = Panel { line, sill, head, let_into: Vec::new() };
            Ok(Arc::new(Opening { panel, fronts: fronts.iter().map(Arc::<Front>::take).collect() }))
        }
        _ => Err(Refusal::new("a panel has a line, a sill and a head")),
    },
};

/// Eye, bed, water and rim, then fronts and panels.
static LOOK: Assembly<Arc<Seen>> = Assembly {
    card: &drawn("bed as the eye sees it", "ways in water from the eye to places of the bed", &[]),
    run: |data| {
        let [x, y, eye, bed, water, rim, rest @ ..] = data else {
            return Err(Refusal::new("an eye looks at a bed under water"));
        };
        let number = |datum: &Datum| Length::take(datum).value;
        let bed = Arc::<Bed>::take(bed);
        let fronts: Vec<Front> = things::<Front>(rest).iter().map(|f| f.as_ref().clone()).collect();
        let panels: Vec<Panel> = things::<Opening>(rest).iter().map(|o| placed(o, &fronts)).collect();
        let view = View {
            eye: [number(x), number(y)],
            eye_level: number(eye),
            bed: &bed,
            water: number(water),
            rim: number(rim),
            fronts: &fronts,
            panels: &panels,
        };
        let places = looked_at(&view);
        if places.is_empty() {
            return Err(Refusal::new("no part of the bed lies under water at this level"));
        }
        Ok(Arc::new(Seen { places, panels }))
    },
};

fn looked_at(view: &View<'_>) -> Vec<Place> {
    let under = |at: [f64; 2]| {
        let level = view.bed.level_at(at)?;
        (level < view.water).then(|| Place { depth: view.water - level, ways: view.ways(at, level) })
    };
    places(view.bed).into_iter().filter_map(under).collect()
}

/// The panel with the positions of its fronts. Two fronts that are alike hide the same.
fn placed(opening: &Opening, fronts: &[Front]) -> Panel {
    let own = |front: &Front| opening.fronts.iter().any(|f| f.as_ref() == front);
    let let_into = fronts.iter().enumerate().filter(|(_, front)| own(front)).map(|(i, _)| i).collect();
    Panel { let_into, ..opening.panel.clone() }
}

fn things<T: Send + Sync + 'static>(data: &[Datum]) -> Vec<Arc<T>> {
    let thing = |datum: &Datum| match datum {
        Datum::Thing(thing) => Arc::clone(thing).downcast().ok(),
        Datum::Number(_) => None,
    };
    data.iter().filter_map(thing).collect()
}

/// The bed as a position sees it at the normal level. Not a number, so not in the catalogue.
pub(crate) static SEEN: Figure<Line<Arc<Seen>>> = Figure {
    card: &FigureCard {
        id: "seen",
        title: "bed as the eye sees it",
        about: About::PositionPool,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: Some(GRAIN),
    },
    work: |sheet, at| {
        let own = Subject::nth(About::Pool, at.second());
        let (position, pool) = (position(sheet, at.index()), crate::pool::pool(sheet, own));
        let mut lines: Vec<Known<LineId>> = position.at.iter().map(|n| n.on(sheet).map(Line::id)).collect();
        lines.push(eye_level(sheet, position).map(Line::id));
        lines.push(BED.of(sheet, own).map(Line::id));
        lines.push(crate::level(sheet, &pool.levels.water).map(Line::id));
        lines.push(crate::level(sheet, &pool.levels.rim).map(Line::id));
        lines.extend(stated(&sheet.design().visitors.guards, |g| guard(sheet, g).map(Line::id)));
        let bounds = |b: &Barrier| bounds(b, pool.space.given());
        let barriers = &sheet.design().barriers;
        lines.extend(stated_if(barriers, bounds, |b| barrier(sheet, b).map(Line::id)));
        let looks_in = |p: &StatedPanel| p.pool.given().is_some_and(|r| r.name() == pool.id);
        lines.extend(stated_if(&sheet.design().panels, looks_in, |p| opening(sheet, p).map(Line::id)));
        sheet.assemble(&LOOK, &lines.all()?)
    },
};

pub(crate) fn position(sheet: Sheet<'_>, at: usize) -> &Position {
    &sheet.design().visitors.positions.items()[at]
}

/// Level of the eye: the floor of the space the visitor stands in, and the eye over it.
pub(crate) fn eye_level(sheet: Sheet<'_>, position: &Position) -> Known<Line<Length>> {
    let floor = match position.space.given() {
        Some(name) => match sheet.design().space_named(name.name()) {
            Some(space) => crate::level(sheet, &sheet.design().hall.spaces.items()[space].floor_level),
            None => Err(leads_nowhere("space", name)),
        },
        None => Err(Gap::from(position.space.missing()).into()),
    };
    sheet.work(&ABOVE, (floor, position.eye.on(sheet)).all()?)
}

fn leads_nowhere(what: &str, name: &Reference) -> haulout_sheet::Gaps {
    let text = format!("there is no {what} \"{}\"", name.name());
    Gap::at(GapKind::LeadsNowhere, text, name.seat().origin).into()
}

fn bounds(barrier: &Barrier, space: Option<&Reference>) -> bool {
    let spaces = barrier.spaces.items();
    spaces.is_empty() || space.is_none_or(|space| spaces.iter().any(|s| s.name() == space.name()))
}

fn stated<T>(list: &List<T>, of: impl Fn(&T) -> Known<LineId>) -> Vec<Known<LineId>> {
    stated_if(list, |_| true, of)
}

/// The lines of a list; one that is not stated is a gap, none has to be said.
fn stated_if<T>(
    list: &List<T>,
    counts: impl Fn(&T) -> bool,
    of: impl Fn(&T) -> Known<LineId>,
) -> Vec<Known<LineId>> {
    match list.state() {
        State::None => Vec::new(),
        State::Given(items) => items.iter().filter(|i| counts(i)).map(of).collect(),
        State::Absent | State::Undecided => {
            list.missing().map(|missing| Err(Gap::from(missing).into())).into_iter().collect()
        }
    }
}

/// A guard that does not say from where on one sees through it is taken as closed to its top.
fn guard(sheet: Sheet<'_>, guard: &Guard) -> Known<Line<Arc<Front>>> {
    let says = guard.opaque_to.state().given().is_some();
    let closed_to = if says { &guard.opaque_to } else { &guard.top };
    sheet.construct(&BY_GUARD, (guard.line.on(sheet), crate::level(sheet, closed_to)).all()?)
}

fn barrier(sheet: Sheet<'_>, barrier: &Barrier) -> Known<Line<Arc<Front>>> {
    let kind = barrier.kind.on(sheet).map(|kind| kind.option());
    sheet.construct(&BY_BARRIER, (barrier.line.on(sheet), crate::level(sheet, &barrier.top), kind).all()?)
}

/// A panel with the guards and barriers it is let into.
pub(crate) fn opening(sheet: Sheet<'_>, panel: &StatedPanel) -> Known<Line<Arc<Opening>>> {
    let mut lines = vec![
        panel.line.on(sheet).map(Line::id),
        crate::level(sheet, &panel.sill).map(Line::id),
        crate::level(sheet, &panel.head).map(Line::id),
    ];
    lines.extend(panel.let_into.items().iter().map(|name| front(sheet, name).map(Line::id)));
    sheet.assemble(&OPENING, &lines.all()?)
}

fn front(sheet: Sheet<'_>, name: &Reference) -> Known<Line<Arc<Front>>> {
    let design = sheet.design();
    if let Some(found) = design.visitors.guards.items().iter().find(|g| g.id == name.name()) {
        return guard(sheet, found);
    }
    match design.barrier_named(name.name()) {
        Some(found) => barrier(sheet, &design.barriers.items()[found]),
        None => Err(leads_nowhere("guard or barrier", name)),
    }
}
