//! The start-up of the sound room and of its draft worked by hand, to half a per cent where a hand can.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_model::{About, Subject};
use haulout_sheet::{Book, Case, Catalogued, Limits};
use haulout_tests::{examples, load, number};

/// A figure of one of the two rooms in SI, of the subject at a position.
fn figure(room: &str, figure: &'static dyn Catalogued, about: About, at: usize) -> f64 {
    let found = examples().into_iter().find(|(name, _)| name == room);
    let loaded = load(&found.expect("the room is there").1).expect("it is read without a problem");
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let line = figure.line(book.sheet(Case::NORMAL), Subject::nth(about, at));
    number(&book, line.unwrap_or_else(|gaps| panic!("{gaps:?}")))
}

const SOUND: &str = "reedwater-sound.json";
const DRAFT: &str = "reedwater-first-draft.json";
/// A gram a day in kg/s.
const A_DAY: f64 = 1e-3 / 86_400.0;

fn close(got: f64, by_hand: f64) {
    assert!((got / by_hand - 1.0).abs() <= 5e-3, "{got} against {by_hand} by hand");
}

#[test]
fn what_the_moved_gravel_turns_over() {
    use haulout_figures::startup::start::{MOVED_IN, STEP_NITROGEN};
    // 0.60 m3 of 300 m2/m3 are 180 m2, a fifth of it works and 70 % are alive: 25.2 m2 of 0.2 g are 5.04 g at 20 °C. The coolest
    // water has 24 °C: 68 000 / 8.31 × 4 / (297.15 × 293.15) = 0.3758, e to it 1.456.
    close(figure(SOUND, &MOVED_IN, About::Pool, 0), 5.04 * 1.456 * A_DAY);
    // 60 g of pellets of 38 % hold 3.648 g of nitrogen for six turtles, two of which come.
    close(figure(SOUND, &STEP_NITROGEN, About::Stocking, 1), 3.648 / 3.0 * A_DAY);
}

#[test]
fn a_tub_of_twenty_litres_afloat() {
    use haulout_figures::startup::arrival::{FLOAT_TIME, MIXING_TIME};
    // A cube of 20 L has sides of 0.2714 m, the natural logarithm of 3.5 is 1.2528: 5581 × 0.2714 × 1.2528 = 1898 s.
    close(figure(SOUND, &FLOAT_TIME, About::Arrival, 0), 1898.0);
    close(figure(SOUND, &MIXING_TIME, About::Arrival, 0), 48.0 * 60.0);
}

/// The draft of the same room: nothing moved in and 3.968 g a day from the four pond turtles (40 g of gel typed as 62 % of protein).
/// The room holds 6.85 m3, of which 0.8 m3 is changed a day: with no bacteria at all the ammonia would climb towards 3.968 / 0.8 =
/// 4.96 mg/L and stand at 4.96 × (1 - e^(-7 × 0.8 / 6.85)) = 2.77 mg/L after the week until the next step. In a week few bacteria grow: no
/// more than a tenth less.
#[test]
fn a_bare_filter_in_its_first_week() {
    use haulout_figures::startup::step::STEP_TAN;
    let got = figure(DRAFT, &STEP_TAN, About::Stocking, 0) * 1000.0;
    assert!((0.9 * 2.77..=2.77).contains(&got), "{got} mg/L");
}

/// With media in full work the water at rest holds what Monod says the fed bacteria leave: half-saturation × decay / (growth - decay). The
/// slowest set is the worst: growth 0.297 a day at 20 °C, × 1.456 for 24 °C, × 4.75 / (4.75 + 0.6) for the oxygen: 0.384; 2.4 × 0.014 / 0.370
/// = 0.091 mg/L. Ninety days after the last step it has come near that from above, and is under the peak of the step.
#[test]
fn at_the_end_little_is_left() {
    use haulout_figures::startup::course::COURSE;
    let found = examples().into_iter().find(|(name, _)| name == SOUND).expect("the room is there");
    let loaded = load(&found.1).expect("it is read without a problem");
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let line = COURSE.of(book.sheet(Case::NORMAL), Subject::nth(About::Pool, 0));
    let line = line.unwrap_or_else(|gaps| panic!("{gaps:?}"));
    let haulout_sheet::Datum::Thing(thing) = book.record(line.id()).datum.clone() else {
        panic!("a course is no number");
    };
    let courses = thing.downcast::<haulout_calc::startup::band::Courses>().expect("it is a course");
    let last = courses.of[0].days.last().expect("it has days").tan * 1000.0;
    assert!((0.091..=2.5 * 0.091).contains(&last), "{last} mg/L");
    assert_eq!(courses.of[0].days.len(), 70 + 90 + 1);
}
