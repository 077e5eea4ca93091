//! The start-up of each water: its course taken from the book, told in columns and for programs.

use std::fmt::Write;
use std::sync::Arc;

use haulout_calc::startup::band::Courses;
use haulout_calc::startup::course::Day;
use haulout_document::Tree;
use haulout_figures::startup::course::{COURSE, is_started_here};
use haulout_figures::startup::start::steps_over;
use haulout_model::{About, Number, Subject};
use haulout_quantity::Measure;
use haulout_sheet::{Book, Case, Entry, Known};
use serde_json::{Value, json};

use crate::drawing::number;
use crate::json::gap;
use crate::numbers::rounded;
use crate::told::ToldGap;

/// From SI to mg/L.
pub(crate) const MILLIGRAMS: f64 = 1000.0;

/// How a substance is read off a day.
pub(crate) type Read = fn(&Day) -> f64;

/// What a course tells of: its name here and for programs, and how it is read off a day (kg/m³ as nitrogen).
pub(crate) const TOLD: [(&str, &str, Read); 3] = [
    ("Total ammonia", "total-ammonia", |day| day.tan),
    ("Nitrite", "nitrite", |day| day.nitrite),
    ("Nitrate", "nitrate", |day| day.nitrate),
];

/// A stocking step.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// Days after the filter is started.
    pub day: f64,
    /// What comes, in few words.
    pub words: String,
}

/// A water that is started up.
#[derive(Debug, Clone, PartialEq)]
pub struct Started {
    /// Title of the design.
    pub title: String,
    /// The water, by the pool that speaks for it.
    pub water: String,
    /// Its courses: slow, middle and fast growth.
    pub courses: Arc<Courses>,
    /// The steps that add to it, by day.
    pub steps: Vec<Step>,
    /// Total ammonia and nitrite, as nitrogen, at which the next step waits, kg/m³.
    pub targets: [Option<f64>; 2],
}

/// The start-up of the water of a pool, or what is missing for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Water {
    /// Key of the pool that speaks for it.
    pub key: String,
    /// Its course.
    pub course: Result<Started, Vec<ToldGap>>,
}

/// The waters of a design that animals come over by steps.
pub fn waters(book: &Book<'_>, tree: &Tree) -> Vec<Water> {
    let sheet = book.sheet(Case::NORMAL);
    let mut waters: Vec<Water> = Vec::new();
    for pool in About::Pool.walk(book.design()).subjects {
        let course = match is_started_here(sheet, pool) {
            Ok(false) => continue,
            Ok(true) => started(book, pool),
            Err(gaps) => Err(gaps),
        };
        let course = course.map_err(|gaps| gaps.0.iter().map(|gap| ToldGap::of(gap, tree, book)).collect());
        // What is missing for every water alike is told once.
        if course.is_ok() || waters.iter().all(|water| water.course != course) {
            waters.push(Water { key: pool.key(book.design()), course });
        }
    }
    waters
}

fn started(book: &Book<'_>, pool: Subject) -> Known<Started> {
    let design = book.design();
    let sheet = book.sheet(Case::NORMAL);
    let line = COURSE.of(sheet, pool)?;
    let courses = Arc::<Courses>::take(&book.record(line.id()).datum);
    let start_up = &design.start_up;
    let mut steps: Vec<(f64, &str, f64)> = Vec::new();
    for at in steps_over(sheet, pool)? {
        let step = &start_up.steps.items()[at.index()];
        let (Some(day), Some(count)) = (number_of(book, &step.day), number_of(book, &step.count)) else {
            continue;
        };
        let group = step.group.name().unwrap_or("");
        match steps.iter_mut().find(|(on, of, _)| *on == day && *of == group) {
            Some((_, _, counted)) => *counted += count,
            None => steps.push((day, group, count)),
        }
    }
    steps.sort_by(|one, other| one.0.total_cmp(&other.0));
    let step =
        |(day, group, count): (f64, &str, f64)| Step { day, words: format!("{} {group}", number(count)) };
    Ok(Started {
        title: design.project.title.words().unwrap_or("").to_owned(),
        water: pool.key(design).replacen(':', " ", 1),
        courses,
        steps: steps.into_iter().map(step).collect(),
        targets: [number_of(book, &start_up.target_tan), number_of(book, &start_up.target_nitrite)],
    })
}

/// A stated number in SI.
fn number_of<Q: Measure + Entry>(book: &Book<'_>, field: &Number<Q>) -> Option<f64> {
    let line = field.on(book.sheet(Case::NORMAL)).ok()?;
    Some(Q::take(&book.record(line.id()).datum).si())
}

/// The last day followed.
pub(crate) fn last_day(started: &Started) -> f64 {
    let days = started.courses.of.iter().map(|course| course.days.len()).max().unwrap_or(1);
    (days.max(2) - 1) as f64
}

/// Least, middle and greatest of the three courses on each day, mg/L.
pub(crate) fn band(started: &Started, of: Read) -> Vec<[f64; 3]> {
    let [one, two, three] = &started.courses.of;
    let days = one.days.iter().zip(&two.days).zip(&three.days);
    let of = |day: &Day| of(day) * MILLIGRAMS;
    days.map(|((a, b), c)| {
        let each = [of(a), of(b), of(c)];
        let low = each.iter().copied().fold(f64::INFINITY, f64::min);
        [low, each[1], each.iter().copied().fold(0.0, f64::max)]
    })
    .collect()
}

