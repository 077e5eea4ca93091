//! Whatever the water is classed as, each mains circuit of the exhibit trips at 30 mA.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::supply::from_mains;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, trips_at_most, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("residual-current-on-every-circuit"),
        title: words("A mains circuit of the exhibit does not trip at 30 mA"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Item,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words(
                "Every mains item of the exhibit trips at 30 mA or less, also where the water is classed as neither pool nor fountain.",
            ),
            why: words(
                "Keepers work wet. That a code does not ask for it because of a word in the file leaves their hands as wet as before.",
            ),
            judged: words(
                "The rated residual current of each mains item, wherever it stands. A file that says none falls short. Other habits of the trade are not judged: a second suspension and a guard for each lamp, an isolator in sight, nobody in the water while it is energised.",
            ),
            cure: words("a residual-current device for each circuit"),
        },
    },
    limits: &[&HIGHEST],
    examples: EXAMPLES,
    judge,
};

static HIGHEST: Limit = Limit {
    rule: "residual-current-on-every-circuit",
    name: "highest",
    row: "",
    what: "highest rated residual current",
    value: 0.03,
    unit: "mA",
    dimension: Dimension::CURRENT,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "practice for animal water that is not classed as a pool: 30 mA for each circuit",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    where_yes(from_mains(sheet, at), trips_at_most(sheet, at, &HIGHEST))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a heater at 30 mA by other water"),
        design: words(include_str!("examples/every_circuit_met.json")),
        subject: words("item:it"),
        expected: Expected::Met,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("a heater that nothing trips"),
        design: words(include_str!("examples/every_circuit_short.json")),
        subject: words("item:it"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("10 mA is less than 30"),
        design: words(include_str!("examples/every_circuit_edge.json")),
        subject: words("item:it"),
        expected: Expected::Met,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("nothing said about what trips"),
        design: words(include_str!("examples/every_circuit_gap.json")),
        subject: words("item:it"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("a heater at 31 mA"),
        design: words(include_str!("examples/every_circuit_over.json")),
        subject: words("item:it"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
];
