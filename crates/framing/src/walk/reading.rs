//! How the inputs of a walk's check are read: each is understood, or refused with its name; none is corrected.

use inspection::Seen;
use lumber::Species;
use measure::{Denominator, Length, LengthUnit, read_length, read_number};

use super::reply::Understood;
use super::{Text, Texts};
use crate::reply::{AssumedReply, Refusal};

/// An input that is a length or a number: its name, its name in words, and what is taken.
#[derive(Clone, Copy, Debug)]
pub(super) struct Field {
    pub(super) id: &'static str,
    pub(super) label: &'static str,
    least: f64,
    most: f64,
}

impl Field {
    /// A length from so many inches to so many, or a number.
    pub(super) const fn new(id: &'static str, label: &'static str, least: f64, most: f64) -> Self {
        Self { id, label, least, most }
    }
}

/// Most readings that one list may have.
const MOST_READINGS: usize = 200;

/// How a problem begins that is about one reading of a list.
const READING: &str = "Reading";

/// Which reading of a list a problem is about, counted from 1, and the problem without its number.
#[must_use]
pub fn which_reading(problem: &str) -> (Option<usize>, &str) {
    let numbered = problem.strip_prefix(READING).and_then(|rest| rest.trim_start().split_once(": "));
    let found = numbered.and_then(|(number, rest)| Some((number.parse().ok()?, rest)));
    found.map_or((None, problem), |(number, rest)| (Some(number), rest))
}

/// What was read so far, what was assumed, and what was refused.
#[derive(Debug, Default)]
pub(super) struct Inputs {
    pub(super) read: Vec<Understood>,
    pub(super) assumed: Vec<AssumedReply>,
    pub(super) refused: Vec<Refusal>,
}

/// A text that was typed; an empty one was not.
pub(super) fn typed(text: &Text) -> Option<&str> {
    text.as_deref().map(str::trim).filter(|text| !text.is_empty())
}

/// Which reading of a list.
type Which = Option<usize>;

impl Inputs {
    pub(super) fn refuse(&mut self, id: &str, problem: String) {
        self.refused.push(Refusal { field: id.to_owned(), problem });
    }

    /// Reads inputs that have no part in this answer: what is wrong with them is said all the same.
    pub(super) fn only_refuse<T>(&mut self, read: impl FnOnce(&mut Self) -> T) {
        let mut aside = Self::default();
        let _ = read(&mut aside);
        self.refused.extend(aside.refused);
    }

    /// Says what was assumed for an input that was left out.
    pub(super) fn assume(&mut self, id: &str, says: impl Into<String>) {
        self.assumed.push(AssumedReply { input: Some(id.to_owned()), says: says.into() });
    }

    pub(super) fn understood(&mut self, id: &str, which: Which, typed: &str, understood: String) {
        let (input, typed) = (id.to_owned(), typed.to_owned());
        self.read.push(Understood { input, which, typed, understood });
    }

    pub(super) fn refuse_one(&mut self, id: &str, which: Which, problem: &str) {
        let problem = match which {
            Some(number) => format!("{READING} {number}: {problem}"),
            None => problem.to_owned(),
        };
        self.refuse(id, problem);
    }

    pub(super) fn read_one(&mut self, text: &str, field: &Field, which: Which) -> Option<Length> {
        match read_length(text, LengthUnit::Inches) {
            Ok(reading) if (field.least..=field.most).contains(&reading.length.inches()) => {
                self.understood(field.id, which, text, reading.echo);
                Some(reading.length)
            }
            Ok(reading) => {
                let (least, most) = (in_feet(field.least), in_feet(field.most));
                let given = reading.echo;
                let problem = format!("{} {given} was given; from {least} to {most} is taken.", field.label);
                self.refuse_one(field.id, which, &problem);
                None
            }
            Err(problem) => {
                self.refuse_one(field.id, which, &problem.to_string());
                None
            }
        }
    }

    pub(super) fn length(&mut self, text: &Text, field: &Field) -> Option<Length> {
        typed(text).and_then(|text| self.read_one(text, field, None))
    }

    /// A length; what is assumed where it was left out, and why. What it gives for a refused text is not used.
    pub(super) fn length_or(&mut self, text: &Text, field: &Field, assumed: Length, why: &str) -> Length {
        if typed(text).is_none() {
            let value = assumed.to_inches_fraction(Denominator::SixtyFourth);
            self.assume(field.id, format!("{}: {value} ({why}).", field.label));
        }
        self.length(text, field).unwrap_or(assumed)
    }

    pub(super) fn seen_length(&mut self, text: &Text, field: &Field) -> Seen<Length> {
        self.seen(text, |inputs, text| inputs.read_one(text, field, None))
    }

    fn seen<T>(&mut self, text: &Text, read: impl FnOnce(&mut Self, &str) -> Option<T>) -> Seen<T> {
        match typed(text) {
            None => Seen::NotObserved,
            Some(text) if could_not_be_seen(text) => Seen::CouldNotBeSeen,
            Some(text) => read(self, text).map_or(Seen::NotObserved, Seen::Observed),
        }
    }

