//! Figures about one site: its dry area, its height over the water, its way up, and how far the next one is.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{Outline, apart};
use haulout_model::{About, Level, State, Subject};
use haulout_quantity::si::{Area, Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_register::Build;
use haulout_sheet::{
    All, Assembly, Datum, Entry, Figure, FigureCard, Gap, GapKind, Known, Limit, Line, LineId, Many, Sheet,
};

use super::{beside, closed, floats, groups_of, pick, site, used_by};
use crate::barrier::habit::body;
use crate::group::BODY_LENGTH;
use crate::pool::pool;
use crate::terms::DIFFERENCE;

type Drawn = Arc<Outline>;

const fn drawn(name: &'static str, result: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "outlines that do not cross themselves",
    }
}

static AREA: Formula<(Drawn,), Area> = Formula {
    card: &FormulaCard { symbols: &["outline"], ..drawn("area of a site", "A", "area of outline") },
    run: |(outline,)| Ok(Area::from_si(outline.area())),
};

static DRY: Formula<(Area, Length), Area> = Formula {
    card: &pick(
        "dry area of a site",
        "A_dry",
        "A where h is above 0, otherwise nothing",
        &["A", "h"],
        "definition: what the highest water reaches is not dry",
    ),
    run: |(area, height)| Ok(if height.value > 0.0 { area } else { Area::from_si(0.0) }),
};

static NEAREST: Assembly<Length> = Assembly {
    card: &drawn(
        "distance to the nearest site",
        "d",
        "least distance edge to edge, nothing where sites overlap",
    ),
    run: |data: &[Datum]| {
        let outlines: Vec<Drawn> = data.iter().map(Entry::take).collect();
        let [own, others @ ..] = outlines.as_slice() else {
            return Err(Refusal::new("a distance needs two outlines"));
        };
        let least = others.iter().map(|o| apart(own, o)).fold(f64::INFINITY, f64::min);
        Ok(Length::from_si(least))
    },
};

pub(crate) static LONGEST: Many<Length, Length> = Many {
    card: &closed("longest", "L_max", "max", &[], "arithmetic"),
    run: |lengths| {
        let longer = |a: Length, b: Length| if b > a { b } else { a };
        lengths.iter().copied().reduce(longer).ok_or_else(|| Refusal::new("there is no length"))
    },
};

const fn card(id: &'static str, title: &'static str, unit: [&'static str; 2]) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Basking,
        axes: &[],
        unit: unit[0],
        us_unit: unit[1],
        resolution: None,
    }
}

/// A level of a pool, or its water level where that one is not stated; to be decided is open.
fn or_water(sheet: Sheet<'_>, level: &Level, at: Subject) -> Known<Line<Length>> {
    match level.state() {
        State::Given(_) => crate::level(sheet, level),
        State::Undecided => Err(Gap::from(level.missing()).into()),
        State::Absent | State::None => crate::level(sheet, &pool(sheet, at).levels.water),
    }
}

fn highest(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    or_water(sheet, &pool(sheet, at).levels.overflow, at)
}

fn lowest(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    or_water(sheet, &pool(sheet, at).levels.low, at)
}

/// The pool, or a gap of the kind *none* for a site away from water.
fn water_of(sheet: Sheet<'_>, at: Subject) -> Known<Subject> {
    beside(sheet, at)?.ok_or_else(|| {
        let what = format!("\"{}\" stands by no water", site(sheet, at).id);
        Gap::at(GapKind::SaidNone, what, site(sheet, at).pool.seat().origin).into()
    })
}

fn over(
    sheet: Sheet<'_>,
    at: Subject,
    water: fn(Sheet<'_>, Subject) -> Known<Line<Length>>,
) -> Known<Line<Length>> {
    if floats(sheet, at)? {
        return site(sheet, at).float.freeboard.on(sheet);
    }
    let water = water_of(sheet, at).and_then(|pool| water(sheet, pool));
    let lines = (crate::level(sheet, &site(sheet, at).level), water).all()?;
    sheet.work(&DIFFERENCE, lines)
}

/// Height over the highest water: the overflow, or the water level where no overflow is stated. A float rides on it.
pub static OVER_HIGH: Figure<Line<Length>> = Figure {
    card: &card("site-over-highest-water", "height over the highest water", ["mm", "in"]),
    work: |sheet, at| over(sheet, at, highest),
};

/// Height over the lowest running water.
pub static OVER_LOW: Figure<Line<Length>> = Figure {
    card: &card("site-over-lowest-water", "height over the lowest water", ["mm", "in"]),
    work: |sheet, at| over(sheet, at, lowest),
};

/// Area that stays dry at the highest water: all of the outline or nothing.
pub static DRY_AREA: Figure<Line<Area>> = Figure {
    card: &FigureCard {
        resolution: Some("curves flattened to 5 mm"),
        ..card("dry-area", "dry area of the site", ["m2", "ft2"])
    },
    work: |sheet, at| {
        let area = crate::outline(sheet, &site(sheet, at).outline)
            .and_then(|outline| sheet.construct(&AREA, (outline,)));
        if beside(sheet, at)?.is_none() && !floats(sheet, at)? {
            return area;
        }
        sheet.work(&DRY, (area, OVER_HIGH.of(sheet, at)).all()?)
    },
};

/// How far the foot of the way up lies under the lowest water; under the normal level for a float, whose way up rides
/// with it.
pub static FOOT_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("foot-under-lowest-water", "foot of the way up under the lowest water", ["mm", "in"]),
    work: |sheet, at| {
        let water = water_of(sheet, at).and_then(|pool_at| {
            if floats(sheet, at)? {
                crate::level(sheet, &pool(sheet, pool_at).levels.water)
            } else {
                lowest(sheet, pool_at)
            }
        });
        let lines = (water, crate::level(sheet, &site(sheet, at).access_foot)).all()?;
        sheet.work(&DIFFERENCE, lines)
    },
};

