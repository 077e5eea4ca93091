//! Pipes side by side: how a flow splits between them, so that all of them lose the same head.

use std::sync::Arc;

use haulout_quantity::si::{KinematicViscosity, Length, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::system::{DeviceLoss, PipeRun, SystemCurve};
use super::{above_zero, not_below_zero};
use crate::formula::{FormulaCard, Kind, Refusal};
use crate::zero::crossing;

/// What one branch is made of, in series.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Branch {
    /// Its runs.
    pub runs: Vec<PipeRun>,
    /// The devices that stand in it.
    pub devices: Vec<DeviceLoss>,
}

/// Branches that begin together and end together.
#[derive(Debug, Clone, PartialEq)]
pub struct Branches(pub Vec<Branch>);

/// The branches of one place, ready to be worked.
#[derive(Debug, Clone, PartialEq)]
pub struct Fork {
    branches: Vec<SystemCurve>,
    kinks: Vec<f64>,
}

/// A flow that no pipe of a pool carries, m³/s: the search for the split ends there.
const MOST: f64 = 10.0;

impl Fork {
    /// Branches at a viscosity.
    ///
    /// # Errors
    /// A [`Refusal`] for numbers no pipe takes, and for a branch that loses no head: everything would take it.
    pub fn new(branches: &Branches, viscosity: KinematicViscosity) -> Result<Self, Refusal> {
        let none = Length::from_si(0.0);
        let curve = |b: &Branch| SystemCurve::new(none, viscosity, &b.runs, &b.devices);
        let branches = branches.0.iter().map(curve).collect::<Result<Vec<_>, _>>()?;
        for branch in &branches {
            above_zero(branch.head(1.0), "the head that a branch loses at 1 m3/s")?;
        }
        let mut fork = Fork { branches, kinks: Vec::new() };
        fork.kinks = fork.all_kinks();
        Ok(fork)
    }

    /// Head lost by all branches at the flow of all of them together, m.
    pub(crate) fn head(&self, q: f64) -> f64 {
        self.head_from(0, q)
    }

    /// Flow of one branch at the flow of all of them together.
    ///
    /// # Errors
    /// For flows below zero, and for a branch that is not there.
    pub fn share(&self, flow: VolumeRate, branch: usize) -> Result<VolumeRate, Refusal> {
        let q = not_below_zero(flow.value, "the flow")?;
        let own = self.branches.get(branch).ok_or_else(|| Refusal::new("there is no such branch"))?;
        Ok(VolumeRate::from_si(at_head(own, self.head(q))))
    }

    pub(crate) fn kinks(&self) -> impl Iterator<Item = f64> + '_ {
        self.kinks.iter().copied()
    }

    /// The first of the branches from `first` on takes as much as leaves it at the head of the rest.
    fn head_from(&self, first: usize, q: f64) -> f64 {
        let own = &self.branches[first];
        if first + 1 == self.branches.len() || q <= 0.0 {
            return own.head(q);
        }
        let surplus = |x: f64| own.head(x) - self.head_from(first + 1, q - x);
        own.head(crossing(surplus, (0.0, surplus(0.0)), (q, surplus(q))))
    }

    /// The flows of all together at which some branch changes its regime.
    fn all_kinks(&self) -> Vec<f64> {
        let together = |head: f64| self.branches.iter().map(|b| at_head(b, head)).sum();
        self.branches.iter().flat_map(|b| b.kinks().map(|k| together(b.head(k)))).collect()
    }
}

/// The flow of a branch at a head.
fn at_head(branch: &SystemCurve, head: f64) -> f64 {
    if head <= 0.0 {
        return 0.0;
    }
    let surplus = |q: f64| branch.head(q) - head;
    crossing(surplus, (0.0, surplus(0.0)), (MOST, surplus(MOST)))
}

/// Flow of one of several branches: the whole flow, viscosity, branches, and which of them.
///
/// # Errors
/// As [`Fork::share`].
pub fn flow_of_branch(
    flow: VolumeRate,
    viscosity: KinematicViscosity,
    branches: &Arc<Branches>,
    branch: usize,
) -> Result<VolumeRate, Refusal> {
    Fork::new(branches, viscosity)?.share(flow, branch)
}

/// The card of [`flow_of_branch`].
pub static BRANCH_FLOW: FormulaCard = FormulaCard {
    name: "flow of a branch",
    result: "Q_branch",
    text: "flow at which the branch loses the head that all of them lose",
    symbols: &[],
    kind: Kind::Construction,
    basis: Basis::Published,
    source: "pipes in parallel: heads are equal, flows add up (Çengel & Cimbala, Fluid Mechanics, section 8-6)",
    range: "branches that begin together and end together, or in waters of one level",
};

#[cfg(test)]
mod tests {
    use haulout_quantity::Measure;
    use haulout_quantity::si::{KinematicViscosity, Length, Ratio, VolumeRate};

    use super::{Branch, Branches, Fork};
    use crate::hydraulics::system::PipeRun;

    fn branch(bore: f64) -> Branch {
        let run = PipeRun {
            bore: Length::from_si(bore),
            length: Length::from_si(36.0),
            roughness: Length::from_si(4.5e-5),
            friction_multiplier: Ratio::from_si(1.0),
            k_sum: Ratio::from_si(0.0),
        };
        Branch { runs: vec![run], devices: Vec::new() }
    }

    fn fork(bores: &[f64]) -> Fork {
        let viscosity = KinematicViscosity::from_si(1.002e-3 / 998.0);
        Fork::new(&Branches(bores.iter().map(|b| branch(*b)).collect()), viscosity).expect("in range")
    }

    /// Çengel & Cimbala, example 8-7: 40 mm and 80 mm, 36 m each, 30.012 L/s in all: 4.1514 and 25.861 L/s at 11.059 m (inputs of
    /// the book, solved anew with g 9.81).
    #[test]
    fn the_split_of_cengel_and_cimbala() {
        let fork = fork(&[0.04, 0.08]);
        let all = VolumeRate::from_si(30.012e-3);
        let share = |i| fork.share(all, i).expect("in range").si();
        assert!((share(0) / 4.1514e-3 - 1.0).abs() < 5e-5, "{}", share(0));
        assert!((share(1) / 25.861e-3 - 1.0).abs() < 5e-5, "{}", share(1));
        assert!((fork.head(30.012e-3) / 11.059 - 1.0).abs() < 5e-4);
    }

    /// Three pipes alike take a third each, whatever the flow.
    #[test]
    fn three_alike_share_alike() {
        let fork = fork(&[0.05, 0.05, 0.05]);
        for q in [1e-5, 1e-4, 3e-3] {
            let share = fork.share(VolumeRate::from_si(q), 1).expect("in range").si();
            assert!((3.0 * share / q - 1.0).abs() < 1e-9, "{share}");
        }
        assert_eq!(fork.kinks().count(), 6);
    }
}
