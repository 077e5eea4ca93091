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
        if let Some(pool) = self.pools.items().iter().find(|p| p.id == owner) {
            return if level == "bed" { Some(&pool.bed) } else { pool.levels.named(level) };
        }
        if let Some(filter) = self.filters.items().iter().find(|f| f.id == owner) {
            return filter.level(level);
        }
        let found = self.returns().find(|(_, r)| r.id == owner).map(|(_, r)| &r.level);
        found.filter(|_| level == "level")
    }

    fn level_of_what_stands(&self, owner: &str, level: &str) -> Option<&Level> {
        match level {
            "bed" => self.zones().find(|(_, z)| z.id == owner).map(|(_, z)| &z.bed),
            "floor" => self.hall.spaces.items().iter().find(|s| s.id == owner).map(|s| &s.floor_level),
            "bund" => self.hall.spaces.items().iter().find(|s| s.id == owner).map(|s| &s.bund),
            "level" => self.surface(owner),
            "foot" => self.exits().find(|(_, e)| e.id == owner).map(|(_, e)| &e.foot),
            "top" => self.top(owner),
            _ => None,
        }
    }

    fn surface(&self, owner: &str) -> Option<&Level> {
        let site = self.basking.items().iter().find(|b| b.id == owner).map(|b| &b.level);
        site.or_else(|| self.ledges().find(|(_, l)| l.id == owner).map(|(_, l)| &l.level))
    }

    fn top(&self, owner: &str) -> Option<&Level> {
        let feature = self.features.items().iter().find(|f| f.id == owner).map(|f| &f.top);
        let barrier = || self.barriers.items().iter().find(|b| b.id == owner).map(|b| &b.top);
        let exit = || self.exits().find(|(_, e)| e.id == owner).map(|(_, e)| &e.top);
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
        self.outlines().find(|(id, _)| *id == name).map(|(_, outline)| outline)
    }
}
