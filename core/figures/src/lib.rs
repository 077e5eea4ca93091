//! What a design amounts to: one figure a file, by subject, and the catalogue of them all.
//!
//! Geometry, loops and searches belong here and in `calc`, never in rules.

pub mod barrier;
pub mod basking;
pub mod circuit;
pub mod filtration;
pub mod group;
pub mod intake;
pub mod item;
mod level;
mod outline;
pub mod pool;
pub mod setting_out;
pub mod sight;
mod species;
mod table;
mod terms;
pub mod window;

use haulout_sheet::Catalogued;

pub use level::{level, level_named};
pub use outline::outline;
pub use species::species_value;
pub use table::row_by_size;

/// Every figure that is one number, for the `sheet` command, for scripts and for the reference page.
pub static CATALOGUE: &[&dyn Catalogued] = &[
    &pool::surface_area::SURFACE_AREA,
    &pool::volume::GROSS_VOLUME,
    &pool::solids::SOLIDS,
    &pool::volume::NET_VOLUME,
    &pool::depth::GREATEST_DEPTH,
    &pool::depth::MEAN_DEPTH,
    &pool::bands::RESTING_SHARE,
    &pool::bands::SHALLOW_SHARE,
    &pool::bands::WORKING_SHARE,
    &pool::bands::DEEP_SHARE,
    &pool::water::TEMPERATURE,
    &pool::water::COOLEST,
    &pool::water::WARMEST,
    &pool::water::SEEING_DEPTH,
    &sight::bed::BED_SEEN,
    &sight::bed::BED_MADE_OUT,
    &sight::bed::NEAREST_WAY,
    &sight::bed::FARTHEST_WAY,
    &sight::bed::WAY_TO_THE_DEEP,
    &sight::bed::CLARITY_NEEDED,
    &sight::bed::SEEN_DEPTH,
    &sight::panel::DEEP_SEEN_THROUGH,
    &sight::panel::SILL_UNDER_WATER,
    &sight::pool::OUT_OF_SIGHT,
    &sight::pool::DEEPEST_SEEN,
    &window::body::COVER_DEPTH,
    &window::body::RIGHTING_DEPTH,
    &window::body::STANDING_REACH,
    &window::body::RESTING_DEPTH,
    &window::body::REFUGE_DEPTH,
    &window::WINDOW_LOW,
    &window::WINDOW_HIGH,
    &window::WINDOW,
    &window::shares::REST_SHARE,
    &window::shares::REFUGE_SHARE,
    &window::shares::RIGHTING_BAND,
    &window::shares::IN_THE_WINDOW,
    &group::BODY_LENGTH,
    &group::BODY_HEIGHT,
    &group::ANIMALS,
    &circuit::duty::DELIVERED_FLOW,
    &circuit::duty::DUTY_HEAD,
    &circuit::turnover::SYSTEM_WATER,
    &circuit::turnover::LABEL_FLOW,
    &circuit::turnover::TURNOVER,
    &circuit::turnover::LABEL_TURNOVER,
    &circuit::velocity::GREATEST_VELOCITY,
    &intake::GRILLE_VELOCITY,
    &intake::HOLDING_FORCE,
    &intake::PARTNER_DISTANCE,
    &intake::COVER,
    &intake::APERTURE,
    &intake::HEAD,
    &setting_out::plan::SPACE_OUTSIDE,
    &setting_out::plan::POOL_OUTSIDE,
    &setting_out::plan::ZONE_OUTSIDE,
    &setting_out::plan::POOLS_OVERLAP,
    &setting_out::beds::BED_STAYS_ABOVE,
    &barrier::habit::TOTAL_LENGTH,
    &barrier::habit::REACH,
    &barrier::opening::LEAST_BODY,
    &barrier::opening::WIDEST_OPENING,
    &barrier::opening::BELOW_GROUND,
    &barrier::boundary::BOUNDARY_GAP,
    &barrier::boundary::BOUNDARY_OPEN,
    &barrier::corner::INNER_CORNER,
    &barrier::footing::STANDING_LEVEL,
    &barrier::footing::COMPANION_BACK,
    &barrier::footing::FOOTING,
    &barrier::height::EFFECTIVE_HEIGHT,
    &barrier::height::OVERHANG,
    &barrier::door::SILL_HEIGHT,
    &barrier::door::GAP_UNDER,
    &barrier::guard::GUARD_HEIGHT,
    &barrier::guard::DROP,
    &barrier::guard::GUARD_OPENING,
    &item::path::WATER_PATH,
    &item::path::WATER_DISTANCE,
    &item::height::HEIGHT_OVER_RIM,
    &item::height::HEIGHT_OVER_WATER,
    &item::height::DEPTH_OF_TOP,
    &basking::habit::BASKERS,
    &basking::room::BODY_AREA,
    &basking::room::AREA_NEEDED,
    &basking::room::DRY_AREA_HERE,
    &basking::room::AREA_NEEDED_HERE,
    &basking::room::DRY_AREA_SHARED,
    &basking::room::AREA_NEEDED_SHARED,
    &basking::room::DRY_SITES,
    &basking::room::BASKERS_HERE,
    &basking::site::DRY_AREA,
    &basking::site::OVER_HIGH,
    &basking::site::OVER_LOW,
    &basking::site::FOOT_DEPTH,
    &basking::site::ACCESS_SLOPE,
    &basking::site::NEAREST_SITE,
    &basking::site::LONGEST_USER,
    &basking::warmth::SURFACE_LOW,
    &basking::warmth::SURFACE_HIGH,
    &basking::warmth::UV_INDEX,
    &basking::warmth::WANTED_LOW,
    &basking::warmth::WANTED_HIGH,
    &basking::warmth::UV_FROM,
    &basking::warmth::UV_TO,
    &basking::float::GROUP_MASS,
    &basking::float::SITE_LOAD,
    &basking::float::CARRIES,
    &basking::float::LOAD_RATIO,
    &basking::float::EDGE_HEIGHT,
    &filtration::ammonia::FEED_AMMONIA,
    &filtration::ammonia::FREE_AMMONIA_SHARE,
    &filtration::ammonia::FREE_AMMONIA,
    &filtration::gravel::UP_FLOW,
    &filtration::gravel::NOTCH_OVER_WATER,
];
