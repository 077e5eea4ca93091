//! Annexes joined to the built-in rules, in the order given; every part of every annex is looked at, whatever is wrong with others.

use haulout_document::{Problem, Schema};
use haulout_engine::{Annex, Rule, Ruleset};
use haulout_place::Span;
use haulout_script::{Catalogue, compile};

use crate::page::Page;
use crate::{CARD, authority, card, digest_of_files, limit, species};

/// A file of an annex.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Source {
    /// Its name in its folder.
    pub name: String,
    /// Its bytes, or why they cannot be had.
    pub bytes: Result<Vec<u8>, String>,
}

/// A folder that is an annex.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Folder {
    /// The folder as it was named.
    pub path: String,
    /// Its card and its scripts, in any order.
    pub files: Vec<Source>,
}

/// What is wrong with one file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Trouble {
    /// The file as it is named in outputs.
    pub file: String,
    /// Its text; none when there is none.
    pub text: Option<String>,
    /// What is wrong, in the order of the text.
    pub problems: Vec<Problem>,
}

impl Folder {
    /// The last part of the path.
    pub(crate) fn name(&self) -> &str {
        let path = self.path.trim_end_matches(['/', '\\']);
        path.rsplit(['/', '\\']).next().filter(|name| !name.is_empty() && *name != ".").unwrap_or("annex")
    }

    /// The digest of its card and its scripts.
    pub(crate) fn digest(&self) -> String {
        let files: Vec<(&str, &[u8])> =
            self.files.iter().filter_map(|f| Some((f.name.as_str(), f.bytes.as_deref().ok()?))).collect();
        digest_of_files(&files)
    }

    /// The path without what may stand at its ends and says nothing.
    pub(crate) fn place(&self) -> &str {
        self.path.trim_start_matches("./").trim_end_matches(['/', '\\'])
    }

    fn path_of(&self, file: &str) -> String {
        format!("{}/{file}", self.path.trim_end_matches(['/', '\\']))
    }

    fn scripts(&self) -> Vec<&Source> {
        let mut scripts: Vec<&Source> = self.files.iter().filter(|f| f.name.ends_with(".rhai")).collect();
        scripts.sort_by(|a, b| a.name.cmp(&b.name));
        scripts
    }
}

/// The built-in rules with those of the annexes, and everything the cards of the annexes change.
///
/// # Errors
/// What is wrong, file by file, in the order of the annexes; a review that left out a part of a house's rules would look
/// better than it is.
pub fn join(built_in: Vec<Rule>, folders: &[Folder], catalogue: Catalogue) -> Result<Ruleset, Vec<Trouble>> {
    let mut ruleset = Ruleset::new(built_in);
    if folders.is_empty() {
        return Ok(ruleset);
    }
    let schema = Schema::trusted(haulout_schemas::ANNEX);
    let mut cards: Vec<(&Folder, Option<Page>)> = Vec::new();
    let mut of_scripts: Vec<Vec<Trouble>> = Vec::new();
    let mut of_cards: Vec<Option<Trouble>> = Vec::new();
    for folder in folders {
        let (mut page, trouble) = opened(folder, &schema);
        let before: Vec<(&Folder, &Annex)> = folders.iter().zip(&ruleset.annexes).collect();
        let annex = card::annex(folder, page.as_mut(), &before);
        ruleset.annexes.push(annex);
        of_scripts.push(scripts(folder, &mut ruleset, catalogue));
        of_cards.push(trouble);
        cards.push((folder, page));
    }
    // Only now are all rules known that a card may name.
    for (position, (folder, page)) in cards.iter_mut().enumerate() {
        let Some(page) = page else { continue };
        apply(page, &mut ruleset, position as u16);
        page.problems.sort_by_key(|p| p.span);
        if !page.problems.is_empty() {
            of_cards[position] = Some(Trouble {
                file: folder.path_of(CARD),
                text: Some(page.tree.text().to_owned()),
                problems: std::mem::take(&mut page.problems),
            });
        }
    }
    let troubles: Vec<Trouble> = of_cards
        .into_iter()
        .zip(of_scripts)
        .flat_map(|(card, scripts)| card.into_iter().chain(scripts))
        .collect();
    if troubles.is_empty() { Ok(ruleset) } else { Err(troubles) }
}

/// Authorities and species before limits: nothing below asks for what stands above it.
fn apply(page: &mut Page, ruleset: &mut Ruleset, annex: u16) {
    authority::authorities(page, ruleset);
    species::species(page, ruleset, annex);
    species::overrides(page, ruleset, annex);
    limit::limits(page, ruleset, annex);
    limit::demands(page, ruleset, annex);
}

