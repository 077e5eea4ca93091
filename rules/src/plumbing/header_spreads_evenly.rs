//! A header loses far more in its holes than along its pipe.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::returns::{HEADER_EVENNESS, header_is_asked};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("header-spreads-evenly"),
        title: words("The header feeds one end of the bed only"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Return,
        caution: None,
        manual: Manual {
            asks: words(
                "The head lost in the holes of a header is at least five times the head lost along it.",
            ),
            why: words(
                "Water takes the easiest way: out of a header with large holes it leaves by the far end or by the near one, and most of the gravel over it starves.",
            ),
            judged: words(
                "Loss of the holes as sharp-edged openings of coefficient 0.6, for the clean flow of the return; loss along the header as a third of the friction of the whole flow in a smooth pipe. What the slowing water regains at the far end is not counted.",
            ),
            cure: words("fewer or smaller holes, a wider header, feeding it in the middle"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "header-spreads-evenly",
    name: "ratio",
    row: "",
    what: "least loss of the holes against the header",
    value: 5.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "filter builders' practice: five to ten times; the lower end",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !header_is_asked(sheet, at) {
        return Ok(Check::AllOf(Vec::new()));
    }
    Ok(Check::at_least(HEADER_EVENNESS.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("40 holes of 8 mm in 2 m of 55 mm"),
        design: words(include_str!("examples/header_spreads_evenly_met.json")),
        subject: words("return:over-basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/header/holes"),
    },
    Example {
        shows: words("40 holes of 16 mm"),
        design: words(include_str!("examples/header_spreads_evenly_short.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/header/hole-bore"),
    },
    Example {
        shows: words("10 mm holes in 2.3 m: 5.1 times"),
        design: words(include_str!("examples/header_spreads_evenly_edge.json")),
        subject: words("return:over-basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/header/length"),
    },
    Example {
        shows: words("10 mm holes in 2.4 m: 4.9 times"),
        design: words(include_str!("examples/header_spreads_evenly_just_short.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/header/length"),
    },
    Example {
        shows: words("no header, into a pool"),
        design: words(include_str!("examples/header_spreads_evenly_none.json")),
        subject: words("return:over-basin"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the holes are not counted"),
        design: words(include_str!("examples/header_spreads_evenly_gap.json")),
        subject: words("return:over-basin"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/returns/0/header/holes"),
    },
];
