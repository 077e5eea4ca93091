//! What holds an animal in: how far it reaches, how high a wall is for it, what its body passes through.

use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio};

use crate::formula::{Formula, FormulaCard, Kind, Refusal};

const KEEPERS: &str = "keepers' practice";

const fn card(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    basis: Basis,
    source: &'static str,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Closed,
        basis,
        source,
        range: "lengths above nothing",
    }
}

/// How far an animal reaches sideways from where it stands: so many lengths. The kind of body decides which length.
pub static REACH: Formula<(Ratio, Length, Ratio), Length> = Formula {
    card: &card("reach sideways", "r", "k × L", &["k", "L", "body"], Basis::CommonPractice, KEEPERS),
    run: |(lengths, length, _body)| Ok(lengths * length),
};

/// The level of the back of a tank-mate that stands at the highest place.
pub static ON_A_BACK: Formula<(Length, Length), Length> = Formula {
    card: &card(
        "level of a tank-mate's back",
        "z_back",
        "z + h",
        &["z", "h"],
        Basis::CommonPractice,
        "keepers' practice: animals stand on each other",
    ),
    run: |(level, height)| Ok(level + height),
};

/// Height left of a wall that is smooth all the way, above the highest footing.
pub static HEIGHT_SMOOTH: Formula<(Length, Length, u16), Length> = Formula {
    card: &card(
        "height of a smooth barrier above the highest footing",
        "h_eff",
        "z_top - z_foot",
        &["z_top", "z_foot", "face"],
        Basis::CommonPractice,
        KEEPERS,
    ),
    run: |(top, foot, _face)| Ok(top - foot),
};

/// Height left of a wall that is smooth only from a level up: below it the animal climbs.
pub static HEIGHT_SMOOTH_FROM: Formula<(Length, Length, Length), Length> = Formula {
    card: &card(
        "height of the smooth part of a barrier above the highest footing",
        "h_eff",
        "z_top - max(z_foot, z_smooth)",
        &["z_top", "z_foot", "z_smooth"],
        Basis::CommonPractice,
        "keepers' practice: what is rough or mesh is climbed; only what is smooth counts",
    ),
    run: |(top, foot, smooth)| Ok(top - if foot > smooth { foot } else { smooth }),
};

/// The option of a barrier's face that is mesh.
const MESH: u16 = 2;

/// Height left of a rough wall: nothing for an animal that climbs, and nothing on mesh for any.
pub static HEIGHT_ROUGH: Formula<(Length, Length, u16, Ratio), Length> = Formula {
    card: &FormulaCard {
        name: "height of a rough barrier above the highest footing",
        result: "h_eff",
        text: "(z_top - z_foot) × (1 - climbs); 0 on mesh",
        symbols: &["z_top", "z_foot", "face", "climbs"],
        kind: Kind::Pick,
        basis: Basis::CommonPractice,
        source: "keepers' practice: height is void without a smooth face, and mesh is climbed by all",
        range: "lengths above nothing",
    },
    run: |(top, foot, face, climbs)| {
        let held = if face == MESH { 0.0 } else { 1.0 - climbs.value };
        Ok((top - foot) * held)
    },
};

/// Height a turtle is held by: shell lengths and an allowance, never less than a least height.
pub static TURTLE_WALL: Formula<(Ratio, Length, Length, Length, Ratio), Length> = Formula {
    card: &card(
        "barrier height that holds a turtle",
        "h_ask",
        "max(k × L + c, h_min)",
        &["k", "L", "c", "h_min", "body"],
        Basis::CommonPractice,
        "keepers' practice: twice the shell length and a hand's breadth",
    ),
    run: |(lengths, length, allowance, least, _body)| {
        let asked = lengths * length + allowance;
        Ok(if asked > least { asked } else { least })
    },
};

/// A share of a length.
pub static SHARE_OF: Formula<(Ratio, Length), Length> = Formula {
    card: &card("share of a length", "a", "k × b", &["k", "b"], Basis::Published, "arithmetic"),
    run: |(share, length)| Ok(share * length),
};

/// One level over another.
pub static OVER: Formula<(Length, Length), Length> = Formula {
    card: &card(
        "height of one level over another",
        "h",
        "z_1 - z_0",
        &["z_1", "z_0"],
        Basis::Published,
        "arithmetic",
    ),
    run: |(upper, lower)| Ok(upper - lower),
};

/// The highest of the levels in a list; the first is the floor and is always there.
///
/// # Errors
/// A [`Refusal`] where the list is empty.
pub fn highest(levels: impl Iterator<Item = f64>) -> Result<f64, Refusal> {
    let found = levels.fold(f64::NEG_INFINITY, f64::max);
    if found.is_finite() {
        Ok(found)
    } else {
        Err(Refusal::new("there is nothing to stand on; state the floor level of the space"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::length::meter;
    use uom::si::ratio::ratio;

    fn m(metres: f64) -> Length {
        Length::new::<meter>(metres)
    }

    fn near(found: Result<Length, Refusal>, metres: f64) {
        let found = found.expect("the numbers lie within the range").get::<meter>();
        assert!((found - metres).abs() < 1e-12, "{found} and {metres}");
    }

    /// By hand. A turtle of 24 cm: 2 × 0.24 + 0.10 = 0.58 m. One of 8 cm: 0.26 m, held to 0.30 m.
    #[test]
    fn a_turtles_wall() {
        let body = Ratio::new::<ratio>(0.0);
        let two = Ratio::new::<ratio>(2.0);
        near(TURTLE_WALL.work((two, m(0.24), m(0.10), m(0.30), body)), 0.58);
        near(TURTLE_WALL.work((two, m(0.08), m(0.10), m(0.30), body)), 0.30);
    }

    /// By hand. Wall to +1.50, rock at +0.88 and a back of 8.5 cm: footing +0.965. Smooth: 0.535 m. Smooth from +1.10:
    /// 0.40 m. Rough: nothing for a climber, 0.535 m for one that does not climb, nothing on mesh.
    #[test]
    fn a_wall_is_as_high_as_it_is_smooth() {
        let foot = ON_A_BACK.work((m(0.88), m(0.085))).expect("a sum");
        near(Ok(foot), 0.965);
        near(HEIGHT_SMOOTH.work((m(1.50), foot, 0)), 0.535);
        near(HEIGHT_SMOOTH_FROM.work((m(1.50), foot, m(1.10))), 0.40);
        near(HEIGHT_SMOOTH_FROM.work((m(1.50), foot, m(0.82))), 0.535);
        near(HEIGHT_ROUGH.work((m(1.50), foot, 1, Ratio::new::<ratio>(1.0))), 0.0);
        near(HEIGHT_ROUGH.work((m(1.50), foot, 1, Ratio::new::<ratio>(0.0))), 0.535);
        near(HEIGHT_ROUGH.work((m(1.50), foot, 2, Ratio::new::<ratio>(0.0))), 0.0);
    }

    /// By hand. A shell of 24 cm reaches 0.24 m at one length; a dragon of 0.70 m reaches 1.05 m at one and a half.
    #[test]
    fn reach_and_shares() {
        near(REACH.work((Ratio::new::<ratio>(1.0), m(0.24), Ratio::new::<ratio>(0.0))), 0.24);
        near(REACH.work((Ratio::new::<ratio>(1.5), m(0.70), Ratio::new::<ratio>(1.0))), 1.05);
        near(SHARE_OF.work((Ratio::new::<ratio>(0.5), m(0.04))), 0.02);
        near(OVER.work((m(1.1), m(-0.2))), 1.3);
        assert!(highest([].into_iter()).is_err());
    }
}
