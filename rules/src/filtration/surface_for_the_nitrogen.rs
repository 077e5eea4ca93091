//! The surface on which bacteria work in all filters of the water carries the nitrogen of the largest feeding day in the coolest water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::bed::{CAUTIOUS_REMOVAL, SURFACE_PROVIDED, has_a_bed, surface_needed};
use haulout_figures::filtration::load::answers_for_its_water;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("surface-for-the-nitrogen"),
        title: words("Too little working surface for the nitrogen that is fed"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "The surface on which bacteria work in all filters of the water carries the nitrogen of the largest feeding day in the coolest water.",
            ),
            why: words(
                "What is not taken up stands in the water as ammonia. Clean gravel has ten times the surface that works in service, so a clean figure always looks enough.",
            ),
            judged: words(
                "Grain surface 6 × (1 - voids) / grain with the larger grain, times 20 % for gravel (up to 30 % where a share is stated), against 16 % of the protein fed over the removal by area at the coolest temperature.",
            ),
            cure: words("more bed, a stage that keeps solids off it, or less feed"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "surface-for-the-nitrogen",
    name: "removal",
    row: "",
    what: CAUTIOUS_REMOVAL.what,
    value: CAUTIOUS_REMOVAL.value,
    unit: CAUTIOUS_REMOVAL.unit,
    dimension: CAUTIOUS_REMOVAL.dimension,
    tighter: Tighter::Lower,
    basis: CAUTIOUS_REMOVAL.basis,
    source: CAUTIOUS_REMOVAL.source,
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !answers_for_its_water(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let enough = (SURFACE_PROVIDED.of(sheet, at), surface_needed(sheet, at, &LIMITS[0])).all();
    let enough = enough.map(|(have, need)| Check::at_least(have, need));
    Ok(Check::AllOf(vec![Ok(Check::stands(has_a_bed(sheet, at), GapKind::SaidNone)), enough]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.40 m of gravel on 3.6 m2 for 9.6 g of nitrogen"),
        design: words(include_str!("examples/surface_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/filters/0/layers/0/thickness"),
    },
    Example {
        shows: words("0.10 m of gravel"),
        design: words(include_str!("examples/surface_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/filters/0/layers/0/thickness"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/surface_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/filters/0/layers/0/thickness"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/surface_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/filters/0/layers/0/thickness"),
    },
    Example {
        shows: words("half of the surface is stated to work: 30 % is believed, the edge"),
        design: words(include_str!("examples/surface_believed_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/filters/0/layers/0/thickness"),
    },
    Example {
        shows: words("half of the surface is stated to work, just short"),
        design: words(include_str!("examples/surface_believed_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/filters/0/layers/0/thickness"),
    },
    Example {
        shows: words("media by their maker"),
        design: words(include_str!("examples/surface_media.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/filters/0/media/volume"),
    },
    Example {
        shows: words("there are no filters"),
        design: words(include_str!("examples/surface_none.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/filters"),
    },
    Example {
        shows: words("nothing is fed over the water"),
        design: words(include_str!("examples/surface_unfed.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the protein is not stated"),
        design: words(include_str!("examples/surface_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/feeds/0/protein"),
    },
];
