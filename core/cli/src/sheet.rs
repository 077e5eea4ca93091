//! The job `sheet`: what one design amounts to.

use std::path::{Path, PathBuf};

use haulout_engine::Ruleset;
use haulout_figures::startup::course::COURSE;
use haulout_report::course::{Water, course_json, course_page, waters};
use haulout_report::drawing::course::chart;
use haulout_report::page::problem_page;
use haulout_report::{Figured, annexed_page, figured, json};
use haulout_sheet::Book;

use crate::annex;
use crate::args::SheetForm;
use crate::document::Document;
use crate::files::read;
use crate::lookalike::looks_like;
use crate::run::{Outcome, layout, printed, schema, with_annexes};

/// Works the figures asked for.
pub(crate) fn sheet(
    path: &Path,
    figure: Option<&str>,
    subject: Option<&str>,
    annexes: &[PathBuf],
    form: SheetForm,
) -> Outcome {
    let course = figure == Some(COURSE.card.id);
    if form == SheetForm::Svg && !course {
        return Outcome::impossible(format!(
            "only the start-up is drawn as a chart: haulout sheet {} {} --as svg",
            path.display(),
            COURSE.card.id
        ));
    }
    if let Some(wrong) =
        figure.filter(|id| !course && haulout_figures::CATALOGUE.iter().all(|f| f.card().id != *id))
    {
        let near = haulout_script::nearest(wrong, haulout_figures::CATALOGUE.iter().map(|f| f.card().id));
        return Outcome::impossible(format!(
            "there is no figure \"{wrong}\"{near}; without one, sheet shows all there are"
        ));
    }
    let file = read(path);
    let bytes = file.bytes.and_then(|bytes| looks_like(&bytes).map_or(Ok(bytes), Err));
    match (bytes, annex::ruleset(annexes)) {
        (Err(why), _) => Outcome::impossible(format!("{}: {why}", file.name)),
        (_, Err(faults)) => Outcome::impossible(faults.join("\n")),
        (Ok(bytes), Ok(ruleset)) => of_document(&file.name, &bytes, &ruleset, (figure, subject), form),
    }
}

fn of_document(
    name: &str,
    bytes: &[u8],
    ruleset: &Ruleset,
    (figure, subject): (Option<&str>, Option<&str>),
    form: SheetForm,
) -> Outcome {
    let document = Document::of(bytes, &schema());
    let Some((tree, design)) = document.sound() else {
        // Where a program reads the output, nothing may stand there that is no JSON.
        let page = problem_page(name, document.written(), &document.problems, layout());
        return Outcome::impossible(page.trim_end());
    };
    let book = Book::new(design, &ruleset.limits, &[]);
    if figure == Some(COURSE.card.id) {
        return of_course(name, waters(&book, tree), subject, ruleset, form);
    }
    let wanted = |id: &str, key: &str| figure.is_none_or(|f| f == id) && subject.is_none_or(|s| s == key);
    let figures = figured(&book, tree, haulout_figures::CATALOGUE, &wanted);
    if figures.is_empty() {
        let all = figured(&book, tree, haulout_figures::CATALOGUE, &|id, _| figure.is_none_or(|f| f == id));
        return Outcome::impossible(format!("{name}: {}", nothing(&all, subject)));
    }
    Outcome::of(match form {
        SheetForm::Json => printed(&with_annexes(json::sheet(&figures), ruleset)),
        SheetForm::Terminal | SheetForm::Svg => {
            annexed_page(ruleset, layout().width)
                + haulout_report::sheet_page(&figures, layout().width).as_str()
        }
    })
}

/// The start-up of the waters of a design; one chart shows one water.
fn of_course(
    name: &str,
    mut waters: Vec<Water>,
    subject: Option<&str>,
    ruleset: &Ruleset,
    form: SheetForm,
) -> Outcome {
    if waters.is_empty() {
        return Outcome::impossible(format!(
            "{name}: no stocking step brings animals to a water of this design"
        ));
    }
    if let Some(wrong) = subject.filter(|key| waters.iter().all(|water| water.key != *key)) {
        let keys: Vec<&str> = waters.iter().map(|water| water.key.as_str()).collect();
        return Outcome::impossible(format!(
            "{name}: no start-up is told for \"{wrong}\"; a water goes by the pool that says most of it, here {}",
            keys.join(", ")
        ));
    }
    waters.retain(|water| subject.is_none_or(|key| water.key == key));
    match form {
        SheetForm::Json => Outcome::of(printed(&with_annexes(course_json(&waters), ruleset))),
        SheetForm::Terminal => {
            Outcome::of(annexed_page(ruleset, layout().width) + course_page(&waters).as_str())
        }
        SheetForm::Svg => charted(name, &waters),
    }
}

fn charted(name: &str, waters: &[Water]) -> Outcome {
    let Some((drawn, started)) =
        waters.iter().find_map(|water| water.course.as_ref().ok().map(|c| (water, c)))
    else {
        return Outcome::impossible(format!("{name}: {}", course_page(waters).trim_end()));
    };
    let others: Vec<&str> =
        waters.iter().filter(|water| water.key != drawn.key).map(|water| water.key.as_str()).collect();
    let remarks = if others.is_empty() {
        String::new()
    } else {
        format!("{name}: drawn for {}; --subject draws {}\n", drawn.key, others.join(", "))
    };
    Outcome { remarks, ..Outcome::of(chart(started)) }
}

/// Why nothing came out, and what there is instead.
fn nothing(all: &[Figured], subject: Option<&str>) -> String {
    let mut keys: Vec<&str> = all.iter().map(|f| f.subject.as_str()).collect();
    keys.dedup();
    match subject {
        Some(wrong) if !keys.is_empty() => {
            format!("there is no subject \"{wrong}\" for it; there are {}", keys.join(", "))
        }
        _ => "the design holds nothing that this figure is about".to_owned(),
    }
}
