//! No site a group uses is hotter than the band of its species.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::habit::ANY_BASK;
use haulout_figures::basking::warmth::{SURFACE_HIGH, WANTED_HIGH};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("surface-not-too-hot"),
        title: words("A basking surface is hotter than the species bears"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::BaskingGroup,
        caution: None,
        manual: Manual {
            asks: words("No site a group uses is hotter than the band of its species."),
            why: words(
                "Reptiles burn: they stay under a lamp that is too hot because the back does not tell them.",
            ),
            judged: words(
                "Upper end of the surface temperature as stated against the upper end of the register's band.",
            ),
            cure: words("raise or dim the lamp, and measure the surface with it at full power"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let pair = (SURFACE_HIGH.of(sheet, at), WANTED_HIGH.of(sheet, at)).all();
    let cool = pair.map(|(have, most)| Check::at_most(have, most));
    Ok(Check::only_if(ANY_BASK.of(sheet, at).map(Check::holds), cool))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("36 °C"),
        design: words(include_str!("examples/surface_not_too_hot_met.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/surface-temperature"),
    },
    Example {
        shows: words("up to 44 °C for sliders"),
        design: words(include_str!("examples/surface_not_too_hot_short.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/surface-temperature"),
    },
    Example {
        shows: words("the edge: 40 °C"),
        design: words(include_str!("examples/surface_not_too_hot_edge.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("temperature not stated"),
        design: words(include_str!("examples/surface_not_too_hot_gap.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/surface-temperature"),
    },
];
