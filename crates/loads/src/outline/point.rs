//! Points of a plan and of a house, its sides and directions.

use measure::{Angle, Length};

/// A point of the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanPoint {
    /// Along the front, to the right.
    pub x: Length,
    /// From the front to the back.
    pub y: Length,
}

impl PlanPoint {
    /// The corner that distances are taken from.
    pub const ORIGIN: Self = Self { x: Length::ZERO, y: Length::ZERO };

    /// A point.
    #[must_use]
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }

    /// The same point, a height above the ground.
    #[must_use]
    pub const fn at_height(self, z: Length) -> Point {
        Point { x: self.x, y: self.y, z }
    }
}

/// A point of the house.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Along the front, to the right.
    pub x: Length,
    /// From the front to the back.
    pub y: Length,
    /// Above the ground.
    pub z: Length,
}

impl Point {
    /// Where it is on the plan.
    #[must_use]
    pub const fn plan(self) -> PlanPoint {
        PlanPoint { x: self.x, y: self.y }
    }
}

/// A direction of a part's plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Along {
    /// Along its length, which is along the front.
    Length,
    /// Along its width, from front to back.
    Width,
}

/// A side of a plan that is seen from above with its front at the bottom.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The bottom of the plan.
    Front,
    /// Its right.
    Right,
    /// Its top.
    Back,
    /// Its left.
    Left,
}

impl Side {
    /// Every side, counter-clockwise from the front as the plan is seen.
    pub const ALL: [Self; 4] = [Self::Front, Self::Right, Self::Back, Self::Left];

    /// The side across.
    #[must_use]
    pub const fn opposite(self) -> Self {
        match self {
            Self::Front => Self::Back,
            Self::Right => Self::Left,
            Self::Back => Self::Front,
            Self::Left => Self::Right,
        }
    }

    /// The direction that a wall on this side runs in.
    #[must_use]
    pub const fn runs(self) -> Along {
        match self {
            Self::Front | Self::Back => Along::Length,
            Self::Right | Self::Left => Along::Width,
        }
    }

    /// The two sides that run in a direction: front and back, or left and right.
    #[must_use]
    pub const fn pair(along: Along) -> [Self; 2] {
        match along {
            Along::Length => [Self::Front, Self::Back],
            Along::Width => [Self::Left, Self::Right],
        }
    }

    /// Where a point is along this side's direction.
    #[must_use]
    pub const fn position(self, point: PlanPoint) -> Length {
        match self.runs() {
            Along::Length => point.x,
            Along::Width => point.y,
        }
    }
}

/// Where a side faces, clockwise from north. Clockwise on the ground the sides follow as front, left, back, right.
pub(super) fn azimuth(front_faces: Angle, side: Side) -> Angle {
    let turn = match side {
        Side::Front => 0.0,
        Side::Left => 90.0,
        Side::Back => 180.0,
        Side::Right => 270.0,
    };
    Angle::from_degrees((front_faces.degrees() + turn).rem_euclid(360.0))
}

/// Walls closer than this touch, and may be drawn over each other by as much: the finest mark of a tape.
pub(super) const TOUCHING: Length = Length::from_inches(1.0 / 64.0);

/// A rectangle of the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Rectangle {
    pub low: PlanPoint,
    pub high: PlanPoint,
}

impl Rectangle {
    /// Its corners, counter-clockwise; the first two end the front.
    pub fn corners(&self) -> [PlanPoint; 4] {
        let Self { low, high } = *self;
        [low, PlanPoint::new(high.x, low.y), high, PlanPoint::new(low.x, high.y)]
    }

    /// The two ends of a side, counter-clockwise.
    pub fn ends(&self, side: Side) -> [PlanPoint; 2] {
        let [front_left, front_right, back_right, back_left] = self.corners();
        match side {
            Side::Front => [front_left, front_right],
            Side::Right => [front_right, back_right],
            Side::Back => [back_right, back_left],
            Side::Left => [back_left, front_left],
        }
    }

    /// How far inside a side's line a point is; negative outside.
    pub fn inside_of(&self, side: Side, point: PlanPoint) -> Length {
        match side {
            Side::Front => point.y - self.low.y,
            Side::Right => self.high.x - point.x,
            Side::Back => self.high.y - point.y,
            Side::Left => point.x - self.low.x,
        }
    }

    /// Whether a point is in it or on its edge.
    pub fn holds(&self, point: PlanPoint) -> bool {
        Side::ALL.into_iter().all(|side| self.inside_of(side, point) >= Length::ZERO)
    }

    /// Its size along a direction.
    pub fn size(&self, along: Along) -> Length {
        match along {
            Along::Length => self.high.x - self.low.x,
            Along::Width => self.high.y - self.low.y,
        }
    }

    /// The rectangle around both.
    pub fn around(&self, other: &Self) -> Self {
        Self {
            low: PlanPoint::new(self.low.x.min(other.low.x), self.low.y.min(other.low.y)),
            high: PlanPoint::new(self.high.x.max(other.high.x), self.high.y.max(other.high.y)),
        }
    }

    /// Whether both stand side by side along some of a wall.
    pub fn touches(&self, other: &Self) -> bool {
        let [x, y] = [self.shared(other, Along::Length), self.shared(other, Along::Width)];
        (x > TOUCHING && y.abs() <= TOUCHING) || (y > TOUCHING && x.abs() <= TOUCHING)
    }

    /// Size of what both cover along a direction; negative where they lie apart.
    pub fn shared(&self, other: &Self, along: Along) -> Length {
        match along {
            Along::Length => self.high.x.min(other.high.x) - self.low.x.max(other.low.x),
            Along::Width => self.high.y.min(other.high.y) - self.low.y.max(other.low.y),
        }
    }
}
