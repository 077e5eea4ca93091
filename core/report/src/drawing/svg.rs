//! SVG 1.1 as text: shapes in millimetres of paper, numbers to a hundredth, every text escaped.

use std::fmt::Write;

use super::style::{Fill, Stroke};

/// A place on the sheet, millimetres from its upper left corner.
pub(super) type Mm = [f64; 2];

/// Nothing is drawn farther out than this: whatever lies there is cut off by the frame anyway.
const FARTHEST: f64 = 20_000.0;

/// Which part of a text its place is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Anchor {
    /// The text begins there.
    Start,
    /// Its middle is there.
    Middle,
}

/// An SVG under way.
#[derive(Debug, Default)]
pub(super) struct Svg {
    out: String,
}

impl Svg {
    /// Opens the picture of a size in millimetres, named and told in words for who cannot see it.
    pub(super) fn open(size: Mm, title: &str, told: &str) -> Self {
        let [wide, high] = size.map(number);
        let mut svg = Svg::default();
        svg.put(&format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" \
             width=\"{wide}mm\" height=\"{high}mm\" viewBox=\"0 0 {wide} {high}\" font-family=\"sans-serif\" \
             stroke-linejoin=\"round\">\n<title>{}</title>\n<desc>{}</desc>\n",
            escaped(title),
            escaped(told)
        ));
        svg
    }

    /// The finished text.
    pub(super) fn close(mut self) -> String {
        self.put("</svg>\n");
        self.out
    }

    /// Text that is SVG already.
    pub(super) fn put(&mut self, markup: &str) {
        self.out.push_str(markup);
    }

    /// Opens a group of a name that is ours.
    pub(super) fn group(&mut self, id: &str) {
        self.put(&format!("<g id=\"{id}\">\n"));
    }

    /// Opens a group of which only what lies within a clip path shows.
    pub(super) fn clipped(&mut self, clip: &str) {
        self.put(&format!("<g clip-path=\"url(#{clip})\">\n"));
    }

    /// Closes a group.
    pub(super) fn end(&mut self) {
        self.put("</g>\n");
    }

    /// Names a region that clips.
    pub(super) fn clip(&mut self, id: &str, path: &str) {
        self.put(&format!("<clipPath id=\"{id}\"><path d=\"{path}\" clip-rule=\"evenodd\"/></clipPath>\n"));
    }

    /// A path, with what it is as its title.
    pub(super) fn path(&mut self, path: &str, fill: Fill, stroke: Stroke, title: &str) {
        let attributes = format!("d=\"{path}\" fill-rule=\"evenodd\"{}{}", fill.markup(), stroke.markup());
        if title.is_empty() {
            self.put(&format!("<path {attributes}/>\n"));
        } else {
            self.put(&format!("<path {attributes}><title>{}</title></path>\n", escaped(title)));
        }
    }

    /// A straight line.
    pub(super) fn line(&mut self, a: Mm, b: Mm, stroke: Stroke) {
        self.path(&open_path(&[a, b]), Fill::NONE, stroke, "");
    }

    /// An upright rectangle from its upper left corner.
    pub(super) fn rectangle(&mut self, at: Mm, size: Mm, fill: Fill, stroke: Stroke) {
        let [x, y] = at.map(number);
        let [wide, high] = size.map(|s| number(s.max(0.0)));
        let rest = format!("{}{}", fill.markup(), stroke.markup());
        self.put(&format!("<rect x=\"{x}\" y=\"{y}\" width=\"{wide}\" height=\"{high}\"{rest}/>\n"));
    }

    /// A circle.
    pub(super) fn circle(&mut self, at: Mm, radius: f64, fill: Fill, stroke: Stroke) {
        let ([x, y], r) = (at.map(number), number(radius));
        let rest = format!("{}{}", fill.markup(), stroke.markup());
        self.put(&format!("<circle cx=\"{x}\" cy=\"{y}\" r=\"{r}\"{rest}/>\n"));
    }

    /// A line of text on its base line.
    pub(super) fn text(&mut self, at: Mm, size: f64, anchor: Anchor, bold: Weight, words: &str) {
        let [x, y] = at.map(number);
        let anchor = match anchor {
            Anchor::Start => "",
            Anchor::Middle => " text-anchor=\"middle\"",
        };
        let weight = match bold {
            Weight::Plain => "",
            Weight::Bold => " font-weight=\"bold\"",
            Weight::White => " font-weight=\"bold\" fill=\"#ffffff\"",
        };
        let size = number(size);
        let words = escaped(words);
        self.put(&format!("<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\"{anchor}{weight}>{words}</text>\n"));
    }
}

