//! The table of kinds of subject: the list each comes from, and for relations of two who belongs to whom.

use crate::compound::{List, Reference};
use crate::design::Design;
use crate::field::{Missing, State};
use crate::subject::About;

/// A kind whose subjects are the items of a list.
pub(crate) struct Single {
    pub(crate) about: About,
    pub(crate) name: &'static str,
    pub(crate) count: fn(&Design) -> usize,
    pub(crate) missing: fn(&Design) -> Vec<Missing>,
    pub(crate) id: fn(&Design, usize) -> &str,
}

/// A kind whose subjects are related pairs of two other kinds.
pub(crate) struct Pair {
    pub(crate) about: About,
    pub(crate) name: &'static str,
    pub(crate) first: About,
    pub(crate) second: About,
    /// Whether the two at these positions belong together; by ids and references only.
    pub(crate) related: fn(&Design, usize, usize) -> bool,
    /// What else would have to be stated for there to be any.
    pub(crate) missing: fn(&Design) -> Vec<Missing>,
}

fn id_at<T>(items: &[T], at: usize, id: fn(&T) -> &String) -> &str {
    items.get(at).map_or("", |item| id(item))
}

macro_rules! single {
    ($about:ident, $name:literal, $($list:ident).+) => {
        Single {
            about: About::$about,
            name: $name,
            count: |d| d.$($list).+.items().len(),
            missing: |d| d.$($list).+.missing().into_iter().collect(),
            id: |d, at| id_at(d.$($list).+.items(), at, |item| &item.id),
        }
    };
}

macro_rules! named {
    ($about:ident, $name:literal, $list:ident, $id:expr) => {
        Single {
            about: About::$about,
            name: $name,
            count: |d| d.directory.$list.len(),
            missing: |_| Vec::new(),
            id: |d, at| id_at(&d.directory.$list, at, $id),
        }
    };
}

macro_rules! inner {
    ($about:ident, $name:literal, $outer:ident, $inner:ident, $at:ident) => {
        Single {
            about: About::$about,
            name: $name,
            count: |d| d.$inner().count(),
            missing: |d| {
                let lists = d.$outer.items().iter().filter_map(|o| o.$inner.missing());
                d.$outer.missing().into_iter().chain(lists).collect()
            },
            id: |d, at| d.$at(at).map_or("", |(_, item)| &item.id),
        }
    };
}

// A line a list is all that differs; closures that name a field cannot be made by a function.
pub(crate) static SINGLES: &[Single] = &[
    single!(Space, "space", hall.spaces),
    single!(Pool, "pool", pools),
    single!(Group, "group", animals),
    single!(Circuit, "circuit", circuits),
    Single {
        about: About::Intake,
        name: "intake",
        count: |d| d.intakes().count(),
        missing: |d| {
            let lists = d.circuits.items().iter().filter_map(|c| c.intakes.missing());
            d.circuits.missing().into_iter().chain(lists).collect()
        },
        id: |d, at| d.intake(at).map_or("", |(_, i)| &i.id),
    },
    single!(Basking, "basking", basking),
    single!(Barrier, "barrier", barriers),
    single!(Door, "door", doors),
    single!(Guard, "guard", visitors.guards),
    single!(Panel, "panel", panels),
    single!(Position, "position", visitors.positions),
    single!(Item, "item", electrical.items),
    Single {
        about: About::Zone,
        name: "zone",
        count: |d| d.zones().count(),
        // A pool that states no zones has one depth: only pools can be missing.
        missing: |d| d.pools.missing().into_iter().collect(),
        id: |d, at| d.zone(at).map_or("", |(_, zone)| &zone.id),
    },
    inner!(Exit, "exit", pools, exits, exit),
    inner!(Ledge, "ledge", pools, ledges, ledge),
    inner!(Opening, "opening", pools, openings, opening),
    inner!(Material, "material", pools, wet_materials, wet_material),
    inner!(Overflow, "overflow", pools, overflows, overflow),
    single!(Stream, "stream", streams),
    single!(Filter, "filter", filters),
    single!(Heater, "heater", heaters),
    inner!(Run, "run", circuits, runs, run),
    inner!(Device, "device", circuits, devices, device),
    inner!(Return, "return", circuits, returns, return_at),
    inner!(Feed, "feed", animals, feeds, feed),
    single!(Alarm, "alarm", keepers.alarms),
    single!(Stocking, "stocking", start_up.steps),
    single!(Arrival, "arrival", start_up.arrivals),
    named!(Outline, "outline", outlines, |name| name),
    named!(Reference, "reference", references, |pointing| &pointing.key),
    named!(Kind, "kind", kinds, |kind| &kind.key),
    named!(Part, "part", parts, |part| &part.name),
];

/// Something in a space with each group that lives there.
macro_rules! kept {
    ($about:ident, $name:literal, $first:ident, $space:expr) => {
        Pair {
            about: About::$about,
            name: $name,
            first: About::$first,
            second: About::Group,
            related: |d, at, group| {
                let space: fn(&Design, usize) -> Option<&str> = $space;
                lives_in(&d.animals.items()[group].spaces, space(d, at))
            },
            missing: |_| Vec::new(),
        }
    };
}

