//! Hand-cut roofs: planes that meet along lines, and the sticks that follow them.
//!
//! Where to look: [`Corner`] solves two planes over a corner, equal or not, at any angle, with every bevel that
//! follows. [`common()`] lays out a common rafter, [`birdsmouth()`] its seat; [`hip()`] a hip or valley, [`two_ply()`]
//! one of two plies, [`hip_depth()`] how deep it must be, [`under_hip()`] a post under it; [`jacks()`] the jacks along
//! it, [`hip_valley_cripple()`] and [`valley_cripple()`] those between two lines. [`overlay()`], [`gable_dormer()`],
//! [`shed_dormer()`], [`gable_studs()`], [`polygon()`], [`gambrel()`], [`shed()`] and [`hip_ridge()`] are roofs and
//! parts of their own, [`sheathing()`] has the courses of a plane, and [`roof_plan()`] the lines over wings at right
//! angles. A rafter is a [`Stick`] with [`Mark`]s on both faces.
//!
//! Two conventions of angles are in use, and a [`Cut`] names both: from square, as a saw's scale reads, and from the
//! axis, as a bevel along the edge reads. Lengths run along the measuring line, the top edge.

mod birdsmouth;
mod common;
mod corner;
mod corner_cuts;
mod cripples;
mod cut;
mod depth;
mod dormer;
mod error;
mod gable_studs;
mod gambrel;
mod hip;
mod hip_space;
mod jack_space;
mod jacks;
mod overlay;
mod plan;
mod plan_lines;
mod plane;
mod polygon;
mod ridge;
mod ridges;
mod sheathing;
mod shed;
mod space;
mod stick;
mod two_ply;
mod under_hip;
mod wall_offset;
mod wing;

pub use birdsmouth::{Birdsmouth, BirdsmouthAnswer, TailRule, birdsmouth};
pub use common::{Common, CommonAnswer, Tail, common};
pub use corner::{Corner, Meeting};
pub use corner_cuts::DropAndSlide;
pub use cripples::{Cripple, CrippleEnd, CrippleStock, hip_valley_cripple, valley_cripple};
pub use cut::{Cut, DIAGONAL_RUN, Under};
pub use depth::{HipDepth, hip_depth};
pub use dormer::{GableDormer, GableDormerAnswer, ShedDormer, ShedDormerAnswer, gable_dormer, shed_dormer};
pub use error::RoofError;
pub use gable_studs::{GableStud, GableStuds, gable_studs};
pub use gambrel::{Gambrel, GambrelAnswer, gambrel, gambrel_in_half_circle};
pub use hip::{Hip, HipAnswer, HipHead, TopEdge, hip};
pub use hip_space::HipSeat;
pub use jacks::{Jack, Jacks, JacksAnswer, Start, jacks};
pub use overlay::{Overlay, OverlayAnswer, overlay};
pub use plan::{LineEnd, LineKind, PlanPlane, RoofLine, roof_plan};
pub use plane::{FLATTEST, STEEPEST, Side, Sides, along_slope, rise};
pub use polygon::{Polygon, PolygonAnswer, polygon};
pub use ridge::{Ridge, RidgeHeight, RidgeReading};
pub use ridges::{RidgeEnds, UnequalWalls, hip_ridge, pitch_for_same_ridge, ridge_difference, unequal_walls};
pub use sheathing::{Course, SheathedPlane, SheathingAnswer, SheathingEnd, sheathing};
pub use shed::{Shed, ShedAnswer, shed};
pub use stick::{Edge, Face, Mark, Spot, Stick, StickCut, stock_length};
pub use two_ply::{Ply, ThinnerFace, TwoPly, TwoPlyAnswer, two_ply};
pub use under_hip::{UnderHip, UnderHipAnswer, under_hip};
pub use wall_offset::{Bearing, WallOffset};
pub use wing::{Falls, PlanPoint, RidgeRuns, Wing, WingEnd};
