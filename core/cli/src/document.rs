//! One document: read, held to the published schema, made into a design; or everything that is wrong with it.

use haulout_document::{Limits, Problem, Schema, Tree};
use haulout_model::Design;
use haulout_report::Written;

/// A document as far as it got.
pub(crate) struct Document {
    text: Text,
    /// Everything that keeps it from being reviewed, in the order of the text.
    pub(crate) problems: Vec<Problem>,
    design: Option<Design>,
}

enum Text {
    Read(Tree),
    Part(String),
}

impl Document {
    /// Reads bytes and holds what they say to the schema.
    pub(crate) fn of(bytes: &[u8], schema: &Schema) -> Self {
        Document::read(bytes).held_to(schema)
    }

    /// Reads bytes. Problems of reading come alone: what they did to the rest cannot be told.
    pub(crate) fn read(bytes: &[u8]) -> Self {
        let reading = haulout_document::read(bytes, &Limits::default());
        let (Some(tree), true) = (reading.tree, reading.problems.is_empty()) else {
            return Document { text: Text::Part(part(bytes)), problems: reading.problems, design: None };
        };
        let (design, problems) = haulout_model::read(&tree);
        Document { text: Text::Read(tree), problems, design: Some(design) }
    }

    /// The same with what the schema finds in it; nothing where the bytes could not be read.
    pub(crate) fn held_to(mut self, schema: &Schema) -> Self {
        if let (Text::Read(tree), Some(_)) = (&self.text, &self.design) {
            self.problems = merged(tree.text(), schema.check(tree), self.problems);
        }
        self
    }

    /// The text, for places in it.
    pub(crate) fn written(&self) -> Written<'_> {
        match &self.text {
            Text::Read(tree) => Written::Read(tree),
            Text::Part(text) => Written::Part(text),
        }
    }

    /// The tree and the design, when nothing is wrong.
    pub(crate) fn sound(&self) -> Option<(&Tree, &Design)> {
        match (&self.text, &self.design) {
            (Text::Read(tree), Some(design)) if self.problems.is_empty() => Some((tree, design)),
            _ => None,
        }
    }
}

/// The beginning of some bytes that is text.
fn part(bytes: &[u8]) -> String {
    let sound = std::str::from_utf8(bytes).map_or_else(|error| error.valid_up_to(), str::len);
    String::from_utf8_lossy(&bytes[..sound]).into_owned()
}

/// One place, one problem: where the schema has spoken of a value, the model does not speak of it again, nor of a part of
/// its string. A key that is missing from an object does not silence what stands in the object.
fn merged(text: &str, of_shape: Vec<Problem>, of_model: Vec<Problem>) -> Vec<Problem> {
    let a_string = |problem: &Problem| problem.span.of(text).starts_with('"');
    let told = |problem: &Problem| {
        of_shape
            .iter()
            .any(|shape| shape.span == problem.span || (a_string(shape) && shape.span.holds(problem.span)))
    };
    let new: Vec<Problem> = of_model.into_iter().filter(|problem| !told(problem)).collect();
    let mut problems = of_shape;
    problems.extend(new);
    problems.sort_by_key(|problem| problem.span);
    problems
}

#[cfg(test)]
mod tests {
    use haulout_document::Problem;
    use haulout_place::Span;

    use super::{merged, part};

    #[test]
    fn a_place_is_told_once_and_the_schema_speaks_first() {
        let text = "{\"a\": \"0.6\", \"b\": [1]}";
        let at = |start, end, words: &str| Problem::new(Span::new(start, end), words);
        let shape = vec![at(6, 11, "a string with a unit is wanted"), at(0, 23, "c is missing")];
        let model = vec![at(6, 11, "no unit"), at(7, 10, "no digit"), at(18, 21, "no place")];
        let words: Vec<String> = merged(text, shape, model).into_iter().map(|p| p.message).collect();
        assert_eq!(words, ["c is missing", "a string with a unit is wanted", "no place"]);
    }

    #[test]
    fn bytes_that_are_no_text_end_it() {
        assert_eq!(part(b"{ \"a\": \xff }"), "{ \"a\": ");
    }
}
