//! The job `review`: many files in parallel, printed in the order of their names, so many at a time that memory stays flat.

use std::io;

use haulout_annex::digest;
use haulout_document::{Problem, Schema, Tree};
use haulout_engine::{Options, Overridden, Rule, Ruleset, Status, review_part};
use haulout_model::Design;
use haulout_place::Span;
use haulout_report::json::{self, Reviewed, Run};
use haulout_report::page::{Subject, page, problem_page};
use haulout_report::{Told, markdown, markdown_of_problems, tell, tell_for_page, tell_for_table};
use rayon::prelude::*;

use crate::args::ReviewForm;
use crate::beside::{Soon, both};
use crate::document::Document;
use crate::files::{Candidate, Found, has_edition, of_folder, read};
use crate::lookalike::looks_like;
use crate::progress::Progress;
use crate::run::{Outcome, layout};

/// Designs that are worked on before the first of them is printed.
const AT_ONCE: usize = 64;

/// Chapters a second thread takes where one file is reviewed alone: about half of the work. Which they are changes nothing but the
/// time it takes; most figures are asked for within one chapter.
const ASIDE: &[&str] = &["setting-out", "containment", "power", "basking"];

/// One design of a run, as far as it got.
struct Done {
    name: String,
    digest: String,
    stage: Option<&'static str>,
    /// None when the file could not be read at all; then there is one problem, which says why.
    document: Option<Document>,
    unread: Vec<Problem>,
    overridden: Vec<Overridden>,
    answers: Vec<Told>,
    status: Status,
}

impl Done {
    fn problems(&self) -> &[Problem] {
        self.document.as_ref().map_or(&self.unread, |document| &document.problems)
    }

    fn told(&self) -> Reviewed<'_> {
        Reviewed {
            file: self.name.clone(),
            digest: self.digest.clone(),
            stage: self.stage,
            overridden: self.overridden.clone(),
            text: self.document.as_ref().map(Document::written),
            problems: self.problems(),
            answers: &self.answers,
        }
    }
}

/// What rules say of a design.
struct Answered {
    stage: &'static str,
    told: Vec<Told>,
    status: Status,
}

/// What a run is made with.
struct Desk<'r> {
    schema: Soon<Schema>,
    ruleset: Ruleset,
    options: &'r Options,
    form: ReviewForm,
}

/// Reviews what was found and prints it.
///
/// # Errors
/// Whatever `out` refuses.
pub(crate) fn review_all(
    found: Found,
    schema: Soon<Schema>,
    ruleset: Result<Ruleset, Vec<String>>,
    options: &Options,
    form: ReviewForm,
    out: &mut dyn io::Write,
) -> io::Result<Outcome> {
    let desk = match ruleset {
        Ok(ruleset) => Desk { schema, ruleset, options, form },
        Err(faults) => return Ok(Outcome::impossible(faults.join("\n"))),
    };
    let progress = Progress::new(found.files.len());
    let (mut counts, mut statuses) = (vec![(0, 0); found.folders.len()], Vec::new());
    let mut remarks = found.remarks;
    let mut status = if remarks.is_empty() { Status::Clear } else { Status::Impossible };
    desk.open(out)?;
    for some in found.files.chunks(AT_ONCE) {
        // The threads of a whole crew take as long to start as one file takes to review.
        let done: Vec<Option<Done>> = match some {
            [only] => vec![desk.one(only, true, &progress)],
            _ => some.par_iter().map(|candidate| desk.one(candidate, false, &progress)).collect(),
        };
        progress.clear();
        for (candidate, done) in some.iter().zip(done) {
            count(&mut counts, candidate, done.is_some());
            let Some(done) = done else { continue };
            desk.print(&done, statuses.len(), out)?;
            remarks.extend(done.unread.iter().map(|why| format!("{}: {}", done.name, why.message)));
            statuses.push(done.status);
        }
    }
    desk.close(&statuses, out)?;
    for (folder, (designs, others)) in found.folders.iter().zip(counts) {
        status = status.max(if designs == 0 { Status::Impossible } else { Status::Clear });
        remarks.extend(of_folder(folder, designs, others));
    }
    status = statuses.into_iter().fold(status, Status::max);
    let remarks = remarks.into_iter().map(|r| r + "\n").collect();
    Ok(Outcome { output: String::new(), remarks, status })
}

fn count(counts: &mut [(usize, usize)], candidate: &Candidate, design: bool) {
    if let Some(folder) = candidate.folder {
        let (designs, others) = &mut counts[folder];
        *(if design { designs } else { others }) += 1;
    }
}

