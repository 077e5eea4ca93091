//! Load: nitrogen and solids out of what is fed over a water.

use haulout_calc::filtration::{feed as formulas, solids};
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{MassRate, Ratio};
use haulout_sheet::{All, Figure, FigureCard, Gap, Known, Limit, Line, Many, Sheet};

use super::{feed, joined::JOINED};
use crate::terms;

pub(crate) static RATES: Many<MassRate, MassRate> =
    Many { card: &terms::arithmetic("sum of rates", "M", "+", &[]), run: |m| Ok(m.iter().copied().sum()) };

const fn card(id: &'static str, title: &'static str, about: About) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: "g/d", us_unit: "g/d", resolution: None }
}

/// Nitrogen in a feed, the week's mean.
pub static FEED_NITROGEN: Figure<Line<MassRate>> = Figure {
    card: &card("feed-nitrogen", "nitrogen of a feed", About::Feed),
    work: |sheet, at| {
        let feed = feed(sheet, at);
        let lines = (feed.mass.on(sheet), feed.protein.high(sheet)).all()?;
        sheet.work(&formulas::NITROGEN_OF_FEED, lines)
    },
};

/// The same on its largest day.
pub static FEED_NITROGEN_PEAK: Figure<Line<MassRate>> = Figure {
    card: &card("feed-nitrogen-peak", "nitrogen of a feed on its largest day", About::Feed),
    work: |sheet, at| {
        let lines = (FEED_NITROGEN.of(sheet, at), feed(sheet, at).peak.on(sheet)).all()?;
        sheet.work(&formulas::NITROGEN_OF_LARGEST_DAY, lines)
    },
};

/// Total ammonia, as nitrogen, that fish would give off for it on its largest day.
pub static FEED_AMMONIA: Figure<Line<MassRate>> = Figure {
    card: &card(
        "feed-ammonia",
        "total ammonia of a feed on its largest day by the value of fish, as nitrogen",
        About::Feed,
    ),
    work: |sheet, at| {
        let feed = feed(sheet, at);
        let lines = (feed.mass.on(sheet), feed.protein.high(sheet), feed.peak.on(sheet)).all()?;
        sheet.work(&formulas::AMMONIA_OF_FEED, lines)
    },
};

/// Solids a day of a feed.
pub static FEED_SOLIDS: Figure<Line<MassRate>> = Figure {
    card: &card("feed-solids", "solids of a feed", About::Feed),
    work: |sheet, at| {
        let feed = feed(sheet, at);
        let lines = (feed.mass.on(sheet), feed.in_water.on(sheet), feed.left.on(sheet)).all()?;
        sheet.work(&solids::SOLIDS_OF_FEED, lines)
    },
};

/// The sum of a figure of feeds over a water.
fn summed(sheet: Sheet<'_>, at: Subject, each: &'static Figure<Line<MassRate>>) -> Known<Line<MassRate>> {
    let joined = JOINED.of(sheet, at)?;
    let lines: Vec<Known<Line<MassRate>>> = joined.feeds.iter().map(|feed| each.of(sheet, *feed)).collect();
    sheet.fold(&RATES, &lines.all()?)
}

/// Nitrogen fed to a group, the week's mean.
///
/// # Errors
/// A gap where its feeds or what they hold are not stated.
pub(crate) fn nitrogen_of_group(sheet: Sheet<'_>, group: Subject) -> Known<Line<MassRate>> {
    let design = sheet.design();
    if let Some(missing) = design.animals.items()[group.index()].feeds.missing() {
        return Err(Gap::from(missing).into());
    }
    let own = design.feeds().enumerate().filter(|(_, (of, _))| *of == group.index());
    let each = own.map(|(at, _)| FEED_NITROGEN.of(sheet, Subject::nth(About::Feed, at)));
    let each: Vec<Known<Line<MassRate>>> = each.collect();
    sheet.fold(&RATES, &each.all()?)
}

/// Nitrogen fed over the water of a pool, the week's mean.
pub static NITROGEN: Figure<Line<MassRate>> = Figure {
    card: &card("nitrogen", "nitrogen fed over the water", About::Pool),
    work: |sheet, at| summed(sheet, at, &FEED_NITROGEN),
};

/// The same with every feed at its largest day.
pub static NITROGEN_PEAK: Figure<Line<MassRate>> = Figure {
    card: &card("nitrogen-peak", "nitrogen fed over the water on the largest day", About::Pool),
    work: |sheet, at| summed(sheet, at, &FEED_NITROGEN_PEAK),
};

/// Total ammonia as nitrogen by the value of fish, to compare with.
pub static AMMONIA_PEAK: Figure<Line<MassRate>> = Figure {
    card: &card(
        "ammonia-peak",
        "total ammonia of the largest day by the value of fish, as nitrogen",
        About::Pool,
    ),
    work: |sheet, at| summed(sheet, at, &FEED_AMMONIA),
};

/// Solids a day.
pub static SOLIDS_A_DAY: Figure<Line<MassRate>> = Figure {
    card: &card("solids-a-day", "solids a day of the water", About::Pool),
    work: |sheet, at| summed(sheet, at, &FEED_SOLIDS),
};

/// Whether the pool answers for its water: something is fed over it, and it is the one that speaks for it, so that one
/// water is judged once; by ids and by what is stated at all.
///
/// # Errors
/// A gap when animals, their feeds or the circuits are not stated.
pub fn answers_for_its_water(sheet: Sheet<'_>, at: Subject) -> Known<bool> {
    let joined = JOINED.of(sheet, at)?;
    Ok(!joined.feeds.is_empty() && joined.speaker(sheet) == Some(at))
}

/// Protein of a feed as fed; of a range the upper end.
pub static PROTEIN: Figure<Line<Ratio>> = Figure {
    card: &FigureCard { unit: "%", us_unit: "%", ..card("protein", "protein as fed", About::Feed) },
    work: |sheet, at| feed(sheet, at).protein.high(sheet),
};

static OF_KIND: Formula<(u16, Ratio), Ratio> = Formula {
    card: &FormulaCard {
        name: "protein of a kind of feed",
        result: "p_kind",
        text: "p for this kind",
        symbols: &["kind", "p"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds",
    },
    run: |(_, share)| Ok(share),
};

/// The row of a kind of feed: dry pellets, moist food, greens and fruit.
const fn row_of(kind: u16) -> usize {
    match kind {
        0 => 0,
        6 | 7 => 2,
        _ => 1,
    }
}

/// The least and the most protein of the kind of a feed; `rows` holds low and high of dry, moist and plant food in turn.
///
/// # Errors
/// A gap when the kind is not stated.
pub fn band_of_kind(
    sheet: Sheet<'_>,
    at: Subject,
    rows: &'static [Limit; 6],
) -> Known<(Line<Ratio>, Line<Ratio>)> {
    let word = feed(sheet, at).kind.on(sheet)?;
    let row = 2 * row_of(sheet.option_of(word));
    let of = |limit: &'static Limit| sheet.work(&OF_KIND, (word.option(), sheet.limit(limit)));
    (of(&rows[row]), of(&rows[row + 1])).all()
}
