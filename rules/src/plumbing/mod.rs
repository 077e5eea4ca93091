//! Chapter plumbing: what the pumps really move, and through what.

pub(crate) mod aperture_of_intakes;
pub(crate) mod no_single_blockable_suction;
pub(crate) mod turnover_by_delivered_flow;
pub(crate) mod velocity_at_the_grille;
pub(crate) mod velocity_in_the_pipes;
pub(crate) mod water_over_the_intake;
