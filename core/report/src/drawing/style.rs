//! Line types, tints and hatches. No two lines differ by colour alone, so that a copy in grey can be read.
//!
//! Kinds of line after ISO 128-2 (continuous wide and narrow, dashed, long-dashed dotted, long-dashed double-dotted,
//! dotted), as common practice of engineering drawings; which of them stands for what is our own choice.

/// What an area is filled with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Fill(pub(super) &'static str);

impl Fill {
    pub(super) const NONE: Fill = Fill("none");
    pub(super) const PAPER: Fill = Fill("#ffffff");
    pub(super) const INK: Fill = Fill("#000000");
    /// Diagonal lines: something to stand on.
    pub(super) const FEATURE: Fill = Fill("url(#hatch-feature)");
    /// Lines crossing: a place to bask.
    pub(super) const BASKING: Fill = Fill("url(#hatch-basking)");

    pub(super) fn markup(self) -> String {
        format!(" fill=\"{}\"", self.0)
    }
}

/// A line: colour, width in millimetres, dashes in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stroke {
    pub(super) colour: &'static str,
    pub(super) width: f64,
    pub(super) dash: &'static str,
}

const fn stroke(colour: &'static str, width: f64, dash: &'static str) -> Stroke {
    Stroke { colour, width, dash }
}

const BLACK: &str = "#000000";

impl Stroke {
    pub(super) const NONE: Stroke = stroke("none", 0.0, "");
    pub(super) const FRAME: Stroke = stroke(BLACK, 0.7, "");
    pub(super) const THIN: Stroke = stroke(BLACK, 0.18, "");
    pub(super) const LEADER: Stroke = stroke("#444444", 0.15, "");
    pub(super) const HALL: Stroke = stroke(BLACK, 1.0, "");
    pub(super) const SPACE: Stroke = stroke("#555555", 0.25, "6 1.2 1 1.2");
    pub(super) const POOL: Stroke = stroke("#0b3c5d", 0.6, "");
    pub(super) const STEP: Stroke = stroke("#0b3c5d", 0.3, "");
    pub(super) const CONTOUR: Stroke = stroke("#0b3c5d", 0.2, "0.5 0.9");
    pub(super) const FEATURE: Stroke = stroke("#4a3b2a", 0.25, "");
    pub(super) const BASKING: Stroke = stroke("#4a3b2a", 0.45, "");
    pub(super) const BARRIER: Stroke = stroke(BLACK, 0.8, "5 0.8");
    pub(super) const PANEL: Stroke = stroke("#0b3c5d", 1.3, "");
    pub(super) const GUARD: Stroke = stroke(BLACK, 0.5, "1.2 0.8");
    pub(super) const PARTITION: Stroke = stroke("#6b3fa0", 0.4, "3 1 0.6 1 0.6 1");
    pub(super) const STREAM: Stroke = stroke("#0b3c5d", 0.9, "2.4 0.6");
    pub(super) const REACH: Stroke = stroke("#8a1c1c", 0.25, "2 1");
    /// Of the lines round water, nearest first.
    pub(super) const ZONES: [Stroke; 4] = [
        stroke("#8a1c1c", 0.35, "4 0.9 0.9 0.9"),
        stroke("#8a1c1c", 0.35, "4 0.9 0.9 0.9 0.9 0.9"),
        stroke("#8a1c1c", 0.35, "4 0.9 0.9 0.9 0.9 0.9 0.9 0.9"),
        stroke("#8a1c1c", 0.35, "3.2 1.4"),
    ];

    pub(super) fn markup(self) -> String {
        if self.width <= 0.0 {
            return String::new();
        }
        let dash =
            if self.dash.is_empty() { String::new() } else { format!(" stroke-dasharray=\"{}\"", self.dash) };
        format!(" stroke=\"{}\" stroke-width=\"{}\"{dash}", self.colour, self.width)
    }
}

/// Water, deeper is darker.
pub(super) const TINTS: [Fill; 5] =
    [Fill("#f0f7fb"), Fill("#d5e8f3"), Fill("#b0d2e6"), Fill("#86b6d4"), Fill("#5b96bd")];

/// The patterns that fills name.
pub(super) const PATTERNS: &str = "<pattern id=\"hatch-feature\" width=\"2.4\" height=\"2.4\" patternUnits=\"userSpaceOnUse\">\
<path d=\"M0 2.4L2.4 0\" stroke=\"#8c7b66\" stroke-width=\"0.15\"/></pattern>\n\
<pattern id=\"hatch-basking\" width=\"1.6\" height=\"1.6\" patternUnits=\"userSpaceOnUse\">\
<rect width=\"1.6\" height=\"1.6\" fill=\"#fbf3e2\"/><path d=\"M0 0L1.6 1.6M0 1.6L1.6 0\" stroke=\"#8c7b66\" stroke-width=\"0.15\"/></pattern>\n";

#[cfg(test)]
mod tests {
    use super::{Stroke, TINTS};

    /// Relative weight of a colour in grey, ITU-R BT.709.
    fn grey(colour: &str) -> f64 {
        let part = |at: usize| u8::from_str_radix(&colour[at..at + 2], 16).map_or(0.0, f64::from) / 255.0;
        0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5)
    }

    #[test]
    fn deeper_water_is_darker_in_grey() {
        for pair in TINTS.windows(2) {
            assert!(grey(pair[0].0) - grey(pair[1].0) > 0.05, "{pair:?}");
        }
    }

    #[test]
    fn no_two_lines_differ_by_colour_alone() {
        let [a, b, c, d] = Stroke::ZONES;
        let lines = [
            Stroke::HALL,
            Stroke::SPACE,
            Stroke::POOL,
            Stroke::STEP,
            Stroke::CONTOUR,
            Stroke::BARRIER,
            Stroke::PANEL,
            Stroke::GUARD,
            Stroke::PARTITION,
            Stroke::STREAM,
            Stroke::REACH,
            a,
            b,
            c,
            d,
        ];
        for (i, one) in lines.iter().enumerate() {
            for other in &lines[i + 1..] {
                assert!(one.width != other.width || one.dash != other.dash, "{one:?} and {other:?}");
            }
        }
    }
}
