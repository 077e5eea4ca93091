//! The binary `haulout`: the only place that touches files, the terminal and the clock.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "the composition root is where files are read, the day is asked for and text is printed"
)]

mod annex;
mod answers;
mod args;
mod begin;
mod beside;
mod commissioning;
mod document;
mod drawing;
mod files;
mod first_annex;
mod help;
mod lookalike;
mod progress;
mod register;
mod rehearse;
mod review;
mod run;
mod sheet;
mod specification;

use std::io::Write;
use std::process::ExitCode;

use clap::Parser;

#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    let args = args::Args::parse();
    let mut output = anstream::stdout().lock();
    let outcome = run::run(&args, &mut output).and_then(|outcome| output.flush().map(|()| outcome));
    match outcome {
        Ok(outcome) => {
            eprint!("{}", outcome.remarks);
            ExitCode::from(outcome.status as u8)
        }
        Err(error) => {
            // Whoever closes a pipe early has read enough; the status still says that not all was printed.
            if error.kind() != std::io::ErrorKind::BrokenPipe {
                eprintln!("haulout: the output could not be written: {error}");
            }
            ExitCode::from(2)
        }
    }
}
