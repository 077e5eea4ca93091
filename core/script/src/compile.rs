//! From the text of one file to a rule, or to everything that is wrong with it.

use std::sync::{Arc, Mutex};

use haulout_engine::{Card, Rule};
use haulout_model::About;
use haulout_place::Span;
use haulout_quantity::Dimension;
use haulout_register::{SPECIES, TRAITS, Trait};
use haulout_sheet::{Catalogued, Limit};
use rhai::{AST, CallFnOptions, Dynamic, Engine, EvalAltResult, ParseError, Position, Scope};

use crate::answer::Answer;
use crate::card::{self, ScriptCard};
use crate::engine::{DEEPEST_CALL, LONGEST_STRING, MOST_ELEMENTS, MOST_OPERATIONS, engine};
use crate::fault::{ScriptFault, nearest};
use crate::head::{Head, span_at};
use crate::limit::leaked;
use crate::plan::{Plan, Used};
use crate::subject::{Asked, Lists};
use crate::tape::{Tape, open};
use crate::value::kind_of;

/// The figures a script may ask for.
pub type Catalogue = &'static [&'static dyn Catalogued];

/// Compiles one script. Whatever can go wrong with it goes wrong here: a rule that comes back cannot fail later.
///
/// Its limits are leaked, so a script should be compiled once in a process.
///
/// # Errors
/// Every fault of the card, or the first of the body, each at its place.
pub fn compile(file_name: &str, text: &str, catalogue: Catalogue) -> Result<Rule, Vec<ScriptFault>> {
    let head = Head::of(text).map_err(|fault| vec![fault])?;
    let script = card::read(&head).map_err(|fault| vec![fault])?;
    let mut faults = Vec::new();
    let card = script.rule_card(&head, file_name, &mut faults);
    let about = About::of(&script.about);
    let roots = Roots::of(&script, &head, about, catalogue, &mut faults);
    let Some(card) = card.filter(|_| faults.is_empty()) else { return Err(faults) };
    let (tape, answer) = run(text, &head.body, &roots.lists).map_err(|fault| vec![fault])?;
    faults.extend(left_over(text, &head, &roots.lists, &tape, answer));
    if faults.is_empty() { Ok(rule(card, &script, roots, &tape, answer)) } else { Err(faults) }
}

fn rule(card: Card, script: &ScriptCard, roots: Roots, tape: &Tape, answer: usize) -> Rule {
    Rule {
        card: Arc::new(card),
        limits: roots.limits.clone(),
        examples: script.examples.iter().map(card::ExampleEntry::example).collect(),
        annex: None,
        judge: Arc::new(Plan::new(roots.figures, roots.register, roots.limits, tape, answer)),
    }
}

/// What the card lists, found.
#[derive(Default)]
struct Roots {
    lists: Lists,
    figures: Vec<&'static dyn Catalogued>,
    register: Vec<&'static Trait>,
    limits: Vec<&'static Limit>,
}

impl Roots {
    fn of(
        script: &ScriptCard,
        head: &Head<'_>,
        about: Option<About>,
        catalogue: Catalogue,
        faults: &mut Vec<ScriptFault>,
    ) -> Self {
        let mut roots = Roots::default();
        let lists = [("figures", &script.figures), ("register", &script.register)];
        for (list, names) in lists {
            for (at, name) in names.iter().enumerate().filter(|(at, name)| names[..*at].contains(name)) {
                let message = format!("\"{name}\" stands {} under \"{list}\"; once is enough", ordinal(at));
                faults.push(ScriptFault::new(head.place(&[list, name, name]), message));
            }
        }
        for name in &script.figures {
            match figure(name, about, catalogue) {
                Ok(figure) => roots.add_figure(name, figure),
                Err(message) => faults.push(ScriptFault::new(head.place(&["figures", name]), message)),
            }
        }
        for name in &script.register {
            match species_value(name, about) {
                Ok((found, dimension)) => roots.add_register(name, found, dimension),
                Err(message) => faults.push(ScriptFault::new(head.place(&["register", name]), message)),
            }
        }
        roots.add_limits(script, head, faults);
        roots
    }

    fn add_figure(&mut self, name: &str, figure: &'static dyn Catalogued) {
        self.lists.figures.push((name.to_owned(), figure.dimension()));
        self.figures.push(figure);
    }

    fn add_register(&mut self, name: &str, found: &'static Trait, dimension: Dimension) {
        self.lists.register.push((name.to_owned(), dimension));
        self.register.push(found);
    }

