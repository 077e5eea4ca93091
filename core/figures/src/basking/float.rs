//! Floating sites: what stands on them, and where their edge is when all of it crowds there.

use std::sync::Arc;

use haulout_calc::buoyancy::{Laden, edge_draught};
use haulout_calc::containment::SHARE_OF;
use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Outline;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Length, Mass, MassDensity, Ratio};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_register::Value;
use haulout_sheet::{
    All, Assembly, Datum, Entry, Figure, FigureCard, Known, Limit, Line, LineId, Many, Sheet,
};

use super::{closed, groups_of, site};
use crate::group::ANIMALS;
use crate::species::group;

/// Warm fresh water weighs 0.3 to 0.4 % less; the edge lies deeper by a fraction of a millimetre.
static WATER: Value = Value {
    what: "density of fresh water",
    value: 1000.0,
    unit: "kg/m3",
    dimension: Dimension::DENSITY,
    basis: Basis::CommonPractice,
    source: "rounded; 996 to 998 kg/m3 between 20 and 30 °C",
};

static HALF: Value = Value::number(
    "share of a breadth from the edge to the middle of an animal",
    0.5,
    Basis::CommonPractice,
    "an animal that lies along the edge has its middle half a breadth in",
);

static TOGETHER: Formula<(Ratio, Mass), Mass> = Formula {
    card: &closed("mass of a group", "m", "n × m_1", &["n", "m_1"], "arithmetic"),
    run: |(number, mass)| Ok(number * mass),
};

static MASSES: Many<Mass, Mass> = Many {
    card: &closed("sum of masses", "m", "+", &[], "arithmetic"),
    run: |m| Ok(m.iter().copied().sum()),
};

static NARROWEST: Many<Length, Length> = Many {
    card: &closed("narrowest", "b_min", "min", &[], "arithmetic"),
    run: |breadths| {
        let less = |a: Length, b: Length| if b < a { b } else { a };
        breadths.iter().copied().reduce(less).ok_or_else(|| Refusal::new("there is no breadth"))
    },
};

static TIMES: Formula<(Mass, Mass), Ratio> = Formula {
    card: &closed("load of a float against what it carries", "k", "m / m_c", &["m", "m_c"], "arithmetic"),
    run: |(load, carries)| Ok(load / carries),
};

static ASKED: Formula<(Ratio, Mass), Mass> = Formula {
    card: &closed("load a float must carry", "m_ask", "k × m", &["k", "m"], "exhibit practice"),
    run: |(times, load)| Ok(times * load),
};

/// Outline, freeboard, own mass, load, inset, density.
static EDGE: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "height of the loaded edge of a float over the water",
        result: "h",
        text: "freeboard + m_own / (rho × A) less the draught of the edge with the whole load there: W / rho × (1 / A + e × t / I) while the bottom is wet all over, the wet part alone beyond that",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Recalled,
        source: "waterplane stiffness after Rawson & Tupper, Basic Ship Theory, from memory; a bottom that lifts on one side as a footing without tension (q_max = 2 P / (3 L (B / 2 - e)))",
        range: "wall-sided floats whose deck is their waterplane",
    },
    run: |data: &[Datum]| {
        let [outline, freeboard, own, load, inset, density] = data else {
            return Err(Refusal::new("an edge needs outline, freeboard, two masses, an inset and a density"));
        };
        let outline = Arc::<Outline>::take(outline);
        let of = |d: &Datum| d.number().unwrap_or(f64::NAN);
        let (own, density) = (of(own), of(density));
        let raft = Laden { outline: &outline, own, load: of(load), inset: of(inset), density };
        let bottom = own / (density * outline.area());
        Ok(Length::from_si(of(freeboard) + bottom - edge_draught(&raft)?))
    },
};

const fn card(id: &'static str, title: &'static str, about: About, unit: [&'static str; 2]) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: unit[0], us_unit: unit[1], resolution: None }
}

const KILOGRAMS: [&str; 2] = ["kg", "lb"];

/// Mass of all animals of a group, full-grown; the greatest on record where none is stated.
pub static GROUP_MASS: Figure<Line<Mass>> = Figure {
    card: &card("group-mass", "mass of all animals", About::Group, KILOGRAMS),
    work: |sheet, at| {
        let stated = &group(sheet, at).mass;
        let mass = if stated.is_given() {
            stated.on(sheet)
        } else {
            let known: Known<Line<Mass>> =
                crate::species_value(sheet, at, "body mass", |s| s.bask().and_then(|b| b.mass.as_ref()));
            // Both the field and the register could have told.
            known.map_err(|gaps| match stated.on(sheet) {
                Err(own) => own.and(gaps),
                Ok(_) => gaps,
            })
        };
        sheet.work(&TOGETHER, (ANIMALS.of(sheet, at), mass).all()?)
    },
};

/// Mass of all animals that use a site, whether they are baskers or not: what floats is climbed.
pub static SITE_LOAD: Figure<Line<Mass>> = Figure {
    card: &card("site-load", "mass of all animals of the site", About::Basking, KILOGRAMS),
    work: |sheet, at| {
        let users = groups_of(sheet, at)?;
        let masses = users.into_iter().map(|g| GROUP_MASS.of(sheet, g)).collect::<Vec<_>>();
        sheet.fold(&MASSES, &masses.all()?)
    },
};

/// What the float is made to carry.
pub static CARRIES: Figure<Line<Mass>> = Figure {
    card: &card("float-carries", "load the float is made for", About::Basking, KILOGRAMS),
    work: |sheet, at| site(sheet, at).float.carries.on(sheet),
};

/// How many times over the animals weigh what the float carries.
pub static LOAD_RATIO: Figure<Line<Ratio>> = Figure {
    card: &card("float-load-ratio", "load of the float against what it carries", About::Basking, ["", ""]),
    work: |sheet, at| sheet.work(&TIMES, (SITE_LOAD.of(sheet, at), CARRIES.of(sheet, at)).all()?),
};

/// The load of a site times a limit.
///
/// # Errors
/// Gaps where the animals are not known.
pub fn asked_load(sheet: Sheet<'_>, at: Subject, times: &'static Limit) -> Known<Line<Mass>> {
    let load = SITE_LOAD.of(sheet, at)?;
    sheet.work(&ASKED, (sheet.limit(times), load))
}

fn inset(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let users = groups_of(sheet, at)?;
    let breadths = users.into_iter().map(|g| group(sheet, g).body_breadth.grown.on(sheet));
    let narrowest = sheet.fold(&NARROWEST, &breadths.collect::<Vec<_>>().all()?)?;
    sheet.work(&SHARE_OF, (sheet.register(&HALF, None), narrowest))
}

/// Height of the worst edge over the water with all animals of the site along it.
pub static EDGE_HEIGHT: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        resolution: Some("curves flattened to 5 mm"),
        ..card("float-edge", "height of the loaded edge over the water", About::Basking, ["mm", "in"])
    },
    work: |sheet, at| {
        let own = site(sheet, at);
        let id = |l: Known<Line<Length>>| l.map(Line::id);
        let lines: Vec<Known<LineId>> = vec![
            crate::outline(sheet, &own.outline).map(Line::id),
            id(own.float.freeboard.on(sheet)),
            own.float.own_mass.on(sheet).map(Line::id),
            SITE_LOAD.of(sheet, at).map(Line::id),
            id(inset(sheet, at)),
            Ok(sheet.register::<MassDensity>(&WATER, None).id()),
        ];
        sheet.assemble(&EDGE, &lines.all()?)
    },
};
