//! What the command line may say.

use std::path::PathBuf;

use clap::{Parser, Subcommand, ValueEnum};
use clap_complete::Shell;

use crate::begin::Begin;
use crate::help;

/// Checks designs of public water exhibits with reptiles before anything is built.
///
/// A design is a JSON file. The main job is `review`; every number it prints can be looked up with `sheet`, every rule with
/// `rulebook`. Exit status: 0 nothing required falls short or stays open, 1 something does, 2 something could not be reviewed.
#[derive(Debug, Parser)]
#[command(name = "haulout", version, max_term_width = 100)]
pub(crate) struct Args {
    #[command(subcommand)]
    pub(crate) job: Job,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Job {
    /// Hold designs against the rules and say what falls short, by how much, on whose authority.
    ///
    /// Of a folder, the `.json` files with a member "edition" are designs; a file named here always is one.
    #[command(after_long_help = help::REVIEW)]
    Review {
        /// Files and folders.
        #[arg(required_unless_present = "specification")]
        paths: Vec<PathBuf>,
        /// A file that names designs, authorities, stage and annexes; what stands on the command line goes before it.
        #[arg(long, value_name = "FILE")]
        specification: Option<PathBuf>,
        /// Hold the designs to this stage instead of their own.
        #[arg(long, value_enum)]
        stage: Option<StageWord>,
        /// The day variances are judged on, such as 2026-11-25; today if left out.
        #[arg(long, value_parser = day)]
        on: Option<String>,
        /// How the answers are printed.
        #[arg(long = "as", value_enum, default_value_t = ReviewForm::Terminal)]
        form: ReviewForm,
        /// A house annex (a folder with annex.json and .rhai files) to hold the designs to as well; may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// Show what a design amounts to: every figure with its working and the places its numbers came from.
    #[command(after_long_help = help::SHEET)]
    Sheet {
        /// The design.
        path: PathBuf,
        /// Only this figure; `course` is the start-up of the water over the days.
        figure: Option<String>,
        /// Only this subject, such as pool:main.
        #[arg(long)]
        subject: Option<String>,
        /// How the figures are printed.
        #[arg(long = "as", value_enum, default_value_t = SheetForm::Terminal)]
        form: SheetForm,
        /// A house annex (a folder with annex.json and .rhai files); may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// Draw the plan of a design to scale, with a numbered keynote at the place of every shortfall (SVG, ISO A3).
    Drawing {
        /// The design.
        design: PathBuf,
        /// Write the drawing to this file instead of printing it; an older one is overwritten.
        #[arg(long, value_name = "FILE")]
        out: Option<PathBuf>,
        /// Hold the design to this stage instead of its own.
        #[arg(long, value_enum)]
        stage: Option<StageWord>,
        /// The day variances are judged on, such as 2026-11-25; today if left out.
        #[arg(long, value_parser = day)]
        on: Option<String>,
        /// A house annex (a folder with annex.json and .rhai files) to hold the design to as well; may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// Print what is tried and measured before the first animal comes, with the numbers the design lets expect.
    #[command(after_long_help = help::COMMISSIONING)]
    Commissioning {
        /// The design.
        design: PathBuf,
        /// How the list is printed.
        #[arg(long = "as", value_enum, default_value_t = ReviewForm::Terminal)]
        form: ReviewForm,
        /// A house annex (a folder with annex.json and .rhai files) to hold the design to as well; may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// List the rules, or show the manual page of one.
    #[command(after_long_help = help::RULEBOOK)]
    Rulebook {
        /// The rule.
        id: Option<String>,
        /// How the rules are printed.
        #[arg(long = "as", value_enum, default_value_t = Form::Terminal)]
        form: Form,
        /// A house annex (a folder with annex.json and .rhai files); may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// Try house annexes on their own examples and rehearsal designs, and show what does not come as marked.
    ///
    /// A rehearsal design lies in the folder `rehearsal` of the annex, with a file `.expected.json` beside it that lists the
    /// answers it must give.
    #[command(after_long_help = help::REHEARSE)]
    Rehearse {
        /// Folders of annexes, in the order they take part.
        #[arg(required = true, value_name = "ANNEX")]
        annexes: Vec<PathBuf>,
        /// How the rehearsal is printed.
        #[arg(long = "as", value_enum, default_value_t = Form::Terminal)]
        form: Form,
    },
    /// Print a published schema: of the design document, or of what a command prints for programs.
    #[command(after_long_help = help::SCHEMA)]
    Schema {
        /// Its name: design, annex, specification, expected, review, sheet, commissioning, rulebook, register or rehearsal.
        name: String,
    },
    /// List the species and authorities the program knows, or show one species with every value and its source.
    #[command(after_long_help = help::REGISTER)]
    Register {
        /// Key or Latin name of a species.
        species: Option<String>,
        /// How the register is printed.
        #[arg(long = "as", value_enum, default_value_t = Form::Terminal)]
        form: Form,
    },
    /// Write a first file to work on.
    Begin {
        #[command(subcommand)]
        what: Begin,
    },
    /// Print the script that lets a shell complete commands and options.
    #[command(after_long_help = help::COMPLETIONS)]
    Completions {
        /// The shell.
        shell: Shell,
    },
    /// Write the pages of the manual, one a command, into a folder.
    #[command(after_long_help = help::MANUAL_PAGES)]
    ManualPages {
        /// The folder; it is made if it is not there.
        #[arg(value_name = "DIR")]
        folder: PathBuf,
    },
}

/// How something is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum Form {
    /// For a person.
    Terminal,
    /// For a program.
    Json,
}

/// How figures are printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum SheetForm {
    /// For a person.
    Terminal,
    /// For a program.
    Json,
    /// The course of the start-up as a chart.
    Svg,
}

/// How a review is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum ReviewForm {
    /// For a person.
    Terminal,
    /// For a program.
    Json,
    /// For a ticket.
    Markdown,
}

/// The stages of a project.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum StageWord {
    /// Outlines, species, counts.
    Concept,
    /// Everything drawn and sized.
    Detailed,
    /// Built.
    AsBuilt,
}

impl StageWord {
    pub(crate) const fn stage(self) -> haulout_model::Stage {
        match self {
            StageWord::Concept => haulout_model::Stage::Concept,
            StageWord::Detailed => haulout_model::Stage::Detailed,
            StageWord::AsBuilt => haulout_model::Stage::AsBuilt,
        }
    }
}

/// A day of the calendar, `2026-11-25`.
fn day(text: &str) -> Result<String, String> {
    let parts: Vec<&str> = text.split('-').collect();
    let number = |at: usize, digits: usize| {
        let part = parts.get(at).filter(|p| p.len() == digits && p.bytes().all(|b| b.is_ascii_digit()))?;
        part.parse::<u16>().ok()
    };
    match (number(0, 4), number(1, 2), number(2, 2)) {
        (Some(year), Some(month @ 1..=12), Some(day)) if parts.len() == 3 => {
            let last = last_day(year, month);
            if (1..=last).contains(&day) {
                Ok(text.to_owned())
            } else {
                Err(format!("{year:04}-{month:02} has days 01 to {last}"))
            }
        }
        _ => Err("a day is written as 2026-11-25".to_owned()),
    }
}

/// The last day of a month of the Gregorian calendar.
const fn last_day(year: u16, month: u16) -> u16 {
    match month {
        2 if year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400)) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}
