//! The one run of a script: what it does is noted on the tape, what goes wrong is told in plain words.

use std::sync::{Arc, Mutex};

use haulout_place::Span;
use rhai::{
    AST, Dynamic, Engine, EvalAltResult, ParseError, ParseErrorType, Position, Scope, ScriptFnMetadata,
};

use crate::answer::Answer;
use crate::engine::{
    DEEPEST_EXPRESSION, LONGEST_STRING, MOST_ELEMENTS, MOST_OPERATIONS, SWITCHED_OFF, engine,
};
use crate::fault::{ScriptFault, near};
use crate::head::{first, span_at, span_in};
use crate::reference::REFERENCE;
use crate::subject::{Asked, Lists};
use crate::tape::{Tape, open};
use crate::value::kind_of;

/// Runs the script once: its steps and its answer.
///
/// What is run is the inside of the function, not a call of it: on the way out of a call Rhai forgets where an
/// operation too many was taken.
pub(crate) fn run(text: &str, body: &str, lists: &Lists) -> Result<(Tape, usize), ScriptFault> {
    let engine = engine();
    one_function(&engine, text, body)?;
    let judge = place_of_function(text, body, "judge");
    let tape = lists.tape().map_err(|message| ScriptFault::new(judge, message))?;
    let tape = Arc::new(Mutex::new(tape));
    let mut scope = Scope::new();
    scope.push("it", Asked { tape: tape.clone(), lists: Arc::new(lists.clone()) });
    let ast = inside(&engine, &scope, text, body)?;
    let given = engine.eval_ast_with_scope::<Dynamic>(&mut scope, &ast);
    let given = given.map_err(|error| of_running(text, judge, *error))?;
    let kind = kind_of(&given);
    let Some(answer) = given.try_cast::<Answer>() else {
        let message = format!(
            "judge gives back {kind}; its last line must be an answer, such as at_least(have, limit)"
        );
        return Err(ScriptFault::new(judge, message));
    };
    let tape = std::mem::take(&mut *open(&tape));
    Ok((tape, answer.part))
}

/// The name of a function where it is declared.
fn place_of_function(text: &str, body: &str, name: &str) -> Span {
    body.find(&format!("fn {name}")).map_or_else(|| first(text), |at| span_in(text, body, at + 3))
}

/// One function, `judge(it)`.
fn one_function(engine: &Engine, text: &str, body: &str) -> Result<(), ScriptFault> {
    const ASKED: &str = "a script holds one function, fn judge(it) { … }";
    let ast = engine.compile(body).map_err(|error| of_parsing(text, &error))?;
    let right = |f: &ScriptFnMetadata<'_>| f.name == "judge" && f.params == ["it"];
    let mut count = 0;
    for function in ast.iter_functions() {
        count += 1;
        if !right(&function) {
            let (name, parameters) = (function.name, function.params.join(", "));
            let message = format!("{name}({parameters}) is not asked for: {ASKED}");
            return Err(ScriptFault::new(place_of_function(text, body, name), message));
        }
    }
    if count == 1 { Ok(()) } else { Err(ScriptFault::new(span_at(text, None, None), ASKED)) }
}

const BESIDE: &str = "something stands outside the function judge; a script is its card and that one function, fn judge(it) { … }";

/// The inside of the function: everything else must be its head, its last brace and comments before it.
fn inside(engine: &Engine, scope: &Scope<'_>, text: &str, body: &str) -> Result<AST, ScriptFault> {
    let start = after_comments(body);
    let head = ["fn", "judge", "(", "it", ")", "{"];
    let opened = head.iter().try_fold(start, |at, word| {
        let rest = body[at..].trim_start();
        rest.starts_with(word).then_some(body.len() - rest.len() + word.len())
    });
    let Some(opened) = opened else { return Err(ScriptFault::new(span_in(text, body, start), BESIDE)) };
    let end = body.trim_end();
    let Some(statements) = end.strip_suffix('}').and_then(|s| s.get(opened..)) else {
        return Err(ScriptFault::new(span_at(text, None, None), BESIDE));
    };
    let blank = |c: char| if c == '\n' { '\n' } else { ' ' };
    let statements: String = body[..opened].chars().map(blank).chain(statements.chars()).collect();
    let beside = |position| ScriptFault::new(place(text, position), BESIDE);
    // The whole was read without a slip, so one that shows up now is a brace that closed the function too early.
    engine.compile_with_scope(scope, statements).map_err(|error| beside(error.position()))
}

