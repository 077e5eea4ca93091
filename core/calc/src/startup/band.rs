//! The three courses of a start-up read as a band: the worst of them where a step is judged, both ends where days are told.

use std::sync::Arc;

use haulout_quantity::si::{Area, MassDensity, MassFlux, MassRate, Ratio, Time};
use haulout_quantity::{Basis, Measure};

use crate::formula::{Formula, FormulaCard, Kind, Refusal};
use crate::hydraulics::above_zero;
use crate::startup::course::{Course, Start, follow};
use crate::startup::growth::Pace;

/// Days followed after the last step.
pub const DAYS_AFTER: f64 = 90.0;

const SECONDS_OF_A_DAY: f64 = 86_400.0;

/// One start-up at each pace of growth, slow first.
#[derive(Debug, Clone, PartialEq)]
pub struct Courses {
    /// What it begins with.
    pub start: Start,
    /// Its courses.
    pub of: [Course; 3],
}

impl Courses {
    /// Follows a start-up at each pace.
    ///
    /// # Errors
    /// A refusal of [`follow`].
    pub fn of(start: &Start) -> Result<Self, Refusal> {
        let [low, middle, high] = Pace::ALL.map(|pace| follow(start, pace));
        Ok(Courses { start: start.clone(), of: [low?, middle?, high?] })
    }

    /// The highest of the three from the day of a step until the next one, as it stands at the end of the days.
    fn highest(&self, from: f64, what: fn(&super::course::Day) -> f64) -> f64 {
        let next = self.start.loads.iter().map(|(day, _)| *day).find(|day| *day > from);
        let days = |course: &Course| -> f64 {
            let last = next.map_or(course.days.len(), |day| day as usize + 1).min(course.days.len());
            let first = (from as usize + 1).min(last);
            course.days[first..last].iter().map(what).fold(0.0, f64::max)
        };
        self.of.iter().map(days).fold(0.0, f64::max)
    }
}

/// What is fed from which day on (d, kg/d), from what each step adds; what is dosed, from the first day until the first
/// animals come.
pub fn loads(steps: &[(f64, f64)], dosed: f64) -> Vec<(f64, f64)> {
    let mut steps = steps.to_vec();
    steps.sort_by(|one, other| one.0.total_cmp(&other.0));
    let mut loads = vec![(0.0, dosed)];
    let mut fed = 0.0;
    for (day, more) in steps {
        fed += more;
        match loads.last_mut().filter(|last| last.0 >= day) {
            Some(last) => last.1 = fed,
            None => loads.push((day, fed)),
        }
    }
    loads
}

const SIMULATED: &str = "growth after Monod with constants of ASM1 (Henze et al. 1987), Hiatt and Grady (2008) and a public two-step parameter file, temperature after Vannecke and Volcke; all as read in public documentation";

const fn construction(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Reported,
        source: SIMULATED,
        range: "one mixed water of 10 to 33 °C, evenly fed; constants scatter by two to three, so a reading decides, not the day",
    }
}

/// The courses of a start-up.
pub static COURSES: Formula<(Arc<Start>,), Arc<Courses>> = Formula {
    card: &construction(
        "courses of a start-up",
        "courses",
        "slow, middle and fast growth followed day by day",
        &["start"],
    ),
    run: |(start,)| Courses::of(&start).map(Arc::new),
};

/// Highest total ammonia, as nitrogen, from the day of a step until the next: the worst of the three courses.
pub static HIGHEST_TAN: Formula<(Arc<Courses>, Ratio), MassDensity> = Formula {
    card: &construction(
        "highest total ammonia after a step",
        "TAN",
        "worst of the courses until the next step",
        &["courses", "d"],
    ),
    run: |(courses, day)| Ok(MassDensity::from_si(courses.highest(day.value, |day| day.tan))),
};

/// Highest nitrite, as nitrogen, likewise.
pub static HIGHEST_NITRITE: Formula<(Arc<Courses>, Ratio), MassDensity> = Formula {
    card: &construction(
        "highest nitrite after a step",
        "NO2",
        "worst of the courses until the next step",
        &["courses", "d"],
    ),
    run: |(courses, day)| Ok(MassDensity::from_si(courses.highest(day.value, |day| day.nitrite))),
};

