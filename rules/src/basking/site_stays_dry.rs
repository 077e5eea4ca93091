//! The site lies at least 20 mm over the highest water, and no more than 150 mm.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::by_water;
use haulout_figures::basking::site::OVER_HIGH;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("site-stays-dry"),
        title: words("The basking site is washed over at the highest water"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Basking,
        caution: None,
        manual: Manual {
            asks: words("The site lies at least 20 mm over the highest water, and no more than 150 mm."),
            why: words(
                "A log that is wet all day lets nobody dry, and shells rot on it; one that stands too high is not climbed.",
            ),
            judged: words(
                "Level of the site over the overflow, or over the water level where no overflow is stated. A float counts by its freeboard. A site away from water says so with pool none.",
            ),
            cure: words("set the site 20 to 150 mm over the overflow level"),
        },
    },
    limits: &[&LEAST, &MOST],
    examples: EXAMPLES,
    judge,
};

static LEAST: Limit = Limit {
    rule: "site-stays-dry",
    name: "least",
    row: "",
    what: "least height over the highest water",
    value: 0.02,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

static MOST: Limit = Limit {
    rule: "site-stays-dry",
    name: "most",
    row: "",
    what: "greatest height over the highest water",
    value: 0.15,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !by_water(sheet, at)? {
        return Ok(Check::AnyOf(Vec::new()));
    }
    let height = OVER_HIGH.of(sheet, at)?;
    Ok(Check::within(height, sheet.limit(&LEAST), sheet.limit(&MOST)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("70 mm over the overflow level"),
        design: words(include_str!("examples/site_stays_dry_met.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/level"),
    },
    Example {
        shows: words("10 mm"),
        design: words(include_str!("examples/site_stays_dry_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the edge: 20 mm"),
        design: words(include_str!("examples/site_stays_dry_edge.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/level/by"),
    },
    Example {
        shows: words("level not stated"),
        design: words(include_str!("examples/site_stays_dry_gap.json")),
        subject: words("basking:a"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/level"),
    },
    Example {
        shows: words("a branch away from the water"),
        design: words(include_str!("examples/site_stays_dry_branch.json")),
        subject: words("basking:a"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("19.5 mm"),
        design: words(include_str!("examples/site_stays_dry_just_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/basking/0/level/by"),
    },
    Example {
        shows: words("the upper edge: 150 mm"),
        design: words(include_str!("examples/site_stays_dry_high.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/level/by"),
    },
    Example {
        shows: words("155 mm, just too high"),
        design: words(include_str!("examples/site_stays_dry_too_high.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/basking/0/level/by"),
    },
];
