//! The head that the bed takes when it is clogged twenty times over stays within the rise of the water up to the notch.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{CLEAN_LOSS, NOTCH_OVER_WATER, PLANTED, clogged};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("clogged-bed-within-the-rise"),
        title: words("The gravel is too fine for the rise its notch leaves"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "The head that the bed takes when it is clogged twenty times over stays within the rise of the water up to the notch.",
            ),
            why: words(
                "A clean bed takes millimetres and never is the matter; in service it takes ten to twenty times as much, and that is what the water has to rise by.",
            ),
            judged: words(
                "Loss of the clean layers by Ergun (1952) with the smaller grain, times the factor of clogging, against the notch less the running level.",
            ),
            cure: words("coarser gravel, a larger plan, or a higher notch with a higher wall"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "clogged-bed-within-the-rise",
    name: "clogging",
    row: "",
    what: "how many times the clean loss a clogged bed takes",
    value: 20.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "clean beds by Ergun against design values of the US EPA (1993) for gravel wetlands: 17 times; builders reckon with 10 to 20",
}];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let clogged = CLEAN_LOSS.of(sheet, at).and_then(|clean| clogged(sheet, clean, &LIMITS[0]));
    let lines = (NOTCH_OVER_WATER.of(sheet, at), clogged).all()?;
    Ok(Check::at_least(lines.0, lines.1))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("gravel of 10 to 16 mm"),
        design: words(include_str!("examples/clogged_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/layers/0/grain"),
    },
    Example {
        shows: words("sand of 0.5 to 1 mm"),
        design: words(include_str!("examples/clogged_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/layers/0/grain"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/clogged_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/layers/0/grain"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/clogged_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/layers/0/grain"),
    },
    Example {
        shows: words("the grain is not stated"),
        design: words(include_str!("examples/clogged_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/layers/0/grain"),
    },
];
