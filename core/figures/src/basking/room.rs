//! Room to lie dry: what an animal takes up, what all baskers need at once, and what their sites have.

use haulout_calc::formula::Formula;
use haulout_model::{About, Subject};
use haulout_quantity::Basis::CommonPractice;
use haulout_quantity::Measure;
use haulout_quantity::si::{Area, Length, Ratio};
use haulout_register::{Build, Value};
use haulout_sheet::{All, Figure, FigureCard, Gaps, Known, Limit, Line, Many, Sheet};

use super::habit::{BASKERS, basks};
use super::site::DRY_AREA;
use super::{Company, closed, own_company, pick, whole_company};
use crate::barrier::habit::{TOTAL_LENGTH, body};
use crate::group::BODY_LENGTH;
use crate::species::group;
use crate::terms::NUMBERS;

const KEEPERS: &str = "keepers' practice: 1.5 shell lengths times breadths for a turtle; a total length by four tenths of it for crocodilians and lizards; no standard for it is known";

static SHELLS: Value = Value::number("shell areas of a lying turtle", 1.5, CommonPractice, KEEPERS);
static LONG: Value = Value::number("total lengths of a lying animal", 1.0, CommonPractice, KEEPERS);
static WIDE: Value =
    Value::number("breadth of a lying animal in total lengths", 0.4, CommonPractice, KEEPERS);
static COIL: Value = Value::number(
    "breadth of a loose coil in total lengths",
    0.25,
    CommonPractice,
    "keepers' practice: a snake lies in a loose coil about a quarter of its length across",
);

static SHELL_AREA: Formula<(Ratio, Length, Length, Ratio), Area> = Formula {
    card: &closed(
        "area of a lying turtle",
        "a",
        "k × L × B",
        &["k", "L", "B", "body"],
        "keepers' practice: shell length times breadth, and half as much again for limbs and for turning",
    ),
    run: |(shells, length, breadth, _body)| Ok(shells * length * breadth),
};

static LYING_AREA: Formula<(Ratio, Ratio, Length, Ratio), Area> = Formula {
    card: &closed(
        "area of a lying animal",
        "a",
        "k_l × L × k_b × L",
        &["k_l", "k_b", "L", "body"],
        "keepers' practice: shares of the total length",
    ),
    run: |(long, wide, length, _body)| Ok(long * length * wide * length),
};

static NEED: Formula<(Ratio, Area, Ratio), Area> = Formula {
    card: &closed(
        "area all baskers of a group need at once",
        "A_need",
        "n × a × basks",
        &["n", "a", "basks"],
        "all at once: animals that wait their turn are the weakest",
    ),
    run: |(number, area, basks)| Ok(number * area * basks),
};

static NO_NEED: Formula<(Ratio,), Area> = Formula {
    card: &pick("area animals that do not bask need", "A_need", "nothing", &["basks"], "definition"),
    run: |(_basks,)| Ok(Area::from_si(0.0)),
};

static AREAS: Many<Area, Area> =
    Many { card: &closed("sum of areas", "A", "+", &[], "arithmetic"), run: |a| Ok(a.iter().copied().sum()) };

static COUNTED: Many<Area, Ratio> = Many {
    card: &pick("sites that stay dry", "n_s", "how many have a dry area", &[], "definition"),
    run: |areas| Ok(Ratio::from_si(areas.iter().filter(|a| a.value > 0.0).count() as f64)),
};

static ASKED: Formula<(Ratio, Area), Area> = Formula {
    card: &closed("area asked", "A_ask", "k × A_need", &["k", "A_need"], "arithmetic"),
    run: |(share, area)| Ok(share * area),
};

static STATIONS: Formula<(Ratio, Ratio, Ratio), Ratio> = Formula {
    card: &pick(
        "sites asked",
        "n_ask",
        "one for each of the first n_1 animals, one more for every k beyond, rounded up",
        &["n", "n_1", "k"],
        "keepers' practice",
    ),
    run: |(animals, first, each)| {
        let beyond = (animals.value - first.value).max(0.0) / each.value.max(1.0);
        // A count that is whole but for rounding stays what it is.
        Ok(Ratio::from_si(animals.value.min(first.value) + (beyond - 1e-9).ceil()))
    },
};

const fn card(id: &'static str, title: &'static str, unit: [&'static str; 2]) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Group,
        axes: &[],
        unit: unit[0],
        us_unit: unit[1],
        resolution: None,
    }
}

const AREA: [&str; 2] = ["m2", "ft2"];

