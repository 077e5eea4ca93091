//! The sheet: ISO A3 landscape, its frame, its areas, and the scale at which a plan fits.

use haulout_calc::geometry::{Bounds, Outline, Point};

use super::svg::Mm;

/// ISO 216: A3 landscape, millimetres.
pub(super) const SHEET: Mm = [420.0, 297.0];

/// An area of the sheet: upper left and lower right corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Area {
    pub(super) from: Mm,
    pub(super) to: Mm,
}

impl Area {
    pub(super) fn size(&self) -> Mm {
        [self.to[0] - self.from[0], self.to[1] - self.from[1]]
    }
}

const fn area(from: Mm, to: Mm) -> Area {
    Area { from, to }
}

/// Inside the border of ISO 5457: 20 mm at the binding edge, 10 mm at the others (as common practice has it).
pub(super) const BORDER: Area = area([20.0, 10.0], [410.0, 287.0]);
/// Where the plan stands.
pub(super) const PLAN: Area = area([20.0, 10.0], [300.0, 243.0]);
/// Keynotes and lists.
pub(super) const COLUMN: Area = area([300.0, 10.0], [410.0, 243.0]);
/// Legend, scale bar, orientation.
pub(super) const STRIP: Area = area([20.0, 243.0], [230.0, 287.0]);
/// The title block, 180 mm wide as ISO 7200 has it (common practice).
pub(super) const TITLE: Area = area([230.0, 243.0], [410.0, 287.0]);

/// Room for dimensions and letters round the plan, millimetres.
const ROUND: f64 = 16.0;

/// Reductions of the trade. Beyond them, the next ones of ISO 5455 and so on by tens.
const SCALES: [f64; 4] = [20.0, 25.0, 50.0, 100.0];

/// Where metres come to lie on paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Frame {
    /// The 50 of 1:50.
    pub(super) scale: f64,
    middle: Point,
}

impl Frame {
    /// The largest scale at which these bounds fit.
    pub(super) fn fitting(bounds: Bounds) -> Self {
        let span = [bounds.high[0] - bounds.low[0], bounds.high[1] - bounds.low[1]];
        let middle = [0, 1].map(|i| 0.5 * bounds.low[i] + 0.5 * bounds.high[i]);
        let [wide, high] = PLAN.size().map(|s| s - 2.0 * ROUND);
        let fits = |scale: &f64| span[0] * 1000.0 / scale <= wide && span[1] * 1000.0 / scale <= high;
        let beyond = (2..9).flat_map(|power| {
            let tens = (0..power).fold(1.0, |all, _| all * 10.0);
            [2.0, 5.0, 10.0].map(|step| step * tens)
        });
        let scale = SCALES.into_iter().chain(beyond).find(fits).unwrap_or(5e9);
        Frame { scale, middle }
    }

    /// A length in metres on paper.
    pub(super) fn mm(&self, metres: f64) -> f64 {
        metres * 1000.0 / self.scale
    }

    /// A place on paper; y runs up the sheet.
    pub(super) fn at(&self, place: Point) -> Mm {
        let centre = [0, 1].map(|i| 0.5 * (PLAN.from[i] + PLAN.to[i]));
        [centre[0] + self.mm(place[0] - self.middle[0]), centre[1] - self.mm(place[1] - self.middle[1])]
    }

    /// The place in metres of a place on paper.
    pub(super) fn metres(&self, mm: Mm) -> Point {
        let centre = [0, 1].map(|i| 0.5 * (PLAN.from[i] + PLAN.to[i]));
        let metres = |mm: f64| mm * self.scale / 1000.0;
        [self.middle[0] + metres(mm[0] - centre[0]), self.middle[1] - metres(mm[1] - centre[1])]
    }

    /// The rings of an outline on paper.
    pub(super) fn rings(&self, outline: &Outline) -> Vec<Vec<Mm>> {
        outline.rings().map(|ring| ring.iter().map(|p| self.at(*p)).collect()).collect()
    }

    /// Whether a place lies on the part of the sheet where the plan stands.
    pub(super) fn shows(&self, place: Point) -> bool {
        let at = self.at(place);
        (0..2).all(|i| at[i] >= PLAN.from[i] + 2.0 && at[i] <= PLAN.to[i] - 2.0)
    }
}

#[cfg(test)]
mod tests {
    use haulout_calc::geometry::Bounds;

    use super::Frame;

    fn fitting(wide: f64, high: f64) -> Frame {
        Frame::fitting(Bounds { low: [0.0, 0.0], high: [wide, high] })
    }

    /// 248 mm by 201 mm are free: 12 m is 240 mm at 1:50, 6 m is 240 mm at 1:25, 4.9 m is 245 mm at 1:20.
    #[test]
    fn the_largest_scale_that_fits_is_taken() {
        assert_eq!(fitting(12.0, 7.6).scale, 50.0);
        assert_eq!(fitting(6.0, 4.0).scale, 25.0);
        assert_eq!(fitting(4.9, 4.0).scale, 20.0);
        assert_eq!(fitting(24.0, 4.0).scale, 100.0);
        assert_eq!(fitting(25.0, 4.0).scale, 200.0);
        assert_eq!(fitting(2e6, 4.0).scale, 10_000_000.0);
        assert_eq!(fitting(0.0, 0.0).scale, 20.0);
    }

    #[test]
    fn north_of_a_place_is_up_the_sheet_and_to_scale() {
        let frame = fitting(12.0, 7.6);
        let ([x0, y0], [x1, y1]) = (frame.at([0.0, 0.0]), frame.at([12.0, 7.6]));
        assert!((x1 - x0 - 240.0).abs() < 1e-9 && (y0 - y1 - 152.0).abs() < 1e-9);
        let back = frame.metres([x1, y1]);
        assert!((back[0] - 12.0).abs() < 1e-9 && (back[1] - 7.6).abs() < 1e-9);
    }
}
