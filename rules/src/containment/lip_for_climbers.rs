//! An open barrier with climbing animals behind it has an inward lip.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::habit::CLIMBS;
use haulout_figures::barrier::height::{OPEN_TOP, OVERHANG};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("lip-against-climbers"),
        title: words("Nothing turns a climbing animal back at the top"),
        chapter: words("containment"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::BarrierGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "At the top of an open barrier that holds climbing animals an inward lip turns them back.",
            ),
            why: words(
                "Silicone beads, algae, pipes and cables make a smooth wall climbable over the years; in a field trial mesh alone was climbed, mesh with a smooth strip at its top was not.",
            ),
            judged: words(
                "The stated inward overhang against the least lip, for species the register lists as climbing, where the top is open.",
            ),
            cure: words("turn the top inward, or close it"),
        },
    },
    limits: &[&LIP],
    examples: EXAMPLES,
    judge,
};

static LIP: Limit = Limit {
    rule: "lip-against-climbers",
    name: "lip",
    row: "",
    what: "inward lip at the top",
    value: 0.075,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: 75 to 100 mm inward for animals that climb; the lower end is asked for",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies =
        Check::AllOf(vec![CLIMBS.of(sheet, at).map(Check::holds), OPEN_TOP.of(sheet, at).map(Check::holds)]);
    let lip = OVERHANG.of(sheet, at).map(|lip| Check::at_least(lip, sheet.limit(&LIP)));
    Ok(Check::only_if(Ok(applies), lip))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a lip of 100 mm"),
        design: words(include_str!("examples/lip_for_climbers_met.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("a lip of 40 mm"),
        design: words(include_str!("examples/lip_for_climbers_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("the edge: 75 mm"),
        design: words(include_str!("examples/lip_for_climbers_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("no lip stated"),
        design: words(include_str!("examples/lip_for_climbers_gap.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("73 mm"),
        design: words(include_str!("examples/lip_for_climbers_just_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/overhang"),
    },
];
