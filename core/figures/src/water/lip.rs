//! The head over a lip: what it needs of depth over its crest for a flow to leave.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::hydraulics::weir::{FLOW_CONTRACTED, HEAD_CONTRACTED, HEAD_NOTCH, HEAD_OVER, ROUND, SHARP};
use haulout_model::weir::Weir;
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, VolumeRate};
use haulout_register::Value;
use haulout_sheet::{All, Gaps, Known, Line, Sheet};

pub(super) static SHARP_CREST: Value = Value::number(
    "coefficient of a sharp crest",
    SHARP,
    Basis::Reported,
    "Francis, 3.33 in feet and cubic feet a second, as the Water Measurement Manual of the US Bureau of Reclamation gives it",
);
pub(super) static ROUND_CREST: Value = Value::number(
    "coefficient of a rounded crest",
    ROUND,
    Basis::Published,
    "critical depth over a broad crest: 1.705 b H^1.5 in SI",
);

/// Options of the kind of a weir.
pub(super) const CONTRACTED: u16 = 1;
pub(super) const NOTCH: u16 = 2;
pub(super) const ROUNDED: u16 = 3;

static OF_KIND: Formula<(Length, u16), Length> = Formula {
    card: &FormulaCard {
        name: "head over a lip of its kind",
        result: "h_lip",
        text: "h",
        symbols: &["h", "kind"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition",
        range: "any lip",
    },
    run: |(head, _kind)| Ok(head),
};

/// The head a flow needs over a lip.
///
/// # Errors
/// A gap where the lip is not stated far enough, or where the flow is too much for its formula.
pub fn head_over(sheet: Sheet<'_>, lip: &Weir, flow: Line<VolumeRate>) -> Known<Line<Length>> {
    let kind = lip.kind.on(sheet)?;
    let because = |gaps: Gaps| gaps.because(kind.id());
    let head = match sheet.option_of(kind) {
        CONTRACTED => contracted(sheet, lip, flow),
        NOTCH => lip.angle.on(sheet).and_then(|angle| sheet.work(&HEAD_NOTCH, (angle, flow))),
        other => {
            let crest = if other == ROUNDED { &ROUND_CREST } else { &SHARP_CREST };
            let width = lip.width.on(sheet);
            width.and_then(|b| sheet.work(&HEAD_OVER, (sheet.register(crest, None), b, flow)))
        }
    };
    sheet.work(&OF_KIND, (head.map_err(because)?, kind.option()))
}

fn contracted(sheet: Sheet<'_>, lip: &Weir, flow: Line<VolumeRate>) -> Known<Line<Length>> {
    let (width, crest) = (lip.width.on(sheet)?, sheet.register(&SHARP_CREST, None));
    let head = sheet.work(&HEAD_CONTRACTED, (crest, width, flow))?;
    let back = sheet.work(&FLOW_CONTRACTED, (crest, width, head))?;
    sheet.check(head, back, flow);
    Ok(head)
}

/// A lip that is not stated at all is no lip to work with: all that is missing of it at once.
///
/// # Errors
/// A gap for each of its parts that is missing.
pub(super) fn is_stated(sheet: Sheet<'_>, lip: &Weir) -> Known<()> {
    (lip.kind.on(sheet), crate::level(sheet, &lip.level)).all().map(|_| ())
}
