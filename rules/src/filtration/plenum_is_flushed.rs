//! The open space under a planted gravel bed has a flush that takes away its water within the hour.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::PLANTED;
use haulout_figures::filtration::stage::{FLUSH_TIME, has_a_flush};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("plenum-is-flushed"),
        title: words("The plenum of the gravel filter cannot be flushed"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "The open space under a planted gravel bed has a flush that takes away its water within the hour.",
            ),
            why: words(
                "What settles under the bed cannot be reached from above. Without a flush the filter is dug out after two or three years.",
            ),
            judged: words(
                "Plan times depth times voids of the plenum over the flow of the flush; a plenum that is said to have none falls short.",
            ),
            cure: words("a flushing outlet at the low end of the floor, large enough to move dirt"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "plenum-is-flushed",
    name: "longest",
    row: "",
    what: "longest time to flush the plenum once",
    value: 3600.0,
    unit: "min",
    dimension: Dimension::TIME,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "builders of planted filters: a flush is done within a keeper's round",
}];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let time = FLUSH_TIME.of(sheet, at);
    let within = time.map(|time| Check::at_most(time, sheet.limit(&LIMITS[0])));
    Ok(Check::AllOf(vec![Ok(Check::stands(has_a_flush(sheet, at), GapKind::SaidNone)), within]))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("3 m3/h"),
        design: words(include_str!("examples/flush_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/plenum/flush"),
    },
    Example {
        shows: words("0.5 m3/h"),
        design: words(include_str!("examples/flush_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/plenum/flush"),
    },
    Example {
        shows: words("no flush"),
        design: words(include_str!("examples/flush_none.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/plenum/flush"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/flush_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/plenum/flush"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/flush_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/plenum/flush"),
    },
    Example {
        shows: words("the flush is not stated"),
        design: words(include_str!("examples/flush_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/plenum/flush"),
    },
];