    fn add_limits(&mut self, script: &ScriptCard, head: &Head<'_>, faults: &mut Vec<ScriptFault>) {
        let rule = leaked(&script.id);
        for limit in &script.limits {
            let place = |word: Option<&str>| head.place(&["limits", &limit.name, word.unwrap_or(&limit.name)]);
            if self.lists.limits.iter().any(|(known, _)| *known == limit.name) {
                let message = format!("there are two limits called \"{}\": each has a name of its own", limit.name);
                faults.push(ScriptFault::new(head.place(&["limits", &limit.name, "name", &limit.name]), message));
            }
            match limit.card(rule) {
                Ok(card) => {
                    self.lists.limits.push((limit.name.clone(), card.dimension));
                    self.limits.push(card);
                }
                Err(message) => {
                    let message = format!("limit \"{}\": {message}", limit.name);
                    faults.push(ScriptFault::new(place(limit.written()), message));
                }
            }
        }
    }
}

fn ordinal(at: usize) -> &'static str {
    if at == 1 { "twice" } else { "more than once" }
}

fn figure(name: &str, about: Option<About>, catalogue: Catalogue) -> Result<&'static dyn Catalogued, String> {
    let Some(figure) = catalogue.iter().find(|f| f.card().id == name) else {
        return Err(format!("there is no figure \"{name}\"{}", nearest(name, catalogue.iter().map(|f| f.card().id))));
    };
    let owner = figure.card().about;
    match about {
        Some(about) if !about.holds(owner) => Err(format!(
            "the figure \"{name}\" is about a {}, which a {} has none of: make the rule about something with a {0}",
            owner.name(),
            about.name()
        )),
        _ => Ok(*figure),
    }
}

fn species_value(name: &str, about: Option<About>) -> Result<(&'static Trait, Dimension), String> {
    let Some(found) = TRAITS.iter().find(|t| t.name == name) else {
        return Err(format!("the register holds no \"{name}\"{}", nearest(name, TRAITS.iter().map(|t| t.name))));
    };
    if let Some(about) = about.filter(|a| !a.holds(About::Group)) {
        let about = about.name();
        return Err(format!(
            "\"{name}\" is a value of a species, and a {about} has no animals: make the rule about a group or a pool-group"
        ));
    }
    let value = SPECIES.iter().find_map(|s| (found.of)(s));
    value
        .map(|value| (found, value.dimension))
        .ok_or_else(|| format!("the register holds \"{name}\" of no species yet, so no rule can ask for it"))
}

/// Runs the script once: its steps and its answer.
fn run(text: &str, body: &str, lists: &Lists) -> Result<(Tape, usize), ScriptFault> {
    let engine = engine();
    let ast = engine.compile(body).map_err(|error| of_parsing(text, &error))?;
    one_function(text, &ast)?;
    let judge = position_of_judge(text, body);
    let tape = lists.tape().map_err(|message| ScriptFault::new(judge, message))?;
    let tape = Arc::new(Mutex::new(tape));
    let it = Asked { tape: tape.clone(), lists: Arc::new(lists.clone()) };
    let given = call(&engine, &ast, it).map_err(|error| of_running(text, judge, *error))?;
    let kind = kind_of(&given);
    let Some(answer) = given.try_cast::<Answer>() else {
        let message = format!("judge gives back {kind}; its last line must be an answer, such as at_least(have, limit)");
        return Err(ScriptFault::new(judge, message));
    };
    let part = answer.part;
    drop(answer);
    let tape = std::mem::take(&mut *open(&tape));
    Ok((tape, part))
}

fn call(engine: &Engine, ast: &AST, it: Asked) -> Result<Dynamic, Box<EvalAltResult>> {
    // What stands outside the function is refused by `one_function`; it would not be run either.
    let options = CallFnOptions::new().eval_ast(false);
    engine.call_fn_with_options(options, &mut Scope::new(), ast, "judge", (it,))
}

fn position_of_judge(text: &str, body: &str) -> Span {
    // The body has as many characters a line as the text, so its lines and columns are those of the text.
    let Some(at) = body.find("fn judge").map(|at| at + 3) else { return Span::new(0, 1) };
    let line = body[..at].matches('\n').count() + 1;
    let column = body[..at].rsplit('\n').next().map_or(0, |l| l.chars().count()) + 1;
    span_at(text, Some(line), Some(column))
}

