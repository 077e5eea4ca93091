//! What a parted joint lets out stays in the bund, or the floor drain takes it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::turnover::LABEL_FLOW;
use haulout_figures::water::spill::{BUND, JOINT_LOSS, floor_drain};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("parted-joint-kept-in"),
        title: words("A parted joint floods the floor"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Circuit,
        caution: None,
        manual: Manual {
            asks: words(
                "What the pump throws on the floor before it stops drawing is held by the bund of the space it stands in, or the floor drain there takes the greatest flow of the pump.",
            ),
            why: words(
                "A split hose or a joint that slips off empties the pool down to the cut-out, or until the last intake draws air, at the greatest flow of the pump; nobody may be there.",
            ),
            judged: words(
                "Gross volume of the pool between its water and the level of the cut-out, or the lowest intake where that is higher, against floor area times height of the bund; or the flow the floor drain takes against the greatest flow of the pump curve. A cut-out is taken to work. The pump stands in the space of the electrical item it is.",
            ),
            cure: words(
                "a cut-out just under the lowest running level; a higher bund; a floor drain; intakes that are not lower than they need to be",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let held = (JOINT_LOSS.of(sheet, at), BUND.of(sheet, at)).all();
    let drained = floor_drain(sheet, at);
    let drained =
        drained.map(|d| (LABEL_FLOW.of(sheet, at), d).all().map(|(flow, d)| Check::at_most(flow, d)));
    let held = held.map(|(loss, bund)| Check::at_most(loss, bund));
    Ok(Check::AnyOf(std::iter::once(held).chain(drained).collect()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("100 mm of 8 m2, held by 8 m2 with a bund of 100 mm"),
        design: words(include_str!("examples/parted_joint_kept_in_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/hall/spaces/1/bund"),
    },
    Example {
        shows: words("no cut-out: 500 mm of 8 m2"),
        design: words(include_str!("examples/parted_joint_kept_in_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/level"),
    },
    Example {
        shows: words("no cut-out, but a floor drain that takes all of it"),
        design: words(include_str!("examples/parted_joint_kept_in_drain.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/hall/spaces/1/floor-drain/flow"),
    },
    Example {
        shows: words("the edge: 100 mm of 8 m2 and just as much held"),
        design: words(include_str!("examples/parted_joint_kept_in_edge.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/cut-out"),
    },
    Example {
        shows: words("the cut-out 1 mm lower"),
        design: words(include_str!("examples/parted_joint_kept_in_just_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/cut-out"),
    },
    Example {
        shows: words("no bund and no drain"),
        design: words(include_str!("examples/parted_joint_kept_in_none.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/hall/spaces/1/bund"),
    },
    Example {
        shows: words("whether there is a cut-out is not stated"),
        design: words(include_str!("examples/parted_joint_kept_in_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/cut-out"),
    },
];
