//! The lowest running level that the file states is as low as the water really gets.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::lowest::{FALL_TO_RECKON_WITH, stated_fall};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("lowest-level-reckoned-with"),
        title: words("The water gets lower than the lowest level stated"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "The lowest running level stated is not higher than the level after a start of the pumps and the longest time unattended.",
            ),
            why: words(
                "Exits, intakes, shelves and skimmers are judged at the lowest level stated; a level that is hoped for rather than worked out makes all of them look better than they are.",
            ),
            judged: words(
                "Depth of the stated level under the water, against what the pumps take up again when they start on a pool that was filled at rest, and the film over its own lips that runs out when they stop, and evaporation over the longest time unattended: as worked from water and winter air where they are stated, 6 mm a day where not. A leak, a splash or a fill that fails come on top.",
            ),
            cure: words(
                "state a lower running level and see what it does to exits and intakes; more surface; a fill that keeps the level",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (stated, fall) = (stated_fall(sheet, at), FALL_TO_RECKON_WITH.of(sheet, at)).all()?;
    Ok(Check::at_least(stated, fall))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("30 mm under the water"),
        design: words(include_str!("examples/lowest_level_reckoned_with_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("the basin 10 mm under its water, but 18 mm run out over its lip"),
        design: words(include_str!("examples/lowest_level_reckoned_with_short.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/streams/0/lip/width"),
    },
    Example {
        shows: words("the edge: 6 mm a day for two days, nothing else: 12 mm under the water"),
        design: words(include_str!("examples/lowest_level_reckoned_with_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/keepers/unattended"),
    },
    Example {
        shows: words("11.5 mm under the water"),
        design: words(include_str!("examples/lowest_level_reckoned_with_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("the longest time unattended is not stated"),
        design: words(include_str!("examples/lowest_level_reckoned_with_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/keepers/unattended"),
    },
];
