//! Names that lead to a level or an outline: `main.water`, `wetland.lip`, `log-west`.

use crate::compound::Level;
use crate::design::Design;
use crate::shape::ShapeField;

impl Design {
    /// The level of a name: of a pool (`main.water`), a zone (`deep.bed`), a space (`gallery.floor`, `wing.bund`), a
    /// filter (`wetland.lip`), a feature or barrier (`rock.top`), an exit (`ramp.foot`), a basking site (`log.level`).
    pub fn level(&self, name: &str) -> Option<&Level> {
        let (owner, level) = name.split_once('.')?;
        self.level_of_water(owner, level).or_else(|| self.level_of_what_stands(owner, level))
    }

    fn level_of_water(&self, owner: &str, level: &str) -> Option<&Level> {
        if let Some(pool) = self.pool_named(owner).map(|at| &self.pools.items()[at]) {
            return if level == "bed" { Some(&pool.bed) } else { pool.levels.named(level) };
        }
        if let Some(filter) = self.filter_named(owner).map(|at| &self.filters.items()[at]) {
            return filter.level(level);
        }
        let found = self.return_named(owner).and_then(|at| self.return_at(at));
        found.map(|(_, r)| &r.level).filter(|_| level == "level")
    }

    fn level_of_what_stands(&self, owner: &str, level: &str) -> Option<&Level> {
        let space = || self.space_named(owner).map(|at| &self.hall.spaces.items()[at]);
        match level {
            "bed" => self.zone_named(owner).and_then(|at| self.zone(at)).map(|(_, z)| &z.bed),
            "floor" => space().map(|s| &s.floor_level),
            "bund" => space().map(|s| &s.bund),
            "level" => self.surface(owner),
            "foot" => self.exit_named(owner).and_then(|at| self.exit(at)).map(|(_, e)| &e.foot),
            "top" => self.top(owner),
            _ => None,
        }
    }

    fn surface(&self, owner: &str) -> Option<&Level> {
        let site = self.basking_named(owner).map(|at| &self.basking.items()[at].level);
        site.or_else(|| self.ledge_named(owner).and_then(|at| self.ledge(at)).map(|(_, l)| &l.level))
    }

    fn top(&self, owner: &str) -> Option<&Level> {
        let feature = self.feature_named(owner).map(|at| &self.features.items()[at].top);
        let barrier = || self.barrier_named(owner).map(|at| &self.barriers.items()[at].top);
        let exit = || self.exit_named(owner).and_then(|at| self.exit(at)).map(|(_, e)| &e.top);
        feature.or_else(barrier).or_else(exit)
    }

    /// Everything that has an outline, by name: the hall, then spaces, pools, zones, filters, basking sites, features
    /// and ledges.
    pub fn outlines(&self) -> impl Iterator<Item = (&str, &ShapeField)> {
        let spaces = self.hall.spaces.items().iter().map(|s| (s.id.as_str(), &s.outline));
        let pools = self.pools.items().iter().map(|p| (p.id.as_str(), &p.outline));
        let zones = self.zones().map(|(_, z)| (z.id.as_str(), &z.outline));
        let filters = self.filters.items().iter().map(|f| (f.id.as_str(), &f.outline));
        let basking = self.basking.items().iter().map(|b| (b.id.as_str(), &b.outline));
        let features = self.features.items().iter().map(|f| (f.id.as_str(), &f.outline));
        let ledges = self.ledges().map(|(_, l)| (l.id.as_str(), &l.outline));
        let water = spaces.chain(pools).chain(zones).chain(filters);
        std::iter::once(("hall", &self.hall.outline))
            .chain(water)
            .chain(basking)
            .chain(features)
            .chain(ledges)
    }

    /// The outline of what has this id; the first of [`Design::outlines`].
    pub fn outline(&self, name: &str) -> Option<&ShapeField> {
        if name == "hall" {
            return Some(&self.hall.outline);
        }
        let space = self.space_named(name).map(|at| &self.hall.spaces.items()[at].outline);
        let pool = || self.pool_named(name).map(|at| &self.pools.items()[at].outline);
        let zone = || self.zone_named(name).and_then(|at| self.zone(at)).map(|(_, z)| &z.outline);
        let filter = || self.filter_named(name).map(|at| &self.filters.items()[at].outline);
        let site = || self.basking_named(name).map(|at| &self.basking.items()[at].outline);
        let feature = || self.feature_named(name).map(|at| &self.features.items()[at].outline);
        let ledge = || self.ledge_named(name).and_then(|at| self.ledge(at)).map(|(_, l)| &l.outline);
        space.or_else(pool).or_else(zone).or_else(filter).or_else(site).or_else(feature).or_else(ledge)
    }
}
