//! Lizards and snakes that climb or jump have a closed top over them.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::habit::HELD_BY_ROOF;
use haulout_figures::barrier::height::LIDDED;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("top-closed-over-climbers"),
        title: words("Climbers and jumpers are kept under an open top"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::BarrierGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "Over lizards and snakes that climb or jump the enclosure has a lid, along every barrier.",
            ),
            why: words(
                "A basilisk, a water dragon or a snake does not stop at a height: it runs, rebounds and uses lamps and branches.",
            ),
            judged: words(
                "By the habits of the register: whether it climbs or jumps. No height of wall replaces the lid, and none is published. Openings of the lid count as the aperture of its barrier.",
            ),
            cure: words(
                "close the top with mesh or glass, and treat every opening in it as an opening of the barrier",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = HELD_BY_ROOF.of(sheet, at).map(Check::holds);
    Ok(Check::only_if(applies, LIDDED.of(sheet, at).map(Check::holds)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("dragons under a lid"),
        design: words(include_str!("examples/top_closed_met.json")),
        subject: words("barrier:wall+group:dragons"),
        expected: Expected::Met,
        place: words("/barriers/0/closure"),
    },
    Example {
        shows: words("dragons under an open top"),
        design: words(include_str!("examples/top_closed_short.json")),
        subject: words("barrier:wall+group:dragons"),
        expected: Expected::Short,
        place: words("/barriers/0/closure"),
    },
    Example {
        shows: words("the edge: turtles climb too, but a wall holds them"),
        design: words(include_str!("examples/top_closed_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("open or closed is not stated"),
        design: words(include_str!("examples/top_closed_gap.json")),
        subject: words("barrier:wall+group:dragons"),
        expected: Expected::NotAssessed,
        place: words("/barriers/0/closure"),
    },
];
