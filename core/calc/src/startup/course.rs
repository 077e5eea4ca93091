//! The course of a start-up: total ammonia, nitrite and nitrate of one mixed water over the days.
//!
//! Nitrogen is kept to the last bit that rounding leaves: what came in is what is in the water, in the cells and in the water
//! that was changed. Decayed cells give their nitrogen back as ammonia.

use crate::formula::Refusal;
use crate::startup::growth::{self, IN_CELLS, Kind, Kinds, Pace};

/// Alkalinity used for nitrogen turned into nitrite, kg CaCO3/kg N: two equivalents, 2 × 50.04 / 14.007.
const ALKALINITY_OF_NITROGEN: f64 = 7.145;
/// Parts of a day whose steps are of one length.
const PARTS: u32 = 4;
/// Steps of such a part at the least.
const LEAST_STEPS: f64 = 4.0;
/// Steps of it at the most; a water that needs more is too small for its filter to be reckoned with here.
const MOST_STEPS: f64 = 256.0;
/// Days followed at the most.
const MOST_DAYS: u32 = 1_000;
/// Steps within the quickest answer of the water to its filter: the method stays upright with one in 2.7 of it, and what answers so fast
/// follows what is slow.
const STEPS_IN_ANSWER: f64 = 1.0;

/// What a start-up begins with. Amounts are of nitrogen.
#[derive(Debug, Clone, PartialEq)]
pub struct Start {
    /// Water of the system, m³.
    pub water: f64,
    /// Its temperature, K.
    pub temperature: f64,
    /// Oxygen where the bacteria live, kg/m³.
    pub oxygen: f64,
    /// Alkalinity at the start, kg/m³ as CaCO3.
    pub alkalinity: f64,
    /// Alkalinity that the fill brings, kg/m³ as CaCO3.
    pub alkalinity_of_fill: f64,
    /// Nitrate nitrogen at the start and in the fill, kg/m³.
    pub nitrate_of_fill: f64,
    /// Water changed, m³/d.
    pub changed: f64,
    /// What is fed, kg/d, each from a day on; in the order of the days.
    pub loads: Vec<(f64, f64)>,
    /// What the bacteria can turn over that are there on the first day, kg/d at this temperature with plenty to feed on.
    pub there: f64,
    /// What the whole bed can turn over at this temperature, kg/d: no more passes into its film.
    pub bed: f64,
    /// Days to follow.
    pub days: u32,
}

/// A day of a course, kg/m³ of nitrogen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Day {
    /// Total ammonia.
    pub tan: f64,
    /// Nitrite.
    pub nitrite: f64,
    /// Nitrate.
    pub nitrate: f64,
}

/// A course: the end of each day, the start first, and the balance of nitrogen, kg.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// The start and the end of each day.
    pub days: Vec<Day>,
    /// What was there, was fed and came with the fill.
    pub came: f64,
    /// What is in water and cells at the end.
    pub held: f64,
    /// What went out with the water that was changed.
    pub left: f64,
}

/// Amounts: ammonia, nitrite, nitrate, cells of both kinds as oxygen demand, alkalinity, nitrogen that came and that left, kg.
type State = [f64; 8];

