//! What the fill brings in keeps an alkalinity that nitrification works with, once it no longer falls.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::load::answers_for_its_water;
use haulout_figures::filtration::renewal::{ALKALINITY_AT_REST, is_renewed};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("alkalinity-lasts"),
        title: words("The alkalinity of the water runs out"),
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
                "What the fill brings in keeps an alkalinity that nitrification works with, once it no longer falls.",
            ),
            why: words(
                "Each gram of nitrogen uses up 7.14 g of calcium carbonate. In soft water the pH then falls within weeks, the bacteria stop, and the next large change of water turns all the ammonia un-ionised at once.",
            ),
            judged: words(
                "At rest: brought in by the fill less 7.14 times the nitrogen, over the water changed, as calcium carbonate. Dosing is not counted; the figure alkalinity to dose says how much would hold what is stated.",
            ),
            cure: words("change more water, a harder fill, shell grit in the flow, or dosing by reading"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "alkalinity-lasts",
    name: "least",
    row: "",
    what: "least alkalinity, as calcium carbonate",
    value: 0.04,
    unit: "mg/L",
    dimension: Dimension::DENSITY,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "Grady and Lim (1980) and Gaudy and Gaudy (1980), as quoted in a thesis of the University of Wisconsin: 40 mg/L for nitrifying filters",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !answers_for_its_water(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let renewed = Check::stands(is_renewed(sheet, at), GapKind::SaidNone);
    let rest = ALKALINITY_AT_REST.of(sheet, at).map(|rest| Check::at_least(rest, sheet.limit(&LIMITS[0])));
    Ok(Check::AllOf(vec![Ok(renewed), rest]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("800 L a day of 140 mg/L"),
        design: words(include_str!("examples/alkalinity_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("soft water of 60 mg/L"),
        design: words(include_str!("examples/alkalinity_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/alkalinity"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/alkalinity_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/alkalinity_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("no water is ever changed"),
        design: words(include_str!("examples/alkalinity_never.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("the alkalinity of the fill is not stated"),
        design: words(include_str!("examples/alkalinity_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/alkalinity"),
    },
];
