//! Ridges, hips and valleys that carry: what the roof gives them by its shape, and what they give to their posts.

use measure::{Angle, AreaLoad, Length, LineLoad, Ratio, Slope};

use crate::beam::Load;
use crate::flexure::{Acting, Case};
use crate::rafter::RoofLoads;

/// Whether water runs off it or down it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Corner {
    /// An outer corner: its load grows from the eave to the ridge.
    Hip,
    /// An inner corner: its load falls from the eave to the ridge.
    Valley,
}

/// A hip or a valley between two roofs whose eaves are level with each other and square to each other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HipValley {
    /// Which of the two.
    pub corner: Corner,
    /// Pitch of one roof.
    pub pitch: Slope,
    /// Pitch of the other.
    pub other_pitch: Slope,
    /// Level run of the commons of the first roof, from its eave to the ridge.
    pub run: Length,
}

impl HipValley {
    fn pitches(&self) -> (f64, f64) {
        (self.pitch.rise_in_twelve(), self.other_pitch.rise_in_twelve())
    }

    /// Angle in plan between it and the commons of the first roof.
    #[must_use]
    pub fn plan_angle(&self) -> Angle {
        let (one, other) = self.pitches();
        Angle::from_degrees(measure::math::atan2(one, other).to_degrees())
    }

    /// Angle in plan between it and the commons of the other roof.
    #[must_use]
    pub fn other_plan_angle(&self) -> Angle {
        Angle::from_degrees(90.0 - self.plan_angle().degrees())
    }

    /// Its own pitch along itself.
    #[must_use]
    pub fn own_pitch(&self) -> Slope {
        let (one, other) = self.pitches();
        Slope::from_rise_in_twelve(one * other / (one * one + other * other).sqrt())
    }

    /// Its length in plan.
    #[must_use]
    pub fn plan_length(&self) -> Length {
        self.run / self.plan_angle().cos()
    }

    /// Its true length.
    #[must_use]
    pub fn true_length(&self) -> Length {
        self.plan_length() / self.own_pitch().angle().cos()
    }

    /// Length in plan, and true length, for each foot of level run of the first roof's commons.
    #[must_use]
    pub fn lengths_per_run(&self) -> (Ratio, Ratio) {
        (self.plan_length() / self.run, self.true_length() / self.run)
    }

    /// Width of roof that it carries at its heavy end, measured level along itself: half of each side's jacks.
    #[must_use]
    pub fn widest_strip(&self) -> Length {
        let angle = self.plan_angle();
        let (one, other) = self.pitches();
        let other_run = self.run * (one / other);
        (self.run * angle.sin() + other_run * angle.cos()) / 2.0
    }

    /// Its load, square to itself, along its own slope from the eave: a triangle.
    #[must_use]
    pub fn loads(&self, roof: &RoofLoads) -> Vec<Acting> {
        let slope = self.own_pitch().angle();
        let (length, strip) = (self.true_length(), self.widest_strip());
        let square = slope.cos() * slope.cos();
        let triangle = |case, load: AreaLoad| {
            let heavy: LineLoad = load * strip * square;
            let (start, end) = match self.corner {
                Corner::Hip => (LineLoad::ZERO, heavy),
                Corner::Valley => (heavy, LineLoad::ZERO),
            };
            Acting { case, load: Load::linear(Length::ZERO, length, start, end) }
        };
        // Wind acts square to the roof: on the level its upright share is the pressure itself.
        vec![
            triangle(Case::Dead, roof.dead),
            triangle(Case::Snow, roof.snow),
            triangle(Case::RoofLive, roof.roof_live),
            triangle(Case::WindDown, roof.wind_down),
            triangle(Case::WindUp, -roof.wind_up.between.max(roof.wind_up.ridge)),
        ]
    }
}

/// Whether a hip, a valley or a ridge is as deep as the cut end of the rafter, read in both ways (R802.3, R802.4.3). It
/// says nothing of strength.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DepthRule {
    /// The cut end of the rafter, plumb.
    pub needed: Length,
    /// Depth across the board.
    pub across: Length,
    /// Depth as it stands, plumb.
    pub plumb: Length,
}

impl DepthRule {
    /// For a rafter of this depth and pitch, beside a hip, valley or ridge of this depth and slope.
    #[must_use]
    pub fn of(rafter_depth: Length, pitch: Slope, depth: Length, own_pitch: Slope) -> Self {
        Self { needed: rafter_depth / pitch.angle().cos(), across: depth, plumb: depth / own_pitch.angle().cos() }
    }

    /// Whether it holds read across the board, and read plumb.
    #[must_use]
    pub fn holds(&self) -> (bool, bool) {
        (self.across >= self.needed, self.plumb >= self.needed)
    }
}

/// Loads along a ridge beam from the rafters of both sides, per foot of ridge.
///
/// Snow counts as the heavier of both sides balanced, and the lee side's unbalanced snow with what is left on the other:
/// `unbalanced` has the two, the lee side's first; the lee side is taken as the wider one.
#[must_use]
pub fn ridge_loads(
    roof: &RoofLoads,
    (lee_snow, windward_snow): (AreaLoad, AreaLoad),
    (one, other): (Length, Length),
    length: Length,
) -> Vec<Acting> {
    let strip = (one + other) / 2.0;
    let along = |case, load: LineLoad| Acting { case, load: Load::uniform(Length::ZERO, length, load) };
    let balanced = roof.snow_even * strip;
    let unbalanced = lee_snow * (one.max(other) / 2.0) + windward_snow * (one.min(other) / 2.0);
    vec![
        along(Case::Dead, roof.dead * strip),
        along(Case::Snow, balanced.max(unbalanced)),
        along(Case::RoofLive, roof.roof_live * strip),
        along(Case::WindDown, roof.wind_down * strip),
        along(
            Case::WindUp,
            -(roof.wind_up.beside_ridge(one / 2.0) * (one / 2.0)
                + roof.wind_up.beside_ridge(other / 2.0) * (other / 2.0)),
        ),
    ]
}
