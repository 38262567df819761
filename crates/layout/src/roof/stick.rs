//! A stick with its marks and cuts, so that it can be drawn and cut on both faces.

use measure::Length;

use super::cut::{Cut, Under};
use super::space::{Line, Plane, UP, Vector};

/// Narrow edges of a stick on edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// Under the sheathing.
    Top,
    /// The other one.
    Bottom,
}

impl Edge {
    /// Both.
    pub const BOTH: [Self; 2] = [Self::Top, Self::Bottom];
}

/// Across a stick, looking up it from its low end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// The left side face.
    Left,
    /// Halfway between both.
    Middle,
    /// The right side face.
    Right,
}

impl Face {
    /// From left to right.
    pub const ALL: [Self; 3] = [Self::Left, Self::Middle, Self::Right];

    const fn off_middle(self) -> f64 {
        match self {
            Self::Left => -1.0,
            Self::Middle => 0.0,
            Self::Right => 1.0,
        }
    }
}

/// What a mark or a cut of a stick is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spot {
    /// The cut at the upper end.
    Head,
    /// A second cut at the upper end.
    SecondHead,
    /// The plumb cut at the outer face of the plate.
    Heel,
    /// The level cut on the plate.
    Seat,
    /// The plumb cut of a second notch, on a beam under the ridge.
    UpperHeel,
    /// The level cut of that notch.
    UpperSeat,
    /// The cut at the lower end.
    Tail,
    /// A second cut at the lower end.
    SecondTail,
}

/// A mark on an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// What it is.
    pub spot: Spot,
    /// Which edge.
    pub edge: Edge,
    /// Where across it.
    pub face: Face,
    /// From the farthest point of the upper end, along the stick.
    pub at: Length,
}

/// A cut and what it is for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StickCut {
    /// What it is.
    pub spot: Spot,
    /// The face that it takes, where two cuts share an end.
    pub face: Face,
    /// Turn and tilt.
    pub cut: Cut,
}

/// A straight stick, cut and marked. Edges are those of the square stock, before any backing is ripped.
#[derive(Clone, Debug, PartialEq)]
pub struct Stick {
    /// Across.
    pub thickness: Length,
    /// From edge to edge.
    pub depth: Length,
    /// From the farthest point of one end to that of the other: what the stock must hold.
    pub length: Length,
    /// Every mark, each on both edges and on both faces.
    pub marks: Vec<Mark>,
    /// Every cut, the saw on the side face.
    pub cuts: Vec<StickCut>,
}

impl Stick {
    /// Where a mark is, from the farthest point of the upper end.
    #[must_use]
    pub fn at(&self, spot: Spot, edge: Edge, face: Face) -> Option<Length> {
        let wanted = |mark: &&Mark| mark.spot == spot && mark.edge == edge && mark.face == face;
        self.marks.iter().find(wanted).map(|mark| mark.at)
    }

    /// Length along one edge of one face, end to end; none where the stick has no such edge left.
    #[must_use]
    pub fn edge_length(&self, edge: Edge, face: Face) -> Option<Length> {
        Some(self.at(Spot::Tail, edge, face)? - self.at(Spot::Head, edge, face)?)
    }
}

/// The next length that lumber is sold in, in steps of 2 ft; common practice.
#[must_use]
pub fn stock_length(needed: Length) -> Length {
    const STEP: f64 = 2.0;
    /// A stick of 16 ft by more digits than a tape has is one of 16 ft.
    const NOT_ON_A_TAPE: Length = Length::from_inches(1e-6);
    Length::from_feet(((needed - NOT_ON_A_TAPE).feet() / STEP).ceil() * STEP)
}

/// Where several planes end a stick: the first one met rules, or the last.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ends {
    /// A point: each plane takes off what stands past it.
    Pointed,
    /// A notch: wood stands as far as either plane lets it.
    Notched,
}

/// A stick in space, long past both of its ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Piece {
    top: Vector,
    axis: Vector,
    right: Vector,
    up: Vector,
    thickness: Length,
    depth: Length,
}

