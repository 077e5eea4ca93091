//! Not much of the bed lies between the shell height and the shell length of the full-grown turtle.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::window::body::is_turtle;
use haulout_figures::window::shares::RIGHTING_BAND;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("righting-band-kept-small"),
        title: words("Much of the bed is too deep to breathe on the back and too shallow to roll over"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "Not much of the bed lies between the shell height and the shell length of the full-grown turtle.",
            ),
            why: words(
                "A turtle on its back breathes in less water than that, and rolls over swimming in more; in between, on a smooth bed, it drowns.",
            ),
            judged: words(
                "Share of the bed from shell height up to one shell length at the normal level. The band cannot be deleted, since shallows to rest in lie in it or end there: purchase for the feet, a slope, and no fall from a basking edge onto it make it safe, and are looked at on site.",
            ),
            cure: words(
                "make the shelf shallower, let it fall off steeply, and give it roots and stones to push against",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "righting-band-kept-small",
    name: "share",
    row: "",
    what: "largest share of the bed in the band",
    value: 0.35,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice: no source; a shelf of a quarter of the bed passes, a pool that is one shelf does not",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let band = RIGHTING_BAND.of(sheet, at).map(|share| Check::at_most(share, sheet.limit(&LIMITS[0])));
    Ok(Check::only_if(is_turtle(sheet, at).map(Check::holds), band))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("three tenths of the bed under 0.12 m"),
        design: words(include_str!("examples/righting_band_kept_small_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("half of the bed under 0.12 m"),
        design: words(include_str!("examples/righting_band_kept_small_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("the edge: 35 %"),
        design: words(include_str!("examples/righting_band_kept_small_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("the shell height is not stated"),
        design: words(include_str!("examples/righting_band_kept_small_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/body-height/grown"),
    },
];
