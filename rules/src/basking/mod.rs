//! Chapter basking: room to lie dry, ways up, warmth and ultraviolet at one place, and what floats.

pub(crate) mod dry_room_for_all_baskers;
pub(crate) mod float_carries_all;
pub(crate) mod float_edge_stays_dry;
pub(crate) mod site_stays_dry;
pub(crate) mod sites_apart;
pub(crate) mod sites_for_the_group;
pub(crate) mod surface_not_too_hot;
pub(crate) mod surface_takes_claws;
pub(crate) mod surface_warm_enough;
pub(crate) mod ultraviolet_where_it_is_warm;
pub(crate) mod way_up_from_low_water;
pub(crate) mod way_up_not_too_steep;

use haulout_engine::Check;
use haulout_figures::basking::warmth::{SURFACE_HIGH, SURFACE_LOW, WANTED_HIGH, WANTED_LOW};
use haulout_model::Subject;
use haulout_sheet::{All, Known, Sheet};

/// A site is within the band of warmth of a group.
fn warm(sheet: Sheet<'_>, site: Subject, group: Subject) -> Known<Check> {
    let have = (SURFACE_LOW.of(sheet, site), SURFACE_HIGH.of(sheet, site)).all();
    let wanted = (WANTED_LOW.of(sheet, group), WANTED_HIGH.of(sheet, group)).all();
    let ((coolest, warmest), (low, high)) = (have, wanted).all()?;
    Ok(Check::AllOf(vec![Ok(Check::at_least(coolest, low)), Ok(Check::at_most(warmest, high))]))
}
