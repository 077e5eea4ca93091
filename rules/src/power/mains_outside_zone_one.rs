//! Nothing but extra-low voltage within zone 1 of water that people enter.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::height::HEIGHT_OVER_RIM;
use haulout_figures::item::path::WATER_DISTANCE;
use haulout_figures::item::supply::not_extra_low;
use haulout_figures::item::water::bathed;
use haulout_model::{About, Stage, Subject};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Sheet};

use super::zones::{CAUTION, FIRST, Family, HEIGHT, SECOND, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("mains-outside-zone-one"),
        title: words("Mains voltage stands in zone 0 or 1 of the water"),
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
                "Under IEC 60364-7-702, items on anything but extra-low voltage stay out of zones 0 and 1 of a pool or a basin that people enter: 2.0 m from the rim, 2.5 m high.",
            ),
            why: words(
                "Somebody who stands in water and touches live metal has next to no resistance left. Distance is the protection that does not wear out.",
            ),
            judged: words(
                "The shortest path from the rim round fixed, closed, insulating partitions, level where nothing stands between and as a string over a low top, less case and cord; or the lowest point over rim and floor. One of the two is enough. The figure of the standard shows partitions 2.5 m high (recalled); lower ones are a matter for the electrician. A basin nobody enters while energised has a rule of its own (residual current).",
            ),
            cure: words("move it, feed it with extra-low voltage, or put a fixed partition between"),
        },
    },
    limits: &[&FIRST, &SECOND, &HEIGHT],
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
    where_yes(bathed(sheet), where_yes(not_extra_low(sheet, at), clear))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("2.4 m from the rim, the case taken off"),
        design: words(include_str!("examples/mains_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("1.9 m from the rim"),
        design: words(include_str!("examples/mains_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("just 2.0 m from the rim"),
        design: words(include_str!("examples/mains_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("1.0 m from the rim, 2.6 m over it"),
        design: words(include_str!("examples/mains_high.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("2.4 m from the rim with a cord of 1 m"),
        design: words(include_str!("examples/mains_cord.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/cord"),
    },
    Example {
        shows: words("nothing said about partitions or the cord"),
        design: words(include_str!("examples/mains_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/partitions"),
    },
    Example {
        shows: words("1.0 m from the rim, 2.45 m over it"),
        design: words(include_str!("examples/mains_low_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
];
