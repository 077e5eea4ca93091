//! What the command line may say.

use std::path::PathBuf;

use clap::{Parser, Subcommand, ValueEnum};

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
    Review {
        /// Files and folders.
        #[arg(required = true)]
        paths: Vec<PathBuf>,
        /// Hold the designs to this stage instead of their own.
        #[arg(long, value_enum)]
        stage: Option<StageWord>,
        /// The day variances are judged on, such as 2026-11-25; today if left out.
        #[arg(long, value_parser = day)]
        on: Option<String>,
        /// How the answers are printed.
        #[arg(long = "as", value_enum, default_value_t = Form::Terminal)]
        form: Form,
        /// A folder of house rules (.rhai files) to hold the designs to as well; may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// Show what a design amounts to: every figure with its working and the places its numbers came from.
    Sheet {
        /// The design.
        path: PathBuf,
        /// Only this figure.
        figure: Option<String>,
        /// Only this subject, such as pool:main.
        #[arg(long)]
        subject: Option<String>,
        /// How the figures are printed.
        #[arg(long = "as", value_enum, default_value_t = Form::Terminal)]
        form: Form,
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
        /// A folder of house rules (.rhai files) to hold the design to as well; may be given several times.
        #[arg(long, value_name = "DIR")]
        annex: Vec<PathBuf>,
    },
    /// List the rules, or show the manual page of one.
    Rulebook {
        /// The rule.
        id: Option<String>,
        /// How the rules are printed.
        #[arg(long = "as", value_enum, default_value_t = Form::Terminal)]
        form: Form,
    },
    /// Print a published schema: design, review, sheet or rulebook.
    Schema {
        /// Its name.
        name: String,
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
        (Some(_), Some(1..=12), Some(1..=31)) if parts.len() == 3 => Ok(text.to_owned()),
        _ => Err("a day is written as 2026-11-25".to_owned()),
    }
}
