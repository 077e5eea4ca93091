//! Things of the plan that have a place: electrical items, intakes, returns, overflows, ways out, viewing positions, doors; and whose place stands for
//! what has none.

use haulout_calc::geometry::{Outline, Point};
use haulout_model::barrier::Door;
use haulout_model::electrical::Item;

use super::gather::{Gathering, MOST, letters};
use super::plan::{Plan, RegionKind, Spot, SpotKind, TrackKind, along, middle};

impl Gathering<'_> {
    /// Everything with a place.
    pub(super) fn spots(&mut self) {
        let design = self.design();
        for item in self.first("electrical items", design.electrical.items.items()) {
            self.item(item);
        }
        let intakes: Vec<_> = design.intakes().take(400).collect();
        for intake in intakes {
            let words = self.level_words("intake", &intake.level).into_iter().collect();
            if let Some(at) = self.place(&intake.id, &intake.at[0], &intake.at[1]) {
                self.spot(&intake.id, SpotKind::Intake, at, None, words);
            }
        }
        self.ways_of_water();
        for position in self.first("viewing positions", design.visitors.positions.items()) {
            let eye = self.number(&position.eye).map(|e| format!("eye {}", self.tongue.length(e)));
            if let Some(at) = self.place(&position.id, &position.at[0], &position.at[1]) {
                self.spot(&position.id, SpotKind::Position, at, None, eye.into_iter().collect());
            }
        }
        for door in self.first("doors", design.doors.items()) {
            self.door(door);
        }
        self.aliases();
    }

    /// Where water comes back and runs over, and where animals leave it.
    fn ways_of_water(&mut self) {
        let design = self.design();
        let returns = design.circuits.items().iter().flat_map(|circuit| circuit.returns.items());
        for back in returns.take(MOST) {
            let words = self.level_words("return", &back.level).into_iter().collect();
            if let Some(at) = self.place(&back.id, &back.at[0], &back.at[1]) {
                self.spot(&back.id, SpotKind::Return, at, None, words);
            }
        }
        for overflow in design.pools.items().iter().flat_map(|pool| pool.overflows.items()).take(MOST) {
            let words = vec!["overflow".to_owned()];
            if let Some(at) = self.place(&overflow.id, &overflow.at[0], &overflow.at[1]) {
                self.spot(&overflow.id, SpotKind::Overflow, at, None, words);
            }
        }
        for exit in design.pools.items().iter().flat_map(|pool| pool.exits.items()).take(MOST) {
            let words =
                self.level_words(exit.kind.word().unwrap_or("way out,"), &exit.foot).into_iter().collect();
            if let Some(at) = self.place(&exit.id, &exit.at[0], &exit.at[1]) {
                self.spot(&exit.id, SpotKind::Exit, at, None, words);
            }
        }
    }

    fn spot(&mut self, id: &str, kind: SpotKind, at: Point, reach: Option<f64>, words: Vec<String>) {
        self.plan.spots.push(Spot { id: id.to_owned(), kind, at, reach, words });
    }

    fn item(&mut self, item: &Item) {
        let height = self.number(&item.at[2]).map(|z| self.tongue.level(z));
        let cord = self.number(&item.cord).filter(|c| *c > 0.0);
        let words =
            height.into_iter().chain(cord.map(|c| format!("cord {}", self.tongue.length(c)))).collect();
        let reach = cord.map(|c| c + self.number(&item.extent).unwrap_or(0.0));
        if let Some(at) = self.place(&item.id, &item.at[0], &item.at[1]) {
            self.spot(&item.id, letters(item.kind.word()), at, reach, words);
        }
    }

    /// A door stands somewhere in its barrier: on the piece of it that is nearest to the spaces the door joins.
    fn door(&mut self, door: &Door) {
        let words = self.level_words("door, sill", &door.sill).into_iter().collect();
        let barrier = door.barrier.name().unwrap_or_default();
        let others = self.plan.spots.iter().filter(|s| s.kind == SpotKind::Door).count();
        match place_of_door(&self.plan, door, barrier, others) {
            Some(at) => self.spot(&door.id, SpotKind::Door, at, None, words),
            None => {
                self.lacking::<()>(&door.id, "the barrier it stands in is not drawn");
            }
        }
    }

    /// A circuit is pointed to at its first intake or the first pool it serves, a group at the first space it lives in.
    fn aliases(&mut self) {
        let design = self.design();
        for circuit in design.circuits.items() {
            let intake = circuit.intakes.items().first().map(|i| i.id.clone());
            let serves = || circuit.serves.items().first().map(|r| r.name().to_owned());
            let Some(stand_in) = intake.or_else(serves) else { continue };
            let runs = circuit.runs.items().iter().map(|r| &r.id);
            let parts = runs.chain(circuit.devices.items().iter().map(|d| &d.id)).chain([&circuit.id]);
            self.plan.aliases.extend(parts.map(|id| (id.clone(), stand_in.clone())));
        }
        for group in design.animals.items() {
            let space = group.spaces.items().first().map(|r| r.name().to_owned());
            self.plan.aliases.extend(space.map(|space| (group.id.clone(), space)));
        }
        for pool in design.pools.items() {
            let solids = pool.solids.items().iter().map(|s| (s.id.clone(), pool.id.clone()));
            self.plan.aliases.extend(solids);
        }
    }
}

fn place_of_door(plan: &Plan, door: &Door, barrier: &str, others: usize) -> Option<Point> {
    let line = &plan.tracks.iter().find(|t| t.kind == TrackKind::Barrier && t.id == barrier)?.line;
    let space = |name: &str| plan.regions.iter().find(|r| r.kind == RegionKind::Space && r.id == name);
    let joined: Vec<&Outline> =
        door.spaces.items().iter().filter_map(|r| space(r.name())).map(|r| &r.outline).collect();
    let far = |piece: &&[Point]| joined.iter().map(|o| o.distance_to(middle(piece))).sum::<f64>();
    let pieces: Vec<&[Point]> = line.windows(2).take(200).collect();
    let nearest = pieces.into_iter().min_by(|a, b| far(a).total_cmp(&far(b)))?;
    // Several doors must not lie upon each other; where along the barrier they are nobody has said.
    Some(along(nearest, [0.6, 0.3, 0.75, 0.2, 0.4][others % 5]))
}
