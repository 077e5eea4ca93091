//! The jobs: files in, text and an exit status out.

use std::fmt::Write;
use std::path::PathBuf;

use haulout_document::{Problem, Schema};
use haulout_engine::{Options, Ruleset, Status, review};
use haulout_place::Span;
use haulout_report::json::{self, Reviewed, Run};
use haulout_report::page::{Layout, Subject, page, problem_page};
use haulout_report::{Told, tell};
use rayon::prelude::*;

use crate::annex;
use crate::args::{Args, Form, Job};
use crate::document::Document;
use crate::files::{File, Found, digest, find, today};
use crate::sheet::sheet;

/// What a job came to.
pub(crate) struct Outcome {
    pub(crate) output: String,
    pub(crate) remarks: String,
    pub(crate) status: Status,
}

impl Outcome {
    pub(crate) fn impossible(remark: impl Into<String>) -> Self {
        Outcome { output: String::new(), remarks: format!("{}\n", remark.into()), status: Status::Impossible }
    }

    pub(crate) fn of(output: String) -> Self {
        Outcome { output, remarks: String::new(), status: Status::Clear }
    }
}

pub(crate) fn run(args: &Args) -> Outcome {
    match &args.job {
        Job::Review { paths, stage, on, form, annex } => {
            let options = Options { stage: stage.map(|s| s.stage()), on: on.clone().unwrap_or_else(today) };
            review_all(find(paths), annex, &options, *form)
        }
        Job::Sheet { path, figure, subject, form } => {
            sheet(path, figure.as_deref(), subject.as_deref(), *form)
        }
        Job::Rulebook { id, form } => rulebook(id.as_deref(), *form),
        Job::Schema { name } => match haulout_schemas::by_name(name) {
            Some(text) => Outcome::of(text.to_owned()),
            None => {
                Outcome::impossible(format!("there is no schema \"{name}\"; there are {}", schema_names()))
            }
        },
    }
}

fn schema_names() -> String {
    haulout_schemas::ALL.iter().map(|(name, _)| *name).collect::<Vec<_>>().join(", ")
}

/// The width and the colour of the terminal; 80 and none when nobody watches.
pub(crate) fn layout() -> Layout {
    use std::io::IsTerminal;
    let watched = std::io::stdout().is_terminal();
    let width = std::env::var("COLUMNS").ok().and_then(|c| c.parse().ok()).unwrap_or(80);
    Layout { width: if watched { usize::clamp(width, 60, 120) } else { 80 }, colour: watched }
}

/// The published schema of designs.
pub(crate) fn schema() -> Result<Schema, String> {
    Schema::trusted(haulout_schemas::DESIGN)
        .map_err(|fault| format!("the published schema of designs cannot be used: {fault}"))
}

/// One design of a run, as far as it got.
struct Done {
    name: String,
    digest: String,
    stage: Option<&'static str>,
    /// None when the file could not be read at all; then there is one problem, which says why.
    document: Option<Document>,
    unread: Vec<Problem>,
    answers: Vec<Told>,
    status: Status,
}

impl Done {
    fn problems(&self) -> &[Problem] {
        self.document.as_ref().map_or(&self.unread, |document| &document.problems)
    }
}

fn review_all(found: Found, annexes: &[PathBuf], options: &Options, form: Form) -> Outcome {
    let (schema, ruleset) = match (schema(), annex::ruleset(annexes)) {
        (Ok(schema), Ok(ruleset)) => (schema, ruleset),
        (Err(fault), _) => return Outcome::impossible(fault),
        (_, Err(faults)) => return Outcome::impossible(faults.join("\n")),
    };
    let done: Vec<Done> =
        found.files.into_par_iter().map(|file| one(file, &schema, &ruleset, options)).collect();
    let worst = done.iter().map(|d| d.status).max().unwrap_or(Status::Clear);
    let status = if found.lacking { Status::Impossible } else { worst };
    let output = match form {
        Form::Json => as_json(&done, &ruleset, options),
        Form::Terminal => as_pages(&done, &ruleset, options),
    };
    let unread = done.iter().flat_map(|d| d.unread.iter().map(|why| format!("{}: {}", d.name, why.message)));
    let remarks: String = found.remarks.into_iter().chain(unread).map(|r| format!("{r}\n")).collect();
    Outcome { output, remarks, status }
}

