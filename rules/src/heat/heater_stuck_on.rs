//! With any one heater stuck on, the water stays bearable until somebody comes, or a cut-out of its own ends it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::bear::{CEILING, is_lived_in};
use haulout_figures::heat::heater::{STUCK_END, has_limit, highest_limit, limit_of};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("heater-stuck-on"),
        title: words("A heater that sticks on cooks the pool"),
        chapter: words("heat"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::HeaterPool,
        caution: Some(words("A cut-out is electrical work; leave it to a licensed electrician.")),
        manual: Manual {
            asks: words(
                "With any one heater stuck on, the water stays under the ceiling of all the animals over the longest time unattended, or a cut-out that shares nothing with the thermostat stops the heater at most 2 K over it.",
            ),
            why: words(
                "Contacts of thermostats weld shut, mostly at night. A thermostat that fails takes its own limit with it, so that only a second sensor with its own switch counts. A shall by practice, since the life of animals is at stake.",
            ),
            judged: words(
                "From the warmest water stated, the whole power of the heater into the water alone: of the pool itself for a heater that lies in it, of all pools the circuits join for another. What the water loses meanwhile is not counted on; what pipes and filters hold is not either. The ceiling is the lowest of the upper ends that are published for the species.",
            ),
            cure: words(
                "a second, independent cut-out a degree or two over the working temperature; a smaller heater, or two small ones with a thermostat each",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "heater-stuck-on",
    name: "over",
    row: "",
    what: "how far a cut-out may lie over the ceiling",
    value: 2.0,
    unit: "K",
    dimension: Dimension::TEMPERATURE,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers of aquatic reptiles: a cut-out 1 to 2 K over the warmest water wanted; hours of a little more are borne, days are not",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let pool = at.part(About::Pool).unwrap_or(at);
    if !is_lived_in(sheet, pool)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let stays = (STUCK_END.of(sheet, at), CEILING.of(sheet, pool)).all();
    let stays = stays.map(|(end, ceiling)| Check::at_most(end, ceiling));
    let there = Ok(Check::stands(has_limit(sheet, at), GapKind::SaidNone));
    let low = (limit_of(sheet, at), highest_limit(sheet, pool, sheet.limit(&LIMITS[0]))).all();
    let low = low.map(|(limit, highest)| Check::at_most(limit, highest));
    Ok(Check::AnyOf(vec![stays, Ok(Check::AllOf(vec![there, low]))]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1 kW on 3 m3, a cut-out of its own at 29 °C"),
        design: words(include_str!("examples/stuck_limited.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/limit"),
    },
    Example {
        shows: words("500 W warm it to 27.4 °C in ten hours, no cut-out"),
        design: words(include_str!("examples/stuck_small.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("1 kW warms it to 28.9 °C in ten hours, no cut-out"),
        design: words(include_str!("examples/stuck_short.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("a cut-out at 60 °C"),
        design: words(include_str!("examples/stuck_late.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/limit"),
    },
    Example {
        shows: words("the edge: a cut-out just under 30 °C"),
        design: words(include_str!("examples/stuck_edge.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/limit"),
    },
    Example {
        shows: words("a cut-out just over 30 °C"),
        design: words(include_str!("examples/stuck_just_short.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/limit"),
    },
    Example {
        shows: words("the cut-out is not stated"),
        design: words(include_str!("examples/stuck_gap.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/heaters/0/limit"),
    },
    Example {
        shows: words("where some of the animals live is not stated"),
        design: words(include_str!("examples/stuck_who.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/animals/1/spaces"),
    },
    Example {
        shows: words("a second heater that is put into no pool"),
        design: words(include_str!("examples/stuck_where.json")),
        subject: words(""),
        expected: Expected::NotAssessed,
        place: words("/heaters/1/pool"),
    },
    Example {
        shows: words("no animals"),
        design: words(include_str!("examples/stuck_no_animals.json")),
        subject: words("heater:warmer+pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
