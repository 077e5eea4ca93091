//! At the normal and at the lowest level, the smallest and the full-grown turtle each find a fair share of wet bed on which they rest with their nostrils out.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::window::body::is_turtle;
use haulout_figures::window::shares::REST_SHARE;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, LevelState, Limit, Sheet, Size, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("shallows-to-rest-in"),
        title: words("Turtles find too little bed to rest on with the nostrils out"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "At the normal and at the lowest level, the smallest and the full-grown turtle each find a fair share of wet bed on which they rest with their nostrils out.",
            ),
            why: words(
                "A tired, sick or young turtle drowns where it cannot stand and breathe; a shelf that falls dry at the lowest level is no shelf.",
            ),
            judged: words(
                "Share of the wet bed no deeper than 1.2 shell lengths and never more than 0.20 m, for both sizes at both levels; the worst decides. A shall by practice, since drowning is at stake.",
            ),
            cure: words(
                "a shelf under 5 to 15 cm of water along a tenth to a quarter of the bed, or a gently sloped edge",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "shallows-to-rest-in",
    name: "share",
    row: "",
    what: "least share of the bed to rest on",
    value: 0.10,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: 10 to 25 % of the bed under 5 to 15 cm of water; the lower end",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let rests = |level: LevelState, size: Size| {
        let share = REST_SHARE.of(sheet.in_case(Case::NORMAL.level(level).size(size)), at)?;
        Ok(Check::at_least(share, sheet.limit(&LIMITS[0])))
    };
    let levels = [LevelState::Water, LevelState::Low];
    let each = levels.into_iter().flat_map(|l| [rests(l, Size::Smallest), rests(l, Size::Grown)]);
    Ok(Check::only_if(is_turtle(sheet, at).map(Check::holds), Ok(Check::AllOf(each.collect()))))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a shelf of 0.12 m over three tenths of the bed"),
        design: words(include_str!("examples/shallows_to_rest_in_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("the shelf lies 0.30 m deep"),
        design: words(include_str!("examples/shallows_to_rest_in_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("the shelf falls dry at the lowest level"),
        design: words(include_str!("examples/shallows_to_rest_in_dry.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("the edge: a tenth of the bed"),
        design: words(include_str!("examples/shallows_to_rest_in_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("the smallest animal is not stated"),
        design: words(include_str!("examples/shallows_to_rest_in_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/body-length/smallest"),
    },
];
