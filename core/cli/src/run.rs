//! The jobs: files in, text and an exit status out.

use std::io;
use std::path::PathBuf;

use haulout_document::Schema;
use haulout_engine::{Options, Ruleset, Status};
use haulout_report::page::Layout;
use haulout_report::{annexed_json, annexed_page, json};

use crate::annex;
use crate::args::{Args, Form, Job};
use crate::begin::begin;
use crate::beside::soon;
use crate::commissioning::commission;
use crate::drawing::draw;
use crate::files::{find, today};
use crate::help;
use crate::register::register;
use crate::rehearse::rehearse;
use crate::review::review_all;
use crate::sheet::sheet;
use crate::specification::Asked;

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

/// Does the job. What is long is written to `out` while it is worked out; the rest comes back.
///
/// # Errors
/// Whatever `out` refuses.
pub(crate) fn run(args: &Args, out: &mut dyn io::Write) -> io::Result<Outcome> {
    let outcome = match &args.job {
        Job::Review { paths, specification, stage, on, form, annex } => {
            let options = Options { stage: stage.map(|s| s.stage()), on: on.clone().unwrap_or_else(today) };
            let schema = soon(schema);
            match Asked::of(paths, annex, specification.as_deref()) {
                Ok(asked) => review_all(find(&asked.paths), schema, asked.ruleset(), &options, *form, out)?,
                Err(wrong) => Outcome::impossible(wrong.trim_end()),
            }
        }
        Job::Sheet { path, figure, subject, form, annex } => {
            sheet(path, figure.as_deref(), subject.as_deref(), annex, *form)
        }
        Job::Drawing { design, out, stage, on, annex } => {
            let options = Options { stage: stage.map(|s| s.stage()), on: on.clone().unwrap_or_else(today) };
            draw(design, out.as_deref(), annex, &options)
        }
        Job::Commissioning { design, form, annex } => commission(design, annex, *form),
        Job::Rulebook { id, form, annex } => rulebook(id.as_deref(), annex, *form),
        Job::Schema { name } => match haulout_schemas::by_name(name) {
            Some(text) => Outcome::of(text.to_owned()),
            None => {
                Outcome::impossible(format!("there is no schema \"{name}\"; there are {}", schema_names()))
            }
        },
        Job::Rehearse { annexes, form } => rehearse(annexes, *form),
        Job::Register { species, form } => register(species.as_deref(), *form),
        Job::Begin { what } => begin(what),
        Job::Completions { shell } => Outcome::of(help::completions(*shell)),
        Job::ManualPages { folder } => help::manual_pages(folder),
    };
    out.write_all(outcome.output.as_bytes())?;
    Ok(outcome)
}

fn schema_names() -> String {
    haulout_schemas::ALL.iter().map(|(name, _)| *name).collect::<Vec<_>>().join(", ")
}

/// The width and the colour of the terminal; 80 and none when nobody watches.
pub(crate) fn layout() -> Layout {
    use std::io::IsTerminal;
    let watched = std::io::stdout().is_terminal();
    let width = terminal_size::terminal_size().map_or(80, |(width, _)| usize::from(width.0));
    Layout { width: if watched { width.clamp(60, 120) } else { 80 }, colour: watched }
}

/// The published schema of designs.
pub(crate) fn schema() -> Schema {
    Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT)
}

pub(crate) fn printed(value: &serde_json::Value) -> String {
    serde_json::to_string_pretty(value).map_or_else(|_| String::new(), |text| text + "\n")
}

/// A machine format with what annexes changed; without annexes nothing is added.
pub(crate) fn with_annexes(mut value: serde_json::Value, ruleset: &Ruleset) -> serde_json::Value {
    if !ruleset.annexes.is_empty() {
        value["annexed"] = annexed_json(ruleset);
    }
    value
}

fn rulebook(id: Option<&str>, annexes: &[PathBuf], form: Form) -> Outcome {
    let ruleset = match annex::ruleset(annexes) {
        Ok(ruleset) => ruleset,
        Err(faults) => return Outcome::impossible(faults.join("\n")),
    };
    let rules = &ruleset.rules;
    let chosen: Vec<_> = rules.iter().filter(|r| id.is_none_or(|id| r.card.id == id)).cloned().collect();
    if chosen.is_empty() {
        let wrong = id.unwrap_or("");
        let near = haulout_script::nearest(wrong, rules.iter().map(|r| &*r.card.id));
        return Outcome::impossible(format!(
            "there is no rule \"{wrong}\"{near}; without one, rulebook lists them all"
        ));
    }
    let width = layout().width;
    Outcome::of(match (form, id) {
        (Form::Json, _) => printed(&with_annexes(json::rulebook(&chosen), &ruleset)),
        (Form::Terminal, None) => {
            annexed_page(&ruleset, width) + haulout_report::rule_list(&chosen, width).as_str()
        }
        (Form::Terminal, Some(_)) => chosen.iter().fold(annexed_page(&ruleset, width), |page, rule| {
            page + haulout_report::manual_page(&ruleset, rule, width).as_str()
        }),
    })
}
