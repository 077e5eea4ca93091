//! The jobs: files in, text and an exit status out.

use std::fmt::Write;
use std::path::Path;

use haulout_document::{Limits, Problem, Schema, Tree};
use haulout_engine::{Options, Ruleset, Status, review};
use haulout_model::Design;
use haulout_report::json::{self, Reviewed, Run};
use haulout_report::page::{Layout, Subject, page, problem_page};
use haulout_report::{Told, figured, tell};
use haulout_sheet::Book;
use rayon::prelude::*;

use crate::args::{Args, Form, Job};
use crate::files::{File, Found, digest, find, read, today};

/// What a job came to.
pub(crate) struct Outcome {
    pub(crate) output: String,
    pub(crate) remarks: String,
    pub(crate) status: Status,
}

impl Outcome {
    fn impossible(remark: impl Into<String>) -> Self {
        Outcome { output: String::new(), remarks: format!("{}\n", remark.into()), status: Status::Impossible }
    }

    fn of(output: String) -> Self {
        Outcome { output, remarks: String::new(), status: Status::Clear }
    }
}

pub(crate) fn run(args: &Args) -> Outcome {
    match &args.job {
        Job::Review { paths, stage, on, form } => {
            let options = Options { stage: stage.map(|s| s.stage()), on: on.clone().unwrap_or_else(today) };
            review_all(find(paths), &options, *form)
        }
        Job::Sheet { path, figure, subject, form } => sheet(path, figure.as_deref(), subject.as_deref(), *form),
        Job::Rulebook { id, form } => rulebook(id.as_deref(), *form),
        Job::Schema { name } => match haulout_schemas::by_name(name) {
            Some(text) => Outcome::of(text.to_owned()),
            None => Outcome::impossible(format!("there is no schema \"{name}\"; there are {}", schema_names())),
        },
    }
}

fn schema_names() -> String {
    haulout_schemas::ALL.iter().map(|(name, _)| *name).collect::<Vec<_>>().join(", ")
}

/// The width and the colour of the terminal; 80 and none when nobody watches.
fn layout() -> Layout {
    use std::io::IsTerminal;
    let watched = std::io::stdout().is_terminal();
    let width = std::env::var("COLUMNS").ok().and_then(|c| c.parse().ok()).unwrap_or(80);
    Layout { width: if watched { usize::clamp(width, 60, 120) } else { 80 }, colour: watched }
}

/// A document read and held to its schema.
struct Document {
    tree: Option<Tree>,
    design: Option<Design>,
    problems: Vec<Problem>,
}

fn document(bytes: &[u8], schema: &Schema) -> Document {
    let reading = haulout_document::read(bytes, &Limits::default());
    let mut problems = reading.problems;
    let Some(tree) = reading.tree else { return Document { tree: None, design: None, problems } };
    let of_shape = schema.check(&tree);
    let (design, of_model) = haulout_model::read(&tree);
    // One place, one problem: what the schema has said of a place the model does not say again.
    let new = of_model.into_iter().filter(|p| !of_shape.iter().any(|s| s.span.holds(p.span) || p.span.holds(s.span)));
    problems.extend(new.collect::<Vec<_>>());
    problems.extend(of_shape);
    problems.sort_by_key(|p| p.span);
    Document { tree: Some(tree), design: Some(design), problems }
}

/// One design of a run, as far as it got.
struct Done {
    name: String,
    digest: String,
    stage: Option<&'static str>,
    document: Document,
    answers: Vec<Told>,
    status: Status,
    /// Why the file could not be read at all.
    unread: Option<String>,
}

fn review_all(found: Found, options: &Options, form: Form) -> Outcome {
    let schema = match Schema::compile(haulout_schemas::DESIGN) {
        Ok(schema) => schema,
        Err(fault) => return Outcome::impossible(format!("the published schema of designs cannot be used: {fault}")),
    };
    let ruleset = Ruleset::new(haulout_rules::built_in());
    let done: Vec<Done> = found.files.into_par_iter().map(|file| one(file, &schema, &ruleset, options)).collect();
    let worst = done.iter().map(|d| d.status).max().unwrap_or(Status::Clear);
    let status = if found.lacking { Status::Impossible } else { worst };
    let output = match form {
        Form::Json => as_json(&done, &ruleset, options),
        Form::Terminal => as_pages(&done, &ruleset, options),
    };
    let unread = done.iter().filter_map(|d| Some(format!("{}: {}", d.name, d.unread.as_ref()?)));
    let remarks: String = found.remarks.into_iter().chain(unread).map(|r| format!("{r}\n")).collect();
    Outcome { output, remarks, status }
}

