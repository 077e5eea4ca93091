//! The page's own way of drawing an entry of the list, on miette's protocol.

use std::fmt;

use miette::{Diagnostic, ReportHandler};

use crate::source::excerpt;
use crate::wrap::{row, wrap};

/// Where the text of a row begins.
const INDENT: usize = 12;

/// Draws entries of a numbered list.
#[derive(Debug, Clone, Copy)]
pub(crate) struct List {
    /// The number of the entry.
    pub(crate) number: usize,
    /// Characters in a line.
    pub(crate) width: usize,
    /// Whether titles are set in bold.
    pub(crate) colour: bool,
}

impl ReportHandler for List {
    fn debug(&self, entry: &dyn Diagnostic, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.title(entry, f)?;
        for line in entry.help().map(|h| h.to_string()).unwrap_or_default().lines() {
            let (word, text) = line.split_once('\t').unwrap_or(("", line));
            // What has no word belongs to the title.
            let (word, indent) =
                if word.is_empty() { (String::new(), 4) } else { (format!("    {word}"), INDENT) };
            f.write_str(&row(&word, text, indent, self.width))?;
        }
        self.place(entry, f)
    }
}

impl List {
    /// `12  What is wrong                     short by 0.18 m`
    fn title(&self, entry: &dyn Diagnostic, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let by = entry.code().map(|c| c.to_string()).unwrap_or_default();
        let room = self.width.saturating_sub(4 + by.chars().count() + 2).max(24);
        let style = if self.colour { anstyle::Style::new().bold() } else { anstyle::Style::new() };
        for (at, line) in wrap(&entry.to_string(), room).iter().enumerate() {
            let number = if at == 0 { format!("{:>2}  ", self.number) } else { " ".repeat(4) };
            let by = if at == 0 { by.as_str() } else { "" };
            let pad = self.width.saturating_sub(4 + line.chars().count() + by.chars().count());
            let pad = if by.is_empty() { String::new() } else { " ".repeat(pad.max(2)) };
            writeln!(f, "{number}{style}{line}{style:#}{pad}{by}")?;
        }
        Ok(())
    }

    /// The line of the file, after the matter.
    fn place(&self, entry: &dyn Diagnostic, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Some(label) = entry.labels().and_then(|mut l| l.next()) else { return Ok(()) };
        let contents = entry.source_code().and_then(|source| source.read_span(label.inner(), 0, 0).ok());
        let words = label.label().unwrap_or_default();
        let Some(contents) = contents else {
            return f.write_str(&row("    place", words, INDENT, self.width));
        };
        let word = format!("    line {}", contents.line() + 1);
        // The words of a shortfall repeat the value themselves; those of a problem need the text about it.
        if entry.code().is_some() {
            return f.write_str(&row(&word, words, INDENT.max(word.chars().count() + 1), self.width));
        }
        f.write_str(&row(&word, words, INDENT + 2, self.width))?;
        let room = self.width.saturating_sub(INDENT + 2).max(20);
        let line = String::from_utf8_lossy(contents.data());
        let at = label.offset().saturating_sub(contents.span().offset());
        match excerpt(&line, at, at + label.len(), room) {
            shown if shown.is_empty() => Ok(()),
            shown => writeln!(f, "{}{shown}", " ".repeat(INDENT + 2)),
        }
    }
}
