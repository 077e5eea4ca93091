//! Water enters a half-blocked intake slowly enough for weak swimmers to get away.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::intake::GRILLE_VELOCITY;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("velocity-at-the-grille"),
        title: words("The intake draws too hard"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Intake,
        caution: None,
        manual: Manual {
            asks: words(
                "With its partner blocked and half of its own grille blocked too, an intake draws at no more than 0.15 m/s.",
            ),
            why: words(
                "A weak or sick animal that is drawn onto a grille does not come off it again. The clean pump draws hardest.",
            ),
            judged: words(
                "Delivered flow with clean filters, all of it through this one intake, over half the net area. Screens made for young fish ask for much less (0.06 m/s); where hatchlings or small fish live, hold the design to that.",
            ),
            cure: words("a larger grille; net area, not the size of the box, is what counts"),
        },
    },
    limits: &[&FASTEST],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(GRILLE_VELOCITY.of(sheet, at)?, sheet.limit(&FASTEST))),
};

static FASTEST: Limit = Limit {
    rule: "velocity-at-the-grille",
    name: "fastest",
    row: "",
    what: "velocity at the half-blocked grille",
    value: 0.15,
    unit: "m/s",
    dimension: Dimension::VELOCITY,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "practice for adult turtles and crocodilians; the passive fish screen criterion of 0.2 ft/s is the cautious bound",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a grille of 0.040 m2"),
        design: words(include_str!("examples/grille_met.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/0/net-area"),
    },
    Example {
        shows: words("a grille of 0.010 m2"),
        design: words(include_str!("examples/grille_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/net-area"),
    },
    Example {
        shows: words("an intake without a grille"),
        design: words(include_str!("examples/grille_gap.json")),
        subject: words("intake:in-1"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/intakes/0/net-area"),
    },
    Example {
        shows: words("a grille of 0.0240 m2: 0.1498 m/s by hand from the flow of 6.470 m3/h"),
        design: words(include_str!("examples/grille_edge.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/0/net-area"),
    },
    Example {
        shows: words("a grille of 0.0235 m2: 0.1529 m/s"),
        design: words(include_str!("examples/grille_just_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/net-area"),
    },
];
