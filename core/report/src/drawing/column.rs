//! The column beside the plan: keynotes, what has no place in plan, what is not drawn.

use super::frame::COLUMN;
use super::keynotes::Keynote;
use super::letters::draw_number;
use super::style::Stroke;
use super::svg::{Anchor, Svg, Weight, cut, width};

const SIZE: f64 = 2.3;
const LINE: f64 = 3.0;
const HEAD: f64 = 3.0;
const LEFT: f64 = COLUMN.from[0] + 3.0;
const WIDE: f64 = COLUMN.to[0] - COLUMN.from[0] - 6.0;
/// A keynote's words stand to the right of its number.
const INDENT: f64 = 8.0;
/// At most so many lines of a list under the keynotes.
const LIST: usize = 26;

/// A list under its heading.
pub(super) struct Listed {
    pub(super) heading: &'static str,
    pub(super) items: Vec<String>,
}

/// Draws the column; lists stand at its foot, keynotes have the rest.
pub(super) fn column(keynotes: &[Keynote], lists: &[Listed], svg: &mut Svg) {
    svg.group("notes");
    svg.rectangle(
        COLUMN.from,
        COLUMN.size(),
        super::style::Fill::NONE,
        Stroke { width: 0.35, ..Stroke::FRAME },
    );
    let blocks: Vec<(&str, Vec<String>)> = lists
        .iter()
        .filter(|l| !l.items.is_empty())
        .map(|l| (l.heading, short_of(wrapped(&l.items), LIST)))
        .collect();
    let tall = |lines: &[String]| 6.5 + LINE * lines.len() as f64;
    let foot: f64 = blocks.iter().map(|(_, lines)| tall(lines)).sum();
    let mut y = COLUMN.to[1] - foot - 1.0;
    notes(keynotes, y, svg);
    for (heading, lines) in blocks {
        svg.line([COLUMN.from[0], y], [COLUMN.to[0], y], Stroke::THIN);
        svg.text([LEFT, y + 4.5], HEAD, Anchor::Start, Weight::Bold, heading);
        for (at, line) in lines.iter().enumerate() {
            svg.text([LEFT, y + 8.3 + LINE * at as f64], SIZE, Anchor::Start, Weight::Plain, line);
        }
        y += tall(&lines);
    }
    svg.end();
}

fn notes(keynotes: &[Keynote], end: f64, svg: &mut Svg) {
    let mut y = COLUMN.from[1] + 5.5;
    svg.text([LEFT, y], 3.5, Anchor::Start, Weight::Bold, "Keynotes: what falls short");
    if keynotes.is_empty() {
        svg.text(
            [LEFT, y + 5.0],
            SIZE,
            Anchor::Start,
            Weight::Plain,
            "Nothing that was checked falls short.",
        );
        svg.text(
            [LEFT, y + 8.5],
            SIZE,
            Anchor::Start,
            Weight::Plain,
            "What was not assessed stands in the schedule of the review.",
        );
        return;
    }
    y += 3.0;
    for (at, note) in keynotes.iter().enumerate() {
        let lines: Vec<String> = note.lines.iter().flat_map(|l| broken(l, WIDE - INDENT)).collect();
        let tall = (LINE * lines.len() as f64).max(6.0) + 1.4;
        if y + tall > end - LINE {
            let more = format!("and {} more: see the page of the review", keynotes.len() - at);
            svg.text([LEFT, y + 2.5], SIZE, Anchor::Start, Weight::Bold, &more);
            return;
        }
        draw_number([LEFT + 2.8, y + 3.0], note.number, svg);
        for (k, line) in lines.iter().enumerate() {
            let weight = if k == 0 { Weight::Bold } else { Weight::Plain };
            svg.text([LEFT + INDENT, y + 2.4 + LINE * k as f64], SIZE, Anchor::Start, weight, line);
        }
        y += tall;
    }
}

fn wrapped(items: &[String]) -> Vec<String> {
    items
        .iter()
        .take(LIST + 1)
        .flat_map(|item| broken(item, WIDE))
        .chain(items.iter().skip(LIST + 1).cloned())
        .collect()
}

fn short_of(mut lines: Vec<String>, most: usize) -> Vec<String> {
    if lines.len() > most {
        let more = lines.len() - (most - 1);
        lines.truncate(most - 1);
        lines.push(format!("and {more} more lines"));
    }
    lines
}

/// A text in lines of a width, broken at blanks; a longer word is cut.
pub(super) fn broken(text: &str, wide: f64) -> Vec<String> {
    let mut lines = vec![String::new()];
    // What is longer than a column of lines is cut before it is looked at word by word.
    let few: String = text.chars().take(1_200).collect();
    for word in few.split_whitespace() {
        let word = cut(word, SIZE, wide);
        let last = lines.last().map_or("", String::as_str);
        let joined = if last.is_empty() { word.clone() } else { format!("{last} {word}") };
        if width(&joined, SIZE) <= wide {
            lines.pop();
            lines.push(joined);
        } else {
            lines.push(word);
        }
    }
    lines
}
