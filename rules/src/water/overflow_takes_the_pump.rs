//! A basin that a pump feeds sheds all of it when its outlet is blocked.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::overflow::{EMERGENCY_RATIO, pump_fed};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("overflow-takes-the-pump"),
        title: words("A blocked outlet lets the pump fill the hall"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "The overflows of last resort of a basin fed by a pump take at least the clean flow of the pump, with half of their grilles blocked and the water at the top of what holds it.",
            ),
            why: words(
                "Leaves or a turtle in the outlet, and the pump empties the lower pool over the rim of the upper basin into the hall: the commonest flood of all. A pool in a closed loop does not gain the flow of the pump and does not owe this.",
            ),
            judged: words(
                "The sum of the overflows marked as emergency, as openings of coefficient 0.6 or crests, at the head from their invert to the top of the liner or the rim, half the net area of the grille open; over the sum of what the returns into the basin deliver with clean filters. A long or flat pipe behind the opening takes less. All other outlets count as blocked.",
            ),
            cure: words("a wider or a second overflow; a higher rim; a weir along a side; less flow"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "overflow-takes-the-pump",
    name: "ratio",
    row: "",
    what: "least overflow against the pumped flow",
    value: 1.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "common practice of builders of public pools: the whole flow, the outlet blocked and the grille half blocked",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let fed = pump_fed(sheet, at).map(Check::holds);
    let ratio = EMERGENCY_RATIO.of(sheet, at).map(|r| Check::at_least(r, sheet.limit(&LIMITS[0])));
    Ok(Check::only_if(fed, ratio))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("two pipes of 70 mm, 60 mm under the rim"),
        design: words(include_str!("examples/overflow_takes_the_pump_met.json")),
        subject: words("pool:basin"),
        expected: Expected::Met,
        place: words("/pools/1/overflows/0/bore"),
    },
    Example {
        shows: words("one pipe of 40 mm"),
        design: words(include_str!("examples/overflow_takes_the_pump_short.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/pools/1/overflows/0/bore"),
    },
    Example {
        shows: words("two pipes behind a grille of 40 cm2"),
        design: words(include_str!("examples/overflow_takes_the_pump_grille.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/pools/1/overflows/0/net-area"),
    },
    Example {
        shows: words("just enough: a crest of 170 mm"),
        design: words(include_str!("examples/overflow_takes_the_pump_edge.json")),
        subject: words("pool:basin"),
        expected: Expected::Met,
        place: words("/pools/1/overflows/0/weir/width"),
    },
    Example {
        shows: words("just too little: a crest of 164 mm"),
        design: words(include_str!("examples/overflow_takes_the_pump_just_short.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/pools/1/overflows/0/weir/width"),
    },
    Example {
        shows: words("there is none"),
        design: words(include_str!("examples/overflow_takes_the_pump_none.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/pools/1/overflows"),
    },
    Example {
        shows: words("a pool in a closed loop"),
        design: words(include_str!("examples/overflow_takes_the_pump_closed_loop.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/pump-fed"),
    },
    Example {
        shows: words("whether it stands ready is not stated"),
        design: words(include_str!("examples/overflow_takes_the_pump_gap.json")),
        subject: words("pool:basin"),
        expected: Expected::NotAssessed,
        place: words("/pools/1/overflows/0/emergency"),
    },
];
