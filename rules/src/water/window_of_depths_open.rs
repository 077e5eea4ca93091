//! There is a depth that covers a full-grown animal and lets it right itself, at which the middle of the pool is well seen and a bottom walker still reaches the air.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::window::{asks_for_depth, bounds_depth};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Case, Known, Line, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("window-of-depths-open"),
        title: words("No depth suits both the animals and those who look at them"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "There is a depth that covers a full-grown animal and lets it right itself, at which the middle of the pool is well seen and a bottom walker still reaches the air.",
            ),
            why: words(
                "Depth pulls two ways. Where the window is empty no bed is right: either animals cannot go under, or nobody sees them.",
            ),
            judged: words(
                "Each demand for depth (cover over the back; for turtles one shell length to roll over in) against each bound (what the best placed visitor well sees of the middle, along the bent ray; for bottom walkers the standing reach). The pair that closes the window furthest is named. It is a window of the working depth: resting shallows and the depth of the scheme have rules of their own.",
            ),
            cure: words(
                "a better clarity, a lower front or a panel under water opens it towards the deep; a shelf or void-formers bring the bed up into it; void-formers do not lighten the pool",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (low, high) = (asks_for_depth(sheet, at), bounds_depth(sheet, at));
    let pair = |(bound, asked): (&Known<Line<Length>>, &Known<Line<Length>>)| {
        let (bound, asked) = (bound.clone(), asked.clone()).all()?;
        Ok(Check::at_least(bound, asked))
    };
    let pairs = high.iter().flat_map(|bound| low.iter().map(move |asked| (bound, asked)));
    Ok(Check::AllOf(pairs.map(pair).collect()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("clear water and turtles of 20 cm"),
        design: words(include_str!("examples/window_of_depths_open_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("cloudy water: what rights itself is not seen"),
        design: words(include_str!("examples/window_of_depths_open_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("the edge: 0.7 of 0.30 m is one shell length of 21 cm"),
        design: words(include_str!("examples/window_of_depths_open_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-length/grown"),
    },
    Example {
        shows: words("clarity not stated"),
        design: words(include_str!("examples/window_of_depths_open_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/water/secchi"),
    },
];
