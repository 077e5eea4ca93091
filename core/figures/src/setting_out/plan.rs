//! What lies outside what it should lie in, and what lies over what it should lie beside.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Outline;
use haulout_model::{About, Link, ShapeField, State, Subject};
use haulout_quantity::si::Area;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use crate::pool::pool;

type Drawn = Arc<Outline>;

const fn construction(
    name: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result: "A",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "outlines that do not cross themselves",
    }
}

static OUTSIDE: Formula<(Drawn, Drawn), Area> = Formula {
    card: &construction(
        "area outside",
        "area of the inner outline less what both have in common",
        &["inner", "outer"],
    ),
    run: |(inner, outer)| Ok(Area::from_si((inner.area() - inner.overlap_area(&outer)).max(0.0))),
};

static IN_COMMON: Formula<(Drawn, Drawn), Area> = Formula {
    card: &construction("area in common", "area that both outlines cover", &["one", "other"]),
    run: |(one, other)| Ok(Area::from_si(one.overlap_area(&other).max(0.0))),
};

const fn card(id: &'static str, title: &'static str, about: About) -> FigureCard {
    FigureCard {
        id,
        title,
        about,
        axes: &[],
        unit: "m2",
        us_unit: "ft2",
        resolution: Some("curves flattened to 5 mm"),
    }
}

fn outside(sheet: Sheet<'_>, inner: &ShapeField, outer: Known<Line<Drawn>>) -> Known<Line<Area>> {
    sheet.construct(&OUTSIDE, (crate::outline(sheet, inner), outer).all()?)
}

/// Area of a space outside the hall.
pub static SPACE_OUTSIDE: Figure<Line<Area>> = Figure {
    card: &card("space-outside-the-hall", "area of the space outside the hall", About::Space),
    work: |sheet, at| {
        let hall = &sheet.design().hall;
        outside(sheet, &hall.spaces.items()[at.index()].outline, crate::outline(sheet, &hall.outline))
    },
};

/// Area of a pool outside the space it names, or outside the hall where it names none.
pub static POOL_OUTSIDE: Figure<Line<Area>> = Figure {
    card: &card("pool-outside-its-space", "area of the pool outside its space", About::Pool),
    work: |sheet, at| outside(sheet, &pool(sheet, at).outline, space_or_hall(sheet, &pool(sheet, at).space)),
};

/// Area of a zone outside its pool.
pub static ZONE_OUTSIDE: Figure<Line<Area>> = Figure {
    card: &card("zone-outside-its-pool", "area of the zone outside its pool", About::Zone),
    work: |sheet, at| {
        let (own, zone) = zone(sheet, at);
        outside(sheet, &zone.outline, crate::outline(sheet, &pool(sheet, own).outline))
    },
};

/// Area that two pools have in common.
pub static POOLS_OVERLAP: Figure<Line<Area>> = Figure {
    card: &card("pools-overlap", "area that two pools have in common", About::PoolPair),
    work: |sheet, at| {
        let pools = sheet.design().pools.items();
        let (one, other) = (&pools[at.index()].outline, &pools[at.second()].outline);
        sheet.construct(&IN_COMMON, (crate::outline(sheet, one), crate::outline(sheet, other)).all()?)
    },
};

/// The zone of a subject, with the subject of its pool.
pub(crate) fn zone(sheet: Sheet<'_>, at: Subject) -> (Subject, &haulout_model::pool::Zone) {
    let (own, zone) =
        sheet.design().zone(at.index()).expect("a subject about a zone stands for one of the zones");
    (Subject::nth(About::Pool, own), zone)
}

fn space_or_hall(sheet: Sheet<'_>, link: &Link) -> Known<Line<Drawn>> {
    let hall = &sheet.design().hall;
    if let Some(reference) = link.given() {
        return match sheet.design().space_named(reference.name()) {
            Some(space) => crate::outline(sheet, &hall.spaces.items()[space].outline),
            None => {
                let what = format!("there is no space \"{}\"", reference.name());
                Err(Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin).into())
            }
        };
    }
    match hall.outline.state() {
        State::Given(_) => crate::outline(sheet, &hall.outline),
        // Either would do.
        _ => Err(haulout_sheet::Gaps(vec![Gap::from(link.missing()), Gap::from(hall.outline.missing())])),
    }
}
