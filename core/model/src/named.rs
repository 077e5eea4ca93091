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

    /// The outline of what has this id: the hall, a space, a pool, a zone, a filter, a basking site, a feature, a ledge.
    pub fn outline(&self, name: &str) -> Option<&ShapeField> {
        if name == "hall" {
            return Some(&self.hall.outline);
        }
        let space = self.hall.spaces.items().iter().find(|s| s.id == name).map(|s| &s.outline);
        let pool = || self.pools.items().iter().find(|p| p.id == name).map(|p| &p.outline);
        let zone = || self.zones().find(|(_, z)| z.id == name).map(|(_, z)| &z.outline);
        let filter = || self.filters.items().iter().find(|f| f.id == name).map(|f| &f.outline);
        let basking = || self.basking.items().iter().find(|b| b.id == name).map(|b| &b.outline);
        let feature = || self.features.items().iter().find(|f| f.id == name).map(|f| &f.outline);
        let ledge = || self.ledges().find(|(_, l)| l.id == name).map(|(_, l)| &l.outline);
        let water = space.or_else(pool).or_else(zone).or_else(filter);
        water.or_else(basking).or_else(feature).or_else(ledge)
    }
}
