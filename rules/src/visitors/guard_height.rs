//! Guards for visitors are as high as the chosen code asks.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::guard::{GUARD_HEIGHT, drop_beyond};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::codes::by_code;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("guard-height"),
        title: words("The guard is lower than the code asks"),
        chapter: words("visitors"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Guards),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Guard,
        caution: Some(words(
            "Guards are a matter of life safety: building control or the authority having jurisdiction decides, and strength is for a structural engineer.",
        )),
        manual: Manual {
            asks: words(
                "Where the drop beyond it is more than the code lets pass, a guard is as high over what people stand on as the code asks.",
            ),
            why: words("A child on the bench in front of a low rail is a child in the pool."),
            judged: words(
                "Top of the guard over the stated standing surface, which is the bench, step or ledge where there is one within reach, not the floor behind it. The drop is from there to the surface or pool bed beyond. Glass that serves as a guard is judged the same way.",
            ),
            cure: words("raise the rail, or take away the step, the bench or the planter in front of it"),
        },
    },
    limits: &[&UK, &US, &UK_DROP, &US_DROP],
    examples: EXAMPLES,
    judge,
};

static UK: Limit = Limit {
    rule: "guard-height",
    name: "height",
    row: "uk-ad-k",
    what: "least height of a guard",
    value: 1.10,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "Approved Document K, 2013 edition, Diagram 3.1 (assembly, and public buildings otherwise than on flights)",
};

static US: Limit = Limit {
    rule: "guard-height",
    name: "height",
    row: "ibc-2021",
    what: "least height of a guard",
    value: 1.0668,
    unit: "in",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "International Building Code 2021, 1015.3 (42 in), as quoted on a public code page",
};

static UK_DROP: Limit = Limit {
    rule: "guard-height",
    name: "drop",
    row: "uk-ad-k",
    what: "drop that passes without a guard",
    value: 0.38,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::Recalled,
    source: "Approved Document K, 2013 edition, performance of requirement K2: 380 mm in buildings other than dwellings (600 mm in dwellings)",
};

static US_DROP: Limit = Limit {
    rule: "guard-height",
    name: "drop",
    row: "ibc-2021",
    what: "drop that passes without a guard",
    value: 0.762,
    unit: "in",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "International Building Code 2021, 1015.2 (more than 30 in), as quoted on a public code page",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (limit, drop) = (by_code(sheet, &UK, &US)?, by_code(sheet, &UK_DROP, &US_DROP)?);
    let high = GUARD_HEIGHT.of(sheet, at).map(|height| Check::at_least(height, sheet.limit(limit)));
    Ok(Check::only_if(drop_beyond(sheet, at, drop).map(Check::holds), high))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1.20 m over the deck, drop 0.90 m"),
        design: words(include_str!("examples/guard_height_met.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("1.00 m"),
        design: words(include_str!("examples/guard_height_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("the edge: 42 in under the American code"),
        design: words(include_str!("examples/guard_height_edge.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("1.08 m is enough under the American code"),
        design: words(include_str!("examples/guard_height_us.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("the bench in front of it decides, not the floor"),
        design: words(include_str!("examples/guard_height_bench.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/standing"),
    },
    Example {
        shows: words("a drop of 0.30 m asks for no guard"),
        design: words(include_str!("examples/guard_height_low.json")),
        subject: words("guard:deck"),
        expected: Expected::DoesNotApply,
        place: words("/visitors/guards/0/below"),
    },
    Example {
        shows: words("standing surface not stated"),
        design: words(include_str!("examples/guard_height_gap.json")),
        subject: words("guard:deck"),
        expected: Expected::NotAssessed,
        place: words("/visitors/guards/0/standing"),
    },
    Example {
        shows: words("just 1.10 m under the English code"),
        design: words(include_str!("examples/guard_height_uk_edge.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("1.08 m under the English code"),
        design: words(include_str!("examples/guard_height_uk_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("41 in under the American code"),
        design: words(include_str!("examples/guard_height_us_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/top"),
    },
    Example {
        shows: words("a drop of 390 mm asks for a guard in England"),
        design: words(include_str!("examples/guard_height_uk_drop.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/below"),
    },
    Example {
        shows: words("a drop of 375 mm asks for none in England"),
        design: words(include_str!("examples/guard_height_uk_no_drop.json")),
        subject: words("guard:deck"),
        expected: Expected::DoesNotApply,
        place: words("/visitors/guards/0/below"),
    },
    Example {
        shows: words("a drop of 0.78 m asks for a guard under the American code"),
        design: words(include_str!("examples/guard_height_us_drop.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/below"),
    },
    Example {
        shows: words("a drop of 0.75 m asks for none under the American code"),
        design: words(include_str!("examples/guard_height_us_no_drop.json")),
        subject: words("guard:deck"),
        expected: Expected::DoesNotApply,
        place: words("/visitors/guards/0/below"),
    },
];