/// What cuts a stick.
pub(super) struct Planes<'a> {
    pub(super) head: (&'a [Plane], Ends),
    /// Cuts of notches, and where each is.
    pub(super) notches: &'a [(Spot, Plane)],
    pub(super) tail: (&'a [Plane], Ends),
}

impl Piece {
    /// A stick whose top edge runs along an upward axis through a point on its middle, its side faces plumb.
    pub(super) fn on_edge(top: Vector, axis: Vector, thickness: Length, depth: Length) -> Self {
        let right = axis.cross(UP).unit();
        Self { top, axis, right, up: right.cross(axis), thickness, depth }
    }

    /// The cut that a plane makes on its side face.
    pub(super) fn cut(&self, plane: Plane) -> Cut {
        Cut::by_plane(Under::Side, self.axis, self.right, plane.normal)
    }

    /// Cut and marked; none where a plane runs along the stick and ends nothing.
    pub(super) fn stick(&self, planes: &Planes<'_>) -> Option<Stick> {
        let mut marks = Vec::new();
        for (edge, face) in edges_and_faces() {
            let mut mark = |spot, at| marks.push((spot, edge, face, at));
            mark(Spot::Head, self.end(planes.head, edge, face, false)?);
            for (spot, plane) in planes.notches {
                // The bottom edge shows both cuts of a notch, the top edge the plumb line of its heel alone.
                let level = matches!(spot, Spot::Seat | Spot::UpperSeat);
                if !(level && edge == Edge::Top) {
                    mark(*spot, self.meets(*plane, edge, face)?);
                }
            }
            mark(Spot::Tail, self.end(planes.tail, edge, face, true)?);
        }
        let places = |wanted: Spot| marks.iter().filter(move |mark| mark.0 == wanted).map(|mark| mark.3);
        let highest = places(Spot::Head).reduce(f64::max)?;
        let lowest = places(Spot::Tail).reduce(f64::min)?;
        let from_head = |up: f64| Length::from_inches(highest - up);
        Some(Stick {
            thickness: self.thickness,
            depth: self.depth,
            length: from_head(lowest),
            marks: marks.iter().map(|&(spot, edge, face, up)| Mark { spot, edge, face, at: from_head(up) }).collect(),
            cuts: self.cuts(planes),
        })
    }

    fn cuts(&self, planes: &Planes<'_>) -> Vec<StickCut> {
        let end = |(planes, ends): (&[Plane], Ends), spots: [Spot; 2], low| {
            let of = |(plane, spot): (&Plane, Spot)| {
                let face = if planes.len() > 1 { self.faced(*plane, ends, low) } else { Face::Middle };
                StickCut { spot, face, cut: self.cut(*plane) }
            };
            planes.iter().zip(spots).map(of).collect::<Vec<_>>()
        };
        let notch = |(spot, plane): &(Spot, Plane)| StickCut { spot: *spot, face: Face::Middle, cut: self.cut(*plane) };
        let mut cuts = end(planes.head, [Spot::Head, Spot::SecondHead], false);
        cuts.extend(planes.notches.iter().map(notch));
        cuts.extend(end(planes.tail, [Spot::Tail, Spot::SecondTail], true));
        cuts
    }

    /// The side face that one of two planes at an end takes.
    fn faced(&self, plane: Plane, ends: Ends, low: bool) -> Face {
        let turned = plane.normal.dot(self.right) * plane.normal.dot(self.axis).signum();
        let first_met_rules = low != (ends == Ends::Pointed);
        if (turned > 0.0) == first_met_rules { Face::Right } else { Face::Left }
    }

    fn end(&self, (planes, ends): (&[Plane], Ends), edge: Edge, face: Face, low: bool) -> Option<f64> {
        let places: Option<Vec<f64>> = planes.iter().map(|plane| self.meets(*plane, edge, face)).collect();
        let nearest = if low == (ends == Ends::Pointed) { f64::max } else { f64::min };
        places?.into_iter().reduce(nearest)
    }

    fn meets(&self, plane: Plane, edge: Edge, face: Face) -> Option<f64> {
        let down = if edge == Edge::Bottom { self.depth.inches() } else { 0.0 };
        let across = self.right.times(face.off_middle() * self.thickness.inches() / 2.0);
        let through = self.top.plus(across).minus(self.up.times(down));
        Line { through, along: self.axis }.meets(plane)
    }
}

fn edges_and_faces() -> impl Iterator<Item = (Edge, Face)> {
    Edge::BOTH.into_iter().flat_map(|edge| Face::ALL.into_iter().map(move |face| (edge, face)))
}
