//! Materials the water touches: what they are, whether they are sealed, what the water on them read, how long they cured.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::fill::WetMaterial;
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Ratio, Time};
use haulout_sheet::{Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

/// The material of a subject.
fn material(sheet: Sheet<'_>, at: Subject) -> Known<&WetMaterial> {
    let found = sheet.design().wet_material(at.index()).map(|(_, material)| material);
    found.ok_or_else(|| Gap::of(GapKind::LeadsNowhere, "wet material", Vec::new()).into())
}

const fn pick(name: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text,
        symbols: &["kind"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds",
    }
}

static OF_LIME: Formula<(u16,), bool> = Formula {
    card: &pick("material that gives off lime", "mortar or concrete"),
    run: |(kind,)| Ok(kind <= 1),
};

static POISONS: Formula<(u16,), bool> = Formula {
    card: &pick("material that poisons water", "zinc, copper, brass, lead, treated timber"),
    run: |(kind,)| Ok((2..=6).contains(&kind)),
};

static CURES: Formula<(u16,), bool> = Formula {
    card: &pick("material that cures", "sealant or coating"),
    run: |(kind,)| Ok(kind == 7 || kind == 9),
};

fn asked(sheet: Sheet<'_>, at: Subject, question: &'static Formula<(u16,), bool>) -> Known<Line<bool>> {
    sheet.work(question, (material(sheet, at)?.kind.on(sheet)?.option(),))
}

/// Whether it gives off lime.
///
/// # Errors
/// A gap when its kind is not stated.
pub fn is_of_lime(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    asked(sheet, at, &OF_LIME)
}

/// Whether it poisons water that touches it bare.
///
/// # Errors
/// A gap when its kind is not stated.
pub fn poisons(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    asked(sheet, at, &POISONS)
}

/// Whether it cures and gives off solvents or acids until it has.
///
/// # Errors
/// A gap when its kind is not stated.
pub fn cures(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    asked(sheet, at, &CURES)
}

/// Whether a coating keeps the water off it.
///
/// # Errors
/// A gap when the file does not say.
pub fn is_sealed(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    material(sheet, at)?.sealed.on(sheet)
}

const fn card(id: &'static str, title: &'static str, unit: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Material, axes: &[], unit, us_unit: unit, resolution: None }
}

/// The pH of still water that stood on it for 72 hours.
pub static PH_ON_IT: Figure<Line<Ratio>> = Figure {
    card: &card("ph-on-it", "pH of water that stood on the material", ""),
    work: |sheet, at| material(sheet, at)?.ph.on(sheet),
};

/// How long it stood under water that was thrown away.
pub static LEACHED: Figure<Line<Time>> = Figure {
    card: &card("leached", "time the material was leached", "d"),
    work: |sheet, at| material(sheet, at)?.leached.on(sheet),
};

/// How long it cures before water comes to it.
pub static CURED: Figure<Line<Time>> = Figure {
    card: &card("cured", "time the material cures", "d"),
    work: |sheet, at| material(sheet, at)?.cured.on(sheet),
};
