//! From each stocking step until the next, computed ammonia and nitrite stay under their targets however slowly the bacteria grow.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::step::{STEP_NITRITE, STEP_TAN, TARGET_NITRITE, TARGET_TAN, waters};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("step-within-the-filter"),
        title: words("More animals than the young filter carries"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Stocking,
        caution: None,
        manual: Manual {
            asks: words(
                "From each stocking step until the next, computed ammonia and nitrite stay under their targets however slowly the bacteria grow.",
            ),
            why: words(
                "A new filter is an empty box: what is fed over it stands in the water as ammonia and then as nitrite for weeks, and the animals cannot leave it.",
            ),
            judged: words(
                "The course of the water is followed at slow, middle and fast growth; the worst of the three, at the end of each day, is held against the targets of the start-up. Constants of growth scatter by two to three, so the readings that gate a step decide in the end, not the day.",
            ),
            cure: words(
                "move media in from an established filter, dose ammonia first, smaller steps, more weeks between them",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if waters(sheet, at)?.is_empty() {
        return Ok(Check::AllOf(Vec::new()));
    }
    let ammonia = (STEP_TAN.of(sheet, at), TARGET_TAN.of(sheet, at)).all();
    let nitrite = (STEP_NITRITE.of(sheet, at), TARGET_NITRITE.of(sheet, at)).all();
    let most = |(have, most)| Check::at_most(have, most);
    Ok(Check::AllOf(vec![ammonia.map(most), nitrite.map(most)]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("media for four times the feed of the step are moved in"),
        design: words(include_str!("examples/step_met.json")),
        subject: words("stocking:first"),
        expected: Expected::Met,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("no media are moved in"),
        design: words(include_str!("examples/step_short.json")),
        subject: words("stocking:first"),
        expected: Expected::Short,
        place: words("/start-up/steps/0/day"),
    },
    Example {
        shows: words("no media, but ammonia dosed for fourteen weeks first"),
        design: words(include_str!("examples/step_dosed.json")),
        subject: words("stocking:first"),
        expected: Expected::Met,
        place: words("/start-up/dosed"),
    },
    Example {
        shows: words("the edge of what the moved media carry"),
        design: words(include_str!("examples/step_edge.json")),
        subject: words("stocking:first"),
        expected: Expected::Met,
        place: words("/start-up/media/0/volume"),
    },
    Example {
        shows: words("just over it"),
        design: words(include_str!("examples/step_just_short.json")),
        subject: words("stocking:first"),
        expected: Expected::Short,
        place: words("/start-up/media/0/volume"),
    },
    Example {
        shows: words("all at once into a bare filter, the edge of a far too high target"),
        design: words(include_str!("examples/step_bare_edge.json")),
        subject: words("stocking:first"),
        expected: Expected::Met,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("just over it"),
        design: words(include_str!("examples/step_bare_just_short.json")),
        subject: words("stocking:first"),
        expected: Expected::Short,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("the alkalinity of the water is not stated"),
        design: words(include_str!("examples/step_gap.json")),
        subject: words("stocking:first"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/water/alkalinity"),
    },
    Example {
        shows: words("the targets are not stated"),
        design: words(include_str!("examples/step_target_gap.json")),
        subject: words("stocking:first"),
        expected: Expected::NotAssessed,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("the animals live where there is no water"),
        design: words(include_str!("examples/step_dry.json")),
        subject: words("stocking:first"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