/// The courses in columns: every seventh day and the days of steps, from the least to the greatest of the three, mg/L as nitrogen.
pub fn course_page(waters: &[Water]) -> String {
    let mut out = String::new();
    for water in waters {
        if !out.is_empty() {
            out.push('\n');
        }
        match &water.course {
            Ok(started) => columns(started, &mut out),
            Err(gaps) => {
                // Writing to a String cannot fail.
                let _ = writeln!(
                    out,
                    "Start-up of the water of {}: not assessed",
                    water.key.replacen(':', " ", 1)
                );
                for gap in gaps {
                    let at =
                        gap.places.first().map_or_else(String::new, |place| format!("{}: ", place.pointer));
                    let _ = writeln!(out, "    {at}{}, {}", gap.what, gap.kind);
                }
            }
        }
    }
    out
}

fn columns(started: &Started, out: &mut String) {
    let bands = TOLD.map(|(_, _, of)| band(started, of));
    let _ =
        writeln!(out, "Start-up of the water of {}, mg/L as nitrogen, slow to fast growth\n", started.water);
    out.push_str("  day    total ammonia          nitrite          nitrate\n");
    for day in 0..bands[0].len() {
        let own = started.steps.iter().filter(|step| step.day == day as f64);
        let here: Vec<&str> = own.map(|step| step.words.as_str()).collect();
        if day % 7 != 0 && here.is_empty() {
            continue;
        }
        let _ = write!(out, "{day:>5}");
        for band in &bands {
            let [low, _, high] = band[day];
            let _ = write!(out, "  {:>15}", format!("{low:.2} to {high:.2}"));
        }
        let _ = writeln!(out, "{}{}", if here.is_empty() { "" } else { "  " }, here.join("; "));
    }
    out.push('\n');
    for ((what, ..), target) in TOLD.iter().zip(started.targets) {
        if let Some(target) = target {
            let _ =
                writeln!(out, "{what} at which the next step waits: {} mg/L", number(target * MILLIGRAMS));
        }
    }
    out.push_str(
        "Constants of growth scatter by two to three:\na step waits for its readings, not for its day.\n",
    );
}

/// The courses for programs: a list of numbers a day for each pace of growth, mg/L as nitrogen; the first stands for the first day.
pub fn course_json(waters: &[Water]) -> Value {
    let course = |started: &Started| {
        let mut told = json!({ "unit": "mg/L", "steps": started.steps.iter().map(|step| json!({
            "day": step.day, "what": step.words,
        })).collect::<Vec<_>>() });
        for (_, name, of) in TOLD {
            let [slow, middle, fast] = &started.courses.of;
            let days = [slow, middle, fast].map(|course| {
                course.days.iter().map(|day| rounded(of(day) * MILLIGRAMS)).collect::<Vec<_>>()
            });
            let [slow, middle, fast] = days;
            told[name] = json!({ "slow": slow, "middle": middle, "fast": fast });
        }
        told
    };
    let one = |water: &Water| match &water.course {
        Ok(started) => json!({ "water": water.key, "course": course(started), "gaps": [] }),
        Err(gaps) => {
            json!({ "water": water.key, "course": null, "gaps": gaps.iter().map(gap).collect::<Vec<_>>() })
        }
    };
    json!({ "figures": [], "courses": waters.iter().map(one).collect::<Vec<_>>() })
}

#[cfg(test)]
pub(crate) mod tests {
    use std::sync::Arc;

    use haulout_calc::startup::band::Courses;
    use haulout_calc::startup::course::Start;

    use super::{Started, Step, Water, course_json, course_page};

    /// An unfed filter and one step on day 14.
    pub(crate) fn started() -> Started {
        let start = Start {
            water: 8.9,
            temperature: 298.65,
            oxygen: 0.006,
            alkalinity: 0.15,
            alkalinity_of_fill: 0.15,
            nitrate_of_fill: 0.002,
            changed: 0.3,
            loads: vec![(0.0, 0.0), (14.0, 0.005_89)],
            there: 0.000_006,
            bed: 0.03,
            days: 60,
        };
        Started {
            title: "A room".to_owned(),
            water: "pool main".to_owned(),
            courses: Arc::new(Courses::of(&start).expect("within the range")),
            steps: vec![Step { day: 14.0, words: "4 sliders".to_owned() }],
            targets: [Some(0.0005), None],
        }
    }

    #[test]
    fn the_page_and_the_numbers_for_programs_tell_the_same_days() {
        let started = started();
        let most = started.courses.of.iter().map(|course| course.days[21].tan).fold(0.0, f64::max) * 1000.0;
        let waters = [Water { key: "pool:main".to_owned(), course: Ok(started) }];
        let page = course_page(&waters);
        // 14 days of nothing, then 5.89 g a day in 8.9 m3: some 4.4 mg/L after a week, less the little that is turned over.
        assert!(most > 3.5 && most < 4.7, "{most}");
        let row = page.lines().find(|line| line.starts_with("   21")).expect("the third week is told");
        assert!(row.contains(&format!("to {most:.2}")), "{row}");
        assert!(page.contains("\n   14") && page.contains("  4 sliders\n"), "{page}");
        assert!(page.lines().all(|line| line.len() <= 80), "{page}");
        let told = course_json(&waters);
        let day =
            |pace: &str| told["courses"][0]["course"]["total-ammonia"][pace][21].as_f64().unwrap_or(0.0);
        assert!(["slow", "middle", "fast"].map(day).iter().any(|tan| (tan - most).abs() < 1e-6), "{most}");
    }

    #[test]
    fn what_is_missing_is_told() {
        let gap = crate::told::ToldGap {
            kind: "not stated",
            what: "temperature".to_owned(),
            places: Vec::new(),
            first: None,
        };
        let page = course_page(&[Water { key: "pool:main".to_owned(), course: Err(vec![gap]) }]);
        assert_eq!(page, "Start-up of the water of pool main: not assessed\n    temperature, not stated\n");
    }
}
