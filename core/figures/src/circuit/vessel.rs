//! The time in which the delivered flow fills a vessel of known volume, to be taken on site.

use haulout_calc::hydraulics::turnover::TURNOVER;
use haulout_model::About;
use haulout_quantity::si::Time;
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{Axis, Figure, FigureCard, Line};

use super::duty::DELIVERED_FLOW;

/// 100 L.
static VESSEL: Value = Value {
    what: "volume of the vessel",
    value: 0.1,
    unit: "L",
    dimension: Dimension::VOLUME,
    basis: Basis::CommonPractice,
    source: "a tub that can be filled in a minute and weighed",
};

/// Time in which the delivered flow fills a vessel of 100 L.
pub static VESSEL_TIME: Figure<Line<Time>> = Figure {
    card: &FigureCard {
        id: "vessel-time",
        title: "time to fill a vessel of 100 L",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "s",
        us_unit: "s",
        resolution: None,
    },
    work: |sheet, at| {
        let delivered = DELIVERED_FLOW.of(sheet, at)?;
        sheet.work(&TURNOVER, (sheet.register(&VESSEL, None), delivered))
    },
};
