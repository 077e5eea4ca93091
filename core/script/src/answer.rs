//! Answers of a script: the comparisons it hands to the engine, and their combinations.

use rhai::{Array, Dynamic, Engine, NativeCallContext};

use crate::tape::{Part, Shared, open};
use crate::value::{Given, Value, kind_of, value};

/// An answer: a part on the tape.
#[derive(Clone)]
pub(crate) struct Answer {
    pub(crate) tape: Shared,
    pub(crate) part: usize,
}

/// Lets a script answer.
pub(crate) fn register(engine: &mut Engine) {
    engine.register_type_with_name::<Answer>("answer");
    engine.register_fn("at_least", |context: NativeCallContext<'_>, have: Dynamic, limit: Dynamic| {
        one_sided(&context, have, limit, Part::AtLeast)
    });
    engine.register_fn("at_most", |context: NativeCallContext<'_>, have: Dynamic, limit: Dynamic| {
        one_sided(&context, have, limit, Part::AtMost)
    });
    engine.register_fn("within", within);
    engine.register_fn("any_of", |context: NativeCallContext<'_>, answers: Array| {
        combined(&context, answers, Part::AnyOf)
    });
    engine.register_fn("all_of", |context: NativeCallContext<'_>, answers: Array| {
        combined(&context, answers, Part::AllOf)
    });
    engine.register_fn("only_if", |context: NativeCallContext<'_>, applies: Dynamic, then: Dynamic| {
        let (applies, then) = (answer(applies)?, answer(then)?);
        noted(&context, &applies.tape, Part::OnlyIf(applies.part, then.part))
    });
}

fn noted(context: &NativeCallContext<'_>, tape: &Shared, part: Part) -> Given<Answer> {
    let part = open(tape).part(part, context.call_position())?;
    Ok(Answer { tape: tape.clone(), part })
}

fn one_sided(
    context: &NativeCallContext<'_>,
    have: Dynamic,
    limit: Dynamic,
    part: fn(usize, usize) -> Part,
) -> Given<Answer> {
    let (have, limit) = (value(have, "what the design has")?, value(limit, "the limit")?);
    alike(&have, &limit)?;
    noted(context, &have.tape, part(have.step, limit.step))
}

fn within(context: NativeCallContext<'_>, have: Dynamic, low: Dynamic, high: Dynamic) -> Given<Answer> {
    let have = value(have, "what the design has")?;
    let (low, high) = (value(low, "the lower limit")?, value(high, "the upper limit")?);
    alike(&have, &low)?;
    alike(&have, &high)?;
    noted(&context, &have.tape, Part::Within(have.step, low.step, high.step))
}

fn alike(have: &Value, limit: &Value) -> Given<()> {
    let (mine, its) = (have.dimension(), limit.dimension());
    if mine == its {
        return Ok(());
    }
    let (mine, its) = (mine.name(), its.name());
    Err(format!("{mine} cannot be held against {its}: both must be of one dimension").into())
}

fn answer(given: Dynamic) -> Given<Answer> {
    let kind = kind_of(&given);
    given.try_cast::<Answer>().ok_or_else(|| {
        format!("{kind} stands where an answer is expected, such as at_least(have, limit)").into()
    })
}

fn combined(context: &NativeCallContext<'_>, answers: Array, part: fn(Vec<usize>) -> Part) -> Given<Answer> {
    let answers = answers.into_iter().map(answer).collect::<Given<Vec<Answer>>>()?;
    let Some(first) = answers.first() else {
        return Err(
            "a combination of no answers would hold whatever the design is: give it at least one".into()
        );
    };
    noted(context, &first.tape, part(answers.iter().map(|a| a.part).collect()))
}
