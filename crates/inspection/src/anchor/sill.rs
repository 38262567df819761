//! One piece of a sill plate with its bolts.

use measure::Length;
use standards::irc_2021::r403_1_6::{
    ANCHOR_BOLTS, BOLTS_A_PIECE, DIAMETER, FARTHEST_FROM_END, SPACING, bolts_needed, nearest_to_end,
};

use super::bolt::{AnchorBolt, holds, judge_bolt};
use crate::amount::Count;
use crate::finding::Finding;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::Subject;
use crate::verdict::{Check, Verdict};

/// A square washer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlateWasher {
    /// Its shorter side.
    pub side: Length,
    /// Its thickness.
    pub thickness: Length,
}

/// What is asked of a sill's anchorage beyond what the code always asks.
#[derive(Clone, Debug, PartialEq)]
pub struct SillRequired {
    /// Greatest spacing of the bolts.
    pub spacing: Required<Length>,
    /// Plate washers, where they are asked for.
    pub plate_washer: Option<Required<PlateWasher>>,
}

impl SillRequired {
    /// The code's spacing of 6 ft and no plate washers.
    #[must_use]
    pub fn by_code() -> Self {
        Self { spacing: Required::new(SPACING, ANCHOR_BOLTS), plate_washer: None }
    }
}

/// One piece of a sill plate.
#[derive(Clone, Debug, PartialEq)]
pub struct Sill {
    /// Its length.
    pub length: Length,
    /// Its width.
    pub width: Length,
    /// Thickness of all plates under the nut.
    pub plates: Length,
    /// What is asked.
    pub required: SillRequired,
    /// Its bolts.
    pub bolts: Vec<AnchorBolt>,
}

/// The judgement of a sill plate.
#[derive(Clone, Debug, PartialEq)]
pub struct SillAnswer {
    /// Each bolt, in the order given.
    pub bolts: Vec<Finding>,
    /// Bolts that hold: with a tight nut, a washer, and thread for the nut.
    pub hold: u32,
    /// Bolts of which that could not be told.
    pub untold: u32,
    /// Number, ends and spacing, by the bolts that hold.
    pub piece: Finding,
}

impl SillAnswer {
    /// The worst of bolts and piece.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        let bolts = self.bolts.iter().map(Finding::verdict);
        Verdict::worst(bolts.chain([self.piece.verdict()])).unwrap_or(Verdict::NotSeen)
    }
}

/// Judges a piece of sill plate (R403.1.6).
///
/// Number, ends and spacing go by the bolts that hold. Where bolts whose nuts were not seen would make up what is
/// short, it is *not seen* and not *out*.
#[must_use]
pub fn judge_sill(sill: &Sill) -> SillAnswer {
    let bolts: Vec<Finding> = sill.bolts.iter().map(|bolt| judge_bolt(bolt, sill)).collect();
    let told: Vec<Option<bool>> = sill.bolts.iter().zip(&bolts).map(|(bolt, finding)| holds(bolt, finding)).collect();
    let those = |wanted: &dyn Fn(Option<bool>) -> bool| {
        let picked = sill.bolts.iter().zip(&told).filter(|(_, told)| wanted(**told)).map(|(bolt, _)| bolt);
        let mut picked: Vec<&AnchorBolt> = picked.collect();
        picked.sort_by(|a, b| a.at.inches().total_cmp(&b.at.inches()));
        picked
    };
    let hold = those(&|told| told == Some(true));
    let may_hold = those(&|told| told != Some(false));
    let mut piece = piece(sill, &hold);
    let at_best = self::piece(sill, &may_hold);
    let (untold, rest): (Vec<Check>, Vec<Check>) = core::mem::take(&mut piece.checks)
        .into_iter()
        .partition(|check| check.verdict == Verdict::Out && !at_best.is_out(check.of));
    piece.checks = rest;
    piece.not_seen.extend(untold.iter().map(|check| check.of));
    // What is out even with every bolt that may hold is out.
    let for_sure = at_best.checks.iter().filter(|check| check.verdict == Verdict::Out && !piece.is_out(check.of));
    let for_sure: Vec<Check> = for_sure.cloned().collect();
    piece.checks.extend(for_sure);
    if piece.verdict() != Verdict::Out {
        piece.remedies.clear();
    }
    SillAnswer { hold: hold.len() as u32, untold: (may_hold.len() - hold.len()) as u32, bolts, piece }
}

fn piece(sill: &Sill, bolts: &[&AnchorBolt]) -> Finding {
    let mut finding = Finding::default();
    let (needed, source) = bolts_needed(sill.length);
    let (there, asked) = (Count::of(bolts.len() as u32), Count::of(u32::from(needed)));
    finding.checks.push(Check::at_least(Subject::BoltsInPiece, there, asked, source));
    if finding.is_out(Subject::BoltsInPiece) {
        finding.remedy(&[Remedy::DrilledAnchor]);
    }
    let from_start: Vec<(Length, Length)> = bolts.iter().map(|bolt| (bolt.at, bolt.diameter)).collect();
    let from_end: Vec<_> = from_start.iter().rev().map(|(at, diameter)| (sill.length - *at, *diameter)).collect();
    end(&mut finding, &from_start, needed, |from_end| from_end);
    end(&mut finding, &from_end, needed, |from_end| sill.length - from_end);
    for pair in bolts.windows(2) {
        let Required { value, origin } = &sill.required.spacing;
        let (before, after) = (pair[0].at, pair[1].at);
        let check = Check::at_most(Subject::BoltSpacing, after - before, *value, origin.clone());
        if check.verdict == Verdict::Out {
            finding.remedy(&[Remedy::AddBoltAt((before + after) / 2.0)]);
        }
        finding.checks.push(check);
    }
    finding
}

/// One end of the piece: the first bolt that is not too near to it must be near enough.
fn end(finding: &mut Finding, bolts: &[(Length, Length)], needed: u8, place: impl Fn(Length) -> Length) {
    let too_near =
        |at: Length, diameter| Check::at_least(Subject::BoltNotTooNearEnd, at, nearest_to_end(diameter), ANCHOR_BOLTS);
    let good = bolts.iter().find(|(at, diameter)| too_near(*at, *diameter).verdict.holds());
    let near = good.map(|(at, _)| Check::at_most(Subject::BoltNearEnd, *at, FARTHEST_FROM_END, ANCHOR_BOLTS));
    let near_enough = near.as_ref().is_some_and(|check| check.verdict.holds());
    // A short piece has one bolt, and its place is not set by the ends.
    if needed >= BOLTS_A_PIECE {
        finding.checks.extend(near);
        if !near_enough {
            finding.remedy(&[Remedy::AddBoltAt(place((nearest_to_end(DIAMETER) + FARTHEST_FROM_END) / 2.0))]);
        }
    }
    let tells = !near_enough && (needed >= BOLTS_A_PIECE || (needed > 0 && good.is_none()));
    let first = bolts.first().filter(|_| tells).map(|(at, diameter)| too_near(*at, *diameter));
    finding.checks.extend(first.filter(|check| check.verdict == Verdict::Out));
}
