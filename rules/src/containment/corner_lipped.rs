//! Inside corners, where an animal braces against two walls, have a lip or more height.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::corner::INNER_CORNER;
use haulout_figures::barrier::habit::HELD_BY_HEIGHT;
use haulout_figures::barrier::height::{EFFECTIVE_HEIGHT, OPEN_TOP, OVERHANG, asked_height, spare_height};
use haulout_figures::group::BODY_LENGTH;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

use super::heights::ASKED;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("corner-braced"),
        title: words("An inside corner lets animals brace themselves up"),
        chapter: words("containment"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::BarrierGroup,
        caution: Some(words(
            "Screening by practice. Dangerous animals are kept to the licence and the local code.",
        )),
        manual: Manual {
            asks: words(
                "A barrier with an inside corner has a lip there, or stands a shell length higher than it would have to.",
            ),
            why: words(
                "Between two walls a turtle braces its feet and walks up where a straight wall of the same height holds it.",
            ),
            judged: words(
                "The sharpest corner between walls joined within 10 mm, seen from inside the space, against a right angle and a little more; where it is sharper, either the stated lip or the effective height less the asked height counts. For animals held by height under an open top.",
            ),
            cure: words(
                "round or fill the corner, lay a plate across it, turn the top inward, or raise the walls beside it",
            ),
        },
    },
    limits: &[&BLUNT, &LIP],
    examples: EXAMPLES,
    judge,
};

static BLUNT: Limit = Limit {
    rule: "corner-braced",
    name: "corner",
    row: "",
    what: "corner in which an animal no longer braces",
    value: 1.919_862_177_193_762_5,
    unit: "deg",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: corners up to a right angle and a little more (110 degrees) are climbed",
};

static LIP: Limit = Limit {
    rule: "corner-braced",
    name: "lip",
    row: "",
    what: "inward lip at the top",
    value: 0.075,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: 75 to 100 mm inward for animals that climb; the lower end is asked for",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = Check::AllOf(vec![
        HELD_BY_HEIGHT.of(sheet, at).map(Check::holds),
        OPEN_TOP.of(sheet, at).map(Check::holds),
    ]);
    let blunt = INNER_CORNER.of(sheet, at).map(|corner| Check::at_least(corner, sheet.limit(&BLUNT)));
    let lip = OVERHANG.of(sheet, at).map(|lip| Check::at_least(lip, sheet.limit(&LIP)));
    Ok(Check::only_if(Ok(applies), Ok(Check::AnyOf(vec![lip, blunt, higher(sheet, at)]))))
}

fn higher(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (have, asked, length) =
        (EFFECTIVE_HEIGHT.of(sheet, at), asked_height(sheet, at, &ASKED), BODY_LENGTH.of(sheet, at)).all()?;
    Ok(Check::at_least(spare_height(sheet, have, asked)?, length))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("right angles with a lip of 100 mm"),
        design: words(include_str!("examples/corner_lipped_met.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("right angles, no lip, 0.12 m of spare height for a shell of 0.24 m"),
        design: words(include_str!("examples/corner_lipped_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/line"),
    },
    Example {
        shows: words("the edge: 0.24 m of spare height, as long as the shell"),
        design: words(include_str!("examples/corner_lipped_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/top"),
    },
    Example {
        shows: words("neither lip nor rock stated"),
        design: words(include_str!("examples/corner_lipped_gap.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("no lip, and no corner sharper than 112 degrees"),
        design: words(include_str!("examples/corner_lipped_blunt.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/line"),
    },
    Example {
        shows: words("no lip, and corners of 108 degrees"),
        design: words(include_str!("examples/corner_lipped_not_blunt.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/line"),
    },
    Example {
        shows: words("right angles with a lip of just 75 mm"),
        design: words(include_str!("examples/corner_lipped_lip_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/overhang"),
    },
    Example {
        shows: words("right angles with a lip of 73 mm"),
        design: words(include_str!("examples/corner_lipped_lip_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/overhang"),
    },
];
