//! What a review costs, step by step, against the budget of the design;
//! `cargo build --release && HAULOUT_WRITE=1 cargo bench -p haulout-tests --bench budget` runs to its end within some minutes and
//! keeps the table as `tests/evidence/budget.md`.
//!
//! Nothing here decides a test: the table is for people. Machines differ and are busy: every step is therefore set against a
//! yardstick too, the same texts read by `serde_json` into its own tree, which takes 87 µs where the budget was set.

#![allow(clippy::print_stdout, reason = "a bench prints its table")]
#![allow(
    clippy::disallowed_methods,
    reason = "a bench reads the clock, the memory of its process and whether to write"
)]

use std::fmt::Write as _;
use std::hint::black_box;
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::time::Instant;

use haulout_annex::{Folder, join};
use haulout_document::{Limits, Schema, Tree, read};
use haulout_engine::{Ruleset, review};
use haulout_model::{About, Design};
use haulout_sheet::{Book, Case};
use haulout_tests::generate::{Size, design};
use haulout_tests::{bundled, load, options, repository, ruleset};
use rayon::prelude::*;

/// Designs of the budget's size that a step is timed on.
const TIMED: u64 = 200;
/// Distinct designs of the run on all cores, and of the look at the memory.
const MANY: u64 = 4_000;
const MOST: u64 = 20_000;
/// Runs of a whole process.
const RUNS: usize = 50;

/// Microseconds that `serde_json` takes for the texts of the budget where the budget was set (measured there with 1.0).
const YARDSTICK: f64 = 87.0;

/// The allocator of the program.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

type Part = fn(&mut Page);
const PARTS: [(&str, Part); 6] = [
    ("steps", steps),
    ("wet", wet),
    ("house-rules", house_rules),
    ("designs", many),
    ("growth", growth),
    ("processes", processes),
];

fn main() {
    let mut page = Page { slower: slower(&texts()), text: String::new() };
    // `-- growth` looks at that part alone, and writes no page.
    let asked: Vec<String> =
        std::env::args().skip(1).filter(|argument| !argument.starts_with("--")).collect();
    for (name, part) in PARTS {
        if asked.is_empty() || asked.iter().any(|one| one == name) {
            part(&mut page);
        }
    }
    if asked.is_empty() && std::env::var("HAULOUT_WRITE").is_ok() {
        let text = format!(
            "# Budget\n\nWhat `HAULOUT_WRITE=1 cargo bench -p haulout-tests --bench budget` last found; another machine finds other times, and so does a busy one.\n\n```text\n{}\n```\n",
            page.text.trim()
        );
        std::fs::write(repository().join("tests/evidence/budget.md"), text).expect("the page can be written");
    }
}

/// What was found so far, printed line by line as it comes.
struct Page {
    text: String,
    /// How much longer the yardstick takes here and now than where the budget was set.
    slower: f64,
}

impl Page {
    fn says(&mut self, line: String) {
        println!("{line}");
        // Writing to a text cannot fail.
        let _ = writeln!(self.text, "{line}");
    }
}

/// Microseconds that one call takes.
fn micros<T>(work: impl FnOnce() -> T) -> (T, f64) {
    let from = Instant::now();
    let made = black_box(work());
    (made, from.elapsed().as_secs_f64() * 1e6)
}

fn median(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}

/// The times of each step of one design, in the order of the table.
fn timed(text: &str, schema: &Schema, ruleset: &Ruleset) -> [f64; 5] {
    let (reading, read_in) = micros(|| read(text.as_bytes(), &Limits::default()));
    let tree = reading.accepted().expect("the generator writes designs");
    let (_, schema_in) = micros(|| schema.check(&tree));
    let ((design, _), model_in) = micros(|| haulout_model::read(&tree));
    let (_, figures_in) = micros(|| figures(&design, ruleset));
    // All that a rule asks for is worked on the way: figures that no rule asks for are not.
    let (_, review_in) = micros(|| review(&design, ruleset, &[], &options()).answers.len());
    [read_in, schema_in, model_in, figures_in, review_in]
}

