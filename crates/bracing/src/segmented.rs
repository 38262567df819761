//! A wall line of full-height pieces, each held down at both of its ends.

use measure::{Force, Length, LineLoad, Ratio};
use standards::OutsideTable;
use standards::sdpws_2015::aspect;

use crate::strength::Strength;

/// Share of the dead load that counts against uplift: combination 0.6D + 0.6W of ASCE 7-16 2.4.1.
pub const OF_DEAD: Ratio = 0.6;

/// What the ends of a piece of wall are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ends {
    /// Thickness along the wall of the post that is pressed.
    pub post: Length,
    /// From the wall's end to the hold-down's rod.
    pub hold_down: Length,
}

impl Ends {
    /// The arm between what presses and what holds.
    #[must_use]
    pub fn arm(&self, length: Length) -> Length {
        length - self.post / 2.0 - self.hold_down
    }
}

/// A line of full-height pieces of like construction.
#[derive(Clone, Debug, PartialEq)]
pub struct SegmentedWall {
    /// Height, under the bottom plate to the top of the top plate.
    pub height: Length,
    /// Length of each piece, from the left.
    pub pieces: Vec<Length>,
    /// Push along the line at its top, allowable stress design.
    pub shear: Force,
    /// Dead load that surely stands on it.
    pub dead: LineLoad,
    /// The ends of each piece.
    pub ends: Ends,
}

/// One piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Segment {
    /// Its length.
    pub length: Length,
    /// Its height over its length; refused where it is too narrow to count.
    pub ratio: Result<Ratio, OutsideTable>,
    /// What its narrowness leaves of its strength; nothing where it does not count.
    pub factor: Ratio,
    /// What it carries.
    pub capacity: Force,
    /// What it is given: shares go by strength.
    pub share: Force,
    /// That over its length.
    pub unit_shear: LineLoad,
    /// What holds its end down, dead load counted; none or less where dead load holds it.
    pub tension: Force,
    /// What presses on its other end from the push alone.
    pub compression: Force,
}

/// What a line of pieces answers.
#[derive(Clone, Debug, PartialEq)]
pub struct SegmentedAnswer {
    /// The pieces.
    pub pieces: Vec<Segment>,
    /// What they carry together.
    pub capacity: Force,
    /// Share of it that is used; infinite where nothing counts.
    pub used: Ratio,
    /// Full-height wall, no narrower than 2:1, that is missing; none where enough is there.
    pub missing: Option<Length>,
}

/// Works out a line of pieces in wind.
///
/// Source: SDPWS 2015 4.3.5.1; sharing by 4.3.3.4.1; hold-downs by moments about the pressed post, with 0.6 of the dead
/// load (ASCE 7-16 2.4.1).
#[must_use]
pub fn check_segmented(wall: &SegmentedWall, strength: &Strength) -> SegmentedAnswer {
    let strength = strength.of_pieces(wall.height, &wall.pieces);
    let unit = strength.allowable.line_load();
    let counted = |length: Length| {
        let ratio = strength.ratio(wall.height, length);
        let factor = ratio.as_ref().map_or(0.0, |ratio| aspect::sharing_factor(*ratio));
        (length, ratio, factor)
    };
    let counted: Vec<_> = wall.pieces.iter().map(|length| counted(*length)).collect();
    let capacity = counted.iter().fold(Force::ZERO, |sum, (length, _, factor)| sum + unit * *length * *factor);
    let piece = |(length, ratio, factor): (Length, Result<Ratio, OutsideTable>, Ratio)| {
        let own = unit * length * factor;
        let share = if capacity > Force::ZERO { wall.shear * (own / capacity) } else { Force::ZERO };
        let arm = wall.ends.arm(length);
        // Moments about the pressed post, over the arm.
        let over = |force: Force, lever: Length| if arm > Length::ZERO { force * (lever / arm) } else { Force::ZERO };
        let pulled = over(share, wall.height);
        let held = over(wall.dead * OF_DEAD * length, length / 2.0);
        let counts = factor > 0.0;
        Segment {
            length,
            ratio,
            factor,
            capacity: own,
            share,
            unit_shear: share / length,
            tension: if counts { pulled - held } else { Force::ZERO },
            compression: pulled,
        }
    };
    let pieces = counted.into_iter().map(piece).collect();
    let used = if capacity > Force::ZERO { wall.shear / capacity } else { f64::INFINITY };
    let of_a_foot = unit * Length::from_feet(1.0);
    let missing = (wall.shear > capacity).then(|| Length::from_feet((wall.shear - capacity) / of_a_foot));
    SegmentedAnswer { pieces, capacity, used, missing }
}
