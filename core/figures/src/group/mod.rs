//! Figures about an animal group.

pub(crate) mod over;

use haulout_model::animal::Sizes;
use haulout_model::{About, Number};
use haulout_quantity::si::{Length, Ratio};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet, Size};

use crate::species::group;
use crate::terms::NUMBERS;

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Group, axes, unit, us_unit, resolution: None }
}

fn in_case<'s>(sheet: Sheet<'_>, sizes: &'s Sizes) -> &'s Number<Length> {
    match sheet.case().size {
        Size::Grown => &sizes.grown,
        Size::Smallest => &sizes.smallest,
        Size::Now => &sizes.now,
    }
}

/// Carapace length of turtles, snout to vent of others; full-grown out of the register where it is not stated.
pub static BODY_LENGTH: Figure<Line<Length>> = Figure {
    card: &card("body-length", "body length", &[Axis::Size], "cm", "in"),
    work: |sheet, at| {
        let group = group(sheet, at);
        let stated = in_case(sheet, &group.body_length);
        if sheet.case().size == Size::Grown && !stated.is_given() {
            let of = |s: &'static haulout_register::Species| s.body_length.as_ref();
            let known: Known<Line<Length>> = crate::species_value(sheet, at, "full-grown body length", of);
            // Both the field and the register could have told.
            return known.map_err(|gaps| match stated.on(sheet) {
                Err(own) => own.and(gaps),
                Ok(_) => gaps,
            });
        }
        stated.on(sheet)
    },
};

/// Standing height of shell or body.
pub static BODY_HEIGHT: Figure<Line<Length>> = Figure {
    card: &card("body-height", "body height", &[Axis::Size], "cm", "in"),
    work: |sheet, at| in_case(sheet, &group(sheet, at).body_height).on(sheet),
};

/// How many animals.
pub static ANIMALS: Figure<Line<Ratio>> = Figure {
    card: &card("animals", "number of animals", &[], "", ""),
    work: |sheet, at| {
        let counts: Vec<Known<Line<Ratio>>> = group(sheet, at).sexes.iter().map(|n| n.on(sheet)).collect();
        sheet.fold(&NUMBERS, &counts.all()?)
    },
};
