//! Weirs and lips: what runs over a crest at a head, and the head that a flow needs.

use haulout_quantity::si::{Angle, Length, Ratio, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::{G, above_zero, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};
use crate::zero::crossing;

/// Coefficient of a sharp crest over the full width of its channel: 3.33 in feet and cubic feet a second.
pub const SHARP: f64 = 0.622_684;

/// Coefficient of a rounded or broad crest, over which water passes at its critical depth.
pub const ROUND: f64 = 0.577_350_269_189_625_8;

const FRANCIS: &str = "Francis, as the Water Measurement Manual of the US Bureau of Reclamation gives it: 3.33 L H^1.5 in feet, as a share of the flow without losses";

const fn card(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
    source: &'static str,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind,
        basis: Basis::Reported,
        source,
        range: "a free overfall: water below stands lower than the crest; heads from about 5 mm, below which water clings",
    }
}

/// What runs over a crest as wide as its channel.
pub static FLOW_OVER: Formula<(Ratio, Length, Length), VolumeRate> = Formula {
    card: &card(
        "flow over a crest",
        "Q",
        "C × 2 / 3 × sqrt(2 × 9.80665 m/s2) × b × h^1.5",
        &["C", "b", "h"],
        Kind::Closed,
        FRANCIS,
    ),
    run: |(c, width, head)| {
        let h = not_below_zero(head.value, "the head over the crest")?;
        Ok(VolumeRate::from_si(over(c.value, width.value, h)))
    },
};

/// The head a flow needs over such a crest.
pub static HEAD_OVER: Formula<(Ratio, Length, VolumeRate), Length> = Formula {
    card: &card(
        "head over a crest",
        "h",
        "(Q / (C × 2 / 3 × sqrt(2 × 9.80665 m/s2) × b))^(2 / 3)",
        &["C", "b", "Q"],
        Kind::Closed,
        FRANCIS,
    ),
    run: |(c, width, flow)| {
        let q = not_below_zero(flow.value, "the flow over the crest")?;
        let unit = above_zero(over(c.value, width.value, 1.0), "the flow over the crest at a head of 1 m")?;
        Ok(Length::from_si(libm::pow(q / unit, 2.0 / 3.0)))
    },
};

/// What runs over a crest narrower than its channel: each end takes a tenth of the head off the width.
pub static FLOW_CONTRACTED: Formula<(Ratio, Length, Length), VolumeRate> = Formula {
    card: &card(
        "flow over a contracted crest",
        "Q",
        "C × 2 / 3 × sqrt(2 × 9.80665 m/s2) × (b - 0.2 × h) × h^1.5",
        &["C", "b", "h"],
        Kind::Closed,
        "Francis with two contractions: 3.33 (L - 0.2 H) H^1.5 in feet",
    ),
    run: |(c, width, head)| {
        let h = not_below_zero(head.value, "the head over the crest")?;
        within_a_third(width.value, h)?;
        Ok(VolumeRate::from_si(over(c.value, width.value - 0.2 * h, h)))
    },
};

/// The head a flow needs over a contracted crest.
pub static HEAD_CONTRACTED: Formula<(Ratio, Length, VolumeRate), Length> = Formula {
    card: &card(
        "head over a contracted crest",
        "h",
        "h at which Q runs over",
        &["C", "b", "Q"],
        Kind::Search,
        "Francis with two contractions: 3.33 (L - 0.2 H) H^1.5 in feet",
    ),
    run: |(c, width, flow)| {
        let q = not_below_zero(flow.value, "the flow over the crest")?;
        let b = above_zero(width.value, "the width of the crest")?;
        let most = b / 3.0;
        if q > over(c.value, b - 0.2 * most, most) {
            within_a_third(b, 2.0 * most)?;
        }
        Ok(Length::from_si(rising(|h| over(c.value, b - 0.2 * h, h), q, most)))
    },
};

/// What runs through a V-notch.
pub static FLOW_NOTCH: Formula<(Angle, Length), VolumeRate> = Formula {
    card: &card(
        "flow through a V-notch",
        "Q",
        "Kindsvater and Shen: 8/15 C sqrt(2 g) tan(θ/2) (h + 0.85 mm)^2.5",
        &["θ", "h"],
        Kind::Construction,
        "Kindsvater and Shen, the form of ISO 1438, with 0.578 and 0.85 mm of the 90° notch",
    ),
    run: |(angle, head)| {
        let h = not_below_zero(head.value, "the head over the notch")?;
        Ok(VolumeRate::from_si(notch(angle.value)? * libm::pow(h + K, 2.5)))
    },
};