/// One function, `judge(it)`, and nothing beside it.
fn one_function(text: &str, ast: &AST) -> Result<(), ScriptFault> {
    let end = span_at(text, None, None);
    let functions: Vec<_> = ast.iter_functions().map(|f| (f.name.to_owned(), f.params.len())).collect();
    match functions.as_slice() {
        [(name, 1)] if name == "judge" => {}
        [] => return Err(ScriptFault::new(end, "a script holds one function: fn judge(it) { … }")),
        [(name, count)] => {
            let message = format!("the function {name} takes {count}; a script holds one function, fn judge(it) {{ … }}");
            return Err(ScriptFault::new(end, message));
        }
        several => {
            let names: Vec<&str> = several.iter().map(|(name, _)| name.as_str()).collect();
            let message = format!("a script holds one function, fn judge(it), here are {}", names.join(", "));
            return Err(ScriptFault::new(end, message));
        }
    }
    nothing_beside(text, ast)
}

/// Whether anything stands outside the function: an engine that stops at the first operation finds it.
fn nothing_beside(text: &str, ast: &AST) -> Result<(), ScriptFault> {
    let mut engine = engine();
    engine.on_progress(|_| Some(Dynamic::UNIT));
    match engine.eval_ast::<Dynamic>(&ast.clone_statements_only()) {
        Ok(given) if given.is_unit() => Ok(()),
        Ok(_) => Err(ScriptFault::new(span_at(text, None, None), BESIDE)),
        Err(error) => Err(ScriptFault::new(place(text, error.position()), BESIDE)),
    }
}

const BESIDE: &str = "something stands outside the function judge; a script is its card and that one function";

/// Answers that the last one does not hold, and listed things the answer does not rest on.
fn left_over(text: &str, head: &Head<'_>, lists: &Lists, tape: &Tape, answer: usize) -> Vec<ScriptFault> {
    let used = Used::by(tape, answer);
    let lost = tape.parts.iter().zip(&used.parts).filter(|(_, used)| !**used).map(|(made, _)| {
        let message = "this answer is not part of what judge gives back: join answers by all_of, any_of or only_if";
        ScriptFault::new(place(text, made.at), message)
    });
    let unasked = (0..lists.len()).filter(|root| !used.steps[*root]).map(|root| {
        let (list, name) = lists.name(root);
        let message = format!("the answer does not rest on \"{name}\"; use it in judge or take it off the card");
        ScriptFault::new(head.place(&[list, name]), message)
    });
    lost.chain(unasked).collect()
}

fn place(text: &str, position: Position) -> Span {
    span_at(text, position.line(), position.position())
}

fn of_parsing(text: &str, error: &ParseError) -> ScriptFault {
    let told = error.err_type().to_string();
    ScriptFault::new(place(text, error.position()), format!("the script cannot be read: {told}"))
}

/// The fault behind an error of a run; where Rhai gives no place, that of `judge`.
fn of_running(text: &str, judge: Span, error: EvalAltResult) -> ScriptFault {
    let mut inner = innermost(error);
    let position = inner.take_position();
    let message = match &inner {
        EvalAltResult::ErrorRuntime(told, _) => told.to_string(),
        EvalAltResult::ErrorTooManyOperations(_) => {
            format!("the script takes more than {MOST_OPERATIONS} operations: look for a loop that does not end")
        }
        EvalAltResult::ErrorStackOverflow(_) => {
            format!("calls go more than {DEEPEST_CALL} deep: a script does not call itself")
        }
        EvalAltResult::ErrorDataTooLarge(what, _) => format!(
            "{what}: lists and maps hold at most {MOST_ELEMENTS} things, text at most {LONGEST_STRING} bytes"
        ),
        EvalAltResult::ErrorFunctionNotFound(call, _) => not_found(call),
        other => other.to_string(),
    };
    let span = if position.is_none() { judge } else { place(text, position) };
    ScriptFault::new(span, message)
}

fn innermost(error: EvalAltResult) -> EvalAltResult {
    match error {
        EvalAltResult::ErrorInFunctionCall(_, _, inner, _) => innermost(*inner),
        other => other,
    }
}

/// The functions a script has.
const FUNCTIONS: &[&str] =
    &["figure", "register", "limit", "at_least", "at_most", "within", "any_of", "all_of", "only_if", "min", "max"];

fn not_found(call: &str) -> String {
    let name = call.split([' ', '(']).next().unwrap_or(call);
    if name == "q" {
        return "quantities are not written into a script: put them on the card as limits and ask with it.limit".to_owned();
    }
    let known = FUNCTIONS.contains(&name) || !name.starts_with(char::is_alphabetic);
    let near = if known { String::new() } else { nearest(name, FUNCTIONS.iter().copied()) };
    format!("there is no {call} in a script{near}")
}
