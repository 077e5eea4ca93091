//! Answers told no further than a page shows them: most of them are met and only counted.

use haulout_document::Tree;
use haulout_engine::{Outcome, Review};

use crate::schedule::tightest;
use crate::told::{Told, counted, explained, outlined};

/// Tells as much as the terminal page shows: a shortfall with all that explains it, what could not be judged with what is missing,
/// what is tightest by its name; the rest is counted.
pub fn tell_for_page(review: &Review<'_>, tree: &Tree) -> Vec<Told> {
    let tell = |outcome| match outcome {
        Outcome::Short => explained,
        Outcome::NotAssessed | Outcome::Variance => outlined,
        Outcome::Met | Outcome::DoesNotApply => counted,
    };
    let mut told: Vec<Told> =
        review.answers.iter().map(|answer| tell(answer.outcome)(review, tree, answer)).collect();
    for (_, at) in tightest(&told) {
        told[at] = outlined(review, tree, &review.answers[at]);
    }
    told
}

/// Tells as much as a table of all answers shows: the working stays empty, what a shortfall is explained with is there only for one.
pub fn tell_for_table(review: &Review<'_>, tree: &Tree) -> Vec<Told> {
    let tell = |outcome| if outcome == Outcome::Short { explained } else { outlined };
    review.answers.iter().map(|answer| tell(answer.outcome)(review, tree, answer)).collect()
}
