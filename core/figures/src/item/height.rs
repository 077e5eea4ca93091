//! How high the lowest point of an item hangs: over the rim and the floor, and over the water.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::electrical::Item;
use haulout_model::{Reference, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::Length;
use haulout_sheet::{All, Axis, Figure, Gap, GapKind, Known, Line, Sheet};

use super::{cord, extent, item, length_card, pool_of};
use crate::pool::{level_in_case, pool};

const fn closed(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "arithmetic; a plug-in item hangs as low as its cord lets it",
        range: "any levels",
    }
}

static LOWEST: Formula<(Length, Length, Length), Length> = Formula {
    card: &closed("lowest point of an item", "z_low", "z - e - c", &["z", "e", "c"]),
    run: |(z, extent, cord)| Ok(z - extent - cord),
};

static HIGHER: Formula<(Length, Length), Length> = Formula {
    card: &closed("the higher of rim and floor", "z_s", "max(rim, floor)", &["rim", "floor"]),
    run: |(rim, floor)| Ok(rim.max(floor)),
};

static OVER: Formula<(Length, Length), Length> = Formula {
    card: &closed("height over a level", "h", "z_low - z_s", &["z_low", "z_s"]),
    run: |(low, level)| Ok(low - level),
};

static DEPTH: Formula<(Length, Length, Length), Length> = Formula {
    card: &closed("depth of the top of an item", "d", "z_w - z - e", &["z_w", "z", "e"]),
    run: |(water, z, extent)| Ok(water - z - extent),
};

fn lowest(sheet: Sheet<'_>, item: &Item) -> Known<Line<Length>> {
    let lines = (item.at[2].on(sheet), extent(sheet, item), cord(sheet, item)).all()?;
    sheet.work(&LOWEST, lines)
}

/// Lowest point of the item over what people stand on: the rim of the pool, or the floor of the item's space where
/// that is higher.
pub static HEIGHT_OVER_RIM: Figure<Line<Length>> = Figure {
    card: &length_card("height-over-rim", "lowest point over rim and floor", &[]),
    work: |sheet, at| {
        let (low, surface) = (lowest(sheet, item(sheet, at)), surface(sheet, at)).all()?;
        sheet.work(&OVER, (low, surface))
    },
};

/// Lowest point of the item over the water.
pub static HEIGHT_OVER_WATER: Figure<Line<Length>> = Figure {
    card: &length_card("height-over-water", "lowest point over the water", &[Axis::Level]),
    work: |sheet, at| {
        let (low, water) = (lowest(sheet, item(sheet, at)), level_in_case(sheet, pool_of(at))).all()?;
        sheet.work(&OVER, (low, water))
    },
};

/// Depth of the item's top under the water.
pub static DEPTH_OF_TOP: Figure<Line<Length>> = Figure {
    card: &length_card("depth-of-item", "depth of the item's top under the water", &[Axis::Level]),
    work: |sheet, at| {
        let item = item(sheet, at);
        let lines = (level_in_case(sheet, pool_of(at)), item.at[2].on(sheet), extent(sheet, item)).all()?;
        sheet.work(&DEPTH, lines)
    },
};

fn surface(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let rim = crate::level(sheet, &pool(sheet, pool_of(at)).levels.rim);
    let Some(space) = item(sheet, at).space.given() else { return rim };
    sheet.work(&HIGHER, (rim, floor(sheet, space)).all()?)
}

fn floor(sheet: Sheet<'_>, space: &Reference) -> Known<Line<Length>> {
    match sheet.design().space_named(space.name()) {
        Some(found) => crate::level(sheet, &sheet.design().hall.spaces.items()[found].floor_level),
        None => {
            let what = format!("there is no space \"{}\"", space.name());
            Err(Gap::at(GapKind::LeadsNowhere, what, space.seat().origin).into())
        }
    }
}
