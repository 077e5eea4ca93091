//! From the sheet to the plan: every place, outline and level of a design in plain numbers, and what cannot be drawn.

use std::sync::Arc;

use haulout_calc::geometry::{Outline, Point};
use haulout_figures::{level, outline};
use haulout_model::{Design, Level, Number, ShapeField, Track as Line};
use haulout_quantity::Measure;
use haulout_quantity::si::Length;
use haulout_sheet::{Book, Case, Entry, Gaps, Known, Sheet};

use super::plan::{Plan, Region, RegionKind, SpotKind, Track, TrackKind};
use super::words::Tongue;

/// More things of one kind than this are no plan of a hall; the rest is counted.
pub(super) const MOST: usize = 400;
/// More sides than this are not drawn one by one.
const MOST_SIDES: usize = 20_000;

/// What a design is read with.
pub(super) struct Gathering<'p> {
    pub(super) book: &'p Book<'p>,
    pub(super) tongue: Tongue,
    pub(super) plan: Plan,
}

impl<'p> Gathering<'p> {
    pub(super) fn of(book: &'p Book<'p>, tongue: Tongue) -> Self {
        Gathering { book, tongue, plan: Plan::default() }
    }

    pub(super) fn design(&self) -> &'p Design {
        self.book.design()
    }

    pub(super) fn sheet(&self) -> Sheet<'p> {
        self.book.sheet(Case::NORMAL)
    }

    /// What a line holds.
    pub(super) fn taken<T: Entry>(&self, known: Known<haulout_sheet::Line<T>>) -> Result<T, Gaps> {
        known.map(|line| T::take(&self.book.record(line.id()).datum))
    }

    /// A number that can be drawn with.
    pub(super) fn number<Q: Measure + Entry>(&self, field: &Number<Q>) -> Option<f64> {
        let value = self.taken(field.on(self.sheet())).ok()?.si();
        value.is_finite().then_some(value)
    }

    pub(super) fn level(&self, field: &Level) -> Option<f64> {
        let value = self.taken(level(self.sheet(), field)).ok()?.value;
        value.is_finite().then_some(value)
    }

    /// `what +0.80 m`, or that it is not stated.
    pub(super) fn level_words(&self, what: &str, field: &Level) -> Option<String> {
        self.level(field).map(|z| format!("{what} {}", self.tongue.level(z)).trim_start().to_owned())
    }

    /// An outline, or a note that it is not drawn and why.
    pub(super) fn outline(&mut self, what: &str, field: &ShapeField) -> Option<Outline> {
        let found = self.taken(outline(self.sheet(), field)).map_err(|gaps| why(&gaps));
        match found {
            Ok(outline) if outline.sides().count() <= MOST_SIDES => Some(outline.as_ref().clone()),
            Ok(_) => self.lacking(what, "its outline has more sides than a plan can show"),
            Err(why) => self.lacking(what, &why),
        }
    }

    /// A line in plan, or a note.
    pub(super) fn line(&mut self, what: &str, field: &Line) -> Option<Vec<Point>> {
        let found = self.taken::<Arc<haulout_model::TrackPoints>>(field.on(self.sheet()));
        match found.map(|t| t.0.clone()).map_err(|gaps| why(&gaps)) {
            Ok(line) if line.len() > MOST_SIDES => {
                self.lacking(what, "its line has more pieces than a plan can show")
            }
            Ok(line) if line.iter().flatten().all(|c| c.is_finite()) => Some(line),
            Ok(_) => self.lacking(what, "its line has no end"),
            Err(why) => self.lacking(what, &why),
        }
    }

    /// A place in plan, or a note.
    pub(super) fn place(&mut self, what: &str, x: &Number<Length>, y: &Number<Length>) -> Option<Point> {
        match (self.number(x), self.number(y)) {
            (Some(x), Some(y)) => Some([x, y]),
            _ => self.lacking(what, "its place is not stated"),
        }
    }

    pub(super) fn lacking<T>(&mut self, what: &str, why: &str) -> Option<T> {
        self.plan.not_drawn.push(format!("{what}: {why}"));
        None
    }

    /// The first things of a list, with a note of how many more there are.
    pub(super) fn first<T>(&mut self, what: &str, items: &'p [T]) -> &'p [T] {
        if items.len() > MOST {
            self.plan
                .not_drawn
                .push(format!("{} more {what}: a sheet holds the first {MOST}", items.len() - MOST));
        }
        &items[..items.len().min(MOST)]
    }

    /// Hall, spaces, features, basking sites.
    pub(super) fn regions(&mut self) {
        let design = self.design();
        self.plan.hall = self.outline("hall", &design.hall.outline);
        for space in self.first("spaces", design.hall.spaces.items()) {
            let whom = space.whom.word().map(|w| format!("for {w}"));
            let floor = self.level_words("floor", &space.floor_level);
            self.region(&space.id, RegionKind::Space, &space.outline, whom.into_iter().chain(floor));
        }
        for feature in self.first("features", design.features.items()) {
            let kind = feature.kind.word().map(str::to_owned);
            let top = self.level_words("top", &feature.top);
            self.region(&feature.id, RegionKind::Feature, &feature.outline, kind.into_iter().chain(top));
        }
        for filter in self.first("filters", design.filters.items()) {
            let water = self.level_words("filter, water", &filter.levels.water);
            // A clarifier in the corridor is a thing of a pipe, not of the plan.
            if filter.outline.state().given().is_none() {
                continue;
            }
            self.region(&filter.id, RegionKind::Feature, &filter.outline, water.into_iter());
        }
        for ledge in design.pools.items().iter().flat_map(|pool| pool.ledges.items()).take(MOST) {
            let top = self.level_words("ledge", &ledge.level);
            self.region(&ledge.id, RegionKind::Feature, &ledge.outline, top.into_iter());
        }
        for site in self.first("basking sites", design.basking.items()) {
            let top = self.level_words("basking", &site.level);
            self.region(&site.id, RegionKind::Basking, &site.outline, top.into_iter());
        }
    }

    fn region(
        &mut self,
        id: &str,
        kind: RegionKind,
        field: &ShapeField,
        words: impl Iterator<Item = String>,
    ) {
        let words = words.collect();
        if let Some(outline) = self.outline(id, field) {
            self.plan.regions.push(Region { id: id.to_owned(), kind, outline, words });
        }
    }

    /// Barriers, panels, guards, partitions.
    pub(super) fn tracks(&mut self) {
        let design = self.design();
        for barrier in self.first("barriers", design.barriers.items()) {
            let words = self.level_words("top", &barrier.top);
            self.track(&barrier.id, TrackKind::Barrier, &barrier.line, words);
        }
        for panel in self.first("viewing panels", design.panels.items()) {
            let ends = (self.level(&panel.sill), self.level(&panel.head));
            let words = match ends {
                (Some(sill), Some(head)) => {
                    Some(format!("panel {} to {}", self.tongue.level(sill), self.tongue.level(head)))
                }
                _ => self.level_words("sill", &panel.sill).or(self.level_words("head", &panel.head)),
            };
            self.track(&panel.id, TrackKind::Panel, &panel.line, words);
        }
        for guard in self.first("guards", design.visitors.guards.items()) {
            let words = self.level_words("guard", &guard.top);
            self.track(&guard.id, TrackKind::Guard, &guard.line, words);
        }
        for stream in self.first("streams", design.streams.items()) {
            let kind = stream.kind.word().map(str::to_owned);
            self.track(&stream.id, TrackKind::Stream, &stream.line, kind);
        }
        for partition in self.first("partitions", design.electrical.partitions.items()) {
            let words = self.level_words("partition", &partition.top);
            self.track(&partition.id, TrackKind::Partition, &partition.line, words);
        }
    }

    fn track(&mut self, id: &str, kind: TrackKind, field: &Line, words: Option<String>) {
        if let Some(line) = self.line(id, field) {
            self.plan.tracks.push(Track {
                id: id.to_owned(),
                kind,
                line,
                words: words.into_iter().collect(),
            });
        }
    }
}

/// The reason at the root of a gap.
pub(super) fn why(gaps: &Gaps) -> String {
    gaps.0.first().map_or_else(|| "it is not stated".to_owned(), |gap| gap.what.to_string())
}

/// The letters in the symbol of an electrical item.
pub(super) fn letters(kind: Option<&str>) -> SpotKind {
    SpotKind::Item(match kind {
        Some("socket") => "S",
        Some("switch") => "W",
        Some("luminaire") => "L",
        Some("lamp") => "L",
        Some("heater") => "H",
        Some("pump") => "P",
        Some("control gear") => "C",
        Some("transformer") => "T",
        _ => "E",
    })
}
