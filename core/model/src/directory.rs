//! What has a name in the file, and every name that points to something: noted by the reader at its one door for
//! names, so that a new key of the document cannot be forgotten here.

use std::collections::{HashMap, HashSet};
use std::sync::Arc;

use haulout_document::{Kind, Node, Tree};

use crate::compound::Reference;
use crate::design::Design;
use crate::field::{Missing, MissingKind, Origin, Seat, Standing, State};
use crate::index::{Index, Names};
use crate::ledger::Ledger;
use crate::reader::names;
use crate::standing_in::{Places, ancestors};
use crate::stated::{Part, Stated, parts};

mod pointed;

/// What the reader notes on its way: names with the family of kinds they are sought in, and stated numbers.
#[derive(Debug, Clone, Default)]
pub(crate) struct Noted {
    pub(crate) references: Vec<(Reference, Option<&'static str>)>,
    pub(crate) numbers: Vec<Stated>,
    pub(crate) undecided: Vec<Missing>,
}

/// Something that has a name: an item of a list by its id, or a kind.
#[derive(Debug, Clone)]
pub struct Entry {
    seat: Seat,
    name: String,
    list: String,
    pub(crate) key: String,
}

impl Entry {
    /// Its id, or the name of the kind.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The key of the list it stands in, or the family of the kind.
    pub fn list(&self) -> &str {
        &self.list
    }

    /// The name as a line: its place is where the name stands.
    pub fn on<L: Ledger>(&self, ledger: L) -> L::Line<Arc<String>> {
        word(ledger, self.seat.origin, &self.name)
    }
}

/// What a name may lead to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Leads {
    /// The id of an item in one of these lists.
    Lists(&'static [&'static str]),
    /// The id of something that has an outline.
    Outline,
    /// A level such as `main.water`.
    Level,
    /// A kind of this family.
    Kind(&'static str),
    /// Any id.
    Anything,
}

/// What the names under a key lead to; any id where the key is not listed.
const LEADS: &[(&str, Leads)] = &[
    ("space", Leads::Lists(&["spaces"])),
    ("spaces", Leads::Lists(&["spaces"])),
    ("pool", Leads::Lists(&["pools"])),
    ("pools", Leads::Lists(&["pools"])),
    ("zones", Leads::Lists(&["zones", "pools"])),
    ("groups", Leads::Lists(&["animals"])),
    ("barrier", Leads::Lists(&["barriers"])),
    ("partner", Leads::Lists(&["intakes"])),
    ("let-into", Leads::Lists(&["guards", "barriers"])),
    ("serves", Leads::Lists(&["pools", "filters"])),
    ("from", Leads::Lists(&["pools", "filters"])),
    ("to", Leads::Lists(&["pools", "filters", "returns"])),
    ("into", Leads::Lists(&["pools", "filters", "streams"])),
    ("circuit", Leads::Lists(&["circuits"])),
    ("run", Leads::Lists(&["runs"])),
    ("after", Leads::Lists(&["runs"])),
    ("return", Leads::Lists(&["returns"])),
    ("filter", Leads::Lists(&["filters"])),
    ("pre-treatment", Leads::Lists(&["filters", "devices"])),
    ("collected-by", Leads::Lists(&["intakes", "pools", "overflows"])),
    ("group", Leads::Lists(&["animals"])),
    ("item", Leads::Lists(&["items"])),
    ("lamps", Leads::Lists(&["items"])),
    ("of", Leads::Outline),
    ("above", Leads::Level),
    ("below", Leads::Level),
];

/// Keys inside a field that say how, not what: the field is the one above them.
const WITHIN_A_FIELD: &[&str] = &["of", "above", "below", "inset", "copy", "join", "less", "value"];

/// A name that points to something, with the thing and the field it stands in.
#[derive(Debug, Clone)]
pub struct Pointing {
    /// The name.
    pub reference: Reference,
    /// What it may lead to.
    pub leads: Leads,
    /// The id of what states it, or the member of the top level where nothing around it has one.
    pub owner: String,
    /// The key it stands under.
    pub field: String,
    /// `main.space:turtle-side`: whose, which field, and the name, so that a corrected name is another subject.
    pub(crate) key: String,
}

impl Pointing {
    /// The name as a line.
    pub fn on<L: Ledger>(&self, ledger: L) -> L::Line<Arc<String>> {
        word(ledger, self.reference.seat().origin, self.reference.name())
    }
}

fn word<L: Ledger>(ledger: L, origin: Origin, name: &str) -> L::Line<Arc<String>> {
    ledger.thing(origin, origin.node + 1, Standing::Settled, |_| name.to_owned())
}

