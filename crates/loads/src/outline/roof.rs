//! Kinds of roof, each as planes of which the lowest at a point is the roof.

use measure::{Length, Ratio, Slope};

use super::point::{Along, PlanPoint, Rectangle, Side};

/// A roof over a rectangle. The eave is level and at one height all around, but for a shed roof, where it is the low
/// one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Roof {
    /// Two slopes from one ridge, and a gable at each end.
    Gable {
        /// The direction of the ridge.
        ridge: Along,
        /// Pitch of the front and the back slope, or of the left and the right one.
        pitches: [Slope; 2],
    },
    /// Four slopes. The ridge lies where they meet; where they meet in a point there is none.
    Hip {
        /// Pitch of the front and the back slope.
        front_and_back: Slope,
        /// Pitch of the left and the right slope.
        left_and_right: Slope,
    },
    /// One slope.
    Shed {
        /// The side that it falls to.
        low_side: Side,
        /// Its pitch.
        pitch: Slope,
    },
    /// Two slopes on each side of the ridge, the lower ones steeper, alike on both sides.
    Gambrel {
        /// The direction of the ridge.
        ridge: Along,
        /// Pitch of the lower slopes.
        lower: Slope,
        /// Pitch of the upper slopes.
        upper: Slope,
        /// Level distance from the outside face of the wall to where the pitch changes.
        lower_run: Length,
    },
    /// Level.
    Flat,
}

/// How far a roof reaches beyond the walls, measured level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overhangs {
    /// At the eaves: all around a hip and a flat roof, both ends of a shed roof's slope.
    pub eave: Length,
    /// At the gable ends, and beside a shed roof's slope.
    pub rake: Length,
}

impl Overhangs {
    /// None at all.
    pub const NONE: Self = Self { eave: Length::ZERO, rake: Length::ZERO };
}

/// One plane of a roof: it rises from a side of the walls.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct RoofPlane {
    /// The side that it falls to.
    pub falls_to: Side,
    /// Its height over that side's wall, if it went on to there.
    pub height_at_wall: Length,
    /// Its pitch.
    pub pitch: Slope,
}

const RUN: f64 = 12.0;

/// Rise over run.
pub(super) fn rise(pitch: Slope) -> Ratio {
    pitch.rise_in_twelve() / RUN
}

impl RoofPlane {
    /// Its height at a point.
    pub fn height(&self, walls: &Rectangle, point: PlanPoint) -> Length {
        self.height_at_wall + walls.inside_of(self.falls_to, point) * rise(self.pitch)
    }
}

impl Roof {
    /// Its planes, for an eave height.
    pub(super) fn planes(&self, eave: Length) -> Vec<RoofPlane> {
        let plane = |falls_to, pitch| RoofPlane { falls_to, height_at_wall: eave, pitch };
        match *self {
            Self::Gable { ridge, pitches } => {
                Side::pair(ridge).into_iter().zip(pitches).map(|(side, pitch)| plane(side, pitch)).collect()
            }
            Self::Hip { front_and_back, left_and_right } => vec![
                plane(Side::Front, front_and_back),
                plane(Side::Back, front_and_back),
                plane(Side::Left, left_and_right),
                plane(Side::Right, left_and_right),
            ],
            Self::Shed { low_side, pitch } => vec![plane(low_side, pitch)],
            Self::Gambrel { ridge, lower, upper, lower_run } => Side::pair(ridge)
                .into_iter()
                .flat_map(|side| {
                    let height_at_wall = eave + lower_run * (rise(lower) - rise(upper));
                    [plane(side, lower), RoofPlane { falls_to: side, height_at_wall, pitch: upper }]
                })
                .collect(),
            Self::Flat => vec![plane(Side::Front, Slope::ZERO)],
        }
    }

    /// Every pitch that it has.
    pub(super) fn pitches(&self) -> Vec<Slope> {
        match *self {
            Self::Gable { pitches, .. } => pitches.to_vec(),
            Self::Hip { front_and_back, left_and_right } => vec![front_and_back, left_and_right],
            Self::Shed { pitch, .. } => vec![pitch],
            Self::Gambrel { lower, upper, .. } => vec![lower, upper],
            Self::Flat => vec![],
        }
    }

    /// Overhang at a side.
    pub(super) fn overhang(&self, side: Side, overhangs: &Overhangs) -> Length {
        let slope_runs_along = match *self {
            Self::Gable { ridge, .. } | Self::Gambrel { ridge, .. } => ridge,
            Self::Shed { low_side, .. } => low_side.runs(),
            Self::Hip { .. } | Self::Flat => side.runs(),
        };
        if side.runs() == slope_runs_along { overhangs.eave } else { overhangs.rake }
    }
}
