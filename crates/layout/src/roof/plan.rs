//! A roof plan: wings at right angles on one plate, and the lines that their planes make.

use measure::Length;

use super::error::RoofError;
use super::plan_lines::{Surface, lines};
use super::wing::{Bounds, Falls, PlanPoint, Wing, WingEnd};

/// The most wings of one plan.
const MOST: usize = 12;

/// What a line of a roof plan is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LineKind {
    /// Level, two planes falling away from it.
    Ridge,
    /// Sloping, at an outside corner.
    Hip,
    /// Two planes falling toward it.
    Valley,
    /// The low edge of a plane, at the wall.
    Eave,
    /// The sloping edge of a plane, at a gable.
    Rake,
    /// A gable that stands on another plane: the roof beyond it is lower.
    Step,
}

/// A plane of the plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PlanPlane {
    /// Its wing, counted from 0 as they were given; the first of those whose planes are one.
    pub wing: usize,
    /// Which way it falls.
    pub falls: Falls,
}

/// An end of a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LineEnd {
    /// In plan.
    pub at: PlanPoint,
    /// Above the level at which the planes cross the wall lines; on a step the higher roof.
    pub height: Length,
}

/// A line of a roof plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofLine {
    /// What it is.
    pub kind: LineKind,
    /// Its ends; a sloping line starts at its lower one.
    pub ends: [LineEnd; 2],
    /// The planes on both sides; one at the edge of the roof.
    pub planes: [Option<PlanPlane>; 2],
}

impl RoofLine {
    /// Its length in plan.
    #[must_use]
    pub fn run(&self) -> Length {
        let [from, to] = self.ends.map(|end| end.at);
        root_of_squares(&[to.x - from.x, to.y - from.y])
    }

    /// Its length in space.
    #[must_use]
    pub fn length(&self) -> Length {
        let [from, to] = self.ends;
        root_of_squares(&[self.run(), to.height - from.height])
    }
}

fn root_of_squares(parts: &[Length]) -> Length {
    Length::from_inches(parts.iter().map(|part| part.inches() * part.inches()).sum::<f64>().sqrt())
}

/// Every ridge, hip, valley, eave, rake and step over wings at right angles, on one plate height and with no overhangs.
///
/// The roof over a wing is the lowest of its planes; where wings overlap it is the highest of theirs. An L or a T with
/// hips at the inner ends is two wings that overlap in the corner.
///
/// Source: planes in space.
///
/// # Errors
/// No wing or more than 12, sizes of nothing, pitches that are no roof's, and an end that runs into no wing.
///
/// ```
/// use layout::roof::{LineKind, PlanPoint, RidgeRuns, Wing, WingEnd, roof_plan};
/// use measure::{Length, Slope};
///
/// let feet = |x, y| PlanPoint { x: Length::from_feet(x), y: Length::from_feet(y) };
/// let pitch = Slope::from_rise_in_twelve(6.0);
/// let ends = [WingEnd::Hip(pitch); 2];
/// let wing = Wing { from: feet(0.0, 0.0), to: feet(40.0, 24.0), ridge: RidgeRuns::Across, pitch, ends };
/// let lines = roof_plan(&[wing])?;
/// let ridge = lines.iter().find(|line| line.kind == LineKind::Ridge).map(|line| line.length().feet());
/// assert_eq!(ridge, Some(16.0));
/// # Ok::<(), layout::roof::RoofError>(())
/// ```
pub fn roof_plan(wings: &[Wing]) -> Result<Vec<RoofLine>, RoofError> {
    if wings.is_empty() {
        return Err(RoofError::NoWing);
    }
    if wings.len() > MOST {
        return Err(RoofError::TooMany { what: "wings", most: MOST });
    }
    let mut surface = Surface::default();
    for (index, wing) in wings.iter().enumerate() {
        wing.is_whole()?;
        let bounds = run_in(wings, index)?;
        surface.add(wing.bounds(), bounds, wing.planes(index));
    }
    Ok(lines(&surface))
}

/// The rectangle of a wing, drawn out to the middle of what its ends run into.
fn run_in(wings: &[Wing], index: usize) -> Result<Bounds, RoofError> {
    let mut bounds = wings[index].bounds();
    let (own, along) = (bounds, wings[index].along());
    let middle = (own[1 - along][0] + own[1 - along][1]) / 2.0;
    for (far, end) in wings[index].ends.into_iter().enumerate() {
        if end != WingEnd::Into {
            continue;
        }
        let edge = own[along][far];
        let holds = |other: &Bounds| {
            let [low, high] = other[along];
            let beyond = if far == 1 { low <= edge && edge < high } else { low < edge && edge <= high };
            beyond && other[1 - along][0] < middle && middle < other[1 - along][1]
        };
        let others = wings.iter().enumerate().filter(|(other, _)| *other != index);
        let into =
            others.map(|(_, wing)| wing.bounds()).find(holds).ok_or(RoofError::IntoNothing { wing: index + 1 })?;
        bounds[along][far] = (into[along][0] + into[along][1]) / 2.0;
    }
    Ok(bounds)
}
