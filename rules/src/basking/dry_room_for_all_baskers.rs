//! The sites a group uses have dry area for all baskers that have to share them, at the highest water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::habit::ANY_BASK;
use haulout_figures::basking::room::{
    AREA_NEEDED_HERE, AREA_NEEDED_SHARED, DRY_AREA_HERE, DRY_AREA_SHARED, asked_area,
};
use haulout_figures::basking::sites_of;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::si::Area;
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Figure, GapKind, Known, Limit, Line, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("dry-room-for-all-baskers"),
        title: words("The baskers cannot all lie dry at once"),
        chapter: words("basking"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Group,
        caution: None,
        manual: Manual {
            asks: words(
                "The sites a group uses have dry area for all baskers that have to share them, at the highest water.",
            ),
            why: words(
                "The animals that wait their turn are the weakest, and they wait in the water: wet for days means shell rot, lung trouble and death. Law asks that all can be out at once in Québec (C-61.1, r. 5.1, s. 108) and Sweden.",
            ),
            judged: words(
                "Turtle: 1.5 times shell length times breadth. Crocodilians and lizards: total length by four tenths of it; snakes: a loose coil. Every group that has no site beyond these counts in full, and so does the whole company where groups share from site to site. A site the highest water reaches counts nothing; what is listed as none falls short.",
            ),
            cure: words("another site, a larger one, a higher one, or fewer animals"),
        },
    },
    limits: &[&SHARE],
    examples: EXAMPLES,
    judge,
};

static SHARE: Limit = Limit {
    rule: "dry-room-for-all-baskers",
    name: "share",
    row: "",
    what: "dry area in areas that all baskers need",
    value: 1.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice; all out of the water at once is also asked by Québec, C-61.1, r. 5.1, s. 108 (musk, mud, snapping and pig-nosed turtles excepted)",
};

fn room(
    sheet: Sheet<'_>,
    at: Subject,
    dry: &'static Figure<Line<Area>>,
    need: &'static Figure<Line<Area>>,
) -> Known<Check> {
    let (have, need) = (dry.of(sheet, at), need.of(sheet, at)).all()?;
    Ok(Check::at_least(have, asked_area(sheet, &SHARE, need)?))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = ANY_BASK.of(sheet, at);
    let enough = || {
        Ok(Check::AllOf(vec![
            room(sheet, at, &DRY_AREA_HERE, &AREA_NEEDED_HERE),
            room(sheet, at, &DRY_AREA_SHARED, &AREA_NEEDED_SHARED),
        ]))
    };
    let there = sites_of(sheet, at).and(applies.clone());
    let any = Ok(Check::stands(there, GapKind::SaidNone));
    Ok(Check::only_if(applies.map(Check::holds), Ok(Check::AllOf(vec![any, enough()]))))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("four sites of 0.20 m2 for four sliders of 0.045 m2"),
        design: words(include_str!("examples/dry_room_for_all_baskers_met.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/basking/2/outline"),
    },
    Example {
        shows: words("one site of 0.15 m2"),
        design: words(include_str!("examples/dry_room_for_all_baskers_short.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/outline"),
    },
    Example {
        shows: words("the edge: 0.18 m2 exactly"),
        design: words(include_str!("examples/dry_room_for_all_baskers_edge.json")),
        subject: words("group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-breadth/grown"),
    },
    Example {
        shows: words("breadth of the shell not stated"),
        design: words(include_str!("examples/dry_room_for_all_baskers_gap.json")),
        subject: words("group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/animals/0/body-breadth/grown"),
    },
    Example {
        shows: words("no site at all"),
        design: words(include_str!("examples/dry_room_for_all_baskers_none.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking"),
    },
    Example {
        shows: words("sites not stated"),
        design: words(include_str!("examples/dry_room_for_all_baskers_missing.json")),
        subject: words("group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/basking"),
    },
    Example {
        shows: words("a site the overflow level reaches is not dry"),
        design: words(include_str!("examples/dry_room_for_all_baskers_wet.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/level"),
    },
    Example {
        shows: words("musk turtles seldom leave the water"),
        design: words(include_str!("examples/dry_room_for_all_baskers_musk.json")),
        subject: words("group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("no animals"),
        design: words(include_str!("examples/dry_room_for_all_baskers_nobody.json")),
        subject: words("group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/sexes"),
    },
    Example {
        shows: words("two groups on one site add up"),
        design: words(include_str!("examples/dry_room_for_all_baskers_two_groups.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/animals/1/sexes"),
    },
    Example {
        shows: words("2 % less than they need"),
        design: words(include_str!("examples/dry_room_for_all_baskers_just_short.json")),
        subject: words("group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/outline"),
    },
];
