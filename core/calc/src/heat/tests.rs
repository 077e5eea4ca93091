//! Humid air and evaporation against CoolProp and printed pools; layers and warming by hand.

use haulout_quantity::Measure;
use haulout_quantity::si::{
    Area, HeatTransfer, Length, MassDensity, MassRate, Power, Pressure, Ratio, ThermalConductivity,
    ThermodynamicTemperature, Time, Volume,
};

use super::air::{DRY_AIR_DENSITY, HUMIDITY_RATIO, PARTIAL_PRESSURE};
use super::change;
use super::evaporation::{BY_ACTIVITY, BY_DENSITY, HEAT_OF_EVAPORATION};
use super::loss::{LAYER, THROUGH, in_series};
use crate::water::VAPOUR_PRESSURE;

fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_si(t + 273.15)
}

fn close(got: f64, expected: f64, share: f64) {
    assert!((got / expected - 1.0).abs() < share, "{got} against {expected}");
}

fn vapour(t: f64, humidity: f64) -> Pressure {
    let saturation = VAPOUR_PRESSURE.work((celsius(t),)).unwrap();
    PARTIAL_PRESSURE.work((Ratio::from_si(humidity), saturation)).unwrap()
}

#[test]
fn humid_air_is_near_real_air() {
    // CoolProp 8.0.0, HAPropsSI('P_w'|'W', 'T', …, 'P', 101325, 'R', …) and 1 / 'Vda'. Real air holds up to 0.5 % more vapour.
    let rows = [
        (20.0, 0.5, 1_174.488_985, 0.007_293_697_7, 1.190_674_854),
        (25.0, 0.6, 1_909.996_089, 0.011_949_026_5, 1.162_080_695),
        (30.0, 0.6, 2_559.307_084, 0.016_116_408_4, 1.135_422_711),
        (28.0, 1.0, 3_799.338_744, 0.024_229_312_6, 1.128_699_308),
    ];
    for (t, humidity, pressure, ratio, density) in rows {
        let vapour = vapour(t, humidity);
        close(vapour.value, pressure, 5e-3);
        close(HUMIDITY_RATIO.work((vapour,)).unwrap().value, ratio, 6e-3);
        close(DRY_AIR_DENSITY.work((vapour, celsius(t))).unwrap().value, density, 1e-3);
    }
}

/// 20 m² of water at 28 °C under air of 30 °C and 60 %: 3 782.21 and 2 547.62 Pa (PsychroLib 2.5.0).
#[test]
fn one_pool_by_both_methods() {
    let (wet, air) = (vapour(28.0, 1.0), vapour(30.0, 0.6));
    let area = Area::from_si(20.0);
    let by_activity = BY_ACTIVITY.work((area, Ratio::from_si(0.5), wet, air)).unwrap();
    // 0.1 lb/h × 215.278 ft2 × 0.5 × (1.11689 - 0.75232) inHg = 3.924 lb/h = 1.780 kg/h.
    close(3600.0 * by_activity.value, 1.780, 3e-3);
    let density = |p, t| DRY_AIR_DENSITY.work((p, celsius(t))).unwrap();
    let ratio = |p| HUMIDITY_RATIO.work((p,)).unwrap();
    let given = (area, density(wet, 28.0), density(air, 30.0), ratio(wet), ratio(air), wet, air);
    // Under its least for a faint draught, 5e-5 × 1234.59 = 0.06173 kg/h for a square metre: 1.235 kg/h.
    close(3600.0 * BY_DENSITY.work(given).unwrap().value, 1.235, 1e-3);
}

#[test]
fn latent_heat() {
    // CoolProp 8.0.0, PropsSI('H', 'T', …, 'Q', 1, 'Water') less that at 'Q', 0.
    for (t, latent) in [(10.0, 2_477_187.06), (25.0, 2_441_676.17), (40.0, 2_405_977.29)] {
        let power = HEAT_OF_EVAPORATION.work((MassRate::from_si(1.0), celsius(t))).unwrap();
        close(power.value, latent, 1e-4);
    }
}

#[test]
fn layers_one_behind_the_other() {
    // 10 m2, 10 K, 50 mm of EPS at 0.036, 150 mm of concrete at 1.7, a film of 0.13 m2K/W: 100 / (1.38889 + 0.08824 + 0.13) = 62.2229 W.
    let layer = |k, t| LAYER.work((ThermalConductivity::from_si(k), Length::from_si(t))).unwrap();
    let film = HeatTransfer::from_si(1.0 / 0.13);
    let all = in_series(&[layer(0.036, 0.05), layer(1.7, 0.15), film]).unwrap();
    let power = THROUGH.work((all, Area::from_si(10.0), celsius(25.0), celsius(15.0))).unwrap();
    close(power.value, 62.2229, 1e-6);
    let bare = in_series(&[layer(1.7, 0.15), film]).unwrap();
    let power = THROUGH.work((bare, Area::from_si(10.0), celsius(25.0), celsius(15.0))).unwrap();
    close(power.value, 458.221, 1e-5);
    assert!(in_series(&[]).is_err());
    assert!(LAYER.work((ThermalConductivity::from_si(0.036), Length::from_si(0.0))).is_err());
}

#[test]
fn five_cubic_metres_by_ten_kelvins() {
    // 2.417 kW warm 5 m3 by 10 K in 24 h, at 4 180 J/(kg K) and 999 kg/m3: 2417 × 86 400 / (5 × 999 × 4180) = 10.0 K.
    let given = (
        Power::from_si(2_417.0),
        Time::from_si(86_400.0),
        MassDensity::from_si(999.0),
        Volume::from_si(5.0),
        Ratio::from_si(4_180.0),
    );
    close(change::CHANGE.work(given).unwrap().value, 10.0, 1e-3);
    let back = (celsius(30.0), celsius(20.0), given.0, given.2, given.3, given.4);
    close(change::COOLING_TIME.work(back).unwrap().value, 86_400.0, 1e-3);
}
