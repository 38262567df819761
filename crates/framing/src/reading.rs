//! What was understood of a check's inputs: each with its value, where it comes from, and what is wrong with it.

use measure::{Denominator, Length, read_length, read_number};

use crate::case::Texts;
use crate::field::{FieldSpec, Kind, Unsaid, kept_with_job};

/// Where the value of an input comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Origin {
    /// Typed for this check.
    Typed,
    /// From the job's site values.
    Site,
    /// Assumed.
    Assumed,
    /// Not said, and nothing is assumed.
    Unsaid,
}

/// One input as it was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Value {
    /// The input.
    pub spec: &'static FieldSpec,
    /// Where its value comes from.
    pub origin: Origin,
    /// The text in use, as typed or as assumed; empty when there is none.
    pub text: String,
    /// The value in words: `6' 0"`, `40 psf`, `joists or rafters bear on it`; empty when there is none.
    pub shown: String,
    /// What was understood of a typed text: `98 3/4 in = 8' 2-3/4"`; empty where there is nothing to echo.
    pub echo: String,
    /// The value as a number of its unit (inches for a length); none for words.
    pub number: Option<f64>,
    /// What is wrong with the text, as a sentence.
    pub problem: Option<String>,
}

/// All inputs of a check as they were understood, in order.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// One for each input, in the order of its check's specs.
    pub values: Vec<Value>,
}

impl Reading {
    /// Reads a case by the specs of its check; what it does not say is taken from the job's site values, then assumed.
    #[must_use]
    pub fn of(specs: impl IntoIterator<Item = &'static FieldSpec>, case: &dyn Texts, site: &dyn Texts) -> Self {
        let values = specs.into_iter().map(|spec| read(spec, case, site)).collect();
        Self { values }
    }

    /// The input of that name.
    #[must_use]
    pub fn get(&self, id: &str) -> Option<&Value> {
        self.values.iter().find(|value| value.spec.id == id)
    }

    /// The number of an input, where it has one and nothing is wrong with it.
    #[must_use]
    pub fn number(&self, id: &str) -> Option<f64> {
        self.get(id).filter(|value| value.problem.is_none()).and_then(|value| value.number)
    }

    /// The length of an input.
    #[must_use]
    pub fn length(&self, id: &str) -> Option<Length> {
        self.number(id).map(Length::from_inches)
    }

    /// The distance of an input that is given in feet alone.
    #[must_use]
    pub fn feet(&self, id: &str) -> Option<Length> {
        self.number(id).map(Length::from_feet)
    }

    /// The words of an input as stored: the value of a choice, or a name.
    #[must_use]
    pub fn word(&self, id: &str) -> Option<&str> {
        self.get(id).filter(|value| value.problem.is_none() && !value.text.is_empty()).map(|value| value.text.as_str())
    }

    /// Says what is wrong with an input.
    pub fn refuse(&mut self, id: &str, problem: String) {
        if let Some(value) = self.values.iter_mut().find(|value| value.spec.id == id)
            && value.problem.is_none()
        {
            value.problem = Some(problem);
        }
    }

    /// The inputs that something is wrong with.
    pub fn problems(&self) -> impl Iterator<Item = (&'static str, &str)> {
        self.values.iter().filter_map(|value| value.problem.as_deref().map(|problem| (value.spec.id, problem)))
    }
}

fn read(spec: &'static FieldSpec, case: &dyn Texts, site: &dyn Texts) -> Value {
    let typed = case.text(spec.id).map(str::trim).filter(|text| !text.is_empty());
    let kept = site.text(spec.id).map(str::trim).filter(|text| !text.is_empty() && kept_with_job(spec));
    let (origin, text) = match (typed, kept, spec.unsaid) {
        (Some(text), _, _) => (Origin::Typed, text),
        (None, Some(text), _) => (Origin::Site, text),
        (None, None, Unsaid::Assumed(text, _)) => (Origin::Assumed, text),
        (None, None, Unsaid::Nothing) => (Origin::Unsaid, ""),
    };
    let mut value = Value {
        spec,
        origin,
        text: text.to_owned(),
        shown: String::new(),
        echo: String::new(),
        number: None,
        problem: None,
    };
    if origin != Origin::Unsaid {
        understand(&mut value);
    }
    value
}

