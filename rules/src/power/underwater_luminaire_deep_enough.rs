//! A luminaire under water lies deep enough that nobody comes between it and its cooling.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::height::DEPTH_OF_TOP;
use haulout_figures::item::kind::is_under_water;
use haulout_figures::item::water::basin;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("underwater-luminaire-deep-enough"),
        title: words("A luminaire under water lies too shallow"),
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
                "The top of a luminaire under water is 18 in below the normal level under NEC article 680, and 0.5 m under codes with IEC zones.",
            ),
            why: words(
                "A lamp made to work under water overheats when the level falls to it, and one that lies shallow is the first thing a wading hand finds.",
            ),
            judged: words(
                "Normal water level over the upper end of the case. The 0.5 m stand in a national code with the same zones, not in the IEC text that was read. Luminaires listed for less depth (never under 4 in) are not known here: accept them by a variance.",
            ),
            cure: words("set it deeper, or light the water from above"),
        },
    },
    limits: &[&IEC_DEPTH, &NEC_DEPTH],
    examples: EXAMPLES,
    judge,
};

static IEC_DEPTH: Limit = Limit {
    rule: "underwater-luminaire-deep-enough",
    name: "zones",
    row: "",
    what: "least depth where zones count",
    value: 0.5,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "Chinese code text with the zones of IEC 60364-7-702, as reproduced at jycdxd.com",
};

static NEC_DEPTH: Limit = Limit {
    rule: "underwater-luminaire-deep-enough",
    name: "nec",
    row: "",
    what: "least depth of the lens",
    value: 0.457_2,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.23(A), as in the 2022 California Electrical Code",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let limit = match family(sheet) {
        Some(Family::Iec) => &IEC_DEPTH,
        Some(Family::Nec) => &NEC_DEPTH,
        None => return Ok(silent()),
    };
    let deep = DEPTH_OF_TOP.of(sheet, at).map(|have| Check::at_least(have, sheet.limit(limit)));
    where_yes(basin(sheet), where_yes(is_under_water(sheet, at), deep))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("the lens 0.46 m down, under the NEC"),
        design: words(include_str!("examples/underwater_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("the lens 0.46 m down, with IEC zones"),
        design: words(include_str!("examples/underwater_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("just 0.5 m"),
        design: words(include_str!("examples/underwater_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/water"),
    },
    Example {
        shows: words("not said whether it is under water on purpose"),
        design: words(include_str!("examples/underwater_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/submersed"),
    },
    Example {
        shows: words("0.48 m with IEC zones"),
        design: words(include_str!("examples/underwater_zones_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("0.45 m under the NEC"),
        design: words(include_str!("examples/underwater_nec_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
];