/// The area one full-grown animal takes up lying out.
pub static BODY_AREA: Figure<Line<Area>> = Figure {
    card: &card("body-area", "area of one lying animal", AREA),
    work: |sheet, at| {
        let (body, build) = body(sheet, at)?;
        let because = |gaps: Gaps| gaps.because(body.id());
        let of = |value| sheet.register(value, None);
        let by_length = |long, wide| {
            let length = TOTAL_LENGTH.of(sheet, at).map_err(because)?;
            sheet.work(&LYING_AREA, (of(long), of(wide), length, body))
        };
        match build {
            Build::Turtle => {
                let breadth = group(sheet, at).body_breadth.grown.on(sheet);
                let (length, breadth) = (BODY_LENGTH.of(sheet, at), breadth).all().map_err(because)?;
                sheet.work(&SHELL_AREA, (of(&SHELLS), length, breadth, body))
            }
            Build::Snake => by_length(&COIL, &COIL),
            Build::Lizard | Build::Crocodilian => by_length(&LONG, &WIDE),
        }
    },
};

/// The area all baskers of a group need at once; nothing for a species that seldom leaves the water.
pub static AREA_NEEDED: Figure<Line<Area>> = Figure {
    card: &card("basking-area-needed", "area its baskers need at once", AREA),
    work: |sheet, at| {
        let (habit, basks) = basks(sheet, at)?;
        if !basks {
            return sheet.work(&NO_NEED, (habit,));
        }
        let because = |gaps: Gaps| gaps.because(habit.id());
        let lines = (crate::group::ANIMALS.of(sheet, at), BODY_AREA.of(sheet, at)).all().map_err(because)?;
        sheet.work(&NEED, (lines.0, lines.1, habit))
    },
};

fn sum_of(
    sheet: Sheet<'_>,
    company: Known<Vec<Subject>>,
    of: &'static Figure<Line<Area>>,
) -> Known<Line<Area>> {
    let each = company?.into_iter().map(|s| of.of(sheet, s)).collect::<Vec<_>>();
    sheet.fold(&AREAS, &each.all()?)
}

/// Dry area of the sites a group uses.
pub static DRY_AREA_HERE: Figure<Line<Area>> = Figure {
    card: &card("dry-area-of-its-sites", "dry area of its sites", AREA),
    work: |sheet, at| sum_of(sheet, own_company(sheet, at).map(|c| c.sites), &DRY_AREA),
};

/// What it needs together with all groups that have no site beyond its own.
pub static AREA_NEEDED_HERE: Figure<Line<Area>> = Figure {
    card: &card("area-needed-on-its-sites", "area all baskers of its sites need at once", AREA),
    work: |sheet, at| sum_of(sheet, own_company(sheet, at).map(|c| c.groups), &AREA_NEEDED),
};

/// Dry area of all sites that are shared from group to group.
pub static DRY_AREA_SHARED: Figure<Line<Area>> = Figure {
    card: &card("dry-area-of-shared-sites", "dry area of all sites shared from group to group", AREA),
    work: |sheet, at| sum_of(sheet, whole_company(sheet, at).map(|c| c.sites), &DRY_AREA),
};

/// What all groups that share them need.
pub static AREA_NEEDED_SHARED: Figure<Line<Area>> = Figure {
    card: &card("area-needed-on-shared-sites", "area all baskers of the shared sites need at once", AREA),
    work: |sheet, at| sum_of(sheet, whole_company(sheet, at).map(|c| c.groups), &AREA_NEEDED),
};

/// The needed area times a limit.
///
/// # Errors
/// None of its own.
pub fn asked_area(sheet: Sheet<'_>, share: &'static Limit, needed: Line<Area>) -> Known<Line<Area>> {
    sheet.work(&ASKED, (sheet.limit(share), needed))
}

/// How many sites of a group stay dry at the highest water.
pub static DRY_SITES: Figure<Line<Ratio>> = Figure {
    card: &card("dry-sites", "sites that stay dry", ["", ""]),
    work: |sheet, at| {
        let Company { sites, .. } = own_company(sheet, at)?;
        let areas = sites.into_iter().map(|s| DRY_AREA.of(sheet, s)).collect::<Vec<_>>();
        sheet.fold(&COUNTED, &areas.all()?)
    },
};

/// How many animals bask on them, groups that have no other site included.
pub static BASKERS_HERE: Figure<Line<Ratio>> = Figure {
    card: &card("baskers-on-its-sites", "baskers on its sites", ["", ""]),
    work: |sheet, at| {
        let Company { groups, .. } = own_company(sheet, at)?;
        let each = groups.into_iter().map(|g| BASKERS.of(sheet, g)).collect::<Vec<_>>();
        sheet.fold(&NUMBERS, &each.all()?)
    },
};

/// How many sites so many baskers ask for: one each for the first of them, then one for every few.
///
/// # Errors
/// Gaps where the animals are not known.
pub fn asked_sites(
    sheet: Sheet<'_>,
    at: Subject,
    first: &'static Limit,
    each: &'static Limit,
) -> Known<Line<Ratio>> {
    let animals = BASKERS_HERE.of(sheet, at)?;
    sheet.work(&STATIONS, (animals, sheet.limit(first), sheet.limit(each)))
}
