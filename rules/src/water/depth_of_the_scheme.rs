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

/// One pool as deep as each row asks and one just shallower; one group at the end of each class and one just over it.
const fn by_row(shows: &'static str, subject: &'static str, expected: Expected) -> Example {
    Example {
        shows: words(shows),
        design: words(include_str!("examples/scheme_rows.json")),
        subject: words(subject),
        expected,
        place: words(""),
    }
}

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
    by_row("0.10 m for a turtle of 5 cm", "pool:deep-1+group:class-1", Expected::Met),
    by_row("0.098 m for a turtle of 5 cm", "pool:shallow-1+group:class-1", Expected::Short),
    by_row("0.10 m for a turtle of 5.1 cm", "pool:deep-1+group:over-1", Expected::Short),
    by_row("0.15 m for a turtle of 10 cm", "pool:deep-2+group:class-2", Expected::Met),
    by_row("0.147 m for a turtle of 10 cm", "pool:shallow-2+group:class-2", Expected::Short),
    by_row("0.15 m for a turtle of 10.2 cm", "pool:deep-2+group:over-2", Expected::Short),
    by_row("0.20 m for a turtle of 15 cm", "pool:deep-3+group:class-3", Expected::Met),
    by_row("0.196 m for a turtle of 15 cm", "pool:shallow-3+group:class-3", Expected::Short),
    by_row("0.20 m for a turtle of 15.3 cm", "pool:deep-3+group:over-3", Expected::Short),
    by_row("0.30 m for a turtle of 20 cm", "pool:deep-4+group:class-4", Expected::Met),
    by_row("0.294 m for a turtle of 20 cm", "pool:shallow-4+group:class-4", Expected::Short),
    by_row("0.30 m for a turtle of 20.4 cm", "pool:deep-4+group:over-4", Expected::Short),
    by_row("0.35 m for a turtle of 30 cm", "pool:deep-5+group:class-5", Expected::Met),
    by_row("0.343 m for a turtle of 30 cm", "pool:shallow-5+group:class-5", Expected::Short),
    by_row("0.35 m for a turtle of 30.6 cm", "pool:deep-5+group:over-5", Expected::Short),
    by_row("0.40 m for a turtle of 300 cm", "pool:deep-6+group:class-6", Expected::Met),
    by_row("0.392 m for a turtle of 300 cm", "pool:shallow-6+group:class-6", Expected::Short),
    by_row("0.40 m for a turtle of 306 cm", "pool:deep-6+group:over-6", Expected::NotAssessed),
];
