//! Headroom under the floor above, and how long the well in it must be.

use measure::Length;

use super::check::{Check, Edition, NOISE, Subject};
use super::error::{StairError, count, size, thickness};

/// A stair and the floor that it goes up through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Well {
    /// One riser.
    pub riser: Length,
    /// Run of one tread.
    pub tread: Length,
    /// Risers of the flight.
    pub risers: u16,
    /// From the upper finish floor down to the ceiling under the header of the well: finish, subfloor, joist, strips and board.
    pub floor_thickness: Length,
    /// What covers the face of the header: board or wall finish.
    pub header_finish: Length,
    /// What covers the face of the framing at the top of the stairs: the last nosing and riser board.
    pub top_finish: Length,
    /// The code that it is held to.
    pub edition: Edition,
}

/// The well that leaves enough headroom.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WellAnswer {
    /// From the top nosing to the finished face of the header. Where that is the whole flight, the header stands past the first
    /// riser. None where the lower floor itself has too little height: no well mends that.
    pub length: Option<Length>,
    /// The opening in the framing, which the finishes at both ends make longer.
    pub framing: Option<Length>,
    /// Height between the lower floor and the ceiling over it.
    pub on_lower_floor: Check,
}

/// Headroom under a header that is there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Headroom {
    /// Against the code.
    pub check: Check,
    /// Whether one stands on the lower floor there.
    pub on_lower_floor: bool,
    /// How much longer the well has to be; none where it is enough, or where no well mends it.
    pub longer_by: Option<Length>,
}

/// Length of the well: `(80 + Tf) t / r`, no more than the flight.
///
/// Source: geometry; IRC R311.7.2.
///
/// # Errors
/// Sizes of nothing or over 100 ft, finishes below nothing, fewer than two risers.
pub fn well(given: &Well) -> Result<WellAnswer, StairError> {
    let risers = checked(given)?;
    let limit = given.edition.limits().headroom;
    let flight = given.tread * f64::from(risers - 1);
    let over_nosings = (limit.value + given.floor_thickness) * (given.tread / given.riser);
    let on_lower_floor =
        Check::at_least(Subject::Headroom, given.riser * f64::from(risers) - given.floor_thickness, limit);
    let length = on_lower_floor.holds().then(|| over_nosings.min(flight));
    let framing = length.map(|length| length + given.header_finish + given.top_finish);
    Ok(WellAnswer { length, framing, on_lower_floor })
}

/// Headroom under the edge of a header whose finished face is so far from the top nosing: `x r / t - Tf`, or what the lower floor
/// has where the stairs have not begun.
///
/// Source: geometry; IRC R311.7.2.
///
/// # Errors
/// As [`well`]; a distance below nothing.
pub fn headroom(given: &Well, from_top_nosing: Length) -> Result<Headroom, StairError> {
    let risers = checked(given)?;
    let distance = thickness("distance from the top nosing to the header", from_top_nosing)?;
    let needed = well(given)?;
    let on_lower_floor = distance > given.tread * f64::from(risers - 1) + NOISE;
    let check = if on_lower_floor {
        needed.on_lower_floor
    } else {
        let over_nosing = distance * (given.riser / given.tread) - given.floor_thickness;
        Check::at_least(Subject::Headroom, over_nosing, given.edition.limits().headroom)
    };
    let longer_by = needed.length.map(|length| length - distance).filter(|_| !check.holds());
    Ok(Headroom { check, on_lower_floor, longer_by })
}

fn checked(given: &Well) -> Result<u16, StairError> {
    size("riser", given.riser)?;
    size("run of a tread", given.tread)?;
    size("thickness of the upper floor", given.floor_thickness)?;
    thickness("finish of the header", given.header_finish)?;
    thickness("finish at the top", given.top_finish)?;
    count(given.risers.into(), 2)
}
