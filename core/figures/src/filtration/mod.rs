//! Figures about filters and the ammonia they are to take out.

pub mod ammonia;
pub mod bed;
pub mod gravel;
pub mod joined;
pub mod load;
pub mod oxygen;
pub mod renewal;
pub mod stage;

use haulout_model::feed::Feed;
use haulout_model::filter::Filter;
use haulout_model::{About, Subject};
use haulout_sheet::{Gap, GapKind, Known, Sheet};

/// The filter of a subject.
pub(crate) fn filter(sheet: Sheet<'_>, at: Subject) -> &Filter {
    &sheet.design().filters.items()[at.index()]
}

/// The feed of a subject.
pub(crate) fn feed(sheet: Sheet<'_>, at: Subject) -> &Feed {
    let feed = sheet.design().feeds().nth(at.index());
    feed.map(|(_, feed)| feed).expect("subjects of feeds are counted over the same list")
}

/// The circuit that feeds a filter.
pub(crate) fn circuit_of(sheet: Sheet<'_>, at: Subject) -> Known<Subject> {
    let link = &filter(sheet, at).circuit;
    let Some(name) = link.name() else {
        return Err(Gap::from(link.missing()).into());
    };
    match sheet.design().circuits.items().iter().position(|c| c.id == name) {
        Some(found) => Ok(Subject::nth(About::Circuit, found)),
        None => {
            let what = format!("there is no circuit \"{name}\"");
            Err(Gap::at(GapKind::LeadsNowhere, what, link.missing().origin).into())
        }
    }
}

/// The first basin that the circuit of a filter serves: its water comes to the filter.
pub(crate) fn water_of(sheet: Sheet<'_>, at: Subject) -> Known<Subject> {
    let of = circuit_of(sheet, at)?;
    let first = crate::circuit::served(sheet, of)?.into_iter().next();
    first.unwrap_or_else(|| {
        let seat = crate::circuit::circuit(sheet, of).serves.seat();
        Err(Gap::at(GapKind::Absent, seat.what, seat.origin).into())
    })
}
