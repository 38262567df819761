//! The text of a nail cut into its two sizes, its name, and words that say nothing of either.

use standards::nds_2018::appendix_l::NailKind;

use super::repeated;
use crate::NailError;

/// What stands in the text of a nail.
#[derive(Debug, Default)]
pub(super) struct Parts {
    /// The sizes.
    pub sizes: Sizes,
    /// The penny size: 8 of `8d`.
    pub penny: Option<u8>,
    /// Common, box or sinker.
    pub kind: Option<NailKind>,
    /// Whether it is called a cooler.
    pub cooler: bool,
    /// Words on coating and shank, as they stand.
    pub left_out: Vec<String>,
}

/// The texts of the sizes, in the order they were written.
#[derive(Debug, Default)]
pub(super) enum Sizes {
    /// None: a name alone.
    #[default]
    None,
    /// One, without an x.
    One(String),
    /// The two sides of the x.
    Two(String, String),
}

/// Words that change neither size nor lateral strength, and are given back as left out.
const SAYS_NOTHING: [&str; 16] = [
    "bright",
    "coated",
    "collated",
    "deformed",
    "dip",
    "dipped",
    "galv",
    "galvanized",
    "gun",
    "hdg",
    "hot",
    "ring",
    "round",
    "shank",
    "smooth",
    "vinyl",
];

/// Words around the sizes that nobody misses.
const AROUND: [&str; 6] = ["nail", "nails", "dia", "diameter", "long", "length"];

/// Cuts a text at its x and takes the words out.
pub(super) fn parts(text: &str) -> Result<Parts, NailError> {
    let mut cutter = Cutter { text, found: Parts::default(), sides: vec![String::new()] };
    let mut rest = text.chars().flat_map(char::to_lowercase).peekable();
    let mut before = ' ';
    while let Some(next) = rest.next() {
        if next.is_alphabetic() {
            let mut word = String::from(next);
            while let Some(letter) = rest.next_if(|letter| letter.is_alphabetic()) {
                word.push(letter);
            }
            cutter.word(&word)?;
            before = if is_separator(&word) { ' ' } else { next };
        } else {
            cutter.mark(before, next, rest.peek().copied())?;
            before = next;
        }
    }
    cutter.finish()
}

fn is_separator(word: &str) -> bool {
    matches!(word, "x" | "by")
}

struct Cutter<'a> {
    text: &'a str,
    found: Parts,
    sides: Vec<String>,
}

impl Cutter<'_> {
    fn word(&mut self, word: &str) -> Result<(), NailError> {
        match word {
            _ if is_separator(word) => self.sides.push(String::new()),
            "d" | "penny" => return self.penny(word),
            "in" | "inch" | "inches" => self.side().push_str(" in"),
            "mm" => self.side().push_str(" mm"),
            "common" | "commons" => return self.kind(NailKind::Common, word),
            "box" => return self.kind(NailKind::Box, word),
            "sinker" | "sinkers" => return self.kind(NailKind::Sinker, word),
            "cooler" | "coolers" => self.found.cooler = true,
            _ if AROUND.contains(&word) => {}
            _ if SAYS_NOTHING.contains(&word) => self.found.left_out.push(word.to_owned()),
            _ => return Err(self.unknown(word)),
        }
        Ok(())
    }

    fn mark(&mut self, before: char, next: char, after: Option<char>) -> Result<(), NailError> {
        match next {
            '×' | '*' => self.sides.push(String::new()),
            '(' | ')' => self.side().push(' '),
            // A dash after a letter joins words: hot-dip, 8d-common.
            '-' | '–' if before.is_alphabetic() => self.side().push(' '),
            // The point of an abbreviation: in., dia.
            '.' if before.is_alphabetic() && !after.is_some_and(|after| after.is_ascii_digit()) => {}
            '.' if !before.is_ascii_digit() => self.side().push_str("0."),
            _ if next.is_whitespace() => self.side().push(' '),
            '0'..='9' | '.' | '/' | '-' | '–' | '\'' | '"' | '′' | '″' | '’' | '”' | '⁄' => {
                self.side().push(next)
            }
            '¼' | '½' | '¾' | '⅛' | '⅜' | '⅝' | '⅞' => self.side().push(next),
            _ => return Err(self.unknown(next.encode_utf8(&mut [0; 4]))),
        }
        Ok(())
    }

    /// The number before the d is a name, not a size.
    fn penny(&mut self, word: &str) -> Result<(), NailError> {
        let unknown = self.unknown(word);
        let side = self.side();
        let start = side.trim_end().rfind(' ').map_or(0, |space| space + 1);
        let penny = side[start..].trim_end().parse().ok();
        side.truncate(start);
        if penny.is_none() || self.found.penny.is_some() {
            return Err(unknown);
        }
        self.found.penny = penny;
        Ok(())
    }

    fn kind(&mut self, kind: NailKind, word: &str) -> Result<(), NailError> {
        if self.found.kind.is_some_and(|found| found != kind) {
            return Err(self.unknown(word));
        }
        self.found.kind = Some(kind);
        Ok(())
    }

    /// The side of the x that is being read; there is always one.
    fn side(&mut self) -> &mut String {
        let last = self.sides.len() - 1;
        &mut self.sides[last]
    }

    fn unknown(&self, word: &str) -> NailError {
        NailError::UnknownWord { given: repeated(self.text), word: repeated(word) }
    }

    fn finish(mut self) -> Result<Parts, NailError> {
        let sides: Vec<_> = self.sides.iter().map(|side| side.trim()).collect();
        self.found.sizes = match sides[..] {
            [""] => Sizes::None,
            [one] => Sizes::One(one.to_owned()),
            [one, other] if !one.is_empty() && !other.is_empty() => in_one_unit(one, other),
            _ => return Err(NailError::NotTwoSizes { given: repeated(self.text) }),
        };
        Ok(self.found)
    }
}

/// A unit of millimetres on one side is meant for both: `3.3 x 64 mm`.
fn in_one_unit(one: &str, other: &str) -> Sizes {
    let metric = |text: &str| text.ends_with("mm");
    let has_unit = |text: &str| text.ends_with(|c: char| !c.is_ascii_digit());
    match (metric(one), metric(other)) {
        (true, false) if !has_unit(other) => Sizes::Two(one.to_owned(), format!("{other} mm")),
        (false, true) if !has_unit(one) => Sizes::Two(format!("{one} mm"), other.to_owned()),
        _ => Sizes::Two(one.to_owned(), other.to_owned()),
    }
}
