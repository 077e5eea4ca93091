//! Somewhere deep enough to go under at the lowest level, and nowhere too deep to be seen straight down.

use haulout_calc::animal::COVERED;
use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::group::BODY_HEIGHT;
use haulout_figures::pool::depth::GREATEST_DEPTH;
use haulout_figures::pool::water::SEEING_DEPTH;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, LevelState, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("depth-to-submerge-and-be-seen"),
        title: words("The depth does not let animals both go under and be seen"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "At the lowest running level some part of the pool covers a full-grown animal; at the normal level no part is deeper than one sees.",
            ),
            why: words(
                "Depth pulls two ways: an animal that cannot go under has nowhere to get away to, one on a bed beyond the clarity is not seen all day.",
            ),
            judged: words(
                "Two comparisons of the greatest depth: at the lowest level against standing height and cover, at the normal level straight down against the share of the clarity over which animals are well seen. Panels and slanting looks have rules of their own. A declared clarity has to be proved.",
            ),
            cure: words(
                "raise a deep bed with void-formers or a shelf, or reach a better clarity; void-formers do not lighten the pool",
            ),
        },
    },
    limits: &[&COVER],
    examples: EXAMPLES,
    judge,
};

static COVER: Limit = Limit {
    rule: "depth-to-submerge-and-be-seen",
    name: "cover",
    row: "",
    what: "water over the back of a standing animal",
    value: 0.05,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: 50 to 100 mm over the back; the lower end is asked for",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::AllOf(vec![deep_enough(sheet, at), seen(sheet, at)]))
}

fn deep_enough(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let lowest = sheet.in_case(sheet.case().level(LevelState::Low));
    let (have, height) = (GREATEST_DEPTH.of(lowest, at), BODY_HEIGHT.of(sheet, at)).all()?;
    Ok(Check::at_least(have, sheet.work(&COVERED, (height, sheet.limit(&COVER)))?))
}

fn seen(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (have, limit) = (GREATEST_DEPTH.of(sheet, at), SEEING_DEPTH.of(sheet, at)).all()?;
    Ok(Check::at_most(have, limit))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.60 m for turtles 10 cm high, clarity 1.0 m"),
        design: words(include_str!("examples/depth_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("cloudy water"),
        design: words(include_str!("examples/depth_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("the edge: 0.7 of the clarity exactly"),
        design: words(include_str!("examples/depth_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("clarity not stated"),
        design: words(include_str!("examples/depth_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("0.15 m at the lowest level: just 50 mm over a back of 10 cm"),
        design: words(include_str!("examples/depth_cover_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("48 mm over a back of 10 cm"),
        design: words(include_str!("examples/depth_cover_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("10 mm more than 0.7 of the clarity"),
        design: words(include_str!("examples/depth_seen_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/depth"),
    },
];