/// The names of a file.
#[derive(Debug, Clone, Default)]
pub struct Directory {
    /// Everything with an id, in the order of the file.
    pub ids: Vec<Entry>,
    /// Every kind, in the order of the file.
    pub kinds: Vec<Entry>,
    /// Every name that points to something, in the order of the file; one that a list repeats stands once. What the
    /// design is held to is not among them: those are ids of the table of authorities.
    pub references: Vec<Pointing>,
    /// The parts that state numbers.
    pub parts: Vec<Part>,
    /// The ids of what has an outline drawn, `hall` first.
    pub outlines: Vec<String>,
    /// What is to be decided and may yet hold things or names.
    pub awaited: Vec<Awaited>,
    pub(crate) index: Index,
    /// The ids and kinds by name.
    ids_by_name: Names,
    kinds_by_name: Names,
}

/// Something to be decided that may yet hold things or names.
#[derive(Debug, Clone)]
pub struct Awaited {
    /// Where it stands.
    pub missing: Missing,
    /// The list, where it is one of things rather than of names.
    list: Option<&'static str>,
}

impl Directory {
    pub(crate) fn of(tree: &Tree, noted: Noted, design: &Design, places: &Places<'_>) -> Self {
        let ids = ids(tree, places);
        let kinds = kinds(tree);
        Directory {
            index: Index::of(design),
            ids_by_name: Names::of(ids.iter().map(Entry::name)),
            kinds_by_name: Names::of(kinds.iter().map(Entry::name)),
            kinds,
            references: references(tree, noted.references, places),
            parts: parts(places, noted.numbers, noted.undecided),
            awaited: awaited(tree),
            outlines: outlines(design, &ids),
            ids,
        }
    }
}

impl Directory {
    /// Everything with an id, by the id.
    pub fn with_id<'d>(&'d self, id: &str) -> impl Iterator<Item = &'d Entry> {
        let found = self.ids_by_name.all(id, |at| self.ids[at].name.as_str());
        found.map(|at| &self.ids[at])
    }

    /// Every kind of a name, one a family at most.
    fn kinds_named<'d>(&'d self, name: &str) -> impl Iterator<Item = &'d Entry> {
        let found = self.kinds_by_name.all(name, |at| self.kinds[at].name.as_str());
        found.map(|at| &self.kinds[at])
    }
}

/// The names of what has an outline drawn; of two things with one name the one [`Design::outline`] would find counts.
fn outlines(design: &Design, ids: &[Entry]) -> Vec<String> {
    let mut by_name = HashMap::new();
    for (name, outline) in design.outlines() {
        by_name.entry(name).or_insert(outline);
    }
    let drawn = |name: &&str| by_name.get(name).is_some_and(|o| matches!(o.state(), State::Given(_)));
    let named = std::iter::once("hall").chain(ids.iter().map(Entry::name));
    named.filter(drawn).map(str::to_owned).collect()
}

fn ids(tree: &Tree, places: &Places<'_>) -> Vec<Entry> {
    let id = |node: &Node| {
        let name = tree.string(*node)?;
        let list = tree.parent(*node).and_then(|item| tree.parent(item)).and_then(|list| tree.key(list))?;
        let seat = Seat { origin: Origin::at(node.0), what: "id" };
        let (name, list) = (name.into_owned(), list.into_owned());
        let names = if places.is_own(*node) { Vec::new() } else { names(tree, *node, name) };
        Some(names.into_iter().map(move |name| Entry { seat, key: name.clone(), name, list: list.clone() }))
    };
    places.ids.iter().filter_map(id).flatten().collect()
}

/// Keys under which names stand or may come to stand, with the words for them.
const AWAITED: &[(&str, &str)] = &[
    ("kinds", "kinds"),
    ("spaces", "spaces"),
    ("animals", "animals"),
    ("pools", "pools"),
    ("circuits", "water circuits"),
    ("runs", "pipe runs"),
    ("pump", "pump"),
    ("kind", "kind"),
    ("space", "space"),
    ("basking", "basking sites"),
    ("features", "features"),
    ("barriers", "barriers"),
    ("doors", "doors"),
    ("panels", "viewing panels"),
    ("items", "electrical items"),
    ("positions", "viewing positions"),
    ("streams", "streams and falls"),
    ("filters", "filters"),
    ("heaters", "heaters"),
    ("returns", "returns"),
    ("intakes", "intakes"),
    ("devices", "devices in line"),
];

fn awaited(tree: &Tree) -> Vec<Awaited> {
    let of = |node: Node| {
        if !tree.says(node, "to be decided") {
            return None;
        }
        let key = tree.key(node)?;
        let (key, what) = *AWAITED.iter().find(|(k, _)| *k == key)?;
        let holder = tree.parent(node)?;
        let things = holder == tree.root() || tree.key(holder).as_deref() == Some("hall");
        let missing = Missing { origin: Origin::at(node.0), kind: MissingKind::Undecided, what };
        Some(Awaited { missing, list: things.then_some(key) })
    };
    (0..tree.size() as u32).map(Node).filter_map(of).collect()
}

