//! Stated numbers against the range of their cards, with the slip that would explain one outside.

use std::sync::Arc;

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::plausible::{Slip, Suspect};
use haulout_model::{Form, Stated, Subject, Written};
use haulout_quantity::si::{
    Area, ElectricCurrent, ElectricPotential, Frequency, Length, Mass, MassDensity, MassRate, MolarFlux,
    Power, RadiantExposure, Ratio, ReciprocalLength, ThermalConductivity, ThermodynamicTemperature, Time,
    Velocity, Volume, VolumeRate,
};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_sheet::{All, Assembly, Datum, Entry, Gap, GapKind, Known, Line, LineId, Sheet};

const fn finding(name: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text,
        symbols: &[],
        kind: Kind::Pick,
        basis: Basis::CommonPractice,
        source: "ranges met with in practice, on the card of each field; no source claimed",
        range: "ordinary exhibits; outside a range nothing is forbidden, a slip is likely",
    }
}

static PLAUSIBLE: Assembly<bool> = Assembly {
    card: &finding("the number is plausible", "the number lies in the range of its card"),
    run: |data| {
        let [number, written] = data else { return Err(Refusal::new("a number and its card are compared")) };
        let written = Arc::<Written>::take(written);
        let suspect = suspect(number.number().unwrap_or(f64::NAN), &written);
        if suspect.is_plausible() {
            Ok(true)
        } else {
            Err(Refusal::new(sentence(&suspect, written.card.what)))
        }
    },
};

static ALL_PLAUSIBLE: Assembly<bool> = Assembly {
    card: &finding("every number is plausible", "each number lies in the range of its card"),
    run: |data| {
        let [cards, numbers @ ..] = data else { return Ok(true) };
        let cards = Arc::<Vec<Written>>::take(cards);
        let plain = |(number, written): (&Datum, &Written)| {
            suspect(number.number().unwrap_or(f64::NAN), written).is_plausible()
        };
        match numbers.iter().zip(cards.iter()).all(plain) {
            true => Ok(true),
            false => Err(Refusal::new("a number lies outside the range of its card")),
        }
    },
};

fn suspect(value: f64, written: &Written) -> Suspect {
    Suspect {
        value,
        range: written.card.range,
        unit: written.unit,
        dimension: written.card.dimension,
        difference: written.card.form == Form::Difference,
    }
}

fn sentence(suspect: &Suspect, what: &str) -> String {
    let symbol = suspect.unit.map_or("", |u| u.symbol);
    let shown = |si: f64| shown(suspect.in_unit(si), symbol);
    let (low, high) = suspect.range;
    let slips: Vec<String> = suspect.slips().into_iter().take(3).map(|s| slip(suspect, s)).collect();
    let likely = if slips.is_empty() {
        "no slip of the decimal point or the unit explains it".to_owned()
    } else {
        format!("perhaps {}", slips.join(" or "))
    };
    format!("{what}: {} where {} to {} is met with; {likely}", shown(suspect.value), shown(low), shown(high))
}

fn slip(suspect: &Suspect, slip: Slip) -> String {
    let typed = suspect.typed();
    match slip {
        Slip::Point(by) => {
            let symbol = suspect.unit.map_or("", |u| u.symbol);
            format!("{} (the decimal point)", shown(typed * by, symbol))
        }
        Slip::Unit(unit) => format!("{} (the unit)", shown(typed, unit.symbol)),
    }
}

/// Six decimals at most, no zeros behind.
fn shown(number: f64, symbol: &str) -> String {
    let digits = format!("{number:.6}");
    let digits = digits.trim_end_matches('0').trim_end_matches('.');
    format!("{digits} {symbol}").trim_end().to_owned()
}

/// The door of a number by the dimension of its card: the ledger hands out typed lines only.
struct Door {
    dimension: Dimension,
    line: fn(&Stated, Sheet<'_>) -> LineId,
}

const fn door<Q: Measure>() -> Door {
    Door { dimension: Q::DIMENSION, line: |stated, sheet| stated.on::<Q, Sheet<'_>>(sheet).id() }
}

static DOORS: &[Door] = &[
    door::<Length>(),
    door::<Ratio>(),
    door::<ThermodynamicTemperature>(),
    door::<Volume>(),
    door::<VolumeRate>(),
    door::<Area>(),
    door::<Velocity>(),
    door::<Mass>(),
    door::<Power>(),
    door::<Time>(),
    door::<ElectricCurrent>(),
    door::<ElectricPotential>(),
    door::<Frequency>(),
    door::<MassDensity>(),
    door::<MassRate>(),
    door::<MolarFlux>(),
    door::<ReciprocalLength>(),
    door::<RadiantExposure>(),
    door::<ThermalConductivity>(),
];

/// Whether every number a part of the file states is one that is met with.
///
/// # Errors
/// A gap for each number outside the range of its card, with the slip that would explain it, and for each that is to
/// be decided.
pub fn all_plausible(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let part = &sheet.design().directory.parts[at.index()];
    let doors = || part.numbers.iter().map(|stated| (stated, door_of(stated)));
    if part.undecided.is_empty() {
        let cards = part.written(sheet).map(Line::id);
        let lines: Vec<LineId> =
            cards.into_iter().chain(doors().map(|(stated, door)| (door.line)(stated, sheet))).collect();
        // Where all is well, that is one line; where it is not, each number is looked at by itself.
        if let Ok(all) = sheet.assemble(&ALL_PLAUSIBLE, &lines) {
            return Ok(all);
        }
    }
    let undecided = part.undecided.iter().map(|missing| Err(Gap::from(*missing).into()));
    let each = doors().map(|(stated, door)| plausible(sheet, stated, door));
    let lines: Vec<Known<LineId>> = each.chain(undecided).collect();
    lines.all().and_then(|_| sheet.assemble(&ALL_PLAUSIBLE, &[]))
}

fn door_of(stated: &Stated) -> &'static Door {
    let door = DOORS.iter().find(|d| d.dimension == stated.dimension());
    // A test holds them to the cards of the document.
    door.expect("every dimension of the document has its door")
}

fn plausible(sheet: Sheet<'_>, stated: &Stated, door: &Door) -> Known<LineId> {
    let lines = [(door.line)(stated, sheet), stated.written(sheet).id()];
    sheet.work_any(&PLAUSIBLE, &lines, GapKind::OutOfRange)
}

#[cfg(test)]
mod tests {
    use haulout_model::{Described, describe};
    use haulout_quantity::{Dimension, unit};

    use super::{DOORS, sentence};
    use haulout_calc::plausible::Suspect;

    fn cards(members: &[Described], found: &mut Vec<Dimension>) {
        for member in members {
            found.extend(member.card.map(|c| c.dimension));
            cards(&member.members, found);
        }
    }

    #[test]
    fn every_dimension_of_the_document_has_its_door() {
        let mut found = Vec::new();
        cards(&describe(), &mut found);
        assert!(found.len() > 20);
        for dimension in found {
            assert!(DOORS.iter().any(|d| d.dimension == dimension), "{dimension:?} has no door");
        }
    }

    #[test]
    fn a_likely_slip_is_named() {
        let unit = unit("m");
        let depth =
            Suspect { value: 6.0, range: (0.0, 3.0), unit, dimension: Dimension::LENGTH, difference: false };
        assert_eq!(
            sentence(&depth, "depth"),
            "depth: 6 m where 0 m to 3 m is met with; perhaps 0.6 m (the decimal point) or 6 cm (the unit) or 6 ft (the unit)"
        );
    }
}
