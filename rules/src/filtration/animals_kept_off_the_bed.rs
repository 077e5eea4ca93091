//! Animals cannot get onto a planted gravel filter, and nothing slips through its cover.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{COVER_APERTURE, PLANTED, animals_kept_off};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("animals-kept-off-the-bed"),
        title: words("Animals get onto the gravel filter"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "Animals cannot get onto a planted gravel filter, and nothing slips through its cover.",
            ),
            why: words(
                "Warm moist gravel is where turtles lay and lizards dig: eggs are lost in it, plants are torn out, and the water finds the holes.",
            ),
            judged: words(
                "The file says that animals are kept off, and the widest opening of the cover is small.",
            ),
            cure: words(
                "a mesh or a grating that lies on a frame, with a laying place of their own elsewhere",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "animals-kept-off-the-bed",
    name: "aperture",
    row: "",
    what: "widest opening of the cover",
    value: 0.02,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "builders of planted filters: less than the breadth of a hatchling",
}];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let kept_off = animals_kept_off(sheet, at).map(Check::holds);
    let aperture = COVER_APERTURE.of(sheet, at);
    let small = aperture.map(|aperture| Check::at_most(aperture, sheet.limit(&LIMITS[0])));
    Ok(Check::AllOf(vec![kept_off, small]))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a mesh of 10 mm"),
        design: words(include_str!("examples/kept_off_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/animals-excluded"),
    },
    Example {
        shows: words("turtles get onto it"),
        design: words(include_str!("examples/kept_off_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/animals-excluded"),
    },
    Example {
        shows: words("the edge: 19.8 mm"),
        design: words(include_str!("examples/kept_off_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/cover-aperture"),
    },
    Example {
        shows: words("20.2 mm, just short"),
        design: words(include_str!("examples/kept_off_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/cover-aperture"),
    },
    Example {
        shows: words("it is not said whether they do"),
        design: words(include_str!("examples/kept_off_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/animals-excluded"),
    },
];
