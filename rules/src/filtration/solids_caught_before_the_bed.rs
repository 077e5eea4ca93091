//! Before a planted gravel bed stands a stage that catches solids, fine enough, and cleaned often without draining the pool.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::PLANTED;
use haulout_figures::filtration::stage::{
    CLEANED, MESH, cleaned_in_service, is_screen, something_before, stage_before,
};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("solids-caught-before-the-bed"),
        title: words("Solids get into the gravel before anything catches them"),
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
                "Before a planted gravel bed stands a stage that catches solids, fine enough, and cleaned often without draining the pool.",
            ),
            why: words(
                "Exhibits with reptiles choke on solids long before they choke on ammonia. What gets into gravel stays there and rots; a screen that nobody can clean in service is not cleaned.",
            ),
            judged: words(
                "The first filter that the water passes before the bed: whether it is cleaned in service, how often, and the mesh where it is a screen. A device of the circuit tells nothing of this and is not enough.",
            ),
            cure: words(
                "a drum, a sieve or a settling chamber before the bed, cleaned from the keepers' side",
            ),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "solids-caught-before-the-bed",
        name: "mesh",
        row: "",
        what: "coarsest mesh before gravel",
        value: 0.0003,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "builders of planted filters: 60 to 300 micrometres, or a settling chamber",
    },
    Limit {
        rule: "solids-caught-before-the-bed",
        name: "cleaned",
        row: "",
        what: "longest time between cleanings",
        value: 604800.0,
        unit: "d",
        dimension: Dimension::TIME,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers' practice: once a week at the least, before solids dissolve",
    },
];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let stands = Ok(Check::stands(something_before(sheet, at), GapKind::SaidNone));
    let Ok(stage) = stage_before(sheet, at) else { return Ok(Check::AllOf(vec![stands])) };
    let fine = MESH.of(sheet, stage).map(|mesh| Check::at_most(mesh, sheet.limit(&LIMITS[0])));
    let fine = Check::only_if(is_screen(sheet, stage).map(Check::holds), fine);
    let often = CLEANED.of(sheet, stage).map(|time| Check::at_most(time, sheet.limit(&LIMITS[1])));
    let in_service = cleaned_in_service(sheet, stage).map(Check::holds);
    Ok(Check::AllOf(vec![stands, in_service, Ok(fine), often]))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a drum of 0.2 mm, cleaned daily"),
        design: words(include_str!("examples/solids_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/1/screen/mesh"),
    },
    Example {
        shows: words("nothing before the bed"),
        design: words(include_str!("examples/solids_none.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/pre-treatment"),
    },
    Example {
        shows: words("a screen that is cleaned with the pool drained"),
        design: words(include_str!("examples/solids_drained.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/1/screen/in-service"),
    },
    Example {
        shows: words("the edge of the mesh"),
        design: words(include_str!("examples/solids_mesh_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/1/screen/mesh"),
    },
    Example {
        shows: words("the mesh just too coarse"),
        design: words(include_str!("examples/solids_mesh_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/1/screen/mesh"),
    },
    Example {
        shows: words("the edge of the time"),
        design: words(include_str!("examples/solids_cleaned_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/1/screen/cleaned"),
    },
    Example {
        shows: words("cleaned just too seldom"),
        design: words(include_str!("examples/solids_cleaned_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/1/screen/cleaned"),
    },
    Example {
        shows: words("a settling chamber has no mesh"),
        design: words(include_str!("examples/solids_settling.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/1/screen/cleaned"),
    },
    Example {
        shows: words("it is not said what stands before it"),
        design: words(include_str!("examples/solids_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/pre-treatment"),
    },
];
