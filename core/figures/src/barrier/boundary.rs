//! The boundary of a space as its barriers draw it: what they leave open between their ends.

use std::sync::Arc;

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{Outline, Passage, middle, passage};
use haulout_model::hall::Space;
use haulout_model::{About, State, Subject, TrackPoints};
use haulout_quantity::si::Length;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Assembly, Datum, Entry, Figure, FigureCard, Gap, Known, Line, LineId, Sheet};

use super::yes::FOR_ANIMALS;

const fn construction(name: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result: "w",
        text,
        symbols: &[],
        kind: Kind::Search,
        basis: Basis::Published,
        source: "plane geometry: the chain of walls round the middle of the space with the narrowest openings; where no chain closes, the whole of the space is open",
        range: "walls drawn as straight pieces",
    }
}

static WIDEST: Assembly<Length> = Assembly {
    card: &construction(
        "widest opening between barriers",
        "the widest opening of the chain of barriers round the space whose widest opening is least",
    ),
    run: |data| {
        let (outline, open) = left_open(data)?;
        Ok(Length::from_si(open.map_or_else(|| outline.greatest_width(), |p| p.widest)))
    },
};

static TOTAL: Assembly<Length> = Assembly {
    card: &construction(
        "openings between barriers together",
        "all openings of the chain of barriers round the space where they are least together",
    ),
    run: |data| {
        let (outline, open) = left_open(data)?;
        Ok(Length::from_si(open.map_or_else(|| outline.perimeter(), |p| p.total)))
    },
};

/// The outline of the space first, then the lines of its barriers.
fn left_open(data: &[Datum]) -> Result<(Arc<Outline>, Option<Passage>), Refusal> {
    let [outline, tracks @ ..] = data else {
        return Err(Refusal::new("a boundary needs the outline of its space"));
    };
    let outline = Arc::<Outline>::take(outline);
    let tracks: Vec<Arc<TrackPoints>> = tracks.iter().map(Entry::take).collect();
    let lines: Vec<&[[f64; 2]]> = tracks.iter().map(|t| t.0.as_slice()).collect();
    let open = passage(&lines, middle(&outline));
    Ok((outline, open))
}

fn of(sheet: Sheet<'_>, at: Subject) -> &Space {
    &sheet.design().hall.spaces.items()[at.index()]
}

/// The outline of the space and the lines of the barriers that bound it.
fn lines(sheet: Sheet<'_>, at: Subject) -> Known<Vec<LineId>> {
    let space = of(sheet, at);
    let barriers = &sheet.design().barriers;
    if let (State::Absent | State::Undecided, Some(missing)) = (barriers.state(), barriers.missing()) {
        return Err(Gap::from(missing).into());
    }
    let own = barriers
        .items()
        .iter()
        .filter(|b| b.spaces.items().is_empty() || b.spaces.items().iter().any(|s| s.name() == space.id));
    let tracks = own.map(|b| match b.spaces.missing() {
        Some(missing) => Err(Gap::from(missing).into()),
        None => b.line.on(sheet).map(Line::id),
    });
    let outline = crate::outline(sheet, &space.outline).map(Line::id);
    std::iter::once(outline).chain(tracks).collect::<Vec<_>>().all()
}

const fn card(id: &'static str, title: &'static str, unit: [&'static str; 2]) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Space,
        axes: &[],
        unit: unit[0],
        us_unit: unit[1],
        resolution: None,
    }
}

/// The widest opening the barriers of a space leave between their ends.
pub static BOUNDARY_GAP: Figure<Line<Length>> = Figure {
    card: &card("boundary-gap", "widest opening between the barriers", ["mm", "in"]),
    work: |sheet, at| sheet.assemble(&WIDEST, &lines(sheet, at)?),
};

/// All openings the barriers of a space leave between their ends.
pub static BOUNDARY_OPEN: Figure<Line<Length>> = Figure {
    card: &card("boundary-open", "openings between the barriers together", ["m", "ft"]),
    work: |sheet, at| sheet.assemble(&TOTAL, &lines(sheet, at)?),
};

/// The space is for animals.
pub static KEEPS_ANIMALS: Figure<Line<bool>> = Figure {
    card: &card("keeps-animals", "for animals", ["", ""]),
    work: |sheet, at| {
        let whom = of(sheet, at).whom.on(sheet)?;
        sheet.work(&FOR_ANIMALS, (whom.option(),))
    },
};
