//! What hostile scripts cost: each is tried in a process of its own, which must end by itself; the slowest and the
//! largest are printed.
#![allow(clippy::print_stdout, reason = "what was measured is printed for people")]
#![allow(clippy::disallowed_methods, reason = "a process is begun and asked for its time and memory")]

use std::process::Command;
use std::time::Instant;

use crate::common::{CATALOGUE, LISTS, script};
use crate::trials::{Trial, body, trials};

/// Which trial the process is for.
const WHICH: &str = "HAULOUT_TRIAL";
/// What stands before the numbers that the process prints.
const SAYS: &str = "took and grew";

/// No script may take longer, on a busy machine and without optimising; what stops it counts operations, not seconds.
const LONGEST_SECONDS: f64 = 20.0;
/// No script may take more memory beyond what the process had.
const MOST_MEGABYTES: f64 = 64.0;

/// The greatest memory the process has had in MB (proc(5)); NaN where there is no /proc.
fn peak() -> f64 {
    let text = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = text.lines().find_map(|line| line.strip_prefix("VmHWM:")).map(str::trim);
    let number = line.and_then(|line| line.split(' ').next()).and_then(|n| n.parse::<f64>().ok());
    number.map_or(f64::NAN, |kilobytes| kilobytes / 1e3)
}

#[test]
#[ignore = "run by the test that measures, in a process of its own"]
fn one_trial_alone() {
    let which = std::env::var(WHICH).ok().and_then(|which| which.parse::<usize>().ok());
    let all = trials();
    let text = which.and_then(|at| all.get(at)).map(|trial| trial.text.as_str());
    let sound = script(LISTS, &body("ANSWER"));
    let before = peak();
    let from = Instant::now();
    let stopped = haulout_script::compile("trial.rhai", text.unwrap_or(&sound), CATALOGUE).is_err();
    assert_eq!(stopped, text.is_some(), "what is hostile is stopped, what is sound is not");
    println!("{SAYS} {} {}", from.elapsed().as_secs_f64(), peak() - before);
}

/// Seconds and MB of one trial; none where the process did not end well.
fn measured(which: usize) -> Option<(f64, f64)> {
    let me = std::env::current_exe().expect("a running test has a file");
    let alone = ["--ignored", "--exact", "measured::one_trial_alone", "--nocapture"];
    let done = Command::new(me).args(alone).env(WHICH, which.to_string()).output().ok()?;
    let printed = String::from_utf8_lossy(&done.stdout).into_owned();
    let mut numbers = printed.split(SAYS).nth(1)?.split_whitespace().filter_map(|n| n.parse::<f64>().ok());
    done.status.success().then_some((numbers.next()?, numbers.next()?))
}

#[test]
fn no_hostile_script_ends_its_process_or_fills_the_memory() {
    let all = trials();
    let mut costs: Vec<(&Trial, f64, f64)> = Vec::new();
    for (at, trial) in all.iter().enumerate() {
        let cost = measured(at);
        assert!(cost.is_some(), "{}: {} ends its process", trial.class, trial.what);
        costs.extend(cost.map(|(seconds, megabytes)| (trial, seconds, megabytes)));
    }
    let short =
        |trial: &Trial| format!("{}: {}", trial.class, trial.what.chars().take(60).collect::<String>());
    let slowest = costs.iter().max_by(|a, b| a.1.total_cmp(&b.1)).expect("there are trials");
    println!("the slowest of {} took {:.1} ms, {}", all.len(), slowest.1 * 1e3, short(slowest.0));
    assert!(slowest.1 < LONGEST_SECONDS, "{} took {} s", short(slowest.0), slowest.1);
    let known = costs.iter().filter(|cost| !cost.2.is_nan());
    if let Some(largest) = known.max_by(|a, b| a.2.total_cmp(&b.2)) {
        println!("the largest took {:.1} MB, {}", largest.2, short(largest.0));
        assert!(largest.2 < MOST_MEGABYTES, "{} took {} MB", short(largest.0), largest.2);
    }
}
