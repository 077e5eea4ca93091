//! The lines round water that the rules of the electrical family measure by: distances from the limits of the ruleset.

use haulout_calc::geometry::{Outline, join, parallel};
use haulout_engine::Ruleset;
use haulout_sheet::Limit;

use super::gather::Gathering;
use super::plan::Offset;

/// Pools with such lines; many pools have one hall full of them.
const MOST_POOLS: usize = 24;
/// Sides an outline may have for them.
const MOST_SIDES: usize = 1_500;

/// A line of a family: the limits that add up to its distance, and its words.
pub(super) struct Ring {
    pub(super) authority: &'static str,
    pub(super) limits: &'static [(&'static str, &'static str)],
    words: &'static str,
    letters: &'static str,
}

const ZONE: &str = "mains-outside-zone-one";
/// The class for which zone 2 is not drawn, as the rules have it.
const NOT_ENTERED: &str = "fountain basin, nobody enters while energised";

/// The lines, nearest first.
pub(super) const RINGS: &[Ring] = &[
    Ring { authority: "iec-702", limits: &[(ZONE, "zone-one")], words: "zone 1", letters: "zone 1" },
    Ring {
        authority: "iec-702",
        limits: &[(ZONE, "zone-one"), (ZONE, "zone-two")],
        words: "zone 2",
        letters: "zone 2",
    },
    Ring {
        authority: "nec-680",
        limits: &[("equipment-five-feet-from-water", "least")],
        words: "equipment",
        letters: "",
    },
    Ring {
        authority: "nec-680",
        limits: &[("receptacle-six-feet-from-water", "least")],
        words: "receptacles",
        letters: "",
    },
    Ring {
        authority: "nec-680",
        limits: &[("residual-current-protection", "others")],
        words: "GFCI outlets",
        letters: "",
    },
    Ring {
        authority: "nec-680",
        limits: &[("residual-current-protection", "sockets")],
        words: "GFCI sockets",
        letters: "",
    },
];

impl Gathering<'_> {
    /// The lines of the families the design is held to, round the rim of every pool.
    pub(super) fn near_water(&mut self, ruleset: &Ruleset) {
        let design = self.design();
        let held = |ring: &&Ring| {
            design.project.held_to.electrical.items().iter().any(|r| r.name() == ring.authority)
        };
        let rings: Vec<&Ring> = RINGS.iter().filter(held).collect();
        let classed = design.electrical.classed.word();
        if rings.is_empty() || self.plan.basins.is_empty() {
            return;
        }
        if classed == Some("other water") {
            self.lacking::<()>("zones round water", "it is classed as other water, which has none");
            return;
        }
        let rims = self.rims();
        let mut rank = 0;
        for ring in rings {
            if ring.letters == "zone 2" && classed == Some(NOT_ENTERED) {
                self.lacking::<()>("zone 2", "a fountain that nobody enters is taken to have none");
                continue;
            }
            self.ring(ring, ruleset, &rims, rank);
            rank += 1;
        }
    }

    fn rims(&mut self) -> Vec<Outline> {
        let all: Vec<Outline> = self.plan.basins.iter().map(|b| b.outline.clone()).collect();
        let count = all.len();
        let few = all.into_iter().filter(|o| o.sides().count() <= MOST_SIDES).take(MOST_POOLS);
        let rims: Vec<Outline> = few.collect();
        if rims.len() < count {
            let why = format!("{} pools are too many or too finely drawn for them", count - rims.len());
            self.lacking::<()>("zones round water", &why);
        }
        rims
    }

    fn ring(&mut self, ring: &Ring, ruleset: &Ruleset, rims: &[Outline], rank: usize) {
        let value =
            |(rule, name): &(&str, &str)| limit(ruleset, rule, name).map(|l| ruleset.limits.value(l).value);
        let Some(by) = ring.limits.iter().map(value).sum::<Option<f64>>() else {
            self.lacking::<()>(ring.words, "the rule that measures it does not take part");
            return;
        };
        let outlines: Vec<Outline> = rims.iter().filter_map(|rim| parallel(rim, by).ok()).collect();
        let distance = self.tongue.length(by);
        let letters = format!("{} {distance}", ring.letters).trim_start().to_owned();
        let words = format!("{}, {distance} off rim", ring.words);
        // Pools near each other have one line round them all.
        let outlines = join(&outlines).map_or(outlines, |joined| vec![joined]);
        self.plan.offsets.push(Offset { words, letters, rank, outlines });
    }
}

/// A limit of a rule that takes part.
pub(super) fn limit<'r>(ruleset: &'r Ruleset, rule: &str, name: &str) -> Option<&'r Limit> {
    let rule = &ruleset.rules[ruleset.position(rule)?];
    rule.limits.iter().copied().find(|l| l.name == name)
}

#[cfg(test)]
mod tests {
    use haulout_engine::Ruleset;

    use super::{RINGS, limit};

    /// 2.0 m and 3.5 m: IEC 60364-7-702:2010 zones 1 and 2; 5, 6, 10 and 20 ft: NFPA 70 (2020) article 680, as the sources
    /// of the rules' limits have them.
    #[test]
    fn the_rules_have_the_limits_that_the_lines_are_drawn_by() {
        let ruleset = Ruleset::new(haulout_rules::built_in());
        let far = |ring: &super::Ring| -> f64 {
            let one = |(rule, name): &(&str, &str)| limit(&ruleset, rule, name).map_or(f64::NAN, |l| l.value);
            ring.limits.iter().map(one).sum()
        };
        let found: Vec<f64> = RINGS.iter().map(far).collect();
        for (found, expected) in found.iter().zip([2.0, 3.5, 1.524, 1.8288, 3.048, 6.096]) {
            assert!((found - expected).abs() < 1e-12, "{found} and {expected}");
        }
    }
}
