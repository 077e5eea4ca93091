//! Every figure of a design in every state, by name and subject, and answers with the two of a pair in one order.

use std::collections::BTreeMap;

use haulout_calc::formula::Kind;
use haulout_engine::Ruleset;
use haulout_sheet::{Book, Case, LineId, Made, Roots};

use crate::{Loaded, Said, number, said};

/// A figure: whether it is resolved to some fineness only, and its number in SI or how many gaps it has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Worked {
    /// Whether its card states a resolution, or something it rests on was constructed from a drawing.
    pub sampled: bool,
    /// The number, or the count of gaps.
    pub number: Result<f64, usize>,
}

/// All figures in all their states.
pub fn worked(loaded: &Loaded, ruleset: &Ruleset) -> BTreeMap<String, Worked> {
    let book = Book::new(&loaded.design, &ruleset.limits, &[]);
    let mut all = BTreeMap::new();
    for figure in haulout_figures::CATALOGUE {
        let card = figure.card();
        for subject in card.about.walk(&loaded.design).subjects {
            for case in Case::each(card.axes) {
                let key =
                    format!("{} {} {:?}", card.id, in_order(&subject.key(&loaded.design)), case.words());
                let line = figure.line(book.sheet(case), subject);
                let sampled =
                    card.resolution.is_some() || line.as_ref().is_ok_and(|line| built(&book, *line));
                let number = line.map(|line| number(&book, line)).map_err(|gaps| gaps.0.len());
                all.insert(key, Worked { sampled, number });
            }
        }
    }
    all
}

/// Whether a line rests on a construction, which is good to what its curves are flattened to.
fn built(book: &Book<'_>, line: LineId) -> bool {
    let construction = |id: &LineId| match book.record(*id).made {
        Made::Worked(formula) => formula.card().kind == Kind::Construction,
        _ => false,
    };
    Roots::below(book, &[line]).iter().any(construction)
}

/// What a review says, the two of a pair in the order of their names.
pub fn answers(loaded: &Loaded, ruleset: &Ruleset) -> BTreeMap<String, Said> {
    let said = said(loaded, ruleset, &[]);
    said.into_iter().map(|(key, one)| (in_order(&key), one)).collect()
}

/// The words of a key with the parts of `pool:b+pool:a` sorted.
fn in_order(key: &str) -> String {
    let word = |word: &str| {
        let mut parts: Vec<&str> = word.split('+').collect();
        parts.sort_unstable();
        parts.join("+")
    };
    key.split(' ').map(word).collect::<Vec<_>>().join(" ")
}
