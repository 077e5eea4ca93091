//! Overflow mouths: what a pipe end takes as the water rises over its invert, alone and behind a grille.

use haulout_quantity::si::{Area, Length, Ratio, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::weir::{over, rising};
use super::{G, above_zero};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};

/// Coefficient of a sharp-edged opening.
const CONTRACTION: f64 = 0.6;

const SOURCE: &str = "an opening of coefficient 0.6 under the head at each height of it (large orifice); wholly drowned it becomes 0.6 A sqrt(2 g h)";

const fn card(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "Q",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: SOURCE,
        range: "a mouth in a wall with free fall behind it; a long or flat pipe behind it takes less",
    }
}

/// What pipe ends take without a grille before them.
pub static PIPE_MOUTHS: Formula<(Length, Length, Ratio), VolumeRate> = Formula {
    card: &card("flow into pipe ends", "n pipe ends of bore D with h over the invert", &["h", "D", "n"]),
    run: |(head, bore, count)| {
        let bore = above_zero(bore.value, "the bore of the overflow")?;
        Ok(VolumeRate::from_si(count.value * mouth(head.value, bore)))
    },
};

/// The same behind a grille of which a share is still open: the grille and the mouth share the head.
pub static PIPES_BEHIND_GRILLE: Formula<(Length, Length, Ratio, Area, Ratio), VolumeRate> = Formula {
    card: &card(
        "flow into pipe ends behind a grille",
        "n pipe ends of bore D behind a grille of area A of which s is open, h over the invert in all",
        &["h", "D", "n", "A", "s"],
    ),
    run: |(head, bore, count, area, open)| {
        let bore = above_zero(bore.value, "the bore of the overflow")?;
        behind(head.value, area.value * open.value, |h| count.value * mouth(h, bore))
    },
};

/// What runs over a crest of an overflow behind such a grille.
pub static CREST_BEHIND_GRILLE: Formula<(Length, Length, Ratio, Area, Ratio), VolumeRate> = Formula {
    card: &card(
        "flow over a crest behind a grille",
        "crest of width b and coefficient C behind a grille of area A of which s is open, h over the crest in all",
        &["h", "b", "C", "A", "s"],
    ),
    run: |(head, width, coefficient, area, open)| {
        behind(head.value, area.value * open.value, |h| over(coefficient.value, width.value, h))
    },
};

/// Behind an opening the water stands lower by what the flow needs to pass it; both are found together.
fn behind(head: f64, open: f64, inner: impl Fn(f64) -> f64) -> Result<VolumeRate, Refusal> {
    let open = above_zero(open, "the open area of the grille")?;
    if head <= 0.0 {
        return Ok(VolumeRate::from_si(0.0));
    }
    let grille = |loss: f64| CONTRACTION * open * (2.0 * G * loss).sqrt();
    let loss = rising(|loss| grille(loss) - inner(head - loss), 0.0, head);
    Ok(VolumeRate::from_si(inner(head - loss)))
}

/// Places and weights of Gauss and Legendre on 0 to 1, of the sixteenth order.
const GAUSS: [(f64, f64); 16] = [
    (0.005_299_532_504_175_0, 0.013_576_229_705_877_1),
    (0.027_712_488_463_383_7, 0.031_126_761_969_323_7),
    (0.067_184_398_806_084_1, 0.047_579_255_841_246_3),
    (0.122_297_795_822_498_5, 0.062_314_485_627_767_0),
    (0.191_061_877_798_678_1, 0.074_797_994_408_288_4),
    (0.270_991_611_171_386_3, 0.084_578_259_697_501_3),
    (0.359_198_224_610_370_5, 0.091_301_707_522_461_8),
    (0.452_493_745_081_181_3, 0.094_725_305_227_534_3),
    (0.547_506_254_918_818_8, 0.094_725_305_227_534_3),
    (0.640_801_775_389_629_5, 0.091_301_707_522_461_8),
    (0.729_008_388_828_613_6, 0.084_578_259_697_501_3),
    (0.808_938_122_201_321_9, 0.074_797_994_408_288_4),
    (0.877_702_204_177_501_6, 0.062_314_485_627_767_0),
    (0.932_815_601_193_915_9, 0.047_579_255_841_246_3),
    (0.972_287_511_536_616_3, 0.031_126_761_969_323_7),
    (0.994_700_467_495_825, 0.013_576_229_705_877_1),
];

/// Flow into one round opening, m³/s: the sum of width times speed over its wetted height.
fn mouth(head: f64, bore: f64) -> f64 {
    if head <= 0.0 {
        return 0.0;
    }
    let radius = 0.5 * bore;
    let top = if head < bore { libm::acos(1.0 - head / radius) } else { std::f64::consts::PI };
    // The height runs as the angle θ from the invert, and the angle as 1 - u^2, so that nothing is steep at the surface.
    let at = |u: f64| {
        let angle = top * (1.0 - u * u);
        let (sine, height) = (libm::sin(angle), radius * (1.0 - libm::cos(angle)));
        2.0 * radius * radius * sine * sine * (2.0 * G * (head - height).max(0.0)).sqrt() * top * 2.0 * u
    };
    CONTRACTION * GAUSS.iter().map(|(u, weight)| weight * at(*u)).sum::<f64>()
}

#[cfg(test)]
mod tests {
    use haulout_quantity::Measure;
    use haulout_quantity::si::{Area, Length, Ratio};

    use super::{PIPE_MOUTHS, PIPES_BEHIND_GRILLE, mouth};

    /// scipy 1.x, integrate.quad of 2 sqrt(y (D - y)) sqrt(2 g (h - y)) over the wetted height, times 0.6.
    #[test]
    fn a_mouth_takes_what_quadrature_gives() {
        let cases = [
            (0.03, 0.07, 0.000_439_458_252_815_991_6),
            (0.06, 0.07, 0.001_473_299_094_426_742_2),
            (0.07, 0.07, 0.001_837_259_128_959_223),
            (0.12, 0.07, 0.002_965_171_545_409_529),
            (0.10, 0.05, 0.001_423_800_812_017_521_8),
        ];
        for (head, bore, flow) in cases {
            assert!((mouth(head, bore) / flow - 1.0).abs() < 1e-7, "{head}: {}", mouth(head, bore));
        }
    }

    #[test]
    fn a_wide_grille_takes_nothing_and_a_narrow_one_nearly_all() {
        let (head, bore, two) = (Length::from_si(0.06), Length::from_si(0.07), Ratio::from_si(2.0));
        let half = Ratio::from_si(0.5);
        let flow = |area: f64| {
            let area = Area::from_si(area);
            PIPES_BEHIND_GRILLE.work((head, bore, two, area, half)).expect("in range").si()
        };
        let alone = PIPE_MOUTHS.work((head, bore, two)).expect("in range").si();
        assert!((flow(100.0) / alone - 1.0).abs() < 1e-6);
        // Half of 2 cm2 under 60 mm alone: 0.6 × 0.0001 m2 × sqrt(2 × 9.80665 × 0.06) = 6.5090e-5 m3/s at most.
        assert!(flow(2e-4) < 6.509_1e-5 && flow(2e-4) > 6.0e-5, "{}", flow(2e-4));
        assert!(PIPES_BEHIND_GRILLE.work((head, bore, two, Area::from_si(0.0), half)).is_err());
    }
}
