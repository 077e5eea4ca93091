//! What has been worked already: the same formula on the same lines is worked once.

use std::hash::{Hash, Hasher};

use rustc_hash::{FxBuildHasher, FxHashMap, FxHasher};

use crate::formula::AnyFormula;
use crate::gap::{GapKind, Gaps, Known};
use crate::line::LineId;

/// A formula that refused its lines.
struct Refused {
    formula: &'static dyn AnyFormula,
    lines: Vec<LineId>,
    kind: GapKind,
    gaps: Gaps,
}

/// Lines and refusals by a number made of formula and lines. Two that happen to share the number are both worked anew
/// each time, which costs time and changes nothing.
pub(crate) struct Worked {
    pub(crate) lines: FxHashMap<u64, LineId>,
    refusals: FxHashMap<u64, Refused>,
}

/// Whether two formulas are one: statics stand at different places, and so do their cards.
pub(crate) fn same(one: &'static dyn AnyFormula, other: &'static dyn AnyFormula) -> bool {
    std::ptr::addr_eq(one, other) && std::ptr::eq(one.card(), other.card())
}

impl Worked {
    pub(crate) fn with_room(lines: usize) -> Self {
        Worked {
            lines: FxHashMap::with_capacity_and_hasher(lines, FxBuildHasher),
            refusals: FxHashMap::default(),
        }
    }

    pub(crate) fn key(formula: &'static dyn AnyFormula, lines: &[LineId]) -> u64 {
        let mut hasher = FxHasher::default();
        std::ptr::from_ref(formula).cast::<()>().addr().hash(&mut hasher);
        lines.hash(&mut hasher);
        hasher.finish()
    }

    pub(crate) fn refused(
        &self,
        key: u64,
        formula: &'static dyn AnyFormula,
        lines: &[LineId],
        kind: GapKind,
    ) -> Option<Known<LineId>> {
        let refused = self.refusals.get(&key)?;
        let alike = same(refused.formula, formula) && refused.lines == lines && refused.kind == kind;
        alike.then(|| Err(refused.gaps.clone()))
    }

    pub(crate) fn keep(
        &mut self,
        key: u64,
        formula: &'static dyn AnyFormula,
        lines: &[LineId],
        kind: GapKind,
        known: &Known<LineId>,
    ) {
        match known {
            Ok(id) => {
                self.lines.entry(key).or_insert(*id);
            }
            Err(gaps) => {
                let refused = Refused { formula, lines: lines.to_vec(), kind, gaps: gaps.clone() };
                self.refusals.entry(key).or_insert(refused);
            }
        }
    }
}
