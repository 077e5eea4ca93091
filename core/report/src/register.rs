//! The register told: species with every value, its unit, basis and source, and the table of authorities.

use haulout_quantity::{Dimension, print, unit};
use haulout_register::{AUTHORITIES, Authority, SPECIES, Species, TRAITS, Value};
use serde_json::{Value as Json, json};

use crate::numbers::rounded;
use crate::wrap::{row, wrap};

const INDENT: usize = 14;

/// The kinds of body, in the order the register counts them.
const BODIES: &[&str] = &["turtle", "lizard", "snake", "crocodilian"];

/// The register: species with the number of values known of each, then the authorities.
pub fn register_list(width: usize) -> String {
    let mut out = "SPECIES\n".to_owned();
    for species in SPECIES {
        let known = values(species).len();
        let text = format!("{}, {} · {known} values", species.common, species.latin);
        out.push_str(&row(&format!("  {}", species.key), &text, 34, width));
    }
    out.push_str("\nAUTHORITIES\n");
    for authority in AUTHORITIES {
        let text = format!("{}, {}, for {}", authority.title, authority.edition, authority.matter.name());
        out.push_str(&row(&format!("  {}", authority.id), &text, INDENT, width));
        out.push_str(&row("", &authority_scope(authority), INDENT, width));
    }
    out
}

fn authority_scope(authority: &Authority) -> String {
    format!("made for: {}", authority.scope)
}

/// One species, value by value.
pub fn species_page(species: &'static Species, width: usize) -> String {
    let heading = format!("{}, {} ({})", species.common, species.latin, species.key);
    let mut out = format!("{}\n\n", wrap(&heading, width).join("\n"));
    for (name, value) in values(species) {
        let text = format!("{} · {}", said(name, value), value.what);
        out.push_str(&row(name, &text, INDENT, width));
        out.push_str(&row("", &format!("{}: {}", value.basis.name(), value.source), INDENT, width));
    }
    let missing: Vec<&str> = TRAITS.iter().filter(|t| (t.of)(species).is_none()).map(|t| t.name).collect();
    if !missing.is_empty() {
        out.push_str(&row("not known", &missing.join(", "), INDENT, width));
    }
    out
}

/// The values that are known of a species, by the names scripts use.
fn values(species: &'static Species) -> Vec<(&'static str, &'static Value)> {
    TRAITS.iter().filter_map(|t| Some((t.name, (t.of)(species)?))).collect()
}

/// A value as a person says it.
fn said(name: &str, value: &Value) -> String {
    match name {
        "body" => BODIES.get(value.value as usize).copied().unwrap_or("another").to_owned(),
        "climbs" | "jumps" | "digs" | "hazardous" => if value.value > 0.5 { "yes" } else { "no" }.to_owned(),
        _ => unit(value.unit).map_or_else(String::new, |unit| print(value.value, unit, 3)),
    }
}

/// The JSON of `register`.
pub fn register_json(species: &[&'static Species], authorities: &[Authority]) -> Json {
    let authority = |a: &Authority| json!({ "id": a.id, "matter": a.matter.name(), "title": a.title, "edition": a.edition, "year": a.year, "scope": a.scope });
    json!({
        "species": species.iter().map(|s| one(s)).collect::<Vec<_>>(),
        "authorities": authorities.iter().map(authority).collect::<Vec<_>>(),
    })
}

fn one(species: &'static Species) -> Json {
    let value = |(name, value): (&str, &Value)| {
        let plain = value.dimension == Dimension::NUMBER;
        let number = unit(value.unit).filter(|_| !plain).map_or(value.value, |unit| unit.of_si(value.value));
        json!({
            "name": name, "what": value.what, "value": rounded(number), "unit": value.unit,
            "said": said(name, value), "basis": value.basis.name(), "source": value.source,
        })
    };
    json!({
        "key": species.key,
        "latin": species.latin,
        "common": species.common,
        "values": values(species).into_iter().map(value).collect::<Vec<_>>(),
    })
}

#[cfg(test)]
mod tests {
    use haulout_register::find;

    use super::{register_json, register_list, species_page};

    /// 28.2 cm: ReptTraits (Oskyrko et al. 2024), as the register cites it; its water is not known.
    #[test]
    fn a_species_is_told_with_every_source_and_with_what_is_not_known() {
        let species = find("Chelodina longicollis").expect("it is in the register");
        let page = species_page(species, 80);
        assert!(
            page.starts_with("eastern long-necked turtle, Chelodina longicollis (chelodina-longicollis)\n")
        );
        assert!(page.contains("body-length   28.2 cm · carapace length, full-grown"), "{page}");
        assert!(page.contains("reported: Oskyrko et al. 2024"), "{page}");
        assert!(page.contains("body          turtle · kind of body"), "{page}");
        assert!(page.contains("not known     water-low, water-high"), "{page}");
        let json = register_json(&[species], &[]);
        assert_eq!(json["species"][0]["values"][0]["value"], 28.2);
        assert_eq!(json["species"][0]["values"][0]["unit"], "cm");
    }

    #[test]
    fn the_list_keeps_to_its_width() {
        assert!(register_list(80).lines().all(|line| line.chars().count() <= 80));
    }
}
