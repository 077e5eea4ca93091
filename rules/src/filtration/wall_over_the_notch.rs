//! The wall of a planted gravel filter stands above its notch by the head of the whole clean flow and a margin.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{PLANTED, WALL_OVER_NOTCH};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("wall-over-the-notch"),
        title: words("The gravel filter runs over its wall before its notch takes the flow"),
        chapter: words("filtration"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "The wall of a planted gravel filter stands above its notch by the head of the whole clean flow and a margin.",
            ),
            why: words(
                "Leaves and roots block the lip one night; from then on all that the pump lifts leaves by the notch or over the wall onto the floor. A shall by practice, since a flood is at stake.",
            ),
            judged: words(
                "Top of the wall less the crest of the notch less the head over the notch, which takes the flow of the clean filter alone.",
            ),
            cure: words("raise the wall, widen the notch, or lower notch and lip together"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "wall-over-the-notch",
    name: "margin",
    row: "",
    what: "least wall above the water in the notch",
    value: 0.02,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "builders of planted filters: a finger's breadth of wall stays dry",
}];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let over = WALL_OVER_NOTCH.of(sheet, at)?;
    Ok(Check::at_least(over, sheet.limit(&LIMITS[0])))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("50 mm over a notch of 0.40 m"),
        design: words(include_str!("examples/wall_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/levels/wall-top"),
    },
    Example {
        shows: words("the wall stands no higher than the notch"),
        design: words(include_str!("examples/wall_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/levels/wall-top"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/wall_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/levels/wall-top"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/wall_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/levels/wall-top"),
    },
    Example {
        shows: words("a bed of moving media"),
        design: words(include_str!("examples/wall_other.json")),
        subject: words("filter:wetland"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the wall has no level"),
        design: words(include_str!("examples/wall_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/levels/wall-top"),
    },
];
