//! An opening is too small to get into, or large enough to get out of.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::opening::allowed_opening;
use haulout_figures::group::{BODY_HEIGHT, BODY_LENGTH};
use haulout_figures::water::trap::{OPENING_HEIGHT, OPENING_LEAST, OPENING_WIDTH, leads_through, share_of};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("opening-is-no-trap"),
        title: words("An animal gets into an opening and not out again"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::OpeningGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "An opening is too small for the smallest animal, or the largest one can turn round in it, or it leads right through and lets the largest one pass.",
            ),
            why: words(
                "Turtles push into every gap, the tighter the better, and few of them go backwards. Under water that is the end; most are found behind void-formers, under stones and in skimmers.",
            ),
            judged: words(
                "The lesser of width and height against a share of the least body measure of the smallest animal ever kept; or width against a multiple of the full-grown length and height against a multiple of the full-grown height; or, where it leads through, width against the full-grown length and height as before.",
            ),
            cure: words("close it, or open it up; a mesh over the mouth; stones set in mortar"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1], &LIMITS[2]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 3] = [
    Limit {
        rule: "opening-is-no-trap",
        name: "share",
        row: "",
        what: "what of the least body is too small to get into",
        value: 0.8,
        unit: "",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers' practice: soft parts give way, so stay well under the body",
    },
    Limit {
        rule: "opening-is-no-trap",
        name: "turn",
        row: "",
        what: "width to turn round in, in body lengths",
        value: 1.25,
        unit: "",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "keepers' practice; the diagonal of a shell three quarters as wide as long is 1.25 of its length",
    },
    Limit {
        rule: "opening-is-no-trap",
        name: "height",
        row: "",
        what: "height to turn round in, in body heights",
        value: 1.2,
        unit: "",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "keepers' practice: a fifth over the back",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (length, height) = (BODY_LENGTH.of(sheet, at), BODY_HEIGHT.of(sheet, at));
    let tall = height.and_then(|h| {
        let asked = share_of(sheet, sheet.limit(&LIMITS[2]), h)?;
        Ok(Check::at_least(OPENING_HEIGHT.of(sheet, at)?, asked))
    });
    let small = allowed_opening(sheet, at, &LIMITS[0]);
    let small = (OPENING_LEAST.of(sheet, at), small).all().map(|(have, most)| Check::at_most(have, most));
    let (width, long) = (OPENING_WIDTH.of(sheet, at), length);
    let turn = (width.clone(), long.clone())
        .all()
        .and_then(|(w, l)| Ok(Check::at_least(w, share_of(sheet, sheet.limit(&LIMITS[1]), l)?)));
    let pass = (width, long).all().map(|(w, l)| Check::at_least(w, l));
    let through = leads_through(sheet, at).map(Check::holds);
    let turns = Ok(Check::AllOf(vec![turn, tall.clone()]));
    let passes = Ok(Check::AllOf(vec![through, pass, tall]));
    Ok(Check::AnyOf(vec![small, turns, passes]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a hollow of 0.40 by 0.20 m for 20 cm"),
        design: words(include_str!("examples/opening_is_no_trap_met.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/openings/0/size"),
    },
    Example {
        shows: words("a gap of 80 by 80 mm"),
        design: words(include_str!("examples/opening_is_no_trap_short.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/openings/0/size"),
    },
    Example {
        shows: words("the edge: 36 mm for a body of 45 mm"),
        design: words(include_str!("examples/opening_is_no_trap_edge.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/openings/0/size"),
    },
    Example {
        shows: words("37 mm"),
        design: words(include_str!("examples/opening_is_no_trap_just_short.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/openings/0/size"),
    },
    Example {
        shows: words("the edge: 250 mm by 108 mm"),
        design: words(include_str!("examples/opening_is_no_trap_turn_edge.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/openings/0/size"),
    },
    Example {
        shows: words("245 mm wide"),
        design: words(include_str!("examples/opening_is_no_trap_turn_short.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/openings/0/size"),
    },
    Example {
        shows: words("105 mm high"),
        design: words(include_str!("examples/opening_is_no_trap_height_short.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/openings/0/height"),
    },
    Example {
        shows: words("a tunnel 0.22 m wide"),
        design: words(include_str!("examples/opening_is_no_trap_through.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/openings/0/through"),
    },
    Example {
        shows: words("its height is not stated"),
        design: words(include_str!("examples/opening_is_no_trap_gap.json")),
        subject: words("opening:cave+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/openings/0/height"),
    },
];
