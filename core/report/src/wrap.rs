//! Words laid into lines of a width.

/// Lines of at most `width` characters, broken at blanks; a longer word keeps a line of its own.
pub(crate) fn wrap(text: &str, width: usize) -> Vec<String> {
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in glued(text) {
        let word = word.as_str();
        if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > width {
            lines.push(std::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    if !line.is_empty() {
        lines.push(line);
    }
    lines
}

/// Words; a sign that belongs to what stands before it never begins a line.
fn glued(text: &str) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match words.last_mut() {
            Some(last) if ["%", "·", "K", "m", "h"].contains(&word) => {
                last.push(' ');
                last.push_str(word);
            }
            _ => words.push(word.to_owned()),
        }
    }
    words
}

/// A word and its text, the text hanging at `indent`.
pub(crate) fn row(word: &str, text: &str, indent: usize, width: usize) -> String {
    let lead = indent - word.chars().count().min(indent - 1);
    let mut out = String::new();
    for (at, line) in wrap(text, width.saturating_sub(indent).max(20)).iter().enumerate() {
        let head = if at == 0 { format!("{word}{}", " ".repeat(lead)) } else { " ".repeat(indent) };
        out.push_str(&head);
        out.push_str(line);
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::{row, wrap};

    #[test]
    fn words_are_kept_whole() {
        assert_eq!(
            wrap("a wider bore before a larger pump", 12),
            ["a wider bore", "before a", "larger pump"]
        );
        assert_eq!(wrap("it has 21 % to spare · more", 9), ["it has", "21 % to", "spare ·", "more"]);
        assert_eq!(row("has", "0.40 m of water", 8, 20), "has     0.40 m of water\n");
    }
}
