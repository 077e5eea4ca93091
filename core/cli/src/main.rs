//! The binary `haulout`: the only place that touches files, the terminal and the clock.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "the composition root is where files are read, the day is asked for and text is printed"
)]

mod args;
mod files;
mod run;

use std::io::Write;
use std::process::ExitCode;

use clap::Parser;

fn main() -> ExitCode {
    let outcome = run::run(&args::Args::parse());
    let mut output = anstream::stdout().lock();
    // A reader that has seen enough closes the pipe: no harm, and nothing to say.
    let written = output.write_all(outcome.output.as_bytes()).and_then(|()| output.flush());
    if let Err(error) = written
        && error.kind() != std::io::ErrorKind::BrokenPipe
    {
        eprintln!("haulout: the output could not be written: {error}");
        return ExitCode::from(2);
    }
    if !outcome.remarks.is_empty() {
        eprint!("{}", outcome.remarks);
    }
    ExitCode::from(outcome.status as u8)
}