pub(crate) static PAIRS: &[Pair] = &[
    Pair {
        about: About::PoolPair,
        name: "pool-pair",
        first: About::Pool,
        second: About::Pool,
        related: |_, first, second| first < second,
        missing: |_| Vec::new(),
    },
    Pair {
        about: About::PoolGroup,
        name: "pool-group",
        first: About::Pool,
        second: About::Group,
        related: |d, pool, group| {
            let pool = d.pools.items()[pool].space.name();
            lives_in(&d.animals.items()[group].spaces, pool)
        },
        missing: |_| Vec::new(),
    },
    Pair {
        about: About::BaskingGroup,
        name: "basking-group",
        first: About::Basking,
        second: About::Group,
        related: |d, site, group| {
            let (site, group) = (&d.basking.items()[site], &d.animals.items()[group]);
            match site.groups.state() {
                State::Given(groups) => groups.iter().any(|g| g.name() == group.id),
                _ => lives_in(&group.spaces, site.space.name()),
            }
        },
        missing: |_| Vec::new(),
    },
    Pair {
        about: About::BarrierGroup,
        name: "barrier-group",
        first: About::Barrier,
        second: About::Group,
        related: |d, barrier, group| {
            let (barrier, group) = (&d.barriers.items()[barrier], &d.animals.items()[group]);
            barrier.spaces.items().iter().any(|s| lives_in(&group.spaces, Some(s.name())))
                || barrier.spaces.items().is_empty()
        },
        missing: |_| Vec::new(),
    },
    Pair {
        about: About::DoorGroup,
        name: "door-group",
        first: About::Door,
        second: About::Group,
        related: |d, door, group| {
            let (door, group) = (&d.doors.items()[door], &d.animals.items()[group]);
            door.spaces.items().iter().any(|s| lives_in(&group.spaces, Some(s.name())))
                || door.spaces.items().is_empty()
        },
        missing: |_| Vec::new(),
    },
    Pair {
        about: About::PositionPool,
        name: "position-pool",
        first: About::Position,
        second: About::Pool,
        related: |d, position, pool| {
            let pools = d.visitors.positions.items()[position].pools.items();
            pools.iter().any(|r| r.name() == d.pools.items()[pool].id)
        },
        missing: |d| d.visitors.positions.items().iter().filter_map(|p| p.pools.missing()).collect(),
    },
    Pair {
        about: About::ItemPool,
        name: "item-pool",
        first: About::Item,
        second: About::Pool,
        // How near an item is to which water is a matter of values: every pair is asked about.
        related: |_, _, _| true,
        missing: |_| Vec::new(),
    },
    kept!(ExitGroup, "exit-group", Exit, |d, at| d.exit(at).and_then(|(pool, _)| space_of(d, pool))),
    kept!(LedgeGroup, "ledge-group", Ledge, |d, at| d.ledge(at).and_then(|(pool, _)| space_of(d, pool))),
    kept!(OpeningGroup, "opening-group", Opening, |d, at| {
        d.opening(at).and_then(|(pool, _)| space_of(d, pool))
    }),
    kept!(OverflowGroup, "overflow-group", Overflow, |d, at| {
        d.overflow(at).and_then(|(pool, _)| space_of(d, pool))
    }),
    kept!(IntakeGroup, "intake-group", Intake, |d, at| {
        let pool = d.intake(at).and_then(|(_, i)| i.pool.name());
        pool.and_then(|name| d.pool_named(name)).and_then(|pool| space_of(d, pool))
    }),
    kept!(StreamGroup, "stream-group", Stream, |d, at| d.streams.items()[at].space.name()),
    Pair {
        about: About::CircuitPool,
        name: "circuit-pool",
        first: About::Circuit,
        second: About::Pool,
        related: |d, circuit, pool| {
            let serves = d.circuits.items()[circuit].serves.items();
            serves.iter().any(|r| r.name() == d.pools.items()[pool].id)
        },
        missing: |d| d.circuits.items().iter().filter_map(|c| c.serves.missing()).collect(),
    },
    Pair {
        about: About::HeaterPool,
        name: "heater-pool",
        first: About::Heater,
        second: About::Pool,
        related: |d, heater, pool| {
            d.heaters.items()[heater].pool.name() == Some(d.pools.items()[pool].id.as_str())
        },
        missing: |d| {
            let unsaid = d.heaters.items().iter().filter(|h| h.pool.given().is_none());
            unsaid.map(|h| h.pool.missing()).collect()
        },
    },
];

/// The space a pool lies in.
fn space_of(design: &Design, pool: usize) -> Option<&str> {
    design.pools.items().get(pool).and_then(|p| p.space.name())
}

/// Whether a group lives in a space. One that names no space is taken to live in every one, and something that names no
/// space to be reached by every group: leaving the key out must not hide a check.
fn lives_in(spaces: &List<Reference>, space: Option<&str>) -> bool {
    match (spaces.state(), space) {
        (State::Given(spaces), Some(space)) => spaces.iter().any(|s| s.name() == space),
        _ => true,
    }
}
