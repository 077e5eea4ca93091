//! Figures about basking sites and the groups that use them: who uses what comes from ids and references alone.

pub mod float;
pub mod habit;
pub mod room;
pub mod site;
pub mod warmth;

use haulout_calc::formula::{FormulaCard, Kind};
use haulout_model::animal::Group;
use haulout_model::basking::Basking;
use haulout_model::{About, Missing, MissingKind, Reference, State, Subject};
use haulout_quantity::Basis;
use haulout_sheet::{Gap, GapKind, Known, Sheet};

use crate::species::group;

/// A closed formula on definitions and common practice.
pub(crate) const fn closed(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    source: &'static str,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source,
        range: "measures above nothing",
    }
}

/// One of several values.
pub(crate) const fn pick(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    source: &'static str,
) -> FormulaCard {
    FormulaCard { kind: Kind::Pick, ..closed(name, result, text, symbols, source) }
}

/// The site of a subject.
pub(crate) fn site(sheet: Sheet<'_>, at: Subject) -> &Basking {
    &sheet.design().basking.items()[at.index()]
}

fn open(missing: Option<Missing>) -> Known<()> {
    missing.map_or(Ok(()), |m| Err(Gap::from(m).into()))
}

/// Whether a group uses a site: it is named there, or it lives in the site's space where none are named. What leaves
/// this open is a gap: a site counted for the wrong animals would be room that is not there.
fn uses(site: &Basking, group: &Group) -> Known<bool> {
    match site.groups.state() {
        State::Given(named) => Ok(named.iter().any(|g| g.name() == group.id)),
        State::None => Ok(false),
        State::Undecided => open(site.groups.missing()).map(|()| false),
        State::Absent => {
            let Some(space) = site.space.given() else {
                return Err(Gap::from(site.space.missing()).into());
            };
            open(group.spaces.missing())?;
            Ok(group.spaces.items().iter().any(|s| s.name() == space.name()))
        }
    }
}

/// The sites a group uses; none is an answer here.
fn used_by(sheet: Sheet<'_>, group_at: Subject) -> Known<Vec<Subject>> {
    let basking = &sheet.design().basking;
    if !matches!(basking.state(), State::Given(_) | State::None) {
        open(basking.missing())?;
    }
    let mut found = Vec::new();
    for (index, site) in basking.items().iter().enumerate() {
        if uses(site, group(sheet, group_at))? {
            found.push(Subject::nth(About::Basking, index));
        }
    }
    Ok(found)
}

/// The sites a group uses.
///
/// # Errors
/// A gap of the kind *none* where there is no site for it, and gaps where it is open who uses a site.
pub fn sites_of(sheet: Sheet<'_>, group_at: Subject) -> Known<Vec<Subject>> {
    let found = used_by(sheet, group_at)?;
    if found.is_empty() {
        let what = format!("no basking site is there for \"{}\"", group(sheet, group_at).id);
        return Err(Gap::at(GapKind::SaidNone, what, sheet.design().basking.seat().origin).into());
    }
    Ok(found)
}

fn groups(sheet: Sheet<'_>) -> impl Iterator<Item = Subject> {
    (0..sheet.design().animals.items().len()).map(|i| Subject::nth(About::Group, i))
}

/// The groups that use a site.
///
/// # Errors
/// Gaps where it is open who uses it, where a named group is not there, and where nobody does.
pub fn groups_of(sheet: Sheet<'_>, site_at: Subject) -> Known<Vec<Subject>> {
    let site = site(sheet, site_at);
    let named = |group: &Reference| sheet.design().group_named(group.name());
    if let Some(lost) = site.groups.items().iter().find(|group| named(group).is_none()) {
        let what = format!("there is no group \"{}\"", lost.name());
        return Err(Gap::at(GapKind::LeadsNowhere, what, lost.seat().origin).into());
    }
    open(sheet.design().animals.missing())?;
    let mut found = Vec::new();
    for at in groups(sheet) {
        if uses(site, group(sheet, at))? {
            found.push(at);
        }
    }
    if found.is_empty() {
        let what = format!("no group uses the site \"{}\"", site.id);
        return Err(Gap::at(GapKind::SaidNone, what, site.groups.seat().origin).into());
    }
    Ok(found)
}

/// Groups that have to share some sites.
pub(crate) struct Company {
    /// The groups.
    pub(crate) groups: Vec<Subject>,
    /// The sites.
    pub(crate) sites: Vec<Subject>,
}

/// The sites of a group with all groups that have no other place to go.
pub(crate) fn own_company(sheet: Sheet<'_>, group_at: Subject) -> Known<Company> {
    let sites = sites_of(sheet, group_at)?;
    let mut sharing = Vec::new();
    for other in groups(sheet) {
        let theirs = used_by(sheet, other)?;
        if !theirs.is_empty() && theirs.iter().all(|s| sites.contains(s)) {
            sharing.push(other);
        }
    }
    Ok(Company { groups: sharing, sites })
}

/// The same with every group that shares a site with one of them, and their sites, and so on.
pub(crate) fn whole_company(sheet: Sheet<'_>, group_at: Subject) -> Known<Company> {
    let mut sites = sites_of(sheet, group_at)?;
    let mut sharing = vec![group_at];
    loop {
        let before = sharing.len();
        for other in groups(sheet).filter(|g| *g != group_at) {
            let theirs = used_by(sheet, other)?;
            if !sharing.contains(&other) && theirs.iter().any(|s| sites.contains(s)) {
                sharing.push(other);
                sites.extend(theirs);
            }
        }
        if sharing.len() == before {
            break;
        }
    }
    sharing.sort_unstable();
    sites.sort_unstable();
    sites.dedup();
    Ok(Company { groups: sharing, sites })
}

/// The pool a site stands in or beside; none for a site away from water that says so.
pub(crate) fn beside(sheet: Sheet<'_>, at: Subject) -> Known<Option<Subject>> {
    let link = &site(sheet, at).pool;
    match (link.given(), link.missing().kind) {
        (Some(name), _) => crate::pool::named(sheet, name).map(Some),
        (None, MissingKind::None) => Ok(None),
        (None, _) => Err(Gap::from(link.missing()).into()),
    }
}

/// Whether a site stands in or beside water.
///
/// # Errors
/// A gap where no pool is stated, nor that there is none.
pub fn by_water(sheet: Sheet<'_>, at: Subject) -> Known<bool> {
    beside(sheet, at).map(|pool| pool.is_some())
}

/// Whether a site floats: something is stated of its float.
///
/// # Errors
/// A gap where its float is to be decided.
pub fn floats(sheet: Sheet<'_>, at: Subject) -> Known<bool> {
    let float = &site(sheet, at).float;
    if float.own_mass.is_given() || float.carries.is_given() || float.freeboard.is_given() {
        return Ok(true);
    }
    match float.freeboard.on(sheet) {
        Err(gaps) if gaps.0.iter().any(|g| g.kind == GapKind::Undecided) => Err(gaps),
        _ => Ok(false),
    }
}
