//! Variances: a shortfall that somebody has accepted, why, and until when.

use crate::field::Text;
use crate::reader::Reader;

/// An accepted shortfall, or a check made elsewhere.
#[derive(Debug, Clone)]
pub struct Variance {
    /// Its id.
    pub id: String,
    /// The id of the rule.
    pub rule: Text,
    /// The key of the subject, as answers print it: `pool:main`.
    pub subject: Text,
    /// The authority, where a rule answers to several.
    pub authority: Text,
    /// Why.
    pub reason: Text,
    /// By whom.
    pub accepted_by: Text,
    /// Its last day, `2027-03-31`.
    pub until: Text,
}

impl Variance {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Variance {
            id: r.id(),
            rule: r.text("rule", "rule"),
            subject: r.text("subject", "subject"),
            authority: r.text("authority", "authority"),
            reason: r.text("reason", "reason"),
            accepted_by: r.text("accepted-by", "accepted by"),
            until: r.text("until", "until"),
        }
    }
}
