//! Roofs read from inputs: the common rafter, the corner, and what was taken for the run.

use layout::roof::{Birdsmouth, Common, Corner, FLATTEST, Meeting, Ridge, RoofError, Sides, Tail, birdsmouth};
use lumber::SawnSize;
use measure::{Angle, Denominator, Length, Rounding, Slope};

use crate::quick::say::down;
use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::words;

/// The common rafter; what is wrong with its inputs is said.
pub(super) fn rafter(reading: &mut Reading) -> Option<Common> {
    is_a_roof(reading, "roof_pitch")?;
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
    let pitch = pitch(reading)?;
    is_seated(reading, pitch, size.depth())?;
    Some(Common {
        pitch,
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

/// Both roofs over a corner; why they have none is said.
pub(super) fn corner(reading: &mut Reading, meeting: Meeting) -> Option<Corner> {
    is_a_roof(reading, "cut_other_pitch")?;
    let pitches = Sides { a: pitch(reading)?, b: other_pitch(reading)? };
    let angle = Angle::from_degrees(reading.number("corner_angle")?);
    match Corner::new(meeting, pitches, angle) {
        Ok(corner) => Some(corner),
        Err(RoofError::LeansPast { .. }) => {
            reading.refuse("cut_other_pitch", too_far_apart(pitches.a, angle));
            None
        }
        Err(problem) => {
            reading.refuse("corner_angle", problem.to_string());
            None
        }
    }
}

/// Whether it is a hip or a valley.
pub(super) fn meeting(reading: &Reading) -> Option<Meeting> {
    Some(if reading.word("cut_corner")? == "valley" { Meeting::Valley } else { Meeting::Hip })
}

/// Pitches that meet in no line between both eaves, and those that do: each more than the cosine's share of the other.
fn too_far_apart(pitch: Slope, angle: Angle) -> String {
    let rise = Length::from_inches(pitch.rise_in_twelve());
    let share = angle.cos().abs();
    format!(
        "At {:.0}° this pitch and {} in 12 meet in a line that no jack comes to. Give more than {} and less than {} in 12, or frame that corner with a gable.",
        angle.degrees(),
        words::inches(rise),
        words::inches((rise * share).rounded(Denominator::Sixteenth, Rounding::Up)),
        words::inches((rise / share).rounded(Denominator::Sixteenth, Rounding::Down))
    )
}

/// Refuses a pitch that is none.
pub(super) fn is_a_roof(reading: &mut Reading, input: &str) -> Option<()> {
    let flat = reading.number(input).is_some_and(|rise| rise < FLATTEST.rise_in_twelve());
    if flat {
        reading.refuse(input, "A level roof has no rafter to cut. Give a pitch of 1/16 in 12 or more.".to_owned());
    }
    (!flat).then_some(())
}

/// Refuses a seat that cuts the rafter in two.
pub(super) fn is_seated(reading: &mut Reading, pitch: Slope, depth: Length) -> Option<()> {
    let seat = reading.length("seat_level")?;
    let mouth = birdsmouth(&Birdsmouth { pitch, depth, seat, overhang: Length::ZERO }).ok()?;
    if mouth.left > Length::ZERO && mouth.height_above_plate > Length::ZERO {
        return Some(());
    }
    let cuts = "At this pitch so wide a seat cuts the rafter in two.";
    let says = match mouth.nearest_seat {
        Some(seat) => format!("{cuts} Give {} or less, or a deeper rafter.", down(seat)),
        None => format!("{cuts} No seat that bears is shallow enough: take a deeper rafter."),
    };
    reading.refuse("seat_level", says);
    None
}

/// Says what is wrong where it was typed.
pub(super) fn refuse(reading: &mut Reading, problem: &RoofError) {
    let typed = reading.get("cut_run").is_some_and(|run| run.origin != Origin::Unsaid);
    let run = if typed { "cut_run" } else { "house_width" };
    let (input, says) = match problem {
        RoofError::NothingLeft { what, run: level, taken } => {
            let (level, taken) = (words::length(*level), words::length(*taken));
            (
                run,
                format!(
                    "Nothing of the {what} is left: it runs {level} level, and {taken} of that is taken at its ends. Give a longer run, or thinner pieces."
                ),
            )
        }
        RoofError::Order { given, .. } => (
            "ridge_seat",
            format!("Two such seats do not fit on the beam. Give {} or less, or a wider beam.", down(*given)),
        ),
        RoofError::TooMany { .. } => ("jack_every", problem.to_string()),
        other => (run, other.to_string()),
    };
    reading.refuse(input, says);
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
