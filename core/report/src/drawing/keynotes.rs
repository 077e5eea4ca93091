//! Keynotes: a number for every shortfall, as on the page of the review, at the place of what falls short.

use haulout_calc::geometry::Point;
use haulout_engine::Ruleset;

use super::plan::Plan;
use crate::page::ranked;
use crate::told::Told;

/// One shortfall.
pub(super) struct Keynote {
    /// As on the page.
    pub(super) number: usize,
    /// Its title, by how much, about what.
    pub(super) lines: Vec<String>,
    /// Where it is; none for what has no place in plan.
    pub(super) at: Option<Point>,
}

/// Numbers that belong to one place.
pub(super) struct Balloon {
    pub(super) at: Point,
    pub(super) numbers: Vec<usize>,
}

/// The keynotes in the order of the page.
pub(super) fn keynotes(plan: &Plan, ruleset: &Ruleset, answers: &[Told]) -> Vec<Keynote> {
    let places = plan.places();
    let one = |(at, told): (usize, &&Told)| {
        let card = &ruleset.rules[told.rule].card;
        let found = parts(&told.subject).find_map(|id| Some((id, *places.get(id)?)));
        let about = told.subject.replace('+', " with ");
        let about = match found.map(|(id, _)| plan.aliases.get(id)) {
            None => format!("{about} (no place in plan)"),
            Some(Some(stand_in)) => format!("{about}, shown at {stand_in}"),
            Some(None) => about,
        };
        let by = told.numbers.as_ref().map(|n| {
            format!("has {}, asks {}, short by {}", n.printed.have, n.printed.asks, n.printed.margin)
        });
        let lines = [Some(card.title.to_string()), Some(about), by].into_iter().flatten().collect();
        Keynote { number: at + 1, lines, at: found.map(|(_, at)| at) }
    };
    ranked(ruleset, answers).iter().enumerate().map(one).collect()
}

/// The ids in the key of a subject: `pool:main+group:sliders`, `reference:main.space:side`.
fn parts(key: &str) -> impl Iterator<Item = &str> {
    key.split('+').filter_map(|part| part.split(':').nth(1)).map(|id| id.split('.').next().unwrap_or(id))
}

/// Those with a place, place by place.
pub(super) fn balloons(keynotes: &[Keynote]) -> Vec<Balloon> {
    let mut balloons: Vec<Balloon> = Vec::new();
    for keynote in keynotes {
        let Some(at) = keynote.at else { continue };
        match balloons.iter_mut().find(|b| b.at == at) {
            Some(balloon) => balloon.numbers.push(keynote.number),
            None => balloons.push(Balloon { at, numbers: vec![keynote.number] }),
        }
    }
    balloons
}

#[cfg(test)]
mod tests {
    use super::parts;

    #[test]
    fn ids_are_found_in_the_keys_of_subjects() {
        let ids = |key| parts(key).collect::<Vec<_>>();
        assert_eq!(ids("pool:main+group:sliders"), ["main", "sliders"]);
        assert_eq!(ids("reference:main.space:side"), ["main"]);
        assert_eq!(ids("whole"), Vec::<&str>::new());
    }
}
