//! The heater of the sound room worked by hand: evaporation, loss, rise when it sticks, to half a per cent.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_model::{About, Subject};
use haulout_sheet::{Book, Case, Catalogued, Limits};
use haulout_tests::{examples, load, number};

/// A figure of the sound room in SI, of the first of its kind.
fn figure(figure: &'static dyn Catalogued, about: About, case: Case) -> f64 {
    let (_, text) = examples()
        .into_iter()
        .find(|(name, _)| name == "reedwater-sound.json")
        .expect("the sound room is there");
    let loaded = load(&text).expect("the sound room is read without a problem");
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let line = figure.line(book.sheet(case), Subject::nth(about, 0));
    number(&book, line.unwrap_or_else(|gaps| panic!("{gaps:?}")))
}

fn close(got: f64, by_hand: f64) {
    assert!((got / by_hand - 1.0).abs() <= 5e-3, "{got} against {by_hand} by hand");
}

#[test]
fn evaporation_of_the_main_pool() {
    use haulout_figures::heat::evaporation::EVAPORATION_HIGH;
    // 13.76 m2 at 25.5 °C: 3 265 Pa; air of 25 °C and 60 %: 0.6 × 3 170 = 1 902 Pa. 4e-8 × 13.76 × 0.5 × 1 363 = 3.751e-4 kg/s, a tenth covered, by 1.5.
    close(figure(&EVAPORATION_HIGH, About::Pool, Case::NORMAL), 3.751e-4 * 0.9 * 1.5);
}

#[test]
fn loss_of_both_pools_and_the_reserve() {
    use haulout_figures::heat::heater::RESERVE;
    use haulout_figures::heat::loss::JOINED_LOSS;
    // Main: 5.064e-4 × 2.4405e6 = 1236; air 10 × 13.76 × 0.5 = 69; bed 13.76 × 13.5 / (0.333 + 1.389) = 108; walls 7.69 × 16.79 × 0.469 × 0.5 = 30;
    // fill 0.8 / 86400 × 997 × 4181 × 17.5 = 675: 2 118 W. Basin: 4.41e-5 × 2.4405e6 = 108; 10 × 2.16 × 2.5 = 54; 3 × 2.16 × 13.5 = 87; 7.69 × 2.4 × 2.5 = 46: 295 W.
    close(figure(&JOINED_LOSS, About::Pool, Case::NORMAL), 2_413.0);
    close(figure(&RESERVE, About::Pool, Case::NORMAL), 3_000.0 / 2_413.0);
}

#[test]
fn stuck_on_over_a_night() {
    use haulout_figures::heat::heater::STUCK_END;
    // 5.98 + 0.86 = 6.85 m3: 997 × 6.85 × 4181 = 28.54 MJ/K; 3 kW over 14 h are 151.2 MJ, 5.30 K over 27.0 °C.
    let end = figure(&STUCK_END, About::HeaterPool, Case::NORMAL) - 300.15;
    close(end, 5.30);
}
