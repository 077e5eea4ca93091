//! Chapter power: electricity near the water, by the code family the design is held to.

pub(crate) mod bonding_in_the_zones;
pub(crate) mod equipment_five_feet_from_water;
pub(crate) mod extra_low_voltage_in_zone_one;
pub(crate) mod ingress_degree_for_the_zone;
pub(crate) mod luminaires_clear_of_the_water;
pub(crate) mod mains_outside_zone_one;
pub(crate) mod receptacle_six_feet_from_water;
pub(crate) mod residual_current_on_every_circuit;
pub(crate) mod residual_current_protection;
pub(crate) mod sockets_and_switches_outside_zone_one;
pub(crate) mod underwater_luminaire_deep_enough;
pub(crate) mod voltage_of_submersed_equipment;
pub(crate) mod water_is_classed;
mod zones;
