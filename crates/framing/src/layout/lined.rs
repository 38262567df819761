//! Several lines in one input, each a size and words that what follows them is told by.

use measure::Length;

use crate::bracing::lists::length;
use crate::reading::Reading;

/// The most lines that are taken.
const MOST: usize = 24;

/// Each line read, with its number; what is wrong with the first that cannot be is said. None stand where nothing is said.
pub(super) fn lined<T>(
    reading: &mut Reading,
    id: &'static str,
    read: impl Fn(&str) -> Result<T, String>,
) -> Option<Vec<(usize, T)>> {
    let text = reading.word(id).unwrap_or_default().to_owned();
    let lines = text.lines().flat_map(|line| line.split(';')).enumerate();
    let said = lines.map(|(at, line)| (at + 1, line.trim())).filter(|(_, line)| !line.is_empty());
    let each = said.map(|(number, line)| match read(line) {
        Ok(value) => Ok((number, value)),
        Err(problem) => Err(format!("Line {number}: {problem}")),
    });
    let problem = match each.collect::<Result<Vec<_>, String>>() {
        Ok(all) if all.len() <= MOST => return Some(all),
        Ok(all) => format!("{} lines were given; up to {MOST} are taken.", all.len()),
        Err(problem) => problem,
    };
    reading.refuse(id, problem);
    None
}

/// A line taken apart: its size, and what each word is followed by.
pub(super) struct Words {
    size: String,
    said: Vec<(&'static str, String)>,
}

impl Words {
    /// Takes apart what stands after the kind. Commas part nothing that the words do not.
    pub(super) fn of(text: &str, keys: &[&'static str]) -> Result<Self, String> {
        let (mut size, mut said) = (String::new(), Vec::<(&'static str, String)>::new());
        for word in text.to_lowercase().replace(',', " ").split_whitespace() {
            if let Some(key) = keys.iter().find(|key| **key == word) {
                if said.iter().any(|(before, _)| before == key) {
                    return Err(format!("{key} was given twice; once is taken."));
                }
                said.push((key, String::new()));
                continue;
            }
            let goes_on = said.last_mut().map_or(&mut size, |(_, value)| value);
            if !goes_on.is_empty() {
                goes_on.push(' ');
            }
            goes_on.push_str(word);
        }
        Ok(Self { size, said })
    }

    /// What follows a word.
    pub(super) fn after(&self, key: &str) -> Option<&str> {
        self.said.iter().find(|(said, _)| *said == key).map(|(_, value)| value.as_str())
    }

    /// The two measures of its size, none where it has no such.
    pub(super) fn size(&self) -> Option<(&str, &str)> {
        self.size.split_once(['x', '×']).map(|(one, other)| (one.trim(), other.trim()))
    }

    /// The length after a word, a bare number in feet.
    pub(super) fn length(&self, key: &str, limits: (f64, f64)) -> Result<Option<Length>, String> {
        self.after(key).map(|text| length(text, limits).map_err(|problem| format!("{key}: {problem}"))).transpose()
    }

    /// How many of a thing, where it is said.
    pub(super) fn count(&self, key: &str, (least, most): (u8, u8)) -> Result<Option<u8>, String> {
        let Some(text) = self.after(key) else { return Ok(None) };
        let count: Option<u8> = text.parse().ok().filter(|count| (least..=most).contains(count));
        let refused = || format!("{key} {text} was given; a whole number from {least} to {most} is taken.");
        count.ok_or_else(refused).map(Some)
    }
}
