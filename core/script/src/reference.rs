//! Every word a script has, for the reference page: how it is written, what it does, and an example that is run.

/// A word of a script.
#[derive(Debug, Clone, Copy)]
pub struct Word {
    /// Its name, or its sign.
    pub name: &'static str,
    /// How it is written.
    pub form: &'static str,
    /// What it does.
    pub does: &'static str,
    /// What the lists of a card hold in the example, as members of the card about a pool.
    pub lists: &'static str,
    /// The inside of the function `judge`.
    pub example: &'static str,
    /// The number that decides in the example, in SI: of a pool of 2 m by 3 m, 1.2 m deep at a temperature of 25 °C, with
    /// two groups of which the shells are 20 cm and 30 cm long. The register gives 26.4 cm for the first (ReptTraits).
    pub has: f64,
}

const DEEP: &str = r#""figures": ["greatest-depth"], "limits": ["low"]"#;
const BOTH: &str = r#""figures": ["greatest-depth"], "limits": ["low", "high"]"#;
const EACH: &str = r#""each": ["body-length"], "limits": ["low"]"#;
const COUNT: &str = r#""each": ["body-length"], "limits": ["one"]"#;
const SIEVE: &str = r#""each": ["body-length"], "limits": ["low", "one"]"#;

const fn word(
    name: &'static str,
    form: &'static str,
    does: &'static str,
    lists: &'static str,
    example: &'static str,
    has: f64,
) -> Word {
    Word { name, form, does, lists, example, has }
}

