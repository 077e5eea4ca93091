//! Circuits near water trip: 30 mA in the zones of the IEC family, 6 mA within the distances of the NEC.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::kind::needs_tripping;
use haulout_figures::item::supply::from_mains;
use haulout_figures::item::water::basin;
use haulout_figures::item::zone::in_a_zone;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::zones::{
    CAUTION, CONTACT_AC, CONTACT_DC, Family, ZONES, above_contact, family, silent, trips_at_most, where_yes,
};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("residual-current-protection"),
        title: words("A circuit near the water does not trip early enough"),
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
                "Under IEC 60364-7-702, mains items in zone 2 of pools, and in zones 0 and 1 of fountains nobody enters, trip at 30 mA or less. Under NEC article 680, sockets and pumps within 20 ft and other items within 10 ft have ground-fault protection of class A.",
            ),
            why: words(
                "When a wet mister or a cracked heater leaks, the trip is all that stands between the mains and whoever reaches into the water.",
            ),
            judged: words(
                "IEC: the rated residual current of mains items that are in a zone of their class. NEC: of items above the contact limit within the distance of their kind; switchgear is left to its own distance. A file that says none falls short.",
            ),
            cure: words(
                "a residual-current device of its own for each circuit, life support apart from lamps and misters",
            ),
        },
    },
    limits: &[&RCD, &CLASS_A, &SOCKETS, &OTHERS, &CONTACT_AC, &CONTACT_DC],
    examples: EXAMPLES,
    judge,
};

static RCD: Limit = Limit {
    rule: "residual-current-protection",
    name: "rcd",
    row: "",
    what: "rated residual current",
    value: 0.03,
    unit: "mA",
    dimension: Dimension::CURRENT,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "IEC 60364-7-702:2010 702.410.3.101.2 and .3, as summarised in a guide to the Austrian edition",
};

static CLASS_A: Limit = Limit {
    rule: "residual-current-protection",
    name: "class-a",
    row: "",
    what: "trip current of ground-fault protection, class A",
    value: 0.006,
    unit: "mA",
    dimension: Dimension::CURRENT,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "NFPA 70 (2023), as summarised at nssltd.com: class A trips at 6 mA or more and not below 4 mA",
};

static SOCKETS: Limit = Limit {
    rule: "residual-current-protection",
    name: "sockets",
    row: "",
    what: "distance within which sockets and pumps are protected",
    value: 6.096,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(A) and 680.59, as in the 2022 California Electrical Code",
};

static OTHERS: Limit = Limit {
    rule: "residual-current-protection",
    name: "others",
    row: "",
    what: "distance within which luminaires and other outlets are protected",
    value: 3.048,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(B), as in the 2022 California Electrical Code",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    match family(sheet) {
        Some(Family::Iec) => {
            let trips = trips_at_most(sheet, at, &RCD);
            let zoned = where_yes(in_a_zone(sheet, at, ZONES), trips);
            where_yes(basin(sheet), where_yes(from_mains(sheet, at), zoned))
        }
        Some(Family::Nec) => {
            let near = needs_tripping(sheet, at, above_contact(sheet, at), &SOCKETS, &OTHERS);
            where_yes(basin(sheet), where_yes(near, trips_at_most(sheet, at, &CLASS_A)))
        }
        None => Ok(silent()),
    }
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("30 mA in zone 2"),
        design: words(include_str!("examples/residual_current_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("100 mA in zone 2"),
        design: words(include_str!("examples/residual_current_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("nothing trips in zone 2"),
        design: words(include_str!("examples/residual_current_none.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("just 6 mA for a socket 2.6 m off"),
        design: words(include_str!("examples/residual_current_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("2.6 m off a fountain nobody enters there is no zone"),
        design: words(include_str!("examples/residual_current_fountain.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("nothing said about what trips"),
        design: words(include_str!("examples/residual_current_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("31 mA in zone 2"),
        design: words(include_str!("examples/residual_current_rcd_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("nothing trips 3.45 m from the rim, in zone 2"),
        design: words(include_str!("examples/residual_current_zone_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("nothing trips 3.55 m from the rim, beyond zone 2"),
        design: words(include_str!("examples/residual_current_zone_beyond.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("6.2 mA for a socket 2.6 m off"),
        design: words(include_str!("examples/residual_current_class_a_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("nothing trips a socket 6.0 m off"),
        design: words(include_str!("examples/residual_current_socket_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("nothing trips a socket 6.2 m off, beyond 20 ft"),
        design: words(include_str!("examples/residual_current_socket_beyond.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("nothing trips a luminaire 3.0 m off"),
        design: words(include_str!("examples/residual_current_other_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("nothing trips a luminaire 3.1 m off, beyond 10 ft"),
        design: words(include_str!("examples/residual_current_other_beyond.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("a socket at the contact limit of 15 V AC"),
        design: words(include_str!("examples/residual_current_contact_ac.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a socket at 15.5 V AC, over the contact limit"),
        design: words(include_str!("examples/residual_current_contact_ac_over.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a socket at the contact limit of 30 V DC"),
        design: words(include_str!("examples/residual_current_contact_dc.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a socket at 31 V DC, over the contact limit"),
        design: words(include_str!("examples/residual_current_contact_dc_over.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
];
