//! From the text of one file to a rule, or to everything that is wrong with it.

use std::sync::Arc;

use haulout_engine::{Card, Rule};
use haulout_model::About;
use haulout_sheet::Catalogued;

use crate::card::{self, ScriptCard};
use crate::fault::ScriptFault;
use crate::head::Head;
use crate::plan::{Plan, Used};
use crate::roots::Roots;
use crate::run::{place, run};
use crate::subject::Lists;
use crate::tape::Tape;

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
        // A script may ask for any figure of the catalogue; what it costs is its writer's choice.
        heavy: false,
        judge: Arc::new(Plan::new(roots, tape, answer)),
    }
}

/// Answers that the last one does not hold, and listed things the answer does not rest on.
fn left_over(text: &str, head: &Head<'_>, lists: &Lists, tape: &Tape, answer: usize) -> Vec<ScriptFault> {
    let used = Used::by(tape, answer);
    let lost = tape.parts.iter().zip(&used.parts).filter(|(_, used)| !**used).map(|(made, _)| {
        let message =
            "this answer is not part of what judge gives back: join answers by all_of, any_of or only_if";
        ScriptFault::new(place(text, made.at), message)
    });
    let unasked = (0..lists.len()).filter(|root| !used.steps[*root]).map(|root| {
        let (list, name) = lists.name(root);
        let message =
            format!("the answer does not rest on \"{name}\"; use it in judge or take it off the card");
        ScriptFault::new(head.place(&[list, name]), message)
    });
    lost.chain(unasked).collect()
}
