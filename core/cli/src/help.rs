//! What help says beyond the options: examples, exit statuses; completions for shells, pages for the manual.

use std::path::Path;

use clap::CommandFactory;
use clap_complete::Shell;

use crate::args::Args;
use crate::run::Outcome;

/// The examples of `review`.
pub(crate) const REVIEW: &str = "\
Examples:
  haulout review pool.json
      one design, as a page to read
  haulout review designs --stage detailed --as markdown > ticket.md
      every design of a folder, held to the detailed stage, to be pasted into a ticket
  haulout review pool.json --annex house --on 2027-03-01 --as json
      with the rules of the house, as on that day, for a program
  haulout review --specification reedwater.json
      the designs, authorities, stage and annexes that a specification names

Exit status: 0 nothing required falls short or stays open; 1 something does; 2 something could not be reviewed.";

/// The examples of `sheet`.
pub(crate) const SHEET: &str = "\
Examples:
  haulout sheet pool.json
      everything the design amounts to
  haulout sheet pool.json net-volume --subject pool:main
      one number of one pool, with its working
  haulout sheet pool.json course --as svg > start-up.svg
      ammonia, nitrite and nitrate over the days of the start-up, as a chart

Exit status: 0 the figures are printed; 2 the design could not be read, or there is no such figure or subject.";

/// The examples of `commissioning`.
pub(crate) const COMMISSIONING: &str = "\
Examples:
  haulout commissioning pool.json
      trials and declared values with lines to sign, to be printed
  haulout commissioning pool.json --as markdown
      the same with boxes to tick, for a ticket

Exit status: 0 the list is printed; 2 the design could not be read, or an annex cannot be used.";

/// The examples of `rulebook`.
pub(crate) const RULEBOOK: &str = "\
Examples:
  haulout rulebook
      all rules by chapter
  haulout rulebook depth-of-the-scheme
      what one rule asks, why, how it is judged and what usually cures it
  haulout rulebook --annex house
      with the rules of the house

Exit status: 0 the rules are printed; 2 there is no such rule, or an annex cannot be used.";

/// The examples of `rehearse`.
pub(crate) const REHEARSE: &str = "\
Examples:
  haulout rehearse house
      every example of every script, and every design in house/rehearsal
  haulout rehearse group house --as json
      two annexes together, for a program

Exit status: 0 everything came as marked; 1 something did not; 2 an annex, a design or a list of answers cannot be used.";

/// The examples of `register`.
pub(crate) const REGISTER: &str = "\
Examples:
  haulout register
      the species and the authorities a design can name
  haulout register \"Emys orbicularis\"
      everything that is known of one species, each value with its source

Exit status: 0 the register is printed; 2 it knows no such species.";

/// The examples of `begin design`.
pub(crate) const BEGIN: &str = "\
Examples:
  haulout begin design
      asks six questions and writes design.json
  haulout begin design pond.json --title \"Pond room\" --hall \"8 m x 5 m\" --species emys-orbicularis --sexes 1.3.0
      asks nothing; what is not given is left out

Exit status: 0 the design is written; 2 it is not, and nothing was changed.";

/// The examples of `begin annex`.
pub(crate) const BEGIN_ANNEX: &str = "\
Examples:
  haulout begin annex house
      writes house/annex.json and house/water-to-wade-in.rhai
  haulout rehearse house
      tries the rule on its examples

Exit status: 0 the annex is written; 2 it is not, and nothing was changed.";

/// The examples of `schema`.
pub(crate) const SCHEMA: &str = "\
Examples:
  haulout schema design > design.schema.json
      for an editor that completes and checks while you write
  haulout schema review
      what a program can rely on in review --as json

Exit status: 0 the schema is printed; 2 there is no such schema.";

/// The examples of `completions`.
pub(crate) const COMPLETIONS: &str = "\
Examples:
  haulout completions bash > ~/.local/share/bash-completion/completions/haulout
  haulout completions fish > ~/.config/fish/completions/haulout.fish

Exit status: 0 the script is printed.";

/// The examples of `manual-pages`.
pub(crate) const MANUAL_PAGES: &str = "\
Examples:
  haulout manual-pages man/man1
      writes one page a command; man -l man/man1/haulout.1 shows the first

Exit status: 0 the pages are written; 2 the folder cannot be written to.";

/// The script that completes commands and options in a shell.
pub(crate) fn completions(shell: Shell) -> String {
    let mut script = Vec::new();
    clap_complete::generate(shell, &mut Args::command(), "haulout", &mut script);
    String::from_utf8_lossy(&script).into_owned()
}

/// Writes the pages of the manual into a folder.
pub(crate) fn manual_pages(folder: &Path) -> Outcome {
    let written =
        std::fs::create_dir_all(folder).and_then(|()| clap_mangen::generate_to(Args::command(), folder));
    match written {
        Ok(()) => Outcome::of(format!("the pages of the manual are in {}\n", folder.display())),
        Err(error) => {
            Outcome::impossible(format!("{}: the pages cannot be written: {error}", folder.display()))
        }
    }
}