/// Follows a start-up.
///
/// # Errors
/// A refusal outside the range of temperature, without water, and where the bed turns the water over so fast that the days of a
/// start-up cannot be told apart from minutes.
pub fn follow(start: &Start, pace: Pace) -> Result<Course, Refusal> {
    let kinds = growth::at(pace, start.temperature, start.oxygen)?;
    if start.water <= 0.0 || start.water.is_nan() {
        return Err(Refusal::new(
            "there is no water to follow: the volume of the system is not above nothing",
        ));
    }
    if start.days > MOST_DAYS {
        return Err(Refusal::new(format!(
            "a start-up is followed over {MOST_DAYS} days at the most, and this one asks for {}",
            start.days
        )));
    }
    let most = most_steps(start, &kinds)?;
    let rates = Rates::of(start, &kinds);
    let mut state = first(start, &kinds);
    let mut days = vec![day(start, &state)];
    for number in 0..start.days {
        for part in 0..PARTS {
            let begun = f64::from(number) + f64::from(part) / f64::from(PARTS);
            let steps = steps_of_a_part(start, &kinds, &state).min(most);
            let step = 1.0 / f64::from(PARTS * steps);
            for taken in 0..steps {
                let load = load_on(start, begun + f64::from(taken) * step);
                state = stepped(&rates, load, step, state);
            }
        }
        days.push(day(start, &state));
    }
    let [tan, nitrite, nitrate, x, y, _, came, left] = state;
    Ok(Course { days, came, held: tan + nitrite + nitrate + IN_CELLS * (x + y), left })
}

fn first(start: &Start, kinds: &Kinds) -> State {
    let cells = |kind: &Kind| if kind.growth > 0.0 { start.there * kind.yields / kind.growth } else { 0.0 };
    let (x, y) = (cells(&kinds.ammonia), cells(&kinds.nitrite));
    let nitrate = start.nitrate_of_fill * start.water;
    [0.0, 0.0, nitrate, x, y, start.alkalinity * start.water, nitrate + IN_CELLS * (x + y), 0.0]
}

fn day(start: &Start, state: &State) -> Day {
    Day { tan: state[0] / start.water, nitrite: state[1] / start.water, nitrate: state[2] / start.water }
}

/// The load from the last of the days that have come.
fn load_on(start: &Start, day: f64) -> f64 {
    start.loads.iter().rev().find(|(from, _)| *from <= day).map_or(0.0, |(_, load)| *load)
}

/// Enough steps of any part of a day for the quickest change: all bacteria that the load can ever keep, with next to nothing to feed on.
fn most_steps(start: &Start, kinds: &Kinds) -> Result<u32, Refusal> {
    let most = start.loads.iter().map(|(_, load)| *load).fold(0.0, f64::max);
    let kept = |kind: &Kind| start.there.max(most * kind.growth / kind.decay);
    let steps =
        steps_for(start, [(&kinds.ammonia, kept(&kinds.ammonia)), (&kinds.nitrite, kept(&kinds.nitrite))]);
    if steps <= MOST_STEPS {
        // At most some hundreds, so nothing is cut off.
        return Ok(steps as u32);
    }
    Err(Refusal::new(
        "the filter answers the water within minutes: its bacteria or the feed are very many for so little water",
    ))
}

/// Enough steps of one part: for the bacteria that are there, grown all the while with plenty to feed on.
fn steps_of_a_part(start: &Start, kinds: &Kinds, state: &State) -> u32 {
    let turned = |kind: &Kind, cells: f64| {
        cells.max(0.0) * libm::exp(kind.growth / f64::from(PARTS)) * kind.growth / kind.yields
    };
    let [_, _, _, x, y, ..] = *state;
    let steps = steps_for(
        start,
        [(&kinds.ammonia, turned(&kinds.ammonia, x)), (&kinds.nitrite, turned(&kinds.nitrite, y))],
    );
    // At most some hundreds, so nothing is cut off.
    steps.min(MOST_STEPS) as u32
}

/// Steps of a part of a day for what each kind could turn over, kg/d.
fn steps_for(start: &Start, each: [(&Kind, f64); 2]) -> f64 {
    let answers = each.map(|(kind, most)| most / (start.water * kind.half));
    let quickest = answers[0].max(answers[1]) + start.changed / start.water;
    (STEPS_IN_ANSWER * quickest / f64::from(PARTS)).ceil().max(LEAST_STEPS)
}

