//! Depths that an animal's body asks for, the window they leave with what visitors see, and the shares of the bed in them.

pub mod body;
pub mod shares;
pub mod voids;

use haulout_calc::formula::{FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::Length;
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Many, Sheet};

use crate::sight::pool::DEEPEST_SEEN;
use crate::terms::DIFFERENCE;
use body::{COVER_DEPTH, RIGHTING_DEPTH, STANDING_REACH};

const fn of_many(name: &'static str, result: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols: &[],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition",
        range: "any depths",
    }
}

static LARGEST: Many<Length, Length> = Many {
    card: &of_many("least depth that every demand is content with", "d_low", "max"),
    run: |d| Ok(d.iter().copied().reduce(|a, b| if b > a { b } else { a }).unwrap_or_default()),
};

static LEAST: Many<Length, Length> = Many {
    card: &of_many("greatest depth that every demand is content with", "d_high", "min"),
    run: |d| Ok(d.iter().copied().reduce(|a, b| if b < a { b } else { a }).unwrap_or_default()),
};

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::PoolGroup, axes: &[], unit: "m", us_unit: "ft", resolution: None }
}

/// The pool and the group of a pair.
fn parts(at: Subject) -> (Subject, Subject) {
    (Subject::nth(About::Pool, at.index()), Subject::nth(About::Group, at.second()))
}

/// What asks for depth where animals of the group swim: cover over the back, room to right itself.
pub fn asks_for_depth(sheet: Sheet<'_>, at: Subject) -> [Known<Line<Length>>; 2] {
    let (_, group) = parts(at);
    [COVER_DEPTH.of(sheet, group), RIGHTING_DEPTH.of(sheet, group)]
}

/// What bounds the depth: being seen, and the standing reach of animals that walk on the bed.
pub fn bounds_depth(sheet: Sheet<'_>, at: Subject) -> [Known<Line<Length>>; 2] {
    let (pool, group) = parts(at);
    [DEEPEST_SEEN.of(sheet, pool), STANDING_REACH.of(sheet, group)]
}

/// The shallow end of the window.
pub static WINDOW_LOW: Figure<Line<Length>> = Figure {
    card: &card("window-low", "shallow end of the window of depths"),
    work: |sheet, at| sheet.fold(&LARGEST, &asks_for_depth(sheet, at).into_iter().collect::<Vec<_>>().all()?),
};

/// The deep end of the window.
pub static WINDOW_HIGH: Figure<Line<Length>> = Figure {
    card: &card("window-high", "deep end of the window of depths"),
    work: |sheet, at| sheet.fold(&LEAST, &bounds_depth(sheet, at).into_iter().collect::<Vec<_>>().all()?),
};

/// How wide the window is; below nothing it is empty.
pub static WINDOW: Figure<Line<Length>> = Figure {
    card: &card("window", "width of the window of depths"),
    work: |sheet, at| sheet.work(&DIFFERENCE, (WINDOW_HIGH.of(sheet, at), WINDOW_LOW.of(sheet, at)).all()?),
};
