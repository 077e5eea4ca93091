//! Answers about a new design: read as typed, refused with a sentence, never filled in.

use haulout_quantity::{Dimension, Parts, System, print, read, unit};
use haulout_register::{AUTHORITIES, Authority, find};

use crate::args::StageWord;
use crate::register::unknown;

/// What is known of a new design; what is not stays empty.
#[derive(Debug, Default)]
pub(crate) struct Answers {
    pub(crate) title: Option<String>,
    pub(crate) hall: Option<Hall>,
    pub(crate) groups: Vec<Group>,
    pub(crate) depth: Option<String>,
    pub(crate) stage: Option<StageWord>,
    pub(crate) held_to: Vec<&'static Authority>,
    pub(crate) units: Option<Units>,
}

/// The systems of units a drawing may be in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum Units {
    /// Metres.
    Metric,
    /// Feet.
    Us,
}

/// Length and breadth of a hall in metres, and the system they were given in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Hall {
    pub(crate) sides: (f64, f64),
    pub(crate) system: System,
}

/// A species and its count by sex, where that is known.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Group {
    pub(crate) species: String,
    pub(crate) sexes: Option<String>,
}

/// `8 m x 5 m`.
pub(crate) fn hall(text: &str) -> Result<Hall, String> {
    let said = || format!("\"{text}\" is no size of a hall; write length and breadth, such as \"8 m x 5 m\"");
    let (length, breadth) = text.split_once([',', 'x', '×']).ok_or_else(said)?;
    let (length, breadth) = (measure(length)?, measure(breadth)?);
    Ok(Hall { sides: (length.0, breadth.0), system: length.1 })
}

/// A length over zero, in metres, and the system it was typed in.
fn measure(text: &str) -> Result<(f64, System), String> {
    let text = text.trim();
    let stated = read(text, Dimension::LENGTH).map_err(|slip| format!("\"{text}\": {}", slip.message))?;
    match stated.parts {
        Parts::One(metres) if metres > 0.0 => Ok((metres, stated.unit.system)),
        Parts::One(_) => Err(format!("\"{text}\": a length over zero is wanted")),
        _ => Err(format!("\"{text}\": one length is wanted, without a range")),
    }
}

/// A depth, kept as it was typed.
pub(crate) fn depth(text: &str) -> Result<String, String> {
    measure(text).map(|_| text.trim().to_owned())
}

/// A species of the register; the key is what is written down.
pub(crate) fn species(text: &str) -> Result<String, String> {
    find(text.trim()).map(|species| species.key.to_owned()).ok_or_else(|| unknown(text.trim()))
}

/// Males, females, not sexed: `1.3.0`; a bare number counts animals that are not sexed.
pub(crate) fn sexes(text: &str) -> Result<String, String> {
    let text = text.trim();
    let parts: Vec<&str> = text.split('.').collect();
    let counts =
        parts.iter().all(|part| (1..=3).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit()));
    match parts.len() {
        1 if counts => Ok(format!("0.0.{text}")),
        3 if counts => Ok(text.to_owned()),
        _ => {
            Err(format!("\"{text}\" is no count; write males.females.unsexed, such as 1.3.0, or one number"))
        }
    }
}

/// An authority by its id.
pub(crate) fn authority(text: &str) -> Result<&'static Authority, String> {
    AUTHORITIES.iter().find(|a| a.id == text.trim()).ok_or_else(|| {
        let ids: Vec<&str> = AUTHORITIES.iter().map(|a| a.id).collect();
        format!("there is no authority \"{}\"; there are {}", text.trim(), ids.join(", "))
    })
}

/// The design as text, one object a line; only what was answered stands in it.
pub(crate) fn design(answers: &Answers, schema: &str) -> String {
    let mut members = vec![member("$schema", &quoted(schema)), "\"edition\": 0".to_owned()];
    members.push(member("project", &project(answers)));
    members.push(member("drawing", &format!("{{ \"unit\": {} }}", quoted(drawing_unit(answers)))));
    members.push(member("hall", &hall_of(answers)));
    let groups: Vec<String> =
        answers.groups.iter().enumerate().map(|(at, g)| group(answers, at, g)).collect();
    if !groups.is_empty() {
        members.push(member("animals", &list(&groups)));
    }
    let depth = answers.depth.as_ref().map(|depth| member("depth", &quoted(depth)));
    let pool = [
        Some("\"id\": \"main\", \"space\": \"enclosure\", \"outline\": \"to be decided\"".to_owned()),
        depth,
    ];
    members.push(member("pools", &list(&[format!("{{ {} }}", joined(pool))])));
    format!("{{\n  {}\n}}\n", members.join(",\n  "))
}

fn member(key: &str, value: &str) -> String {
    format!("{}: {value}", quoted(key))
}

fn quoted(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}

