//! Receptacles keep six feet from the inside of the wall of water that people enter.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::kind::is_socket;
use haulout_figures::item::path::WATER_DISTANCE;
use haulout_figures::item::water::bathed;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("receptacle-six-feet-from-water"),
        title: words("A receptacle is nearer than six feet to the water"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Electrical),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::ItemPool,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words(
                "Under NEC article 680, receptacles are at least 6 ft from the inside wall of a pool or a fountain that people use.",
            ),
            why: words(
                "Six feet is the length of an ordinary cord: what is plugged in further off does not fall in.",
            ),
            judged: words(
                "The shortest path a cord would follow without piercing floor, wall or fixed partition, from the rim. Height does not count. Older editions ask 10 ft (a state rule still does); ask which one is in force.",
            ),
            cure: words("move the receptacle"),
        },
    },
    limits: &[&LEAST],
    examples: EXAMPLES,
    judge,
};

static LEAST: Limit = Limit {
    rule: "receptacle-six-feet-from-water",
    name: "least",
    row: "",
    what: "least distance of a receptacle",
    value: 1.828_8,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(A), as in the 2022 California Electrical Code",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Nec) {
        return Ok(silent());
    }
    let far = WATER_DISTANCE.of(sheet, at).map(|have| Check::at_least(have, sheet.limit(&LEAST)));
    where_yes(bathed(sheet), where_yes(is_socket(sheet, at), far))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1.9 m from the rim"),
        design: words(include_str!("examples/receptacle_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("1.8 m from the rim"),
        design: words(include_str!("examples/receptacle_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("just 6 ft"),
        design: words(include_str!("examples/receptacle_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("not said how far the case reaches"),
        design: words(include_str!("examples/receptacle_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/extent"),
    },
];
