//! The readings of ammonia and nitrite at which the next step waits are stated, and low enough to mean something.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::step::{TARGET_NITRITE, TARGET_TAN, is_stocked};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("readings-that-hold-a-step"),
        title: words("The next step waits for no reading"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Whole,
        caution: None,
        manual: Manual {
            asks: words(
                "The readings of ammonia and nitrite at which the next step waits are stated, and low enough to mean something.",
            ),
            why: words(
                "A computed day is a guess; a test kit is not. Where no reading stands in the plan, the animals come on the day the van is free.",
            ),
            judged: words(
                "The targets of the start-up, both as nitrogen, against what keepers stop feeding at. Kits that read NH4 or NO2 show 1.29 and 3.28 times as much.",
            ),
            cure: words("write both readings into the plan and give somebody the kit"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "readings-that-hold-a-step",
        name: "ammonia",
        row: "",
        what: "greatest total ammonia, as nitrogen, at which animals are still brought in",
        value: 0.001,
        unit: "mg/L",
        dimension: Dimension::DENSITY,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers of turtles and fish: stop at 1 mg/L of total ammonia while a filter matures",
    },
    Limit {
        rule: "readings-that-hold-a-step",
        name: "nitrite",
        row: "",
        what: "greatest nitrite, as nitrogen, at which animals are still brought in",
        value: 0.0005,
        unit: "mg/L",
        dimension: Dimension::DENSITY,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers of turtles and fish: stop at 0.5 mg/L of nitrite while a filter matures",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let ammonia = TARGET_TAN.of(sheet, at).map(|target| Check::at_most(target, sheet.limit(&LIMITS[0])));
    let nitrite = TARGET_NITRITE.of(sheet, at).map(|target| Check::at_most(target, sheet.limit(&LIMITS[1])));
    if !is_stocked(sheet)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    Ok(Check::AllOf(vec![ammonia, nitrite]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.5 and 0.3 mg/L"),
        design: words(include_str!("examples/readings_met.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("ammonia at the edge"),
        design: words(include_str!("examples/readings_tan_edge.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("ammonia just over"),
        design: words(include_str!("examples/readings_tan_just_short.json")),
        subject: words("whole"),
        expected: Expected::Short,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("nitrite at the edge"),
        design: words(include_str!("examples/readings_nitrite_edge.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/start-up/target-nitrite"),
    },
    Example {
        shows: words("nitrite just over"),
        design: words(include_str!("examples/readings_nitrite_just_short.json")),
        subject: words("whole"),
        expected: Expected::Short,
        place: words("/start-up/target-nitrite"),
    },
    Example {
        shows: words("no reading of nitrite is stated"),
        design: words(include_str!("examples/readings_gap.json")),
        subject: words("whole"),
        expected: Expected::NotAssessed,
        place: words("/start-up/target-nitrite"),
    },
    Example {
        shows: words("nothing is brought in by steps"),
        design: words(include_str!("examples/readings_none.json")),
        subject: words("whole"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
