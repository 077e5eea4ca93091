//! The groups that live over pools: in the spaces of the pools, by ids alone.

use haulout_model::animal::Group;
use haulout_model::{About, Subject};
use haulout_sheet::{All, Gap, GapKind, Known, Sheet};

use crate::pool::pool;

/// Positions of the groups that live in the space of one of the pools.
///
/// # Errors
/// A gap where animals, the space of a pool or the spaces of a group are not stated: nobody can know then who is missing.
pub(crate) fn living_over(sheet: Sheet<'_>, pools: &[Subject]) -> Known<Vec<Subject>> {
    let animals = &sheet.design().animals;
    if let Some(missing) = animals.missing() {
        return none_or(Gap::from(missing)).map(|()| Vec::new());
    }
    let space = |at: &Subject| {
        let link = &pool(sheet, *at).space;
        link.name().ok_or_else(|| Gap::from(link.missing()).into())
    };
    let spaces: Vec<Known<&str>> = pools.iter().map(space).collect();
    let lives: Vec<Known<&Group>> = animals.items().iter().map(where_stated).collect();
    let (spaces, groups) = (spaces.all(), lives.all()).all()?;
    let over = |group: &Group| group.spaces.items().iter().any(|named| spaces.contains(&named.name()));
    let found = groups.into_iter().enumerate().filter(|(_, group)| over(group));
    Ok(found.map(|(at, _)| Subject::nth(About::Group, at)).collect())
}

fn where_stated(group: &Group) -> Known<&Group> {
    match group.spaces.missing() {
        Some(missing) => none_or(Gap::from(missing)).map(|()| group),
        None => Ok(group),
    }
}

/// Nothing, where the file says that there is none.
fn none_or(gap: Gap) -> Known<()> {
    if gap.kind == GapKind::SaidNone { Ok(()) } else { Err(gap.into()) }
}
