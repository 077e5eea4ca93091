//! The plants of a gravel filter get the light that marsh plants live on.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{LIGHT, PLANTED};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("light-for-the-plants"),
        title: words("The plants of the gravel filter get too little light"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words("The plants of a gravel filter get the light that marsh plants live on."),
            why: words(
                "Indoors a planted filter dies within three months, and what rots gives back the nitrogen it took. No figure here counts on the plants, but the exhibit does.",
            ),
            judged: words("Light a day at the height of the leaves, 400 to 700 nm."),
            cure: words("lamps over the bed, longer hours, or a bed without plants"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "light-for-the-plants",
    name: "least",
    row: "",
    what: "least light a day for marsh plants",
    value: 6.944444444444444e-05,
    unit: "mol/m2/d",
    dimension: Dimension::PHOTON_FLUX,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "growers of marsh plants: 6 to 10 mol/m2/d; the lower end",
}];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let light = LIGHT.of(sheet, at)?;
    Ok(Check::at_least(light, sheet.limit(&LIMITS[0])))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("12 mol/m2/d"),
        design: words(include_str!("examples/light_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/light-dose"),
    },
    Example {
        shows: words("2 mol/m2/d of the hall lighting"),
        design: words(include_str!("examples/light_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/light-dose"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/light_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/light-dose"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/light_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/light-dose"),
    },
    Example {
        shows: words("the light is not stated"),
        design: words(include_str!("examples/light_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/light-dose"),
    },
];
