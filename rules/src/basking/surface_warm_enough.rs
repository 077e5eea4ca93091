//! At least one site of the group has a surface within the band of its species.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::habit::ANY_BASK;
use haulout_figures::basking::sites_of;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

use super::warm;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("surface-warm-enough"),
        title: words("No site of the group is in its band of warmth"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Group,
        caution: None,
        manual: Manual {
            asks: words("At least one site of the group has a surface within the band of its species."),
            why: words("A reptile that cannot warm up cannot digest, heal or fight disease."),
            judged: words(
                "Temperatures as stated, both ends of a range, against the band of the register: from law or print where there is one, otherwise from practice. Warmth in the file is a promise until it is measured.",
            ),
            cure: words("a stronger or lower lamp over one site, or less of it; measure the surface"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let any = || {
        let sites = sites_of(sheet, at)?;
        Ok(Check::AnyOf(sites.into_iter().map(|site| warm(sheet, site, at)).collect()))
    };
    Ok(Check::only_if(ANY_BASK.of(sheet, at).map(Check::holds), any()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("36 °C, sliders want 35 to 40 °C"),
        design: words(include_str!("examples/surface_warm_enough_met.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/surface-temperature"),
    },
    Example {
        shows: words("30 °C everywhere"),
        design: words(include_str!("examples/surface_warm_enough_short.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/surface-temperature"),
    },
    Example {
        shows: words("the edge: 35 °C"),
        design: words(include_str!("examples/surface_warm_enough_edge.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("not stated anywhere"),
        design: words(include_str!("examples/surface_warm_enough_gap.json")),
        subject: words("group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/surface-temperature"),
    },
    Example {
        shows: words("no animals"),
        design: words(include_str!("examples/surface_warm_enough_nobody.json")),
        subject: words("group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/sexes"),
    },
];
