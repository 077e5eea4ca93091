//! Animals by group: kind, number, sizes from the smallest to the full-grown, where they live.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Mass, Ratio};

use crate::card::{FieldCard, Form, Role};
use crate::compound::{List, Reference};
use crate::design::feed::Feed;
use crate::field::{Flag, Number, Text};
use crate::reader::Reader;

static COUNT: FieldCard =
    FieldCard::plain("animals by sex", Role::Given, (0.0, 200.0), 1.0).form(Form::Count);

const fn size(what: &'static str, range: (f64, f64)) -> FieldCard {
    FieldCard::quantity(what, Dimension::LENGTH, Role::Given, range, 0.005)
}

const LENGTHS: (f64, f64) = (0.02, 4.0);
const HEIGHTS: (f64, f64) = (0.005, 1.0);

static BODY_LENGTH: [FieldCard; 3] = [
    size("body length of the smallest animal", LENGTHS),
    size("body length at present", LENGTHS),
    size("body length full-grown", LENGTHS),
];
static BODY_HEIGHT: [FieldCard; 3] = [
    size("body height of the smallest animal", HEIGHTS),
    size("body height at present", HEIGHTS),
    size("body height full-grown", HEIGHTS),
];
static BODY_BREADTH: [FieldCard; 3] = [
    size("body breadth of the smallest animal", HEIGHTS),
    size("body breadth at present", HEIGHTS),
    size("body breadth full-grown", HEIGHTS),
];
static TOTAL_LENGTH: [FieldCard; 3] = [
    size("total length of the smallest animal", LENGTHS),
    size("total length at present", LENGTHS),
    size("total length full-grown", LENGTHS),
];
static MASS: FieldCard =
    FieldCard::quantity("mass of a full-grown animal", Dimension::MASS, Role::Given, (0.01, 300.0), 0.05);

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
    /// Shell breadth of turtles, breadth of the body of others.
    pub body_breadth: Sizes,
    /// Snout to tip of the tail; for turtles it may be left out.
    pub total_length: Sizes,
    /// Mass of one full-grown animal.
    pub mass: Number<Mass>,
    /// Whether eggs are removed, so that no hatchlings are ever kept here.
    pub eggs_removed: Flag,
    /// What the group is fed, kind by kind.
    pub feeds: List<Feed>,
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
            body_length: r.object("body-length", "body length", |r| Sizes::read(r, &BODY_LENGTH)),
            body_height: r.object("body-height", "body height", |r| Sizes::read(r, &BODY_HEIGHT)),
            body_breadth: r.object("body-breadth", "body breadth", |r| Sizes::read(r, &BODY_BREADTH)),
            total_length: r.object("total-length", "total length", |r| Sizes::read(r, &TOTAL_LENGTH)),
            mass: r.number("mass", &MASS),
            eggs_removed: r.flag("eggs-removed", "eggs removed", Role::Promise),
            feeds: r.list("feeds", "feed", Feed::read),
        }
    }
}

impl Sizes {
    fn read<R: Reader>(r: &mut R, cards: &'static [FieldCard; 3]) -> Self {
        Sizes {
            smallest: r.number("smallest", &cards[0]),
            now: r.number("now", &cards[1]),
            grown: r.number("grown", &cards[2]),
        }
    }
}
