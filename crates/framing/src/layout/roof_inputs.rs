//! Roofs read from inputs: the common rafter, the corner, and what was taken for the run.

use layout::roof::{Common, Corner, Meeting, Ridge, RoofError, Sides, Tail};
use lumber::SawnSize;
use measure::{Angle, Length, Slope};

use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

/// The common rafter; what is wrong with its inputs is said.
pub(super) fn rafter(reading: &mut Reading) -> Option<Common> {
    let (overhang, fascia) = (reading.length("eave_overhang")?, reading.length("fascia_thick")?);
    if overhang > Length::ZERO && overhang <= fascia {
        let least = words::length(fascia);
        reading.refuse(
            "fascia_thick",
            format!("It is as thick as the overhang is wide ({least}): give the overhang to its outer face."),
        );
        return None;
    }
    let size = SawnSize::from_text(reading.word("cut_stick")?).ok()?;
    Some(Common {
        pitch: Slope::from_rise_in_twelve(reading.number("roof_pitch")?),
        run: run(reading)?,
        overhang: if overhang > Length::ZERO { overhang - fascia } else { overhang },
        thickness: size.breadth(),
        depth: size.depth(),
        seat: reading.length("seat_level")?,
        ridge: ridge(reading)?,
        tail: if reading.word("tail_cut")? == "square" { Tail::Square } else { Tail::Plumb },
    })
}

/// Level run, outer face of the plate to the middle of the ridge.
pub(super) fn run(reading: &Reading) -> Option<Length> {
    Some(reading.length("cut_run").unwrap_or(reading.length("house_width")? / 2.0))
}

fn ridge(reading: &Reading) -> Option<Ridge> {
    let (thick, depth) = (reading.length("ridge_thick")?, reading.length("ridge_deep")?);
    Some(match reading.word("ridge_meets")? {
        "board" => Ridge::Board { thickness: thick, depth },
        "beam_face" => Ridge::BeamAtFace { width: thick, depth },
        "beam_top" => Ridge::BeamUnder { width: thick, depth, seat: reading.length("ridge_seat")? },
        _ => Ridge::NoBoard,
    })
}

/// The pitch of roof A.
pub(super) fn pitch(reading: &Reading) -> Option<Slope> {
    reading.number("roof_pitch").map(Slope::from_rise_in_twelve)
}

/// The pitch of roof B: that of roof A where it is not said.
pub(super) fn other_pitch(reading: &Reading) -> Option<Slope> {
    reading.number("cut_other_pitch").map(Slope::from_rise_in_twelve).or_else(|| pitch(reading))
}

/// The corner, or why there is none.
pub(super) fn corner(reading: &Reading) -> Option<Result<Corner, RoofError>> {
    let meeting = if reading.word("cut_corner")? == "valley" { Meeting::Valley } else { Meeting::Hip };
    let pitches = Sides { a: pitch(reading)?, b: other_pitch(reading)? };
    Some(Corner::new(meeting, pitches, Angle::from_degrees(reading.number("corner_angle")?)))
}

/// Says what was taken where nobody gave a run.
pub(super) fn run_taken(reading: &Reading, about: &mut About<'_>) {
    if reading.length("cut_run").is_none()
        && let Some(run) = run(reading)
    {
        about.assume("cut_run", &format!("Run: {} (half of the house).", words::length(run)));
    }
}

/// Says what was taken for the pitch around the corner.
pub(super) fn other_pitch_taken(reading: &Reading, about: &mut About<'_>) {
    if reading.number("cut_other_pitch").is_none() {
        about.assume("cut_other_pitch", "Pitch of the other roof: the same.");
    }
}