fn list(items: &[String]) -> String {
    format!("[\n    {}\n  ]", items.join(",\n    "))
}

fn joined(parts: impl IntoIterator<Item = Option<String>>) -> String {
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}

fn project(answers: &Answers) -> String {
    // The document wants these two; what is not known yet says so.
    let undecided = "to be decided";
    let title = Some(member("title", &quoted(answers.title.as_deref().unwrap_or(undecided))));
    let stage = answers.stage.map_or(undecided, |stage| stage.stage().name());
    let stage = Some(member("stage", &quoted(stage)));
    let mut matters: Vec<(&str, Vec<String>)> = Vec::new();
    for authority in &answers.held_to {
        let name = authority.matter.name();
        match matters.iter_mut().find(|(matter, _)| *matter == name) {
            Some((_, ids)) => ids.push(quoted(authority.id)),
            None => matters.push((name, vec![quoted(authority.id)])),
        }
    }
    let matters: Vec<String> =
        matters.iter().map(|(matter, ids)| member(matter, &format!("[{}]", ids.join(", ")))).collect();
    let held = (!matters.is_empty()).then(|| member("held-to", &format!("{{ {} }}", matters.join(", "))));
    format!("{{ {} }}", joined([title, stage, held]))
}

/// The unit of the drawing: as asked for, else as the hall was measured.
fn drawing_unit(answers: &Answers) -> &'static str {
    let measured = answers.hall.map(|hall| hall.system);
    match (answers.units, measured) {
        (Some(Units::Us), _) | (None, Some(System::Us)) => "ft",
        (Some(Units::Metric), _) | (None, _) => "m",
    }
}

fn hall_of(answers: &Answers) -> String {
    let space = "{ \"id\": \"enclosure\", \"for\": \"animals\", \"outline\": \"to be decided\" }";
    let outline = answers.hall.map(|hall| {
        let side = |metres: f64| coordinate(metres, drawing_unit(answers));
        let (x, y) = (side(hall.sides.0), side(hall.sides.1));
        format!("[[0, 0], [{x}, 0], [{x}, {y}], [0, {y}]]")
    });
    let outline = outline.unwrap_or_else(|| "\"to be decided\"".to_owned());
    format!("{{\n    \"outline\": {outline},\n    \"spaces\": [\n      {space}\n    ] }}")
}

/// A length in the drawing's unit, nine digits, no zeros behind.
fn coordinate(metres: f64, symbol: &str) -> String {
    let Some(unit) = unit(symbol) else { return metres.to_string() };
    let printed = print(metres, unit, 9);
    let number = printed.trim_end_matches(symbol).trim();
    if number.contains('.') {
        number.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        number.to_owned()
    }
}

fn group(answers: &Answers, at: usize, group: &Group) -> String {
    let before = answers.groups[..at].iter().filter(|other| other.species == group.species).count();
    let id = if before > 0 { format!("{}-{}", group.species, before + 1) } else { group.species.clone() };
    let sexes = group.sexes.clone().unwrap_or_else(|| "to be decided".to_owned());
    let parts = [
        member("id", &quoted(&id)),
        member("species", &quoted(&group.species)),
        member("sexes", &quoted(&sexes)),
        member("spaces", "[\"enclosure\"]"),
    ];
    format!("{{ {} }}", parts.join(", "))
}

#[cfg(test)]
mod tests {
    use super::{Answers, authority, coordinate, hall, sexes, species};

    #[test]
    fn answers_are_read_as_typed_or_refused_with_a_way_out() {
        assert_eq!(hall("8 m x 5 m").map(|hall| hall.sides), Ok((8.0, 5.0)));
        assert_eq!(hall("20 ft, 10 ft").map(|hall| hall.sides), Ok((6.096, 3.048)));
        assert!(hall("8 by 5").is_err_and(|why| why.contains("8 m x 5 m")));
        assert!(hall("8 m x 0 m").is_err_and(|why| why.contains("over zero")));
        assert_eq!(sexes("4").as_deref(), Ok("0.0.4"));
        assert!(sexes("1.3").is_err());
        assert!(species("Emys orbiculars").is_err_and(|why| why.contains("emys-orbicularis")));
        assert!(authority("eu").is_err_and(|why| why.contains("eu-2010-63")));
        assert_eq!((coordinate(6.096, "ft").as_str(), coordinate(8.0, "m").as_str()), ("20", "8"));
    }

    #[test]
    fn nothing_stands_in_the_design_that_nobody_answered() {
        let text = super::design(&Answers::default(), "x.json");
        for member in ["\"depth\":", "\"animals\":", "\"held-to\":", "\"levels\":"] {
            assert!(!text.contains(member), "{member} {text}");
        }
        assert_eq!(text.matches("to be decided").count(), 5);
    }
}
