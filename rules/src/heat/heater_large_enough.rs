//! The heaters make up for what the water loses in winter, with a reserve.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::{heater::RESERVE, is_heated};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("heater-large-enough"),
        title: words("The water does not hold its temperature in winter"),
        chapter: words("heat"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words("The heaters of a water give at least 1.2 times what it loses in winter."),
            why: words(
                "Evaporation is most of it and grows as the air gets drier; a heater that only just holds the temperature in October does not in January.",
            ),
            judged: words(
                "Evaporation by the larger of two methods, with the factor for falls and spray and the cover that the file states; heat from the surface to the air; through bed and walls; for the water renewed: all of all pools the circuits join. Streams, falls and filters are in none of it but through that factor. Pumps and lamps that warm the water are not counted on.",
            ),
            cure: words(
                "a larger heater; a cover at night; insulation; less renewal, or renewal by day; more humid air",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "heater-large-enough",
    name: "reserve",
    row: "",
    what: "least reserve of heating",
    value: 1.2,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "builders: 10 to 30 % over the winter loss",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !is_heated(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    Ok(Check::at_least(RESERVE.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1 kW against 0.68 kW"),
        design: words(include_str!("examples/enough_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("500 W"),
        design: words(include_str!("examples/enough_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("the edge: 825 W"),
        design: words(include_str!("examples/enough_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("815 W"),
        design: words(include_str!("examples/enough_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("a cold room and thin walls, the edge: 3.34 kW against 2.775 kW"),
        design: words(include_str!("examples/enough_cold_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("the same with 3.31 kW"),
        design: words(include_str!("examples/enough_cold_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("falls, leaves, insulation and renewed water: 1.03 kW"),
        design: words(include_str!("examples/enough_all.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/renewal"),
    },
    Example {
        shows: words("the air is not stated"),
        design: words(include_str!("examples/enough_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/hall/spaces/0/air/winter/temperature"),
    },
    Example {
        shows: words("no heater"),
        design: words(include_str!("examples/enough_unheated.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
