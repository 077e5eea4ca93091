//! At least one site of the group that is warm enough has the UV index of its zone at the back, at the same place.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::habit::ANY_BASK;
use haulout_figures::basking::sites_of;
use haulout_figures::basking::warmth::{UV_FROM, UV_INDEX, UV_TO};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

use super::warm;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("ultraviolet-where-it-is-warm"),
        title: words("The ultraviolet is not where it is warm"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Group,
        caution: None,
        manual: Manual {
            asks: words(
                "At least one site of the group that is warm enough has the UV index of its zone at the back, at the same place.",
            ),
            why: words(
                "The skin makes vitamin D from ultraviolet and the warmth of the same skin finishes it; animals lie where it is warm.",
            ),
            judged: words(
                "Sites in the band of warmth, and of those the UV index at the back between the lower end of the averages and the upper end of the maxima of the species' zone. Nothing of it passes glass or acrylic.",
            ),
            cure: words("hang the tube over the warm site, measured at the height of the back"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn both(sheet: Sheet<'_>, site: Subject, group: Subject) -> Known<Check> {
    let lines = (UV_INDEX.of(sheet, site), UV_FROM.of(sheet, group), UV_TO.of(sheet, group)).all();
    let bright = lines.map(|(have, low, high)| Check::within(have, low, high));
    Ok(Check::AllOf(vec![warm(sheet, site, group), bright]))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let any = || {
        let sites = sites_of(sheet, at)?;
        Ok(Check::AnyOf(sites.into_iter().map(|site| both(sheet, site, at)).collect()))
    };
    Ok(Check::only_if(ANY_BASK.of(sheet, at).map(Check::holds), any()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("UV index 2.0 at 36 °C"),
        design: words(include_str!("examples/ultraviolet_where_it_is_warm_met.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/uv-index"),
    },
    Example {
        shows: words("the bright site is cool and the warm ones are dark"),
        design: words(include_str!("examples/ultraviolet_where_it_is_warm_short.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/surface-temperature"),
    },
    Example {
        shows: words("the edge: UV index 1.0 for zone 3"),
        design: words(include_str!("examples/ultraviolet_where_it_is_warm_edge.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/uv-index"),
    },
    Example {
        shows: words("not stated anywhere"),
        design: words(include_str!("examples/ultraviolet_where_it_is_warm_gap.json")),
        subject: words("group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/uv-index"),
    },
];
