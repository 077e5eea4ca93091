//! Which unit a line is printed in: the designer's own for what was stated, the trade's for what was worked.

use haulout_calc::formula::Kind;
use haulout_quantity::{Dimension, System, Unit, unit, unit_for};
use haulout_sheet::{Book, LineId, Made, Roots};

/// What is dissolved stays under this, kg/m³; bodies and gases lie above.
const LITTLE: f64 = 0.5;

/// From this many grams a day on kilograms are said.
const MUCH: f64 = 1_000.0;

/// US when most of the stated numbers below the lines were written in US units.
pub(crate) fn system(book: &Book<'_>, lines: &[LineId]) -> System {
    let units = Roots::of(book, lines).0;
    let (mut us, mut metric) = (0, 0);
    for line in units {
        let record = book.record(line);
        if !matches!(record.made, Made::Stated { .. }) {
            continue;
        }
        match record.unit.map(|u| u.system) {
            Some(System::Us) => us += 1,
            Some(System::Metric) => metric += 1,
            _ => {}
        }
    }
    if us > metric { System::Us } else { System::Metric }
}

/// The unit a line is printed in.
pub(crate) fn unit_of(book: &Book<'_>, line: LineId, system: System) -> &'static Unit {
    let usual = || {
        let record = book.record(line);
        let usual = unit_for(record.dimension, system);
        let unit = by_size(usual, record.datum.number()).unwrap_or(usual);
        drop(record);
        let apart = matches!(book.record(line).made, Made::Worked(formula) if formula.is_difference());
        if apart { difference(unit) } else { unit }
    };
    own(book, line, system).unwrap_or_else(usual)
}

/// Concentrations of what is dissolved are read in milligrams a litre, densities of bodies are not; nitrogen is weighed in grams a
/// day, water in kilograms.
fn by_size(usual: &'static Unit, si: Option<f64>) -> Option<&'static Unit> {
    let size = si?.abs();
    if usual.dimension == Dimension::DENSITY && size < LITTLE {
        unit("mg/L")
    } else if usual.symbol == "g/d" && size >= usual.to_si(MUCH) {
        unit("kg/d")
    } else {
        None
    }
}

/// The unit a line brings along; what is picked among others brings that of the first of them.
fn own(book: &Book<'_>, line: LineId, system: System) -> Option<&'static Unit> {
    let record = book.record(line).clone();
    match record.made {
        Made::Stated { .. } | Made::Register(..) => record.unit,
        // A limit of the trade is printed in the unit of its card, unless the design speaks the other system.
        Made::Limit(..) => record.unit.filter(|u| agrees(u.system, system)),
        Made::Worked(formula) if formula.card().kind == Kind::Pick => {
            let alike = |of: &LineId| book.record(*of).dimension == record.dimension;
            book.arguments(line).into_iter().filter(alike).find_map(|of| own(book, of, system))
        }
        Made::Worked(_) | Made::Default(..) => None,
    }
}

fn agrees(unit: System, wanted: System) -> bool {
    unit == wanted || !matches!(unit, System::Metric | System::Us)
}

/// The unit of a difference of values in `unit`: kelvins for degrees.
pub(crate) fn difference(unit: &'static Unit) -> &'static Unit {
    if unit.dimension == Dimension::TEMPERATURE {
        haulout_quantity::difference_unit(unit.system)
    } else {
        unit
    }
}