/// Slope of the way up, rise over run.
pub static ACCESS_SLOPE: Figure<Line<Ratio>> = Figure {
    card: &card("access-slope", "slope of the way up", ["%", "%"]),
    work: |sheet, at| site(sheet, at).access_slope.on(sheet),
};

/// The other sites that some group uses together with this one.
///
/// # Errors
/// Gaps where it is open who uses a site.
pub fn neighbours(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let mut found = Vec::new();
    for group in groups_of(sheet, at)? {
        found.extend(used_by(sheet, group)?.into_iter().filter(|s| *s != at));
    }
    found.sort_unstable();
    found.dedup();
    Ok(found)
}

/// Distance to the nearest site of the same animals, edge to edge.
pub static NEAREST_SITE: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        resolution: Some("curves flattened to 5 mm"),
        ..card("nearest-site", "distance to the nearest site", ["m", "ft"])
    },
    work: |sheet, at| {
        let others = neighbours(sheet, at)?;
        if others.is_empty() {
            let what = format!("\"{}\" is the only site of its animals", site(sheet, at).id);
            return Err(Gap::at(GapKind::SaidNone, what, site(sheet, at).outline.seat().origin).into());
        }
        let all = std::iter::once(at).chain(others);
        let outlines = all.map(|s| crate::outline(sheet, &site(sheet, s).outline).map(Line::id));
        let lines: Vec<LineId> = outlines.collect::<Vec<_>>().all()?;
        sheet.assemble(&NEAREST, &lines)
    },
};

/// Body length of the longest animal that uses the site.
pub static LONGEST_USER: Figure<Line<Length>> = Figure {
    card: &card("longest-user", "longest body on the site", ["cm", "in"]),
    work: |sheet, at| {
        let users = groups_of(sheet, at)?;
        let lengths = users.into_iter().map(|g| BODY_LENGTH.of(sheet, g)).collect::<Vec<_>>();
        sheet.fold(&LONGEST, &lengths.all()?)
    },
};

static BODIES: Formula<(Ratio, Length), Length> = Formula {
    card: &closed("so many body lengths", "d_ask", "k × L", &["k", "L"], "arithmetic"),
    run: |(times, length)| Ok(times * length),
};

/// So many body lengths.
///
/// # Errors
/// None of its own.
pub fn asked_length(sheet: Sheet<'_>, times: &'static Limit, body: Line<Length>) -> Known<Line<Length>> {
    sheet.work(&BODIES, (sheet.limit(times), body))
}

static FOR_BUILD: Formula<(Ratio, Ratio), Ratio> = Formula {
    card: &closed("greatest slope for the kind of body", "i_max", "i", &["i", "body"], "keepers' practice"),
    run: |(slope, _body)| Ok(slope),
};

/// One limit for turtles, another for all other builds, of the group of a basking-group.
///
/// # Errors
/// A gap where the kind of body is not known.
pub fn by_build(
    sheet: Sheet<'_>,
    at: Subject,
    turtles: &'static Limit,
    others: &'static Limit,
) -> Known<Line<Ratio>> {
    let group_at = at.part(About::Group).expect("a basking-group has a group");
    let (body, build) = body(sheet, group_at)?;
    let limit = if build == Build::Turtle { turtles } else { others };
    sheet.work(&FOR_BUILD, (sheet.limit(limit), body))
}

/// Options of the field "material" that take no claws.
const RESIN: u16 = 6;
const PLASTIC: u16 = 7;

static CLAWS: Formula<(u16,), bool> = Formula {
    card: &FormulaCard {
        basis: Basis::Published,
        ..pick(
            "surface that takes claws",
            "yes",
            "any material but resin and plastic",
            &["material"],
            "Commission Recommendation 2007/526/EC, 4.3.1: haul-outs take claws, as wood does; not epoxy or polyurethane",
        )
    },
    run: |(material,)| Ok(material != RESIN && material != PLASTIC),
};

/// The surface gives hold to claws.
pub static TAKES_CLAWS: Figure<Line<bool>> = Figure {
    card: &card("takes-claws", "takes claws", ["", ""]),
    work: |sheet, at| sheet.work(&CLAWS, (site(sheet, at).material.on(sheet)?.option(),)),
};
