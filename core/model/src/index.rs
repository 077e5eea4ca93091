//! Where things stand by name, and items of lists within lists by their position: worked out once when a file is read.

use crate::compound::List;
use crate::design::Design;

/// Positions in a list, sorted by the names that stand there.
#[derive(Debug, Clone, Default)]
pub(crate) struct Names(Vec<u32>);

impl Names {
    pub(crate) fn of<'n>(names: impl Iterator<Item = &'n str>) -> Self {
        let names: Vec<&str> = names.collect();
        let mut sorted: Vec<u32> = (0..names.len() as u32).collect();
        // Of two things with one name the first in the file counts.
        sorted.sort_by_key(|at| (names[*at as usize], *at));
        Names(sorted)
    }

    /// The first position of a name; `name_at` says which name stands at a position.
    pub(crate) fn find<'n>(&self, name: &str, name_at: impl Fn(usize) -> &'n str) -> Option<usize> {
        self.all(name, name_at).next()
    }

    /// Every position of a name, in the order of the file.
    pub(crate) fn all<'n>(
        &self,
        name: &str,
        name_at: impl Fn(usize) -> &'n str,
    ) -> impl Iterator<Item = usize> {
        let first = self.0.partition_point(|at| name_at(*at as usize) < name);
        self.0[first..].iter().map(|at| *at as usize).take_while(move |at| name_at(*at) == name)
    }
}

/// Positions of an inner list: of the item that holds it, and within.
pub(crate) type Within = Vec<(u16, u16)>;

fn within<A, B>(outer: &List<A>, inner: impl Fn(&A) -> &List<B>) -> Within {
    let counted = outer.items().iter().enumerate();
    counted
        .flat_map(|(at, item)| (0..inner(item).items().len()).map(move |own| (at as u16, own as u16)))
        .collect()
}

/// What the lists of a design hold, by name and by position.
#[derive(Debug, Clone, Default)]
pub(crate) struct Index {
    pub(crate) spaces: Names,
    pub(crate) pools: Names,
    pub(crate) groups: Names,
    pub(crate) barriers: Names,
    pub(crate) filters: Names,
    pub(crate) basking: Names,
    pub(crate) features: Names,
    pub(crate) zones: Names,
    pub(crate) exits: Names,
    pub(crate) ledges: Names,
    pub(crate) returns: Names,
    pub(crate) intakes: Names,
    pub(crate) within: [Within; 11],
}

/// The inner lists, in the order in which [`Index::within`] keeps them.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Inner {
    Zones,
    Exits,
    Ledges,
    Openings,
    Overflows,
    Runs,
    Devices,
    Returns,
    Intakes,
    Feeds,
    Materials,
}

impl Index {
    pub(crate) fn of(design: &Design) -> Self {
        let (pools, circuits) = (&design.pools, &design.circuits);
        Index {
            spaces: Names::of(design.hall.spaces.items().iter().map(|s| s.id.as_str())),
            pools: Names::of(pools.items().iter().map(|p| p.id.as_str())),
            groups: Names::of(design.animals.items().iter().map(|g| g.id.as_str())),
            barriers: Names::of(design.barriers.items().iter().map(|b| b.id.as_str())),
            filters: Names::of(design.filters.items().iter().map(|f| f.id.as_str())),
            basking: Names::of(design.basking.items().iter().map(|b| b.id.as_str())),
            features: Names::of(design.features.items().iter().map(|f| f.id.as_str())),
            zones: Names::of(design.zones().map(|(_, z)| z.id.as_str())),
            exits: Names::of(design.exits().map(|(_, e)| e.id.as_str())),
            ledges: Names::of(design.ledges().map(|(_, l)| l.id.as_str())),
            returns: Names::of(design.returns().map(|(_, r)| r.id.as_str())),
            intakes: Names::of(design.intakes().map(|i| i.id.as_str())),
            within: [
                within(pools, |p| &p.zones),
                within(pools, |p| &p.exits),
                within(pools, |p| &p.ledges),
                within(pools, |p| &p.openings),
                within(pools, |p| &p.overflows),
                within(circuits, |c| &c.runs),
                within(circuits, |c| &c.devices),
                within(circuits, |c| &c.returns),
                within(circuits, |c| &c.intakes),
                within(&design.animals, |g| &g.feeds),
                within(pools, |p| &p.wet_materials),
            ],
        }
    }
}

