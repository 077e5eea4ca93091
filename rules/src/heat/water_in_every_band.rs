//! The water stays within what each species over it is kept in, at both ends of its swing.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::bear::{BAND_HIGH, BAND_LOW};
use haulout_figures::pool::water::{COOLEST, WARMEST};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("water-in-every-band"),
        title: words("The water is wrong for one of the animals that share it"),
        chapter: words("heat"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "The coolest and the warmest water stated lie within the band in which each species over the pool is kept in the warm season.",
            ),
            why: words(
                "Animals that share a pool share its temperature. A temperature in the middle of the one band may lie outside the other.",
            ),
            judged: words(
                "Temperature less and plus its swing, or the ends of the range stated, against the published band of the species. Bands are of the warm season; water that is let cool for the winter is another matter. Animals that choose between warm and cool water need more than one number says.",
            ),
            cure: words("another temperature, a smaller swing, or animals that fit together"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let cool = (COOLEST.of(sheet, at), BAND_LOW.of(sheet, at)).all();
    let warm = (WARMEST.of(sheet, at), BAND_HIGH.of(sheet, at)).all();
    Ok(Check::AllOf(vec![
        cool.map(|(coolest, low)| Check::at_least(coolest, low)),
        warm.map(|(warmest, high)| Check::at_most(warmest, high)),
    ]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("24 to 26 °C for 20 to 28 °C"),
        design: words(include_str!("examples/band_met.json")),
        subject: words("pool:main+group:terrapins"),
        expected: Expected::Met,
        place: words("/pools/0/water/temperature"),
    },
    Example {
        shows: words("28.5 °C at the warm end of the swing"),
        design: words(include_str!("examples/band_warm.json")),
        subject: words("pool:main+group:terrapins"),
        expected: Expected::Short,
        place: words("/pools/0/water/swing"),
    },
    Example {
        shows: words("21.5 °C at the cool end"),
        design: words(include_str!("examples/band_cool.json")),
        subject: words("pool:main+group:terrapins"),
        expected: Expected::Short,
        place: words("/pools/0/water/temperature"),
    },
    Example {
        shows: words("the edge: 20 to 28 °C"),
        design: words(include_str!("examples/band_edge.json")),
        subject: words("pool:main+group:terrapins"),
        expected: Expected::Met,
        place: words("/pools/0/water/temperature"),
    },
    Example {
        shows: words("a species whose water nobody published"),
        design: words(include_str!("examples/band_gap.json")),
        subject: words("pool:main+group:terrapins"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/species"),
    },
];
