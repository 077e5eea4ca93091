//! Ammonia: what a feed gives off on its largest day, and how much of the water's is un-ionised.

use haulout_calc::filtration;
use haulout_model::About;
use haulout_quantity::si::{MassDensity, MassRate, Ratio};
use haulout_sheet::{All, Figure, FigureCard, Line};

use crate::pool::{pool, water::WARMEST};
use crate::terms::NUMBERS;

/// Total ammonia, as nitrogen, that a feed gives off on its largest day.
pub static FEED_AMMONIA: Figure<Line<MassRate>> = Figure {
    card: &FigureCard {
        id: "feed-ammonia",
        title: "total ammonia of a feed on its largest day, as nitrogen",
        about: About::Feed,
        axes: &[],
        unit: "g/d",
        us_unit: "g/d",
        resolution: None,
    },
    work: |sheet, at| {
        let feed = super::feed(sheet, at);
        let lines = (feed.mass.on(sheet), feed.protein.on(sheet), feed.peak.on(sheet)).all()?;
        sheet.work(&filtration::AMMONIA_OF_FEED, lines)
    },
};

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
            sheet.fold(&NUMBERS, &Vec::from(ends).all()?)
        } else {
            water.ph.on(sheet)
        };
        let lines = (ph, WARMEST.of(sheet, at)).all()?;
        sheet.work(&filtration::FREE_AMMONIA_SHARE, lines)
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
        sheet.work(&filtration::FREE_AMMONIA, lines)
    },
};