macro_rules! named {
    ($what:literal, $find:ident, $names:ident, $($list:ident).+) => {
        #[doc = concat!("The position of ", $what, " by its name; the first of two with one name.")]
        pub fn $find(&self, name: &str) -> Option<usize> {
            let items = self.$($list).+.items();
            self.directory.index.$names.find(name, |at| items[at].id.as_str())
        }
    };
}

// A list is all that differs; closures that name a field cannot be made by a function.
impl Design {
    named!("a space", space_named, spaces, hall.spaces);
    named!("a pool", pool_named, pools, pools);
    named!("a group", group_named, groups, animals);
    named!("a barrier", barrier_named, barriers, barriers);
    named!("a filter", filter_named, filters, filters);
    named!("a basking site", basking_named, basking, basking);
    named!("a feature", feature_named, features, features);
}

macro_rules! inner {
    ($what:literal, $at:ident, $named:ident, $index:ident, $inner:ident, $list:ident, $item:ty, $outer:ident) => {
        inner!($what, $at, $inner, $list, $item, $outer);

        #[doc = concat!("The position of ", $what, " by its name; the first of two with one name.")]
        pub fn $named(&self, name: &str) -> Option<usize> {
            let id = |at| self.$at(at).map_or("", |(_, item)| item.id.as_str());
            self.directory.index.$index.find(name, id)
        }
    };
    ($what:literal, $at:ident, $inner:ident, $list:ident, $item:ty, $outer:ident) => {
        #[doc = concat!($what, " at a position in the order of the file, with the position of what holds it.")]
        pub fn $at(&self, at: usize) -> Option<(usize, &$item)> {
            let (outer, own) = *self.directory.index.within[Inner::$inner as usize].get(at)?;
            let holder = self.$outer.items().get(usize::from(outer))?;
            holder.$list.items().get(usize::from(own)).map(|item| (usize::from(outer), item))
        }
    };
}

impl Design {
    inner!("a zone", zone, zone_named, zones, Zones, zones, crate::design::pool::Zone, pools);
    inner!("an exit", exit, exit_named, exits, Exits, exits, crate::design::exit::Exit, pools);
    inner!("a ledge", ledge, ledge_named, ledges, Ledges, ledges, crate::design::exit::Ledge, pools);
    inner!("an opening", opening, Openings, openings, crate::design::exit::Opening, pools);
    inner!("an overflow", overflow, Overflows, overflows, crate::design::overflow::Overflow, pools);
    inner!("a run", run, Runs, runs, crate::design::circuit::Run, circuits);
    inner!("a device in line", device, Devices, devices, crate::design::circuit::Device, circuits);
    inner!(
        "a return",
        return_at,
        return_named,
        returns,
        Returns,
        returns,
        crate::design::returns::Return,
        circuits
    );
    inner!(
        "an intake",
        intake,
        intake_named,
        intakes,
        Intakes,
        intakes,
        crate::design::circuit::Intake,
        circuits
    );
    inner!("a wet material", wet_material, Materials, wet_materials, crate::design::fill::WetMaterial, pools);
    inner!("a feed", feed, Feeds, feeds, crate::design::feed::Feed, animals);
}

#[cfg(test)]
mod tests {
    use haulout_document::{Limits, read};

    use super::Names;

    #[test]
    fn the_first_of_two_with_one_name_is_found() {
        let names = ["rock", "log", "rock", "", "ramp"];
        let index = Names::of(names.into_iter());
        let find = |name: &str| index.find(name, |at| names[at]);
        assert_eq!(find("rock"), Some(0));
        assert_eq!(find("ramp"), Some(4));
        assert_eq!(find("raft"), None);
        assert_eq!(find("zebra"), None);
    }

    #[test]
    fn items_within_items_stand_in_the_order_of_the_file() {
        let text = r#"{ "edition": 0, "pools": [
            { "id": "a", "zones": [ { "id": "a-deep" }, { "id": "a-shelf" } ] },
            { "id": "b" },
            { "id": "c", "zones": [ { "id": "c-deep" } ] } ] }"#;
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("it is read");
        let (design, _) = crate::read(&tree);
        let zones: Vec<_> = (0..4).map(|at| design.zone(at).map(|(pool, z)| (pool, z.id.as_str()))).collect();
        assert_eq!(zones, [Some((0, "a-deep")), Some((0, "a-shelf")), Some((2, "c-deep")), None]);
        assert_eq!(design.zone_named("c-deep"), Some(2));
        assert_eq!(design.pool_named("c"), Some(2));
        assert!(design.outline("c-deep").is_some() && design.outline("d").is_none());
    }
}
