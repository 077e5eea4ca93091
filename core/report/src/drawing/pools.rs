//! Pools of the plan: outlines, and the pieces of their beds with depths and slopes.

use std::sync::Arc;

use haulout_calc::geometry::Bed;
use haulout_figures::pool::bed::BED;
use haulout_model::pool::{Pool, Zone};
use haulout_model::{About, Subject};

use super::gather::{Gathering, why};
use super::plan::{Basin, Piece};

impl Gathering<'_> {
    /// Every pool with its bed.
    pub(super) fn pools(&mut self) {
        let design = self.design();
        for (at, pool) in self.first("pools", design.pools.items()).iter().enumerate() {
            let Some(outline) = self.outline(&pool.id, &pool.outline) else {
                continue;
            };
            let words = [("water", &pool.levels.water), ("rim", &pool.levels.rim)];
            let words = words.into_iter().filter_map(|(what, field)| self.level_words(what, field)).collect();
            let pieces = self.bed(at, pool);
            self.plan.basins.push(Basin { id: pool.id.clone(), outline, pieces, words });
        }
    }

    fn bed(&mut self, at: usize, pool: &Pool) -> Vec<Piece> {
        let bed = self.taken(BED.of(self.sheet(), Subject::nth(About::Pool, at)));
        let water = self.level(&pool.levels.water);
        match (bed, water) {
            (Ok(bed), Some(water)) => self.laid(&bed, water, pool),
            (Err(gaps), _) => {
                self.lacking::<()>(&format!("depth of {}", pool.id), &why(&gaps));
                self.bare(pool)
            }
            (Ok(_), None) => {
                self.lacking::<()>(&format!("depth of {}", pool.id), "its water level is not stated");
                self.bare(pool)
            }
        }
    }

    fn laid(&self, bed: &Arc<Bed>, water: f64, pool: &Pool) -> Vec<Piece> {
        let ids = std::iter::once("").chain(pool.zones.items().iter().map(|z| z.id.as_str()));
        let piece = |(laid, id): (haulout_calc::geometry::Laid<'_>, &str)| {
            let depth = water - laid.level;
            let slope = laid.slope.map(|(from, run)| (water - from, run));
            let mut words = vec![self.tongue.length(depth)];
            words.extend(slope.map(|(_, run)| format!("1 in {}", short(run))));
            Piece { id: id.to_owned(), outline: laid.outline.clone(), depth: Some(depth), slope, words }
        };
        bed.pieces().zip(ids).map(piece).collect()
    }

    /// Zones whose depths do not come together: outlines, with the depth where one is stated.
    fn bare(&mut self, pool: &Pool) -> Vec<Piece> {
        let one = |zone: &Zone| {
            let outline = self.outline(&zone.id, &zone.outline)?;
            let words = self.number(&zone.depth).map(|d| self.tongue.length(d)).into_iter().collect();
            Some(Piece { id: zone.id.clone(), outline, depth: None, slope: None, words })
        };
        pool.zones.items().iter().filter_map(one).collect()
    }
}

/// Two decimals, none where they are nothing.
fn short(value: f64) -> String {
    let text = format!("{value:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
