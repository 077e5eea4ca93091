//! Dimensions as data: seven exponents, their arithmetic, and their names in words of the trade.

use std::fmt;

/// The exponents of a quantity in SI order: m, kg, s, A, K, mol, cd.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Dimension(pub [i8; 7]);

impl Dimension {
    /// A number: counts, shares, slopes, angles.
    pub const NUMBER: Self = Dimension([0; 7]);
    /// m
    pub const LENGTH: Self = Dimension([1, 0, 0, 0, 0, 0, 0]);
    /// m²
    pub const AREA: Self = Self::LENGTH.power(2);
    /// m³
    pub const VOLUME: Self = Self::LENGTH.power(3);
    /// kg
    pub const MASS: Self = Dimension([0, 1, 0, 0, 0, 0, 0]);
    /// s
    pub const TIME: Self = Dimension([0, 0, 1, 0, 0, 0, 0]);
    /// A
    pub const CURRENT: Self = Dimension([0, 0, 0, 1, 0, 0, 0]);
    /// K
    pub const TEMPERATURE: Self = Dimension([0, 0, 0, 0, 1, 0, 0]);
    /// mol
    pub const AMOUNT_OF_SUBSTANCE: Self = Dimension([0, 0, 0, 0, 0, 1, 0]);
    /// cd, and the lumen, since the steradian is a number
    pub const LUMINOUS_INTENSITY: Self = Dimension([0, 0, 0, 0, 0, 0, 1]);
    /// 1/s: per time, not only cycles
    pub const FREQUENCY: Self = Self::NUMBER.over(Self::TIME);
    /// m/s
    pub const VELOCITY: Self = Self::LENGTH.over(Self::TIME);
    /// m/s²
    pub const ACCELERATION: Self = Self::VELOCITY.over(Self::TIME);
    /// m³/s
    pub const FLOW: Self = Self::VOLUME.over(Self::TIME);
    /// kg/s
    pub const MASS_FLOW: Self = Self::MASS.over(Self::TIME);
    /// kg/m³: densities and concentrations
    pub const DENSITY: Self = Self::MASS.over(Self::VOLUME);
    /// kg/m²
    pub const MASS_PER_AREA: Self = Self::MASS.over(Self::AREA);
    /// kg/m
    pub const MASS_PER_LENGTH: Self = Self::MASS.over(Self::LENGTH);
    /// kg/(m² s)
    pub const MASS_FLUX: Self = Self::MASS_FLOW.over(Self::AREA);
    /// kg/(m³ s)
    pub const MASS_FLOW_PER_VOLUME: Self = Self::MASS_FLOW.over(Self::VOLUME);
    /// N
    pub const FORCE: Self = Self::MASS.times(Self::ACCELERATION);
    /// N/m
    pub const LINE_LOAD: Self = Self::FORCE.over(Self::LENGTH);
    /// Pa: pressures, stresses, loads over an area
    pub const PRESSURE: Self = Self::FORCE.over(Self::AREA);
    /// N/m³, Pa/m
    pub const PRESSURE_PER_LENGTH: Self = Self::PRESSURE.over(Self::LENGTH);
    /// J, and N m as a moment
    pub const ENERGY: Self = Self::FORCE.times(Self::LENGTH);
    /// W
    pub const POWER: Self = Self::ENERGY.over(Self::TIME);
    /// W/m²
    pub const POWER_PER_AREA: Self = Self::POWER.over(Self::AREA);
    /// W/m
    pub const POWER_PER_LENGTH: Self = Self::POWER.over(Self::LENGTH);
    /// W/m³
    pub const POWER_PER_VOLUME: Self = Self::POWER.over(Self::VOLUME);
    /// J/m²: the dimension of a line load, kg/s²
    pub const ENERGY_PER_AREA: Self = Self::ENERGY.over(Self::AREA);
    /// J/(kg K)
    pub const SPECIFIC_HEAT: Self = Self::ENERGY.over(Self::MASS).over(Self::TEMPERATURE);
    /// W/(m K)
    pub const THERMAL_CONDUCTIVITY: Self = Self::POWER_PER_LENGTH.over(Self::TEMPERATURE);
    /// W/(m² K)
    pub const HEAT_TRANSFER: Self = Self::POWER_PER_AREA.over(Self::TEMPERATURE);
    /// Pa s
    pub const DYNAMIC_VISCOSITY: Self = Self::PRESSURE.times(Self::TIME);
    /// m²/s, and flow over a width
    pub const KINEMATIC_VISCOSITY: Self = Self::AREA.over(Self::TIME);
    /// V
    pub const VOLTAGE: Self = Self::POWER.over(Self::CURRENT);
    /// Ω
    pub const RESISTANCE: Self = Self::VOLTAGE.over(Self::CURRENT);
    /// S/m
    pub const CONDUCTIVITY: Self = Self::NUMBER.over(Self::RESISTANCE).over(Self::LENGTH);
    /// lx
    pub const ILLUMINANCE: Self = Self::LUMINOUS_INTENSITY.over(Self::AREA);
    /// mol/(m² s)
    pub const PHOTON_FLUX: Self = Self::AMOUNT_OF_SUBSTANCE.over(Self::AREA).over(Self::TIME);
    /// mol/m³
    pub const MOLAR_CONCENTRATION: Self = Self::AMOUNT_OF_SUBSTANCE.over(Self::VOLUME);
    /// 1/m: area in a volume
    pub const AREA_PER_VOLUME: Self = Self::AREA.over(Self::VOLUME);
    /// 1/m²: heads per floor area
    pub const PER_AREA: Self = Self::NUMBER.over(Self::AREA);
    /// 1/m³: heads per volume
    pub const PER_VOLUME: Self = Self::NUMBER.over(Self::VOLUME);
    /// m³/kg: volume for a mass
    pub const VOLUME_PER_MASS: Self = Self::VOLUME.over(Self::MASS);

