//! Chapter plumbing: what the pumps really move, and through what.

pub(crate) mod aperture_of_intakes;
pub(crate) mod basin_cleared_by_its_flow;
pub(crate) mod delivered_near_the_label;
pub(crate) mod fill_parted_by_air;
pub(crate) mod header_spreads_evenly;
pub(crate) mod jet_clear_of_the_intake;
pub(crate) mod no_single_blockable_suction;
pub(crate) mod siphon_broken_at_the_return;
pub(crate) mod static_head_fits_the_levels;
pub(crate) mod suction_head_enough;
pub(crate) mod turnover_by_delivered_flow;
pub(crate) mod velocity_at_the_grille;
pub(crate) mod velocity_in_the_pipes;
pub(crate) mod water_over_the_intake;