fn steps(page: &mut Page) {
    let texts = texts();
    let slower = page.slower;
    let bytes = texts.iter().map(String::len).sum::<usize>() / texts.len();
    page.says(format!("{TIMED} generated designs of {:.1} KB on average", bytes as f64 / 1000.0));
    let schema = Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT);
    let ruleset = ruleset().without_heavy();
    let rows: Vec<[f64; 5]> = texts.iter().map(|text| timed(text, &schema, &ruleset)).collect();
    let column = |at: usize| median(rows.iter().map(|row| row[at]).collect());
    let budget = [
        ("read", 25.0),
        ("schema", 30.0),
        ("model", 50.0),
        ("figures of the catalogue, all states", 200.0),
        ("figures that rules ask for, rules, answers", 320.0),
    ];
    page.says(format!("the yardstick takes {slower:.2} times what it takes where the budget was set"));
    page.says(format!(
        "\n{:44} {:>10} {:>8} {:>6} {:>14}",
        "step (median, one thread)", "µs", "budget", "ratio", "by yardstick"
    ));
    let mut row = |name: &str, took: f64, budget: f64| {
        let ratio = took / budget;
        page.says(format!("{name:44} {took:10.1} {budget:8.0} {ratio:6.2} {:14.2}", ratio / slower))
    };
    for (at, (name, budget)) in budget.into_iter().enumerate() {
        row(name, column(at), budget);
    }
    row("read, schema, model, review", column(0) + column(1) + column(2) + column(4), 425.0);
    let (_, compiled) =
        micros(|| Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT));
    page.says(format!("{:44} {compiled:10.1}", "schema made ready, once a process"));
}

/// The designs that a step is timed on.
fn texts() -> Vec<String> {
    (0..TIMED).map(|seed| design(seed, Size::BUDGET)).collect()
}

fn slower(texts: &[String]) -> f64 {
    let yardstick = |text: &String| micros(|| serde_json::from_str::<serde_json::Value>(text).is_ok()).1;
    median(texts.iter().map(yardstick).collect()) / YARDSTICK
}

/// Every figure of the catalogue in every state; how many lines came of it.
fn figures(design: &Design, ruleset: &Ruleset) -> usize {
    let book = Book::new(design, &ruleset.limits, &[]);
    let mut worked = 0;
    for figure in haulout_figures::CATALOGUE {
        // Samples are what heavy rules are made of.
        if figure.card().about == About::PositionPool || figure.card().id == "out-of-sight" {
            continue;
        }
        // Pairs grow with the square of the lists; they are in the row of the rules.
        if figure.card().about == About::PoolPair {
            continue;
        }
        for subject in figure.card().about.walk(design).subjects {
            for case in Case::each(figure.card().axes) {
                worked += usize::from(figure.line(book.sheet(case), subject).is_ok());
            }
        }
    }
    worked
}

/// Chapters whose figures are closed formulas on what a pool, a circuit, a filter or a heater states.
const DRY: &[About] = &[
    About::Barrier,
    About::BarrierGroup,
    About::Basking,
    About::BaskingGroup,
    About::Door,
    About::DoorGroup,
    About::Group,
    About::Guard,
    About::Item,
    About::ItemPool,
    About::Outline,
    About::Panel,
    About::PoolGroup,
    About::PoolPair,
    About::Position,
    About::PositionPool,
    About::Space,
];

/// The wet half of the sound example: every closed figure alone in a book of its own, with all that it hangs on, and the course of
/// the start-up by itself.
fn wet(page: &mut Page) {
    let text = std::fs::read_to_string(repository().join("example-designs/reedwater-sound.json"));
    let loaded = load(&text.expect("the example is there")).expect("it is read without a problem");
    let limits = ruleset().limits;
    let mut each: Vec<(f64, &str)> = Vec::new();
    for figure in haulout_figures::CATALOGUE {
        let card = figure.card();
        // Searches and samples say how finely they were resolved; steps of a start-up ask for its course.
        if card.resolution.is_some() || DRY.contains(&card.about) || card.about == About::Stocking {
            continue;
        }
        for subject in card.about.walk(&loaded.design).subjects {
            let once = || {
                let book = Book::new(&loaded.design, &limits, &[]);
                micros(|| figure.line(book.sheet(Case::NORMAL), subject).is_ok()).1
            };
            each.push((median((0..9).map(|_| once()).collect()), card.id));
        }
    }
    each.sort_by(|one, other| one.0.total_cmp(&other.0));
    let within = each.iter().filter(|(took, _)| *took <= 100.0).count();
    let names: Vec<String> =
        each.iter().rev().take(3).map(|(took, id)| format!("{id} {took:.0} µs")).collect();
    page.says(format!(
        "\nclosed figures of the wet chapters, each alone with all it hangs on: {within} of {} within 100 µs, median {:.1} µs, slowest {}",
        each.len(),
        median(each.iter().map(|(took, _)| *took).collect()),
        names.join(", ")
    ));
    let book = Book::new(&loaded.design, &limits, &[]);
    let pool = haulout_model::Subject::nth(About::Pool, 0);
    let line = haulout_figures::startup::start::START.of(book.sheet(Case::NORMAL), pool);
    let start = book.record(line.expect("the sound example starts up").id()).datum.clone();
    let haulout_sheet::Datum::Thing(thing) = start else { return };
    let Ok(start) = thing.downcast::<haulout_calc::startup::course::Start>() else { return };
    let course = || micros(|| haulout_calc::startup::band::Courses::of(&start).is_ok()).1;
    let took = median((0..99).map(|_| course()).collect());
    page.says(format!(
        "course of the start-up, {} days at three paces: {took:.0} µs (budget 1000, ratio {:.2}, by yardstick {:.2})",
        start.days,
        took / 1e3,
        took / 1e3 / page.slower
    ));
}

