//! A way out begins under the lowest water and ends over the highest.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::exit::{EXIT_FOOT_DEPTH, EXIT_TOP_HEIGHT};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("exit-reached-at-every-level"),
        title: words("A way out hangs over the lowest water or ends under the highest"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Exit,
        caution: None,
        manual: Manual {
            asks: words("Each way out begins under the lowest water and ends over the highest."),
            why: words(
                "An animal that swims against a sheer foot cannot climb out, tires and drowns; a way out that is flooded leads nowhere.",
            ),
            judged: words(
                "Lowest running level less foot, and top less invert of the overflow. The slope and the hold that claws find are not judged here.",
            ),
            cure: words("take the foot further down, or the top further up"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "exit-reached-at-every-level",
        name: "foot",
        row: "",
        what: "least depth of the foot under the lowest water",
        value: 0.05,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "keepers' practice: the foot 50 to 100 mm under the lowest water",
    },
    Limit {
        rule: "exit-reached-at-every-level",
        name: "top",
        row: "",
        what: "least height of the top over the highest water",
        value: 0.05,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "keepers' practice: no source; as much as a rim stands over its overflow",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let foot = EXIT_FOOT_DEPTH.of(sheet, at).map(|d| Check::at_least(d, sheet.limit(&LIMITS[0])));
    let top = EXIT_TOP_HEIGHT.of(sheet, at).map(|h| Check::at_least(h, sheet.limit(&LIMITS[1])));
    Ok(Check::AllOf(vec![foot, top]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("foot 90 mm under, top 170 mm over the water"),
        design: words(include_str!("examples/exit_reached_at_every_level_met.json")),
        subject: words("exit:ramp"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/foot"),
    },
    Example {
        shows: words("the foot 20 mm over the lowest water"),
        design: words(include_str!("examples/exit_reached_at_every_level_short.json")),
        subject: words("exit:ramp"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/foot"),
    },
    Example {
        shows: words("the edge: 50 mm under and 50 mm over"),
        design: words(include_str!("examples/exit_reached_at_every_level_edge.json")),
        subject: words("exit:ramp"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/foot"),
    },
    Example {
        shows: words("the foot 48 mm under, just short"),
        design: words(include_str!("examples/exit_reached_at_every_level_just_short.json")),
        subject: words("exit:ramp"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/foot"),
    },
    Example {
        shows: words("the top 48 mm over, just short"),
        design: words(include_str!("examples/exit_reached_at_every_level_top_short.json")),
        subject: words("exit:ramp"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/top"),
    },
    Example {
        shows: words("the foot is not stated"),
        design: words(include_str!("examples/exit_reached_at_every_level_gap.json")),
        subject: words("exit:ramp"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/exits/0/foot"),
    },
];
