//! Both duty points of the sound example, filters clean and dirty, worked by hand as plain arithmetic.
//!
//! At 25.5 °C water has 8.827e-7 m²/s (IAPWS SR6-08: 8.800e-4 Pa·s over 996.9 kg/m³). PE pipe has a wall of 1.5 µm (Moody-type
//! tables). The friction factor is Colebrook's, 1/sqrt(f) = -2 log10(ε / (3.7 D) + 2.51 / (Re sqrt(f))), put into itself until
//! it stands; the last step is shown. A loss read at 4 m³/h grows with the square of the flow. The pump curve runs straight
//! between the points of its maker.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_model::Subject;
use haulout_sheet::{Book, Case, Limits};
use haulout_tests::{Loaded, examples, load};

fn sound() -> Loaded {
    let found = examples().into_iter().find(|(name, _)| name == "reedwater-sound.json");
    let (_, text) = found.expect("the sound example is there");
    load(&text).unwrap_or_else(|problems| panic!("{problems:#?}"))
}

/// The number of a figure in a case, in SI.
fn figure(loaded: &Loaded, id: &str, key: &str, case: Case) -> f64 {
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let figure = haulout_figures::CATALOGUE.iter().find(|f| f.card().id == id);
    let figure = figure.unwrap_or_else(|| panic!("there is no figure {id}"));
    let subjects: Vec<Subject> = figure.card().about.walk(&loaded.design).subjects;
    let at = subjects.into_iter().find(|s| s.key(&loaded.design) == key);
    let at = at.unwrap_or_else(|| panic!("there is no {key}"));
    let line = figure.line(book.sheet(case), at).unwrap_or_else(|gaps| panic!("{gaps:#?}"));
    let datum = book.record(line).datum.clone();
    datum.number().unwrap_or_else(|| panic!("{id} is no number"))
}

fn agree(found: f64, by_hand: f64, what: &str) {
    let share = (found / by_hand - 1.0).abs();
    assert!(share <= 0.005, "{what}: {found}, by hand {by_hand}");
}

/// Pump and system at a flow found by trying: both heads agree, and so do the sheet's flow and head.
fn duty(circuit: &str, case: Case, flow: f64, pump: f64, system: f64) {
    let loaded = sound();
    agree(pump, system, "pump and system");
    agree(figure(&loaded, "delivered-flow", circuit, case), flow / 3600.0, "the delivered flow");
    agree(figure(&loaded, "duty-head", circuit, case), system, "the head at the duty point");
}

/// 63 mm PE of 55.4 mm bore (0.00241051 m²), 14 m, K 9, lift 0.30 m; 6.470 m³/h is 1.79722 L/s.
/// V = 0.00179722 / 0.00241051 = 0.74558 m/s, V²/2g = 0.028342 m, Re = 0.74558 × 0.0554 / 8.827e-7 = 46 793.
/// Last step: sqrt(f) = 0.14594; 7.318e-6 + 2.51 / 6829.0 = 3.7487e-4; -2 log10 = 6.8522; f = 0.021298.
#[test]
fn the_filter_loop_clean() {
    let friction = 0.021_298 * 14.0 / 0.0554 * 0.028_342;
    let screen = 0.3 * (6.470_f64 / 4.0) * (6.470 / 4.0);
    let system = 0.30 + friction + 9.0 * 0.028_342 + screen;
    let pump = 1.9 + (0.6 - 1.9) * (6.470 - 6.0) / (7.5 - 6.0);
    duty("circuit:filter-loop", Case::NORMAL, 6.470, pump, system);
}

/// The same pipe at 5.053 m³/h, 1.40361 L/s: V = 0.58229 m/s, V²/2g = 0.017287 m, Re = 36 545.
/// Last step: sqrt(f) = 0.15004; 7.318e-6 + 2.51 / 5483.2 = 4.6508e-4; -2 log10 = 6.6649; f = 0.022512.
#[test]
fn the_filter_loop_dirty() {
    let friction = 0.022_512 * 14.0 / 0.0554 * 0.017_287;
    let screen = 1.2 * (5.053_f64 / 4.0) * (5.053 / 4.0);
    let system = 0.30 + friction + 9.0 * 0.017_287 + screen;
    let pump = 3.1 + (1.9 - 3.1) * (5.053 - 4.0) / (6.0 - 4.0);
    duty("circuit:filter-loop", Case::NORMAL.dirty(), 5.053, pump, system);
}

/// 45 mm bore (0.00159043 m²), 16 m, K 10, lift 0.35 m; 5.238 m³/h is 1.45500 L/s: V = 0.91485 m/s, V²/2g = 0.042672 m,
/// Re = 46 638. Last step: sqrt(f) = 0.14607; 9.009e-6 + 2.51 / 6812.2 = 3.7746e-4; -2 log10 = 6.8462; f = 0.021335.
#[test]
fn the_basin_loop_clean() {
    let friction = 0.021_335 * 16.0 / 0.045 * 0.042_672;
    let clarifier = 0.15 * (5.238_f64 / 4.0) * (5.238 / 4.0);
    let system = 0.35 + friction + 10.0 * 0.042_672 + clarifier;
    let pump = 2.1 + (0.9 - 2.1) * (5.238 - 4.0) / (6.0 - 4.0);
    duty("circuit:basin-loop", Case::NORMAL, 5.238, pump, system);
}

/// At 4.853 m³/h, 1.34806 L/s: V = 0.84760 m/s, V²/2g = 0.036630 m, Re = 43 210.
/// Last step: sqrt(f) = 0.14730; 9.009e-6 + 2.51 / 6365.0 = 4.0335e-4; -2 log10 = 6.7886; f = 0.021699.
#[test]
fn the_basin_loop_dirty() {
    let friction = 0.021_699 * 16.0 / 0.045 * 0.036_630;
    let clarifier = 0.4 * (4.853_f64 / 4.0) * (4.853 / 4.0);
    let system = 0.35 + friction + 10.0 * 0.036_630 + clarifier;
    let pump = 2.1 + (0.9 - 2.1) * (4.853 - 4.0) / (6.0 - 4.0);
    duty("circuit:basin-loop", Case::NORMAL.dirty(), 4.853, pump, system);
}

/// Of the 14 m and K 9 of the filter loop 4 m and K 3 lie before the pump, with clean screens: 0.021298 × 4 / 0.0554 + 3 = 4.5378 velocity
/// heads of 0.028342 m. The eye lies 0.52 m under the lowest running level; the water at its warmest, 27 °C, has 3.568 kPa of vapour (IAPWS
/// R7-97) and 996.5 kg/m³: (95 000 - 3 568) / (996.5 × 9.80665) + 0.52 - 0.12861 = 9.747 m, of which the pump needs 2 m.
#[test]
fn the_suction_of_the_filter_loop() {
    let loaded = sound();
    let loss = (0.021_298 * 4.0 / 0.0554 + 3.0) * 0.028_342;
    agree(
        figure(&loaded, "suction-loss", "circuit:filter-loop", Case::NORMAL),
        loss,
        "the loss before the pump",
    );
    let spare = (95_000.0 - 3_568.0) / (996.5 * 9.806_65) + 0.52 - loss - 2.0;
    agree(figure(&loaded, "suction-spare", "circuit:filter-loop", Case::NORMAL), spare, "the head to spare");
}
