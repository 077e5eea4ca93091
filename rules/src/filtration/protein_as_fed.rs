//! The protein of a feed lies where feeds of its kind have it, as fed.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::load::{PROTEIN, band_of_kind};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("protein-as-fed"),
        title: words("The protein does not fit the kind of feed"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Feed,
        caution: None,
        manual: Manual {
            asks: words("The protein of a feed lies where feeds of its kind have it, as fed."),
            why: words(
                "Labels state protein of dry matter for some foods and as fed for others: a slip is three to four times, and every figure of nitrogen follows it.",
            ),
            judged: words(
                "The stated share against the band of its kind: dry pellets; gel, fish, prey, meat and insects; greens and fruit.",
            ),
            cure: words("state the protein of the food as it is weighed out"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1], &LIMITS[2], &LIMITS[3], &LIMITS[4], &LIMITS[5]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 6] = [
    Limit {
        rule: "protein-as-fed",
        name: "low",
        row: "dry",
        what: "least protein as fed of dry food",
        value: 0.25,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "feed labels and composition tables: dry 25 to 55 %, moist 8 to 30 %, greens and fruit up to 6 %",
    },
    Limit {
        rule: "protein-as-fed",
        name: "high",
        row: "dry",
        what: "most protein as fed of dry food",
        value: 0.55,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "feed labels and composition tables: dry 25 to 55 %, moist 8 to 30 %, greens and fruit up to 6 %",
    },
    Limit {
        rule: "protein-as-fed",
        name: "low",
        row: "moist",
        what: "least protein as fed of moist food of animal origin",
        value: 0.08,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "feed labels and composition tables: dry 25 to 55 %, moist 8 to 30 %, greens and fruit up to 6 %",
    },
    Limit {
        rule: "protein-as-fed",
        name: "high",
        row: "moist",
        what: "most protein as fed of moist food of animal origin",
        value: 0.3,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "feed labels and composition tables: dry 25 to 55 %, moist 8 to 30 %, greens and fruit up to 6 %",
    },
    Limit {
        rule: "protein-as-fed",
        name: "low",
        row: "plant",
        what: "least protein as fed of greens and fruit",
        value: 0.002,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "feed labels and composition tables: dry 25 to 55 %, moist 8 to 30 %, greens and fruit up to 6 %",
    },
    Limit {
        rule: "protein-as-fed",
        name: "high",
        row: "plant",
        what: "most protein as fed of greens and fruit",
        value: 0.06,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "feed labels and composition tables: dry 25 to 55 %, moist 8 to 30 %, greens and fruit up to 6 %",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (low, high) = band_of_kind(sheet, at, &LIMITS)?;
    Ok(Check::within(PROTEIN.of(sheet, at)?, low, high))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("pellets of 38 %"),
        design: words(include_str!("examples/protein_met.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("whole fish of 65 %, which is its dry matter"),
        design: words(include_str!("examples/protein_dry_matter.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("the protein is not stated"),
        design: words(include_str!("examples/protein_gap.json")),
        subject: words("feed:food"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("the kind of feed is not stated"),
        design: words(include_str!("examples/protein_no_kind.json")),
        subject: words("feed:food"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/feeds/0/kind"),
    },
    Example {
        shows: words("dry pellet, the low edge"),
        design: words(include_str!("examples/protein_dry_low_edge.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("dry pellet, just beyond the low edge"),
        design: words(include_str!("examples/protein_dry_low_just_short.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("dry pellet, the high edge"),
        design: words(include_str!("examples/protein_dry_high_edge.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("dry pellet, just beyond the high edge"),
        design: words(include_str!("examples/protein_dry_high_just_short.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("whole fish, the low edge"),
        design: words(include_str!("examples/protein_moist_low_edge.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("whole fish, just beyond the low edge"),
        design: words(include_str!("examples/protein_moist_low_just_short.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("whole fish, the high edge"),
        design: words(include_str!("examples/protein_moist_high_edge.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("whole fish, just beyond the high edge"),
        design: words(include_str!("examples/protein_moist_high_just_short.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("greens, the low edge"),
        design: words(include_str!("examples/protein_plant_low_edge.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("greens, just beyond the low edge"),
        design: words(include_str!("examples/protein_plant_low_just_short.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("greens, the high edge"),
        design: words(include_str!("examples/protein_plant_high_edge.json")),
        subject: words("feed:food"),
        expected: Expected::Met,
        place: words("/animals/0/feeds/0/protein"),
    },
    Example {
        shows: words("greens, just beyond the high edge"),
        design: words(include_str!("examples/protein_plant_high_just_short.json")),
        subject: words("feed:food"),
        expected: Expected::Short,
        place: words("/animals/0/feeds/0/protein"),
    },
];
