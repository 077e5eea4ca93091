//! The course against laws and against a second way to integrate it; growth against what is printed.

use std::sync::Arc;

use haulout_quantity::Measure;
use haulout_quantity::si::{MassDensity, Ratio};

use super::band::{COURSES, HIGHEST_NITRITE, HIGHEST_TAN, READY_EARLY, READY_LATE, loads};
use super::course::{Course, Rates, Start, follow, slope};
use super::growth::{IN_CELLS, Pace, at, at_20};

/// 8.9 m³ at 25.5 °C with 5.89 g of nitrogen a day from day 14 on, nothing moved in.
fn bare() -> Start {
    Start {
        water: 8.9,
        temperature: 298.65,
        oxygen: 0.006,
        alkalinity: 0.150,
        alkalinity_of_fill: 0.150,
        nitrate_of_fill: 0.002,
        changed: 0.3,
        loads: vec![(14.0, 0.00589)],
        there: BARE,
        bed: 0.030,
        days: 120,
    }
}

/// Water so hard that alkalinity never slows anything.
fn hard() -> Start {
    Start { alkalinity: 0.5, alkalinity_of_fill: 0.5, ..bare() }
}

fn grown() -> Start {
    Start { there: GROWN, ..bare() }
}

#[test]
fn no_nitrogen_is_lost_or_made() {
    for pace in Pace::ALL {
        for start in [bare(), grown()] {
            let course = follow(&start, pace).expect("within the range");
            let apart = (course.came - course.held - course.left).abs();
            assert!(apart <= 1e-9 * course.came, "{apart}");
        }
    }
}

#[test]
fn without_bacteria_ammonia_gathers_as_it_is_fed() {
    // 5.89 g a day in 8.9 m3 is 0.662 mg/L a day; with no change of water and no bacteria 9.26 mg/L in 14 days.
    let start = Start { there: 0.0, changed: 0.0, loads: vec![(0.0, 0.00589)], days: 14, ..bare() };
    let last = follow(&start, Pace::Middle).expect("within the range").days[14];
    assert!((last.tan - 14.0 * 0.00589 / 8.9).abs() < 1e-12);
    assert_eq!(last.nitrite, 0.0);
}

#[test]
fn at_rest_ammonia_is_where_growth_meets_decay() {
    // Monod: at rest mu S / (K + S) = b + D of cells, which are fixed, so S = K b / (mu - b). The second step likewise.
    let start = Start { loads: vec![(0.0, 0.00589)], there: 0.006, days: 1000, bed: 1.0, ..hard() };
    for pace in Pace::ALL {
        let kinds = at(pace, start.temperature, start.oxygen).expect("within the range");
        let rest = |k: &super::growth::Kind| k.half * k.decay / (k.growth - k.decay);
        let last = *follow(&start, pace).expect("within the range").days.last().expect("the start at least");
        assert!((last.tan / rest(&kinds.ammonia) - 1.0).abs() < 1e-3, "{pace:?} {last:?}");
        assert!((last.nitrite / rest(&kinds.nitrite) - 1.0).abs() < 1e-3, "{pace:?} {last:?}");
    }
}

#[test]
fn bacteria_double_as_the_printed_constants_say() {
    // ASM1 at 20 degrees with plenty: ln 2 / (0.5 - 0.05) = 1.540 d. Vannecke and Volcke: 20 to 28 degrees 2.099 times (68
    // kJ/mol), 20 to 30 degrees 2.511 and 1.814 times.
    let plenty = 1e6;
    let cold = at(Pace::Middle, 293.15, plenty).expect("within the range");
    let doubling = std::f64::consts::LN_2 / (cold.ammonia.growth - cold.ammonia.decay);
    assert!((doubling - 1.540).abs() < 5e-4, "{doubling}");
    let of = |t: f64| at(Pace::Middle, t, plenty).expect("within the range");
    assert!((of(301.15).ammonia.growth / 0.5 - 2.099).abs() < 1e-3);
    assert!((of(303.15).ammonia.growth / 0.5 - 2.511).abs() < 1e-3);
    assert!((of(303.15).nitrite.growth / 0.5 - 1.814).abs() < 1e-3);
}

/// A second way: backward Euler, each step found by turning round on itself, with Richardson's extrapolation of two step widths.
fn backward(start: &Start, pace: Pace, steps: u32) -> Vec<[f64; 8]> {
    let kinds = at(pace, start.temperature, start.oxygen).expect("within the range");
    let rates = Rates::of(start, &kinds);
    let nitrate = start.nitrate_of_fill * start.water;
    let x = start.there * kinds.ammonia.yields / kinds.ammonia.growth;
    let y = start.there * kinds.nitrite.yields / kinds.nitrite.growth;
    let mut state =
        [0.0, 0.0, nitrate, x, y, start.alkalinity * start.water, nitrate + IN_CELLS * (x + y), 0.0];
    let mut days = vec![state];
    for day in 0..start.days {
        for step in 0..steps {
            let time = f64::from(day) + f64::from(step) / f64::from(steps);
            let load = start.loads.iter().rev().find(|l| l.0 <= time).map_or(0.0, |l| l.1);
            let mut next = state;
            for _ in 0..60 {
                let slope = slope(&rates, load, &next);
                next = std::array::from_fn(|i| state[i] + slope[i] / f64::from(steps));
            }
            state = next;
        }
        days.push(state);
    }
    days
}

