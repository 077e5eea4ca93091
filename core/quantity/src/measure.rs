//! The bridge between typed quantities, whose dimensions the compiler checks, and dimensions as data.

use std::any::TypeId;
use std::marker::PhantomData;

use uom::si::{Dimension as Exponents, Quantity, SI};
use uom::typenum::Integer;

use crate::Dimension;

/// A typed quantity that carries its dimension as data and its value in SI.
///
/// Implemented for every f64 quantity of `uom`. Kinds are not told apart: an angle is a number, a temperature
/// interval has the dimension of a temperature.
pub trait Measure: Copy + 'static {
    /// Its dimension.
    const DIMENSION: Dimension;

    /// Whether it is a difference of temperatures, which has the dimension of a temperature and another zero.
    fn is_difference() -> bool {
        false
    }

    /// From a value in SI without prefixes: m, kg, s, A, K, mol, cd and their products.
    fn from_si(value: f64) -> Self;

    /// The value in SI without prefixes.
    fn si(self) -> f64;
}

impl<D: Exponents + ?Sized + 'static> Measure for Quantity<D, SI<f64>, f64> {
    const DIMENSION: Dimension =
        Dimension([D::L::I8, D::M::I8, D::T::I8, D::I::I8, D::Th::I8, D::N::I8, D::J::I8]);

    fn is_difference() -> bool {
        let plain = TypeId::of::<D::Kind>() == TypeId::of::<dyn uom::Kind>();
        plain && Self::DIMENSION == Dimension::TEMPERATURE
    }

    fn from_si(value: f64) -> Self {
        Quantity { dimension: PhantomData, units: PhantomData, value }
    }

    fn si(self) -> f64 {
        self.value
    }
}

/// The typed quantities in use, each an f64 in SI; their arithmetic is checked by the compiler.
pub mod si {
    pub use uom::si::f64::{
        Acceleration, Angle, Area, DynamicViscosity, ElectricCurrent, ElectricPotential,
        ElectricalResistance, Energy, Force, Frequency, HeatFluxDensity, HeatTransfer, Illuminance,
        KinematicViscosity, Length, LinearMassDensity, Mass, MassConcentration, MassDensity, MassFlux,
        MassRate, MolarFlux, Power, Pressure, RadiantExposure, Ratio, ReciprocalLength, SurfaceTension,
        TemperatureInterval, ThermalConductivity, ThermodynamicTemperature, Time, Torque, Velocity, Volume,
        VolumeRate,
    };
}
