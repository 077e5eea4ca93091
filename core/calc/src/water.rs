//! Fresh water between 0 and 45 °C at the pressure of the air: density, viscosity, vapour pressure.

use haulout_quantity::Basis;
use haulout_quantity::si::{
    DynamicViscosity, KinematicViscosity, MassDensity, Pressure, ThermodynamicTemperature,
};
use uom::si::{
    dynamic_viscosity::pascal_second, kinematic_viscosity::square_meter_per_second,
    mass_density::kilogram_per_cubic_meter, pressure::pascal,
};

use crate::formula::{Formula, FormulaCard, Kind, Refusal};

const RANGE: &str = "fresh water, 0 to 45 °C, near atmospheric pressure";

/// Density of water (kg/m³).
///
/// IAPWS SR6-08(2011), equation 2 (0.1 MPa). Within 1e-6 of CoolProp 8.0.0 at 101 325 Pa over the whole range.
pub static DENSITY: Formula<(ThermodynamicTemperature,), MassDensity> = Formula {
    card: &FormulaCard {
        name: "density of water",
        result: "ρ",
        text: "1 kg/m3 / (0.046151805 × (0.0193763157 + 6744.58446 × (10 K / (593 K - T))^4 - 222521.604 × (10 K / (593 K - T))^5 + 100231247 × (10 K / (593 K - T))^7 - 1635521180 × (10 K / (593 K - T))^8 + 8322996580 × (10 K / (593 K - T))^9 + 0.00578545292 × (10 K / (T - 232 K)) - 0.0153195665 × (10 K / (T - 232 K))^2 + 0.0311337859 × (10 K / (T - 232 K))^3 - 0.0423546241 × (10 K / (T - 232 K))^4 + 0.0338713507 × (10 K / (T - 232 K))^5 - 0.0119946761 × (10 K / (T - 232 K))^6))",
        symbols: &["T"],
        kind: Kind::Closed,
        basis: Basis::Reported,
        source: "IAPWS SR6-08(2011) eq. 2 (Pátek et al., J. Phys. Chem. Ref. Data 38, 2009), coefficients as carried by a public reference program",
        range: RANGE,
    },
    run: |(temperature,)| {
        let t = in_range(temperature)?;
        let (a, b) = (10.0 / (593.0 - t), 10.0 / (t - 232.0));
        let hot = 6744.58446 * power(a, 4) - 222_521.604 * power(a, 5) + 100_231_247.0 * power(a, 7)
            - 1_635_521_180.0 * power(a, 8)
            + 8_322_996_580.0 * power(a, 9);
        let cold = 0.005_785_452_92 * b - 0.015_319_566_5 * power(b, 2) + 0.031_133_785_9 * power(b, 3)
            - 0.042_354_624_1 * power(b, 4)
            + 0.033_871_350_7 * power(b, 5)
            - 0.011_994_676_1 * power(b, 6);
        let volume = 0.046_151_805 * (0.019_376_315_7 + hot + cold);
        Ok(MassDensity::new::<kilogram_per_cubic_meter>(1.0 / volume))
    },
};

/// Dynamic viscosity of water (Pa·s).
///
/// IAPWS SR6-08(2011), equation 7 (0.1 MPa). Within 4e-5 of CoolProp 8.0.0 at 101 325 Pa over the whole range.
pub static DYNAMIC_VISCOSITY: Formula<(ThermodynamicTemperature,), DynamicViscosity> = Formula {
    card: &FormulaCard {
        name: "dynamic viscosity of water",
        result: "μ",
        text: "0.000001 Pa·s × (280.68 × (300 K / T)^1.9 + 511.45 × (300 K / T)^7.7 + 61.131 × (300 K / T)^19.6 + 0.45903 × (300 K / T)^40)",
        symbols: &["T"],
        kind: Kind::Closed,
        basis: Basis::Reported,
        source: "IAPWS SR6-08(2011) eq. 7 (Pátek et al., J. Phys. Chem. Ref. Data 38, 2009), coefficients as carried by two public programs",
        range: RANGE,
    },
    run: |(temperature,)| {
        let r = 300.0 / in_range(temperature)?;
        let micro = 280.68 * libm::pow(r, 1.9)
            + 511.45 * libm::pow(r, 7.7)
            + 61.131 * libm::pow(r, 19.6)
            + 0.459_03 * libm::pow(r, 40.0);
        Ok(DynamicViscosity::new::<pascal_second>(1e-6 * micro))
    },
};

