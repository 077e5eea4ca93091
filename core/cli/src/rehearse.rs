//! The job `rehearse`: annexes tried on their own examples, and on the designs in their folder `rehearsal`.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::Instant;

use haulout_annex::{CARD, EXPECTED_ENDING, Marked, REHEARSAL, expected};
use haulout_document::{Problem, Schema};
use haulout_engine::{Outcome as Said, Rule, Ruleset, Status};
use haulout_place::Span;
use haulout_rehearsal::{Observer, Rehearsed, Wanted, rehearse_before, rehearse_design};
use haulout_report::page::{problem_page, rehearsed_page};
use haulout_report::{Practised, Rehearsal, SEEN, Trial, Written, rehearsal_json, rehearsal_page};

use crate::annex;
use crate::args::Form;
use crate::document::Document;
use crate::files::read;
use crate::run::{Outcome, layout, printed, schema};

/// Rehearses some annexes together.
pub(crate) fn rehearse(folders: &[PathBuf], form: Form) -> Outcome {
    let ruleset = match annex::ruleset(folders) {
        Ok(ruleset) => ruleset,
        Err(faults) => return Outcome::impossible(faults.join("\n")),
    };
    let schema = schema();
    let begun = Instant::now();
    let clock = || begun.elapsed();
    let observer = Observer { clock: &clock, tell: &haulout_report::answer_in_numbers };
    let mut stage = Stage { ruleset: &ruleset, schema: &schema, observer, ..Stage::new(&ruleset, &schema) };
    for (position, folder) in folders.iter().enumerate() {
        let before = (stage.told.rules.len(), stage.told.designs.len(), stage.faults.len());
        stage.examples(folder, position as u16);
        stage.designs(folder, position as u16);
        if before == (stage.told.rules.len(), stage.told.designs.len(), stage.faults.len()) {
            stage.faults.push(nothing(folder));
        }
    }
    stage.end(form)
}

/// A rehearsal while it goes on.
struct Stage<'s> {
    ruleset: &'s Ruleset,
    schema: &'s Schema,
    observer: Observer<'s>,
    told: Rehearsal,
    seen: Vec<(usize, Said)>,
    /// What is not as marked, by file, each at its place.
    slips: BTreeMap<PathBuf, Vec<Problem>>,
    /// Pages of what cannot be used.
    faults: Vec<String>,
}

impl<'s> Stage<'s> {
    fn new(ruleset: &'s Ruleset, schema: &'s Schema) -> Self {
        Stage {
            ruleset,
            schema,
            observer: Observer::NONE,
            told: Rehearsal::default(),
            seen: Vec::new(),
            slips: BTreeMap::new(),
            faults: Vec::new(),
        }
    }

    /// The examples of the scripts of one annex.
    fn examples(&mut self, folder: &Path, annex: u16) {
        let of = &self.ruleset.annexes[usize::from(annex)];
        self.told.annexes.push(format!("{} {}", of.name, of.version));
        for (position, rule) in self.ruleset.rules.iter().enumerate().filter(|(_, r)| r.annex == Some(annex))
        {
            // A rule and its file have one name.
            let file = folder.join(format!("{}.rhai", rule.card.id));
            let text = read(&file).bytes.ok().and_then(|b| String::from_utf8(b).ok()).unwrap_or_default();
            let rehearsed = rehearse_before(&self.observer, rule, &self.ruleset.limits);
            let longest = rehearsed.iter().map(|r| r.took).max().unwrap_or_default();
            for one in rehearsed {
                let span = marked_in(&text, &one.shows);
                self.seen.extend(one.got.map(|got| (position, got)));
                let shows = one.shows.clone();
                self.trial(rule, &file, (shows, span), one);
            }
            self.told.rules.push(Practised {
                rule: rule.card.id.to_string(),
                never_seen: Vec::new(),
                microseconds: (longest.as_secs_f64() * 1e7).round() / 10.0,
            });
        }
    }

    fn trial(&mut self, rule: &Rule, file: &Path, (shows, span): (String, Span), one: Rehearsed) {
        if !one.problems.is_empty() {
            let numbers = if one.told.is_empty() { String::new() } else { format!(" ({})", one.told) };
            let message = format!("{shows}: {}{numbers}", one.problems.join("; "));
            self.slips.entry(file.to_owned()).or_default().push(Problem::new(span, message));
        }
        self.told.trials.push(Trial {
            rule: rule.card.id.to_string(),
            file: file.display().to_string(),
            shows,
            expected: haulout_rehearsal::outcome(one.expected).name(),
            got: one.got.map(Said::name),
            problems: one.problems,
        });
    }

    /// The designs in the folder `rehearsal` of one annex.
    fn designs(&mut self, folder: &Path, annex: u16) {
        let folder = folder.join(REHEARSAL);
        let Ok(entries) = std::fs::read_dir(&folder) else { return };
        let mut files: Vec<PathBuf> = entries.filter_map(|e| e.ok().map(|e| e.path())).collect();
        files.retain(|path| path.extension().is_some_and(|e| e == "json"));
        files.sort();
        let lists = |path: &Path| path.to_string_lossy().ends_with(EXPECTED_ENDING);
        for file in &files {
            let beside = if lists(file) { design_of(file) } else { list_of(file) };
            if !files.contains(&beside) {
                let what =
                    if lists(file) { "there is no design" } else { "nothing says what it must give; write" };
                self.faults.push(format!("{}: {what} {} beside it", file.display(), beside.display()));
            } else if !lists(file) {
                self.design(file, &beside, annex);
            }
        }
    }

