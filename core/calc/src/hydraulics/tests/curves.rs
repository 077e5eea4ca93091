//! Pump and system curves and where they meet.

use super::*;

#[test]
fn pump_from_a_table_single_in_series_and_side_by_side() {
    // Lecture problem 4.9.4 of reviewpe.com, straight lines between points; system 35 + 0.002 Q² (ft, US gpm).
    let table = [(0.0, 100.0), (110.0, 90.0), (180.0, 80.0), (250.0, 60.0), (300.0, 40.0), (340.0, 20.0)];
    let points: Vec<_> = table.map(|(q, h)| (rate(q * US_GPM), m(h * FOOT))).into();
    let pump = PumpCurve::new(&points).unwrap();
    let device = DeviceLoss { loss: m(20.0 * FOOT), at: rate(100.0 * US_GPM) };
    let system = SystemCurve::new(m(35.0 * FOOT), nu(1e-6), &[], &[device]).unwrap();
    for (pump, gpm, feet) in [
        (pump.clone(), 155.68, 83.47),
        (pump.one_after_the_other(2), 223.66, 135.05),
        (pump.side_by_side(2), 169.27, 92.31),
    ] {
        let Duty::One(point) = duty_points(&pump, &system) else { panic!("one duty point") };
        close(point.flow.value / US_GPM, gpm, 5e-5);
        close(point.head.value / FOOT, feet, 1e-4);
    }
    // The table ends at 20 ft, so the label is its last flow.
    close(pump.label_flow().value / US_GPM, 340.0, 1e-12);
}

#[test]
fn meetings_none_beyond_several_and_touching() {
    // By hand, L/s and m. A rising start against a flat 5.5 m: 0.5 on the way up, 2 + 0.7 / 1.2 on the way down.
    let rising = curve(&[(0.0, 5.0), (1.0, 6.0), (2.0, 6.2), (3.0, 5.0), (4.0, 1.0)]);
    let met = litres(&duty_points(&rising, &square_system(5.5, 0.0)));
    assert_eq!(met.len(), 2);
    close(met[0], 0.5, 1e-11);
    close(met[1], 2.0 + 0.7 / 1.2, 1e-11);
    assert_eq!(litres(&duty_points(&rising, &square_system(6.2, 0.0))).len(), 1, "touches the summit");
    assert_eq!(duty_points(&rising, &square_system(6.3, 0.0)), Duty::None);
    assert_eq!(duty_points(&rising, &square_system(0.5, 0.0)), Duty::BeyondCurve);
    // Twice within one stretch: 8.9 + 0.8 Q = 9 + Q², Q = 0.4 ± √0.06.
    let steep = curve(&[(0.0, 8.9), (2.0, 10.5), (3.0, 9.0), (4.0, 1.0)]);
    let met = litres(&duty_points(&steep, &square_system(9.0, 1.0)));
    assert_eq!(met.len(), 2);
    close(met[0], 0.4 - 0.06_f64.sqrt(), 1e-10);
    close(met[1], 0.4 + 0.06_f64.sqrt(), 1e-10);
    // The flow the refusals speak of.
    let arc =
        |curve: &PumpCurve, lift| DUTY_FLOW.work((curve.clone().into(), square_system(lift, 0.0).into()));
    assert!(arc(&rising, 5.5).unwrap_err().why.contains("several flows"));
    assert!(arc(&rising, 6.3).unwrap_err().why.contains("too weak"));
    assert!(arc(&rising, 0.5).unwrap_err().why.contains("beyond the last point"));
    assert!(arc(&rising, 1.5).is_ok());
}

#[test]
fn head_between_points_and_label() {
    let pump = curve(&[(0.0, 9.0), (1.0, 7.0), (2.0, 4.0), (3.0, 0.0)]);
    close(pump.head_at(rate(0.0015)).unwrap().value, 5.5, 1e-12);
    close(pump.head_at(rate(0.0)).unwrap().value, 9.0, 1e-12);
    close(pump.head_at(rate(0.002)).unwrap().value, 4.0, 1e-12);
    close(pump.label_flow().value, 0.003, 1e-12);
    for q in [0.0031, -0.001, f64::NAN] {
        assert!(pump.head_at(rate(q)).is_err());
    }
    // 30 m³ at 10 m³/h take 3 h.
    let pool = Volume::new::<cubic_meter>(30.0);
    close(TURNOVER.work((pool, rate(10.0 / 3600.0))).unwrap().value, 10_800.0, 1e-12);
    close(LABEL_TURNOVER.work((pool, rate(10.0 / 3600.0))).unwrap().value, 10_800.0, 1e-12);
    assert!(TURNOVER.work((pool, rate(0.0))).is_err());
}

