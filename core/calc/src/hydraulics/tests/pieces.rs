//! Each formula against outside values, the laws of scale, and nonsense put in.

use super::*;

#[test]
fn colebrook_against_fluids() {
    // fluids 1.3.1, friction_factor(Re, eD, Method='Colebrook').
    for (re, relative, expected) in [
        (1e5, 1e-4, 0.018513866077471648),
        (1e5, 0.0, 0.01798977308427384),
        (1e6, 1e-3, 0.019943465840476883),
        (4600.0, 1e-3, 0.03936917371268541),
        (4000.0, 0.01, 0.049082269447899715),
        (1e7, 0.05, 0.07155298184086675),
        (1e8, 1e-6, 0.00643255651969228),
    ] {
        close(factor(re, relative), expected, 1e-12);
    }
}

#[test]
fn laminar_flow_and_the_blend() {
    // fluids 1.3.1, friction_laminar(1000.) = 0.064.
    close(FRICTION_FACTOR_LAMINAR.work((one(1000.0),)).unwrap().value, 0.064, 1e-15);
    close(factor(1000.0, 1e-3), 0.064, 1e-15);
    assert!(FRICTION_FACTOR_LAMINAR.work((one(2001.0),)).is_err());
    // Half way: mean of 64/2000 and fluids 1.3.1 friction_factor(4000, 0, Method='Colebrook') = 0.0399070140556349.
    close(factor(3000.0, 0.0), f64::midpoint(0.032, 0.0399070140556349), 1e-12);
    // No jump at either end.
    close(factor(2000.0, 1e-3), factor(2000.0001, 1e-3), 1e-6);
    close(factor(3999.9999, 1e-3), factor(4000.0, 1e-3), 1e-6);
    // Hagen-Poiseuille, h = 32 ν L v / (g D²), Re = 1000 in a 20 mm bore.
    let (v, _, _, h) = chain(0.05 * std::f64::consts::PI * 1e-4, 0.02, 7.0, 1e-5, 1e-6);
    close(v, 0.05, 1e-12);
    close(h, 32.0 * 1e-6 * 7.0 * 0.05 / (9.80665 * 4e-4), 1e-12);
}

#[test]
fn a_pump_line_of_50_mm() {
    // fluids 1.3.1 with CoolProp 8.0.0 at 20 °C: 10 m³/h, 50 mm, 20 m, ε 1.5e-6 m.
    let (v, re, f, h) = chain(10.0 / 3600.0, 0.05, 20.0, 1.5e-6, 1.003395079519367e-6);
    close(v, 1.4147106052612919, 1e-12);
    close(re, 70496.19009189022, 1e-12);
    close(f, 0.019506441109582467, 1e-10);
    close(h, 0.7962007446058236, 1e-10);
    // fluids 1.3.1, head_from_K(6, V) and the sum with 2 m of lift; power ρ g Q H with ρ 998.207.
    let k = FITTINGS_HEAD.work((one(6.0), speed(v))).unwrap();
    close(k.value, 0.612259, 1e-5);
    let total = TOTAL_HEAD.work((m(2.0), m(h), k, m(0.0))).unwrap();
    close(total.value, 3.40846, 1e-5);
    let density = haulout_quantity::si::MassDensity::new::<kilogram_per_cubic_meter>(998.2071504679437);
    close(HYDRAULIC_POWER.work((density, rate(10.0 / 3600.0), total)).unwrap().value, 92.6823, 1e-5);
    let system =
        SystemCurve::new(m(2.0), nu(1.003395079519367e-6), &[run(0.05, 20.0, 1.5e-6, 6.0)], &[]).unwrap();
    close(system.head_at(rate(10.0 / 3600.0)).unwrap().value, 3.40846, 1e-5);
}

#[test]
fn fittings_and_devices() {
    // fluids 1.3.1, head_from_K(K=10, V=1.5).
    close(FITTINGS_HEAD.work((one(10.0), speed(1.5))).unwrap().value, 1.1471807396001694, 1e-12);
    // fluids 1.3.1: entrance_sharp(method='Crane'), exit_normal(), K_swing_check_valve_Crane(D=.05),
    // Hooper2K(Di=2., Re=1e5, name='Elbow, 90°, Standard (R/D = 1), Screwed'), contraction_sharp(.063, .05).
    for (name, k) in [
        ("entrance", 0.5),
        ("exit", 1.0),
        ("check-valve", 1.9065302100048698),
        ("elbow-90", 0.6080000000000001),
        ("reducer", 0.2388098962581063),
    ] {
        close(fitting(name).unwrap().k, k, 1e-3);
    }
    assert!(fitting("elbow").is_none());
    let mut names: Vec<_> = FITTINGS.iter().map(|fitting| fitting.name).collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), FITTINGS.len());
    // By hand: 0.8 m at 12 m³/h is 0.2 m at 6 m³/h.
    close(DEVICE_HEAD.work((m(0.8), rate(6.0 / 3600.0), rate(12.0 / 3600.0))).unwrap().value, 0.2, 1e-12);
}

