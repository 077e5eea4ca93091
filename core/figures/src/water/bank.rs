//! The bank of a pool: how long it is, and how far its farthest stretch lies from a way out or a place to hold on.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{Outline, farthest_along, middle};
use haulout_model::{About, State, Subject};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Assembly, Entry, Figure, FigureCard, Gap, Known, Line, LineId, Many, Sheet};

use crate::item::said_none;
use crate::pool::pool;

const fn law(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "outlines that do not cross themselves",
    }
}

static AROUND: Formula<(Arc<Outline>,), Length> = Formula {
    card: &law("length of a bank", "L", "length of all sides of the outline", &["outline"]),
    run: |(outline,)| Ok(Length::from_si(outline.perimeter())),
};

/// The outline, then x and y of every way out, with the outlines of ledges among them.
static FARTHEST: Assembly<Length> = Assembly {
    card: &law(
        "farthest bank from a way out",
        "d",
        "half the longest stretch of bank between neighbouring ways out and ledges",
        &[],
    ),
    run: |data| {
        let (outline, places) = data.split_first().ok_or_else(|| Refusal::new("a pool has an outline"))?;
        let outline = Arc::<Outline>::take(outline);
        let (mut found, mut numbers) = (Vec::new(), Vec::new());
        for datum in places {
            match datum.number() {
                Some(number) => numbers.push(number),
                None => found.push(middle(&Arc::<Outline>::take(datum))),
            }
        }
        found.extend(numbers.chunks_exact(2).map(|at| [at[0], at[1]]));
        let farthest = farthest_along(&outline, &found);
        let nothing = || Refusal::new("there is no way out and no ledge to measure from");
        farthest.map(Length::from_si).ok_or_else(nothing)
    },
};

static NO_WAY: Formula<(bool,), Ratio> = Formula {
    card: &law("no way out", "n", "none, as the file says", &["said"]),
    run: |(_said,)| Ok(Ratio::from_si(0.0)),
};

static COUNT: Many<Length, Ratio> = Many {
    card: &FormulaCard {
        name: "number of ways out",
        result: "n",
        text: "one for each",
        symbols: &[],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "counting",
        range: "any number",
    },
    run: |places| Ok(Ratio::from_si(places.len() as f64)),
};

const fn card(
    id: &'static str,
    title: &'static str,
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Pool, axes: &[], unit, us_unit, resolution: None }
}

/// The bank at the rim, all round.
pub static SHORELINE: Figure<Line<Length>> = Figure {
    card: &card("shoreline", "length of the bank", "m", "ft"),
    work: |sheet, at| sheet.construct(&AROUND, (crate::outline(sheet, &pool(sheet, at).outline)?,)),
};

/// How many ways out there are; none where the file says so.
pub static WAYS_OUT: Figure<Line<Ratio>> = Figure {
    card: &card("ways-out", "number of ways out of the water", "", ""),
    work: |sheet, at| {
        let exits = &pool(sheet, at).exits;
        match (exits.state(), exits.missing()) {
            (State::None, Some(none)) => return sheet.work(&NO_WAY, (said_none(sheet, none.origin),)),
            (_, Some(missing)) => return Err(Gap::from(missing).into()),
            _ => {}
        }
        let places: Vec<Known<Line<Length>>> = exits.items().iter().map(|e| e.at[0].on(sheet)).collect();
        sheet.fold(&COUNT, &places.all()?)
    },
};

/// How far an animal at the bank swims along it, at worst, to a way out or a ledge.
pub static FARTHEST_BANK: Figure<Line<Length>> = Figure {
    card: &card("farthest-bank", "farthest bank from a way out or a ledge", "m", "ft"),
    work: |sheet, at| {
        let own = pool(sheet, at);
        let outline = crate::outline(sheet, &own.outline).map(Line::id);
        if let Some(missing) = own.exits.missing() {
            return Err(Gap::from(missing).into());
        }
        let exits = own.exits.items().iter().flat_map(|e| [e.at[0].on(sheet), e.at[1].on(sheet)]);
        let ledges = own.ledges.items().iter().map(|l| crate::outline(sheet, &l.outline).map(Line::id));
        let lines: Vec<Known<LineId>> =
            std::iter::once(outline).chain(exits.map(|x| x.map(Line::id))).chain(ledges).collect();
        sheet.assemble(&FARTHEST, &lines.all()?)
    },
};

/// The slope of the pool's own side, where it slopes: animals walk out over it anywhere.
pub fn sloped_side(sheet: Sheet<'_>, at: Subject) -> Option<Known<Line<Ratio>>> {
    let edge = &pool(sheet, at).edge;
    edge.is_given().then(|| edge.on(sheet))
}
