//! Where fish are kept in the pool, the un-ionised ammonia at the total the keepers hold to stays below what fish live with.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::ammonia::{FREE_AMMONIA, fish_share_it};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Gap, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("free-ammonia-with-fish"),
        title: words("Fish share water with too much un-ionised ammonia"),
        chapter: words("filtration"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "Where fish are kept in the pool, the un-ionised ammonia at the total the keepers hold to stays below what fish live with.",
            ),
            why: words(
                "Ammonia goes straight through gills: what turtles shrug off kills feeder fish in days, and what dies uneaten makes more of it. A shall by practice, since the fish die.",
            ),
            judged: words(
                "Share by pH and temperature (Emerson and others, 1975) of the total held to, both as nitrogen; only where the file says that fish are kept.",
            ),
            cure: words("hold to a lower total, keep no fish in this pool, or bring the pH down slowly"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "free-ammonia-with-fish",
    name: "most",
    row: "",
    what: "greatest un-ionised ammonia with fish, as nitrogen",
    value: 2e-05,
    unit: "mg/L",
    dimension: Dimension::DENSITY,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "fish keepers' practice: 0.02 mg/L as nitrogen",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let fish = fish_share_it(sheet, at);
    let said_none = |gap: &Gap| gap.kind == GapKind::SaidNone;
    if fish.as_ref().is_err_and(|gaps| gaps.0.iter().all(said_none)) {
        return Ok(Check::AllOf(Vec::new()));
    }
    let low = FREE_AMMONIA.of(sheet, at).map(|free| Check::at_most(free, sheet.limit(&LIMITS[0])));
    Ok(Check::only_if(fish.map(Check::holds), low))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("twenty fish at pH 7.6"),
        design: words(include_str!("examples/free_ammonia_with_fish_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/water/ph"),
    },
    Example {
        shows: words("twenty fish at pH 8.4"),
        design: words(include_str!("examples/free_ammonia_with_fish_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/food-fish/count"),
    },
    Example {
        shows: words("the edge: 0.0198 mg/L"),
        design: words(include_str!("examples/free_ammonia_with_fish_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("0.0202 mg/L, just short"),
        design: words(include_str!("examples/free_ammonia_with_fish_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("no fish are kept"),
        design: words(include_str!("examples/free_ammonia_with_fish_none.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("it is not said whether fish are kept"),
        design: words(include_str!("examples/free_ammonia_with_fish_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/food-fish/count"),
    },
];
