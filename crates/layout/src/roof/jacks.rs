//! Jack rafters along a hip or valley: the first, the common difference, and every one with its long and short point.

use measure::Length;

use super::common::{Common, CommonAnswer, common};
use super::corner::{Corner, Meeting};
use super::cut::Cut;
use super::error::{RoofError, not_negative, positive};
use super::jack_space;
use super::plane::{Side, along_slope};
use super::stick::Stick;

/// The most jacks on one side of a hip or valley.
const MOST: usize = 500;

/// Where the layout of jacks along an eave starts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Start {
    /// Where the hip or valley passes over the wall line: the first jack is one spacing from it.
    Corner,
    /// The king common, that meets the end of the hip or valley: the first jack is one spacing from it.
    KingCommon,
    /// A layout carried from elsewhere: its first jack is so far from the king common, a spacing or less.
    Gap(Length),
}

/// The jacks of one plane along a hip or valley.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jacks {
    /// The planes.
    pub corner: Corner,
    /// The plane that the jacks lie in.
    pub side: Side,
    /// The common rafter of that plane: jacks have its pitch, seat, tail, thickness and depth.
    pub common: Common,
    /// Thickness of the hip or valley; of a doubled one, both plies.
    pub line_thickness: Length,
    /// From one jack to the next along the eave.
    pub spacing: Length,
    /// Where they start.
    pub start: Start,
}

/// One jack. A hip jack's lengths are from the heel's plumb line to the hip, a valley jack's from the ridge to the
/// valley; on the top edge.
#[derive(Clone, Debug, PartialEq)]
pub struct Jack {
    /// Along the eave, from where the hip or valley passes over the wall line to the middle of the jack.
    pub along_eave: Length,
    /// Level run between the centre lines of what it meets.
    pub run: Length,
    /// Length of the line over it.
    pub line_length: Length,
    /// Length on the middle of the top edge, shortened.
    pub centre: Length,
    /// Length to the long point of the cheek.
    pub long_point: Length,
    /// Length to the short point.
    pub short_point: Length,
    /// The stick with its marks.
    pub stick: Stick,
}

/// The jacks of one plane, laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct JacksAnswer {
    /// In the order of the layout, each from the corner and never added up.
    pub jacks: Vec<Jack>,
    /// From one to the next, along the slope.
    pub common_difference: Length,
    /// What the hip or valley takes off, level.
    pub shortening: Length,
    /// The same along the slope.
    pub shortening_along: Length,
    /// The cheek: plumb cut with its blade tilt, the saw on the side.
    pub cheek: Cut,
    /// The same cut with the saw on the top edge.
    pub cheek_on_top: Cut,
    /// The common of that plane.
    pub common: CommonAnswer,
}

/// Lays out the jacks of one plane. A place so near the end of the line that the cheek leaves no short point has no
/// jack.
///
/// Source: planes in space. A valley jack loses half of the ridge at the ridge, where it is square in plan; one manual
/// takes the allowance of 45 degrees there, and is not followed.
///
/// # Errors
/// A common of another pitch, sizes of nothing, a gap wider than the spacing, and more than 500 jacks.
pub fn jacks(given: &Jacks) -> Result<JacksAnswer, RoofError> {
    given.is_whole()?;
    let Jacks { corner, side, line_thickness, .. } = given;
    let of_common = common(&given.common)?;
    let shortening = corner.jack_shortening(*side, *line_thickness);
    let places = given.places()?;
    let jacks = places.into_iter().filter_map(|place| given.jack(place, &of_common)).collect();
    Ok(JacksAnswer {
        jacks,
        common_difference: corner.common_difference(*side, given.spacing),
        shortening,
        shortening_along: along_slope(shortening, corner.pitch(*side)),
        cheek: corner.jack(*side),
        cheek_on_top: corner.jack_on_top(*side),
        common: of_common,
    })
}

impl Jacks {
    fn is_whole(&self) -> Result<(), RoofError> {
        let (given, plane) = (self.common.pitch, self.corner.pitch(self.side));
        // A pitch that was turned into degrees and back is the same pitch.
        if (given - plane).rise_in_twelve().abs() > 1e-9 {
            return Err(RoofError::OtherPitch { side: self.side, given, plane });
        }
        positive("thickness of the hip or valley", self.line_thickness)?;
        positive("spacing", self.spacing)?;
        let Start::Gap(gap) = self.start else { return Ok(()) };
        not_negative("first gap", gap)?;
        let wide = RoofError::Order { what: "spacing", given: self.spacing, least: gap };
        if gap <= self.spacing { Ok(()) } else { Err(wide) }
    }

    /// From where the line passes over the wall to the king common, along the eave.
    fn king(&self) -> Length {
        self.common.run / self.corner.plan_angle(self.side).tan()
    }

    /// Places along the eave, between the corner and the king common.
    fn places(&self) -> Result<Vec<Length>, RoofError> {
        let king = self.king();
        let spaces = king / self.spacing;
        if spaces >= MOST as f64 {
            return Err(RoofError::TooMany { what: "jacks", most: MOST });
        }
        let place = |count: u32| match self.start {
            Start::Corner => self.spacing * f64::from(count + 1),
            Start::KingCommon => king - self.spacing * f64::from(count + 1),
            Start::Gap(gap) => king - gap - self.spacing * f64::from(count),
        };
        /// A jack that stands where the king common does is the king common; less than any tape shows apart.
        const TOGETHER: Length = Length::from_inches(1e-6);
        let within = |place: &Length| *place > TOGETHER && *place < king - TOGETHER;
        Ok((0..=MOST as u32).map(place).filter(within).collect())
    }

    fn jack(&self, along_eave: Length, of_common: &CommonAnswer) -> Option<Jack> {
        let pitch = self.corner.pitch(self.side);
        let from_corner = self.corner.jack_run(self.side, along_eave);
        let shortening = self.corner.jack_shortening(self.side, self.line_thickness);
        let (run, taken) = match self.corner.meeting() {
            Meeting::Hip => (from_corner, shortening),
            Meeting::Valley => (self.common.run - from_corner, shortening + self.common.ridge.shortening()),
        };
        let half_cheek = self.corner.jack_run(self.side, self.common.thickness / 2.0);
        let along = |level: Length| along_slope(level, pitch);
        let short_point = along(run - taken - half_cheek);
        if short_point <= Length::ZERO {
            return None;
        }
        Some(Jack {
            along_eave,
            run,
            line_length: along(run),
            centre: along(run - taken),
            long_point: along(run - taken + half_cheek),
            short_point,
            stick: jack_space::stick(self, along_eave, of_common.birdsmouth.height_above_plate)?,
        })
    }
}
