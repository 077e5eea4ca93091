//! The riser of a bed that is fed from below is open to the air well above the running water of the filter.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{AIR_BREAK_OVER_WATER, fed_from_below, has_air_break};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("no-draining-back"),
        title: words("The gravel filter drains back through the stopped pump"),
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
                "The riser of a bed that is fed from below is open to the air well above the running water of the filter.",
            ),
            why: words(
                "When the pump stops, a bed that is fed from below empties through it into the pool, and the pool comes over its rim. Grit from the bed holds a check valve open, so none is counted. A shall by practice, since a flood is at stake.",
            ),
            judged: words(
                "Level of the air break less the running level; a riser that is said to have none falls short whatever valve stands in it.",
            ),
            cure: words("lead the riser above the wall of the filter and open it there"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "no-draining-back",
    name: "least",
    row: "",
    what: "least height of the air break over the running water",
    value: 0.1,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "builders of planted filters: above the highest the water gets as the bed clogs",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let over = AIR_BREAK_OVER_WATER.of(sheet, at);
    let high = over.map(|over| Check::at_least(over, sheet.limit(&LIMITS[0])));
    let open = Check::stands(has_air_break(sheet, at), GapKind::SaidNone);
    let asked = Ok(Check::AllOf(vec![Ok(open), high]));
    Ok(Check::only_if(fed_from_below(sheet, at).map(Check::holds), asked))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("an air break 180 mm over the water"),
        design: words(include_str!("examples/back_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/feed/air-break"),
    },
    Example {
        shows: words("an air break 30 mm over the water"),
        design: words(include_str!("examples/back_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/feed/air-break"),
    },
    Example {
        shows: words("no air break but a check valve"),
        design: words(include_str!("examples/back_none.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/feed/air-break"),
    },
    Example {
        shows: words("the edge: 101 mm"),
        design: words(include_str!("examples/back_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/feed/air-break"),
    },
    Example {
        shows: words("99 mm, just short"),
        design: words(include_str!("examples/back_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/feed/air-break"),
    },
    Example {
        shows: words("fed from the top"),
        design: words(include_str!("examples/back_top.json")),
        subject: words("filter:wetland"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the air break is not stated"),
        design: words(include_str!("examples/back_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/feed/air-break"),
    },
];
