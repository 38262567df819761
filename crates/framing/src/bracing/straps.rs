//! Straps between storeys: what they carry by their labels, and by the nails in each end.

use fastening::{
    Joint, LoadDuration, NailConditions, SHEET_ULTIMATE, SideMember, Wood, gauge_thickness, lateral_value, read_nail,
};
use measure::Force;
use members::working::{Basis, Part};
use standards::Source;

use super::diaphragm_chord::nails as count_of;
use super::ends::{PUSHED, check};
use super::{frame, lists};
use crate::quick::say::pounds;
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::words::figure;

/// The most nails in one end of a strap.
const MOST: u32 = 60;

/// The straps of a stack of walls.
pub(super) struct Straps {
    /// The labels' loads, from the top floor down; none where they were not said.
    labels: Option<Vec<Force>>,
    nails: Option<EndNails>,
}

/// The nails in each end of a strap.
struct EndNails {
    count: u32,
    name: String,
    each: Force,
    source: Source,
}

impl EndNails {
    fn carry(&self) -> Force {
        self.each * f64::from(self.count)
    }
}

/// The straps as they were typed, for so many floors; what is wrong with them is said.
pub(super) fn straps(reading: &mut Reading, floors: usize) -> Option<Straps> {
    let labels = match reading.word("strap_labels") {
        Some(_) if floors > 0 => Some(labels(reading, floors)?),
        _ => None,
    };
    let nails = match reading.word("strap_nails").map(str::to_owned) {
        Some(text) => match nails(reading, &text) {
            Ok(nails) => Some(nails),
            Err(problem) => {
                reading.refuse("strap_nails", problem);
                return None;
            }
        },
        None => None,
    };
    Some(Straps { labels, nails })
}

fn labels(reading: &mut Reading, floors: usize) -> Option<Vec<Force>> {
    let given = lists::forces(reading, "strap_labels")?;
    match given.as_slice() {
        _ if given.iter().any(|label| *label <= Force::ZERO) => {
            reading.refuse("strap_labels", "0 lb was given; what a strap carries is over that.".to_owned());
            None
        }
        [one] => Some(vec![*one; floors]),
        each if each.len() == floors => Some(given),
        other => {
            let problem = format!(
                "{} straps were given for {floors} between the storeys; one for all, or one for each, is taken.",
                other.len()
            );
            reading.refuse("strap_labels", problem);
            None
        }
    }
}

/// `14 10d common`.
fn nails(reading: &Reading, text: &str) -> Result<EndNails, String> {
    let wrong = || format!("“{text}” was given; a number of nails and which, such as 14 10d common, is taken.");
    let digits = text.len() - text.trim_start_matches(|letter: char| letter.is_ascii_digit()).len();
    let (count, nail) = text.split_at(digits);
    let count: u32 = count.parse().ok().filter(|count| (1..=MOST).contains(count)).ok_or_else(wrong)?;
    let read = read_nail(nail.trim_start_matches(['-', ' ', '×', 'x'])).map_err(|problem| problem.to_string())?;
    let gauge: u8 = reading.word("strap_gauge").and_then(|gauge| gauge.parse().ok()).ok_or_else(wrong)?;
    let thickness = gauge_thickness(gauge).ok_or_else(wrong)?.value;
    let wood = Wood::Lumber(frame::wood(reading).ok_or_else(wrong)?.0);
    let joint = Joint {
        conditions: NailConditions { duration: LoadDuration::TenMinutes, ..NailConditions::REFERENCE },
        ..Joint::face_nailed(SideMember::steel(SHEET_ULTIMATE, thickness), wood)
    };
    let value = lateral_value(read.nail, &joint).map_err(|problem| problem.to_string())?;
    Ok(EndNails { count, name: read.echo, each: value.adjusted, source: value.limits.governing().value.source })
}

impl Straps {
    /// Whether it was said what they carry.
    pub(super) const fn are_known(&self) -> bool {
        self.labels.is_some() || self.nails.is_some()
    }

    /// What each floor's strap is asked, with its place in words, from the top down.
    pub(super) fn checks(&self, pulls: &[(&'static str, Force)]) -> Vec<CheckReply> {
        let mut checks = Vec::new();
        for (index, (place, pull)) in pulls.iter().enumerate().filter(|(_, (_, pull))| *pull > Force::ZERO) {
            if let Some(label) = self.labels.as_ref().and_then(|labels| labels.get(index)) {
                checks.push(check(&format!("the strap {place}"), (pull.pounds(), label.pounds(), "lb"), PUSHED));
            }
            if let Some(nails) = &self.nails {
                let sides = (pull.pounds(), nails.carry().pounds(), "lb");
                checks.push(check(&format!("nails in each end of the strap {place}"), sides, PUSHED));
            }
        }
        checks
    }

    /// What to do where they are too weak.
    pub(super) fn action(&self, pulls: &[(&'static str, Force)]) -> Vec<String> {
        let mut says = Vec::new();
        for (index, (place, pull)) in pulls.iter().enumerate() {
            if self.labels.as_ref().and_then(|labels| labels.get(index)).is_some_and(|label| pull > label) {
                says.push(format!("The strap {place} is too weak: take one that carries {}.", pounds(*pull)));
            }
            if let Some(nails) = self.nails.as_ref().filter(|nails| *pull > nails.carry()) {
                let needed = count_of(*pull, nails.each);
                says.push(format!(
                    "Nail each end of the strap {place} with {} nails ({}), or take a strap with room for them.",
                    figure(needed),
                    nails.name
                ));
            }
        }
        says
    }

    /// The nails in the working.
    pub(super) fn working(&self) -> Option<Part> {
        let nails = self.nails.as_ref()?;
        let mut part = Part::new("Nails in each end of a strap");
        let meaning = format!("a {} through steel into the post, C_D 1.6", nails.name);
        part.step("Z'", meaning, "", (nails.each.pounds(), "lb"), Basis::Published(nails.source));
        let expression = format!("{} × {}", nails.count, figure(nails.each.pounds()));
        part.step("", "nails in each end", expression, (nails.carry().pounds(), "lb"), Basis::Arithmetic);
        Some(part)
    }
}