/// The card of a folder, read; or why it cannot be.
fn opened(folder: &Folder, schema: &Schema) -> (Option<Page>, Option<Trouble>) {
    let trouble =
        |text: Option<String>, problems| Some(Trouble { file: folder.path_of(CARD), text, problems });
    let Some(file) = folder.files.iter().find(|f| f.name == CARD) else {
        return (None, trouble(None, vec![card::missing(folder)]));
    };
    match &file.bytes {
        Err(why) => (None, trouble(None, vec![Problem::new(Span::default(), why.clone())])),
        Ok(bytes) => match Page::held_to(bytes, schema) {
            Ok(page) => (Some(page), None),
            Err(problems) => (None, trouble(Some(readable(bytes)), problems)),
        },
    }
}

/// The beginning of some bytes that is text.
pub(crate) fn readable(bytes: &[u8]) -> String {
    let sound = std::str::from_utf8(bytes).map_or_else(|error| error.valid_up_to(), str::len);
    String::from_utf8_lossy(&bytes[..sound]).into_owned()
}

/// Adds the rules of a folder, in the order of their names.
fn scripts(folder: &Folder, ruleset: &mut Ruleset, catalogue: Catalogue) -> Vec<Trouble> {
    let position = (ruleset.annexes.len() - 1) as u16;
    let mut troubles = Vec::new();
    for script in folder.scripts() {
        match rule(script, ruleset, catalogue) {
            Ok(rule) => ruleset.rules.push(Rule { annex: Some(position), ..rule }),
            // An annex that is given twice repeats all of its rules, and its card has been told so.
            Err(Wrong::Taken(at)) if same_name(ruleset, at) => {}
            Err(wrong) => {
                let (text, problems) = wrong.told(ruleset, script);
                troubles.push(Trouble { file: folder.path_of(&script.name), text, problems });
            }
        }
    }
    troubles
}

/// Why a script becomes no rule.
enum Wrong {
    /// What is wrong with its text, as far as it is one.
    Text(Option<String>, Vec<Problem>),
    /// The rule at a position has its name.
    Taken(usize),
}

impl Wrong {
    fn told(self, ruleset: &Ruleset, script: &Source) -> (Option<String>, Vec<Problem>) {
        match self {
            Wrong::Text(text, problems) => (text, problems),
            Wrong::Taken(at) => {
                let text = readable(script.bytes.as_deref().unwrap_or_default());
                let problem = taken(ruleset, &ruleset.rules[at], &text);
                (Some(text), vec![problem])
            }
        }
    }
}

/// Whether a rule belongs to an annex that has the name of the last one.
fn same_name(ruleset: &Ruleset, rule: usize) -> bool {
    let other = ruleset.rules[rule].annex.map(|at| &ruleset.annexes[usize::from(at)]);
    other.zip(ruleset.annexes.last()).is_some_and(|(other, last)| other.name == last.name)
}

fn rule(script: &Source, ruleset: &Ruleset, catalogue: Catalogue) -> Result<Rule, Wrong> {
    let alone = |why: String| Wrong::Text(None, vec![Problem::new(Span::default(), why)]);
    let bytes = script.bytes.as_deref().map_err(|why| alone(why.clone()))?;
    let text = std::str::from_utf8(bytes).map_err(|error| {
        let why = format!("byte {} does not belong to any character in UTF-8", error.valid_up_to());
        Wrong::Text(Some(readable(bytes)), vec![Problem::new(Span::default(), why)])
    })?;
    let rule = compile(&script.name, text, catalogue).map_err(|faults| {
        let problems = faults.into_iter().map(|fault| Problem::new(fault.span, fault.message)).collect();
        Wrong::Text(Some(text.to_owned()), problems)
    })?;
    ruleset.position(&rule.card.id).map_or(Ok(rule), |at| Err(Wrong::Taken(at)))
}

/// What to say of a rule whose name another one has.
fn taken(ruleset: &Ruleset, other: &Rule, text: &str) -> Problem {
    let quoted = format!("\"{}\"", other.card.id);
    let start = text.find(&quoted).unwrap_or(0);
    let whose = match other.annex {
        None => "among the built-in rules".to_owned(),
        by => format!("in the annex {}", ruleset.annex_name(by)),
    };
    let message = format!(
        "there is a rule {quoted} already, {whose}; give this one and its file a name of their own, or tighten the \
limits of that one on the card of the annex"
    );
    Problem::new(Span::new(start as u32, (start + quoted.len()) as u32), message)
}
