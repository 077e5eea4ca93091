//! Limits by the code a design is held to for guards.

use haulout_sheet::{Gap, GapKind, Known, Limit, Sheet};

/// The limit of the code in question.
///
/// # Errors
/// A gap where the rule has no limit of this code.
pub(super) fn by_code(sheet: Sheet<'_>, uk: &'static Limit, us: &'static Limit) -> Known<&'static Limit> {
    let chosen = sheet.authority();
    let limit = [uk, us].into_iter().find(|l| chosen.is_some_and(|a| a.id == l.row));
    limit.ok_or_else(|| {
        let what = "the rule has no limit of this code for guards";
        Gap::of(GapKind::NoAuthority, what, Vec::new()).into()
    })
}
