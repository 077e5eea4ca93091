//! A way out is as wide as the animals that are to use it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::group::BODY_LENGTH;
use haulout_figures::water::trap::{EXIT_WIDTH, share_of};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("exit-wide-enough"),
        title: words("The way out is too narrow"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::ExitGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "A way out is at least as wide as eight tenths of the length of a full-grown animal.",
            ),
            why: words(
                "Shells are about three quarters as wide as long; on a narrower way a large animal tips over the side, and it blocks the way for all others.",
            ),
            judged: words("Clear width as stated against a share of the full-grown body length."),
            cure: words("a wider ramp"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "exit-wide-enough",
    name: "share",
    row: "",
    what: "least width as a share of the body length",
    value: 0.8,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: as wide as the shell and a little more",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (width, length) = (EXIT_WIDTH.of(sheet, at), BODY_LENGTH.of(sheet, at)).all()?;
    let asked = share_of(sheet, sheet.limit(&LIMITS[0]), length)?;
    Ok(Check::at_least(width, asked))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.40 m for 20 cm"),
        design: words(include_str!("examples/exit_wide_enough_met.json")),
        subject: words("exit:ramp+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/width"),
    },
    Example {
        shows: words("0.10 m"),
        design: words(include_str!("examples/exit_wide_enough_short.json")),
        subject: words("exit:ramp+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/width"),
    },
    Example {
        shows: words("the edge: 160 mm"),
        design: words(include_str!("examples/exit_wide_enough_edge.json")),
        subject: words("exit:ramp+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/width"),
    },
    Example {
        shows: words("156 mm"),
        design: words(include_str!("examples/exit_wide_enough_just_short.json")),
        subject: words("exit:ramp+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/width"),
    },
    Example {
        shows: words("its width is not stated"),
        design: words(include_str!("examples/exit_wide_enough_gap.json")),
        subject: words("exit:ramp+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/exits/0/width"),
    },
];
