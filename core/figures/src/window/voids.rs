//! What void-formers would have to take up to bring a deep bed into the window of depths.

use haulout_model::About;
use haulout_quantity::si::Volume;
use haulout_sheet::{All, Figure, FigureCard, Line};

use super::WINDOW_HIGH;
use crate::pool::bed::BED;
use crate::pool::pool;
use crate::pool::volume::VOLUME_BELOW;
use crate::terms::BELOW;

/// Bulk of everything under the deep end of the window, as the bed is drawn. Modules that are nearly all open leave nearly
/// all of that water where it is: they change the depth, not the weight and hardly the water.
pub static VOID_FORMERS_WANTED: Figure<Line<Volume>> = Figure {
    card: &FigureCard {
        id: "void-formers-wanted",
        title: "bulk of void-formers that would bring the bed into the window",
        about: About::PoolGroup,
        axes: &[],
        unit: "m3",
        us_unit: "ft3",
        resolution: Some("curves flattened to 5 mm; slopes to 5e-6 of area times height"),
    },
    work: |sheet, at| {
        let own = at.part(About::Pool).expect("a pool-group has a pool");
        let water = crate::level(sheet, &pool(sheet, own).levels.water);
        let (bed, water, deep) = (BED.of(sheet, own), water, WINDOW_HIGH.of(sheet, at)).all()?;
        sheet.construct(&VOLUME_BELOW, (bed, sheet.work(&BELOW, (water, deep))?))
    },
};
