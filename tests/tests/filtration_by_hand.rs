//! The filter of the sound room worked by hand: up-flow, nitrogen, oxygen, to half a per cent.
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

/// The pump's head falls from 3.1 m at 4 m3/h to 1.9 m at 6 m3/h. The 55.4 mm pipe has an area of 24.1 cm2. Try 5.9 m3/h:
/// velocity 0.680 m/s, velocity head 23.6 mm; Reynolds number 0.680 × 0.0554 / 8.8e-7 = 42 800, friction factor 0.0217 (Moody, smooth);
/// 14 m of pipe 0.0217 × 14 / 0.0554 = 5.48 and fittings 9: 14.5 × 23.6 mm = 0.342 m. The clean screen loses 0.3 × (5.9 / 4)^2 = 0.653 m.
/// With 0.30 m static head 1.295 m are asked, and the pump has 3.1 - 0.6 × 1.9 = 1.96 m: more flow. Beyond 6 m3/h it falls by 1.3 m over 1.5 m3/h. Try 6.47 m3/h:
/// velocity 0.746 m/s, head 28.4 mm, factor 0.0213, 14.4 × 28.4 mm = 0.408 m; screen 0.785 m; 1.493 m asked. The pump has 1.9 - 0.47 × 0.867 = 1.493 m.
const CLEAN: f64 = 6.47 / 3600.0;

/// The same with the dirty screen, 1.2 m at 4 m3/h. Try 5.05 m3/h: velocity 0.582 m/s, head 17.3 mm, factor 0.0225, 14.7 × 17.3 mm = 0.254 m;
/// screen 1.2 × (5.05 / 4)^2 = 1.913 m; 2.467 m asked. The pump has 3.1 - 1.05 × 0.6 = 2.470 m.
const DIRTY: f64 = 5.05 / 3600.0;

#[test]
fn up_flow_of_the_wetland() {
    use haulout_figures::filtration::gravel::{PLAN_AREA, UP_FLOW};
    // 3.0 m by 1.2 m.
    close(figure(&PLAN_AREA, About::Filter, Case::NORMAL), 3.6);
    close(figure(&UP_FLOW, About::Filter, Case::NORMAL), CLEAN / 3.6);
}

#[test]
fn nitrogen_of_both_groups() {
    use haulout_figures::filtration::load::{NITROGEN, NITROGEN_PEAK};
    // 60 g/d of pellets at 38 % and 40 g/d of gel at 20 % hold 22.8 + 8.0 = 30.8 g of protein, 4.928 g of nitrogen; by 1.6 on the largest day.
    let a_day = 1e-3 / 86_400.0;
    close(figure(&NITROGEN, About::Pool, Case::NORMAL), 4.928 * a_day);
    close(figure(&NITROGEN_PEAK, About::Pool, Case::NORMAL), 7.885 * a_day);
}

#[test]
fn oxygen_through_the_wetland() {
    use haulout_figures::filtration::oxygen::{OXYGEN_PASSED, OXYGEN_WANTED};
    // 7 mg/L come in and are less than the 7.97 mg/L that water of 27 °C holds: 5 g/m3 may stay in the bed.
    close(figure(&OXYGEN_PASSED, About::Filter, Case::NORMAL.dirty()), DIRTY * 5e-3);
    // 4.57 × 7.885 g = 36.03 g a day; the wetland is the only bed.
    close(figure(&OXYGEN_WANTED, About::Filter, Case::NORMAL), 36.03e-3 / 86_400.0);
}
