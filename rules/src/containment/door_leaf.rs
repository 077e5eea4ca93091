//! Nothing gets out under a closed door.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::door::GAP_UNDER;
use haulout_figures::barrier::opening::allowed_opening;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("gap-under-the-leaf"),
        title: words("The smallest animal gets out under the door"),
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
                "Under the closed leaf, worn as it will be, no more is open than half the least body measure of the smallest animal.",
            ),
            why: words(
                "A new door shuts tight; after two winters of wet substrate the brush is gone and the leaf has dropped.",
            ),
            judged: words(
                "The stated gap under the leaf against a share of the lesser of body height and breadth of the smallest animal, for every group behind the door.",
            ),
            cure: words("a raised threshold, a stop the leaf shuts against, a brush that is replaced"),
        },
    },
    limits: &[&SHARE],
    examples: EXAMPLES,
    judge,
};

static SHARE: Limit = Limit {
    rule: "gap-under-the-leaf",
    name: "share",
    row: "",
    what: "share of the least body measure of the smallest animal",
    value: 0.5,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice: half the width of the head; where heads are not measured, half the least measure of the body",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (have, allowed) = (GAP_UNDER.of(sheet, at), allowed_opening(sheet, at, &SHARE)).all()?;
    Ok(Check::at_most(have, allowed))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("8 mm, smallest turtle 40 mm high"),
        design: words(include_str!("examples/door_leaf_met.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Met,
        place: words("/doors/0/gap-under"),
    },
    Example {
        shows: words("25 mm"),
        design: words(include_str!("examples/door_leaf_short.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Short,
        place: words("/doors/0/gap-under"),
    },
    Example {
        shows: words("the edge: 2 cm"),
        design: words(include_str!("examples/door_leaf_edge.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-height/smallest"),
    },
    Example {
        shows: words("smallest animal not stated"),
        design: words(include_str!("examples/door_leaf_gap.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/body-height/smallest"),
    },
    Example {
        shows: words("20.5 mm"),
        design: words(include_str!("examples/door_leaf_just_short.json")),
        subject: words("door:keepers-door+group:sliders"),
        expected: Expected::Short,
        place: words("/doors/0/gap-under"),
    },
];