impl Desk<'_> {
    /// One file, alone or among others; none when it lies in a folder and is no design.
    fn one(&self, candidate: &Candidate, alone: bool, progress: &Progress) -> Option<Done> {
        let file = read(&candidate.path);
        let bytes = file.bytes.and_then(|bytes| looks_like(&bytes).map_or(Ok(bytes), Err));
        // What cannot be read is not passed over: it may be a design.
        let other = candidate.folder.is_some() && bytes.as_ref().is_ok_and(|bytes| !has_edition(bytes));
        let done = (!other).then(|| self.reviewed(file.name, bytes, alone));
        progress.one_more();
        done
    }

    fn reviewed(&self, name: String, bytes: Result<Vec<u8>, String>, alone: bool) -> Done {
        let mut done = Done {
            name,
            digest: String::new(),
            stage: None,
            document: None,
            unread: Vec::new(),
            overridden: Vec::new(),
            answers: Vec::new(),
            status: Status::Impossible,
        };
        match bytes {
            Err(why) => done.unread.push(Problem::new(Span::default(), why)),
            Ok(bytes) => {
                done.digest = digest(&bytes);
                let document = Document::read(&bytes).held_to(&self.schema);
                if let Some((tree, design)) = document.sound() {
                    let answered =
                        if alone { self.halved(tree, design) } else { self.answered(tree, design, |_| true) };
                    done.stage = Some(answered.stage);
                    done.overridden = self.ruleset.overridden(design, answered.stage);
                    done.answers = answered.told;
                    done.status = answered.status;
                }
                done.document = Some(document);
            }
        }
        done
    }

    /// What some of the rules say of a design.
    fn answered(&self, tree: &Tree, design: &Design, wanted: impl Fn(&Rule) -> bool) -> Answered {
        let review = review_part(design, &self.ruleset, &[], self.options, wanted);
        let told = match self.form {
            ReviewForm::Json => tell(&review, tree),
            ReviewForm::Terminal => tell_for_page(&review, tree),
            ReviewForm::Markdown => tell_for_table(&review, tree),
        };
        Answered { stage: review.stage.name(), told, status: review.status() }
    }

    /// What all of them say, half by half.
    fn halved(&self, tree: &Tree, design: &Design) -> Answered {
        let aside = |rule: &Rule| ASIDE.contains(&&*rule.card.chapter);
        let (other, mut all) =
            both(|| self.answered(tree, design, aside), || self.answered(tree, design, |rule| !aside(rule)));
        all.told.extend(other.told);
        all.told.sort_by_key(|told| told.rule);
        Answered { status: all.status.max(other.status), ..all }
    }

    /// What stands before the designs.
    fn open(&self, out: &mut dyn io::Write) -> io::Result<()> {
        if self.form != ReviewForm::Json {
            return Ok(());
        }
        let digest = digest(self.ruleset.substance().as_bytes());
        let run = Run { on: &self.options.on, ruleset: &self.ruleset, digest: &digest };
        let whole = serde_json::to_string_pretty(&json::review(&run, &[]))?;
        // The list of designs is the last member and empty here; it is filled design by design.
        out.write_all(whole.trim_end_matches(['}', '\n', ']']).as_bytes())
    }

    fn print(&self, done: &Done, before: usize, out: &mut dyn io::Write) -> io::Result<()> {
        match self.form {
            ReviewForm::Json => {
                let text = serde_json::to_string_pretty(&json::design(&self.ruleset, &done.told()))?;
                let comma = if before > 0 { "," } else { "" };
                write!(out, "{comma}\n    {}", text.replace('\n', "\n    "))
            }
            ReviewForm::Terminal | ReviewForm::Markdown => {
                let Some(text) = self.text(done) else { return Ok(()) };
                let line = if self.form == ReviewForm::Markdown {
                    "---".to_owned()
                } else {
                    "-".repeat(layout().width)
                };
                let between = if before > 0 { format!("\n{line}\n\n") } else { String::new() };
                write!(out, "{between}{text}")
            }
        }
    }

    /// The page of a design; a file that could not be read has none on the terminal, it is remarked on.
    fn text(&self, done: &Done) -> Option<String> {
        let marked = self.form == ReviewForm::Markdown;
        let sound = done.document.as_ref().and_then(Document::sound);
        let Some((tree, design)) = sound else {
            let written = done.document.as_ref().map(Document::written);
            return match written {
                _ if marked => Some(markdown_of_problems(&done.name, written, done.problems())),
                Some(written) => Some(problem_page(&done.name, written, done.problems(), layout())),
                None => None,
            };
        };
        let subject = Subject {
            file: &done.name,
            tree,
            design,
            stage: done.stage.unwrap_or_default(),
            on: &self.options.on,
            ruleset: &self.ruleset,
            answers: &done.answers,
        };
        Some(if marked { markdown(&subject) } else { page(&subject, layout()) })
    }

    /// What stands after the designs.
    fn close(&self, statuses: &[Status], out: &mut dyn io::Write) -> io::Result<()> {
        match self.form {
            ReviewForm::Json if statuses.is_empty() => out.write_all(b"]\n}\n"),
            ReviewForm::Json => out.write_all(b"\n  ]\n}\n"),
            ReviewForm::Markdown => Ok(()),
            ReviewForm::Terminal if statuses.len() < 2 => Ok(()),
            ReviewForm::Terminal => {
                let of = |wanted: Status| statuses.iter().filter(|s| **s == wanted).count();
                writeln!(
                    out,
                    "\n{} designs: {} clear, {} open, {} not reviewed",
                    statuses.len(),
                    of(Status::Clear),
                    of(Status::Open),
                    of(Status::Impossible)
                )
            }
        }
    }
}
