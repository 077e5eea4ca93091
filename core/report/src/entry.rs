//! One shortfall in rows of a word and its text: what there is, what is asked and by whom, what to change and where.

use haulout_engine::Demand;
use haulout_quantity::Basis;

use crate::lever::strongest;
use crate::page::Subject;
use crate::snag::Snag;
use crate::source::Text;
use crate::spoken::written;
use crate::told::{Root, Told};

/// The entry of a shortfall.
pub(crate) fn snag<'p>(subject: &Subject<'p>, told: &Told) -> Snag<'p> {
    let card = &subject.ruleset.rules[told.rule].card;
    let by = match &told.numbers {
        Some(numbers) => format!("short by {}", numbers.printed.margin),
        None => "short".to_owned(),
    };
    let place = strongest(subject, told);
    let place = place.as_ref().map(|p| (p.start as usize, p.end as usize, written(subject.tree, p)));
    let rows = rows(subject, told);
    Snag {
        title: card.title.to_string(),
        by,
        rows,
        place,
        owed: told.owed,
        text: Some(Text::of(subject.tree)),
    }
}

/// The rows above the line of the file.
pub(crate) fn rows(subject: &Subject<'_>, told: &Told) -> Vec<(&'static str, String)> {
    let card = &subject.ruleset.rules[told.rule].card;
    let mut rows = vec![("", about(told))];
    match &told.numbers {
        Some(numbers) => {
            rows.push(("has", worked(&numbers.printed.have, told.have_step.as_deref())));
            rows.push(("asks", asks(told, &numbers.printed.asks)));
        }
        None => rows.push(("asks", card.manual.asks.to_string())),
    }
    rows.extend(told.beside.iter().map(|text| ("beside", text.clone())));
    rows.extend(told.gaps.iter().map(|gap| ("found", gap.what.clone())));
    rows.extend(weakest(told).map(|text| ("rests", text)));
    rows.extend(proof(told).map(|text| ("prove", text)));
    rows.extend(house(subject, told).map(|text| ("annex", text)));
    rows.push(("cure", card.manual.cure.to_string()));
    rows.extend(card.caution.as_ref().map(|caution| ("caution", caution.to_string())));
    if told.variance.is_some_and(|(_, expired)| expired) {
        rows.push(("variance", "one was accepted, and its last day is past".to_owned()));
    }
    let owed = if told.owed { String::new() } else { format!(", owed from the {} stage", card.stage.name()) };
    rows.push(("rule", format!("{} ({}{owed}) at {}", card.id, card.demand.name(), told.subject)));
    rows
}

/// The values and limits behind an answer that came from an annex, each with its name.
fn house(subject: &Subject<'_>, told: &Told) -> Option<String> {
    let from = |root: &Root| {
        let annex = root.annex.map(|by| subject.ruleset.annex_name(Some(by)))?;
        Some(format!("{} {} from {annex}", root.what, root.value))
    };
    let mut found: Vec<String> = told.roots.iter().filter_map(from).collect();
    found.dedup();
    (!found.is_empty()).then(|| found.join("; "))
}

/// The subject with the states it was judged in, and whether it counts yet.
fn about(told: &Told) -> String {
    let case = told.case.words().into_iter().map(str::to_owned);
    let owed = (!told.owed).then(|| "not yet owed at this stage".to_owned());
    std::iter::once(told.named.clone()).chain(case).chain(owed).collect::<Vec<_>>().join(" · ")
}

/// A number with the step that gave it, its result and its name left out: they have just been said.
fn worked(number: &str, step: Option<&str>) -> String {
    match step.and_then(brief) {
        Some(step) => format!("{number} {step}"),
        None => number.to_owned(),
    }
}

/// `t = 1.0 m3 / 0.5 m3/h = 2.0 h` gives `from` the middle, `d = 0.5 m (greatest depth: level less bed)` what is in brackets,
/// `Q = 2 m3/h, where a = 1 m and b = 1 m` the check.
pub(crate) fn brief(step: &str) -> Option<String> {
    let (_, rest) = step.split_once(" = ")?;
    if let Some((_, check)) = rest.split_once(", where ") {
        return Some(format!("where {check}"));
    }
    let bracket = rest.find(" (").filter(|at| rest.ends_with(')') && !rest[..*at].contains(" = "));
    let middle = rest.rsplit_once(" = ").map(|(middle, _)| middle);
    match (bracket, middle) {
        (Some(at), _) => Some(rest[at + 1..].to_owned()),
        (None, Some(middle)) => Some(format!("from {middle}")),
        (None, None) => None,
    }
}

fn asks(told: &Told, asks: &str) -> String {
    let asks = worked(asks, told.limit_step.as_deref());
    match &told.limit {
        Some(limit) => format!("{asks} · {} · {}", limit.source, limit.basis.name()),
        None if told.own_limit && told.limit_step.is_none() => format!("{asks} · stated in the design"),
        None => asks,
    }
}

/// What the answer rests on that is known less well than the limit itself.
fn weakest(told: &Told) -> Option<String> {
    let (basis, of_limit) = (told.basis?, told.limit.as_ref().map_or(Basis::Published, |l| l.basis));
    if basis <= of_limit {
        return None;
    }
    let root = told.roots.iter().find(|root| root.basis == basis);
    let what = root.map_or("a method", |root| root.what);
    Some(format!("partly on {what}, which is only {}", basis.name()))
}

/// What has to be proved before the numbers can be relied on.
fn proof(told: &Told) -> Option<String> {
    let mut what: Vec<&str> = told.promises.iter().map(|p| p.what).filter(|what| !what.is_empty()).collect();
    what.dedup();
    let are = if what.len() == 1 { "is" } else { "are" };
    (!what.is_empty()).then(|| format!("{} {are} declared, not measured", what.join(", ")))
}

/// How binding a rule is, for a count.
pub(crate) const fn binding(demand: Demand) -> &'static str {
    match demand {
        Demand::Shall => "required",
        Demand::Should => "recommended",
    }
}

#[cfg(test)]
mod tests {
    use super::brief;

    #[test]
    fn a_step_is_told_without_its_name_and_its_result() {
        assert_eq!(
            brief("t = 1.018 m3 / 0.4179 m3/h = 2.436 h").as_deref(),
            Some("from 1.018 m3 / 0.4179 m3/h")
        );
        assert_eq!(
            brief("d = 0.5 m (depth: level less bed; level 0.8 m)").as_deref(),
            Some("(depth: level less bed; level 0.8 m)")
        );
        assert_eq!(
            brief("Q = 2 m3/h, where h = 1 m and k = 1 m").as_deref(),
            Some("where h = 1 m and k = 1 m")
        );
        assert_eq!(
            brief("V = 2 gal(US) + 3 gal(US) = 5 gal(US)").as_deref(),
            Some("from 2 gal(US) + 3 gal(US)")
        );
        assert_eq!(brief("nothing worked"), None);
    }
}
