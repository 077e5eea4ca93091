//! Turnover: how long a flow takes to move as much water as a pool holds.

use haulout_quantity::Basis;
use haulout_quantity::si::{Time, Volume, VolumeRate};
use uom::si::time::second;

use super::{above_zero, finite};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};

/// Turnover time from net water and delivered flow.
pub static TURNOVER: Formula<(Volume, VolumeRate), Time> = Formula {
    card: &FormulaCard {
        name: "turnover time",
        result: "t",
        text: "V / Q",
        symbols: &["V", "Q"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "definition",
        range: "net water and delivered flow, both above zero",
    },
    run: time_of,
};

/// Turnover time by the label of the pump: what the box promises, for comparison only.
pub static LABEL_TURNOVER: Formula<(Volume, VolumeRate), Time> = Formula {
    card: &FormulaCard {
        name: "turnover time by the label of the pump",
        result: "t_label",
        text: "V / Q_label",
        symbols: &["V", "Q_label"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "definition",
        range: "no pump delivers its label flow against a head; shown beside the real turnover only",
    },
    run: time_of,
};

fn time_of((volume, flow): (Volume, VolumeRate)) -> Result<Time, Refusal> {
    let v = above_zero(volume.value, "the volume of water")?;
    let q = above_zero(flow.value, "the flow")?;
    Ok(Time::new::<second>(finite(v / q, "the turnover time")?))
}
