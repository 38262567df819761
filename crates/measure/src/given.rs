//! What a person typed, made short enough to stand in a sentence.

/// Longest piece of typed text that a sentence repeats; a phone shows about this many characters in a line.
const LONGEST: usize = 40;

/// The text on one line, without runs of spaces, cut after [`LONGEST`] characters.
pub(crate) fn repeated(text: &str) -> String {
    let line = text.split_whitespace().collect::<Vec<_>>().join(" ");
    if line.chars().count() <= LONGEST {
        return line;
    }
    let mut short: String = line.chars().take(LONGEST).collect();
    short.push('…');
    short
}

#[cfg(test)]
mod tests {
    use super::{LONGEST, repeated};

    #[test]
    fn spaces_and_line_ends_become_one_space() {
        assert_eq!(repeated(" 8'\n\t 2\"  "), "8' 2\"");
    }

    #[test]
    fn a_long_text_is_cut_by_characters_and_not_by_bytes() {
        assert_eq!(repeated(&"½".repeat(LONGEST)), "½".repeat(LONGEST));
        assert_eq!(repeated(&"½".repeat(LONGEST + 1)), format!("{}…", "½".repeat(LONGEST)));
    }
}
