//! Depths that follow from an animal's body: covered, able to right itself, reaching the air, at rest, out of reach.

use haulout_calc::animal::COVERED;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_register::{Species, Value};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

use crate::group::{BODY_HEIGHT, BODY_LENGTH};
use crate::species_value;

const fn depth(what: &'static str, value: f64, source: &'static str) -> Value {
    Value { what, value, unit: "m", dimension: Dimension::LENGTH, basis: Basis::CommonPractice, source }
}

static BACK: Value =
    depth("water over the back", 0.05, "keepers' practice: 50 to 100 mm over the back; the lower end");
static AWAY: Value = depth(
    "water over the back where an animal gets away",
    0.10,
    "keepers' practice: 50 to 100 mm over the back; the upper end. About 0.6 m of water covers a large monitor",
);
static ANY: Value = depth("deeper than any pool", 20.0, "no bound for animals that swim");
static DEEPEST_REST: Value =
    depth("deepest bed to rest on", 0.20, "keepers' practice: turtles rest under 5 to 20 cm of water");
static STRETCHED: Value = Value::number(
    "body lengths to the nostrils of an animal that stands up",
    1.2,
    Basis::CommonPractice,
    "keepers' practice: 1.2 to 1.5 shell lengths standing on the hind legs; the lower end, so that it is not its last strength",
);
static AT_MOST: Value = Value::number(
    "body lengths to the nostrils of a bottom walker that stands up",
    1.5,
    Basis::CommonPractice,
    "keepers' practice: 1.2 to 1.5 shell lengths standing on the hind legs; the upper end",
);
static REFUGE: Value = Value::number(
    "shell lengths of water to get away in",
    1.5,
    Basis::Reported,
    "a care sheet for sliders: 1.5 to 2 shell lengths deep; the lower end",
);

const fn law(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind,
        basis: Basis::CommonPractice,
        source: "keepers' practice",
        range: "animals of the sizes stated",
    }
}

/// Kinds of body below this are turtles.
const TURTLE: f64 = 0.5;

static IS_TURTLE: Formula<(Ratio,), bool> = Formula {
    card: &law("a turtle", "yes", "body is turtle", &["body"], Kind::Pick),
    run: |(body,)| Ok(body.value < TURTLE),
};

static ROLLS: Formula<(Length, Ratio), Length> = Formula {
    card: &law(
        "depth in which it rights itself swimming",
        "d_right",
        "one shell length for turtles, nothing for others",
        &["L", "body"],
        Kind::Pick,
    ),
    run: |(length, body)| Ok(if body.value < TURTLE { length } else { Length::from_si(0.0) }),
};

static REACHES: Formula<(Ratio, Length, Ratio, Length), Length> = Formula {
    card: &law(
        "deepest bed from which it reaches the air standing",
        "d_reach",
        "k L for animals that walk on the bed, no bound for others",
        &["k", "L", "walks", "d_any"],
        Kind::Pick,
    ),
    run: |(k, length, walks, any)| Ok(if walks.value > 0.5 { k * length } else { any }),
};

static RESTS: Formula<(Ratio, Length, Length), Length> = Formula {
    card: &law("deepest bed it rests on", "d_rest", "min(k × L, d_max)", &["k", "L", "d_max"], Kind::Closed),
    run: |(k, length, most)| Ok(if k * length < most { k * length } else { most }),
};

static GETS_AWAY: Formula<(Ratio, Length, Length, Length, Ratio), Length> = Formula {
    card: &law(
        "depth in which it gets away",
        "d_away",
        "h + c, for turtles at least k L",
        &["k", "L", "h", "c", "body"],
        Kind::Pick,
    ),
    run: |(k, length, height, cover, body)| {
        let (covered, long) = (height + cover, k * length);
        Ok(if body.value < TURTLE && long > covered { long } else { covered })
    },
};

fn body(sheet: Sheet<'_>, at: Subject) -> Known<Line<Ratio>> {
    let of = |s: &'static Species| s.habit().map(|h| &h.body);
    species_value(sheet, at, "kind of body", of)
}

fn walks(sheet: Sheet<'_>, at: Subject) -> Known<Line<Ratio>> {
    let of = |s: &'static Species| s.gait().map(|g| &g.walks_the_bed);
    species_value(sheet, at, "whether it walks on the bed", of)
}

/// Whether the group is of turtles.
///
/// # Errors
/// A gap where the species or its kind of body is not known.
pub fn is_turtle(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&IS_TURTLE, (body(sheet, at.part(About::Group).unwrap_or(at))?,))
}

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Group,
        axes: &[Axis::Size],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    }
}

/// Depth that covers the back.
pub static COVER_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("cover-depth", "depth that covers the back"),
    work: |sheet, at| sheet.work(&COVERED, (BODY_HEIGHT.of(sheet, at)?, sheet.register(&BACK, None))),
};

/// Depth in which an animal on its back rights itself swimming.
pub static RIGHTING_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("righting-depth", "depth in which it rights itself swimming"),
    work: |sheet, at| sheet.work(&ROLLS, (BODY_LENGTH.of(sheet, at), body(sheet, at)).all()?),
};

/// Deepest bed from which an animal that walks on it reaches the air.
pub static STANDING_REACH: Figure<Line<Length>> = Figure {
    card: &card("standing-reach", "deepest bed from which it reaches the air standing"),
    work: |sheet, at| {
        let (length, walks) = (BODY_LENGTH.of(sheet, at), walks(sheet, at)).all()?;
        sheet.work(&REACHES, (sheet.register(&AT_MOST, None), length, walks, sheet.register(&ANY, None)))
    },
};

/// Deepest bed on which an animal rests with its nostrils out.
pub static RESTING_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("resting-depth", "deepest bed to rest on with the nostrils out"),
    work: |sheet, at| {
        let length = BODY_LENGTH.of(sheet, at)?;
        sheet.work(&RESTS, (sheet.register(&STRETCHED, None), length, sheet.register(&DEEPEST_REST, None)))
    },
};

/// Depth in which an animal gets away.
pub static REFUGE_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("refuge-depth", "depth in which it gets away"),
    work: |sheet, at| {
        let parts = (BODY_LENGTH.of(sheet, at), BODY_HEIGHT.of(sheet, at), body(sheet, at));
        let (length, height, body) = parts.all()?;
        let (k, cover) = (sheet.register(&REFUGE, None), sheet.register(&AWAY, None));
        sheet.work(&GETS_AWAY, (k, length, height, cover, body))
    },
};
