//! Reading names as they are stamped and spoken.

/// A name without what people vary: case, spaces, points, dashes, brackets and number signs.
pub(crate) fn plain(text: &str) -> String {
    text.chars()
        .filter(|character| character.is_alphanumeric())
        .map(|character| character.to_ascii_lowercase())
        .collect()
}

/// The entry whose list of plain names holds this text.
pub(crate) fn find<T: Copy>(table: &[(T, &[&str])], text: &str) -> Option<T> {
    let wanted = plain(text);
    table.iter().find(|(_, names)| names.contains(&wanted.as_str())).map(|(found, _)| *found)
}

/// The text as a sentence repeats it: on one line, cut where a phone's line would end.
pub(crate) fn repeated(text: &str) -> String {
    const LONGEST: usize = 40;
    let line = text.split_whitespace().collect::<Vec<_>>().join(" ");
    match line.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", &line[..end]),
        None => line,
    }
}

#[cfg(test)]
mod tests {
    use super::{plain, repeated};

    #[test]
    fn a_long_text_is_cut_by_characters() {
        assert_eq!(repeated(" 2x\n10 "), "2x 10");
        assert_eq!(repeated(&"é".repeat(41)), format!("{}…", "é".repeat(40)));
    }

    #[test]
    fn punctuation_and_case_do_not_count() {
        assert_eq!(plain("S-P-F (S)"), "spfs");
        assert_eq!(plain("No. 1/No. 2"), "no1no2");
    }
}
