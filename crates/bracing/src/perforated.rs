//! A wall with openings that is held down at its two ends alone.

use measure::{Area, Force, Length, LineLoad, Ratio};
use standards::sdpws_2015::{aspect, perforated};
use standards::{OutsideTable, Source};

use crate::strength::Strength;

/// An opening.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// Its width.
    pub width: Length,
    /// Its height.
    pub height: Length,
    /// Whether the wall is sheathed above and below it; if not, it is as high as the wall.
    pub sheathed: bool,
}

/// A wall with openings.
#[derive(Clone, Debug, PartialEq)]
pub struct PerforatedWall {
    /// Height.
    pub height: Length,
    /// Full-height pieces, from the left; the wall begins and ends with one.
    pub pieces: Vec<Length>,
    /// Openings between them.
    pub openings: Vec<Opening>,
    /// Push along it at its top, allowable stress design.
    pub shear: Force,
}

/// What a wall with openings answers.
#[derive(Clone, Debug, PartialEq)]
pub struct PerforatedAnswer {
    /// Full-height length that counts: narrow pieces count for less, those past the limit for nothing.
    pub counted: Length,
    /// Opening adjustment factor by the tallest opening, and by the area of all.
    pub factors: (Ratio, Ratio),
    /// The smaller of the two, which is used.
    pub factor: Ratio,
    /// What the wall carries.
    pub capacity: Force,
    /// Share of it that is used.
    pub used: Ratio,
    /// The hardest unit shear, for plates, collectors and bolts.
    pub unit_shear: LineLoad,
    /// What holds each end down, before dead load; the same presses at the end of every piece.
    pub end_force: Force,
    /// Uplift along the bottom plate under the full-height pieces between the ends.
    pub plate_uplift: LineLoad,
    /// Where its limits stand.
    pub source: Source,
}

/// Works out a wall with openings in wind.
///
/// The opening factor is the smaller of the two printed forms. Source: SDPWS 2015 4.3.5.3, Eq. 4.3-8 and 4.3-9; 4.3.4.3 for
/// narrow pieces (from memory).
///
/// # Errors
/// Where an end piece is narrower than the limit, the wall is higher than 20 ft, its unit shear is over the most that such a
/// wall may have, its level joints lie on nothing, or the openings are not those between its pieces.
pub fn check_perforated(wall: &PerforatedWall, strength: &Strength) -> Result<PerforatedAnswer, OutsideTable> {
    let outside =
        |given: String, covers, next_step| Err(OutsideTable { source: perforated::LIMITS, given, covers, next_step });
    if wall.height > perforated::HIGHEST {
        let given = format!("a wall {} ft high", wall.height.feet());
        return outside(given, "walls to 20 ft", "An engineer designs a higher wall.");
    }
    if !strength.blocked {
        let given = "level joints that are not blocked".to_owned();
        return outside(given, "walls with all edges of the panels on framing", "Block them, or ask the engineer.");
    }
    let strength = strength.of_pieces(wall.height, &wall.pieces);
    if strength.one_face > perforated::MOST_IN_WIND {
        let given = format!("a nominal unit shear of {} plf", strength.one_face.plf());
        return outside(given, "nominal unit shears to 2,435 plf", "Hold each piece down at its own ends instead.");
    }
    if wall.pieces.is_empty() || wall.openings.len() + 1 != wall.pieces.len() {
        let given = format!("{} pieces and {} openings", wall.pieces.len(), wall.openings.len());
        let next = "Give the pieces from end to end, with one opening between each two.";
        return outside(given, "walls that begin and end with a full-height piece", next);
    }
    let ratio = |length: Length| strength.ratio(wall.height, length);
    ratio(wall.pieces[0])?;
    ratio(wall.pieces[wall.pieces.len() - 1])?;
    let counts = |length: Length| length * ratio(length).map_or(0.0, aspect::sharing_factor);
    let counted = wall.pieces.iter().fold(Length::ZERO, |sum, length| sum + counts(*length));
    let sum = |lengths: &mut dyn Iterator<Item = Length>| lengths.fold(Length::ZERO, |sum, one| sum + one);
    let whole = sum(&mut wall.pieces.iter().copied()) + sum(&mut wall.openings.iter().map(|one| one.width));
    let high = |one: &Opening| if one.sheathed { one.height.min(wall.height) } else { wall.height };
    let tallest = wall.openings.iter().map(high).fold(Length::ZERO, Length::max);
    let open = wall.openings.iter().fold(Area::ZERO, |sum, one| sum + one.width * high(one));
    let by_tallest = perforated::by_tallest_opening(tallest / wall.height, counted / whole);
    let by_area = perforated::by_area(whole, counted, open, wall.height);
    // A wall without an opening is a piece of wall; the factor is then for its narrowness alone, which is counted.
    let factor = if wall.openings.is_empty() { 1.0 } else { by_tallest.min(by_area) };
    let effective = counted * factor;
    let capacity = strength.allowable.line_load() * effective;
    let unit_shear = wall.shear / effective;
    Ok(PerforatedAnswer {
        counted,
        factors: (by_tallest, by_area),
        factor,
        capacity,
        used: wall.shear / capacity,
        unit_shear,
        end_force: unit_shear * wall.height,
        plate_uplift: unit_shear,
        source: perforated::LIMITS,
    })
}
