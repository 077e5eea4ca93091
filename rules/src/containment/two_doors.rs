//! Animals listed as dangerous to people have a second door behind the first.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::door::LOBBY;
use haulout_figures::barrier::habit::HAZARDOUS;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("dangerous-animals-behind-two-doors"),
        title: words("A single door stands between people and a dangerous animal"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::DoorGroup,
        caution: Some(words(
            "Dangerous animals are a matter of licence: the licensing authority, its inspector and local law decide, not this list.",
        )),
        manual: Manual {
            asks: words(
                "Behind every door to an animal listed as dangerous a second door stands, so that both are never open at once.",
            ),
            why: words(
                "A crocodile or a snapping turtle behind one door is in the corridor as soon as that door is open.",
            ),
            judged: words(
                "By the register's list of dangerous species, and whether the door is said to have a lobby. Poland asks for two safeguards against escape in law; other countries leave it to the licence.",
            ),
            cure: words(
                "a lobby with two doors that open toward the animals, and a look-through before entry",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = HAZARDOUS.of(sheet, at).map(Check::holds);
    Ok(Check::only_if(applies, LOBBY.of(sheet, at).map(Check::holds)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a caiman behind a lobby"),
        design: words(include_str!("examples/two_doors_met.json")),
        subject: words("door:keepers-door+group:caimans"),
        expected: Expected::Met,
        place: words("/doors/0/lobby"),
    },
    Example {
        shows: words("a caiman behind one door"),
        design: words(include_str!("examples/two_doors_short.json")),
        subject: words("door:keepers-door+group:caimans"),
        expected: Expected::Short,
        place: words("/doors/0/lobby"),
    },
    Example {
        shows: words("the edge: sliders are not listed"),
        design: words(include_str!("examples/two_doors_edge.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("a caiman, lobby not stated"),
        design: words(include_str!("examples/two_doors_gap.json")),
        subject: words("door:keepers-door+group:caimans"),
        expected: Expected::NotAssessed,
        place: words("/doors/0/lobby"),
    },
];