#[test]
fn parallel_pipes_of_cengel_and_cimbala_8_7() {
    // Çengel & Cimbala, Fluid Mechanics, example 8-7 (inputs), solved anew: g 9.81, ρ 998, μ 1.002e-3, ε 0.045 mm.
    let viscosity = 1.002e-3 / 998.0;
    for (q, bore, v, f) in [(4.1514e-3, 0.04, 3.3036, 0.0220897), (25.861e-3, 0.08, 5.1448, 0.0182155)] {
        let (have_v, _, have_f, h) = chain(q, bore, 36.0, 4.5e-5, viscosity);
        close(have_v, v, 5e-5);
        close(have_f, f, 2e-5);
        close(h * 9.80665 / 9.81, 11.059, 1e-4);
    }
}

#[test]
fn the_three_pipe_problems() {
    // Printed course problems, three digits each. (i) 20 in, 10 560 ft, 4 ft³/s, 60 °F, ε 0.0005 ft.
    let cfs = FOOT * FOOT * FOOT;
    let viscosity = 1.2291e-5 * FOOT * FOOT;
    let (_, re, f, h) = chain(4.0 * cfs, 20.0 * 0.0254, 10_560.0 * FOOT, 0.0005 * FOOT, viscosity);
    close(re, 248_625.0, 1e-3);
    close(f, 0.0173, 5e-3);
    close(h / FOOT, 5.72, 5e-3);
    // (ii) 37.5 ft³/s, 8 000 ft, ε 0.0008 ft, 68 °F: 1.85 ft loses 215 ft; half a digit of 1.85 is 1.4 % of the loss.
    let (_, _, f, h) = chain(37.5 * cfs, 1.85 * FOOT, 8000.0 * FOOT, 0.0008 * FOOT, 1.08e-5 * FOOT * FOOT);
    close(f, 0.0164, 5e-3);
    close(h / FOOT, 215.0, 0.02);
    // (iii) 0.2 L/s in 25 mm over 3 m at 20 °C with ε 0.473 mm loses 0.052 m.
    let (_, _, _, h) = chain(0.2e-3, 0.025, 3.0, 0.473e-3, 1.0034e-6);
    close(h, 0.052, 0.01);
}

#[test]
fn two_reservoirs_and_a_pipe_that_steps_down() {
    // University tutorial, recomputed with Colebrook: 1.3436 + 10.9396 m of friction, 1.0803 m in fittings.
    let system = SystemCurve::new(
        m(0.0),
        nu(1.31e-6),
        &[run(0.6, 300.0, 2.6e-4, 0.5), run(0.4, 300.0, 2.6e-4, 1.24)],
        &[],
    )
    .unwrap();
    close(system.head_at(rate(0.5)).unwrap().value, 13.363, 5e-4);
    close(chain(0.5, 0.6, 300.0, 2.6e-4, 1.31e-6).3, 1.3436, 5e-4);
    close(chain(0.5, 0.4, 300.0, 2.6e-4, 1.31e-6).3, 10.9396, 5e-4);
}

#[test]
fn friction_rises_with_flow_and_scales_by_regime() {
    let system = |relative: f64| {
        SystemCurve::new(m(0.0), nu(1e-6), &[run(0.05, 10.0, relative * 0.05, 0.0)], &[]).unwrap()
    };
    for relative in [0.0, 1e-4, 1e-2, 0.05] {
        let pipe = system(relative);
        let heads: Vec<f64> = (0..4000).map(|i| pipe.head(f64::from(i) * 1e-6)).collect();
        assert!(heads.windows(2).all(|pair| pair[1] > pair[0]), "ε/D {relative}");
    }
    // Laminar: twice the flow, twice the head. Fully rough: four times.
    let q = std::f64::consts::PI * 0.05 * 1e-6 / 4.0;
    close(system(1e-3).head(1800.0 * q), 2.0 * system(1e-3).head(900.0 * q), 1e-12);
    close(system(0.05).head(2e8 * q), 4.0 * system(0.05).head(1e8 * q), 1e-5);
}

#[test]
fn nonsense_is_refused_and_rest_is_not() {
    for bore in [0.0, -0.05, f64::NAN, f64::INFINITY] {
        assert!(VELOCITY.work((rate(1e-3), m(bore))).is_err());
        assert!(SystemCurve::new(m(0.0), nu(1e-6), &[run(bore, 1.0, 0.0, 0.0)], &[]).is_err());
    }
    assert!(SystemCurve::new(m(0.0), nu(1e-6), &[run(0.05, -1.0, 0.0, 0.0)], &[]).is_err());
    assert!(SystemCurve::new(m(f64::NAN), nu(1e-6), &[], &[]).is_err());
    assert!(SystemCurve::new(m(0.0), nu(0.0), &[], &[]).is_err());
    assert!(SystemCurve::new(m(0.0), nu(1e-6), &[run(0.05, 1.0, 0.003, 0.0)], &[]).is_err(), "too rough");
    assert!(FRICTION_HEAD.work((one(0.02), m(-1.0), m(0.05), speed(1.0))).is_err());
    assert!(FRICTION_FACTOR.work((one(0.0), m(0.0), m(0.05))).is_err());
    assert!(RIBBED_HOSE_HEAD.work((one(0.5), m(1.0))).is_err());
    close(RIBBED_HOSE_HEAD.work((one(2.0), m(0.4))).unwrap().value, 0.8, 1e-12);
    let system = SystemCurve::new(m(1.5), nu(1e-6), &[run(0.05, 1.0, 0.0, 1.0)], &[]).unwrap();
    assert_eq!(system.head_at(rate(0.0)).unwrap().value, 1.5);
    assert!(system.head_at(rate(f64::NAN)).is_err());
}
