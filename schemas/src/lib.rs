//! The published schemas, as texts: of the documents people write, and of what the program prints for other programs.

/// The design document, edition 0 (JSON Schema, draft 2020-12).
pub const DESIGN: &str = include_str!("../design.json");
/// The same without what only people read, such as titles and hints: it lets the same documents through and is read in a quarter of
/// the time.
pub const DESIGN_IN_SHORT: &str = include_str!(concat!(env!("OUT_DIR"), "/design.json"));
/// The output of `review --as json`.
pub const REVIEW: &str = include_str!("../review.json");
/// The output of `sheet --as json`.
pub const SHEET: &str = include_str!("../sheet.json");
/// The output of `rulebook --as json`.
pub const RULEBOOK: &str = include_str!("../rulebook.json");
/// The output of `register --as json`.
pub const REGISTER: &str = include_str!("../register.json");
/// The output of `commissioning --as json`.
pub const COMMISSIONING: &str = include_str!("../commissioning.json");
/// The card of a house annex.
pub const ANNEX: &str = include_str!("../annex.json");
/// A specification for `review`.
pub const SPECIFICATION: &str = include_str!("../specification.json");
/// What a rehearsal design of an annex must give.
pub const EXPECTED: &str = include_str!("../expected.json");
/// The output of `rehearse --as json`.
pub const REHEARSAL: &str = include_str!("../rehearsal.json");

/// All of them by name.
pub const ALL: &[(&str, &str)] = &[
    ("design", DESIGN),
    ("review", REVIEW),
    ("sheet", SHEET),
    ("rulebook", RULEBOOK),
    ("register", REGISTER),
    ("commissioning", COMMISSIONING),
    ("annex", ANNEX),
    ("specification", SPECIFICATION),
    ("expected", EXPECTED),
    ("rehearsal", REHEARSAL),
];

/// The text of a schema by its name.
pub fn by_name(name: &str) -> Option<&'static str> {
    ALL.iter().find(|(known, _)| *known == name).map(|(_, text)| *text)
}