fn understand(value: &mut Value) {
    match value.spec.kind {
        Kind::Length { bare, least, most } => match read_length(&value.text, bare) {
            Ok(reading) => {
                value.echo = reading.echo;
                value.shown = written(reading.length, most);
                take_number(value, reading.length.inches(), least, most, &in_feet);
            }
            Err(problem) => value.problem = Some(problem.to_string()),
        },
        Kind::Number { unit, least, most } => match read_number(&value.text, units(unit)) {
            Ok(number) => {
                value.shown = with_unit(number, unit);
                value.echo.clone_from(&value.shown);
                take_number(value, number, least, most, &|limit| with_unit(limit, unit));
            }
            Err(problem) => value.problem = Some(problem.to_string()),
        },
        Kind::Special { read, written, least, most } => match read(&value.text) {
            Ok((number, echo)) => {
                value.shown = written(number);
                value.echo = echo;
                take_number(value, number, least, most, &written);
            }
            Err(problem) => value.problem = Some(problem),
        },
        Kind::Choice(options) => match options.iter().find(|(stored, _)| stored.eq_ignore_ascii_case(&value.text)) {
            Some((stored, words)) => {
                (*stored).clone_into(&mut value.text);
                (*words).clone_into(&mut value.shown);
            }
            None => {
                let accepted: Vec<&str> = options.iter().map(|(stored, _)| *stored).collect();
                let (given, accepted) = (&value.text, accepted.join(", "));
                value.problem = Some(format!("“{given}” was given; one of these is taken: {accepted}."));
            }
        },
        Kind::Lines => value.shown = lines(&value.text),
        Kind::Name | Kind::Size => value.shown.clone_from(&value.text),
    }
}

/// Several lines are told by how many they are; one line as it is.
fn lines(text: &str) -> String {
    match text.lines().filter(|line| !line.trim().is_empty()).count() {
        0 | 1 => text.trim().to_owned(),
        more => format!("{more} lines"),
    }
}

fn take_number(value: &mut Value, number: f64, least: f64, most: f64, written: &dyn Fn(f64) -> String) {
    if (least..=most).contains(&number) {
        value.number = Some(number);
    } else {
        let (least, most, given) = (written(least), written(most), written(number));
        value.problem = Some(format!("{} {given} was given; from {least} to {most} is taken.", value.spec.label));
    }
}

/// Spacings, gaps and depths, which are never over four feet, are called in inches; the rest in feet and inches.
fn written(length: Length, most: f64) -> String {
    if most <= 48.0 {
        length.to_inches_fraction(Denominator::Sixteenth)
    } else {
        length.to_feet_inches(Denominator::Sixteenth)
    }
}

fn in_feet(inches: f64) -> String {
    Length::from_inches(inches).to_feet_inches(Denominator::Sixteenth)
}

fn with_unit(number: f64, unit: &str) -> String {
    let figure = members::working::figure(number);
    if unit.is_empty() { figure } else { format!("{figure} {unit}") }
}

const fn units(unit: &'static str) -> &'static [&'static str] {
    match unit.as_bytes() {
        b"psf" => &["psf"],
        b"plf" => &["plf", "lb/ft"],
        b"psi" => &["psi"],
        b"mph" => &["mph"],
        b"%" => &["%"],
        b"ft" => &["ft", "feet", "'"],
        b"sq ft" => &["sq ft", "sf", "ft2"],
        b"lb" => &["lb", "lbs", "pounds"],
        b"ft-lb" => &["ft-lb", "lb-ft"],
        b"million lb-in\xc2\xb2" => &["million lb-in²", "million", "x10^6"],
        b"million lb" => &["million lb", "million", "x10^6"],
        b"miles" => &["miles", "mile", "mi"],
        _ => &[],
    }
}
