//! What is drawn of nails and bolts; lengths in inches of the real thing.

use measure::Length;

/// How a nail is driven, as it is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DrawnDriven {
    /// Straight, into side grain.
    Face,
    /// Straight, into end grain.
    End,
    /// At a slant.
    Toe,
}

/// A nail by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnNail {
    /// Its name: `0.131 x 2-1/2 in`.
    pub name: String,
    /// Diameter of its shank.
    pub diameter: Length,
    /// Its length.
    pub length: Length,
    /// Its head across; none where it is not known.
    pub head: Option<Length>,
    /// How far it goes into the main piece; none where that is too little to count.
    pub penetration: Option<Length>,
}

/// One nail in a joint, cut through.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnJoint {
    /// The nail.
    pub nail: DrawnNail,
    /// Thickness of the side piece.
    pub side: Length,
    /// What it is, in words.
    pub side_is: String,
    /// What the main piece is, in words.
    pub main_is: String,
    /// How it is driven.
    pub driven: DrawnDriven,
    /// 6 and 10 diameters: the least that counts, and from where nothing is taken off.
    pub marks: (Length, Length),
    /// What goes across the nail, or what it carries, in words.
    pub across: String,
    /// What pulls it, in words; empty where nothing does.
    pub pull: String,
    /// Whether it carries that; none where no load was given.
    pub holds: Option<bool>,
}

/// A row of nails.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnRow {
    /// The pattern in words: `4" on center`.
    pub pattern: String,
    /// On center; none of a number of nails in a joint.
    pub spacing: Option<Length>,
    /// How many, of a number of nails in a joint.
    pub count: Option<u32>,
}

/// The nail at hand beside the one that was drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnSwap {
    /// Thickness of the side piece.
    pub side: Length,
    /// What it is, in words.
    pub side_is: String,
    /// The nail as drawn, with its pattern.
    pub required: (DrawnNail, DrawnRow),
    /// The nail at hand, with the pattern that stands for the other; none where there is no such pattern.
    pub found: (DrawnNail, Option<DrawnRow>),
}

/// A piece of bottom plate on its bolts.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnSill {
    /// Its length.
    pub length: Length,
    /// Its width and thickness.
    pub across: (Length, Length),
    /// Middles of the bolts from its left end.
    pub bolts: Vec<Length>,
    /// Diameter of the bolts.
    pub diameter: Length,
    /// Side of a plate washer, or diameter of a round one, and whether it is a plate.
    pub washer: (Length, bool),
    /// How deep the bolts are in the concrete.
    pub embedment: Length,
    /// Push along it, in words.
    pub push: String,
    /// Uplift along it, in words; empty where there is none.
    pub uplift: String,
    /// Whether the bolts carry it.
    pub holds: bool,
}
