//! The water of the sound example worked by hand, as plain arithmetic, against the figures of the sheet.
//!
//! Section *levels*: what runs back into the main pool when the pumps stop, where its water then stands, how low main
//! pool and basin get, what a parted joint lets out, how long emptying takes.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_model::Subject;
use haulout_sheet::{Book, Case, Limits};
use haulout_tests::{Loaded, examples, load};

fn sound() -> Loaded {
    let found = examples().into_iter().find(|(name, _)| name == "reedwater-sound.json");
    let (_, text) = found.expect("the sound example is there");
    load(&text).unwrap_or_else(|problems| panic!("{problems:#?}"))
}

/// The number of a figure, in SI.
fn figure(loaded: &Loaded, id: &str, key: &str) -> f64 {
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let figure = haulout_figures::CATALOGUE.iter().find(|f| f.card().id == id);
    let figure = figure.unwrap_or_else(|| panic!("there is no figure {id}"));
    let subjects: Vec<Subject> = figure.card().about.walk(&loaded.design).subjects;
    let at = subjects.into_iter().find(|s| s.key(&loaded.design) == key);
    let at = at.unwrap_or_else(|| panic!("there is no {key}"));
    let line = figure.line(book.sheet(Case::NORMAL), at).unwrap_or_else(|gaps| panic!("{gaps:#?}"));
    let datum = book.record(line).datum.clone();
    datum.number().unwrap_or_else(|| panic!("{id} is no number"))
}

fn agree(found: f64, by_hand: f64, what: &str) {
    let share = (found / by_hand - 1.0).abs();
    assert!(share <= 0.005, "{what}: the sheet has {found}, by hand it is {by_hand}");
}

/// Clean flows of both circuits as the sheet has them, m³/h; their duty points are another matter.
const BASIN_LOOP: f64 = 5.238 / 3600.0;
const FILTER_LOOP: f64 = 6.470 / 3600.0;

/// Francis in SI: 3.33 × 0.3048^0.5 = 1.838451 (Water Measurement Manual, US Bureau of Reclamation).
const FRANCIS: f64 = 1.838_451;

/// Cross products of neighbouring corners of the main pool, from the first corner on: -18.48 + 3.44 + 10.16 + 8.30 + 7.66 +
/// 6.10 + 5.12 + 5.80 + 0.68 - 1.26 = 27.52, and half of that.
const MAIN_SURFACE: f64 = 13.76;

/// 1.8 m by 1.2 m.
const BASIN_SURFACE: f64 = 2.16;

/// The stream is 0.80623 + 0.76158 + 0.41231 m long and falls 0.25 m. At 10.45 mm a bed 0.30 m wide has a section of
/// 0.003135 m², wets 0.3209 m, so R = 9.7694 mm, R^(2/3) = 0.045703, and with n = 0.035 (Chow 1959: gravel and cobbles)
/// V = 0.045703 × 0.355323 / 0.035 = 0.46398 m/s: 1.4546 L/s, which is 5.237 m³/h.
#[test]
fn the_stream_and_its_film() {
    let loaded = sound();
    let depth = 0.010_45;
    agree(0.003_135 * 0.463_98, BASIN_LOOP, "the flow of the stream");
    agree(figure(&loaded, "stream-depth", "stream:brook"), depth, "the depth of the stream");
    agree(figure(&loaded, "stream-velocity", "stream:brook"), 0.463_98, "its velocity");
    let film = 1.980_12 * 0.30 * depth;
    agree(figure(&loaded, "stream-film", "stream:brook"), film, "the film of the stream");
}

