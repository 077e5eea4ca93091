//! What is stated of a pool's water, as figures for rules and scripts, and how deep one sees into it.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::About;
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio, TemperatureInterval, ThermodynamicTemperature};
use haulout_register::Value;
use haulout_sheet::{Figure, FigureCard, Line};

use super::pool;

/// The part of the Secchi depth over which animals are still well seen.
pub(crate) static CLEAR_SHARE: Value = Value::number(
    "share of the clarity over which animals are well seen",
    0.7,
    Basis::CommonPractice,
    "exhibit practice: the sight path is at most 0.7 of the clarity",
);

static SEEING: Formula<(Ratio, Length), Length> = Formula {
    card: &FormulaCard {
        name: "sight path in water",
        result: "s",
        text: "k × Z",
        symbols: &["k", "Z"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "exhibit practice: the sight path is at most a share of the clarity",
        range: "daylight or lamps from above, clarity as Secchi depth",
    },
    run: |(share, clarity)| Ok(share * clarity),
};

static COOLER: Formula<(ThermodynamicTemperature, TemperatureInterval), ThermodynamicTemperature> =
    Formula { card: &swung("coolest water", "T - s"), run: |(temperature, swing)| Ok(temperature - swing) };

static WARMER: Formula<(ThermodynamicTemperature, TemperatureInterval), ThermodynamicTemperature> =
    Formula { card: &swung("warmest water", "T + s"), run: |(temperature, swing)| Ok(temperature + swing) };

const fn swung(name: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result: "T_end",
        text,
        symbols: &["T", "s"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "a swing stated either way",
    }
}

const fn temperature(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Pool, axes: &[], unit: "°C", us_unit: "°F", resolution: None }
}

/// Water temperature as stated; of a range the lower end, at which water is more viscous.
pub static TEMPERATURE: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &temperature("water-temperature", "water temperature"),
    work: |sheet, at| pool(sheet, at).water.temperature.on(sheet),
};

/// The coolest the water gets: the lower end of what is stated, less the swing where one is.
pub static COOLEST: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &temperature("coolest-water", "coolest water"),
    work: |sheet, at| {
        let water = &pool(sheet, at).water;
        let low = water.temperature.low(sheet)?;
        if water.swing.is_given() { sheet.work(&COOLER, (low, water.swing.on(sheet)?)) } else { Ok(low) }
    },
};

/// The warmest the water gets.
pub static WARMEST: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &temperature("warmest-water", "warmest water"),
    work: |sheet, at| {
        let water = &pool(sheet, at).water;
        let high = water.temperature.high(sheet)?;
        if water.swing.is_given() { sheet.work(&WARMER, (high, water.swing.on(sheet)?)) } else { Ok(high) }
    },
};

/// The longest sight path on which an animal is well seen.
pub static SEEING_DEPTH: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "seeing-depth",
        title: "longest sight path in the water",
        about: About::Pool,
        axes: &[],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    },
    work: |sheet, at| {
        let clarity = pool(sheet, at).water.secchi.on(sheet)?;
        sheet.work(&SEEING, (sheet.register(&CLEAR_SHARE, None), clarity))
    },
};
