//! The job `begin`: a first design from a few answers, asked on a terminal or given as options.

use std::io::{BufRead, IsTerminal, Write};
use std::path::{Path, PathBuf};

use clap::{Args, Subcommand};
use haulout_register::Authority;

use crate::answers::{self, Answers, Group, Hall, Units};
use crate::args::StageWord;
use crate::document::Document;
use crate::first_annex::begin_annex;
use crate::help;
use crate::run::{Outcome, schema};

/// What can be begun.
#[derive(Debug, Subcommand)]
pub(crate) enum Begin {
    /// Write a first design; without options six questions are asked.
    #[command(after_long_help = help::BEGIN)]
    Design(FirstDesign),
    /// Write a first annex: its card, and one rule with its card and examples, to be changed into your own.
    #[command(after_long_help = help::BEGIN_ANNEX)]
    Annex {
        /// The folder to make.
        folder: PathBuf,
    },
}

/// The answers as options.
#[derive(Debug, Args)]
pub(crate) struct FirstDesign {
    /// The file to write.
    #[arg(default_value = "design.json")]
    file: PathBuf,
    /// What the enclosure is called.
    #[arg(long)]
    title: Option<String>,
    /// Length and breadth of the hall, such as "8 m x 5 m".
    #[arg(long, value_name = "SIZE", value_parser = answers::hall)]
    hall: Option<Hall>,
    /// Key or Latin name of a species; may be given several times.
    #[arg(long, value_name = "KEY", value_parser = answers::species)]
    species: Vec<String>,
    /// How many of it: males.females.unsexed; once a species, in the same order.
    #[arg(long, value_name = "COUNT", value_parser = answers::sexes, requires = "species")]
    sexes: Vec<String>,
    /// Depth of the water.
    #[arg(long, value_parser = answers::depth)]
    depth: Option<String>,
    /// How far the project has got.
    #[arg(long, value_enum)]
    stage: Option<StageWord>,
    /// Id of an authority the design is held to; may be given several times.
    #[arg(long, value_name = "ID", value_parser = answers::authority)]
    held_to: Vec<&'static Authority>,
    /// Units of the drawing; those of the hall if left out.
    #[arg(long, value_enum)]
    units: Option<Units>,
    /// Write over a file that is there already.
    #[arg(long)]
    replace: bool,
}

/// The schema that an editor finds beside the design.
const SCHEMA_FILE: &str = "haulout-design.schema.json";

/// Begins it.
pub(crate) fn begin(what: &Begin) -> Outcome {
    match what {
        Begin::Design(options) => begin_design(options),
        Begin::Annex { folder } => begin_annex(folder),
    }
}

fn begin_design(options: &FirstDesign) -> Outcome {
    if options.file.exists() && !options.replace {
        let name = options.file.display();
        return Outcome::impossible(format!(
            "{name} is there already; choose another name, or say --replace"
        ));
    }
    let answers = match gathered(options) {
        Ok(answers) => answers,
        Err(why) => return Outcome::impossible(why),
    };
    let text = answers::design(&answers, SCHEMA_FILE);
    match sound(&text).and_then(|()| write(options, &text)) {
        Ok(beside) => Outcome::of(told(&options.file, beside, &answers)),
        Err(why) => Outcome::impossible(why),
    }
}

/// From the options; from the terminal when there is not one of them.
fn gathered(options: &FirstDesign) -> Result<Answers, String> {
    if options.sexes.len() > options.species.len() {
        return Err(
            "there are more --sexes than --species; give one count a species, in the same order".to_owned()
        );
    }
    let groups = options.species.iter().enumerate();
    let groups = groups.map(|(at, s)| Group { species: s.clone(), sexes: options.sexes.get(at).cloned() });
    let answers = Answers {
        title: options.title.clone(),
        hall: options.hall,
        groups: groups.collect(),
        depth: options.depth.clone(),
        stage: options.stage,
        held_to: options.held_to.clone(),
        units: options.units,
    };
    let none = answers.title.is_none() && answers.hall.is_none() && answers.groups.is_empty();
    let none = none && answers.depth.is_none() && answers.stage.is_none() && answers.held_to.is_empty();
    if !none || answers.units.is_some() {
        return Ok(answers);
    }
    if !std::io::stdin().is_terminal() {
        return Err("nobody is there to answer; give options such as --title and --hall (haulout begin design --help)".to_owned());
    }
    asked(&mut std::io::stdin().lock(), &mut std::io::stderr())
}