#[test]
fn a_second_way_to_integrate_agrees() {
    for pace in Pace::ALL {
        for start in [bare(), grown()] {
            let ours: Course = follow(&start, pace).expect("within the range");
            let (coarse, fine) = (backward(&start, pace, 64), backward(&start, pace, 128));
            let (most_tan, most_nitrite) = ours.peaks();
            for (day, (one, two)) in ours.days.iter().zip(coarse.iter().zip(&fine)) {
                let tan = (2.0 * two[0] - one[0]) / start.water;
                let nitrite = (2.0 * two[1] - one[1]) / start.water;
                let nitrate = (2.0 * two[2] - one[2]) / start.water;
                assert!((day.tan - tan).abs() < 5e-3 * most_tan, "{pace:?} {day:?} {tan}");
                assert!((day.nitrite - nitrite).abs() < 5e-3 * most_nitrite, "{pace:?} {day:?} {nitrite}");
                assert!((day.nitrate - nitrate).abs() < 5e-3 * day.nitrate, "{pace:?} {day:?} {nitrate}");
            }
        }
    }
}

const BARE: f64 = 0.000_006;
const GROWN: f64 = 0.006;

/// Total ammonia, nitrite and nitrate on a day, kg/m3: scipy 1.17.1, solve_ivp(method='Radau', rtol=1e-10, atol=1e-16) on the same
/// equations written again in Python, the day on which feeding begins being the end of one call and the start of the next.
const BY_A_LIBRARY: &[(Pace, f64, usize, [f64; 3])] = &[
    (Pace::Low, BARE, 20, [3.592866e-03, 2.105701e-06, 2.000004e-03]),
    (Pace::Low, BARE, 30, [8.117862e-03, 6.533300e-05, 2.000163e-03]),
    (Pace::Low, BARE, 60, [1.900762e-04, 1.747847e-04, 1.681956e-02]),
    (Pace::Low, GROWN, 20, [1.981539e-03, 4.490800e-04, 3.138761e-03]),
    (Pace::Low, GROWN, 30, [4.439053e-04, 9.792498e-05, 9.495153e-03]),
    (Pace::Low, GROWN, 60, [1.663939e-04, 3.570439e-05, 1.704010e-02]),
    (Pace::Middle, BARE, 20, [3.590169e-03, 4.768460e-06, 2.000004e-03]),
    (Pace::Middle, BARE, 30, [5.807517e-03, 2.342154e-03, 2.001063e-03]),
    (Pace::Middle, BARE, 60, [7.541583e-05, 4.777532e-05, 1.722229e-02]),
    (Pace::Middle, GROWN, 20, [8.187302e-04, 1.370112e-03, 3.369355e-03]),
    (Pace::Middle, GROWN, 30, [1.290570e-04, 9.063729e-05, 9.859192e-03]),
    (Pace::Middle, GROWN, 60, [7.625928e-05, 5.273628e-05, 1.724950e-02]),
    (Pace::High, BARE, 20, [3.589250e-03, 5.677543e-06, 2.000001e-03]),
    (Pace::High, BARE, 30, [8.885619e-05, 7.996313e-03, 2.003713e-03]),
    (Pace::High, BARE, 60, [8.821732e-05, 5.395870e-05, 1.727466e-02]),
    (Pace::High, GROWN, 20, [6.132187e-04, 2.018761e-03, 2.926451e-03]),
    (Pace::High, GROWN, 30, [1.132074e-04, 7.438523e-05, 9.918052e-03]),
    (Pace::High, GROWN, 60, [8.923192e-05, 5.990412e-05, 1.727747e-02]),
];

#[test]
fn a_library_integrates_the_same() {
    for (pace, there, day, wanted) in BY_A_LIBRARY {
        let course = follow(&Start { there: *there, ..bare() }, *pace).expect("within the range");
        let got = course.days[*day];
        // What is next to nothing is compared with the load of a day.
        for (got, wanted) in [got.tan, got.nitrite, got.nitrate].into_iter().zip(wanted) {
            let apart = (got - wanted).abs();
            assert!(apart <= 5e-3 * wanted.max(1e-5), "{pace:?} {there} day {day}: {got} {wanted}");
        }
    }
}

