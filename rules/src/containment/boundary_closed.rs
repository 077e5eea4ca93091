//! The barriers of a space go all the way round it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::boundary::{BOUNDARY_GAP, KEEPS_ANIMALS};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("boundary-closed"),
        title: words("The barriers leave the space open"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Space,
        caution: None,
        manual: Manual {
            asks: words("Round every space for animals the barriers meet end to end."),
            why: words(
                "An animal walks a wall until it finds the place where the wall stops. A side nobody has drawn is a side nobody has built.",
            ),
            judged: words(
                "The chain of barriers round the middle of the space is looked for whose widest opening is narrowest; that opening must be no more than a joint. Doors stand in a barrier and do not open it here; walls of the hall count when they are drawn as barriers.",
            ),
            cure: words("draw the side that is missing, or carry the barriers on until their ends meet"),
        },
    },
    limits: &[&JOINT],
    examples: EXAMPLES,
    judge,
};

static JOINT: Limit = Limit {
    rule: "boundary-closed",
    name: "joint",
    row: "",
    what: "what still counts as joined",
    value: 0.010,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "builders' practice: ends nearer than 10 mm are sealed when the wall is finished",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = KEEPS_ANIMALS.of(sheet, at).map(Check::holds);
    let closed = BOUNDARY_GAP.of(sheet, at).map(|gap| Check::at_most(gap, sheet.limit(&JOINT)));
    Ok(Check::only_if(applies, closed))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("four walls drawn as one line"),
        design: words(include_str!("examples/boundary_closed_met.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Met,
        place: words("/barriers/0/line"),
    },
    Example {
        shows: words("the line stops 0.50 m short of its beginning"),
        design: words(include_str!("examples/boundary_closed_short.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Short,
        place: words("/barriers/0/line"),
    },
    Example {
        shows: words("the edge: 10 mm short of its beginning"),
        design: words(include_str!("examples/boundary_closed_edge.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Met,
        place: words("/barriers/0/line"),
    },
    Example {
        shows: words("no barriers stated"),
        design: words(include_str!("examples/boundary_closed_gap.json")),
        subject: words("space:turtle-side"),
        expected: Expected::NotAssessed,
        place: words("/barriers"),
    },
    Example {
        shows: words("a space for the public"),
        design: words(include_str!("examples/boundary_closed_public.json")),
        subject: words("space:turtle-side"),
        expected: Expected::DoesNotApply,
        place: words("/hall/spaces/0/for"),
    },
    Example {
        shows: words("10.3 mm short of its beginning"),
        design: words(include_str!("examples/boundary_closed_just_short.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Short,
        place: words(""),
    },
];
