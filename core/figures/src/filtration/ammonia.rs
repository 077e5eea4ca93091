//! Ammonia in the water: how much of it is un-ionised where the total stands at what the keepers hold it to.

use haulout_calc::filtration::ammonia;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{MassDensity, Ratio};
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Sheet};

use crate::pool::{pool, water::WARMEST};
use crate::terms::NUMBERS;

/// Share of the ammonia that is un-ionised in the warmest water at its highest pH.
pub static FREE_AMMONIA_SHARE: Figure<Line<Ratio>> = Figure {
    card: &FigureCard {
        id: "free-ammonia-share",
        title: "un-ionised share of ammonia",
        about: About::Pool,
        axes: &[],
        unit: "%",
        us_unit: "%",
        resolution: None,
    },
    work: |sheet, at| {
        let water = &pool(sheet, at).water;
        let ph = if water.ph_swing.is_given() {
            let ends = [water.ph.on(sheet), water.ph_swing.on(sheet)];
            Vec::from(ends).all().and_then(|ends| sheet.fold(&NUMBERS, &ends))
        } else {
            water.ph.on(sheet)
        };
        let lines = (ph, WARMEST.of(sheet, at)).all()?;
        sheet.work(&ammonia::FREE_AMMONIA_SHARE, lines)
    },
};

/// Un-ionised ammonia where the total stands at what the keepers hold it to.
pub static FREE_AMMONIA: Figure<Line<MassDensity>> = Figure {
    card: &FigureCard {
        id: "free-ammonia",
        title: "un-ionised ammonia at the total held to, as nitrogen",
        about: About::Pool,
        axes: &[],
        unit: "mg/L",
        us_unit: "mg/L",
        resolution: None,
    },
    work: |sheet, at| {
        let total = sheet.design().start_up.target_tan.on(sheet);
        let lines = (FREE_AMMONIA_SHARE.of(sheet, at), total).all()?;
        sheet.work(&ammonia::FREE_AMMONIA, lines)
    },
};

static ANY: Formula<(Ratio,), bool> = Formula {
    card: &FormulaCard {
        name: "fish share the water",
        result: "yes",
        text: "count is above nought",
        symbols: &["count"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "counts",
    },
    run: |(count,)| Ok(count.value > 0.0),
};

/// Whether fish are kept in the pool.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that there are none.
pub fn fish_share_it(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&ANY, (pool(sheet, at).food_fish.count.on(sheet)?,))
}