#[test]
fn system_is_bent_upwards_between_its_kinks() {
    // What the search for all meetings rests on.
    let q = std::f64::consts::PI * 0.05 * 1e-6 / 4.0;
    for relative in [0.0, 1e-5, 1e-3, 0.05] {
        let pipe = SystemCurve::new(m(0.0), nu(1e-6), &[run(0.05, 10.0, relative * 0.05, 0.0)], &[]).unwrap();
        for (from, to) in [(2000.0, 4000.0), (4000.0, 2e4), (2e4, 1e6)] {
            let at = |i: u32| pipe.head(q * (from + (to - from) * f64::from(i) / 200.0));
            assert!((1..200).all(|i| at(i - 1) + at(i + 1) >= 2.0 * at(i) * (1.0 - 1e-12)));
        }
    }
}

#[test]
fn duty_point_lies_on_both_curves() {
    let pump = curve(&[(0.0, 9.0), (1.0, 8.5), (2.0, 7.2), (3.5, 4.0), (5.0, 0.0)]);
    for i in 0..400 {
        let x = f64::from(i) / 400.0;
        let runs = [run(0.03 + 0.05 * x, 5.0 + 40.0 * x, 1e-6, 4.0), run(0.05, 12.0, 1e-5, 3.0 * x)];
        let system = SystemCurve::new(m(3.0 * x), nu(1e-6), &runs, &[]).unwrap();
        let Duty::One(point) = duty_points(&pump, &system) else { panic!("one duty point") };
        close(pump.head_at(point.flow).unwrap().value, point.head.value, 1e-9);
        close(system.head_at(point.flow).unwrap().value, point.head.value, 1e-9);
    }
}

#[test]
fn unsound_curves_are_refused() {
    let given = |points: &[(f64, f64)]| {
        PumpCurve::new(&points.iter().map(|&(q, h)| (rate(q), m(h))).collect::<Vec<_>>())
    };
    assert_eq!(given(&[(0.0, 5.0), (1.0, 0.0)]), Err(Unsound::TooFewPoints { given: 2 }));
    assert_eq!(
        given(&[(0.0, 5.0), (1.0, 4.0), (1.0, 3.0), (2.0, 0.0)]),
        Err(Unsound::FlowsNotAscending { point: 2 })
    );
    for bad in [f64::NAN, f64::INFINITY, -1.0] {
        assert_eq!(
            given(&[(0.0, 5.0), (1.0, bad), (2.0, 3.0), (3.0, 0.0)]),
            Err(Unsound::BadNumber { point: 1 })
        );
    }
}

#[test]
fn flat_curve_equal_runs_and_ten_thousand_points() {
    // Two runs of one bore change regime at the same flows.
    let runs = [run(0.05, 10.0, 1e-6, 2.0), run(0.05, 10.0, 1e-6, 2.0)];
    let system = SystemCurve::new(m(1.0), nu(1e-6), &runs, &[]).unwrap();
    let flat = curve(&[(0.0, 3.0), (2.0, 3.0), (4.0, 3.0), (9.0, 3.0)]);
    let Duty::One(point) = duty_points(&flat, &system) else { panic!("one duty point") };
    close(point.head.value, 3.0, 1e-9);
    // A parabola 9 - Q² in ten thousand pieces against 1 + Q²: Q = 2, less the sag of a piece.
    let many: Vec<_> = (0..10_000).map(|i| f64::from(i) * 3e-4).map(|q| (q, 9.0 - q * q)).collect();
    close(litres(&duty_points(&curve(&many), &square_system(1.0, 1.0)))[0], 2.0, 1e-7);
}
