//! Volume of water that solids displace: rock outright, layers and modules by their bulk less their voids.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Outline;
use haulout_model::pool::{Pool, Solid};
use haulout_model::{About, Reference, State};
use haulout_quantity::si::{Area, Length, Ratio, Volume};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{
    All, Assembly, Entry, Figure, FigureCard, Gap, GapKind, Known, Line, LineId, Many, Sheet,
};

use super::pool;
use crate::terms::VOLUMES;

static AREA: Assembly<Area> = Assembly {
    card: &FormulaCard {
        name: "area of a zone that is not drawn over",
        result: "A",
        text: "area of the first outline under none of the others",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry: trapezia between the heights at which sides end or cross",
        range: "outlines that do not cross themselves",
    },
    run: |data| {
        let outlines: Vec<Arc<Outline>> = data.iter().map(Arc::take).collect();
        let [own, over @ ..] = outlines.as_slice() else {
            return Err(Refusal::new("there is no outline to take the area of"));
        };
        let area = own.area_beside(over.iter().map(Arc::as_ref));
        if area > NOTHING {
            Ok(Area::from_si(area))
        } else {
            Err(Refusal::new("nothing is left of the zone under what is drawn over it"))
        }
    },
};

/// What is less than this is covered, square metres.
const NOTHING: f64 = 1e-9;

static AREAS: Many<Area, Area> = Many {
    card: &closed("sum of areas", "A", "+", &[], "arithmetic"),
    run: |areas| Ok(areas.iter().copied().sum()),
};

static LAYER: Formula<(Area, Length), Volume> = Formula {
    card: &closed("bulk of a layer", "V_bulk", "A × t", &["A", "t"], "arithmetic"),
    run: |(area, thickness)| Ok(area * thickness),
};

static DISPLACED: Formula<(Volume, Ratio, u16), Volume> = Formula {
    card: &closed(
        "volume displaced",
        "V_d",
        "V_bulk × (1 - n)",
        &["V_bulk", "n", "kind"],
        "definition of void ratio",
    ),
    run: |(bulk, voids, _kind)| Ok(bulk * (Ratio::from_si(1.0) - voids)),
};

static SOLID_THROUGHOUT: Formula<(Volume, u16), Volume> = Formula {
    card: &closed(
        "volume displaced by something without voids",
        "V_d",
        "V_bulk",
        &["V_bulk", "kind"],
        "definition",
    ),
    run: |(bulk, _kind)| Ok(bulk),
};

/// The options of a solid's kind that are mostly open: gravel and void-formers.
const OPEN: [u16; 2] = [1, 2];

const fn closed(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    source: &'static str,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Closed,
        basis: Basis::Published,
        source,
        range: "any numbers",
    }
}

/// What the solids of a pool displace. A list of solids that is not stated is a gap: a pool is rarely bare.
pub static SOLIDS: Figure<Line<Volume>> = Figure {
    card: &FigureCard {
        id: "solids",
        title: "water displaced by solids",
        about: About::Pool,
        axes: &[],
        unit: "m3",
        us_unit: "gal(US)",
        resolution: None,
    },
    work: |sheet, at| {
        let pool = pool(sheet, at);
        match pool.solids.state() {
            State::None => sheet.fold(&VOLUMES, &[]),
            State::Given(solids) => {
                let each: Vec<Known<Line<Volume>>> =
                    solids.iter().map(|s| displaced(sheet, pool, s)).collect();
                sheet.fold(&VOLUMES, &each.all()?)
            }
            State::Absent | State::Undecided => Err(missing_list(pool)),
        }
    },
};

fn missing_list(pool: &Pool) -> haulout_sheet::Gaps {
    haulout_sheet::Gaps(pool.solids.missing().map(Gap::from).into_iter().collect())
}

fn displaced(sheet: Sheet<'_>, pool: &Pool, solid: &Solid) -> Known<Line<Volume>> {
    let bulk = if solid.volume.is_given() {
        solid.volume.on(sheet)
    } else {
        let (area, thickness) = (layer_area(sheet, pool, solid), solid.thickness.on(sheet)).all()?;
        sheet.work(&LAYER, (area, thickness))
    };
    // Rock has no voids unless the file says so; gravel and void-formers must say how open they are. The kind decides
    // which it is, so it is an argument of either line.
    let (bulk, kind) = (bulk, solid.kind.on(sheet)).all()?;
    if OPEN.contains(&sheet.option_of(kind)) || solid.voids.is_given() {
        let voids = solid.voids.on(sheet).map_err(|gaps| gaps.because(kind.id()))?;
        return sheet.work(&DISPLACED, (bulk, voids, kind.option()));
    }
    sheet.work(&SOLID_THROUGHOUT, (bulk, kind.option()))
}

/// The area of the zones a layer lies in, each less the zones drawn over it.
fn layer_area(sheet: Sheet<'_>, pool: &Pool, solid: &Solid) -> Known<Line<Area>> {
    if let Some(missing) = solid.zones.missing() {
        return Err(Gap::from(missing).into());
    }
    let areas: Vec<Known<Line<Area>>> =
        solid.zones.items().iter().map(|zone| own_area(sheet, pool, zone)).collect();
    sheet.fold(&AREAS, &areas.all()?)
}

fn own_area(sheet: Sheet<'_>, pool: &Pool, name: &Reference) -> Known<Line<Area>> {
    let zones = pool.zones.items();
    let (own, over) = match zones.iter().position(|z| z.id == name.name()) {
        Some(at) => (&zones[at].outline, &zones[at + 1..]),
        None if pool.id == name.name() => (&pool.outline, zones),
        None => {
            let what = format!("the pool has no zone \"{}\"", name.name());
            return Err(Gap::at(GapKind::LeadsNowhere, what, name.seat().origin).into());
        }
    };
    let over: Vec<Known<Line<Arc<Outline>>>> =
        over.iter().map(|z| crate::outline(sheet, &z.outline)).collect();
    let (own, over) = (crate::outline(sheet, own), over.all()).all()?;
    let lines: Vec<LineId> = std::iter::once(own).chain(over).map(Line::id).collect();
    sheet.assemble(&AREA, &lines)
}