    /// The texts of a list, cut short where it is too long.
    pub(super) fn list<'a>(&mut self, texts: &'a Texts, id: &str) -> &'a [String] {
        let texts = texts.as_deref().unwrap_or_default();
        if texts.len() > MOST_READINGS {
            self.refuse(
                id,
                format!("{} were given; to {MOST_READINGS} are taken. Check a part at a time.", texts.len()),
            );
            return &[];
        }
        texts
    }

    pub(super) fn lengths(&mut self, texts: &Texts, field: &Field) -> Vec<Length> {
        let texts = self.list(texts, field.id).iter().enumerate();
        texts.filter_map(|(index, text)| self.read_one(text, field, Some(index + 1))).collect()
    }

    pub(super) fn number_one(&mut self, text: &str, field: &Field, unit: &[&str], which: Which) -> Option<f64> {
        let number = match read_number(text, unit) {
            Ok(number) => number,
            Err(problem) => {
                self.refuse_one(field.id, which, &problem.to_string());
                return None;
            }
        };
        let Field { id, label, least, most } = *field;
        if (least..=most).contains(&number) {
            return Some(number);
        }
        let unit = unit.first().map_or(String::new(), |unit| format!(" {unit}"));
        let problem = format!("{label} {number}{unit} was given; from {least}{unit} to {most}{unit} is taken.");
        self.refuse_one(id, which, &problem);
        None
    }

    pub(super) fn count_one(&mut self, text: &str, field: &Field, which: Which) -> Option<u32> {
        let number = self.number_one(text, field, &[], which)?;
        if number.fract() != 0.0 {
            let problem = format!("{} {number} was given; whole numbers are taken.", field.label);
            self.refuse_one(field.id, which, &problem);
            return None;
        }
        Some(number as u32)
    }

    pub(super) fn count(&mut self, text: &Text, field: &Field) -> Option<u32> {
        typed(text).and_then(|text| self.count_one(text, field, None))
    }

    pub(super) fn seen_count(&mut self, text: &Text, field: &Field) -> Seen<u32> {
        self.seen(text, |inputs, text| inputs.count_one(text, field, None))
    }

    pub(super) fn choice_one<T: Copy>(
        &mut self,
        text: &str,
        id: &str,
        options: &[(&str, T)],
        which: Which,
    ) -> Option<T> {
        let plain = plain(text);
        let found = options.iter().find(|(stored, _)| stored.eq_ignore_ascii_case(&plain));
        if found.is_none() {
            let taken: Vec<&str> = options.iter().map(|(stored, _)| *stored).collect();
            let problem = format!("“{}” was given; one of these is taken: {}.", short(text), taken.join(", "));
            self.refuse_one(id, which, &problem);
        }
        found.map(|(_, meant)| *meant)
    }

    pub(super) fn choice<T: Copy>(&mut self, text: &Text, id: &str, options: &[(&str, T)]) -> Option<T> {
        typed(text).and_then(|text| self.choice_one(text, id, options, None))
    }

    /// A choice; what is assumed where it was left out, and the sentence that says so.
    pub(super) fn choice_or<T: Copy>(
        &mut self,
        text: &Text,
        id: &str,
        options: &[(&str, T)],
        assumed: T,
        says: &str,
    ) -> T {
        if typed(text).is_none() {
            self.assume(id, says);
        }
        self.choice(text, id, options).unwrap_or(assumed)
    }

    pub(super) fn seen_choice<T: Copy>(&mut self, text: &Text, id: &str, options: &[(&str, T)]) -> Seen<T> {
        self.seen(text, |inputs, text| inputs.choice_one(text, id, options, None))
    }

    pub(super) fn yes(&mut self, text: &Text, id: &str) -> Option<bool> {
        self.choice(text, id, &YES_NO)
    }

    pub(super) fn seen_yes(&mut self, text: &Text, id: &str) -> Seen<bool> {
        self.seen_choice(text, id, &YES_NO)
    }

    /// The species of the framing; spruce-pine-fir where nothing was said.
    pub(super) fn species(&mut self, text: &Text, id: &str) -> Species {
        let Some(given) = typed(text) else {
            self.assume(id, "Species of the framing: SPF (common, and softer than most).");
            return Species::SprucePineFir;
        };
        Species::from_text(given).unwrap_or_else(|problem| {
            self.refuse(id, problem.to_string());
            Species::SprucePineFir
        })
    }
}

const YES_NO: [(&str, bool); 2] = [("yes", true), ("no", false)];

/// Whether someone wrote that a thing could not be seen.
#[must_use]
pub fn could_not_be_seen(text: &str) -> bool {
    matches!(plain(text).to_ascii_lowercase().as_str(), "could_not_be_seen" | "not_seen" | "hidden")
}

/// A choice with its spaces as it is stored.
fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join("_")
}

/// A text as a sentence repeats it.
pub(super) fn short(text: &str) -> String {
    const LONGEST: usize = 40;
    let line = text.split_whitespace().collect::<Vec<_>>().join(" ");
    match line.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", &line[..end]),
        None => line,
    }
}

fn in_feet(inches: f64) -> String {
    Length::from_inches(inches).to_feet_inches(Denominator::SixtyFourth)
}