    /// Of the product of two quantities. Exponents beyond ±127 stay there: nothing in the trade comes near.
    pub const fn times(self, other: Self) -> Self {
        let mut sum = self.0;
        let mut i = 0;
        while i < sum.len() {
            sum[i] = sum[i].saturating_add(other.0[i]);
            i += 1;
        }
        Dimension(sum)
    }

    /// Of the quotient of two quantities.
    pub const fn over(self, other: Self) -> Self {
        self.times(other.power(-1))
    }

    /// Of a whole power.
    pub const fn power(self, exponent: i8) -> Self {
        let mut product = self.0;
        let mut i = 0;
        while i < product.len() {
            product[i] = product[i].saturating_mul(exponent);
            i += 1;
        }
        Dimension(product)
    }

    /// Of a whole root; `None` if an exponent does not divide, or if `degree` is 0.
    pub const fn root(self, degree: i8) -> Option<Self> {
        if degree == 0 {
            return None;
        }
        let mut quotient = self.0;
        let mut i = 0;
        while i < quotient.len() {
            if quotient[i] as i16 % degree as i16 != 0 {
                return None;
            }
            quotient[i] = quotient[i].saturating_div(degree);
            i += 1;
        }
        Some(Dimension(quotient))
    }

    /// Whether it is that of a number.
    pub const fn is_number(self) -> bool {
        let mut i = 0;
        while i < self.0.len() {
            if self.0[i] != 0 {
                return false;
            }
            i += 1;
        }
        true
    }

    /// The trade's word for it with its article, "a length", if it has one.
    pub fn trade_name(self) -> Option<&'static str> {
        NAMES.iter().find(|(dimension, _)| *dimension == self).map(|(_, name)| *name)
    }

    /// The trade's word for it with its article ("a length"), or else its SI unit ("a quantity in kg·m⁻²·s⁻³").
    pub fn name(self) -> String {
        self.trade_name().map_or_else(|| format!("a quantity in {self}"), str::to_owned)
    }
}

/// The words of the trade for the dimensions that have one.
const NAMES: &[(Dimension, &str)] = &[
    (Dimension::NUMBER, "a number"),
    (Dimension::LENGTH, "a length"),
    (Dimension::AREA, "an area"),
    (Dimension::VOLUME, "a volume"),
    (Dimension::MASS, "a mass"),
    (Dimension::TIME, "a time"),
    (Dimension::CURRENT, "a current"),
    (Dimension::TEMPERATURE, "a temperature"),
    (Dimension::AMOUNT_OF_SUBSTANCE, "an amount of substance"),
    (Dimension::LUMINOUS_INTENSITY, "a luminous flux"),
    (Dimension::FREQUENCY, "a rate per time"),
    (Dimension::VELOCITY, "a velocity"),
    (Dimension::ACCELERATION, "an acceleration"),
    (Dimension::FLOW, "a flow"),
    (Dimension::MASS_FLOW, "a mass per time"),
    (Dimension::DENSITY, "a density or concentration"),
    (Dimension::MASS_PER_AREA, "a mass per area"),
    (Dimension::MASS_PER_LENGTH, "a mass per length"),
    (Dimension::MASS_FLUX, "a mass per area and time"),
    (Dimension::MASS_FLOW_PER_VOLUME, "a mass per volume and time"),
    (Dimension::FORCE, "a force"),
    (Dimension::LINE_LOAD, "a line load or a dose"),
    (Dimension::PRESSURE, "a pressure"),
    (Dimension::PRESSURE_PER_LENGTH, "a pressure per length"),
    (Dimension::ENERGY, "an energy"),
    (Dimension::POWER, "a power"),
    (Dimension::POWER_PER_AREA, "a power per area"),
    (Dimension::POWER_PER_LENGTH, "a power per length"),
    (Dimension::POWER_PER_VOLUME, "a power per volume"),
    (Dimension::SPECIFIC_HEAT, "a specific heat"),
    (Dimension::THERMAL_CONDUCTIVITY, "a thermal conductivity"),
    (Dimension::HEAT_TRANSFER, "a heat transfer coefficient"),
    (Dimension::DYNAMIC_VISCOSITY, "a dynamic viscosity"),
    (Dimension::KINEMATIC_VISCOSITY, "a kinematic viscosity"),
    (Dimension::VOLTAGE, "a voltage"),
    (Dimension::RESISTANCE, "a resistance"),
    (Dimension::CONDUCTIVITY, "a conductivity"),
    (Dimension::ILLUMINANCE, "an illuminance"),
    (Dimension::PHOTON_FLUX, "a photon flux"),
    (Dimension::MOLAR_CONCENTRATION, "a molar concentration"),
    (Dimension::AREA_PER_VOLUME, "an area per volume"),
    (Dimension::PER_AREA, "a number per area"),
    (Dimension::PER_VOLUME, "a number per volume"),
    (Dimension::VOLUME_PER_MASS, "a volume per mass"),
];

