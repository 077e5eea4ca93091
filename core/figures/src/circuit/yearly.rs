//! What a circuit delivers of its label, what it takes of energy, and how soon a basin is cleared by its own flow.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::turnover::TURNOVER;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Energy, Power, Ratio, Time, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, Known, Line, Sheet};

use super::circuit;
use super::duty::DELIVERED_FLOW;
use super::turnover::LABEL_FLOW;
use crate::pool::pool;
use crate::pool::volume::NET_VOLUME;
use crate::water::overflow::{FLOWS, PUMPED_INFLOW};
use crate::water::stream::{STREAM_FLOW, stream};

const fn law(
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
        basis: Basis::Published,
        source: "arithmetic",
        range: "any numbers",
    }
}

static OF_LABEL: Formula<(VolumeRate, VolumeRate), Ratio> = Formula {
    card: &law("share of the label's flow", "s", "Q / Q_label", &["Q", "Q_label"]),
    run: |(flow, label)| {
        if label.value <= 0.0 {
            return Err(Refusal::new("the curve of the pump promises no flow"));
        }
        Ok(flow / label)
    },
};

static A_YEAR: Formula<(Power,), Energy> = Formula {
    card: &law("energy in a year", "E", "P × 31557600 s", &["P"]),
    run: |(power,)| Ok(power * Time::from_si(31_557_600.0)),
};

/// Delivered flow as a share of what the label promises.
pub static SHARE_OF_LABEL: Figure<Line<Ratio>> = Figure {
    card: &FigureCard {
        id: "share-of-label",
        title: "delivered flow against the label",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "%",
        us_unit: "%",
        resolution: None,
    },
    work: |sheet, at| {
        let lines = (DELIVERED_FLOW.of(sheet, at), LABEL_FLOW.of(sheet, at)).all()?;
        sheet.work(&OF_LABEL, lines)
    },
};

/// Energy the pump takes in a year of running day and night.
pub static ENERGY_A_YEAR: Figure<Line<Energy>> = Figure {
    card: &FigureCard {
        id: "energy-a-year",
        title: "energy of the pump in a year",
        about: About::Circuit,
        axes: &[],
        unit: "kWh",
        us_unit: "kWh",
        resolution: None,
    },
    work: |sheet, at| sheet.work(&A_YEAR, (circuit(sheet, at).pump.power.on(sheet)?,)),
};

/// What runs through a basin: returns into it, streams into it, and filters that give back what was drawn from it.
pub static FLOW_THROUGH: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "flow-through",
        title: "flow that comes into the basin",
        about: About::Pool,
        axes: &[Axis::Filter],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: None,
    },
    work: |sheet, at| {
        let mut flows = vec![PUMPED_INFLOW.of(sheet, at)];
        let design = sheet.design();
        let id = Some(pool(sheet, at).id.as_str());
        let lists = [design.streams.missing(), design.filters.missing()];
        let gaps = lists.into_iter().flatten().filter(|m| m.kind != haulout_model::MissingKind::None);
        flows.extend(gaps.map(|m| Err(Gap::from(m).into())));
        let streams = (0..design.streams.items().len()).map(|i| Subject::nth(About::Stream, i));
        let streams = streams.filter(|s| stream(sheet, *s).to.name() == id);
        flows.extend(streams.map(|s| STREAM_FLOW.of(sheet, s)));
        flows.extend(through_filters(sheet, id));
        sheet.fold(&FLOWS, &flows.all()?)
    },
};

/// What comes back over the lips of filters that circuits from the pool are lifted to.
fn through_filters(sheet: Sheet<'_>, id: Option<&str>) -> Vec<Known<Line<VolumeRate>>> {
    let mut flows = Vec::new();
    for (i, circuit) in sheet.design().circuits.items().iter().enumerate() {
        if circuit.from.name() != id {
            continue;
        }
        let into_filter = |r: &&haulout_model::returns::Return| {
            r.into.name().is_some_and(|name| sheet.design().filter_named(name).is_some())
        };
        let own = circuit.returns.items().iter().filter(into_filter);
        let at = Subject::nth(About::Circuit, i);
        flows.extend(own.map(|r| crate::water::overflow::of_return(sheet, at, circuit, r)));
    }
    flows
}

/// Time in which that flow clears the basin's own water once. Returns in series do not add up to it.
pub static CLEARING: Figure<Line<Time>> = Figure {
    card: &FigureCard {
        id: "clearing",
        title: "time to clear the basin's own water",
        about: About::Pool,
        axes: &[Axis::Filter],
        unit: "h",
        us_unit: "h",
        resolution: None,
    },
    work: |sheet, at| {
        let lines = (NET_VOLUME.of(sheet, at), FLOW_THROUGH.of(sheet, at)).all()?;
        sheet.work(&TURNOVER, lines)
    },
};
