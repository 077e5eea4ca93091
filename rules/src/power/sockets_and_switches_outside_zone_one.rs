//! Sockets, switches, control gear and transformers stay out of zones 0 and 1, whatever feeds them.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::height::HEIGHT_OVER_RIM;
use haulout_figures::item::kind::is_switchgear;
use haulout_figures::item::path::WATER_DISTANCE;
use haulout_figures::item::water::basin;
use haulout_model::{About, Stage, Subject};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Sheet};

use super::zones::{CAUTION, FIRST, Family, HEIGHT, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("sockets-and-switches-outside-zone-one"),
        title: words("A socket or switchgear is in zone 0 or 1 of the water"),
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
                "Under IEC 60364-7-702, sockets, switches, control gear and transformers are outside zones 0 and 1 of pools and fountains, also on extra-low voltage.",
            ),
            why: words(
                "Anything can be plugged into a socket; a wet hand on a switch is a hand on its terminals. The source of extra-low voltage is itself mains.",
            ),
            judged: words(
                "As for mains: path round partitions less case and cord, or height. What may stand in zone 2 is judged by residual current.",
            ),
            cure: words(
                "the corridor or the far wall; a transformer next to the pumps and a longer low-voltage run",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Iec) {
        return Ok(silent());
    }
    let far = WATER_DISTANCE.of(sheet, at).map(|have| Check::at_least(have, sheet.limit(&FIRST)));
    let high = HEIGHT_OVER_RIM.of(sheet, at).map(|have| Check::at_least(have, sheet.limit(&HEIGHT)));
    let clear = Ok(Check::AnyOf(vec![far, high]));
    where_yes(basin(sheet), where_yes(is_switchgear(sheet, at), clear))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a socket behind a long partition, round its end"),
        design: words(include_str!("examples/switchgear_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/partitions/0/line"),
    },
    Example {
        shows: words("the same behind a mesh panel"),
        design: words(include_str!("examples/switchgear_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/partitions/0/solid"),
    },
    Example {
        shows: words("a transformer just 2.0 m off"),
        design: words(include_str!("examples/switchgear_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("a cleaners' socket on the dry face of a front of 0.55 m over the rim"),
        design: words(include_str!("examples/switchgear_over.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/partitions/0/top"),
    },
    Example {
        shows: words("the place of the socket is not stated"),
        design: words(include_str!("examples/switchgear_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/at"),
    },
];
