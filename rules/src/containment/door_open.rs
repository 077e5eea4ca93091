//! A door that stands open still holds the animals: by its sill or by a second door.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::door::{LOBBY, SILL_HEIGHT};
use haulout_figures::barrier::habit::HELD_BY_HEIGHT;
use haulout_figures::barrier::height::asked_height;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

use super::heights::ASKED;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("open-door-holds"),
        title: words("Nothing holds the animals while the door is open"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::DoorGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "With the door open either its sill is as high over the highest footing as a barrier would have to be, or a second door stands behind it.",
            ),
            why: words(
                "Animals get out through the open door while someone carries a bucket through, hardly ever over the wall.",
            ),
            judged: words(
                "Sill over the highest footing at the door's barrier (water, rocks and tank-mates as for the barrier) against the height asked for the animal; or a lobby. Lizards and snakes are held by the lobby only.",
            ),
            cure: words("a step board of full height, or a lobby with a second door"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let sill = (SILL_HEIGHT.of(sheet, at), asked_height(sheet, at, &ASKED)).all();
    let by_sill = Check::only_if(
        HELD_BY_HEIGHT.of(sheet, at).map(Check::holds),
        sill.map(|(have, asked)| Check::at_least(have, asked)),
    );
    let by_lobby = LOBBY.of(sheet, at).map(Check::holds);
    Ok(Check::AnyOf(vec![Ok(by_sill), by_lobby]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("sill at +1.00, footing +0.40: 0.60 m, asked 0.58"),
        design: words(include_str!("examples/door_open_met.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Met,
        place: words("/doors/0/sill"),
    },
    Example {
        shows: words("sill at +0.60, no lobby"),
        design: words(include_str!("examples/door_open_short.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Short,
        place: words("/doors/0/lobby"),
    },
    Example {
        shows: words("the edge: sill at +0.98, 0.58 m exactly"),
        design: words(include_str!("examples/door_open_edge.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Met,
        place: words("/doors/0/sill"),
    },
    Example {
        shows: words("dragons behind a lobby"),
        design: words(include_str!("examples/door_open_lobby.json")),
        subject: words("door:keepers-door+group:dragons"),
        expected: Expected::Met,
        place: words("/doors/0/lobby"),
    },
    Example {
        shows: words("neither sill nor lobby stated"),
        design: words(include_str!("examples/door_open_gap.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/doors/0/lobby"),
    },
];