/// The byte at which something stands that is neither blank nor comment.
fn after_comments(body: &str) -> usize {
    let mut rest = body.trim_start();
    loop {
        let comment = if rest.starts_with("//") {
            rest.find('\n')
        } else if rest.starts_with("/*") {
            rest.find("*/").map(|end| end + 2)
        } else {
            None
        };
        let Some(end) = comment else { return body.len() - rest.len() };
        rest = rest[end..].trim_start();
    }
}

/// The place of a position of Rhai.
pub(crate) fn place(text: &str, position: Position) -> Span {
    span_at(text, position.line(), position.position())
}

fn of_parsing(text: &str, error: &ParseError) -> ScriptFault {
    let told = error.err_type().to_string();
    let quoted = told.split('\'').nth(1).unwrap_or_default();
    let message = if SWITCHED_OFF.contains(&quoted) {
        format!(
            "'{quoted}' is switched off in a script: it asks, computes and answers, and does nothing else"
        )
    } else if matches!(error.err_type(), ParseErrorType::ExprTooDeep) {
        format!(
            "expressions stand more than {DEEPEST_EXPRESSION} deep inside one another: name the parts with let"
        )
    } else if let ParseErrorType::VariableUndefined(name) = error.err_type() {
        format!(
            "nothing is called \"{name}\" here: write let {name} = … before it, or quote it if it is a word"
        )
    } else {
        format!("the script cannot be read: {told}")
    };
    ScriptFault::new(place(text, error.position()), message)
}

/// The fault behind an error of a run; where Rhai gives no place, that of `judge`.
fn of_running(text: &str, judge: Span, error: EvalAltResult) -> ScriptFault {
    let mut inner = innermost(error);
    let position = inner.take_position();
    let message = match &inner {
        EvalAltResult::ErrorRuntime(told, _) => told.to_string(),
        EvalAltResult::ErrorTooManyOperations(_) => {
            format!(
                "the script takes more than {MOST_OPERATIONS} operations: look for a loop that does not end"
            )
        }
        EvalAltResult::ErrorDataTooLarge(..) => {
            format!(
                "this grows too large: a list or map holds at most {MOST_ELEMENTS} things, text {LONGEST_STRING} bytes"
            )
        }
        EvalAltResult::ErrorFunctionNotFound(call, _) => not_found(call),
        EvalAltResult::ErrorMismatchDataType(expected, actual, _) => {
            format!("{} stands where {} is expected", plain(actual), plain(expected))
        }
        EvalAltResult::ErrorDotExpr(..) => {
            "nothing has parts here: ask the subject with it.figure, it.register or it.limit".to_owned()
        }
        other => other.to_string(),
    };
    let span = if position.is_none() { judge } else { place(text, position) };
    ScriptFault::new(span, message)
}

/// Rhai's words for types, and those of the trade.
const TYPES: &[(&str, &str)] = &[
    ("&str | ImmutableString | String", "text"),
    ("haulout_script::answer::Answer", "answer"),
    ("haulout_script::value::Value", "value"),
    ("haulout_script::subject::Asked", "subject"),
    ("haulout_script::list::List", "list of values"),
    ("bool", "yes or no"),
    ("i64", "number"),
    ("f64", "number"),
    ("array", "list"),
];

fn plain(text: &str) -> String {
    TYPES.iter().fold(text.to_owned(), |text, (theirs, ours)| text.replace(theirs, ours))
}

fn innermost(error: EvalAltResult) -> EvalAltResult {
    match error {
        EvalAltResult::ErrorInFunctionCall(_, _, inner, _) => innermost(*inner),
        other => other,
    }
}

fn not_found(call: &str) -> String {
    let name = call.split([' ', '(']).next().unwrap_or(call);
    if name == "q" {
        return "quantities are not written into a script: put them on the card as limits and ask with it.limit".to_owned();
    }
    let wrong = REFERENCE.iter().map(|word| word.name).filter(|known| *known != name);
    format!("there is no {} in a script{}", plain(call), near(name, wrong))
}
