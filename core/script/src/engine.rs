//! The Rhai engine with everything switched off that could end, hide or escape a judgement.

use rhai::packages::{ArithmeticPackage, BasicIteratorPackage, LogicPackage, Package};
use rhai::{Dynamic, Engine, FLOAT, INT, OptimizationLevel};

use crate::answer::Answer;
use crate::list::List;
use crate::subject::Asked;
use crate::value::{Given, Value};

/// Operations of one run. They decide, and no clock beside them: an answer must not hang on the machine. A rule takes
/// some dozens. One operation may copy a whole list, so time is bounded by both numbers together: with a million
/// operations and a thousand elements a loop that does nothing but copy a list ran for half a minute.
pub(crate) const MOST_OPERATIONS: u64 = 100_000;
/// Elements of a list or map, those inside it counted in; lists only serve to join answers.
pub(crate) const MOST_ELEMENTS: usize = 256;
/// Bytes of a string.
pub(crate) const LONGEST_STRING: usize = 16 * 1024;
/// Calls inside calls; a script has no function to call but the host's.
const DEEPEST_CALL: usize = 4;
/// Expressions inside expressions.
pub(crate) const DEEPEST_EXPRESSION: usize = 32;
const MOST_VARIABLES: usize = 64;

/// Words and signs that are switched off. `try` and `throw` hide a host's refusal, `??` and its kin invent values,
/// function pointers overflow the native stack, `switch` compares without an operator, powers are worked by
/// the machine's own library and differ between machines.
pub(crate) const SWITCHED_OFF: &[&str] = &[
    "try",
    "catch",
    "throw",
    "??",
    "?.",
    "?[",
    "import",
    "export",
    "as",
    "Fn",
    "call",
    "curry",
    "eval",
    "print",
    "debug",
    "switch",
    "is_def_fn",
    "is_def_var",
    "type_of",
    "global",
    "private",
    "this",
    "**",
    "**=",
    "%",
    "%=",
];

const COMPARISONS: &[&str] = &["<", "<=", ">", ">=", "==", "!="];

/// An engine that can run the script of one rule.
///
/// It starts from nothing and is given arithmetic and logic of plain numbers, ranges to loop over, and the words of
/// this crate. There are no functions on strings, lists and maps, no files, no modules, no clock, no output.
pub(crate) fn engine() -> Engine {
    let mut engine = Engine::new_raw();
    engine.set_optimization_level(OptimizationLevel::None);
    ArithmeticPackage::new().register_into_engine(&mut engine);
    LogicPackage::new().register_into_engine(&mut engine);
    BasicIteratorPackage::new().register_into_engine(&mut engine);
    whole_quotients(&mut engine);
    limit(&mut engine);
    for word in SWITCHED_OFF {
        engine.disable_symbol(*word);
    }
    crate::value::register(&mut engine);
    crate::answer::register(&mut engine);
    crate::subject::register(&mut engine);
    crate::list::register(&mut engine);
    crate::named::register(&mut engine);
    refuse_comparisons::<Value>(
        &mut engine,
        "values are not compared in a script, the engine does that: answer with at_least, at_most or within, or take min or max",
    );
    refuse_comparisons::<Answer>(
        &mut engine,
        "answers are not compared: join them by all_of, any_of or only_if",
    );
    refuse_comparisons::<Asked>(
        &mut engine,
        "the subject is not compared: ask it for figures, register values and limits",
    );
    refuse_comparisons::<List>(
        &mut engine,
        "lists of values are not compared: ask for their total, count, least or greatest, and answer with that",
    );
    refuse_mixed(&mut engine);
    engine
}

fn limit(engine: &mut Engine) {
    engine.set_max_operations(MOST_OPERATIONS);
    engine.set_max_array_size(MOST_ELEMENTS);
    engine.set_max_map_size(MOST_ELEMENTS);
    engine.set_max_string_size(LONGEST_STRING);
    engine.set_max_call_levels(DEEPEST_CALL);
    engine.set_max_expr_depths(DEEPEST_EXPRESSION, DEEPEST_EXPRESSION);
    engine.set_max_variables(MOST_VARIABLES);
    engine.set_strict_variables(true);
    engine.set_allow_anonymous_fn(false);
    engine.set_fail_on_invalid_map_property(true);
}

/// Left alone, Rhai gives 0 for `1 / 2`, and half of a shell length would be none.
fn whole_quotients(engine: &mut Engine) {
    // Otherwise its own quotient is taken before ours.
    engine.set_fast_operators(false);
    engine.register_fn("/", |a: INT, b: INT| a as FLOAT / b as FLOAT);
}

/// Left alone, Rhai takes the comparison of things it does not know for false and goes on.
fn refuse_comparisons<T: Clone + Send + Sync + 'static>(engine: &mut Engine, why: &'static str) {
    for sign in COMPARISONS {
        engine.register_fn(*sign, move |_: T, _: T| -> Given<bool> { Err(why.into()) });
        engine.register_fn(*sign, move |_: T, _: Dynamic| -> Given<bool> { Err(why.into()) });
        engine.register_fn(*sign, move |_: Dynamic, _: T| -> Given<bool> { Err(why.into()) });
    }
}

/// Two of our kinds in one comparison fit two of the patterns above; which one would be chosen is not written down.
fn refuse_mixed(engine: &mut Engine) {
    refuse_two::<Value, Answer>(engine);
    refuse_two::<Value, Asked>(engine);
    refuse_two::<Value, List>(engine);
    refuse_two::<Answer, Asked>(engine);
    refuse_two::<Answer, List>(engine);
    refuse_two::<Asked, List>(engine);
}

fn refuse_two<A: Clone + Send + Sync + 'static, B: Clone + Send + Sync + 'static>(engine: &mut Engine) {
    const WHY: &str = "values, lists, answers and the subject are not compared in a script";
    for sign in COMPARISONS {
        engine.register_fn(*sign, |_: A, _: B| -> Given<bool> { Err(WHY.into()) });
        engine.register_fn(*sign, |_: B, _: A| -> Given<bool> { Err(WHY.into()) });
    }
}
