//! The water of an arrival is near enough to that of the pool to be brought to it afloat, and floats until the two have met.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::arrival::{ARRIVAL_APART, FLOAT_TIME, floats, pools};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("bag-floats-long-enough"),
        title: words("Animals tipped out before the temperatures have met"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Arrival,
        caution: None,
        manual: Manual {
            asks: words(
                "The water of an arrival is near enough to that of the pool to be brought to it afloat, and floats until the two have met.",
            ),
            why: words(
                "A turtle or fish let out of cold water into warm is shocked and falls ill days later, when nobody thinks of the bag.",
            ),
            judged: words(
                "The difference of the two temperatures against what is evened out in one go, and the stated time afloat against the time in which all but 1 K of the difference goes. A thermometer in the bag decides, not the clock. Quarantine comes before all of it.",
            ),
            cure: words(
                "float longer, bring the transport water nearer on the way, or hold the animals in a tub that is warmed over a day",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "bag-floats-long-enough",
    name: "apart",
    row: "",
    what: "greatest difference of temperature evened out in one go",
    value: 5.0,
    unit: "K",
    dimension: Dimension::TEMPERATURE,
    tighter: Tighter::Lower,
    basis: Basis::Recalled,
    source: "keepers of fish: no more than 5 °C in a day; from memory",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if pools(sheet, at)?.is_empty() {
        return Ok(Check::AllOf(Vec::new()));
    }
    let apart = ARRIVAL_APART.of(sheet, at).map(|apart| Check::at_most(apart, sheet.limit(&LIMITS[0])));
    let afloat = (floats(sheet, at), FLOAT_TIME.of(sheet, at)).all();
    let afloat = afloat.map(|(stated, needed)| Check::at_least(stated, needed));
    Ok(Check::AllOf(vec![apart, afloat]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("3 L at 21 °C afloat for half an hour in 25 °C"),
        design: words(include_str!("examples/float_met.json")),
        subject: words("arrival:bags"),
        expected: Expected::Met,
        place: words("/start-up/arrivals/0/floats"),
    },
    Example {
        shows: words("afloat for ten minutes"),
        design: words(include_str!("examples/float_short.json")),
        subject: words("arrival:bags"),
        expected: Expected::Short,
        place: words("/start-up/arrivals/0/floats"),
    },
    Example {
        shows: words("5 K apart"),
        design: words(include_str!("examples/float_edge.json")),
        subject: words("arrival:bags"),
        expected: Expected::Met,
        place: words("/start-up/arrivals/0/temperature"),
    },
    Example {
        shows: words("5.2 K apart"),
        design: words(include_str!("examples/float_just_short.json")),
        subject: words("arrival:bags"),
        expected: Expected::Short,
        place: words("/start-up/arrivals/0/temperature"),
    },
    Example {
        shows: words("a tub of 80 L: no time is known"),
        design: words(include_str!("examples/float_large.json")),
        subject: words("arrival:bags"),
        expected: Expected::NotAssessed,
        place: words("/start-up/arrivals/0/volume"),
    },
    Example {
        shows: words("how long they float is not stated"),
        design: words(include_str!("examples/float_gap.json")),
        subject: words("arrival:bags"),
        expected: Expected::NotAssessed,
        place: words("/start-up/arrivals/0/floats"),
    },
    Example {
        shows: words("the animals live where there is no water"),
        design: words(include_str!("examples/float_dry.json")),
        subject: words("arrival:bags"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
