//! A way out is not steeper than claws hold on its surface.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::trap::{EXIT_SLOPE, is_walked, steepest};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("exit-not-too-steep"),
        title: words("The way out is too steep"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Exit,
        caution: None,
        manual: Manual {
            asks: words(
                "A ramp, a beach or steps rise by no more than 45 degrees where claws find a hold, and by no more than 30 degrees where the surface is smooth.",
            ),
            why: words(
                "Wet and steep, an animal slides back until it is spent. What a dry turtle climbs in the hand is no measure.",
            ),
            judged: words(
                "Slope of the steepest part as stated, by the surface as stated. Roots and nets are climbed, not walked, and are not judged here. For comfort 30 degrees are better on any surface.",
            ),
            cure: words("a longer ramp, a landing halfway, cleats or stone set in mortar"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "exit-not-too-steep",
        name: "rough",
        row: "",
        what: "steepest way out with a hold, 45 degrees",
        value: 1.0,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::Reported,
        source: "escape ramps for wildlife in troughs: at most 45 degrees, with a grip (Shiawassee Conservation District)",
    },
    Limit {
        rule: "exit-not-too-steep",
        name: "smooth",
        row: "",
        what: "steepest way out without a hold, 30 degrees",
        value: 0.5773502691896257,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::Reported,
        source: "escape ramps for wildlife in trenches: at most 30 degrees; musk turtles were found to hold 37 degrees on smooth board at the least",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let walked = is_walked(sheet, at).map(Check::holds);
    let slope = (EXIT_SLOPE.of(sheet, at), steepest(sheet, at, &LIMITS[0], &LIMITS[1])).all();
    Ok(Check::only_if(walked, slope.map(|(have, limit)| Check::at_most(have, limit))))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1 in 2, rough"),
        design: words(include_str!("examples/exit_not_too_steep_met.json")),
        subject: words("exit:ramp"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/slope"),
    },
    Example {
        shows: words("1 in 0.6, rough"),
        design: words(include_str!("examples/exit_not_too_steep_short.json")),
        subject: words("exit:ramp"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/slope"),
    },
    Example {
        shows: words("the edge: 1 in 1, rough"),
        design: words(include_str!("examples/exit_not_too_steep_edge.json")),
        subject: words("exit:ramp"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/slope"),
    },
    Example {
        shows: words("102 %, rough"),
        design: words(include_str!("examples/exit_not_too_steep_just_short.json")),
        subject: words("exit:ramp"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/slope"),
    },
    Example {
        shows: words("57.7 %, smooth"),
        design: words(include_str!("examples/exit_not_too_steep_smooth_edge.json")),
        subject: words("exit:ramp"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/grip"),
    },
    Example {
        shows: words("59 %, smooth"),
        design: words(include_str!("examples/exit_not_too_steep_smooth_short.json")),
        subject: words("exit:ramp"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/grip"),
    },
    Example {
        shows: words("a net"),
        design: words(include_str!("examples/exit_not_too_steep_net.json")),
        subject: words("exit:ramp"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/exits/0/kind"),
    },
    Example {
        shows: words("its surface is not stated"),
        design: words(include_str!("examples/exit_not_too_steep_gap.json")),
        subject: words("exit:ramp"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/exits/0/grip"),
    },
];