fn one(file: File, schema: &Schema, ruleset: &Ruleset, options: &Options) -> Done {
    let mut done = Done {
        name: file.name,
        digest: String::new(),
        stage: None,
        document: None,
        unread: Vec::new(),
        answers: Vec::new(),
        status: Status::Impossible,
    };
    match file.bytes {
        Err(why) => done.unread.push(Problem::new(Span::default(), why)),
        Ok(bytes) => {
            done.digest = digest(&bytes);
            let document = Document::of(&bytes, schema);
            if let Some((tree, design)) = document.sound() {
                let review = review(design, ruleset, &[], options);
                done.stage = Some(review.stage.name());
                done.answers = tell(&review, tree);
                done.status = review.status();
            }
            done.document = Some(document);
        }
    }
    done
}

fn as_json(done: &[Done], ruleset: &Ruleset, options: &Options) -> String {
    let digest = digest(ruleset.substance().as_bytes());
    let run = Run { on: &options.on, ruleset, digest: &digest };
    let designs: Vec<Reviewed<'_>> = done
        .iter()
        .map(|d| Reviewed {
            file: d.name.clone(),
            digest: d.digest.clone(),
            stage: d.stage,
            text: d.document.as_ref().map(Document::written),
            problems: d.problems(),
            answers: &d.answers,
        })
        .collect();
    printed(&json::review(&run, &designs))
}

pub(crate) fn printed(value: &serde_json::Value) -> String {
    serde_json::to_string_pretty(value).map_or_else(|_| String::new(), |text| text + "\n")
}

fn as_pages(done: &[Done], ruleset: &Ruleset, options: &Options) -> String {
    let layout = layout();
    let pages: Vec<String> = done
        .iter()
        .filter_map(|d| Some(one_page(d, d.document.as_ref()?, ruleset, options, layout)))
        .collect();
    pages.join(&format!("\n{}\n\n", "-".repeat(layout.width)))
}

fn one_page(
    done: &Done,
    document: &Document,
    ruleset: &Ruleset,
    options: &Options,
    layout: Layout,
) -> String {
    let Some((tree, design)) = document.sound() else {
        return problem_page(&done.name, document.written(), &document.problems, layout);
    };
    let subject = Subject {
        file: &done.name,
        tree,
        design,
        stage: done.stage.unwrap_or_default(),
        on: &options.on,
        ruleset,
        answers: &done.answers,
    };
    page(&subject, layout)
}

fn rulebook(id: Option<&str>, form: Form) -> Outcome {
    let rules = haulout_rules::built_in();
    let chosen: Vec<_> = rules.iter().filter(|r| id.is_none_or(|id| r.card.id == id)).cloned().collect();
    if chosen.is_empty() {
        let ids: Vec<&str> = rules.iter().map(|r| &*r.card.id).collect();
        return Outcome::impossible(format!(
            "there is no rule \"{}\"; there are {}",
            id.unwrap_or(""),
            ids.join(", ")
        ));
    }
    let mut output = String::new();
    match (form, id) {
        (Form::Json, _) => output = printed(&json::rulebook(&chosen)),
        (Form::Terminal, None) => output = haulout_report::rule_list(&chosen, layout().width),
        (Form::Terminal, Some(_)) => {
            for rule in &chosen {
                // Writing to a String cannot fail.
                let _ = write!(output, "{}", haulout_report::manual_page(rule, layout().width));
            }
        }
    }
    Outcome::of(output)
}