fn kinds(tree: &Tree) -> Vec<Entry> {
    let Some(kinds) = tree.member(tree.root(), "kinds") else { return Vec::new() };
    let families = tree.children(kinds).filter(|n| tree.kind(*n) == Kind::Object);
    let of_family = |family: Node| {
        let list = tree.key(family).unwrap_or_default().into_owned();
        let entry = move |node: Node| {
            let seat = Seat { origin: Origin::at(node.0), what: "kind" };
            let name = tree.key(node)?.into_owned();
            let key = format!("{list}.{name}");
            (tree.kind(node) == Kind::Object).then(|| Entry { seat, name, list: list.clone(), key })
        };
        tree.children(family).filter_map(entry).collect::<Vec<_>>()
    };
    families.flat_map(of_family).collect()
}

fn references(
    tree: &Tree,
    noted: Vec<(Reference, Option<&'static str>)>,
    places: &Places<'_>,
) -> Vec<Pointing> {
    let mut known = HashSet::with_capacity(noted.len());
    let mut found: Vec<Pointing> = Vec::with_capacity(noted.len());
    for (reference, family) in noted {
        let node = Node(reference.seat().origin.node);
        if ancestors(tree, node).any(|n| tree.is_called(n, "held-to")) {
            continue;
        }
        let key = ancestors(tree, node).find_map(|n| tree.key(n)).unwrap_or_default();
        let by_key = || LEADS.iter().find(|(k, _)| *k == key).map_or(Leads::Anything, |(_, leads)| *leads);
        let leads = family.map_or_else(by_key, Leads::Kind);
        let (owner, field) = (places.innermost(node), field(tree, node));
        let key = format!("{owner}.{field}:{}", reference.name());
        if known.insert(key.clone()) {
            found.push(Pointing { reference, leads, owner, field, key });
        }
    }
    found.sort_by_key(|p| p.reference.seat().origin.node);
    found
}

fn field(tree: &Tree, node: Node) -> String {
    let keys = ancestors(tree, node).filter_map(|n| tree.key(n));
    let mut told = keys.filter(|k| !WITHIN_A_FIELD.contains(&&**k));
    told.next().unwrap_or_default().into_owned()
}

/// The names a level may have; which of them something has is asked of the design.
const LEVELS: &[&str] = &[
    "low",
    "water",
    "pumps-off",
    "overflow",
    "liner-top",
    "rim",
    "bed",
    "floor",
    "top",
    "bund",
    "lip",
    "notch",
    "wall-top",
    "air-break",
    "level",
    "foot",
];

#[cfg(test)]
mod tests {
    use haulout_document::{Limits, read};

    use crate::{About, Described, describe};

    fn references(members: &[Described], found: &mut Vec<&'static str>) {
        for member in members {
            if member.form == "reference" || member.form == "references" {
                found.push(member.key);
            }
            references(&member.members, found);
        }
    }

    #[test]
    fn it_is_settled_what_every_name_of_the_document_leads_to() {
        let mut keys = Vec::new();
        references(&describe(), &mut keys);
        assert!(keys.len() > 10, "{keys:?}");
        for key in keys {
            let authority = ["welfare", "electrical", "guards"].contains(&key);
            let known = super::LEADS.iter().any(|(k, _)| *k == key);
            assert!(known || authority, "nothing says what \"{key}\" leads to");
        }
    }

    #[test]
    fn keys_are_made_of_names() {
        let text = r#"{ "edition": 0, "kinds": { "pumps": { "large": { "bore": "1 m" } } },
            "hall": { "outline": { "circle": { "centre": [0, 0], "radius": "5 m" } }, "clear-height": "3 m" },
            "pools": [
                { "id": "main", "space": "side", "depth": "1 m",
                  "zones": [ { "id": "deep", "outline": { "inset": { "of": "main", "by": "1 m" } } } ] },
                { "id": "basin", "levels": { "water": { "above": "main.water", "by": "1 m" } } } ] }"#;
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("it is read");
        let (design, problems) = crate::read(&tree);
        assert!(problems.is_empty(), "{problems:?}");
        let keys = |about: About| -> Vec<String> {
            about.walk(&design).subjects.into_iter().map(|s| s.key(&design)).collect()
        };
        assert_eq!(
            keys(About::Reference),
            ["reference:main.space:side", "reference:deep.outline:main", "reference:basin.water:main.water"]
        );
        assert_eq!(keys(About::Outline), ["outline:hall", "outline:deep"]);
        assert_eq!(keys(About::Kind), ["kind:pumps.large"]);
        assert_eq!(keys(About::Zone), ["zone:deep"]);
        assert_eq!(keys(About::Part), ["part:hall", "part:main", "part:basin"]);
        assert_eq!(keys(About::PoolPair), ["pool:main+pool:basin"]);
    }
}
