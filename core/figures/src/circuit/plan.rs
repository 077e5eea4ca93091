//! How the runs of a circuit follow one another: in a row, and side by side where several follow the same one.

use haulout_model::State;
use haulout_model::circuit::Circuit;
use haulout_sheet::{Gap, GapKind, Known};

/// One place of a circuit, in the order of the water.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Place {
    /// A run that all the water passes.
    Alone(usize),
    /// Runs side by side, each branch its runs in a row.
    Beside(Vec<Vec<usize>>),
}

/// The places of a circuit; a run that does not say what it follows follows the one before it in the list.
///
/// # Errors
/// A gap where a name leads nowhere, or where runs meet in a way that is neither a row nor a fork that joins again.
pub(super) fn places(circuit: &Circuit) -> Known<Vec<Place>> {
    let runs = circuit.runs.items();
    let before: Vec<Vec<usize>> = (0..runs.len()).map(|i| before(circuit, i)).collect::<Known<_>>()?;
    let joined = Joined { before };
    let found = joined.walk();
    let seat = circuit.runs.seat();
    found.ok_or_else(|| {
        let what = "the runs meet in a way that is neither a row nor branches that begin and end together";
        Gap::at(GapKind::Unsound, what, seat.origin).into()
    })
}

fn before(circuit: &Circuit, at: usize) -> Known<Vec<usize>> {
    let runs = circuit.runs.items();
    match runs[at].after.state() {
        State::Given(names) => {
            let find = |name: &haulout_model::Reference| {
                let found = runs.iter().position(|run| run.id == name.name());
                found.ok_or_else(|| {
                    let what = format!("the circuit has no run \"{}\"", name.name());
                    Gap::at(GapKind::LeadsNowhere, what, name.seat().origin).into()
                })
            };
            names.iter().map(find).collect()
        }
        State::None => Ok(Vec::new()),
        State::Absent | State::Undecided => Ok(at.checked_sub(1).into_iter().collect()),
    }
}

struct Joined {
    before: Vec<Vec<usize>>,
}

impl Joined {
    fn after(&self, run: usize) -> Vec<usize> {
        (0..self.before.len()).filter(|i| self.before[*i].contains(&run)).collect()
    }

    fn walk(&self) -> Option<Vec<Place>> {
        let mut group: Vec<usize> = (0..self.before.len()).filter(|i| self.before[*i].is_empty()).collect();
        let (mut places, mut seen) = (Vec::new(), 0);
        while !group.is_empty() && seen < self.before.len() {
            let ends: Vec<usize> = if let [only] = group[..] {
                places.push(Place::Alone(only));
                seen += 1;
                vec![only]
            } else {
                let branches: Vec<Vec<usize>> = group.iter().map(|run| self.chain(*run)).collect();
                seen += branches.iter().map(Vec::len).sum::<usize>();
                let ends = branches.iter().filter_map(|b| b.last().copied()).collect();
                places.push(Place::Beside(branches));
                ends
            };
            group = self.following(&ends)?;
        }
        (seen == self.before.len() && group.is_empty()).then_some(places)
    }

    /// The runs in a row that begin with one.
    fn chain(&self, first: usize) -> Vec<usize> {
        let mut chain = vec![first];
        while chain.len() <= self.before.len() {
            let last = chain[chain.len() - 1];
            match self.after(last)[..] {
                [next] if self.before[next] == [last] => chain.push(next),
                _ => break,
            }
        }
        chain
    }

    /// What follows some ends together: nothing, or runs that follow exactly these.
    fn following(&self, ends: &[usize]) -> Option<Vec<usize>> {
        let next = self.after(ends[0]);
        let same = ends.iter().all(|end| self.after(*end) == next);
        let exactly = |run: &usize| {
            self.before[*run].len() == ends.len() && ends.iter().all(|end| self.before[*run].contains(end))
        };
        (same && next.iter().all(exactly)).then_some(next)
    }
}

#[cfg(test)]
mod tests {
    use super::{Joined, Place};

    fn walk(before: &[&[usize]]) -> Option<Vec<Place>> {
        Joined { before: before.iter().map(|b| b.to_vec()).collect() }.walk()
    }

    #[test]
    fn rows_and_forks_are_told_apart() {
        let row = walk(&[&[], &[0], &[1]]);
        assert_eq!(row, Some(vec![Place::Alone(0), Place::Alone(1), Place::Alone(2)]));
        let fork = walk(&[&[], &[0], &[0], &[2], &[1, 3]]);
        let beside = Place::Beside(vec![vec![1], vec![2, 3]]);
        assert_eq!(fork, Some(vec![Place::Alone(0), beside, Place::Alone(4)]));
        let two_ends = walk(&[&[], &[0], &[0]]);
        assert_eq!(two_ends, Some(vec![Place::Alone(0), Place::Beside(vec![vec![1], vec![2]])]));
        let two_suctions = walk(&[&[], &[], &[0, 1]]);
        assert_eq!(two_suctions, Some(vec![Place::Beside(vec![vec![0], vec![1]]), Place::Alone(2)]));
    }

    #[test]
    fn rings_and_cross_links_are_refused() {
        assert_eq!(walk(&[&[1], &[0]]), None);
        assert_eq!(walk(&[&[], &[0], &[0], &[1], &[1, 2]]), None);
        assert_eq!(walk(&[&[], &[0, 2], &[1]]), None);
    }
}
