//! Sealants and coatings cure for their time before water comes to them.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::material::{CURED, cures};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("cured-before-the-water"),
        title: words("Filled before the sealant has cured"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Material,
        caution: None,
        manual: Manual {
            asks: words("Sealants and coatings cure for their time before water comes to them."),
            why: words(
                "A sealant that is flooded early gives off acid or solvent into the water and parts from the wall later.",
            ),
            judged: words(
                "Time stated against a week. The maker of the product may ask for more: its data sheet decides.",
            ),
            cure: words("wait, warm and air the room, and fill later"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "cured-before-the-water",
    name: "cured",
    row: "",
    what: "shortest cure of sealants and coatings before water comes to them",
    value: 604800.0,
    unit: "d",
    dimension: Dimension::TIME,
    tighter: Tighter::Higher,
    basis: Basis::Recalled,
    source: "makers of sealants and pond coatings: about seven days at 20 °C; from memory",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let cured = CURED.of(sheet, at).map(|cured| Check::at_least(cured, sheet.limit(&LIMITS[0])));
    Ok(Check::only_if(cures(sheet, at).map(Check::holds), cured))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a sealant after four weeks"),
        design: words(include_str!("examples/cured_met.json")),
        subject: words("material:wall"),
        expected: Expected::Met,
        place: words("/pools/0/wet-materials/0/cured"),
    },
    Example {
        shows: words("a week"),
        design: words(include_str!("examples/cured_edge.json")),
        subject: words("material:wall"),
        expected: Expected::Met,
        place: words("/pools/0/wet-materials/0/cured"),
    },
    Example {
        shows: words("a little under a week"),
        design: words(include_str!("examples/cured_just_short.json")),
        subject: words("material:wall"),
        expected: Expected::Short,
        place: words("/pools/0/wet-materials/0/cured"),
    },
    Example {
        shows: words("not stated"),
        design: words(include_str!("examples/cured_gap.json")),
        subject: words("material:wall"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/wet-materials/0/cured"),
    },
    Example {
        shows: words("mortar"),
        design: words(include_str!("examples/cured_none.json")),
        subject: words("material:wall"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/wet-materials/0/kind"),
    },
];
