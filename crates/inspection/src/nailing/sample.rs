//! A line of nails that was counted, their size, and their distance from the edge.

use measure::{Length, Ratio};
use standards::{Source, Status};

use super::panel::spaces;
use crate::amount::Count;
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::{Question, Subject};
use crate::verdict::Check;

/// Nail to the edge of the panel: 3/8 in, in notes of adopted plans and in the clause from memory.
pub const NAIL_TO_PANEL_EDGE: Source = Source::new("SDPWS 2015", "nails to panel edges", Status::PartlyLookedUp);
const LEAST_TO_EDGE: Length = Length::from_inches(0.375);

/// A line of nails along a panel's edge or along a stud inside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// What is counted: [`Subject::EdgeNails`] or [`Subject::FieldNails`].
    pub of: Subject,
    /// Length that was looked at, from where the first nail belongs to where the last one does.
    pub length: Length,
    /// Spacing that is asked for.
    pub spacing: Required<Length>,
    /// Nails driven, hit or missed.
    pub driven: u32,
    /// Of these, nails that missed the framing: seen from inside, in the air beside the stud.
    pub missed: Seen<u32>,
    /// The widest gap between two neighbours that hold, where it was measured.
    pub widest_gap: Option<Length>,
}

/// What the line brings.
#[derive(Clone, Debug, PartialEq)]
pub struct LineAnswer {
    /// Nails that were asked for in this length, both ends counted.
    pub asked: u32,
    /// Nails that hold; none where it could not be seen from inside.
    pub hold: Option<u32>,
    /// Share of the nails driven that hold.
    pub share: Option<Ratio>,
    /// Spacing that the nails that hold have on average; none with fewer than two.
    pub spacing: Option<Length>,
    /// Nails to add: one for each that missed, and what is short beyond them.
    pub add: u32,
    /// How it stands. Nothing is claimed for the line until it is nailed again.
    pub finding: Finding,
}

/// Judges a line of nails.
#[must_use]
pub fn judge_line(line: &Line) -> LineAnswer {
    let asked = spaces(line.length, line.spacing.value).saturating_add(1);
    let missed = line.missed.observed().map(|missed| missed.min(line.driven));
    let hold = missed.map(|missed| line.driven - missed);
    let mut finding = Finding::default();
    if let Some(hold) = hold {
        let (there, asked) = (Count::of(hold), Count::of(asked));
        finding.checks.push(Check::at_least(line.of, there, asked, line.spacing.origin.clone()));
    } else {
        finding.not_seen.push(line.of);
        // Too few driven are too few however many of them hold.
        if line.driven < asked {
            let (there, asked) = (Count::of(line.driven), Count::of(asked));
            finding.checks.push(Check::at_least(line.of, there, asked, line.spacing.origin.clone()));
        }
    }
    if let Some(gap) = line.widest_gap {
        let Required { value: spacing, origin } = &line.spacing;
        finding.checks.push(Check::size_at_most(Subject::WidestNailGap, gap, *spacing, origin.clone()));
    }
    let short = asked.saturating_sub(hold.unwrap_or(line.driven));
    let add = short.max(missed.unwrap_or(0));
    remedies(&mut finding, missed.unwrap_or(0), add);
    let share = hold.filter(|_| line.driven > 0).map(|hold| f64::from(hold) / f64::from(line.driven));
    let spacing = hold.filter(|hold| *hold > 1).map(|hold| line.length / f64::from(hold - 1));
    LineAnswer { asked, hold, share, spacing, add, finding }
}

fn remedies(finding: &mut Finding, missed: u32, add: u32) {
    if missed > 0 {
        finding.remedy(&[Remedy::ReplaceMissedNails(missed)]);
    }
    if add > missed {
        finding.remedy(&[Remedy::AddNails(add - missed)]);
    }
    if finding.is_out(Subject::WidestNailGap) && add == 0 {
        finding.remedy(&[Remedy::NailAsRequired]);
    }
}

/// A nail by its two sizes. A penny name says neither.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NailSize {
    /// Diameter of the shank.
    pub diameter: Length,
    /// Length.
    pub length: Length,
}

/// Judges the nail that was used beside the nail that is asked for. A thinner or shorter one is out; what would make up
/// for it is not decided here.
#[must_use]
pub fn judge_nail_size(required: &Required<NailSize>, found: Seen<NailSize>) -> Finding {
    let mut finding = Finding::default();
    let Some(found) = found.observed() else {
        finding.not_seen.extend([Subject::NailDiameter, Subject::NailLength]);
        return finding;
    };
    let Required { value: asked, origin } = required;
    finding.checks.extend([
        Check::size_at_least(Subject::NailDiameter, found.diameter, asked.diameter, origin.clone()),
        Check::size_at_least(Subject::NailLength, found.length, asked.length, origin.clone()),
    ]);
    if finding.is_out(Subject::NailDiameter) || finding.is_out(Subject::NailLength) {
        finding.remedy(&[Remedy::NailAsRequired, Remedy::ApproveNailsUsed]);
    }
    finding
}

/// Judges the nail that is nearest to the panel's edge: 3/8 in at least.
#[must_use]
pub fn judge_edge_distance(nearest: Seen<Length>) -> Finding {
    let mut finding = Finding::default();
    finding.length(Subject::NailToPanelEdge, nearest, Question::NailToPanelEdge, |found| {
        // At three eighths the nail is where it belongs.
        Check::size_at_least(Subject::NailToPanelEdge, found, LEAST_TO_EDGE, NAIL_TO_PANEL_EDGE)
    });
    if finding.is_out(Subject::NailToPanelEdge) {
        finding.remedy(&[Remedy::NailAsRequired]);
    }
    finding
}
