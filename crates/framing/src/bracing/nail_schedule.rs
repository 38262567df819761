//! The code's fastening schedule beside a nail: which joints were meant, and what each may be nailed with.

use fastening::{Nail, listed};
use standards::irc_2021::r602_3_1::{ScheduleFastener, ScheduleRow, alternatives, find_connections};

use super::nail_joint::fine;
use crate::quick::reply::RuleReply;
use crate::quick::say::{capital, rule};
use crate::reading::Reading;
use crate::words::{self, figure};

/// The most joints of the schedule that are shown at once.
const MOST: usize = 4;

/// A joint of the schedule, by its name there.
pub(super) type Listed = &'static str;

/// The joints that were meant; none where nothing was said. What the schedule does not have is refused.
pub(super) fn read(reading: &mut Reading) -> Option<Vec<Listed>> {
    let Some(text) = reading.word("code_element").map(str::to_owned) else { return Some(Vec::new()) };
    let all: Vec<Listed> = find_connections(&text).collect();
    // A joint's whole name means that joint, though others may have its words in theirs.
    let whole = all.iter().copied().find(|name| name.eq_ignore_ascii_case(text.trim()));
    let found = whole.map_or(all, |name| vec![name]);
    let problem = match found.len() {
        1..=MOST => return Some(found),
        0 => format!(
            "The schedule has no joint with all the words of “{text}”. Words of it are taken, such as stud plate, ceiling joist or rim."
        ),
        count => {
            format!("{count} joints of the schedule have “{text}” in them. Give one more word: {}.", found.join("; "))
        }
    };
    reading.refuse("code_element", problem);
    None
}

/// The row of the schedule by which a nail may be used, where one joint alone was meant: the one that asks for the
/// fewest.
pub(super) fn stands(of: &[Listed], nail: Nail) -> Option<&'static ScheduleRow> {
    let [one] = of else { return None };
    listed(one, nail).min_by(|a, b| many(a).total_cmp(&many(b)))
}

/// How many nails a row asks for: in the joint, or in an inch.
fn many(row: &ScheduleRow) -> f64 {
    let count = f64::from(row.count.unwrap_or(1));
    row.spacing.map_or(count, |spacing| count / spacing.inches())
}

/// How many, or how far apart: `3 nails`, `2 nails each 16"`, `16" on center`.
pub(super) fn pattern(row: &ScheduleRow) -> String {
    let nails = |count: u8| if count == 1 { "1 nail".to_owned() } else { format!("{count} nails") };
    match (row.count, row.spacing) {
        (Some(count), Some(spacing)) => format!("{} each {}", nails(count), fine(spacing)),
        (Some(count), None) => nails(count),
        (None, Some(spacing)) => format!("{} on center", fine(spacing)),
        (None, None) => "as printed".to_owned(),
    }
}

/// What the schedule says of a joint, and whether the nail at hand is in it.
pub(super) fn rule_of(of: &Listed, nail: Nail) -> RuleReply {
    let rows = || alternatives(of);
    let row = stands(&[*of], nail);
    let mut says = vec![format!("{}, any one of:", capital(of))];
    says.extend(rows().map(in_words));
    let figure = match row {
        Some(row) => pattern(row),
        None => {
            says.push("The nail at hand is not among them: it is thinner or shorter than each.".to_owned());
            "not listed".to_owned()
        }
    };
    says.extend(rows().next().map(|row| format!("{}.", words::source(row.source()))));
    rule("Fastening schedule", Some(row.is_some()), figure, says)
}

fn in_words(row: &'static ScheduleRow) -> String {
    let fastener = match row.fastener {
        ScheduleFastener::Nail { size, length, diameter } => {
            let sizes = format!("{} x {}", figure(diameter.inches()), fine(length));
            if size.is_empty() { sizes } else { format!("{size} ({sizes})") }
        }
        ScheduleFastener::Other(name) => name.to_owned(),
    };
    let place = if row.place.is_empty() { String::new() } else { format!(", {}", row.place) };
    let field = row.field_spacing.map_or_else(String::new, |field| format!(", {} between the edges", fine(field)));
    format!("{fastener}: {}{field}{place}.", pattern(row))
}
