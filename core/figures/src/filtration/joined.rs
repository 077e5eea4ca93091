//! Joined water: pools that circuits join are one water, with the animals over it and the filters in it.

use std::sync::Arc;

use haulout_model::{About, Reference, Subject};
use haulout_sheet::{Figure, FigureCard, Gap, GapKind, Gaps, Known, Sheet};

use crate::pool::pool;

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

/// The pools of the water a pool belongs to.
///
/// # Errors
/// A gap where circuits, or what one of them serves, are not stated.
pub(crate) fn joined_pools(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let (pools, _) = reached(sheet, at)?;
    Ok(pools.into_iter().map(|pool| Subject::nth(About::Pool, pool)).collect())
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
    let design = sheet.design();
    if let Some(missing) = design.animals.missing() {
        return none_or(Gap::from(missing));
    }
    let spaces: Vec<&str> =
        pools.iter().filter_map(|p| pool(sheet, Subject::nth(About::Pool, *p)).space.name()).collect();
    let lives = |names: &[Reference]| names.iter().any(|name| spaces.contains(&name.name()));
    let mut gaps: Option<Gaps> = None;
    for group in design.animals.items().iter().filter(|g| lives(g.spaces.items())) {
        if let Some(gap) = group.feeds.missing().map(Gap::from)
            && gap.kind != GapKind::SaidNone
        {
            let gap = Gaps::from(gap);
            gaps = Some(gaps.map_or(gap.clone(), |g| g.and(gap)));
        }
    }
    if let Some(gaps) = gaps {
        return Err(gaps);
    }
    let fed = design.feeds().enumerate();
    let over = fed.filter(|(_, (group, _))| lives(design.animals.items()[*group].spaces.items()));
    Ok(over.map(|(index, _)| index).collect())
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
    let filters = design.filters.items().iter().enumerate();
    let joined = filters.filter(|(_, f)| f.circuit.name().is_some_and(own));
    Ok(joined.map(|(index, _)| Subject::nth(About::Filter, index)).collect())
}

fn none_or(gap: Gap) -> Known<Vec<usize>> {
    if gap.kind == GapKind::SaidNone { Ok(Vec::new()) } else { Err(gap.into()) }
}
