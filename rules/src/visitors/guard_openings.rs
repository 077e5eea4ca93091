//! No child gets through the openings of a guard.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::guard::GUARD_OPENING;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::codes::by_code;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("guard-openings"),
        title: words("A child gets through or is held in the guard"),
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
            asks: words("No opening of a guard lets pass the sphere the code names."),
            why: words("Where a small child's head goes through, the child goes through or hangs."),
            judged: words(
                "The widest stated opening against the sphere of the code, the gap under the lowest rail included. The American code allows a little more above 36 in; one opening is stated, so the smaller sphere is held to everywhere.",
            ),
            cure: words("closer bars, an infill of glass or mesh, a lower bottom rail"),
        },
    },
    limits: &[&UK, &US],
    examples: EXAMPLES,
    judge,
};

static UK: Limit = Limit {
    rule: "guard-openings",
    name: "sphere",
    row: "uk-ad-k",
    what: "sphere that must not pass",
    value: 0.100,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::Published,
    source: "Approved Document K, 2013 edition, paragraph 3.3 (buildings used by children under five)",
};

static US: Limit = Limit {
    rule: "guard-openings",
    name: "sphere",
    row: "ibc-2021",
    what: "sphere that must not pass",
    value: 0.1016,
    unit: "in",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "International Building Code, guards, opening limitations (4 in up to 36 in), as printed in the California Building Code 2013; the numbering of 2021 is 1015.4",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let limit = by_code(sheet, &UK, &US)?;
    let opening = GUARD_OPENING.of(sheet, at)?;
    Ok(Check::at_most(opening, sheet.limit(limit)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("bars 90 mm apart"),
        design: words(include_str!("examples/guard_openings_met.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/opening"),
    },
    Example {
        shows: words("120 mm"),
        design: words(include_str!("examples/guard_openings_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/opening"),
    },
    Example {
        shows: words("the edge: 4 in under the American code"),
        design: words(include_str!("examples/guard_openings_edge.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/opening"),
    },
    Example {
        shows: words("no code chosen"),
        design: words(include_str!("examples/guard_openings_gap.json")),
        subject: words("guard:deck"),
        expected: Expected::NotAssessed,
        place: words("/project/held-to/guards"),
    },
    Example {
        shows: words("just 100 mm under the English code"),
        design: words(include_str!("examples/guard_openings_uk_edge.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/opening"),
    },
    Example {
        shows: words("102 mm under the English code"),
        design: words(include_str!("examples/guard_openings_uk_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/opening"),
    },
    Example {
        shows: words("4.1 in under the American code"),
        design: words(include_str!("examples/guard_openings_us_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/opening"),
    },
];