/// The head a flow needs in a V-notch.
pub static HEAD_NOTCH: Formula<(Angle, VolumeRate), Length> = Formula {
    card: &card(
        "head over a V-notch",
        "h",
        "h at which Q runs through",
        &["θ", "Q"],
        Kind::Construction,
        "Kindsvater and Shen, the form of ISO 1438, with 0.578 and 0.85 mm of the 90° notch",
    ),
    run: |(angle, flow)| {
        let q = not_below_zero(flow.value, "the flow through the notch")?;
        let h = libm::pow(q / notch(angle.value)?, 0.4) - K;
        Ok(Length::from_si(h.max(0.0)))
    },
};

/// Effective head over measured head of a V-notch, metres.
const K: f64 = 0.000_85;

fn notch(angle: f64) -> Result<f64, Refusal> {
    let (least, most) = (25.0_f64.to_radians(), 100.0_f64.to_radians());
    if !(least * (1.0 - 1e-9)..=most * (1.0 + 1e-9)).contains(&angle) {
        return Err(Refusal::new(format!(
            "the notch opens by {:.1} degrees, but the formula holds from 25 to 100 degrees",
            angle.to_degrees()
        )));
    }
    Ok(8.0 / 15.0 * 0.578 * (2.0 * G).sqrt() * libm::tan(angle / 2.0))
}

/// Flow over a crest without contraction, m³/s.
pub(super) fn over(c: f64, width: f64, head: f64) -> f64 {
    c * 2.0 / 3.0 * (2.0 * G).sqrt() * width * libm::pow(head, 1.5)
}

fn within_a_third(width: f64, head: f64) -> Result<(), Refusal> {
    if 3.0 * head <= width * (1.0 + 1e-9) {
        return Ok(());
    }
    Err(Refusal::new(format!(
        "the head over the crest would be more than a third of its {width} m, but the formula of a contracted crest ends there; make it wider"
    )))
}

/// Where a rising function of a length reaches a value, between nothing and `most`, to the last digits.
pub(super) fn rising(f: impl Fn(f64) -> f64, value: f64, most: f64) -> f64 {
    let surplus = |x: f64| f(x) - value;
    crossing(surplus, (0.0, surplus(0.0)), (most, surplus(most)))
}

#[cfg(test)]
mod tests {
    use haulout_quantity::Measure;
    use haulout_quantity::si::{Angle, Length, Ratio, VolumeRate};

    use super::{
        FLOW_CONTRACTED, FLOW_NOTCH, FLOW_OVER, HEAD_CONTRACTED, HEAD_NOTCH, HEAD_OVER, ROUND, SHARP,
    };

    const fn c(value: f64) -> Ratio {
        Ratio { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
    }

    fn m(value: f64) -> Length {
        Length::from_si(value)
    }

    #[test]
    fn heads_and_flows_are_each_others_inverse() {
        for q in [1e-4, 1e-3, 5e-3] {
            let flow = VolumeRate::from_si(q);
            let full = HEAD_OVER.work((c(SHARP), m(0.3), flow)).expect("in range");
            let back = FLOW_OVER.work((c(SHARP), m(0.3), full)).expect("in range");
            assert!((back.si() / q - 1.0).abs() < 1e-12);
            let narrow = HEAD_CONTRACTED.work((c(SHARP), m(0.3), flow)).expect("in range");
            let back = FLOW_CONTRACTED.work((c(SHARP), m(0.3), narrow)).expect("in range");
            assert!((back.si() / q - 1.0).abs() < 1e-12);
            assert!(narrow > full);
            let right = Angle::from_si(std::f64::consts::FRAC_PI_2);
            let notch = HEAD_NOTCH.work((right, flow)).expect("in range");
            let back = FLOW_NOTCH.work((right, notch)).expect("in range");
            assert!((back.si() / q - 1.0).abs() < 1e-12);
        }
        assert!(HEAD_CONTRACTED.work((c(SHARP), m(0.1), VolumeRate::from_si(0.1))).is_err());
        assert!(FLOW_CONTRACTED.work((c(SHARP), m(0.1), m(0.05))).is_err());
        assert!(HEAD_OVER.work((c(ROUND), m(0.0), VolumeRate::from_si(0.1))).is_err());
        assert!(FLOW_NOTCH.work((Angle::from_si(0.1), m(0.05))).is_err());
    }
}