fn one(file: File, schema: &Schema, ruleset: &Ruleset, options: &Options) -> Done {
    let nothing = Document { tree: None, design: None, problems: Vec::new() };
    let mut done = Done {
        name: file.name,
        digest: String::new(),
        stage: None,
        document: nothing,
        answers: Vec::new(),
        status: Status::Impossible,
        unread: None,
    };
    match file.bytes {
        Err(why) => done.unread = Some(why),
        Ok(bytes) => {
            done.digest = digest(&bytes);
            done.document = document(&bytes, schema);
            if let (Some(tree), Some(design), true) =
                (&done.document.tree, &done.document.design, done.document.problems.is_empty())
            {
                let review = review(design, ruleset, &[], options);
                done.stage = Some(review.stage.name());
                done.answers = tell(&review, tree);
                done.status = review.status();
            }
        }
    }
    done
}

fn as_json(done: &[Done], ruleset: &Ruleset, options: &Options) -> String {
    let digest = digest(ruleset.substance().as_bytes());
    let run = Run { on: &options.on, ruleset, digest: &digest };
    let mut unread = Vec::new();
    for d in done {
        let span = haulout_place_span();
        unread.push(d.unread.iter().map(|why| Problem::new(span, why.clone())).collect::<Vec<_>>());
    }
    let designs: Vec<Reviewed<'_>> = done
        .iter()
        .zip(&unread)
        .map(|(d, unread)| Reviewed {
            file: d.name.clone(),
            digest: d.digest.clone(),
            stage: d.stage,
            tree: d.document.tree.as_ref(),
            problems: if unread.is_empty() { &d.document.problems } else { unread },
            answers: &d.answers,
        })
        .collect();
    printed(&json::review(&run, &designs))
}

/// Where a file that could not be read is at fault: nowhere in particular.
const fn haulout_place_span() -> haulout_place::Span {
    haulout_place::Span::new(0, 0)
}

fn printed(value: &serde_json::Value) -> String {
    serde_json::to_string_pretty(value).map_or_else(|_| String::new(), |text| text + "\n")
}

fn as_pages(done: &[Done], ruleset: &Ruleset, options: &Options) -> String {
    let layout = layout();
    let pages: Vec<String> = done.iter().filter(|d| d.unread.is_none()).map(|d| one_page(d, ruleset, options, layout)).collect();
    pages.join(&format!("\n{}\n\n", "-".repeat(layout.width)))
}

fn one_page(done: &Done, ruleset: &Ruleset, options: &Options, layout: Layout) -> String {
    match (&done.document.tree, &done.document.design) {
        (Some(tree), Some(design)) if done.document.problems.is_empty() => page(
            &Subject {
                file: &done.name,
                tree,
                design,
                stage: done.stage.unwrap_or_default(),
                on: &options.on,
                ruleset,
                answers: &done.answers,
            },
            layout,
        ),
        _ => problem_page(&done.name, done.document.tree.as_ref(), &done.document.problems, layout),
    }
}

fn sheet(path: &Path, figure: Option<&str>, subject: Option<&str>, form: Form) -> Outcome {
    let known = haulout_figures::CATALOGUE.iter().any(|f| figure.is_none_or(|id| f.card().id == id));
    if !known {
        let ids: Vec<&str> = haulout_figures::CATALOGUE.iter().map(|f| f.card().id).collect();
        return Outcome::impossible(format!("there is no figure \"{}\"; there are {}", figure.unwrap_or(""), ids.join(", ")));
    }
    let file = read(path);
    let bytes = match file.bytes {
        Ok(bytes) => bytes,
        Err(why) => return Outcome::impossible(format!("{}: {why}", file.name)),
    };
    let Ok(schema) = Schema::compile(haulout_schemas::DESIGN) else {
        return Outcome::impossible("the published schema of designs cannot be used");
    };
    let document = document(&bytes, &schema);
    let (Some(tree), Some(design), true) = (&document.tree, &document.design, document.problems.is_empty()) else {
        let page = problem_page(&file.name, document.tree.as_ref(), &document.problems, layout());
        return Outcome { output: page, remarks: String::new(), status: Status::Impossible };
    };
    let limits = haulout_sheet::Limits::default();
    let book = Book::new(design, &limits, &[]);
    let wanted = |id: &str, key: &str| figure.is_none_or(|f| f == id) && subject.is_none_or(|s| s == key);
    let figures = figured(&book, tree, haulout_figures::CATALOGUE, &wanted);
    if figures.is_empty() {
        return Outcome::impossible(format!("{}: there is nothing of that kind in the design", file.name));
    }
    Outcome::of(match form {
        Form::Json => printed(&json::sheet(&figures)),
        Form::Terminal => haulout_report::sheet_page(&figures, layout().width),
    })
}

fn rulebook(id: Option<&str>, form: Form) -> Outcome {
    let rules = haulout_rules::built_in();
    let chosen: Vec<_> = rules.iter().filter(|r| id.is_none_or(|id| r.card.id == id)).cloned().collect();
    if chosen.is_empty() {
        let ids: Vec<&str> = rules.iter().map(|r| &*r.card.id).collect();
        return Outcome::impossible(format!("there is no rule \"{}\"; there are {}", id.unwrap_or(""), ids.join(", ")));
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
