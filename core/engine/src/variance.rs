//! Which variance covers an answer on a day.

use haulout_model::Design;

/// The variance that names this rule, subject and authority, and whether its last day is past.
pub(crate) fn covering(
    design: &Design,
    rule: &str,
    subject: impl Fn() -> String,
    authority: Option<&str>,
    on: &str,
) -> Option<(usize, bool)> {
    let mut key = None;
    let mut names = |variance: &haulout_model::variance::Variance| {
        // Hardly any answer has a variance of its rule: the subject is put into words for these alone.
        if variance.rule.words() != Some(rule) {
            return false;
        }
        let same_authority = match variance.authority.words() {
            Some(words) => Some(words) == authority,
            None => true,
        };
        let subject: &String = key.get_or_insert_with(&subject);
        variance.subject.words() == Some(subject) && same_authority
    };
    let found: Vec<(usize, bool)> = design
        .variances
        .items()
        .iter()
        .enumerate()
        .filter(|(_, v)| names(v))
        // Dates of the form 2027-03-31 sort as they read; one without a last day is not valid on any.
        .map(|(at, v)| (at, v.until.words().is_none_or(|until| until < on)))
        .collect();
    found.iter().copied().find(|(_, expired)| !expired).or(found.first().copied())
}
