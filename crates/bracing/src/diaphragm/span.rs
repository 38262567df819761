//! A rectangular floor or roof between two wall lines.

use measure::{Force, Length, LineLoad, Moment, Ratio};
use standards::sdpws_2015::diaphragm::{BendingDiaphragm, Bow, OPEN_FRONT, Splice, ratio, three_terms};
use standards::{OutsideTable, Source, Status};

use super::strength::DiaphragmStrength;

/// What holds it up against the wind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    /// A wall line at each of its ends.
    AtBothEnds,
    /// A wall line at one end; the other side is open.
    AtOneEnd,
}

/// Its outline.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outline {
    /// A rectangle without large openings.
    Rectangle,
    /// Any other: a corner that goes in, a stair or a hole of note, a step in its level.
    Irregular,
}

/// A floor or a roof under a load along its width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Diaphragm {
    /// Span, between its wall lines.
    pub length: Length,
    /// Depth, along the load.
    pub width: Length,
    /// Wind along its length, allowable stress design.
    pub load: LineLoad,
    /// What holds it.
    pub held: Held,
    /// Its outline.
    pub outline: Outline,
}

impl Diaphragm {
    /// What each of its two wall lines is given.
    #[must_use]
    pub fn reaction(&self) -> Force {
        self.load * self.length / 2.0
    }

    /// Shear at a place along its length, spread over its width: positive on the near half, negative past the middle.
    #[must_use]
    pub fn unit_shear_at(&self, place: Length) -> LineLoad {
        (self.reaction() - self.load * place) / self.width
    }

    /// Moment at a place along its length, as of a beam.
    #[must_use]
    pub fn moment_at(&self, place: Length) -> Moment {
        self.load * place * ((self.length - place) / 2.0)
    }

    /// Pull in one chord and push in the other there: what a splice of the top plate at that place must carry.
    ///
    /// Source: statics, `M / W`; in the middle `w L² / (8 W)`.
    #[must_use]
    pub fn chord_at(&self, place: Length) -> Force {
        Force::from_pounds(self.moment_at(place) / (Force::from_pounds(1.0) * self.width))
    }
}

/// What a floor or a roof answers.
#[derive(Clone, Debug, PartialEq)]
pub struct DiaphragmAnswer {
    /// Length over width.
    pub ratio: Ratio,
    /// What each of its two wall lines is given.
    pub reaction: Force,
    /// Unit shear beside the wall lines, where it is most.
    pub unit_shear: LineLoad,
    /// Share of what it carries that is used.
    pub used: Ratio,
    /// Pull and push in the chords in the middle, where it is most.
    pub chord: Force,
}

/// 4.2.4 and statics: what is worked here.
const WORKED: Source = Source::new("SDPWS 2015", "4.2", Status::FromMemory);

/// Works out a floor or a roof in wind.
///
/// Source: SDPWS 2015 4.2 with Table 4.2.4; unit shear and chords by statics of a simple beam.
///
/// # Errors
/// Where one side is open, the outline is no rectangle, or it is more slender than the limit.
pub fn check_diaphragm(floor: &Diaphragm, strength: &DiaphragmStrength) -> Result<DiaphragmAnswer, OutsideTable> {
    if floor.held == Held::AtOneEnd {
        return Err(OutsideTable {
            source: OPEN_FRONT,
            given: "a floor or roof with a wall line at one end only".to_owned(),
            covers: "open fronts by a design of the turning, which is not worked here",
            next_step: "Give the open side a wall line, or have an engineer design it.",
        });
    }
    if floor.outline == Outline::Irregular {
        return Err(OutsideTable {
            source: WORKED,
            given: "an outline that is no plain rectangle".to_owned(),
            covers: "rectangles without large openings, as worked here",
            next_step: "Divide it into rectangles with a wall line between them, or ask the engineer.",
        });
    }
    let ratio = ratio(floor.length, floor.width, strength.blocked)?;
    let unit_shear = floor.unit_shear_at(Length::ZERO);
    Ok(DiaphragmAnswer {
        ratio,
        reaction: floor.reaction(),
        unit_shear,
        used: unit_shear / strength.allowable.line_load(),
        chord: floor.chord_at(floor.length / 2.0),
    })
}

impl Diaphragm {
    /// How far the middle of it bows, in three terms; none where no stiffness of the panel is held.
    ///
    /// `chord` is the chord of one side as [`BendingDiaphragm`] has it: its area and its stiffness.
    #[must_use]
    pub fn bow(
        &self,
        (chord, modulus): (measure::Area, measure::Stress),
        splices: &[Splice],
        strength: &DiaphragmStrength,
    ) -> Option<Bow> {
        let bending = BendingDiaphragm { length: self.length, width: self.width, chord, modulus };
        Some(three_terms(&bending, self.unit_shear_at(Length::ZERO), strength.stiffness?, splices))
    }
}
