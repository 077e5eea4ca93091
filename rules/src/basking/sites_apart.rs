//! From edge to edge a site is at least one body length from the next one of the same animals.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::site::{LONGEST_USER, NEAREST_SITE, asked_length, neighbours};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("sites-apart"),
        title: words("Two basking sites are so close that one animal holds both"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Basking,
        caution: None,
        manual: Manual {
            asks: words(
                "From edge to edge a site is at least one body length from the next one of the same animals.",
            ),
            why: words("Sites that touch are one site: the animal that bullies reaches across."),
            judged: words(
                "Least distance in plan between the outlines of sites that share a group, against the longest full-grown body of the groups that use the site.",
            ),
            cure: words("move one of them, or draw both as one site"),
        },
    },
    limits: &[&LENGTHS],
    examples: EXAMPLES,
    judge,
};

static LENGTHS: Limit = Limit {
    rule: "sites-apart",
    name: "lengths",
    row: "",
    what: "body lengths between sites",
    value: 1.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if neighbours(sheet, at)?.is_empty() {
        return Ok(Check::AnyOf(Vec::new()));
    }
    let (have, body) = (NEAREST_SITE.of(sheet, at), LONGEST_USER.of(sheet, at)).all()?;
    Ok(Check::at_least(have, asked_length(sheet, &LENGTHS, body)?))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.40 m for bodies of 20 cm"),
        design: words(include_str!("examples/sites_apart_met.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/1/outline"),
    },
    Example {
        shows: words("0.10 m"),
        design: words(include_str!("examples/sites_apart_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/basking/1/outline"),
    },
    Example {
        shows: words("the edge: 0.20 m"),
        design: words(include_str!("examples/sites_apart_edge.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/animals/0/body-length/grown"),
    },
    Example {
        shows: words("outline of the next site not stated"),
        design: words(include_str!("examples/sites_apart_gap.json")),
        subject: words("basking:a"),
        expected: Expected::NotAssessed,
        place: words("/basking/1/outline"),
    },
    Example {
        shows: words("the only site"),
        design: words(include_str!("examples/sites_apart_alone.json")),
        subject: words("basking:a"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("as far apart as a cooter of the register is long, 33 cm"),
        design: words(include_str!("examples/sites_apart_register.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("10 mm less than a cooter of the register is long"),
        design: words(include_str!("examples/sites_apart_register_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/animals/0/species"),
    },
];
