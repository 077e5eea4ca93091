//! At the lowest level a fair share of the bed is deep enough for a full-grown animal to get away.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::window::shares::REFUGE_SHARE;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, LevelState, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("refuge-deep-enough"),
        title: words("Animals find too little deep water to get away in"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL.level(LevelState::Low),
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "At the lowest level a fair share of the bed is deep enough for a full-grown animal to get away.",
            ),
            why: words(
                "An animal that cannot dive out of reach of a hand, a bird or a tank-mate is under strain all day.",
            ),
            judged: words(
                "Share of the bed at least 1.5 shell lengths deep for turtles, and for every animal as deep as it is high and 100 mm. For scale: about 0.6 m of water covers a large monitor; at about 0.9 m turtles go out of the public's sight (both common practice).",
            ),
            cure: words("deepen a zone, or raise the lowest level"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(REFUGE_SHARE.of(sheet, at)?, sheet.limit(&LIMITS[0]))),
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "refuge-deep-enough",
    name: "share",
    row: "",
    what: "least share of the bed to get away in",
    value: 0.20,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: no source; room for every animal of the group at once",
}];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.67 m at the lowest level"),
        design: words(include_str!("examples/refuge_deep_enough_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("0.27 m at the lowest level for turtles of 20 cm"),
        design: words(include_str!("examples/refuge_deep_enough_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/depth"),
    },
    Example {
        shows: words("the edge: 0.30 m at the lowest level"),
        design: words(include_str!("examples/refuge_deep_enough_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/depth"),
    },
    Example {
        shows: words("the lowest level is not stated"),
        design: words(include_str!("examples/refuge_deep_enough_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("a fifth of the bed"),
        design: words(include_str!("examples/refuge_deep_enough_fifth.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("19.5 %, just short"),
        design: words(include_str!("examples/refuge_deep_enough_just_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("0.29 m at the lowest level, just short for turtles of 20 cm"),
        design: words(include_str!("examples/refuge_deep_enough_shallow.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/depth"),
    },
    Example {
        shows: words("0.30 m for caimans 20 cm high: 100 mm over the back"),
        design: words(include_str!("examples/refuge_deep_enough_caiman.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-height/grown"),
    },
    Example {
        shows: words("0.297 m, just short for caimans 20 cm high"),
        design: words(include_str!("examples/refuge_deep_enough_caiman_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/depth"),
    },
];
