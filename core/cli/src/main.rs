//! The binary `haulout`: the only place that touches files, the terminal and the clock.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "the composition root is where files are read, the day is asked for and text is printed"
)]

mod annex;
mod args;
mod document;
mod drawing;
mod files;
mod run;
mod sheet;

use std::io::Write;
use std::process::ExitCode;

use clap::Parser;

fn main() -> ExitCode {
    let outcome = run::run(&args::Args::parse());
    let mut output = anstream::stdout().lock();
    let written = output.write_all(outcome.output.as_bytes()).and_then(|()| output.flush());
    if let Err(error) = written {
        // Nobody may take a page that was cut off for a whole one.
        let why = match error.kind() {
            std::io::ErrorKind::BrokenPipe => {
                "whoever reads the output closed it before all was printed".to_owned()
            }
            _ => format!("the output could not be written: {error}"),
        };
        eprintln!("haulout: {why}");
        return ExitCode::from(2);
    }
    if !outcome.remarks.is_empty() {
        eprint!("{}", outcome.remarks);
    }
    ExitCode::from(outcome.status as u8)
}