    fn design(&mut self, file: &Path, list: &Path, annex: u16) {
        let (source, marks) = (read(file), read(list));
        let document = match &source.bytes {
            Ok(bytes) => Document::of(bytes, self.schema),
            Err(why) => return self.faults.push(format!("{}: {why}", source.name)),
        };
        let marked = match expected(&marks.name, &marks.bytes) {
            Ok(marked) => marked,
            Err(trouble) => return self.faults.push(annex::told(&trouble)),
        };
        let Some((tree, design)) = document.sound() else {
            let page = problem_page(&source.name, document.written(), &document.problems, layout());
            return self.faults.push(page.trim_end().to_owned() + "\n");
        };
        let wanted: Vec<Wanted> =
            marked.iter().map(|m| Wanted { rule: m.rule.clone(), example: m.example.clone() }).collect();
        let own = |rule: usize| self.ruleset.rules[rule].annex == Some(annex);
        let came = rehearse_design(&self.observer, self.ruleset, &own, (tree, design), &wanted);
        self.told.designs.push(source.name);
        self.seen.extend(came.seen.iter().map(|(rule, _, outcome)| (*rule, *outcome)));
        for (mark, one) in marked.iter().zip(came.wanted) {
            self.marked(list, mark, one);
        }
        for (rule, subject) in came.unlisted {
            let rule = &self.ruleset.rules[rule];
            let (id, message) = (&rule.card.id, "it falls short, and the list does not say so");
            let problem = Problem::new(Span::new(0, 1), format!("{id}, {subject}: {message}"));
            self.slips.entry(list.to_owned()).or_default().push(problem);
            self.told.trials.push(Trial {
                rule: id.to_string(),
                file: list.display().to_string(),
                shows: subject,
                expected: "nothing short",
                got: Some(Said::Short.name()),
                problems: vec![message.to_owned()],
            });
        }
    }

    fn marked(&mut self, list: &Path, mark: &Marked, one: Rehearsed) {
        match self.ruleset.position(&mark.rule) {
            Some(rule) => {
                let rule = &self.ruleset.rules[rule];
                let shows = format!("{}, {}", rule.card.id, mark.example.subject);
                self.trial(rule, list, (shows, mark.span), one);
            }
            None => {
                let near = self.ruleset.rules.iter().map(|r| &*r.card.id);
                let message =
                    format!("{}{}", one.problems.join("; "), haulout_script::nearest(&mark.rule, near));
                let trouble = haulout_annex::Trouble {
                    file: list.display().to_string(),
                    text: read(list).bytes.ok().and_then(|b| String::from_utf8(b).ok()),
                    problems: vec![Problem::new(mark.span, message)],
                };
                self.faults.push(annex::told(&trouble));
            }
        }
    }

    /// The page or the text for programs, and the status.
    fn end(mut self, form: Form) -> Outcome {
        let of = |rule: &str| self.ruleset.position(rule);
        for practised in &mut self.told.rules {
            let seen = |word: &str| {
                self.seen.iter().any(|(r, s)| Some(*r) == of(&practised.rule) && s.name() == word)
            };
            practised.never_seen = SEEN.into_iter().filter(|word| !seen(word)).collect();
        }
        let status = match (self.faults.is_empty(), self.told.holds()) {
            (false, _) => Status::Impossible,
            (true, false) => Status::Open,
            (true, true) => Status::Clear,
        };
        let slips = self.slips.iter_mut().map(|(file, problems)| {
            problems.sort_by_key(|p| p.span);
            let text = read(file).bytes.ok().and_then(|b| String::from_utf8(b).ok()).unwrap_or_default();
            let page = rehearsed_page(&file.display().to_string(), Written::Part(&text), problems, layout());
            page.trim_end().to_owned() + "\n\n"
        });
        let output = match form {
            Form::Json => printed(&rehearsal_json(&self.told)),
            Form::Terminal => slips.collect::<String>() + rehearsal_page(&self.told, layout().width).as_str(),
        };
        let remarks = self.faults.iter().map(|fault| fault.trim_end().to_owned() + "\n").collect();
        Outcome { output, remarks, status }
    }
}

/// What to say of an annex without scripts and without designs.
fn nothing(folder: &Path) -> String {
    let at = folder.display();
    format!(
        "{at}: there is nothing to rehearse: no script beside {CARD}, and no design in the folder {REHEARSAL}; scripts of \
folders inside the folder are not read"
    )
}

/// Where an example stands in its script: the words it shows.
fn marked_in(text: &str, shows: &str) -> Span {
    // Writing a string as JSON cannot fail.
    let quoted = serde_json::to_string(shows).unwrap_or_default();
    let start = text.find(&quoted).unwrap_or(0);
    Span::new(start as u32, (start + quoted.len()).min(text.len()) as u32)
}

fn list_of(design: &Path) -> PathBuf {
    let name = design.to_string_lossy();
    PathBuf::from(format!("{}{EXPECTED_ENDING}", name.trim_end_matches(".json")))
}

fn design_of(list: &Path) -> PathBuf {
    let name = list.to_string_lossy();
    PathBuf::from(format!("{}.json", name.trim_end_matches(EXPECTED_ENDING)))
}
