//! What rafters meet at the top, how high it stands, and the post under it.

use measure::{Length, Slope};

use super::error::{RoofError, positive};
use super::plane::rise;

/// What a common rafter meets at the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ridge {
    /// The rafter across from it.
    NoBoard,
    /// A board between them, its top corners in the planes of their top edges.
    Board {
        /// Its thickness.
        thickness: Length,
        /// Its depth.
        depth: Length,
    },
    /// A beam that carries, the rafters hung on its faces and flush with its top corners.
    BeamAtFace {
        /// Its width.
        width: Length,
        /// Its depth.
        depth: Length,
    },
    /// A beam that carries, the rafters notched over it and meeting on its centre line.
    BeamUnder {
        /// Its width.
        width: Length,
        /// Its depth.
        depth: Length,
        /// Level width of the seat of one rafter on it; half of the beam at the most.
        seat: Length,
    },
}

/// How high a ridge stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RidgeHeight {
    /// Where the planes of the top edges meet, above the plate: the rise and the height above plate.
    pub peak: Length,
    /// The rise alone. A ridge set so low does not fit: see [`RidgeHeight::reading`].
    pub plain_rise: Length,
    /// Top of the ridge above the plate; none without one.
    pub top: Option<Length>,
    /// Bottom of the ridge above the plate: the post under it, from the height of the plate; none without a ridge.
    pub post: Option<Length>,
    /// Whether ridge board or beam is as deep as the plumb cut that bears against it; none where nothing does.
    pub covers_cut: Option<bool>,
}

/// A ridge height that someone set, against the right one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RidgeReading {
    /// Right to a sixteenth.
    Right,
    /// Set at the plain rise, without the height of the rafter above the plate.
    AtPlainRise {
        /// What it stands too low.
        short: Length,
    },
    /// Off by so much: above zero too high.
    Off(Length),
}

impl RidgeHeight {
    /// Reads the top of a ridge that was set, above the plate. None without a ridge.
    #[must_use]
    pub fn reading(&self, top: Length) -> Option<RidgeReading> {
        /// The finest that is cut.
        const A_SIXTEENTH: Length = Length::from_inches(1.0 / 16.0);
        /// Nominal for dressed depth of the ridge, or half of it forgotten: still the same slip.
        const NEAR_THE_RISE: Length = Length::from_inches(0.5);
        let off = top - self.top?;
        Some(if off.abs() <= A_SIXTEENTH {
            RidgeReading::Right
        } else if (top - self.plain_rise).abs() <= NEAR_THE_RISE {
            RidgeReading::AtPlainRise { short: -off }
        } else {
            RidgeReading::Off(off)
        })
    }
}

impl Ridge {
    /// What it takes off a rafter, level: half of its thickness.
    #[must_use]
    pub fn shortening(&self) -> Length {
        match *self {
            Self::NoBoard | Self::BeamUnder { .. } => Length::ZERO,
            Self::Board { thickness, .. } => thickness / 2.0,
            Self::BeamAtFace { width, .. } => width / 2.0,
        }
    }

    /// How high it stands over a run, the top edges of rafters so high above the plate.
    pub(super) fn height(&self, run: Length, pitch: Slope, depth: Length, above_plate: Length) -> RidgeHeight {
        let plain_rise = rise(run, pitch);
        let peak = above_plate + plain_rise;
        let plumb = depth / pitch.angle().cos();
        let (top, own_depth) = match *self {
            Self::NoBoard => (None, Length::ZERO),
            Self::Board { depth, .. } | Self::BeamAtFace { depth, .. } => {
                (Some(peak - rise(self.shortening(), pitch)), depth)
            }
            Self::BeamUnder { width, depth: own, seat } => {
                (Some(peak - rise(width / 2.0, pitch) - (plumb - rise(seat, pitch))), own)
            }
        };
        let bears = matches!(self, Self::Board { .. } | Self::BeamAtFace { .. });
        let covers_cut = bears.then_some(own_depth >= plumb);
        RidgeHeight { peak, plain_rise, top, post: top.map(|top| top - own_depth), covers_cut }
    }

    pub(super) fn is_whole(&self) -> Result<(), RoofError> {
        match *self {
            Self::NoBoard => Ok(()),
            Self::Board { thickness, depth } => {
                positive("thickness of the ridge", thickness)?;
                positive("depth of the ridge", depth)
            }
            Self::BeamAtFace { width, depth } => {
                positive("width of the ridge beam", width)?;
                positive("depth of the ridge beam", depth)
            }
            Self::BeamUnder { width, depth, seat } => {
                positive("width of the ridge beam", width)?;
                positive("depth of the ridge beam", depth)?;
                positive("seat on the ridge beam", seat)?;
                let half = width / 2.0;
                let short = RoofError::Order { what: "half of the ridge beam's width", given: half, least: seat };
                if half >= seat { Ok(()) } else { Err(short) }
            }
        }
    }
}
