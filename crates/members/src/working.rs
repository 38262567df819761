//! The working of a check: ordered steps that an engineer can follow and audit.

use lumber::AdjustedValue;
use standards::Source;

/// Where the value of a step comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Basis {
    /// A published clause, equation or table.
    Published(Source),
    /// An input of the check, by its stable name; whoever asked knows whether it was typed or assumed.
    Input(&'static str),
    /// Follows from the steps above by arithmetic or statics.
    Arithmetic,
}

/// One step: a symbol, what it is, the expression with its numbers put in, and the value.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The symbol: `f_b`.
    pub symbol: &'static str,
    /// What it is, in words.
    pub meaning: String,
    /// The expression with its numbers put in: `4,676 ft-lb × 12 / 63.28 in³`.
    pub expression: String,
    /// The value.
    pub value: f64,
    /// The value's unit; empty for a pure number.
    pub unit: &'static str,
    /// Where it comes from.
    pub basis: Basis,
}

/// A headed part of a working.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Its heading: `Bending`.
    pub heading: String,
    /// Its steps, in order.
    pub steps: Vec<Step>,
}

impl Part {
    /// An empty part.
    #[must_use]
    pub fn new(heading: impl Into<String>) -> Self {
        Self { heading: heading.into(), steps: Vec::new() }
    }

    /// Adds a step.
    pub fn step(
        &mut self,
        symbol: &'static str,
        meaning: impl Into<String>,
        expression: impl Into<String>,
        (value, unit): (f64, &'static str),
        basis: Basis,
    ) {
        self.steps.push(Step { symbol, meaning: meaning.into(), expression: expression.into(), value, unit, basis });
    }
}

/// A step of a design value with the factors that made it.
pub(crate) fn adjusted_step(part: &mut Part, value: &AdjustedValue, meaning: &'static str) {
    let mut expression = figure(value.reference.psi());
    for factor in value.factors() {
        expression.push_str(" × ");
        expression.push_str(&figure(factor.value));
        expression.push(' ');
        expression.push_str(factor.symbol);
    }
    part.step(value.symbol, meaning, expression, (value.value.psi(), "psi"), Basis::Published(value.source));
}

/// A number for an expression: four significant figures or whole thousands with commas, no trailing zeros.
///
/// For reading only: values are carried unrounded.
#[must_use]
pub fn figure(value: f64) -> String {
    let size = value.abs();
    // Many are whole numbers, which are written much faster as such.
    let whole = value as i64;
    if size < 1e15 && whole as f64 == value {
        return group_thousands(&whole.to_string());
    }
    let decimals = if size >= 1000.0 {
        0
    } else if size >= 100.0 {
        1
    } else if size >= 10.0 {
        2
    } else {
        3
    };
    let text = format!("{value:.decimals$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    group_thousands(text)
}

fn group_thousands(text: &str) -> String {
    let (sign, rest) = text.strip_prefix('-').map_or(("", text), |rest| ("-", rest));
    let (whole, fraction) = rest.split_once('.').map_or((rest, None), |(w, f)| (w, Some(f)));
    let mut grouped = String::with_capacity(text.len() + text.len() / 3 + 1);
    grouped.push_str(if whole == "0" && fraction.is_none() { "" } else { sign });
    for (place, digit) in whole.chars().enumerate() {
        if place > 0 && (whole.len() - place).is_multiple_of(3) {
            grouped.push(',');
        }
        grouped.push(digit);
    }
    if let Some(fraction) = fraction {
        grouped.push('.');
        grouped.push_str(fraction);
    }
    grouped
}

#[cfg(test)]
mod tests {
    use super::figure;

    #[test]
    fn figures_read_as_an_engineer_writes_them() {
        let cases = [
            (0.0, "0"),
            (1_400_000.0, "1,400,000"),
            (886.72, "886.7"),
            (63.281_25, "63.28"),
            (1.15, "1.15"),
            (0.9284, "0.928"),
            (-2992.5, "-2,992"),
            (999.96, "1,000"),
            (12.0, "12"),
            (-0.0001, "0"),
        ];
        for (value, text) in cases {
            assert_eq!(figure(value), text, "{value}");
        }
    }
}
