//! The levels of a pool in the order in which they must rise.

use haulout_model::{Level, State, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Known, Line, Sheet};

use crate::pool::pool;
use crate::terms::DIFFERENCE;

/// The rise between each two levels that are stated next to one another: low, water, overflow, top of the liner; and
/// from the highest of those below the rim to the rim where the liner has no top.
pub fn rises(sheet: Sheet<'_>, at: Subject) -> Vec<Known<Line<Length>>> {
    let levels = &pool(sheet, at).levels;
    let below_the_rim = [&levels.low, &levels.water, &levels.overflow, &levels.liner_top];
    let mut ladder: Vec<&Level> = below_the_rim.into_iter().filter(|l| is_stated(l)).collect();
    if is_stated(&levels.rim) && !is_stated(&levels.liner_top) {
        ladder.push(&levels.rim);
    }
    let rise = |pair: &[&Level]| {
        sheet.work(&DIFFERENCE, (crate::level(sheet, pair[1]), crate::level(sheet, pair[0])).all()?)
    };
    ladder.windows(2).map(rise).collect()
}

/// The rim and the top of the liner, which may be one, where both are stated.
pub fn rim_and_liner(sheet: Sheet<'_>, at: Subject) -> Option<Known<(Line<Length>, Line<Length>)>> {
    let levels = &pool(sheet, at).levels;
    let both = is_stated(&levels.rim) && is_stated(&levels.liner_top);
    both.then(|| (crate::level(sheet, &levels.rim), crate::level(sheet, &levels.liner_top)).all())
}

fn is_stated(level: &Level) -> bool {
    matches!(level.state(), State::Given(_))
}

/// Top of the liner over the invert of the overflow; nothing where the file says that there is no liner. A liner that is
/// not spoken of is a gap: it may end below the overflow.
pub fn liner_over_overflow(sheet: Sheet<'_>, at: Subject) -> Option<Known<Line<Length>>> {
    let top = &pool(sheet, at).levels.liner_top;
    (!matches!(top.state(), State::None)).then(|| over_overflow(sheet, at, top))
}

/// Rim over the invert of the overflow.
///
/// # Errors
/// A gap where either is missing.
pub fn rim_over_overflow(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    over_overflow(sheet, at, &pool(sheet, at).levels.rim)
}

fn over_overflow(sheet: Sheet<'_>, at: Subject, level: &Level) -> Known<Line<Length>> {
    let overflow = crate::level(sheet, &pool(sheet, at).levels.overflow);
    sheet.work(&DIFFERENCE, (crate::level(sheet, level), overflow).all()?)
}
