//! What the rules of this chapter share: the code family in question, zones, the limits they are measured by, protection.

use haulout_engine::Check;
use haulout_figures::item::supply::{self, Trips};
use haulout_figures::item::zone::ZoneLimits;
use haulout_model::Subject;
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Known, Limit, Line, Sheet, Tighter};

/// The word of caution of every rule here.
pub(super) const CAUTION: &str = "A screening figure. Electrical work near water is for licensed electricians under the local code; they class the water and have the last word.";

/// The families of codes these rules know.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Family {
    /// IEC 60364-7-702 and its national editions.
    Iec,
    /// NFPA 70 article 680.
    Nec,
}

/// The family of the authority in question.
pub(super) fn family(sheet: Sheet<'_>) -> Option<Family> {
    match sheet.authority()?.id {
        "iec-702" => Some(Family::Iec),
        "nec-680" => Some(Family::Nec),
        _ => None,
    }
}

/// The rule has nothing to say under this authority.
pub(super) const fn silent() -> Check {
    Check::AllOf(Vec::new())
}

/// `then` where `applies` is yes.
pub(super) fn where_yes(applies: Known<Line<bool>>, then: Known<Check>) -> Known<Check> {
    Ok(Check::only_if(applies.map(Check::holds), then))
}

/// What trips the circuit trips at most at the limit; a circuit that is said to have nothing falls short.
pub(super) fn trips_at_most(sheet: Sheet<'_>, at: Subject, limit: &'static Limit) -> Known<Check> {
    Ok(match supply::trips(sheet, at)? {
        Trips::At(current) => Check::at_most(current, sheet.limit(limit)),
        Trips::Never(no) => Check::holds(no),
    })
}

/// A limit that is a length; `source` names where it stands.
pub(super) const fn length(
    rule: &'static str,
    name: &'static str,
    what: &'static str,
    value: f64,
    unit: &'static str,
    source: &'static str,
) -> Limit {
    Limit {
        rule,
        name,
        row: "",
        what,
        value,
        unit,
        dimension: Dimension::LENGTH,
        tighter: Tighter::Higher,
        basis: Basis::Reported,
        source,
    }
}

const GUIDES: &str =
    "IEC 60364-7-702:2010, as described in guides to BS 7671:2018 section 702 and to CEI 64-8/7 section 702";
const ZONE_RULE: &str = "mains-outside-zone-one";

pub(super) static FIRST: Limit =
    length(ZONE_RULE, "zone-one", "width of zone 1 from the rim", 2.0, "m", GUIDES);
pub(super) static SECOND: Limit = length(
    ZONE_RULE,
    "zone-two",
    "width of zone 2 beyond zone 1; a fountain nobody enters has none (reported; one guide draws it for fountains too)",
    1.5,
    "m",
    GUIDES,
);
pub(super) static HEIGHT: Limit =
    length(ZONE_RULE, "zone-height", "height of zones over rim and floor", 2.5, "m", GUIDES);

/// The zones of the IEC family.
pub(super) const ZONES: ZoneLimits = ZoneLimits { first: &FIRST, second: &SECOND, height: &HEIGHT };

const CODE: &str = "NFPA 70 (2020) article 100, as in the 2022 California Electrical Code: low-voltage contact limit, sine or continuous DC";
const CONTACT_RULE: &str = "residual-current-protection";

const fn contact(name: &'static str, what: &'static str, value: f64) -> Limit {
    Limit {
        rule: CONTACT_RULE,
        name,
        row: "",
        what,
        value,
        unit: "V",
        dimension: Dimension::VOLTAGE,
        tighter: Tighter::Lower,
        basis: Basis::Published,
        source: CODE,
    }
}

pub(super) static CONTACT_AC: Limit = contact("contact-ac", "contact limit, AC", 15.0);
pub(super) static CONTACT_DC: Limit = contact("contact-dc", "contact limit, DC", 30.0);

/// Whether an item is above the contact limit of the NEC.
pub(super) fn above_contact(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    supply::above_contact_limit(sheet, at, &CONTACT_AC, &CONTACT_DC)
}
