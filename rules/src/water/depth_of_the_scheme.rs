//! The pool is as deep as the welfare scheme asks for turtles of that length.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::{group::BODY_LENGTH, pool::depth::GREATEST_DEPTH, row_by_size};
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{All, Case, LevelState, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("depth-of-the-scheme"),
        title: words("The pool is shallower than the welfare scheme asks"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: Some(Matter::Welfare),
        consequence: Consequence::Harm,
        case: Case::NORMAL.level(LevelState::Low),
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "Somewhere in the pool the water is at least as deep as the scheme's table asks for the full-grown body length.",
            ),
            why: words(
                "The table is a floor for keeping aquatic turtles at all; what a species needs to swim and to get away is usually more.",
            ),
            judged: words(
                "Greatest depth at the lowest running level against the row of the table that the full-grown carapace length falls into. The table was made for animals used in science: meeting it says little about an exhibit.",
            ),
            cure: words("a deeper zone or a higher water level"),
        },
    },
    limits: &[
        &ENDS[0], &ENDS[1], &ENDS[2], &ENDS[3], &ENDS[4], &ENDS[5], &DEPTHS[0], &DEPTHS[1], &DEPTHS[2],
        &DEPTHS[3], &DEPTHS[4], &DEPTHS[5],
    ],
    examples: EXAMPLES,
    judge: |sheet, at| {
        let (have, length) = (GREATEST_DEPTH.of(sheet, at), BODY_LENGTH.of(sheet, at)).all()?;
        let rows: Vec<_> = ENDS.iter().zip(&DEPTHS).collect();
        Ok(Check::at_least(have, row_by_size(sheet, length, &rows)?))
    },
};

const SOURCE: &str = "Directive 2010/63/EU, Annex III, Section B, Table 10.1 (aquatic chelonians), as reproduced on legislation.gov.uk";
const ROWS: [&str; 6] = ["to 5 cm", "to 10 cm", "to 15 cm", "to 20 cm", "to 30 cm", "over 30 cm"];

const fn row(name: &'static str, what: &'static str, at: usize, value: f64, tighter: Tighter) -> Limit {
    Limit {
        rule: "depth-of-the-scheme",
        name,
        row: ROWS[at],
        what,
        value,
        unit: "cm",
        dimension: Dimension::LENGTH,
        tighter,
        basis: Basis::Published,
        source: SOURCE,
    }
}

const fn end(at: usize, value: f64) -> Limit {
    // A class that ends earlier moves animals into the next, deeper row.
    row("class-end", "upper end of the size class", at, value, Tighter::Lower)
}

const fn depth(at: usize, value: f64) -> Limit {
    row("depth", "least water depth", at, value, Tighter::Higher)
}

/// The last class is open; no turtle is longer than 3 m.
static ENDS: [Limit; 6] = [end(0, 0.05), end(1, 0.10), end(2, 0.15), end(3, 0.20), end(4, 0.30), end(5, 3.0)];
static DEPTHS: [Limit; 6] =
    [depth(0, 0.10), depth(1, 0.15), depth(2, 0.20), depth(3, 0.30), depth(4, 0.35), depth(5, 0.40)];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.70 m for turtles of 24 cm"),
        design: words(include_str!("examples/scheme_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-length/grown"),
    },
    Example {
        shows: words("0.30 m at the lowest level for turtles of 24 cm"),
        design: words(include_str!("examples/scheme_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/levels/low/by"),
    },
    Example {
        shows: words("the edge: a turtle of 20 cm belongs to the class that ends at 20 cm"),
        design: words(include_str!("examples/scheme_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("no scheme chosen"),
        design: words(include_str!("examples/scheme_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/project/held-to/welfare"),
    },
];
