//! What a group is fed.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::field::{Choice, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{MassRate, Ratio};

static FEED_KIND: ChoiceCard = ChoiceCard {
    what: "kind of feed",
    role: Role::Decision,
    options: &["dry pellet", "gel", "whole fish", "whole prey", "meat", "insects", "greens", "fruit"],
    default: None,
};
static FEED_MASS: FieldCard = FieldCard::quantity(
    "mass of feed as fed",
    Dimension::MASS_FLOW,
    Role::Decision,
    (1.15740740741e-09, 0.000578703703704),
    1.15740740741e-08,
);
static FEED_PROTEIN: FieldCard =
    FieldCard::plain("share of protein as fed", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);
static FEED_PEAK: FieldCard = FieldCard::plain("largest day over the mean", Role::Decision, (1.0, 10.0), 0.1);
static FEED_IN_WATER: FieldCard =
    FieldCard::plain("share fed in the water", Role::Decision, (0.0, 1.0), 0.01).form(Form::Share);
static FEED_LEFT: FieldCard =
    FieldCard::plain("share left uneaten", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);

/// What a group is fed of one kind.
#[derive(Debug, Clone)]
pub struct Feed {
    /// Its id.
    pub id: String,
    /// What it is; the protein of dry and of moist food differs three to four times.
    pub kind: Choice,
    /// For the whole group, as it is weighed out, averaged over the week.
    pub mass: Number<MassRate>,
    /// Of the mass as fed, not of its dry matter.
    pub protein: Number<Ratio>,
    /// How many times the mean is fed on the largest day.
    pub peak: Number<Ratio>,
    /// How much of it is given in or over the water.
    pub in_water: Number<Ratio>,
    /// How much of it is not eaten and has to be taken out.
    pub left: Number<Ratio>,
}

impl Feed {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Feed {
            id: r.id(),
            kind: r.choice("kind", &FEED_KIND),
            mass: r.number("mass", &FEED_MASS),
            protein: r.number("protein", &FEED_PROTEIN),
            peak: r.number("peak", &FEED_PEAK),
            in_water: r.number("in-water", &FEED_IN_WATER),
            left: r.number("left", &FEED_LEFT),
        }
    }
}
