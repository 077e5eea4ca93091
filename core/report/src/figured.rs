//! The calculation sheet told: every figure about every subject in every case.

use haulout_document::Tree;
use haulout_quantity::{System, Unit, print, unit, unit_for};
use haulout_sheet::{Book, Case, Catalogued};

use crate::place::{Place, places_of};
use crate::told::ToldGap;
use crate::units::system;
use crate::working::{DIGITS, Shown, working};

/// A figure told.
#[derive(Debug, Clone, PartialEq)]
pub struct Figured {
    /// Its id.
    pub id: &'static str,
    /// Its title.
    pub title: &'static str,
    /// Key of the subject.
    pub subject: String,
    /// The states it was worked for.
    pub case: Vec<&'static str>,
    /// Its value in its unit.
    pub value: Option<f64>,
    /// The same printed with its unit.
    pub printed: String,
    /// Its unit.
    pub unit: &'static str,
    /// Its working.
    pub working: Vec<String>,
    /// The places its numbers came from.
    pub places: Vec<Place>,
    /// What is missing.
    pub gaps: Vec<ToldGap>,
}

/// Works the figures of a catalogue that `wanted` lets through, by figure id and subject key.
pub fn figured(
    book: &Book<'_>,
    tree: &Tree,
    catalogue: &'static [&'static dyn Catalogued],
    wanted: &dyn Fn(&str, &str) -> bool,
) -> Vec<Figured> {
    let mut told = Vec::new();
    for figure in catalogue.iter().copied() {
        let card = figure.card();
        for subject in card.about.walk(book.design()).subjects {
            let key = subject.key(book.design());
            if !wanted(card.id, &key) {
                continue;
            }
            for case in Case::each(card.axes) {
                let known = figure.line(book.sheet(case), subject);
                told.push(one((book, tree), figure, &key, case, known));
            }
        }
    }
    told
}

pub(crate) fn one(
    (book, tree): (&Book<'_>, &Tree),
    figure: &'static dyn Catalogued,
    key: &str,
    case: Case,
    known: haulout_sheet::Known<haulout_sheet::LineId>,
) -> Figured {
    let card = figure.card();
    let mut told = Figured {
        id: card.id,
        title: card.title,
        subject: key.to_owned(),
        case: case.words(),
        value: None,
        printed: String::new(),
        unit: card.unit,
        working: Vec::new(),
        places: Vec::new(),
        gaps: Vec::new(),
    };
    match known {
        Ok(line) => {
            let spoken = system(book, &[line]);
            let si = book.record(line).datum.number().unwrap_or(f64::NAN);
            let unit = trade_unit(figure, spoken);
            told.value = Some(unit.of_si(si));
            told.printed = print(si, unit, DIGITS);
            told.unit = unit.symbol;
            told.working = working(book, &[line], Shown { digits: DIGITS, unit: Some(unit) }, spoken);
            told.places = places_of(tree, book, &[line]);
        }
        Err(gaps) => {
            told.gaps = gaps.0.iter().map(|gap| ToldGap::of(gap, tree, book)).collect();
        }
    }
    told
}

/// The unit of the figure's card, US where the design speaks US.
fn trade_unit(figure: &'static dyn Catalogued, spoken: System) -> &'static Unit {
    let card = figure.card();
    let symbol = if spoken == System::Us { card.us_unit } else { card.unit };
    unit(symbol).unwrap_or_else(|| unit_for(figure.dimension(), spoken))
}
