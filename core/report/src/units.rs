//! Which unit a line is printed in: the designer's own for what was stated, the trade's for what was worked.

use haulout_quantity::{Dimension, System, Unit, unit_for};
use haulout_sheet::{Book, LineId, Made, Roots};

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
    let record = book.record(line);
    let own = match record.made {
        Made::Stated { .. } | Made::Register(..) => record.unit,
        // A limit of the trade is printed in the unit of its card, unless the design speaks the other system.
        Made::Limit(..) if record.unit.is_some_and(|u| agrees(u.system, system)) => record.unit,
        _ => None,
    };
    own.unwrap_or_else(|| unit_for(record.dimension, system))
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
