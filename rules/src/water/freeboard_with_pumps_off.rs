//! With the pumps off and a wave on the water, the top of what holds it is still well over it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::ladder::PUMPS_OFF_FREEBOARD;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("freeboard-with-pumps-off"),
        title: words("With the pumps off the water comes too near the top"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "With everything run back and a wave on it, the water stays well below the top of the liner and the rim.",
            ),
            why: words(
                "A power cut lets streams, films and pipes run back at once. One return that ends under the water of a higher basin, without a break for the siphon, brings more than all films together.",
            ),
            judged: words(
                "Water level, and the rise from what runs back over the surface at that level, and the wave as stated; against the lower of liner and rim, or the rim where the file says that there is no liner. What runs back: the film in every stream and over every lip at clean flow, gravel above a lip by its voids, submerged returns down to their break, and the pipes of every circuit that draws from the pool. What an overflow takes away in the meantime is not counted.",
            ),
            cure: words(
                "a siphon break just under the water of the higher basin; a lower running level; a higher liner",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "freeboard-with-pumps-off",
    name: "least",
    row: "",
    what: "least freeboard with the pumps off",
    value: 0.05,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "pond builders' practice: 100 mm over the highest water, 50 mm at the least",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::at_least(PUMPS_OFF_FREEBOARD.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a small rise, the liner 150 mm over the water"),
        design: words(include_str!("examples/freeboard_with_pumps_off_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/liner-top"),
    },
    Example {
        shows: words("a return under the water of the basin, without a break: 350 mm of the basin come back"),
        design: words(include_str!("examples/freeboard_with_pumps_off_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/level"),
    },
    Example {
        shows: words("the same return with a break 20 mm under the water"),
        design: words(include_str!("examples/freeboard_with_pumps_off_break.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
    Example {
        shows: words("the edge: 50 mm are left"),
        design: words(include_str!("examples/freeboard_with_pumps_off_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/surge"),
    },
    Example {
        shows: words("49 mm are left"),
        design: words(include_str!("examples/freeboard_with_pumps_off_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/surge"),
    },
    Example {
        shows: words("whether there are streams is not stated"),
        design: words(include_str!("examples/freeboard_with_pumps_off_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/streams"),
    },
];
