//! There is a dry site for each basker up to four, and one more for every two beyond.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::habit::ANY_BASK;
use haulout_figures::basking::room::{DRY_SITES, asked_sites};
use haulout_figures::basking::sites_of;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, GapKind, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("sites-for-the-group"),
        title: words("There are too few basking sites for the group"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Group,
        caution: None,
        manual: Manual {
            asks: words("There is a dry site for each basker up to four, and one more for every two beyond."),
            why: words("One strong animal holds a whole log. The others need places it does not see to."),
            judged: words(
                "Sites that stay dry at the highest water, counted as drawn: a long log is one site. Groups that have no other site count too.",
            ),
            cure: words("more sites rather than larger ones, or fewer animals"),
        },
    },
    limits: &[&FIRST, &EACH],
    examples: EXAMPLES,
    judge,
};

static FIRST: Limit = Limit {
    rule: "sites-for-the-group",
    name: "first",
    row: "",
    what: "animals with a site each",
    value: 4.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

static EACH: Limit = Limit {
    rule: "sites-for-the-group",
    name: "each",
    row: "",
    what: "animals to a site beyond them",
    value: 2.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = ANY_BASK.of(sheet, at);
    let any = Ok(Check::stands(sites_of(sheet, at).and(applies.clone()), GapKind::SaidNone));
    let number = (DRY_SITES.of(sheet, at), asked_sites(sheet, at, &FIRST, &EACH)).all();
    let enough = number.map(|(have, asked)| Check::at_least(have, asked));
    Ok(Check::only_if(applies.map(Check::holds), Ok(Check::AllOf(vec![any, enough]))))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("four sites for four"),
        design: words(include_str!("examples/sites_for_the_group_met.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/sexes"),
    },
    Example {
        shows: words("four sites for five: one more for the fifth"),
        design: words(include_str!("examples/sites_for_the_group_short.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/animals/0/sexes"),
    },
    Example {
        shows: words("the edge: five sites for six"),
        design: words(include_str!("examples/sites_for_the_group_edge.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/basking/4/level"),
    },
    Example {
        shows: words("level of a site to be decided"),
        design: words(include_str!("examples/sites_for_the_group_gap.json")),
        subject: words("group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/level"),
    },
    Example {
        shows: words("no site at all"),
        design: words(include_str!("examples/sites_for_the_group_none.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking"),
    },
    Example {
        shows: words("five sites for seven: three beyond the first four want two more"),
        design: words(include_str!("examples/sites_for_the_group_seven.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/animals/0/sexes"),
    },
];