/// The words in the order of the reference page.
pub static REFERENCE: &[Word] = &[
    word(
        "figure",
        "it.figure(name)",
        "The figure about the subject, or about the part of it that the figure is about. The card lists it under \"figures\"; where it is missing the subject is not assessed and says what is missing.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\"), it.limit(\"low\"))",
        1.2,
    ),
    word(
        "each",
        "it.each(name)",
        "A list: the figure about each of the subjects that belong to this one, such as the groups of a pool. The card lists it under \"each\". A rule about \"whole\" has everything.",
        EACH,
        "at_least(least(it.each(\"body-length\")), it.limit(\"low\"))",
        0.2,
    ),
    word(
        "register",
        "it.register(name)",
        "The value the register has for the species of the subject's group. The card lists it under \"register\".",
        "\"about\": \"group\", \"register\": [\"body-length\"], \"limits\": [\"low\"]",
        "at_least(it.register(\"body-length\"), it.limit(\"low\"))",
        0.264,
    ),
    word(
        "limit",
        "it.limit(name)",
        "A limit of the card. This is the only way to a quantity of the house's own, so that it has a source, can be tightened and is printed.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\"), it.limit(\"low\"))",
        1.2,
    ),
    word(
        "formula",
        "it.formula(name, [values])",
        "A formula of the trade, on values of the dimensions it takes. Outside its range the branch is not assessed.",
        "\"figures\": [\"greatest-depth\"], \"limits\": [\"low\", \"one\"]",
        "at_least(it.formula(\"share of a length\", [it.limit(\"one\"), it.figure(\"greatest-depth\")]), it.limit(\"low\"))",
        1.2,
    ),
    word(
        "at_least",
        "at_least(have, limit)",
        "An answer: the first must be at least the second. The edge is met.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\"), it.limit(\"low\"))",
        1.2,
    ),
    word(
        "at_most",
        "at_most(have, limit)",
        "An answer: the first must be at most the second.",
        DEEP,
        "at_most(it.figure(\"greatest-depth\"), it.limit(\"low\"))",
        1.2,
    ),
    word(
        "within",
        "within(have, low, high)",
        "An answer: the first must lie between the other two.",
        BOTH,
        "within(it.figure(\"greatest-depth\"), it.limit(\"low\"), it.limit(\"high\"))",
        1.2,
    ),
    word(
        "all_of",
        "all_of([answers])",
        "An answer: every one is wanted. One that falls short silences what is missing for the others.",
        BOTH,
        "let d = it.figure(\"greatest-depth\");\nall_of([at_least(d, it.limit(\"low\")), at_most(d, it.limit(\"high\"))])",
        1.2,
    ),
    word(
        "any_of",
        "any_of([answers])",
        "An answer: one is enough. One that is met silences what is missing for the others.",
        BOTH,
        "let d = it.figure(\"greatest-depth\");\nany_of([at_least(d, it.limit(\"low\")), at_least(d, it.limit(\"high\"))])",
        1.2,
    ),
    word(
        "only_if",
        "only_if(applies, then)",
        "An answer: the second where the first is met; elsewhere the rule does not apply.",
        BOTH,
        "let d = it.figure(\"greatest-depth\");\nonly_if(at_least(d, it.limit(\"low\")), at_most(d, it.limit(\"high\")))",
        1.2,
    ),
    word(
        "+",
        "a + b",
        "The sum of two values of one dimension.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\") + it.limit(\"low\"), it.limit(\"low\"))",
        1.7,
    ),
    word(
        "-",
        "a - b",
        "The difference of two values of one dimension.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\") - it.limit(\"low\"), it.limit(\"low\"))",
        0.7,
    ),
    word(
        "*",
        "a * b",
        "The product of two values, or of a value and a plain number.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\") * 2, it.limit(\"low\"))",
        2.4,
    ),
    word(
        "/",
        "a / b",
        "The quotient of two values, or of a value and a plain number. Where the second is zero the branch is not assessed.",
        DEEP,
        "at_least(it.figure(\"greatest-depth\") / 2, it.limit(\"low\"))",
        0.6,
    ),
    word(
        "min",
        "min(a, b)",
        "The lesser of two values of one dimension.",
        DEEP,
        "at_least(min(it.figure(\"greatest-depth\"), it.limit(\"low\")), it.limit(\"low\"))",
        0.5,
    ),
    word(
        "max",
        "max(a, b)",
        "The greater of two values of one dimension.",
        DEEP,
        "at_least(max(it.figure(\"greatest-depth\"), it.limit(\"low\")), it.limit(\"low\"))",
        1.2,
    ),
    word(
        "total",
        "total(list)",
        "The sum of a list; of an empty one nothing.",
        EACH,
        "at_least(total(it.each(\"body-length\")), it.limit(\"low\"))",
        0.5,
    ),
    word(
        "count",
        "count(list)",
        "How many values a list holds.",
        COUNT,
        "at_least(count(it.each(\"body-length\")), it.limit(\"one\"))",
        2.0,
    ),
    word(
        "least",
        "least(list)",
        "The least of a list; of an empty one it is missing.",
        EACH,
        "at_most(least(it.each(\"body-length\")), it.limit(\"low\"))",
        0.2,
    ),
    word(
        "greatest",
        "greatest(list)",
        "The greatest of a list; of an empty one it is missing.",
        EACH,
        "at_most(greatest(it.each(\"body-length\")), it.limit(\"low\"))",
        0.3,
    ),
    word(
        "nearest",
        "nearest(list, value)",
        "The value of a list that is nearest to another.",
        EACH,
        "at_most(nearest(it.each(\"body-length\"), it.limit(\"low\")), it.limit(\"low\"))",
        0.3,
    ),
    word(
        "duplicates",
        "duplicates(list)",
        "How many values of a list are equal to one before them.",
        COUNT,
        "at_most(duplicates(it.each(\"body-length\")), it.limit(\"one\"))",
        0.0,
    ),
    word(
        "where_at_least",
        "where_at_least(list, limit)",
        "The list of those values that are at least a limit.",
        SIEVE,
        "at_least(count(where_at_least(it.each(\"body-length\"), it.limit(\"low\") / 2)), it.limit(\"one\"))",
        1.0,
    ),
    word(
        "where_at_most",
        "where_at_most(list, limit)",
        "The list of those values that are at most a limit. Both may narrow one list.",
        SIEVE,
        "at_least(count(where_at_most(it.each(\"body-length\"), it.limit(\"low\"))), it.limit(\"one\"))",
        2.0,
    ),
];