/// House rules that are timed together.
const HOUSE_RULES: usize = 20;
/// A script longer than this holds whole rooms as examples, which is not ordinary.
const LONG: usize = 5_000;

/// So many ordinary scripts, in the folders they lie in.
fn ordinary() -> Vec<Folder> {
    let mut folders = bundled::annexes();
    folders.push(bundled::folder(&repository().join("tests/annexes/twins")));
    let mut left = HOUSE_RULES;
    for folder in &mut folders {
        folder.files.retain(|file| {
            let script = file.name.ends_with(".rhai");
            let kept = !script || (left > 0 && file.bytes.as_ref().is_ok_and(|b| b.len() <= LONG));
            left -= usize::from(script && kept);
            kept
        });
    }
    folders
}

/// What house rules add to a review, and what opening their annexes adds to the start of the program.
fn house_rules(page: &mut Page) {
    let folders = ordinary();
    let opened = || join(haulout_rules::built_in(), &folders, haulout_figures::CATALOGUE);
    let plain = ruleset().without_heavy();
    let with = opened().expect("the annexes of the repository are sound").without_heavy();
    let count = with.rules.len() - plain.rules.len();
    let added = |seed: u64| {
        let loaded = load(&design(seed, Size::BUDGET)).expect("the generator writes designs");
        let took =
            |rules: &Ruleset| micros(|| review(&loaded.design, rules, &[], &options()).answers.len()).1;
        // Neither of those that count is the first to touch the design.
        black_box(took(&with));
        took(&with) - took(&plain)
    };
    let review_in = median((0..TIMED).map(added).collect());
    let built_in = || micros(|| haulout_rules::built_in().len()).1;
    let open_in = median((0..RUNS).map(|_| micros(|| opened().is_ok()).1 - built_in()).collect());
    // Their files are read too.
    let read_in = median((0..RUNS).map(|_| micros(|| ordinary().len()).1).collect());
    page.says(format!(
        "\n{count} house rules add {review_in:.0} µs to a review (budget 1000, ratio {:.2}) and {:.0} µs to the start, of which {read_in:.0} µs read their files (budget 3000, ratio {:.2})",
        review_in / 1e3,
        open_in + read_in,
        (open_in + read_in) / 3e3
    ));
}

/// Reads and reviews one text; how many answers.
fn whole(text: &str, ruleset: &Ruleset) -> usize {
    let loaded = load(text).expect("the generator writes designs");
    review(&loaded.design, ruleset, &[], &options()).answers.len()
}

