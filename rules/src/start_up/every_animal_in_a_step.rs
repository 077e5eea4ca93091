//! The stocking steps bring in exactly the animals of the group.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::group::ANIMALS;
use haulout_figures::startup::step::{STOCKED, is_stocked, some_come};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, GapKind, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("every-animal-in-a-step"),
        title: words("Animals that no step brings in"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Group,
        caution: None,
        manual: Manual {
            asks: words("The stocking steps bring in exactly the animals of the group."),
            why: words(
                "The course of the start-up knows only the animals that its steps bring. One that comes besides them feeds ammonia into a filter that was not reckoned with it.",
            ),
            judged: words("Sum of the counts of all steps of the group against its sexes added up."),
            cure: words("add the missing step, or mend the count"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !is_stocked(sheet)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let come = STOCKED.of(sheet, at);
    let some = Check::stands(some_come(sheet, at), GapKind::SaidNone);
    let all = (come, ANIMALS.of(sheet, at)).all();
    Ok(Check::AllOf(vec![Ok(some), all.map(|(come, all)| Check::within(come, all, all))]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("two and two of four"),
        design: words(include_str!("examples/every_met.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/start-up/steps/0/count"),
    },
    Example {
        shows: words("two and one of four"),
        design: words(include_str!("examples/every_short.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/start-up/steps/1/count"),
    },
    Example {
        shows: words("two and four of four"),
        design: words(include_str!("examples/every_over.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/start-up/steps/1/count"),
    },
    Example {
        shows: words("no step brings the group in"),
        design: words(include_str!("examples/every_left_out.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/start-up/steps"),
    },
    Example {
        shows: words("how many come is not stated"),
        design: words(include_str!("examples/every_gap.json")),
        subject: words("group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/start-up/steps/1/count"),
    },
    Example {
        shows: words("nothing is brought in by steps"),
        design: words(include_str!("examples/every_none.json")),
        subject: words("group:sliders"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
