//! What a specification asks of a review beyond its designs, and what of a design it overrides.

use haulout_model::{Design, List, MissingKind, Reference, Stage};
use haulout_register::Matter;

use crate::ruleset::Ruleset;

/// The matters, in the order they are told.
const MATTERS: [Matter; 3] = [Matter::Welfare, Matter::Electrical, Matter::Guards];

/// A specification, as far as it decides how designs are judged.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Specification {
    /// The file as it was named.
    pub file: String,
    /// SHA-256 of its bytes, hexadecimal.
    pub digest: String,
    /// Its title; empty when it has none.
    pub title: String,
    /// The stage designs are held to.
    pub stage: Option<Stage>,
    /// Matters and the ids of the authorities designs are held to; no ids means none at all.
    pub held_to: Vec<(Matter, Vec<String>)>,
    /// Dimensions of the trade and the plus or minus that holds where a design states none, as written.
    pub plus_minus: Vec<(String, String)>,
}

/// Something a design says that was overridden.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Overridden {
    /// `stage`, or `held to for guards`.
    pub what: String,
    /// What the design says; `not stated` when it says nothing.
    pub from: String,
    /// What holds.
    pub to: String,
    /// `the command line` or `the specification`.
    pub by: &'static str,
}

pub(crate) fn held_to(design: &Design, matter: Matter) -> &List<Reference> {
    let held = &design.project.held_to;
    match matter {
        Matter::Welfare => &held.welfare,
        Matter::Electrical => &held.electrical,
        Matter::Guards => &held.guards,
    }
}

impl Ruleset {
    /// The ids a specification holds designs to in a matter; none when it does not say.
    pub(crate) fn specified(&self, matter: Matter) -> Option<&[String]> {
        let held = &self.specification.as_ref()?.held_to;
        held.iter().find(|(of, _)| *of == matter).map(|(_, ids)| ids.as_slice())
    }

    /// The stage a specification holds designs to.
    pub(crate) fn stage(&self) -> Option<Stage> {
        self.specification.as_ref().and_then(|s| s.stage)
    }

    /// The ids of everything a design is held to, by the specification or by itself.
    pub fn held_to(&self, design: &Design) -> Vec<String> {
        let of = |matter: Matter| match self.specified(matter) {
            Some(ids) => ids.to_vec(),
            None => held_to(design, matter).items().iter().map(|r| r.name().to_owned()).collect(),
        };
        MATTERS.into_iter().flat_map(of).collect()
    }

    /// What of a design was overridden, when it was reviewed at a stage.
    pub fn overridden(&self, design: &Design, stage: &str) -> Vec<Overridden> {
        let own = design.project.stage.word();
        let by = if self.stage().is_some_and(|s| s.name() == stage) { SPECIFICATION } else { COMMAND };
        let of_stage =
            (own != Some(stage) && (own.is_some() || self.stage().is_some())).then(|| Overridden {
                what: "stage".to_owned(),
                from: own.unwrap_or("not stated").to_owned(),
                to: stage.to_owned(),
                by,
            });
        let of_matters = MATTERS.into_iter().filter_map(|matter| self.other_authorities(design, matter));
        of_stage.into_iter().chain(of_matters).collect()
    }

    fn other_authorities(&self, design: &Design, matter: Matter) -> Option<Overridden> {
        let to = self.specified(matter)?;
        let list = held_to(design, matter);
        let own: Vec<&str> = list.items().iter().map(Reference::name).collect();
        let nobody = list.missing().is_some_and(|m| m.kind == MissingKind::None);
        if own == to && (nobody || !to.is_empty()) {
            return None;
        }
        let said = |ids: String, none: &str| if ids.is_empty() { none.to_owned() } else { ids };
        Some(Overridden {
            what: format!("held to for {}", matter.name()),
            from: said(own.join(", "), if nobody { "none" } else { "not stated" }),
            to: said(to.join(", "), "none"),
            by: SPECIFICATION,
        })
    }
}

const SPECIFICATION: &str = "the specification";
const COMMAND: &str = "the command line";
