//! Names: whether they lead somewhere, whether anything leads to a name, whether an outline can be drawn.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Outline;
use haulout_model::{Entry, Leads, Pointing, Reference, Shape, ShapeField, State, Subject};
use haulout_quantity::Basis;
use haulout_sheet::{All, Gap, GapKind, Gaps, Known, Line, Many, Sheet};

const fn finding(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text,
        symbols,
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "the file itself",
        range: "names as typed",
    }
}

static LEADS: Formula<(Arc<String>,), bool> = Formula {
    card: &finding("the name leads somewhere", "something in the file has the name", &["name"]),
    run: |_| Ok(true),
};

/// The first is the thing's own name, the others are those that lead to it.
static NAMED: Many<Arc<String>, bool> = Many {
    card: &finding("something uses it", "a name elsewhere leads to it", &[]),
    run: |names| Ok(names.len() > 1),
};

static SIMPLE: Formula<(Arc<Outline>,), bool> = Formula {
    card: &finding("the outline is simple", "the sides neither cross nor touch", &["outline"]),
    run: |_| Ok(true),
};

static PEOPLED: Formula<(u16,), bool> = Formula {
    card: &finding("the space is for visitors or animals", "not for keepers alone", &["for"]),
    run: |(whom,)| Ok(whom < KEEPERS),
};

/// The option of a space for keepers on the card of whom a space is for.
const KEEPERS: u16 = 2;

/// Whether a name leads somewhere. Which names there are is no matter of values: the formula is given the name alone.
///
/// # Errors
/// A gap that names the nearest there is, where it leads nowhere; another where what it leads to is to be decided.
pub fn leads_somewhere(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let design = sheet.design();
    let pointing = &design.directory.references[at.index()];
    let name = pointing.on(sheet);
    if design.leads(pointing) {
        return sheet.work(&LEADS, (name,));
    }
    if let Some(missing) = design.awaited(pointing) {
        return Err(Gaps::from(Gap::from(missing)).because(name.id()));
    }
    let nearest = match design.nearest(pointing) {
        Some(nearest) => format!("the nearest there is is \"{nearest}\""),
        None => "the file has none at all".to_owned(),
    };
    let text = format!("there is no {} \"{}\"; {nearest}", sort(pointing), pointing.reference.name());
    Err(Gap::of(GapKind::LeadsNowhere, text, vec![name.id()]).into())
}

/// What a name should lead to, in words.
fn sort(pointing: &Pointing) -> &'static str {
    const SORTS: &[(&str, &str)] = &[
        ("spaces", "space"),
        ("pools", "pool"),
        ("zones", "zone"),
        ("animals", "group"),
        ("barriers", "barrier"),
        ("intakes", "intake"),
    ];
    match pointing.leads {
        Leads::Lists(lists) => {
            SORTS.iter().find(|(list, _)| lists.first() == Some(list)).map_or("id", |(_, word)| word)
        }
        Leads::Outline => "outline",
        Leads::Level => "level",
        Leads::Kind(_) => "kind",
        Leads::Anything => "id",
    }
}

/// Whether anything is of a kind.
///
/// # Errors
/// A gap where nothing is and something that may yet be is to be decided.
pub fn kind_is_named(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let kind = &sheet.design().directory.kinds[at.index()];
    named(
        sheet,
        kind,
        |p| matches!(p.leads, Leads::Kind(family) if family == kind.list() && p.reference.name() == kind.name()),
    )
}

/// Whether anything names a space: an animal group, a pool, a viewing position, an outline or level drawn from it.
///
/// # Errors
/// A gap where nothing does and something that may yet do so is to be decided.
pub fn space_is_named(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let design = sheet.design();
    let id = &design.hall.spaces.items()[at.index()].id;
    let space = design.directory.with_id(id).find(|e| e.list() == "spaces");
    let Some(space) = space else {
        let seat = design.hall.spaces.items()[at.index()].outline.seat();
        return Err(Gap::at(GapKind::Absent, "id of the space", seat.origin).into());
    };
    named(sheet, space, |p| {
        let name = p.reference.name();
        name == id || matches!(p.leads, Leads::Level) && name.split('.').next() == Some(id)
    })
}

fn named(sheet: Sheet<'_>, entry: &Entry, leads_here: impl Fn(&Pointing) -> bool) -> Known<Line<bool>> {
    let users = sheet.design().directory.references.iter().filter(|p| leads_here(p)).map(|p| p.on(sheet));
    let lines: Vec<Line<Arc<String>>> = std::iter::once(entry.on(sheet)).chain(users).collect();
    let awaited = &sheet.design().directory.awaited;
    if lines.len() == 1 && !awaited.is_empty() {
        let gaps = awaited.iter().map(|a| Gap::from(a.missing)).collect();
        return Err(Gaps(gaps).because(lines[0].id()));
    }
    sheet.fold(&NAMED, &lines)
}

/// Whether a space is for visitors or animals.
///
/// # Errors
/// A gap where the file does not say for whom it is.
pub fn is_peopled(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let whom = sheet.design().hall.spaces.items()[at.index()].whom.on(sheet)?;
    sheet.work(&PEOPLED, (whom.option(),))
}

/// Whether an outline can be drawn: what it is made of stands, so that a gap of unsound geometry is its own.
///
/// # Errors
/// A gap with the reason where its sides cross or nothing is enclosed.
pub fn is_simple(sheet: Sheet<'_>, field: &ShapeField) -> Known<Line<bool>> {
    sheet.work(&SIMPLE, (crate::outline(sheet, field)?,))
}

/// The outline of a subject.
pub fn outline_of(sheet: Sheet<'_>, at: Subject) -> &ShapeField {
    let design = sheet.design();
    let name = &design.directory.outlines[at.index()];
    design.outline(name).expect("a subject about an outline stands for a name that has one")
}

/// The outlines that one is worked from by name.
///
/// # Errors
/// All that keeps them from being drawn; what hangs on them cannot be told to be at fault.
pub fn what_it_is_drawn_from(sheet: Sheet<'_>, field: &ShapeField) -> Known<()> {
    let parents: Vec<Known<()>> = named_in(field)
        .into_iter()
        .map(|name| match sheet.design().outline(name.name()) {
            Some(parent) => crate::outline(sheet, parent).map(|_| ()),
            None => {
                let what = format!("there is no outline \"{}\"", name.name());
                Err(Gap::at(GapKind::LeadsNowhere, what, name.seat().origin).into())
            }
        })
        .collect();
    parents.all().map(|_| ())
}

fn named_in(field: &ShapeField) -> Vec<&Reference> {
    let State::Given(shape) = field.state() else { return Vec::new() };
    match shape.as_ref() {
        Shape::Drawn(_) => Vec::new(),
        Shape::Inset { of, .. } | Shape::Copy { of, .. } => vec![of],
        Shape::Join(parts) | Shape::Less(parts) => parts.iter().flat_map(named_in).collect(),
    }
}
