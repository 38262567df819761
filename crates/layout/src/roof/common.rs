//! A common rafter: its lengths, its cuts, its birdsmouth, and the ridge that it reaches.

use measure::{Length, Slope};

use super::birdsmouth::{Birdsmouth, BirdsmouthAnswer, birdsmouth};
use super::cut::Cut;
use super::error::{RoofError, not_negative, positive};
use super::plane::{along_slope, pitched, ratio, rise};
use super::ridge::{Ridge, RidgeHeight};
use super::space::{Plane, UP, Vector};
use super::stick::{Ends, Piece, Planes, Spot, Stick, stock_length};

/// How a rafter ends at the eave.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tail {
    /// Plumb, for a plumb fascia.
    Plumb,
    /// Square to its edges.
    Square,
}

/// A common rafter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Common {
    /// Pitch of the roof.
    pub pitch: Slope,
    /// Level, from the outer face of the plate to the centre line of the ridge.
    pub run: Length,
    /// Level, from the outer face of the plate to the end of the top edge, without fascia; nothing for none.
    pub overhang: Length,
    /// Thickness of the rafter.
    pub thickness: Length,
    /// Depth of the rafter.
    pub depth: Length,
    /// Level width of the seat on the plate.
    pub seat: Length,
    /// What it meets at the top.
    pub ridge: Ridge,
    /// How it ends at the eave.
    pub tail: Tail,
}

/// A common rafter, laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct CommonAnswer {
    /// From the heel's plumb line to the centre of the ridge, along the top edge.
    pub line_length: Length,
    /// Rise over the whole run.
    pub rise: Length,
    /// What the ridge takes off, level and square off the plumb cut.
    pub shortening: Length,
    /// The same along the slope.
    pub shortening_along: Length,
    /// From the heel's plumb line to the ridge cut.
    pub actual: Length,
    /// From the heel's plumb line to the end of the top edge.
    pub tail: Length,
    /// The whole top edge.
    pub overall_top: Length,
    /// The whole bottom edge, across the birdsmouth.
    pub overall_bottom: Length,
    /// Depth of the stick on a plumb line.
    pub plumb_depth: Length,
    /// Length of a level cut through the whole stick.
    pub level_length: Length,
    /// The plumb cut: ridge, heel and a plumb tail.
    pub plumb_cut: Cut,
    /// The level cut: the seat.
    pub level_cut: Cut,
    /// The birdsmouth on the plate.
    pub birdsmouth: BirdsmouthAnswer,
    /// The second one, over a beam.
    pub upper_birdsmouth: Option<BirdsmouthAnswer>,
    /// How high the ridge stands.
    pub ridge: RidgeHeight,
    /// Next length that is sold.
    pub stock: Length,
    /// The stick with its marks.
    pub stick: Stick,
}

/// Lays out a common rafter.
///
/// Source: geometry of the right triangle; the seat as [`birdsmouth`].
///
/// # Errors
/// A pitch that is no roof's, sizes of nothing, a ridge or a seat that leaves nothing of the rafter.
pub fn common(given: &Common) -> Result<CommonAnswer, RoofError> {
    given.is_whole()?;
    let Common { pitch, run, overhang, depth, seat, ridge, .. } = *given;
    let mouth = birdsmouth(&Birdsmouth { pitch, depth, seat, overhang })?;
    let shortening = ridge.shortening();
    let placed = given.in_space(mouth.height_above_plate);
    let stick = placed.stick.ok_or(RoofError::NothingLeft { what: "common rafter", run, taken: shortening })?;
    let slope = pitch.angle();
    let (plumb_cut, level_cut) = (placed.plumb_cut, placed.level_cut);
    let actual = along_slope(run - shortening, pitch);
    let tail = along_slope(overhang, pitch);
    Ok(CommonAnswer {
        line_length: along_slope(run, pitch),
        rise: rise(run, pitch),
        shortening,
        shortening_along: along_slope(shortening, pitch),
        actual,
        tail,
        overall_top: actual + tail,
        overall_bottom: stick.edge_length(super::Edge::Bottom, super::Face::Middle).unwrap_or(actual + tail),
        plumb_depth: depth / slope.cos(),
        level_length: depth / slope.sin(),
        plumb_cut,
        level_cut,
        birdsmouth: mouth,
        upper_birdsmouth: given.over_beam()?,
        ridge: ridge.height(run, pitch, depth, mouth.height_above_plate),
        stock: stock_length(stick.length),
        stick,
    })
}

struct Placed {
    stick: Option<Stick>,
    plumb_cut: Cut,
    level_cut: Cut,
}

impl Common {
    fn is_whole(&self) -> Result<(), RoofError> {
        pitched(self.pitch)?;
        positive("run", self.run)?;
        not_negative("overhang", self.overhang)?;
        positive("thickness of the rafter", self.thickness)?;
        positive("depth of the rafter", self.depth)?;
        self.ridge.is_whole()?;
        let taken = self.ridge.shortening() + self.seat;
        let none = RoofError::NothingLeft { what: "common rafter", run: self.run, taken };
        if taken < self.run { Ok(()) } else { Err(none) }
    }

    fn over_beam(&self) -> Result<Option<BirdsmouthAnswer>, RoofError> {
        let Ridge::BeamUnder { seat, .. } = self.ridge else { return Ok(None) };
        let Self { pitch, depth, .. } = *self;
        birdsmouth(&Birdsmouth { pitch, depth, seat, overhang: Length::ZERO }).map(Some)
    }

    /// Plate corner in the origin, the run along `y`.
    fn in_space(&self, above_plate: Length) -> Placed {
        let slope = ratio(self.pitch);
        let top = |run: Length| Vector::new(0.0, run.inches(), above_plate.inches() + slope * run.inches());
        let level = Vector::new(0.0, 1.0, 0.0);
        let axis = Vector::new(0.0, 1.0, slope).unit();
        let piece = Piece::on_edge(top(Length::ZERO), axis, self.thickness, self.depth);
        let plumb_at = |run: Length| Plane::through(top(run), level);
        let plate = Plane::through(Vector::new(0.0, 0.0, 0.0), UP);
        let mut notches = vec![(Spot::Heel, plumb_at(Length::ZERO)), (Spot::Seat, plate)];
        if let Ridge::BeamUnder { width, seat, .. } = self.ridge {
            let face = self.run - width / 2.0;
            let left = self.depth / self.pitch.angle().cos() - rise(seat, self.pitch);
            notches.push((Spot::UpperHeel, plumb_at(face)));
            notches.push((Spot::UpperSeat, Plane::through(top(face).minus(UP.times(left.inches())), UP)));
        }
        let end = top(-self.overhang);
        let tail = match self.tail {
            Tail::Plumb => Plane::through(end, level),
            Tail::Square => Plane::through(end, axis),
        };
        let head = plumb_at(self.run - self.ridge.shortening());
        let stick =
            piece.stick(&Planes { head: (&[head], Ends::Pointed), notches: &notches, tail: (&[tail], Ends::Pointed) });
        Placed { stick, plumb_cut: piece.cut(head), level_cut: piece.cut(plate) }
    }
}
