//! Mortar and concrete under water are sealed, or leached until still water on them stays near neutral for three days.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::material::{PH_ON_IT, is_of_lime, is_sealed};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("lime-leached-or-sealed"),
        title: words("New mortar turns the water to lye"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Material,
        caution: None,
        manual: Manual {
            asks: words(
                "Mortar and concrete under water are sealed, or leached until still water on them stays near neutral for three days.",
            ),
            why: words(
                "New mortar gives off lime for weeks; at pH 9 a third of the ammonia is poison, at pH 10 eyes and skin burn.",
            ),
            judged: words(
                "Whether it is stated to be sealed, or the pH of water that stood on it for 72 hours against what builders of ponds accept.",
            ),
            cure: words("leach it with water that is thrown away and read again, or seal it"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "lime-leached-or-sealed",
    name: "ph",
    row: "",
    what: "greatest pH of water that stood on it for 72 hours",
    value: 8.5,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "builders of ponds and exhibits: below pH 8.5 over 72 hours",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let sealed = is_sealed(sheet, at).map(Check::holds);
    let leached = PH_ON_IT.of(sheet, at).map(|ph| Check::at_most(ph, sheet.limit(&LIMITS[0])));
    let kept_off = Ok(Check::AnyOf(vec![sealed, leached]));
    Ok(Check::only_if(is_of_lime(sheet, at).map(Check::holds), kept_off))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("pH 8.2 after a fortnight"),
        design: words(include_str!("examples/lime_met.json")),
        subject: words("material:wall"),
        expected: Expected::Met,
        place: words("/pools/0/wet-materials/0/ph"),
    },
    Example {
        shows: words("sealed"),
        design: words(include_str!("examples/lime_sealed.json")),
        subject: words("material:wall"),
        expected: Expected::Met,
        place: words("/pools/0/wet-materials/0/sealed"),
    },
    Example {
        shows: words("pH 8.5"),
        design: words(include_str!("examples/lime_edge.json")),
        subject: words("material:wall"),
        expected: Expected::Met,
        place: words("/pools/0/wet-materials/0/ph"),
    },
    Example {
        shows: words("pH 8.6"),
        design: words(include_str!("examples/lime_just_short.json")),
        subject: words("material:wall"),
        expected: Expected::Short,
        place: words("/pools/0/wet-materials/0/ph"),
    },
    Example {
        shows: words("not sealed and never read"),
        design: words(include_str!("examples/lime_gap.json")),
        subject: words("material:wall"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/wet-materials/0/ph"),
    },
    Example {
        shows: words("natural stone"),
        design: words(include_str!("examples/lime_none.json")),
        subject: words("material:wall"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/wet-materials/0/kind"),
    },
];
