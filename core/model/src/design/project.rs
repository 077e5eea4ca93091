//! The project: who, which revision, how far it has got, what it is held to.

use crate::card::{ChoiceCard, Role};
use crate::compound::{List, Reference};
use crate::field::{Choice, Text};
use crate::layout::Stage;
use crate::reader::Reader;

static STAGE: ChoiceCard =
    ChoiceCard { what: "stage", role: Role::Given, options: Stage::WORDS, default: None };
static UNIT: ChoiceCard = ChoiceCard {
    what: "unit of bare coordinates",
    role: Role::Given,
    options: &["m", "cm", "mm", "ft", "in"],
    default: Some(("m", "metres unless the drawing says otherwise")),
};

/// Title block of the design.
#[derive(Debug, Clone)]
pub struct Project {
    /// Its name.
    pub title: Text,
    /// Revision.
    pub revision: Text,
    /// Date of the revision.
    pub date: Text,
    /// Who drew it.
    pub author: Text,
    /// Where it is.
    pub place: Text,
    /// How far it has got.
    pub stage: Choice,
    /// What it is held to, by matter.
    pub held_to: HeldTo,
}

/// Ids of the table of authorities, by matter.
#[derive(Debug, Clone)]
pub struct HeldTo {
    /// Welfare schemes; several may apply.
    pub welfare: List<Reference>,
    /// Electrical code family.
    pub electrical: List<Reference>,
    /// Guards for visitors.
    pub guards: List<Reference>,
}

/// How the drawing is to be read.
#[derive(Debug, Clone)]
pub struct DrawingCard {
    /// The unit of bare coordinates.
    pub unit: Choice,
    /// Where x and y are zero.
    pub origin: Text,
    /// What level 0.00 is.
    pub datum: Text,
}

impl Project {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Project {
            title: r.text("title", "title"),
            revision: r.text("revision", "revision"),
            date: r.text("date", "date of the revision"),
            author: r.text("author", "author"),
            place: r.text("place", "place"),
            stage: r.choice("stage", &STAGE),
            held_to: r.object("held-to", "what the design is held to", HeldTo::read),
        }
    }

    /// The stage; a file that states none is taken as detailed, so that a missing word never makes less owed than a
    /// drawn design owes.
    pub fn stage(&self) -> Stage {
        self.stage.word().and_then(Stage::of).unwrap_or(Stage::Detailed)
    }
}

impl HeldTo {
    fn read<R: Reader>(r: &mut R) -> Self {
        HeldTo {
            welfare: r.references("welfare", "welfare schemes"),
            electrical: r.references("electrical", "electrical code family"),
            guards: r.references("guards", "code for guards"),
        }
    }
}

impl DrawingCard {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        DrawingCard {
            unit: r.choice("unit", &UNIT),
            origin: r.text("origin", "origin of the drawing"),
            datum: r.text("datum", "datum of levels"),
        }
    }
}