fn many(page: &mut Page) {
    let ruleset = ruleset().without_heavy();
    let schema = Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT);
    let texts: Vec<String> = (0..MANY).into_par_iter().map(|seed| design(seed, Size::BUDGET)).collect();
    let one = |text: &String| {
        let tree: Tree =
            read(text.as_bytes(), &Limits::default()).accepted().expect("the generator writes designs");
        let fits = schema.check(&tree).is_empty();
        let (design, _) = haulout_model::read(&tree);
        usize::from(fits) * review(&design, &ruleset, &[], &options()).answers.len()
    };
    let (_, took) = micros(|| texts.par_iter().map(one).sum::<usize>());
    let threads = rayon::current_num_threads();
    let rate = MANY as f64 / took * 1e6;
    let ratio = rate / 4000.0;
    page.says(format!(
        "\n{MANY} distinct designs on {threads} threads: {rate:.0} a second (budget 4000, ratio {ratio:.2}, by yardstick {:.2})",
        ratio * page.slower
    ));
    drop(texts);
    let before = resident();
    let mut between = [0.0; 2];
    for half in 0..2 {
        let seeds = half * MOST / 2..(half + 1) * MOST / 2;
        let work = |seed| whole(&design(seed, Size::BUDGET), &ruleset);
        black_box(seeds.into_par_iter().map(work).sum::<usize>());
        between[half as usize] = resident();
    }
    let [half, whole] = between;
    page.says(format!(
        "memory in MB before, after {} and after {MOST} designs: {before:.1} {half:.1} {whole:.1}",
        MOST / 2
    ));
}

/// Resident memory in MB (proc(5): the second number of statm counts pages of 4 KiB); NaN where there is no /proc.
fn resident() -> f64 {
    let text = std::fs::read_to_string("/proc/self/statm").unwrap_or_default();
    let pages = text.split(' ').nth(1).and_then(|pages| pages.parse::<f64>().ok());
    pages.map_or(f64::NAN, |pages| pages * 4096.0 / 1e6)
}

/// Nanoseconds a byte, and of a review an answer, which stay the same where a step grows with the length of the text, and with what it
/// is asked: a pair of a pool and an item beside it is an answer of its own.
fn growth(page: &mut Page) {
    let ruleset = ruleset().without_heavy();
    let schema = Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT);
    page.says(format!(
        "\n{:>8} {:>8} | ns a byte: read, schema, model, review | answers, ns an answer",
        "pools", "KB"
    ));
    for pools in [3, 12, 50, 200, 500] {
        let text = design(1, Size::Pools(pools));
        let (reading, read_in) = micros(|| read(text.as_bytes(), &Limits::default()));
        let tree = reading.accepted().expect("the generator writes designs");
        let (_, schema_in) = micros(|| schema.check(&tree));
        let ((design, _), model_in) = micros(|| haulout_model::read(&tree));
        let (answers, review_in) = micros(|| review(&design, &ruleset, &[], &options()).answers.len());
        let [read, schema, model, whole] =
            [read_in, schema_in, model_in, review_in].map(|took| took * 1e3 / text.len() as f64);
        page.says(format!(
            "{pools:8} {:8.0} | {read:15.1} {schema:7.1} {model:6.1} {whole:7.1} | {answers:7} {:12.0}",
            text.len() as f64 / 1e3,
            review_in * 1e3 / answers as f64
        ));
    }
}

fn processes(page: &mut Page) {
    let folder = PathBuf::from(env!("CARGO_BIN_EXE_empty"));
    let beside = folder.parent().map(|f| f.join("haulout")).filter(|f| f.exists());
    let usual = repository().join("target/release/haulout");
    let Some(program) = beside.or(usual.exists().then_some(usual)) else {
        let why = "\nthe release binary is not built: whole processes are not timed (cargo build --release)";
        return page.says(why.to_owned());
    };
    let file = std::env::temp_dir().join(format!("haulout-budget-{}.json", std::process::id()));
    if std::fs::write(&file, design(2, Size::BUDGET)).is_err() {
        return page.says("\nno file could be written: whole processes are not timed".to_owned());
    }
    let example = repository().join("example-designs/reedwater-sound.json");
    let empty = median((0..RUNS).map(|_| run(Command::new(&folder).args([""; 0]))).collect());
    page.says(format!(
        "\nwhole process, medians of {RUNS} runs: empty {:.2} ms (budget of a review: 8 of them)",
        empty / 1e3
    ));
    for (name, file) in [("the sound example, 20 KB", &example), ("a generated design, 20 KB", &file)] {
        let review = || run(Command::new(&program).arg("review").arg(file));
        let whole = median((0..RUNS).map(|_| review()).collect());
        page.says(format!("review of {name:26} {:6.2} ms, ratio {:.1}", whole / 1e3, whole / empty));
    }
    // A file that is left behind in the folder for such files does no harm.
    let _ = std::fs::remove_file(&file);
}

fn run(command: &mut Command) -> f64 {
    micros(|| command.stdout(Stdio::null()).stderr(Stdio::null()).status().is_ok()).1
}
