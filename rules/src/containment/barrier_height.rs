//! A barrier is high enough over the highest thing its animals can stand on.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::habit::HELD_BY_HEIGHT;
use haulout_figures::barrier::height::{EFFECTIVE_HEIGHT, OPEN_TOP, asked_height};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

use super::heights::{ALL, ASKED};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("barrier-height"),
        title: words("The barrier is too low for what the animals can stand on beside it"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::BarrierGroup,
        caution: Some(words(
            "Screening by practice. Crocodilians and other dangerous animals are kept to the licence and the local code.",
        )),
        manual: Manual {
            asks: words(
                "Over the highest footing within reach, the smooth part of the barrier is as high as the kind of animal asks.",
            ),
            why: words(
                "Turtles get out over the rock beside the wall and over each other's backs, not over the wall from the floor.",
            ),
            judged: words(
                "Footing: the highest of floor, water at its overflow level, features and basking sites within one shell length of the barrier (one and a half total lengths for others), plus the back of the highest tank-mate. Only what is smooth counts as height: below a stated smooth level animals climb, a rough face counts nothing for what climbs, and mesh counts nothing at all. Turtles: twice the shell length and an allowance, never under a least height. Crocodilians: by total length. Lizards and snakes are not held by height, and a closed lid leaves nothing to ask.",
            ),
            cure: words("lower or move what stands beside the wall, raise the smooth part, or close the top"),
        },
    },
    limits: ALL,
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = Check::AllOf(vec![
        HELD_BY_HEIGHT.of(sheet, at).map(Check::holds),
        OPEN_TOP.of(sheet, at).map(Check::holds),
    ]);
    let height = (EFFECTIVE_HEIGHT.of(sheet, at), asked_height(sheet, at, &ASKED)).all();
    Ok(Check::only_if(Ok(applies), height.map(|(have, asked)| Check::at_least(have, asked))))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("rock at +0.30 and a back of 10 cm under a wall to +1.10: 0.70 m, asked 0.58"),
        design: words(include_str!("examples/barrier_height_met.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("rock at +0.60: 0.40 m"),
        design: words(include_str!("examples/barrier_height_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("the edge: rock at +0.42, 0.58 m exactly"),
        design: words(include_str!("examples/barrier_height_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("top of the rock not stated"),
        design: words(include_str!("examples/barrier_height_gap.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("the same wall rendered rough: height counts nothing for sliders"),
        design: words(include_str!("examples/barrier_height_rough.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/surface"),
    },
    Example {
        shows: words("a caiman of 1.40 m alone: 0.65 m over the overflow of the pool, asked 1.20"),
        design: words(include_str!("examples/barrier_height_caiman.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Short,
        place: words("/animals/0/total-length/grown"),
    },
    Example {
        shows: words("a lid over it"),
        design: words(include_str!("examples/barrier_height_lid.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/barriers/0/closure"),
    },
    Example {
        shows: words("dragons are not held by height"),
        design: words(include_str!("examples/barrier_height_dragons.json")),
        subject: words("barrier:wall+group:dragons"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("rock at +0.424: 4 mm short"),
        design: words(include_str!("examples/barrier_height_just_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("turtles of 9 cm: 0.30 m, the least for any turtle"),
        design: words(include_str!("examples/barrier_height_least_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("turtles of 9 cm: 0.29 m"),
        design: words(include_str!("examples/barrier_height_least_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("a caiman of 1.50 m is small still: 1.20 m over the overflow"),
        design: words(include_str!("examples/barrier_height_small_edge.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Met,
        place: words("/barriers/0/top"),
    },
    Example {
        shows: words("a caiman of 1.40 m: 1.18 m over the overflow"),
        design: words(include_str!("examples/barrier_height_small_short.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Short,
        place: words("/barriers/0/top"),
    },
    Example {
        shows: words("a caiman of 1.52 m is large: 1.20 m over the overflow"),
        design: words(include_str!("examples/barrier_height_small_beyond.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Short,
        place: words("/animals/0/total-length/grown"),
    },
    Example {
        shows: words("4.0 m is the longest of the table: 1.50 m over the overflow"),
        design: words(include_str!("examples/barrier_height_large_edge.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Met,
        place: words("/barriers/0/top"),
    },
    Example {
        shows: words("2.0 m long: 1.48 m over the overflow"),
        design: words(include_str!("examples/barrier_height_large_short.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Short,
        place: words("/barriers/0/top"),
    },
    Example {
        shows: words("4.1 m is beyond the table"),
        design: words(include_str!("examples/barrier_height_large_beyond.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/total-length/grown"),
    },
    Example {
        shows: words("a caiman of 0.60 m on a rock 0.88 m from the wall, within 1.5 of its lengths"),
        design: words(include_str!("examples/barrier_height_in_reach.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Short,
        place: words("/features/0/top"),
    },
    Example {
        shows: words("the rock 0.92 m from the wall: the overflow of the pool counts"),
        design: words(include_str!("examples/barrier_height_out_of_reach.json")),
        subject: words("barrier:wall+group:caimans"),
        expected: Expected::Met,
        place: words("/features/0/top"),
    },
];