/// Its SI unit: `m·kg·s⁻²`; `1` for a number.
impl fmt::Display for Dimension {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.is_number() {
            return f.write_str("1");
        }
        let bases = ["m", "kg", "s", "A", "K", "mol", "cd"];
        let mut first = true;
        for (symbol, exponent) in bases.into_iter().zip(self.0).filter(|(_, exponent)| *exponent != 0) {
            if !first {
                f.write_str("·")?;
            }
            first = false;
            f.write_str(symbol)?;
            if exponent != 1 {
                superscript(f, exponent)?;
            }
        }
        Ok(())
    }
}

fn superscript(f: &mut fmt::Formatter<'_>, exponent: i8) -> fmt::Result {
    let raised = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    if exponent < 0 {
        f.write_str("⁻")?;
    }
    for digit in exponent.unsigned_abs().to_string().bytes() {
        write!(f, "{}", raised[usize::from(digit - b'0')])?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{Dimension, NAMES};

    #[test]
    fn arithmetic_of_exponents() {
        assert_eq!(Dimension::LENGTH.power(3).over(Dimension::TIME), Dimension::FLOW);
        assert_eq!(Dimension::AREA.root(2), Some(Dimension::LENGTH));
        assert_eq!(Dimension::AREA.root(-2), Some(Dimension::NUMBER.over(Dimension::LENGTH)));
        assert_eq!(Dimension::VOLUME.root(2), None);
        assert_eq!(Dimension::VOLUME.root(0), None);
        assert_eq!(Dimension([-128, 0, 0, 0, 0, 0, 0]).root(-1), Some(Dimension([127, 0, 0, 0, 0, 0, 0])));
        assert!(Dimension::FLOW.over(Dimension::FLOW).is_number());
    }

    /// SI brochure (9th edition, 2019), table 4: units with special names in base units.
    #[test]
    fn exponents_of_the_named_units_of_the_si() {
        let table: [(Dimension, [i8; 7]); 9] = [
            (Dimension::FORCE, [1, 1, -2, 0, 0, 0, 0]),
            (Dimension::PRESSURE, [-1, 1, -2, 0, 0, 0, 0]),
            (Dimension::ENERGY, [2, 1, -2, 0, 0, 0, 0]),
            (Dimension::POWER, [2, 1, -3, 0, 0, 0, 0]),
            (Dimension::VOLTAGE, [2, 1, -3, -1, 0, 0, 0]),
            (Dimension::RESISTANCE, [2, 1, -3, -2, 0, 0, 0]),
            (Dimension::CONDUCTIVITY, [-3, -1, 3, 2, 0, 0, 0]),
            (Dimension::ILLUMINANCE, [-2, 0, 0, 0, 0, 0, 1]),
            (Dimension::DYNAMIC_VISCOSITY, [-1, 1, -1, 0, 0, 0, 0]),
        ];
        for (dimension, exponents) in table {
            assert_eq!(dimension.0, exponents);
        }
    }

    #[test]
    fn every_dimension_has_one_name() {
        for (i, (dimension, name)) in NAMES.iter().enumerate() {
            assert!(NAMES[i + 1..].iter().all(|(other, word)| other != dimension && word != name), "{name}");
        }
    }

    #[test]
    fn unnamed_dimensions_are_spelt_in_si() {
        assert_eq!(Dimension::FLOW.name(), "a flow");
        assert_eq!(Dimension([2, 1, -12, 0, 0, 0, 0]).name(), "a quantity in m²·kg·s⁻¹²");
        assert_eq!(Dimension::NUMBER.to_string(), "1");
    }
}
