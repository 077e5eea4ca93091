//! The job `register`: what the program knows of species, and the authorities.

use haulout_register::{AUTHORITIES, SPECIES, find, nearest};
use haulout_report::{register_json, register_list, species_page};

use crate::args::Form;
use crate::run::{Outcome, layout, printed};

/// The whole register, or one species.
pub(crate) fn register(name: Option<&str>, form: Form) -> Outcome {
    let Some(name) = name else {
        return Outcome::of(match form {
            Form::Json => printed(&register_json(&SPECIES.iter().collect::<Vec<_>>(), AUTHORITIES)),
            Form::Terminal => register_list(layout().width),
        });
    };
    let Some(species) = find(name) else {
        return Outcome::impossible(unknown(name));
    };
    Outcome::of(match form {
        Form::Json => printed(&register_json(&[species], &[])),
        Form::Terminal => species_page(species, layout().width),
    })
}

/// What to say of a species the register does not know.
pub(crate) fn unknown(name: &str) -> String {
    format!(
        "the register knows no species \"{name}\"; the nearest is \"{}\", and haulout register lists all {}",
        nearest(name),
        SPECIES.len()
    )
}