/// What the day is asked for: the start-up, the day of the step, both targets.
pub type Asked = (Arc<Start>, Ratio, MassDensity, MassDensity);

/// A formula of the day from which a step is carried.
pub type ReadyFormula = Formula<Asked, Time>;

/// The day from which both stay under their targets with this step and none after it, slowest of the three courses.
pub static READY_LATE: ReadyFormula = Formula {
    card: &construction(
        "day from which a step is carried, slowest growth",
        "t",
        "latest of the courses with no further step",
        &["start", "d", "TAN", "NO2"],
    ),
    run: |asked| ready(&asked).map(|days| days.into_iter().fold(Time::from_si(0.0), Time::max)),
};

/// The same, fastest of the three.
pub static READY_EARLY: ReadyFormula = Formula {
    card: &construction(
        "day from which a step is carried, fastest growth",
        "t",
        "earliest of the courses with no further step",
        &["start", "d", "TAN", "NO2"],
    ),
    run: |asked| ready(&asked).map(|days| days.into_iter().fold(Time::from_si(f64::INFINITY), Time::min)),
};

fn ready((start, day, tan, nitrite): &Asked) -> Result<[Time; 3], Refusal> {
    let loads = start.loads.iter().copied().filter(|(from, _)| *from <= day.value).collect();
    let days = (day.value + DAYS_AFTER) as u32;
    let start = Start { loads, days, ..Start::clone(start) };
    let courses = Courses::of(&start)?;
    let [low, middle, high] = courses.of.map(|course| {
        let ready = course.under_from(day.value as usize, tan.value, nitrite.value);
        ready.map(|day| Time::from_si(day as f64 * SECONDS_OF_A_DAY)).ok_or_else(|| {
            Refusal::new(format!(
                "ammonia or nitrite is still over its target {DAYS_AFTER:.0} days after the step of day {:.0}: the filter, its \
                 oxygen or its alkalinity does not carry what is fed",
                day.value
            ))
        })
    });
    Ok([low?, middle?, high?])
}

const fn closed(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    (basis, source): (Basis, &'static str),
    range: &'static str,
) -> FormulaCard {
    FormulaCard { name, result, text, symbols, kind: Kind::Closed, basis, source, range }
}

/// What a surface of bacteria turns over: surface that works, share alive, removal by area.
pub static TURNED_OVER: Formula<(Area, Ratio, MassFlux), MassRate> = Formula {
    card: &closed(
        "nitrogen that a surface turns over",
        "N_max",
        "S × x × r",
        &["S", "x", "r"],
        (Basis::Published, "definition of the removal by area"),
        "as much to feed on as the bacteria can use",
    ),
    run: |(surface, alive, removal)| Ok(MassRate::from_si(surface.value * alive.value * removal.value)),
};

/// What a step adds to the feed: nitrogen of the whole group, animals of the step, animals of the group.
pub static STEP_LOAD: Formula<(MassRate, Ratio, Ratio), MassRate> = Formula {
    card: &closed(
        "nitrogen that a step adds",
        "N_step",
        "N × n / n_all",
        &["N", "n", "n_all"],
        (Basis::Published, "definition"),
        "feed shared alike by the animals of a group",
    ),
    run: |(all, count, animals)| {
        Ok(MassRate::from_si(
            all.value * count.value / above_zero(animals.value, "the animals of the group")?,
        ))
    },
};

/// Oxygen where the bacteria live: mean of what comes and the least that leaves.
pub static OXYGEN_IN_BED: Formula<(MassDensity, MassDensity), MassDensity> = Formula {
    card: &closed(
        "oxygen where the bacteria live",
        "O",
        "(O_in + O_out) / 2",
        &["O_in", "O_out"],
        (Basis::CommonPractice, "mean along the way through the bed"),
        "a bed that passes its check of oxygen",
    ),
    run: |(comes, leaves)| Ok(0.5 * (comes + leaves)),
};
