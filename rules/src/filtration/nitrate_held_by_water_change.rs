//! The water changed each day holds the nitrate, as nitrogen, below what keepers allow once it no longer rises.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::load::answers_for_its_water;
use haulout_figures::filtration::renewal::{NITRATE_AT_REST, is_renewed};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("nitrate-held-by-water-change"),
        title: words("Water change does not hold the nitrate"),
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
                "The water changed each day holds the nitrate, as nitrogen, below what keepers allow once it no longer rises.",
            ),
            why: words(
                "Nitrate is where all the nitrogen ends. It harms slowly, feeds algae that hide the animals, and shows that nothing else leaves the water either.",
            ),
            judged: words(
                "At rest: nitrogen fed and brought in by the fill over the water changed, as nitrogen. Test kits that read NO3 show 4.43 times as much: 11.3 mg/L of nitrogen are 50 mg/L of NO3. Plants are not counted.",
            ),
            cure: words("change more water, feed less, or find a fill with less nitrate"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "nitrate-held-by-water-change",
    name: "most",
    row: "",
    what: "greatest nitrate, as nitrogen",
    value: 0.0113,
    unit: "mg/L",
    dimension: Dimension::DENSITY,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers of turtles with fish: 40 to 50 mg/L as NO3, which is 9 to 11.3 mg/L as nitrogen; the upper end",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !answers_for_its_water(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let renewed = Check::stands(is_renewed(sheet, at), GapKind::SaidNone);
    let rest = NITRATE_AT_REST.of(sheet, at).map(|rest| Check::at_most(rest, sheet.limit(&LIMITS[0])));
    Ok(Check::AllOf(vec![Ok(renewed), rest]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("800 L a day for 6.4 g of nitrogen"),
        design: words(include_str!("examples/nitrate_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("200 L a day"),
        design: words(include_str!("examples/nitrate_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/nitrate_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/nitrate_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("no water is ever changed"),
        design: words(include_str!("examples/nitrate_never.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("nothing is fed over the water"),
        design: words(include_str!("examples/nitrate_unfed.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the nitrate of the fill is not stated"),
        design: words(include_str!("examples/nitrate_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/nitrate"),
    },
    Example {
        shows: words("where the animals live is not stated"),
        design: words(include_str!("examples/nitrate_who.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/spaces"),
    },
];
