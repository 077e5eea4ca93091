//! The flow through a bed under water, with dirty filters, leaves enough oxygen in it for its part of the largest day's nitrogen.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::oxygen::{OXYGEN_PASSED, OXYGEN_WANTED, lives_on_the_flow};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("oxygen-through-the-bed"),
        title: words("The flow brings the bed too little oxygen"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL.dirty(),
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "The flow through a bed under water, with dirty filters, leaves enough oxygen in it for its part of the largest day's nitrogen.",
            ),
            why: words(
                "Bacteria take 4.57 g of oxygen for each gram of nitrogen, and stop below 2 mg/L. A bed that is large enough and starved of oxygen does nothing, and the end of it rots.",
            ),
            judged: words(
                "Delivered flow with dirty filters times the oxygen that comes in less 2 mg/L, never more than water holds at its warmest, against 4.57 times the nitrogen. Beds that take oxygen from the air do not come under this rule.",
            ),
            cure: words("more flow through the bed, a fall before it, or a bed that is open to the air"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (passed, wanted) = (OXYGEN_PASSED.of(sheet, at), OXYGEN_WANTED.of(sheet, at));
    let enough = (passed, wanted).all().map(|(have, need)| Check::at_least(have, need));
    Ok(Check::only_if(lives_on_the_flow(sheet, at).map(Check::holds), enough))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("5 m3/h with 7 mg/L"),
        design: words(include_str!("examples/oxygen_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/oxygen-in"),
    },
    Example {
        shows: words("water of 2.2 mg/L"),
        design: words(include_str!("examples/oxygen_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/oxygen-in"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/oxygen_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/oxygen-in"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/oxygen_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/oxygen-in"),
    },
    Example {
        shows: words("12 mg/L is stated of warm water, the edge of what it holds"),
        design: words(include_str!("examples/oxygen_saturation_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/mass"),
    },
    Example {
        shows: words("12 mg/L is stated of warm water, just short of what it holds"),
        design: words(include_str!("examples/oxygen_saturation_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/mass"),
    },
    Example {
        shows: words("a trickling filter"),
        design: words(include_str!("examples/oxygen_trickling.json")),
        subject: words("filter:wetland"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the oxygen is not stated"),
        design: words(include_str!("examples/oxygen_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/oxygen-in"),
    },
];
