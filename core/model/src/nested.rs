//! Items of lists within lists, each with the position of what holds it, in the order of the file.

use crate::design::Design;
use crate::design::animal::Group;
use crate::design::circuit::{Circuit, Device, Intake, Run};
use crate::design::exit::{Exit, Ledge, Opening};
use crate::design::feed::Feed;
use crate::design::fill::WetMaterial;
use crate::design::overflow::Overflow;
use crate::design::pool::{Pool, Zone};
use crate::design::returns::Return;

fn within<'d, A, B: 'd>(outer: &'d [A], inner: fn(&'d A) -> &'d [B]) -> impl Iterator<Item = (usize, &'d B)> {
    outer.iter().enumerate().flat_map(move |(at, a)| inner(a).iter().map(move |b| (at, b)))
}

impl Design {
    fn of_pools<'d, B: 'd>(&'d self, inner: fn(&'d Pool) -> &'d [B]) -> impl Iterator<Item = (usize, &'d B)> {
        within(self.pools.items(), inner)
    }

    fn of_circuits<'d, B: 'd>(
        &'d self,
        inner: fn(&'d Circuit) -> &'d [B],
    ) -> impl Iterator<Item = (usize, &'d B)> {
        within(self.circuits.items(), inner)
    }

    /// Every zone with the position of its pool.
    pub fn zones(&self) -> impl Iterator<Item = (usize, &Zone)> {
        self.of_pools(|p| p.zones.items())
    }

    /// Every exit with the position of its pool.
    pub fn exits(&self) -> impl Iterator<Item = (usize, &Exit)> {
        self.of_pools(|p| p.exits.items())
    }

    /// Every ledge with the position of its pool.
    pub fn ledges(&self) -> impl Iterator<Item = (usize, &Ledge)> {
        self.of_pools(|p| p.ledges.items())
    }

    /// Every opening with the position of its pool.
    pub fn openings(&self) -> impl Iterator<Item = (usize, &Opening)> {
        self.of_pools(|p| p.openings.items())
    }

    /// Every wet material with the position of its pool.
    pub fn wet_materials(&self) -> impl Iterator<Item = (usize, &WetMaterial)> {
        self.of_pools(|p| p.wet_materials.items())
    }

    /// Every overflow with the position of its pool.
    pub fn overflows(&self) -> impl Iterator<Item = (usize, &Overflow)> {
        self.of_pools(|p| p.overflows.items())
    }

    /// Every run with the position of its circuit.
    pub fn runs(&self) -> impl Iterator<Item = (usize, &Run)> {
        self.of_circuits(|c| c.runs.items())
    }

    /// Every device in line with the position of its circuit.
    pub fn devices(&self) -> impl Iterator<Item = (usize, &Device)> {
        self.of_circuits(|c| c.devices.items())
    }

    /// Every return with the position of its circuit.
    pub fn returns(&self) -> impl Iterator<Item = (usize, &Return)> {
        self.of_circuits(|c| c.returns.items())
    }

    /// Every feed with the position of its group.
    pub fn feeds(&self) -> impl Iterator<Item = (usize, &Feed)> {
        within(self.animals.items(), |g: &Group| g.feeds.items())
    }

    /// Every intake of every circuit.
    pub fn intakes(&self) -> impl Iterator<Item = &Intake> {
        self.of_circuits(|c| c.intakes.items()).map(|(_, intake)| intake)
    }

    /// The circuit an intake belongs to, by the intake's position in the order of the file.
    pub fn circuit_of_intake(&self, intake: usize) -> Option<usize> {
        self.intake(intake).map(|(circuit, _)| circuit)
    }
}
