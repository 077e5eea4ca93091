//! Air parts the fill from the water of the pool.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::overflow::{AIR_GAP, fill_flow, parted_by_air};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("fill-parted-by-air"),
        title: words("Pool water can be drawn back into the mains"),
        chapter: words("plumbing"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Pool,
        caution: Some(words(
            "The protection of drinking water is a matter for licensed plumbers and the bylaws of the water undertaker.",
        )),
        manual: Manual {
            asks: words(
                "The fill ends in an air gap or a break tank, at least 20 mm over the highest water.",
            ),
            why: words(
                "When the pressure in the mains falls, a hose under water draws the pool into the drinking water: Salmonella among it. Valves of any kind leak in the end.",
            ),
            judged: words(
                "Kind of protection as stated, and the air gap from the end of the pipe down to the rim as stated. Water bylaws may ask for more, such as twice the bore.",
            ),
            cure: words("end the pipe over the rim, with a funnel or a break tank below it"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "fill-parted-by-air",
    name: "gap",
    row: "",
    what: "least air gap",
    value: 0.02,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Recalled,
    source: "EN 1717, unrestricted air gap (type AA): twice the bore of the pipe and at least 20 mm; from memory, check the text",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let none = match fill_flow(sheet, at) {
        Err(none) => return Ok(Check::only_if(Ok(Check::holds(none)), Ok(Check::holds(none)))),
        Ok(_) => AIR_GAP.of(sheet, at).map(|gap| Check::at_least(gap, sheet.limit(&LIMITS[0]))),
    };
    Ok(Check::AllOf(vec![parted_by_air(sheet, at).map(Check::holds), none]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("an air gap of 50 mm"),
        design: words(include_str!("examples/fill_parted_by_air_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/air-gap"),
    },
    Example {
        shows: words("a double check valve"),
        design: words(include_str!("examples/fill_parted_by_air_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/backflow"),
    },
    Example {
        shows: words("the edge: 20 mm"),
        design: words(include_str!("examples/fill_parted_by_air_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/air-gap"),
    },
    Example {
        shows: words("19.5 mm"),
        design: words(include_str!("examples/fill_parted_by_air_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/air-gap"),
    },
    Example {
        shows: words("no fill"),
        design: words(include_str!("examples/fill_parted_by_air_none.json")),
        subject: words("pool:basin"),
        expected: Expected::DoesNotApply,
        place: words("/pools/1/fill/flow"),
    },
    Example {
        shows: words("the gap is not stated"),
        design: words(include_str!("examples/fill_parted_by_air_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/air-gap"),
    },
];
