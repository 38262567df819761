//! One anchor bolt.

use measure::Length;
use standards::asme_b18::{HEX_NUTS, nut_and_washer};
use standards::irc_2021::r403_1_6::{ANCHOR_BOLTS, DIAMETER, EMBEDMENT, MIDDLE_THIRD, middle_third};

use super::sill::{PlateWasher, Sill};
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::{Question, Subject};
use crate::verdict::Check;

/// The nut of a bolt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Nut {
    /// On and tight.
    Tight,
    /// On and loose.
    Loose,
    /// Not on.
    Missing,
}

/// The washer under the nut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Washer {
    /// None.
    None,
    /// A round cut washer.
    Cut,
    /// A square plate washer.
    Plate {
        /// Its shorter side.
        side: Length,
        /// Its thickness.
        thickness: Length,
    },
}

/// An anchor bolt as it was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AnchorBolt {
    /// Its place along the plate piece, from the end the tape started at.
    pub at: Length,
    /// Its diameter.
    pub diameter: Length,
    /// How deep it is in the concrete.
    pub embedment: Seen<Length>,
    /// How far it stands up over the foundation.
    pub projection: Seen<Length>,
    /// Its nut.
    pub nut: Seen<Nut>,
    /// Its washer.
    pub washer: Seen<Washer>,
    /// From either face of the plate to the bolt's centre.
    pub from_face: Seen<Length>,
    /// Whether a stud is in the way of nut or washer.
    pub stud_in_the_way: bool,
}

/// Where across a plate a bolt may stand, from either face. Exact: round inward before a hole is drilled.
#[must_use]
pub fn middle_third_of(plate_width: Length) -> (Length, Length) {
    middle_third(plate_width)
}

/// How far a bolt must stand up over the foundation for plates, washer and a full nut; none for a diameter whose nut is
/// not listed. Without a washer a cut washer's thickness is taken: one is needed.
#[must_use]
pub fn thread_needed(diameter: Length, plates: Length, washer: Washer) -> Option<Length> {
    let sizes = nut_and_washer(diameter)?;
    let washer = match washer {
        Washer::None | Washer::Cut => sizes.washer,
        Washer::Plate { thickness, .. } => thickness,
    };
    Some(plates + washer + sizes.nut)
}

/// Whether a bolt holds; none where its nut or washer was not seen.
pub(super) fn holds(bolt: &AnchorBolt, finding: &Finding) -> Option<bool> {
    if finding.is_out(Subject::ThreadForNut) {
        return Some(false);
    }
    match (bolt.nut, bolt.washer) {
        (Seen::Observed(Nut::Loose | Nut::Missing), _) | (_, Seen::Observed(Washer::None)) => Some(false),
        (Seen::Observed(Nut::Tight), Seen::Observed(_)) => Some(true),
        _ => None,
    }
}

pub(super) fn judge_bolt(bolt: &AnchorBolt, sill: &Sill) -> Finding {
    let mut finding = Finding::default();
    let diameter = Check::size_at_least(Subject::BoltDiameter, bolt.diameter, DIAMETER, ANCHOR_BOLTS);
    finding.checks.push(diameter);
    finding.length(Subject::Embedment, bolt.embedment, Question::Embedment, |found| {
        Check::at_least(Subject::Embedment, found, EMBEDMENT, ANCHOR_BOLTS)
    });
    thread(&mut finding, bolt, sill);
    finding.length(Subject::BoltAcrossPlate, bolt.from_face, Question::BoltAcrossPlate, |found| {
        let to_nearer_face = found.min(sill.width - found);
        Check::at_least(Subject::BoltAcrossPlate, to_nearer_face, middle_third(sill.width).0, MIDDLE_THIRD)
    });
    nut(&mut finding, bolt.nut);
    washer(&mut finding, bolt.washer, sill.required.plate_washer.as_ref());
    remedies(&mut finding, bolt);
    finding
}

fn thread(finding: &mut Finding, bolt: &AnchorBolt, sill: &Sill) {
    let washer = bolt.washer.observed().unwrap_or(Washer::Cut);
    let Some(needed) = thread_needed(bolt.diameter, sill.plates, washer) else {
        finding.not_seen.push(Subject::ThreadForNut);
        finding.questions.push(Question::NutAndWasherSize);
        return;
    };
    finding.length(Subject::ThreadForNut, bolt.projection, Question::Projection, |found| {
        Check::at_least(Subject::ThreadForNut, found, needed, HEX_NUTS)
    });
}

fn nut(finding: &mut Finding, nut: Seen<Nut>) {
    match nut {
        Seen::Observed(Nut::Tight) => {}
        Seen::Observed(Nut::Loose | Nut::Missing) => finding.wrong.push(Subject::Nut),
        Seen::NotObserved => {
            finding.not_seen.push(Subject::Nut);
            finding.questions.push(Question::Nut);
        }
        Seen::CouldNotBeSeen => finding.not_seen.push(Subject::Nut),
    }
}

fn washer(finding: &mut Finding, washer: Seen<Washer>, required: Option<&Required<PlateWasher>>) {
    match (washer, required) {
        (Seen::NotObserved | Seen::CouldNotBeSeen, _) => finding.not_seen.push(Subject::Washer),
        (Seen::Observed(Washer::None), _) | (Seen::Observed(Washer::Cut), Some(_)) => {
            finding.wrong.push(Subject::Washer);
        }
        (Seen::Observed(Washer::Plate { side, thickness }), Some(Required { value, origin })) => {
            finding.checks.extend([
                Check::size_at_least(Subject::WasherSide, side, value.side, origin.clone()),
                Check::size_at_least(Subject::WasherThickness, thickness, value.thickness, origin.clone()),
            ]);
        }
        (Seen::Observed(_), None) => {}
    }
}

fn remedies(finding: &mut Finding, bolt: &AnchorBolt) {
    if finding.is_out(Subject::Embedment) {
        finding.remedy(&[Remedy::ApproveAsIs, Remedy::DrilledAnchor]);
    }
    if finding.is_out(Subject::ThreadForNut) {
        finding.remedy(&[Remedy::CouplerAndRod, Remedy::DrilledAnchor]);
    }
    if finding.is_out(Subject::BoltDiameter) {
        finding.remedy(&[Remedy::ApproveAsIs, Remedy::DrilledAnchor]);
    }
    if finding.is_out(Subject::BoltAcrossPlate) {
        finding.remedy(&[Remedy::AnchorBeside, Remedy::EngineerDetail]);
    }
    let unfit = finding.is_out(Subject::Nut) || finding.is_out(Subject::Washer);
    if unfit && bolt.stud_in_the_way {
        finding.remedy(&[Remedy::MoveStud, Remedy::SlottedPlateWasher, Remedy::AnchorBeside]);
    }
    match (bolt.nut, bolt.washer) {
        (Seen::Observed(Nut::Loose), _) => finding.remedy(&[Remedy::TightenNut]),
        (Seen::Observed(Nut::Missing), _) | (_, Seen::Observed(Washer::None)) => {
            finding.remedy(&[Remedy::FitWasherAndNut]);
        }
        _ => {}
    }
    let washer = [Subject::WasherSide, Subject::WasherThickness].into_iter().any(|of| finding.is_out(of));
    if washer || (finding.is_out(Subject::Washer) && bolt.washer == Seen::Observed(Washer::Cut)) {
        finding.remedy(&[Remedy::FitPlateWasher]);
    }
}
