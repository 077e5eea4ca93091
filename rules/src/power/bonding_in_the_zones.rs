//! Metal of mains items in the zones, or beside the water, is bonded.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::kind::{bonded, is_beside};
use haulout_figures::item::supply::from_mains;
use haulout_figures::item::water::{basin, bathed};
use haulout_figures::item::zone::in_a_zone;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, LevelState, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, ZONES, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("bonding-in-the-zones"),
        title: words("An item near the water is not bonded"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Electrical),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL.level(LevelState::High),
        about: About::ItemPool,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words(
                "Under IEC 60364-7-702, mains items in zones 0, 1 and 2 join the supplementary bonding. Under NEC article 680, mains items within 5 ft of water people enter, and not more than 12 ft over it, are bonded.",
            ),
            why: words(
                "Bonding leaves nothing for a current to flow between: what is all at one potential does not bite.",
            ),
            judged: words(
                "Whether the file undertakes that the item is bonded. Conductor sizes, grids and the bonding of the water are the electrician's. Extra-low voltage and separated items are left out: their cases are not to be joined.",
            ),
            cure: words("bond it, prove it at commissioning"),
        },
    },
    limits: &[&WIDE, &HIGH],
    examples: EXAMPLES,
    judge,
};

static WIDE: Limit = Limit {
    rule: "bonding-in-the-zones",
    name: "wide",
    row: "",
    what: "distance within which metal is bonded",
    value: 1.524,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.26, as in the 2022 California Electrical Code",
};

static HIGH: Limit = Limit {
    rule: "bonding-in-the-zones",
    name: "high",
    row: "",
    what: "height over the water up to which metal is bonded",
    value: 3.657_6,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.26, as in the 2022 California Electrical Code",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (class, near) = match family(sheet) {
        Some(Family::Iec) => (basin(sheet), in_a_zone(sheet, at, ZONES)),
        Some(Family::Nec) => (bathed(sheet), is_beside(sheet, at, &WIDE, &HIGH)),
        None => return Ok(silent()),
    };
    let joined = where_yes(near, bonded(sheet, at).map(Check::holds));
    where_yes(class, where_yes(from_mains(sheet, at), joined))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a bonded heater in zone 2"),
        design: words(include_str!("examples/bonding_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/bonded"),
    },
    Example {
        shows: words("the same not bonded"),
        design: words(include_str!("examples/bonding_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/bonded"),
    },
    Example {
        shows: words("not bonded, just 5 ft from the water"),
        design: words(include_str!("examples/bonding_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("nothing said about bonding"),
        design: words(include_str!("examples/bonding_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/bonded"),
    },
    Example {
        shows: words("not bonded, 1.55 m from the water"),
        design: words(include_str!("examples/bonding_beyond.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("not bonded, 1.0 m from the water and 3.6 m over it"),
        design: words(include_str!("examples/bonding_high.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("not bonded, 1.0 m from the water and 3.7 m over it"),
        design: words(include_str!("examples/bonding_high_beyond.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/at/2"),
    },
];
