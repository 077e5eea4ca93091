//! What the house as a whole undertakes for keepers and visitors, and the eyes it is made for.

use haulout_model::About;
use haulout_quantity::si::{Length, Ratio};
use haulout_sheet::{Figure, FigureCard, Line};

const fn card(id: &'static str, title: &'static str, about: About, unit: [&'static str; 2]) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: unit[0], us_unit: unit[1], resolution: None }
}

/// Keepers who go in together.
pub static TOGETHER: Figure<Line<Ratio>> = Figure {
    card: &card("keepers-together", "keepers who go in together", About::Whole, ["", ""]),
    work: |sheet, _| sheet.design().keepers.together.on(sheet),
};

/// Places to hold one animal apart.
pub static HOLDING: Figure<Line<Ratio>> = Figure {
    card: &card("holding-places", "places to hold one animal apart", About::Whole, ["", ""]),
    work: |sheet, _| sheet.design().keepers.holding.on(sheet),
};

/// Basins that can be used at once.
pub static BASINS: Figure<Line<Ratio>> = Figure {
    card: &card("hand-wash-basins", "basins to wash hands", About::Whole, ["", ""]),
    work: |sheet, _| sheet.design().visitors.hand_wash.basins.on(sheet),
};

/// Rim of the lowest basin.
pub static BASIN_RIM: Figure<Line<Length>> = Figure {
    card: &card("hand-wash-rim", "rim of the lowest basin over the floor", About::Whole, ["m", "ft"]),
    work: |sheet, _| sheet.design().visitors.hand_wash.rim.on(sheet),
};

/// Way to the basins.
pub static BASIN_WAY: Figure<Line<Length>> = Figure {
    card: &card("hand-wash-way", "way from the exhibit to the basins", About::Whole, ["m", "ft"]),
    work: |sheet, _| sheet.design().visitors.hand_wash.way.on(sheet),
};

/// Eye of a position over its floor.
pub static EYE_HEIGHT: Figure<Line<Length>> = Figure {
    card: &card("eye-height", "eye over the floor", About::Position, ["m", "ft"]),
    work: |sheet, at| sheet.design().visitors.positions.items()[at.index()].eye.on(sheet),
};
