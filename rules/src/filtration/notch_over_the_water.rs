//! The notch of a planted gravel filter lies far enough above its running water for the bed to clog a little, and no farther.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{NOTCH_OVER_WATER, PLANTED};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("notch-over-the-water"),
        title: words("The notch of the gravel filter is not where a rising level finds it"),
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
                "The notch of a planted gravel filter lies far enough above its running water for the bed to clog a little, and no farther.",
            ),
            why: words(
                "A bed that is fed from below clogs, and the water over it rises by what the roots and solids take. A notch too low runs every day and hides the clogging; one too high lets the water find the wall first.",
            ),
            judged: words("Level of the notch less the running level of the filter, between two limits."),
            cure: words("raise or lower the notch, and raise the wall with it"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "notch-over-the-water",
        name: "least",
        row: "",
        what: "least rise before the notch runs",
        value: 0.06,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "builders of planted filters: 60 to 100 mm over the running level",
    },
    Limit {
        rule: "notch-over-the-water",
        name: "most",
        row: "",
        what: "greatest rise before the notch runs",
        value: 0.1,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "builders of planted filters: 60 to 100 mm over the running level",
    },
];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let over = NOTCH_OVER_WATER.of(sheet, at)?;
    Ok(Check::within(over, sheet.limit(&LIMITS[0]), sheet.limit(&LIMITS[1])))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("80 mm over the water"),
        design: words(include_str!("examples/notch_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/notch/level"),
    },
    Example {
        shows: words("30 mm over the water: it runs every day"),
        design: words(include_str!("examples/notch_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/notch/level"),
    },
    Example {
        shows: words("the edge: 60.5 mm"),
        design: words(include_str!("examples/notch_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/notch/level"),
    },
    Example {
        shows: words("59 mm, just short"),
        design: words(include_str!("examples/notch_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/notch/level"),
    },
    Example {
        shows: words("the other edge: 99.5 mm"),
        design: words(include_str!("examples/notch_high.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/notch/level"),
    },
    Example {
        shows: words("101 mm, just too high"),
        design: words(include_str!("examples/notch_too_high.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/notch/level"),
    },
    Example {
        shows: words("the notch has no level"),
        design: words(include_str!("examples/notch_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/notch/level"),
    },
];
