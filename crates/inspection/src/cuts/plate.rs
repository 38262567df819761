//! Top plates cut, drilled or notched for a pipe or a duct.

use measure::{Length, Ratio};
use standards::Source;
use standards::irc_2021::r602_6_1::{OLDER_TEXT, PlateTie, TIE, TOP_PLATE_TIE, cut_limit};

use crate::amount::Count;
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::{Remedy, Who};
use crate::subject::Subject;
use crate::verdict::Check;

/// The wall under the plate, as the clause names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlateIn {
    /// An exterior wall or an interior bearing wall.
    ExteriorOrBearing,
    /// A nonbearing wall: the clause says nothing of it.
    Nonbearing,
}

/// A tie that was found across the cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TieFound {
    /// Thickness of the steel.
    pub thickness: Seen<Length>,
    /// Its width.
    pub width: Length,
    /// How far it reaches past the opening, on the side where it reaches less.
    pub past_opening: Length,
    /// Nails on the side that has fewer.
    pub nails_each_side: u8,
    /// Diameter and length of the nails.
    pub nail: Seen<(Length, Length)>,
}

/// A cut top plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutPlate {
    /// The wall under it.
    pub plate_in: PlateIn,
    /// Width of the plate as measured.
    pub width: Length,
    /// What was taken of the width: notch and hole alike.
    pub taken: Length,
    /// Length of the cut along the wall.
    pub opening: Length,
    /// The tie across it; none where there is none.
    pub tie: Seen<Option<TieFound>>,
}

/// What the plate needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TieNeeded {
    /// What the tie must be.
    pub tie: PlateTie,
    /// Its least length over this opening.
    pub length: Length,
    /// An older text of the clause, which asked for something else: the edition in force decides.
    pub older_text: Source,
}

/// The judgement of a cut plate.
#[derive(Clone, Debug, PartialEq)]
pub struct PlateAnswer {
    /// The share of the width that was taken.
    pub share: Ratio,
    /// The most that may be taken without a tie.
    pub limit: Length,
    /// The tie that is needed, where one is.
    pub needed: Option<TieNeeded>,
    /// How it stands.
    pub finding: Finding,
}

/// Judges a cut top plate (R602.6.1).
#[must_use]
pub fn judge_cut_plate(plate: &CutPlate) -> PlateAnswer {
    let limit = cut_limit(plate.width);
    let cut = Check::at_most(Subject::PlateCut, plate.taken, limit, TOP_PLATE_TIE);
    let mut finding = Finding::default();
    let mut needed = None;
    if plate.plate_in == PlateIn::Nonbearing {
        finding.left_to.push((Subject::PlateCut, Who::CodeOfficial));
    } else if cut.verdict.holds() {
        finding.checks.push(cut);
    } else {
        let length = TIE.length_over(plate.opening);
        needed = Some(TieNeeded { tie: TIE, length, older_text: OLDER_TEXT });
        tie(&mut finding, plate.tie, length);
    }
    PlateAnswer { share: plate.taken / plate.width, limit, needed, finding }
}

fn tie(finding: &mut Finding, found: Seen<Option<TieFound>>, length: Length) {
    match found {
        Seen::Observed(Some(found)) => tie_found(finding, &found),
        Seen::Observed(None) => finding.wrong.push(Subject::PlateCut),
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::PlateCut),
    }
    let out = finding.checks.iter().any(|check| !check.verdict.holds()) || !finding.wrong.is_empty();
    if out {
        finding.remedy(&[Remedy::TieAcrossPlate { tie: TIE, length }, Remedy::EngineerDetail]);
    }
}

fn tie_found(finding: &mut Finding, found: &TieFound) {
    let size = |of, found, limit| Check::size_at_least(of, found, limit, TOP_PLATE_TIE);
    match found.thickness {
        Seen::Observed(thickness) => {
            finding.checks.push(size(Subject::TieThickness, thickness, TIE.thickness));
        }
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::TieThickness),
    }
    finding.checks.push(size(Subject::TieWidth, found.width, TIE.width));
    let past = Check::at_least(Subject::TiePastOpening, found.past_opening, TIE.past_opening, TOP_PLATE_TIE);
    finding.checks.push(past);
    let nails = |count: u8| Count::of(u32::from(count));
    let (there, asked) = (nails(found.nails_each_side), nails(TIE.nails_each_side));
    finding.checks.push(Check::at_least(Subject::TieNails, there, asked, TOP_PLATE_TIE));
    match found.nail {
        Seen::Observed((diameter, length)) => {
            finding.checks.push(size(Subject::NailDiameter, diameter, TIE.nail_diameter));
            finding.checks.push(size(Subject::NailLength, length, TIE.nail_length));
        }
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::NailDiameter),
    }
}