/// How a text stands out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Weight {
    /// As it is.
    Plain,
    /// Bold.
    Bold,
    /// Bold and white, on black.
    White,
}

/// A number to a hundredth of a millimetre, without trailing zeros.
pub(crate) fn number(value: f64) -> String {
    let value = if value.is_finite() { value.clamp(-FARTHEST, FARTHEST) } else { 0.0 };
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// The 50 of 1:50, thousands and all.
pub(super) fn number_of_scale(scale: f64) -> String {
    format!("{scale:.0}")
}

/// The path along places.
pub(super) fn open_path(places: &[Mm]) -> String {
    let mut path = String::new();
    for (at, place) in places.iter().enumerate() {
        let [x, y] = place.map(number);
        // Writing to a String cannot fail.
        let _ = write!(path, "{}{x} {y}", if at == 0 { "M" } else { "L" });
    }
    path
}

/// The path round closed rings.
pub(super) fn closed_path(rings: &[Vec<Mm>]) -> String {
    rings.iter().map(|ring| open_path(ring) + "Z").collect()
}

/// Text as XML wants it; what XML cannot hold, and what turns the direction of writing, becomes the replacement sign.
pub(super) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            '\t' | '\n' | '\r' => out.push(' '),
            '\0'..='\u{1f}' | '\u{7f}'..='\u{9f}' | '\u{fffe}' | '\u{ffff}' => out.push('\u{fffd}'),
            '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => out.push('\u{fffd}'),
            sign => out.push(sign),
        }
    }
    out
}

/// A generous guess at the width of a text: the generic family may be a broad one.
pub(super) fn width(words: &str, size: f64) -> f64 {
    let narrow = |c: char| {
        matches!(c, 'i' | 'l' | 'j' | 't' | 'f' | 'r' | '.' | ',' | ' ' | '\'' | '1' | ':' | '|' | '-')
    };
    words
        .chars()
        .map(|c| {
            if narrow(c) {
                0.42
            } else if c.is_ascii() {
                0.64
            } else {
                1.0
            }
        })
        .sum::<f64>()
        * size
}

/// A text cut to a width, with three points where something is missing.
pub(super) fn cut(words: &str, size: f64, wide: f64) -> String {
    if width(words, size) <= wide {
        return words.to_owned();
    }
    let mut kept = String::new();
    for sign in words.chars() {
        if width(&kept, size) + width("…", size) + size * 0.64 > wide {
            break;
        }
        kept.push(sign);
    }
    kept + "…"
}

#[cfg(test)]
mod tests {
    use super::{cut, escaped, number, width};

    #[test]
    fn numbers_are_short_and_finite() {
        assert_eq!(number(240.0), "240");
        assert_eq!(number(-0.001), "0");
        assert_eq!(number(1.0 / 3.0), "0.33");
        assert_eq!(number(f64::NAN), "0");
        assert_eq!(number(1e12), "20000");
    }

    #[test]
    fn nothing_gets_out_of_a_text() {
        assert_eq!(escaped("</text><script>'&\""), "&lt;/text&gt;&lt;script&gt;&#39;&amp;&quot;");
        assert_eq!(escaped("a\u{0}b\u{202e}c\nd"), "a\u{fffd}b\u{fffd}c d");
    }

    #[test]
    fn a_long_text_is_cut() {
        let long = "W".repeat(500);
        assert!(width(&cut(&long, 2.5, 40.0), 2.5) <= 41.0);
        assert!(cut(&long, 2.5, 40.0).ends_with('…'));
        assert_eq!(cut("main", 2.5, 40.0), "main");
    }
}
