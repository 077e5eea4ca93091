//! The title block, with the data fields of ISO 7200 as common practice has them: title, revision, date, status, scale, sheet.

use super::Subject;
use super::frame::{Frame, TITLE};
use super::style::{Fill, Stroke};
use super::svg::{Anchor, Mm, Svg, Weight, cut, number_of_scale};

const SMALL: f64 = 1.8;

/// A field: place of its upper left corner in the block, size, what it is, what it says.
struct Field {
    at: Mm,
    size: Mm,
    what: &'static str,
    says: String,
    large: f64,
}

const fn field(at: Mm, size: Mm, what: &'static str, says: String, large: f64) -> Field {
    Field { at, size, what, says, large }
}

/// Draws the title block.
pub(super) fn title(subject: &Subject<'_>, frame: &Frame, svg: &mut Svg) {
    let design = subject.book.design();
    let project = &design.project;
    let said = |text: Option<&str>| text.unwrap_or("not stated").to_owned();
    let digest = if subject.digest.is_empty() { "none".to_owned() } else { subject.digest.to_owned() };
    let fields = [
        field([0.0, 0.0], [112.0, 11.0], "Title", said(project.title.words()), 4.2),
        field([112.0, 0.0], [22.0, 11.0], "Revision", said(project.revision.words()), 3.2),
        field([134.0, 0.0], [46.0, 11.0], "Date of revision", said(project.date.words()), 2.8),
        field([0.0, 11.0], [46.0, 8.0], "Drawn by", said(project.author.words()), 2.5),
        field([46.0, 11.0], [66.0, 8.0], "Place", said(project.place.words()), 2.5),
        field([112.0, 11.0], [22.0, 8.0], "Scale", format!("1:{}", number_of_scale(frame.scale)), 2.8),
        field([134.0, 11.0], [23.0, 8.0], "Stage", subject.stage.to_owned(), 2.5),
        field([157.0, 11.0], [23.0, 8.0], "Sheet", "1 of 1, A3".to_owned(), 2.5),
        field([0.0, 19.0], [134.0, 8.0], "Held to", held_to(subject), 2.1),
        field([134.0, 19.0], [46.0, 8.0], "Reviewed on", subject.on.to_owned(), 2.5),
        field([0.0, 27.0], [68.0, 8.0], "File", subject.file.to_owned(), 2.1),
        field([68.0, 27.0], [112.0, 8.0], "SHA-256 of the file", digest, 2.1),
    ];
    svg.group("title-block");
    svg.rectangle(TITLE.from, TITLE.size(), Fill::PAPER, Stroke { width: 0.5, ..Stroke::FRAME });
    for field in fields {
        draw(&field, svg);
    }
    let [x, y] = [TITLE.from[0] + 2.0, TITLE.to[1] - 4.9];
    svg.text([x, y], 3.2, Anchor::Start, Weight::Bold, "Screening result, not a construction drawing");
    let words = "Electrical, structural and glazing matters, guards and water safety belong to licensed people and local codes.";
    svg.text([x, y + 3.4], 2.0, Anchor::Start, Weight::Plain, words);
    svg.end();
}

fn draw(field: &Field, svg: &mut Svg) {
    let at = [TITLE.from[0] + field.at[0], TITLE.from[1] + field.at[1]];
    svg.rectangle(at, field.size, Fill::NONE, Stroke::THIN);
    svg.text([at[0] + 1.0, at[1] + 2.5], SMALL, Anchor::Start, Weight::Plain, field.what);
    let says = cut(&field.says, field.large, field.size[0] - 2.0);
    svg.text([at[0] + 1.0, at[1] + field.size[1] - 1.6], field.large, Anchor::Start, Weight::Bold, &says);
}

/// Titles of what the design is held to; practice only where nothing is chosen.
fn held_to(subject: &Subject<'_>) -> String {
    let chosen = subject.ruleset.held_to(subject.book.design());
    let known = subject.ruleset.limits.register().authorities();
    let ids: Vec<&str> = known.filter(|a| chosen.iter().any(|id| id == a.id)).map(|a| a.id).collect();
    if ids.is_empty() { "practice only; no authority is chosen".to_owned() } else { ids.join("; ") }
}
