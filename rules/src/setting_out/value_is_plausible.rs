//! Every stated number is one that is met with; where one is not, the likely slip is named.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::numbers::all_plausible;
use haulout_model::{About, Stage};
use haulout_sheet::{Case, GapKind};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("value-is-plausible"),
        title: words("A number is hardly meant"),
        chapter: words("setting-out"),
        demand: Demand::Should,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Part,
        caution: None,
        manual: Manual {
            asks: words(
                "Every number that a part of the file states lies within the range that is met with for its field.",
            ),
            why: words(
                "A slip of the decimal point or of the unit passes through every formula and comes out as a confident answer.",
            ),
            judged: words(
                "Each number against the range on the card of its field, ends included; one answer a part of the file, since how many numbers are odd must not change how many answers there are. Every odd number is listed with the slips that would explain it; where none is odd and one is to be decided, not assessed. What lies outside is not forbidden: a variance says that it is meant.",
            ),
            cure: words("correct the number or its unit"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::stands(all_plausible(sheet, at), GapKind::OutOfRange)),
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a pool of ordinary numbers"),
        design: words(include_str!("examples/value_is_plausible_met.json")),
        subject: words("part:main"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("a hall pool 4.0 m deep, perhaps 0.40 m"),
        design: words(include_str!("examples/value_is_plausible_short.json")),
        subject: words("part:main"),
        expected: Expected::Short,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("water of 78 °C, perhaps 78 °F"),
        design: words(include_str!("examples/value_is_plausible_short_unit.json")),
        subject: words("part:main"),
        expected: Expected::Short,
        place: words("/pools/0/water/temperature"),
    },
    Example {
        shows: words("a pipe of a kind with a bore of 55.4 cm"),
        design: words(include_str!("examples/value_is_plausible_short_kind.json")),
        subject: words("part:loop"),
        expected: Expected::Short,
        place: words("/kinds/pipes/pe-63/bore"),
    },
    Example {
        shows: words("a depth at the end of what is met with, in feet"),
        design: words(include_str!("examples/value_is_plausible_edge.json")),
        subject: words("part:main"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("a depth to be decided, all other numbers ordinary"),
        design: words(include_str!("examples/value_is_plausible_gap.json")),
        subject: words("part:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/depth"),
    },
];