/// Heads of the lips: h^1.5 = Q / (1.838451 b). Over 0.30 m it is 2.6381e-3, and 0.019092^1.5 is that; over 0.80 m it is
/// 1.22196e-3, and 0.011430^1.5 is that.
#[test]
fn what_runs_back_and_where_the_water_stands() {
    let loaded = sound();
    let (brook, wetland): (f64, f64) = (0.019_092, 0.011_430);
    agree(brook * brook.sqrt() * FRANCIS * 0.30, BASIN_LOOP, "the lip of the stream");
    agree(wetland * wetland.sqrt() * FRANCIS * 0.80, FILTER_LOOP, "the lip of the wetland");
    agree(figure(&loaded, "stream-lip-head", "stream:brook"), brook, "the head over the lip of the stream");
    // The gravel ends 10 mm under the lip of the wetland, so that its film stands in the open.
    let films = 0.006_208 + BASIN_SURFACE * brook + 3.0 * 1.2 * wetland;
    let pipes = std::f64::consts::FRAC_PI_4 * (0.055_4 * 0.055_4 * 14.0 + 0.045 * 0.045 * 16.0);
    // The return into the wetland breaks at +1.10 m, over its water; the other ends over the basin.
    let back = films + pipes;
    agree(figure(&loaded, "drain-down", "pool:main"), back, "what runs back");
    let rise = back / MAIN_SURFACE;
    agree(figure(&loaded, "pumps-off-rise", "pool:main"), rise, "the rise");
    agree(figure(&loaded, "pumps-off-level", "pool:main"), 0.80 + rise, "the level with the pumps off");
    let left = 0.95 - (0.80 + rise + 0.020);
    agree(figure(&loaded, "pumps-off-freeboard", "pool:main"), left, "the freeboard with the pumps off");
    // Fourteen hours unattended at 6 mm a day.
    let dry = 0.006 * 14.0 / 24.0;
    agree(
        figure(&loaded, "lowest-level", "pool:main"),
        0.80 - rise - dry,
        "the lowest level of the main pool",
    );
    agree(figure(&loaded, "lowest-level", "pool:basin"), 1.05 - brook - dry, "the lowest level of the basin");
}

/// From +0.80 m to the cut-out at +0.74 m, over the shelf at +0.68 m, all round the same surface; the corridor of 12.0 m by
/// 1.1 m holds 100 mm.
#[test]
fn a_parted_joint() {
    let loaded = sound();
    agree(figure(&loaded, "joint-loss", "circuit:filter-loop"), MAIN_SURFACE * 0.06, "what is lost");
    agree(figure(&loaded, "bund", "circuit:filter-loop"), 12.0 * 1.1 * 0.10, "what the bund holds");
}

/// The deep bed at +0.10 m, a turtle 85 mm high on it: to be drawn down to +0.185 m at 8 m³/h. Under that level lie 85 mm of
/// the deep zone alone; its volume is what is left of the whole.
#[test]
fn drawn_down() {
    let loaded = sound();
    let deep =
        half_cross(&[[1.5, 2.8], [7.1, 2.8], [7.3, 3.4], [6.8, 3.9], [4.6, 4.0], [2.2, 3.9], [1.3, 3.4]]);
    let gross = figure(&loaded, "gross-volume", "pool:main");
    let hours = (gross - 0.085 * deep) / 8.0;
    let found = figure(&loaded, "draw-down-time", "pool:main+group:reeves");
    agree(found, hours * 3600.0, "the time to draw the water down");
}

/// Half the sum of the cross products of neighbouring corners.
fn half_cross(corners: &[[f64; 2]]) -> f64 {
    let next = |i: usize| corners[(i + 1) % corners.len()];
    let each = corners.iter().enumerate().map(|(i, [x, y])| x * next(i)[1] - next(i)[0] * y);
    0.5 * each.sum::<f64>()
}

#[test]
fn the_surface_of_the_main_pool() {
    let rim = [
        [1.0, 2.8],
        [7.6, 2.8],
        [8.0, 3.4],
        [7.6, 4.5],
        [6.6, 5.0],
        [5.2, 5.1],
        [3.8, 4.9],
        [2.6, 4.7],
        [1.2, 4.4],
        [0.8, 3.5],
    ];
    agree(half_cross(&rim), MAIN_SURFACE, "the surface of the main pool");
}