/// The six questions. An empty line leaves a thing out.
fn asked(from: &mut dyn BufRead, to: &mut dyn Write) -> Result<Answers, String> {
    let mut answers = Answers::default();
    let _ = writeln!(to, "Six questions; an empty line leaves a thing out.");
    let mut ask = |question: &str, take: &mut dyn FnMut(&str) -> Result<(), String>| loop {
        let _ = write!(to, "{question}: ").and_then(|()| to.flush());
        let mut line = String::new();
        match from.read_line(&mut line) {
            Ok(0) | Err(_) => return Err("the answers broke off; nothing was written".to_owned()),
            Ok(_) if line.trim().is_empty() => return Ok(()),
            Ok(_) => match take(line.trim()) {
                Ok(()) => return Ok(()),
                Err(why) => drop(writeln!(to, "  {why}")),
            },
        }
    };
    ask("1 Title", &mut |text| {
        answers.title = Some(text.to_owned());
        Ok(())
    })?;
    ask("2 Hall, length x breadth (8 m x 5 m)", &mut |text| {
        answers::hall(text).map(|h| answers.hall = Some(h))
    })?;
    ask("3 Species and count, several with commas (emys-orbicularis 1.3.0)", &mut |text| {
        groups(text).map(|groups| answers.groups = groups)
    })?;
    ask("4 Depth of the water (0.6 m)", &mut |text| answers::depth(text).map(|d| answers.depth = Some(d)))?;
    ask("5 Stage (concept, detailed, as-built) and what it is held to (eu-2010-63)", &mut |text| {
        let (stage, held_to) = stage_and_authorities(text)?;
        (answers.stage, answers.held_to) = (stage, held_to);
        Ok(())
    })?;
    ask("6 Units of the drawing (metric, us)", &mut |text| {
        answers.units =
            Some(<Units as clap::ValueEnum>::from_str(text, true).map_err(|_| "metric or us?".to_owned())?);
        Ok(())
    })?;
    Ok(answers)
}

/// `emys-orbicularis 1.3.0, Trachemys scripta`.
fn groups(text: &str) -> Result<Vec<Group>, String> {
    let one = |part: &str| match part.trim().rsplit_once(' ') {
        Some((name, count)) if count.starts_with(|c: char| c.is_ascii_digit()) => {
            Ok(Group { species: answers::species(name)?, sexes: Some(answers::sexes(count)?) })
        }
        _ => Ok(Group { species: answers::species(part)?, sexes: None }),
    };
    text.split(',').filter(|part| !part.trim().is_empty()).map(one).collect()
}

fn stage_and_authorities(text: &str) -> Result<(Option<StageWord>, Vec<&'static Authority>), String> {
    let (mut stage, mut held_to) = (None, Vec::new());
    for word in text.split([',', ' ']).filter(|word| !word.is_empty()) {
        match <StageWord as clap::ValueEnum>::from_str(word, true) {
            Ok(known) => stage = Some(known),
            Err(_) => held_to.push(answers::authority(word)?),
        }
    }
    Ok((stage, held_to))
}

/// What is written must be a design without a problem, else it is not written.
fn sound(text: &str) -> Result<(), String> {
    match Document::of(text.as_bytes(), &schema()).problems.first() {
        None => Ok(()),
        Some(problem) => {
            Err(format!("these answers make no sound design, and nothing was written: {}", problem.message))
        }
    }
}

/// Writes the design, and the schema beside it unless one is there; says whether it was.
fn write(options: &FirstDesign, text: &str) -> Result<bool, String> {
    let mut open = std::fs::OpenOptions::new();
    // A file that came into being meanwhile is not written over either.
    if options.replace {
        open.write(true).create(true).truncate(true)
    } else {
        open.write(true).create_new(true)
    };
    let refused =
        |error: std::io::Error| format!("{}: it cannot be written: {error}", options.file.display());
    open.open(&options.file).and_then(|mut file| file.write_all(text.as_bytes())).map_err(refused)?;
    let beside = options.file.with_file_name(SCHEMA_FILE);
    let fresh = std::fs::OpenOptions::new().write(true).create_new(true).open(beside);
    // The design is complete without it: only an editor would miss it.
    Ok(fresh.and_then(|mut file| file.write_all(haulout_schemas::DESIGN.as_bytes())).is_ok())
}

fn told(file: &Path, beside: bool, answers: &Answers) -> String {
    let name = file.display();
    let schema =
        if beside { format!(", and {SCHEMA_FILE} beside it for your editor") } else { String::new() };
    let drawn = if answers.hall.is_some() {
        "the enclosure and the pool"
    } else {
        "the hall, the enclosure and the pool"
    };
    format!(
        "{name} is written{schema}. Still to be decided: the outlines of {drawn}.\nhaulout review {name} says what it waits for.\n"
    )
}

#[cfg(test)]
mod tests {
    use super::{asked, sound};
    use crate::answers::design;

    /// A wrong answer is asked for again; an empty one leaves the thing out.
    #[test]
    fn six_answers_make_a_sound_design() {
        let typed = "Pond room\n8 by 5\n8 m x 5 m\nemys-orbicularis 1.3.0, Trachemys scripta 4\n\nconcept, eu-2010-63\nmetric\n";
        let mut shown = Vec::new();
        let answers = asked(&mut typed.as_bytes(), &mut shown).expect("all is answered");
        assert!(String::from_utf8_lossy(&shown).contains("\"8 by 5\" is no size of a hall"));
        let text = design(&answers, "x.json");
        assert_eq!(sound(&text), Ok(()), "{text}");
        assert!(text.contains("\"outline\": [[0, 0], [8, 0], [8, 5], [0, 5]]"), "{text}");
        assert!(text.contains(
            "{ \"id\": \"trachemys-scripta\", \"species\": \"trachemys-scripta\", \"sexes\": \"0.0.4\""
        ));
        assert!(!text.contains("depth"));
        assert!(
            asked(&mut "Pond room\n".as_bytes(), &mut Vec::new()).is_err_and(|why| why.contains("broke off"))
        );
    }

    #[test]
    fn no_answer_at_all_is_still_sound() {
        assert_eq!(sound(&design(&crate::answers::Answers::default(), "x.json")), Ok(()));
    }
}