/// The band read by its formulas on a start that cannot grow: what is fed stands in the water.
#[test]
fn a_step_is_read_until_the_next() {
    let fed = loads(&[(10.0, 0.004), (4.0, 0.002)], 0.001);
    assert_eq!(fed, [(0.0, 0.001), (4.0, 0.002), (10.0, 0.006)]);
    assert_eq!(loads(&[(0.0, 0.004), (0.0, 0.002)], 0.001), [(0.0, 0.006)]);
    let start = Start { there: 0.0, changed: 0.0, loads: fed, days: 20, ..bare() };
    let courses = COURSES.work((Arc::new(start),)).expect("within the range");
    let highest = |day: f64| {
        let tan = HIGHEST_TAN.work((Arc::clone(&courses), Ratio::from_si(day))).expect("it is read");
        tan.value * 8.9
    };
    // 4 days of 1 g, 6 of 2 g, 10 of 6 g.
    assert!((highest(0.0) - 0.004).abs() < 1e-12, "{}", highest(0.0));
    assert!((highest(4.0) - 0.016).abs() < 1e-12, "{}", highest(4.0));
    assert!((highest(10.0) - 0.076).abs() < 1e-12, "{}", highest(10.0));
    let nitrite = HIGHEST_NITRITE.work((courses, Ratio::from_si(10.0))).expect("it is read");
    assert_eq!(nitrite.value, 0.0);
}

/// Days by the same library as above: with no target but for ammonia, the day's end at which it last stood over 1 mg/L.
#[test]
fn the_days_are_a_band() {
    let asked = |there| {
        let start = Arc::new(Start { there, ..hard() });
        let (day, target) = (Ratio::from_si(14.0), MassDensity::from_si(0.001));
        (start, day, target, MassDensity::from_si(1.0))
    };
    let days = |of: &super::band::ReadyFormula, there| {
        of.work(asked(there)).expect("carried in the end").value / 86_400.0
    };
    let (early, late) = (days(&READY_EARLY, BARE), days(&READY_LATE, BARE));
    let alone = |pace| {
        let course = follow(&Start { there: BARE, ..hard() }, pace).expect("within the range");
        let over = course.days.iter().rposition(|day| day.tan > 0.001).expect("it is over");
        over as f64 + 1.0
    };
    assert_eq!(early, alone(Pace::High));
    assert_eq!(late, alone(Pace::Low));
    let barren = Start { there: 0.0, ..hard() };
    let (day, tan) = (Ratio::from_si(14.0), MassDensity::from_si(0.001));
    let refusal =
        READY_LATE.work((Arc::new(barren), day, tan, tan)).expect_err("nothing grows out of nothing");
    assert!(refusal.why.contains("90 days"), "{}", refusal.why);
}

#[test]
fn a_filter_started_from_little_takes_weeks_and_moved_media_days() {
    // FAO 589, chapter 5, as summed up in Italian: three to five weeks. From a thousandth of what 0.66 mg/L a day asks for, the
    // slow set takes just over six weeks and none less than three; the printed span lies within the band.
    let start = Start { loads: vec![(0.0, 0.00589)], there: 0.000_006, ..hard() };
    let of = |pace| follow(&start, pace).expect("within the range").under_from(0, 0.0005, 0.0005);
    let (low, middle, high) = (of(Pace::Low), of(Pace::Middle), of(Pace::High));
    assert!(low.is_some_and(|day| (35..=49).contains(&day)), "{low:?}");
    assert!(middle.is_some_and(|day| (21..=35).contains(&day)), "{middle:?}");
    assert!(high < middle && high.is_some_and(|day| day >= 14), "{high:?}");
    // At 0.5 mg/L, half of the half-saturation, bacteria work at a third: media for three times the load keep it from the start.
    let moved = Start { there: 0.018, ..start.clone() };
    let day = follow(&moved, Pace::Middle).expect("within the range").under_from(0, 0.0005, 0.0005);
    assert!(day.is_some_and(|day| day <= 3), "{day:?}");
}

#[test]
fn nothing_and_too_much_are_refused_with_a_sentence() {
    for start in [
        Start { water: 0.0, ..bare() },
        Start { water: f64::NAN, ..bare() },
        Start { days: 1_001, ..bare() },
        Start { temperature: 275.0, ..bare() },
        Start { loads: vec![(0.0, 50.0)], ..bare() },
    ] {
        let refusal = follow(&start, Pace::Low).expect_err("outside the range");
        assert!(refusal.why.len() > 20);
    }
}

#[test]
fn without_alkalinity_ammonia_stays() {
    let start = Start { alkalinity: 0.0, alkalinity_of_fill: 0.0, ..grown() };
    let with = follow(&grown(), Pace::Middle).expect("within the range").peaks().0;
    let without = follow(&start, Pace::Middle).expect("within the range").peaks().0;
    assert!(without > 10.0 * with, "{without} {with}");
}

#[test]
fn the_sets_are_a_band() {
    let net = |pace: Pace| at_20(pace).ammonia.growth - at_20(pace).ammonia.decay;
    assert!(net(Pace::Low) < net(Pace::Middle) && net(Pace::Middle) < net(Pace::High));
}
