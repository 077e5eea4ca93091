//! A pump beside or above its water is pressed full enough not to boil it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::suction::{SUCTION_SPARE, needs_none};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("suction-head-enough"),
        title: words("The pump draws harder than its water is pressed"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Circuit,
        caution: None,
        manual: Manual {
            asks: words(
                "A pump that does not stand in its water has at least half a metre more of suction head than it needs, with the water at its lowest running level and at its warmest.",
            ),
            why: words(
                "A pump beside or above the water is filled by the air that presses on the pool, and by nothing else. A long thin suction pipe or a clogged strainer before the pump eats that up: the water boils in the wheel, rattles like gravel, and the flow falls off while the lamp on the pump stays green.",
            ),
            judged: words(
                "Pressure of the air less that of the vapour as a height of water, the lowest running level over the eye of the pump, less the loss in the runs and devices on the suction side at the flow delivered with clean filters; against the figure of the maker. Air at 95 kPa: what stands higher than some 500 m has less.",
            ),
            cure: words(
                "stand the pump lower, a wider and shorter suction pipe, strainers behind the pump instead of before it",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "suction-head-enough",
    name: "spare",
    row: "",
    what: "least suction head over what the pump needs",
    value: 0.5,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "makers of centrifugal pumps ask for 0.5 to 1 m over the figure of their curve",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if needs_none(sheet, at) {
        return Ok(Check::AllOf(Vec::new()));
    }
    Ok(Check::at_least(SUCTION_SPARE.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a metre and a half above the water, a wide pipe"),
        design: words(include_str!("examples/suction_head_enough_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/pump-level"),
    },
    Example {
        shows: words("six metres above it"),
        design: words(include_str!("examples/suction_head_enough_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/pump-level"),
    },
    Example {
        shows: words("a pipe of 26 mm before the pump"),
        design: words(include_str!("examples/suction_head_enough_thin.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("just enough to spare"),
        design: words(include_str!("examples/suction_head_enough_edge.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/pump/npsh"),
    },
    Example {
        shows: words("a centimetre less"),
        design: words(include_str!("examples/suction_head_enough_just_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/pump/npsh"),
    },
    Example {
        shows: words("nothing is said of what the pump needs"),
        design: words(include_str!("examples/suction_head_enough_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/pump/npsh"),
    },
    Example {
        shows: words("which runs lie before the pump is not said"),
        design: words(include_str!("examples/suction_head_enough_side.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs/0/side"),
    },
    Example {
        shows: words("a pump in the water"),
        design: words(include_str!("examples/suction_head_enough_none.json")),
        subject: words("circuit:loop"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
