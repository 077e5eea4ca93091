//! Subjects in the words of the trade: `pool main · European pond turtles, full-grown` for `pool:main+group:pond-turtles`.

use haulout_model::animal::Group;
use haulout_model::{About, Design, Subject};
use haulout_register::Register;
use haulout_sheet::{Book, LineId, Made, Roots};

/// The times of life that cards and register values name, as a reader is told of them.
const SIZES: &[(&str, &str)] =
    &[("smallest", "the smallest"), ("at present", "at present"), ("full-grown", "full-grown")];

/// The times of life that what was judged rests on.
pub(crate) fn sizes(book: &Book<'_>, lines: &[LineId]) -> Vec<&'static str> {
    let what: Vec<&str> = Roots::of(book, lines).0.into_iter().filter_map(|line| what(book, line)).collect();
    let named = |word: &str| what.iter().any(|what| what.contains(word));
    SIZES.iter().filter(|(word, _)| named(word)).map(|(_, told)| *told).collect()
}

fn what(book: &Book<'_>, line: LineId) -> Option<&'static str> {
    match book.record(line).made {
        Made::Stated { card, .. } => card.map(|card| card.what),
        Made::Register(value, _) => Some(value.what),
        _ => None,
    }
}

/// A subject told; with none, the kind of subject there is none of.
pub(crate) fn named(
    (design, register): (&Design, &Register),
    about: About,
    subject: Option<Subject>,
    sizes: &[&str],
) -> String {
    let Some(subject) = subject else {
        return format!("no {}", about.name().replace("item", "electrical item").replace('-', " with "));
    };
    let key = subject.key(design);
    let parts: Vec<&str> = key.split('+').collect();
    match (about, parts.as_slice()) {
        (About::Whole, _) => "the whole design".to_owned(),
        (About::PoolPair, [first, second]) => format!("pools {} and {}", id(first), id(second)),
        _ => parts.iter().map(|part| one((design, register), part, sizes)).collect::<Vec<_>>().join(" · "),
    }
}

/// The id in a key of one thing: `main` of `pool:main`.
fn id(key: &str) -> &str {
    key.split_once(':').map_or(key, |(_, id)| id)
}

fn one((design, register): (&Design, &Register), key: &str, sizes: &[&str]) -> String {
    let Some((kind, id)) = key.split_once(':') else { return key.to_owned() };
    match kind {
        "group" => match design.animals.items().iter().find(|group| group.id == id) {
            Some(group) => animals((design, register), group, sizes),
            None => format!("group {id}"),
        },
        "item" => format!("electrical item {id}"),
        "basking" => format!("basking site {id}"),
        "position" => format!("viewing position {id}"),
        "stocking" => format!("stocking step {id}"),
        "panel" => format!("viewing panel {id}"),
        "reference" => format!("the name at {id}"),
        "outline" => format!("outline of {id}"),
        "part" => format!("the numbers of {id}"),
        _ => format!("{kind} {id}"),
    }
}

/// The group by its species and the size that was judged; by its id too where two groups are of one species.
fn animals((design, register): (&Design, &Register), group: &Group, sizes: &[&str]) -> String {
    let species = |group: &Group| group.species.words().map(str::to_owned);
    let alike = design.animals.items().iter().filter(|other| species(other) == species(group)).count();
    let known = group.species.words().and_then(|name| register.find(name));
    let name = match (known, group.species.words()) {
        (Some(species), _) => plural(species.common),
        (None, Some(latin)) => latin.to_owned(),
        (None, None) => group.id.clone(),
    };
    let which = if alike > 1 { format!(" ({})", group.id) } else { String::new() };
    let size = match sizes {
        [] => String::new(),
        sizes => format!(", {}", sizes.join(" and ")),
    };
    format!("{name}{which}{size}")
}

/// The plural of a common name of the register.
fn plural(name: &str) -> String {
    let es = ["s", "x", "ch", "sh"].iter().any(|end| name.ends_with(end));
    format!("{name}{}", if es { "es" } else { "s" })
}

#[cfg(test)]
mod tests {
    use haulout_document::{Limits, read};
    use haulout_model::{About, Design, Subject};

    use super::{named, plural};

    fn design(animals: &str) -> Design {
        let text = format!(
            "{{ \"edition\": 0, \"hall\": {{ \"spaces\": [{{ \"id\": \"bay\" }}] }}, \"animals\": [{animals}], \"pools\": [{{ \"id\": \"main\", \"space\": \"bay\" }}] }}"
        );
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the text is sound JSON");
        haulout_model::read(&tree).0
    }

    fn told(design: &Design, at: usize, sizes: &[&str]) -> String {
        let subject = About::PoolGroup.walk(design).subjects[at];
        named((design, &haulout_register::Register::default()), About::PoolGroup, Some(subject), sizes)
    }

    #[test]
    fn animals_are_named_by_their_species_and_size() {
        let one = design(r#"{ "id": "a", "species": "emys-orbicularis", "spaces": ["bay"] }"#);
        assert_eq!(told(&one, 0, &["full-grown"]), "pool main · European pond turtles, full-grown");
        assert_eq!(
            named(
                (&one, &haulout_register::Register::default()),
                About::Pool,
                Some(Subject::nth(About::Pool, 0)),
                &[]
            ),
            "pool main"
        );
        assert_eq!(
            named((&one, &haulout_register::Register::default()), About::Circuit, None, &[]),
            "no circuit"
        );
    }

    #[test]
    fn two_groups_of_one_species_are_told_apart_and_a_strange_one_keeps_its_name() {
        let two = design(
            r#"{ "id": "a", "species": "Emys orbicularis", "spaces": ["bay"] },
               { "id": "b", "species": "Emys orbicularis", "spaces": ["bay"] },
               { "id": "c", "species": "Draco volans", "spaces": ["bay"] }, { "id": "d", "spaces": ["bay"] }"#,
        );
        assert_eq!(told(&two, 1, &[]), "pool main · European pond turtles (b)");
        assert_eq!(told(&two, 2, &["the smallest"]), "pool main · Draco volans, the smallest");
        assert_eq!(told(&two, 3, &[]), "pool main · d");
        assert_eq!(plural("Chinese softshell"), "Chinese softshells");
    }
}
