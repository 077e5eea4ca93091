//! A stream that floats an animal is slow enough for it; a shallow one gives it a foothold.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::group::BODY_HEIGHT;
use haulout_figures::water::stream::{STREAM_DEPTH, STREAM_SPEED};
use haulout_figures::water::trap::{runs, share_of, stream_holds};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Size, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("stream-not-too-fast"),
        title: words("The stream carries animals away"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::StreamGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "Where a stream is deep enough to float the smallest animal it runs no faster than 0.15 m/s; where it is shallower its bed gives a foothold.",
            ),
            why: words(
                "An animal that floats and cannot swim against the water ends at the grille below. In a film nobody swims: there the hold of the feet counts, not the speed.",
            ),
            judged: words(
                "Depth by Manning for the clean flow of its circuit, its width, fall, length and roughness; velocity as flow over that section. It floats where the depth is more than a share of the height of the smallest animal. A free fall is not asked.",
            ),
            cure: words(
                "a wider bed, steps that pond the water, stones to rest behind; a rough bed where it is shallow",
            ),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "stream-not-too-fast",
        name: "floats",
        row: "",
        what: "depth that floats an animal, as a share of its height",
        value: 0.6,
        unit: "",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers' practice: a shell floats in about six tenths of its height",
    },
    Limit {
        rule: "stream-not-too-fast",
        name: "fastest",
        row: "",
        what: "greatest velocity of a stream that floats animals",
        value: 0.15,
        unit: "m/s",
        dimension: Dimension::VELOCITY,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers' practice: 0.05 m/s anywhere, 0.15 m/s with places to rest, 0.30 m/s for river turtles only (adult Elseya albagula bore it, Funct. Ecol. 2008)",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let smallest = sheet.in_case(Case::NORMAL.size(Size::Smallest));
    let floats = BODY_HEIGHT.of(smallest, at);
    let floats = floats.and_then(|h| share_of(sheet, sheet.limit(&LIMITS[0]), h));
    let shallow = (STREAM_DEPTH.of(sheet, at), floats).all().map(|(d, most)| Check::at_most(d, most));
    let walked = Ok(Check::AllOf(vec![shallow, stream_holds(sheet, at).map(Check::holds)]));
    let slow = STREAM_SPEED.of(sheet, at).map(|v| Check::at_most(v, sheet.limit(&LIMITS[1])));
    Ok(Check::only_if(runs(sheet, at).map(Check::holds), Ok(Check::AnyOf(vec![walked, slow]))))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a rough bed under 12 mm of water, for a body of 45 mm"),
        design: words(include_str!("examples/stream_not_too_fast_met.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::Met,
        place: words("/streams/0/grip"),
    },
    Example {
        shows: words("a smooth chute"),
        design: words(include_str!("examples/stream_not_too_fast_short.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::Short,
        place: words("/streams/0/grip"),
    },
    Example {
        shows: words("the edge: 12 mm of water, too shallow to float a body of 20 mm"),
        design: words(include_str!("examples/stream_not_too_fast_edge.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-height/smallest"),
    },
    Example {
        shows: words("deep enough to float a body of 19.6 mm, and fast"),
        design: words(include_str!("examples/stream_not_too_fast_just_short.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::Short,
        place: words("/animals/0/body-height/smallest"),
    },
    Example {
        shows: words("a smooth bed, just slow enough"),
        design: words(include_str!("examples/stream_not_too_fast_slow_edge.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::Met,
        place: words("/streams/0/width"),
    },
    Example {
        shows: words("a smooth bed, just too fast"),
        design: words(include_str!("examples/stream_not_too_fast_slow_short.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::Short,
        place: words("/streams/0/width"),
    },
    Example {
        shows: words("a free fall"),
        design: words(include_str!("examples/stream_not_too_fast_fall.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/streams/0/kind"),
    },
    Example {
        shows: words("its bed is not stated"),
        design: words(include_str!("examples/stream_not_too_fast_gap.json")),
        subject: words("stream:brook+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/streams/0/grip"),
    },
];