/// One step of the classical method of the fourth order (Runge and Kutta), which keeps sums as exactly as it adds.
fn stepped(rates: &Rates<'_>, load: f64, step: f64, state: State) -> State {
    let ahead = |slope: &State, by: f64| -> State { std::array::from_fn(|i| state[i] + by * slope[i]) };
    let one = slope(rates, load, &state);
    let two = slope(rates, load, &ahead(&one, step / 2.0));
    let three = slope(rates, load, &ahead(&two, step / 2.0));
    let four = slope(rates, load, &ahead(&three, step));
    std::array::from_fn(|i| state[i] + step / 6.0 * (one[i] + 2.0 * two[i] + 2.0 * three[i] + four[i]))
}

/// What of a start-up and its kinds stays the same from step to step, so that a step divides but twice.
pub(crate) struct Rates<'s> {
    start: &'s Start,
    kinds: &'s Kinds,
    /// Turnover by a kilogram of cells with plenty to feed on, 1/d: ammonia, nitrite.
    most: [f64; 2],
    /// Amounts in the water at which half of it is reached, kg.
    half: [f64; 2],
    /// Share of the water changed, 1/d.
    share: f64,
    /// Alkalinity and nitrate that the fill brings, kg/d.
    filled: [f64; 2],
}

impl<'s> Rates<'s> {
    pub(crate) fn of(start: &'s Start, kinds: &'s Kinds) -> Self {
        let each = [&kinds.ammonia, &kinds.nitrite];
        Rates {
            start,
            kinds,
            most: each.map(|kind| kind.growth / kind.yields),
            half: each.map(|kind| kind.half * start.water),
            share: start.changed / start.water,
            filled: [start.alkalinity_of_fill, start.nitrate_of_fill].map(|brought| start.changed * brought),
        }
    }

    /// What one kind turns over, kg/d, of an amount of its food, kg.
    fn turned(&self, kind: usize, food: f64, cells: f64) -> f64 {
        let food = food.max(0.0);
        (self.most[kind] * food / (self.half[kind] + food) * cells).min(self.start.bed)
    }
}

/// Change a day of each amount.
pub(crate) fn slope(rates: &Rates<'_>, load: f64, state: &State) -> State {
    let [tan, nitrite, nitrate, x, y, alkalinity, ..] = *state;
    let (one, two) = (&rates.kinds.ammonia, &rates.kinds.nitrite);
    let slowed = growth::by_alkalinity(alkalinity / rates.start.water);
    let (to_nitrite, to_nitrate) = (rates.turned(0, tan, slowed * x), rates.turned(1, nitrite, y));
    let (grown, also) = (to_nitrite * one.yields, to_nitrate * two.yields);
    let (lost, too) = (one.decay * x, two.decay * y);
    let into_cells = IN_CELLS * (grown + also - lost - too);
    let ([alkaline, fill], share) = (rates.filled, rates.share);
    [
        load - to_nitrite - into_cells - share * tan,
        to_nitrite - to_nitrate - share * nitrite,
        to_nitrate + fill - share * nitrate,
        grown - lost,
        also - too,
        alkaline - share * alkalinity - ALKALINITY_OF_NITROGEN * to_nitrite,
        load + fill,
        share * (tan + nitrite + nitrate),
    ]
}

impl Course {
    /// The highest total ammonia and the highest nitrite of any day's end, kg/m³.
    pub fn peaks(&self) -> (f64, f64) {
        let most = |of: fn(&Day) -> f64| self.days.iter().map(of).fold(0.0, f64::max);
        (most(|day| day.tan), most(|day| day.nitrite))
    }

    /// The first day at or after `from` from which both stay at or under their targets (kg/m³) to the end; none when they do not.
    pub fn under_from(&self, from: usize, tan: f64, nitrite: f64) -> Option<usize> {
        let over = self.days.iter().rposition(|day| day.tan > tan || day.nitrite > nitrite);
        match over {
            Some(last) if last + 1 == self.days.len() => None,
            Some(last) => Some(from.max(last + 1)),
            None => Some(from),
        }
    }
}
