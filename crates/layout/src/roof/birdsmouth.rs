//! The birdsmouth of a rafter: what its seat takes out of the wood, and the widest seat that the code lets stand.

use measure::{Denominator, Length, Ratio, Rounding, Slope};
use standards::Source;
use standards::irc_2021::{r502_6, r502_8, r802_4};

use super::error::{RoofError, not_negative, positive};
use super::plane::pitched;

/// The share of the depth that old framers leave standing above a seat is two thirds. Shown beside the code's quarter,
/// and never a reason to pass; common practice.
const TRADES_SHARE: Ratio = 1.0 / 3.0;

/// A seat cut in a rafter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Birdsmouth {
    /// Pitch of the stick itself: a common's is the roof's, a hip's is its own.
    pub pitch: Slope,
    /// Depth of the stick, edge to edge.
    pub depth: Length,
    /// Level width of the seat.
    pub seat: Length,
    /// Level overhang past the plate; nothing without a tail.
    pub overhang: Length,
}

/// What editions of the code say of the wood left in a tail past its bearing, which is a rule of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TailRule {
    /// No tail.
    NoTail,
    /// The overhang is longer than the rule reaches.
    TooLong,
    /// Enough is left for every edition.
    Met,
    /// Enough for later editions, which ask 3-1/2 in, and too little for earlier ones, which ask 4 in: ask the
    /// official.
    DependsOnEdition,
    /// Too little is left.
    NotMet,
}

/// What a seat cut answers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BirdsmouthAnswer {
    /// Depth of the notch, square to the edge.
    pub notch: Length,
    /// The code's limit of it: a quarter of the depth.
    pub limit: Length,
    /// Whether the notch is within the code's limit. Nothing is rounded first.
    pub within_limit: bool,
    /// The trade's third, for comparison alone.
    pub trades_third: Length,
    /// Whether the seat bears as far as the code asks.
    pub bears: bool,
    /// The widest seat within the limit, exact.
    pub widest_seat: Length,
    /// The same on a tape: rounded down to a sixteenth.
    pub widest_seat_on_tape: Length,
    /// The nearest seat that works: the one asked for, or the widest or the narrowest; none where this stick has none.
    pub nearest_seat: Option<Length>,
    /// The least depth of stick that this seat stays within the limit of.
    pub least_depth: Length,
    /// Wood left above the notch, square to the edge.
    pub left: Length,
    /// Plumb length of the heel cut.
    pub heel: Length,
    /// Plumb height from the seat to the top edge at the plate's outer corner: height above plate, `HAP`.
    pub height_above_plate: Length,
    /// The rule for tails.
    pub tail: TailRule,
}

impl BirdsmouthAnswer {
    /// Where the limit, the bearing and the rule for tails stand.
    pub const SOURCES: [Source; 3] = [r802_4::SEAT_CUT, r802_4::RAFTER_BEARING, r802_4::TAIL];

    /// Whether the seat bears and is no deeper than the code lets it be.
    #[must_use]
    pub const fn works(&self) -> bool {
        self.within_limit && self.bears
    }
}

/// Works out a seat cut. A seat that is too deep is an answer, with the nearest that works.
///
/// Whether the quarter binds a birdsmouth that bears as far as its inner edge is disputed among officials; it is
/// applied.
///
/// Source: geometry; IRC R802.7.1 for the quarter, R802.6 for the bearing, R802.7.1.1 for tails.
///
/// # Errors
/// No pitch, or sizes that are none.
///
/// ```
/// use layout::roof::{Birdsmouth, birdsmouth};
/// use measure::{Length, Slope};
///
/// let (depth, seat) = (Length::from_inches(7.25), Length::from_inches(5.5));
/// let pitch = Slope::from_rise_in_twelve(6.0);
/// let found = birdsmouth(&Birdsmouth { pitch, depth, seat, overhang: Length::ZERO })?;
/// assert!(!found.works());
/// assert_eq!(found.nearest_seat, Some(Length::from_inches(4.0)));
/// # Ok::<(), layout::roof::RoofError>(())
/// ```
pub fn birdsmouth(given: &Birdsmouth) -> Result<BirdsmouthAnswer, RoofError> {
    let Birdsmouth { pitch, depth, seat, overhang } = *given;
    pitched(pitch)?;
    positive("depth of the rafter", depth)?;
    positive("seat", seat)?;
    not_negative("overhang", overhang)?;
    let slope = pitch.angle();
    let (notch, limit) = (seat * slope.sin(), r502_8::end_notch_limit(depth));
    let bearing = r502_6::ON_WOOD;
    let widest_seat = limit / slope.sin();
    let on_tape = widest_seat.rounded(Denominator::Sixteenth, Rounding::Down);
    let (within_limit, bears) = (notch <= limit, seat >= bearing);
    let heel = seat * slope.tan();
    Ok(BirdsmouthAnswer {
        notch,
        limit,
        within_limit,
        trades_third: depth * TRADES_SHARE,
        bears,
        widest_seat,
        widest_seat_on_tape: on_tape,
        nearest_seat: (on_tape >= bearing).then(|| if within_limit { seat.max(bearing) } else { on_tape }),
        least_depth: notch / r502_8::END_NOTCH_SHARE,
        left: depth - notch,
        heel,
        height_above_plate: depth / slope.cos() - heel,
        tail: tail(depth - notch, overhang),
    })
}

fn tail(left: Length, overhang: Length) -> TailRule {
    if overhang == Length::ZERO {
        TailRule::NoTail
    } else if overhang > r802_4::TAIL_OVERHANG {
        TailRule::TooLong
    } else if left >= r802_4::TAIL_LEFT_EARLIER {
        TailRule::Met
    } else if left >= r802_4::TAIL_LEFT_LATER {
        TailRule::DependsOnEdition
    } else {
        TailRule::NotMet
    }
}
