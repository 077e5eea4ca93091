//! Zinc, copper, brass, lead and treated timber are kept off the water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::material::{is_sealed, poisons};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("no-poison-in-the-water"),
        title: words("Metal or treated timber bare in the water"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Material,
        caution: None,
        manual: Manual {
            asks: words("Zinc, copper, brass, lead and treated timber are kept off the water."),
            why: words(
                "A galvanised bolt or a copper pipe goes on dissolving for years, fastest in soft, sour water; fish and the bacteria of the filter die of what a person does not taste.",
            ),
            judged: words("Whether a material of these kinds is stated to be sealed."),
            cure: words("plastic or stainless steel in its place, or a coating made for drinking water"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let sealed = is_sealed(sheet, at).map(Check::holds);
    Ok(Check::only_if(poisons(sheet, at).map(Check::holds), sealed))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("brass, coated"),
        design: words(include_str!("examples/poison_met.json")),
        subject: words("material:wall"),
        expected: Expected::Met,
        place: words("/pools/0/wet-materials/0/sealed"),
    },
    Example {
        shows: words("galvanised steel, bare"),
        design: words(include_str!("examples/poison_short.json")),
        subject: words("material:wall"),
        expected: Expected::Short,
        place: words("/pools/0/wet-materials/0/sealed"),
    },
    Example {
        shows: words("whether it is sealed is not stated"),
        design: words(include_str!("examples/poison_gap.json")),
        subject: words("material:wall"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/wet-materials/0/sealed"),
    },
    Example {
        shows: words("mortar"),
        design: words(include_str!("examples/poison_none.json")),
        subject: words("material:wall"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/wet-materials/0/kind"),
    },
];
