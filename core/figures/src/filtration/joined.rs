//! Joined water: pools that circuits join are one water, with the animals over it and the filters in it.

use std::sync::Arc;

use haulout_model::filter::Filter;
use haulout_model::{About, Subject};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Sheet};

use crate::group::over::living_over;

/// What belongs to one water.
#[derive(Debug, Clone, PartialEq)]
pub struct Joined {
    /// Its pools.
    pub pools: Vec<Subject>,
    /// What is fed to the groups that live in the spaces of its pools.
    pub feeds: Vec<Subject>,
    /// The filters of its circuits.
    pub filters: Known<Vec<Subject>>,
}

/// The water a pool belongs to. Not a number, so not in the catalogue.
pub static JOINED: Figure<Arc<Joined>> = Figure {
    card: &FigureCard {
        id: "joined-water",
        title: "joined water",
        about: About::Pool,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: None,
    },
    work: |sheet, at| {
        let (pools, circuits) = reached(sheet, at)?;
        let feeds = feeds_over(sheet, &pools)?;
        let nth = |about: About| move |at: usize| Subject::nth(about, at);
        let filters = filters_of(sheet, &circuits);
        Ok(Arc::new(Joined {
            pools: pools.into_iter().map(nth(About::Pool)).collect(),
            feeds: feeds.into_iter().map(nth(About::Feed)).collect(),
            filters,
        }))
    },
};

impl Joined {
    /// The pool that speaks for the water, so that one water is judged and drawn once: the one that says most of it, of several the
    /// first by name. How lists are ordered and which numbers are stated has no part in it.
    pub(crate) fn speaker(&self, sheet: Sheet<'_>) -> Option<Subject> {
        let pools = &sheet.design().pools.items();
        let said = |at: &Subject| {
            let water = &pools[at.index()].water;
            let given = [
                water.temperature.is_given(),
                water.ph.is_given(),
                water.oxygen.is_given(),
                water.alkalinity.is_given(),
                water.hardness.is_given(),
                pools[at.index()].fill.flow.is_given(),
            ];
            given.into_iter().filter(|given| *given).count()
        };
        let first = |one: &&Subject, other: &&Subject| {
            let by_name = pools[other.index()].id.cmp(&pools[one.index()].id);
            said(one).cmp(&said(other)).then(by_name)
        };
        self.pools.iter().max_by(first).copied()
    }
}

/// The pools of the water a pool belongs to.
///
/// # Errors
/// A gap where circuits, or what one of them serves, are not stated.
pub(crate) fn joined_pools(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let (pools, _) = reached(sheet, at)?;
    Ok(pools.into_iter().map(|pool| Subject::nth(About::Pool, pool)).collect())
}

/// The circuits of the water a pool belongs to.
///
/// # Errors
/// As for its pools; out of range where there is none.
pub(crate) fn joined_circuits(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let (_, circuits) = reached(sheet, at)?;
    if circuits.is_empty() {
        return Err(Gap::of(GapKind::OutOfRange, "no circuit moves this water", Vec::new()).into());
    }
    Ok(circuits.into_iter().map(|circuit| Subject::nth(About::Circuit, circuit)).collect())
}

/// Pools and circuits reached from a pool by the basins that circuits list.
fn reached(sheet: Sheet<'_>, at: Subject) -> Known<(Vec<usize>, Vec<usize>)> {
    let design = sheet.design();
    if let Some(missing) = design.circuits.missing() {
        return alone_or(Gap::from(missing), at);
    }
    let (mut pools, mut circuits) = (vec![at.index()], Vec::new());
    let mut grown = true;
    while grown {
        grown = false;
        for (index, circuit) in design.circuits.items().iter().enumerate() {
            if circuits.contains(&index) {
                continue;
            }
            if let Some(missing) = circuit.serves.missing() {
                return Err(Gap::from(missing).into());
            }
            let served: Vec<usize> =
                circuit.serves.items().iter().filter_map(|r| design.pool_named(r.name())).collect();
            if served.iter().any(|pool| pools.contains(pool)) {
                circuits.push(index);
                pools.extend(served.into_iter().filter(|pool| *pool != at.index()));
                pools.sort_unstable();
                pools.dedup();
                grown = true;
            }
        }
    }
    Ok((pools, circuits))
}

/// A pool for which the file says that there are no circuits stands alone.
fn alone_or(gap: Gap, at: Subject) -> Known<(Vec<usize>, Vec<usize>)> {
    if gap.kind == GapKind::SaidNone {
        return Ok((vec![at.index()], Vec::new()));
    }
    Err(gap.into())
}

fn feeds_over(sheet: Sheet<'_>, pools: &[usize]) -> Known<Vec<usize>> {
    let pools: Vec<Subject> = pools.iter().map(|at| Subject::nth(About::Pool, *at)).collect();
    let living = living_over(sheet, &pools)?;
    let design = sheet.design();
    let stated = |at: &Subject| match design.animals.items()[at.index()].feeds.missing().map(Gap::from) {
        Some(gap) if gap.kind != GapKind::SaidNone => Err(gap.into()),
        _ => Ok(at.index()),
    };
    let stated: Vec<Known<usize>> = living.iter().map(stated).collect();
    let living = stated.all()?;
    let fed = design.feeds().enumerate();
    Ok(fed.filter(|(_, (group, _))| living.contains(group)).map(|(index, _)| index).collect())
}

fn filters_of(sheet: Sheet<'_>, circuits: &[usize]) -> Known<Vec<Subject>> {
    let design = sheet.design();
    if let Some(missing) = design.filters.missing() {
        return Err(Gap::from(missing).into());
    }
    let own = |name: &str| {
        let found = design.circuits.items().iter().position(|c| c.id == name);
        found.is_some_and(|at| circuits.contains(&at))
    };
    let of = |(index, filter): (usize, &Filter)| match filter.circuit.name() {
        Some(name) => Ok(own(name).then(|| Subject::nth(About::Filter, index))),
        None => none_or(Gap::from(filter.circuit.missing())),
    };
    let each: Vec<Known<Option<Subject>>> = design.filters.items().iter().enumerate().map(of).collect();
    Ok(each.all()?.into_iter().flatten().collect())
}

/// A filter that is said to stand in no circuit belongs to no water.
fn none_or(gap: Gap) -> Known<Option<Subject>> {
    if gap.kind == GapKind::SaidNone { Ok(None) } else { Err(gap.into()) }
}