/// Kinematic viscosity (m²/s) from dynamic viscosity and density.
pub static KINEMATIC_VISCOSITY: Formula<(DynamicViscosity, MassDensity), KinematicViscosity> = Formula {
    card: &FormulaCard {
        name: "kinematic viscosity",
        result: "ν",
        text: "μ / ρ",
        symbols: &["μ", "ρ"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "definition",
        range: "any fluid",
    },
    run: |(dynamic, density)| {
        let (mu, rho) = (dynamic.value, density.value);
        if !(mu > 0.0 && mu.is_finite() && rho > 0.0 && rho.is_finite()) {
            return Err(Refusal::new(format!(
                "a kinematic viscosity needs a viscosity and a density above zero, not {mu} Pa·s and {rho} kg/m3"
            )));
        }
        Ok(KinematicViscosity::new::<square_meter_per_second>(mu / rho))
    },
};

/// Pressure (Pa) at which water boils at a temperature.
///
/// Wagner and Pruß 1993 (equation 1 of IAPWS SR1-86). Within 1e-4 of CoolProp 8.0.0 over the whole range.
pub static VAPOUR_PRESSURE: Formula<(ThermodynamicTemperature,), Pressure> = Formula {
    card: &FormulaCard {
        name: "vapour pressure of water",
        result: "p_v",
        text: "22064000 Pa × exp(647.096 K / T × (-7.85951783 × (1 - T / 647.096 K) + 1.84408259 × (1 - T / 647.096 K)^1.5 - 11.7866497 × (1 - T / 647.096 K)^3 + 22.6807411 × (1 - T / 647.096 K)^3.5 - 15.9618719 × (1 - T / 647.096 K)^4 + 1.80122502 × (1 - T / 647.096 K)^7.5))",
        symbols: &["T"],
        kind: Kind::Closed,
        basis: Basis::Reported,
        source: "Wagner and Pruß, J. Phys. Chem. Ref. Data 22 (1993) 783, coefficients as carried by a public reference program",
        range: RANGE,
    },
    run: |(temperature,)| {
        let t = in_range(temperature)?;
        let v = 1.0 - t / 647.096;
        let sum = -7.859_517_83 * v + 1.844_082_59 * libm::pow(v, 1.5) - 11.786_649_7 * power(v, 3)
            + 22.680_741_1 * libm::pow(v, 3.5)
            - 15.961_871_9 * power(v, 4)
            + 1.801_225_02 * libm::pow(v, 7.5);
        Ok(Pressure::new::<pascal>(22_064_000.0 * libm::exp(647.096 / t * sum)))
    },
};

/// Kinematic viscosity of water at a temperature: [`DYNAMIC_VISCOSITY`] over [`DENSITY`].
///
/// # Errors
/// Outside 0 to 45 °C.
pub fn kinematic_viscosity(temperature: ThermodynamicTemperature) -> Result<KinematicViscosity, Refusal> {
    KINEMATIC_VISCOSITY.work((DYNAMIC_VISCOSITY.work((temperature,))?, DENSITY.work((temperature,))?))
}

/// Kelvins, if they lie between 0 and 45 °C.
fn in_range(temperature: ThermodynamicTemperature) -> Result<f64, Refusal> {
    let kelvins = temperature.value;
    // A hair of room, so that 45 °C reached through °F is not turned away.
    if (273.15 - 1e-6..=318.15 + 1e-6).contains(&kelvins) {
        return Ok(kelvins);
    }
    Err(Refusal::new(format!(
        "the water is given at {:.2} °C, but its properties are known here from 0 to 45 °C only",
        kelvins - 273.15
    )))
}

/// A whole power by repeated multiplication: exact to the last rounding and the same everywhere.
fn power(base: f64, exponent: u32) -> f64 {
    (0..exponent).fold(1.0, |product, _| product * base)
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(t)
    }

    /// CoolProp 8.0.0, `PropsSI('D'|'V', 'T', t + 273.15, 'P', 101325, 'Water')`, `PropsSI('P', 'T', …, 'Q', 0, …)`.
    const COOLPROP: [(f64, f64, f64, f64); 8] = [
        (1.0, 999.9018375605359, 0.0017310212855272918, 657.0856341765722),
        (4.0, 999.9748691393087, 0.0015672917725207496, 813.5483554436006),
        (10.0, 999.7024701877261, 0.0013058996603511062, 1228.1989307541448),
        (15.0, 999.1026214671009, 0.0011375675592526174, 1705.7929161256181),
        (20.0, 998.2071504679437, 0.001001596143120583, 2339.3181834056754),
        (30.0, 995.6494539376417, 0.0007972217998101543, 4246.970836903843),
        (40.0, 992.2163528731331, 0.0006527287265767436, 7384.938073826001),
        (45.0, 990.2128978636467, 0.0005957693051508003, 9594.998843682066),
    ];

    #[test]
    fn agrees_with_the_reference_equations_of_water() {
        for (t, density, viscosity, vapour) in COOLPROP {
            let d = DENSITY.work((celsius(t),)).unwrap().value;
            let v = DYNAMIC_VISCOSITY.work((celsius(t),)).unwrap().value;
            let p = VAPOUR_PRESSURE.work((celsius(t),)).unwrap().value;
            assert!((d / density - 1.0).abs() < 1e-6, "{t} °C: {d}");
            assert!((v / viscosity - 1.0).abs() < 1e-4, "{t} °C: {v}");
            assert!((p / vapour - 1.0).abs() < 1e-4, "{t} °C: {p}");
        }
    }

    #[test]
    fn kinematic_viscosity_at_20_degrees() {
        // CoolProp 8.0.0, V / D at 293.15 K, 101 325 Pa.
        let nu = kinematic_viscosity(celsius(20.0)).unwrap().value;
        assert!((nu / 1.003395079519367e-6 - 1.0).abs() < 1e-4, "{nu}");
    }

    #[test]
    fn refuses_ice_steam_and_nonsense() {
        for t in [-0.1, 45.1, f64::NAN, f64::INFINITY] {
            assert!(DENSITY.work((celsius(t),)).is_err());
            assert!(DYNAMIC_VISCOSITY.work((celsius(t),)).is_err());
            assert!(VAPOUR_PRESSURE.work((celsius(t),)).is_err());
            assert!(kinematic_viscosity(celsius(t)).is_err());
        }
        assert!(DENSITY.work((celsius(0.0),)).is_ok());
        let why = DENSITY.work((celsius(60.0),)).unwrap_err().why;
        assert!(why.contains("60.00 °C"), "{why}");
    }
}
