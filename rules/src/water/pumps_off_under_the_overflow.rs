//! What runs back when the pumps stop stays under the overflow, and the file states no lower level for it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::ladder::{PUMPS_OFF_RISE, overflow_over_water, stated_rise};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("pumps-off-under-the-overflow"),
        title: words("Water is lost over the overflow at every stop of the pumps"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "With everything run back the water still stands below the invert of the overflow; a level stated for the pumps off is not lower than that.",
            ),
            why: words(
                "What runs over at a stop is missing at the start: the level falls below the intakes and skimmers, pumps draw air, and the fill replaces it with cold water.",
            ),
            judged: words(
                "Height of the invert of the overflow over the water, and of the level stated for the pumps off where one is stated, against the rise by what runs back, as in the rule on freeboard with the pumps off.",
            ),
            cure: words(
                "a lower running level, a higher overflow, shorter films: narrower lips, less stream, a siphon break",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let rise = PUMPS_OFF_RISE.of(sheet, at);
    let room = (overflow_over_water(sheet, at), rise.clone()).all();
    let under = room.map(|(have, asked)| Check::at_least(have, asked));
    let stated = stated_rise(sheet, at);
    let stated = stated.map(|s| (s, rise).all().map(|(have, asked)| Check::at_least(have, asked)));
    Ok(Check::AllOf(std::iter::once(under).chain(stated).collect()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("the film of a short stream"),
        design: words(include_str!("examples/pumps_off_under_the_overflow_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the overflow 2 mm over the water"),
        design: words(include_str!("examples/pumps_off_under_the_overflow_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the edge: nothing runs back, and the overflow at the water"),
        design: words(include_str!("examples/pumps_off_under_the_overflow_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("nothing runs back, and the overflow 1 mm under the water"),
        design: words(include_str!("examples/pumps_off_under_the_overflow_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("a level stated for the pumps off that is too low"),
        design: words(include_str!("examples/pumps_off_under_the_overflow_stated_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/pumps-off"),
    },
    Example {
        shows: words("where the circuit draws from is not stated"),
        design: words(include_str!("examples/pumps_off_under_the_overflow_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/from"),
    },
];
