//! Animals by group: kind, number, sizes from the smallest to the full-grown, where they live.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Ratio};

use crate::card::{FieldCard, Form, Role};
use crate::compound::{List, Reference};
use crate::field::{Number, Text};
use crate::reader::Reader;

static COUNT: FieldCard =
    FieldCard::plain("animals by sex", Role::Given, (0.0, 200.0), 1.0).form(Form::Count);

const fn size(what: &'static str, range: (f64, f64)) -> FieldCard {
    FieldCard::quantity(what, Dimension::LENGTH, Role::Given, range, 0.005)
}

static BODY_SMALLEST: FieldCard = size("body length of the smallest animal", (0.02, 4.0));
static BODY_NOW: FieldCard = size("body length at present", (0.02, 4.0));
static BODY_GROWN: FieldCard = size("body length full-grown", (0.02, 4.0));
static HEIGHT_SMALLEST: FieldCard = size("body height of the smallest animal", (0.005, 1.0));
static HEIGHT_NOW: FieldCard = size("body height at present", (0.005, 1.0));
static HEIGHT_GROWN: FieldCard = size("body height full-grown", (0.005, 1.0));

/// A group of one species that lives together.
#[derive(Debug, Clone)]
pub struct Group {
    /// Its id.
    pub id: String,
    /// Key of the register, or the Latin name.
    pub species: Text,
    /// Males, females, not sexed.
    pub sexes: [Number<Ratio>; 3],
    /// The spaces the group lives in; which pools it reaches follows from them.
    pub spaces: List<Reference>,
    /// Carapace length of turtles, snout to vent of others.
    pub body_length: Sizes,
    /// Shell height of turtles, body height of others, standing.
    pub body_height: Sizes,
}

/// One measure at three times of life.
#[derive(Debug, Clone)]
pub struct Sizes {
    /// The smallest animal ever kept here, young included.
    pub smallest: Number<Length>,
    /// At present.
    pub now: Number<Length>,
    /// Full-grown.
    pub grown: Number<Length>,
}

impl Group {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Group {
            id: r.id(),
            species: r.text("species", "species"),
            sexes: r.sexes("sexes", &COUNT),
            spaces: r.references("spaces", "spaces the group lives in"),
            body_length: r.object("body-length", "body length", |r| Sizes {
                smallest: r.number("smallest", &BODY_SMALLEST),
                now: r.number("now", &BODY_NOW),
                grown: r.number("grown", &BODY_GROWN),
            }),
            body_height: r.object("body-height", "body height", |r| Sizes {
                smallest: r.number("smallest", &HEIGHT_SMALLEST),
                now: r.number("now", &HEIGHT_NOW),
                grown: r.number("grown", &HEIGHT_GROWN),
            }),
        }
    }
}
