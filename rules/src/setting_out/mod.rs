//! Chapter setting-out: the design against itself.

pub(crate) mod depth_and_bed_agree;
pub(crate) mod kind_is_used;
pub(crate) mod levels_ascend;
pub(crate) mod outline_is_simple;
pub(crate) mod pool_inside_its_space;
pub(crate) mod pools_do_not_overlap;
pub(crate) mod references_lead_somewhere;
pub(crate) mod space_inside_the_hall;
pub(crate) mod space_is_used;
pub(crate) mod value_is_plausible;
pub(crate) mod zone_inside_its_pool;
pub(crate) mod zone_reaches_its_depth;

use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Limit, Tighter};

/// What may stick out of an outline or lie over another one: the limit of every rule about areas on plan.
const fn sliver(rule: &'static str) -> Limit {
    Limit {
        rule,
        name: "sliver",
        row: "",
        what: "area on plan that is let pass",
        value: 0.01,
        unit: "m2",
        dimension: Dimension::AREA,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "what a curve flattened to 5 mm hides along 3 m; no tape sets out closer",
    }
}

#[cfg(test)]
mod tests;
