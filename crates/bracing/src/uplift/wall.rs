//! A wall as the path of uplift sees it: what lifts it, what stands in it, what weighs on it.

use measure::{AreaLoad, Force, Length, LineLoad};
use standards::OutsideTable;
use standards::irc_2021::r802_11::{EACH_WALL_ABOVE, EACH_WALL_ABOVE_SOURCE, Reduction, UPLIFT_PATH};

use super::refusal;
use super::tie::{Connections, SillBolts, Tie, Washer};
use crate::segmented::OF_DEAD;

/// Where the uplift comes from. The code's table and a roof worked out by the wind standard differ in basis: a chain has one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UpliftBasis {
    /// Table R802.11, with what its footnotes took off.
    Table(Reduction),
    /// Worked out from the wind on the roof, or given by a drawing.
    Computed,
}

/// Roof sheathing on its rafters or trusses.
#[derive(Clone, Debug, PartialEq)]
pub struct RoofSheathing {
    /// Net suction on it as cladding, allowable stress design, in the zone that it lies in.
    pub suction: AreaLoad,
    /// Nails along each rafter: what they hold, and how far apart.
    pub nails: Connections,
}

/// What holds a storey down by its own weight. No dead load counts twice: that of the roof is in the uplift already, and what
/// was counted against the overturning of this wall in the same wind counts there alone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HeldDown {
    /// Nothing is counted.
    Nothing,
    /// Dead load that surely stands on the wall, its own and that of floors: 0.6 of it is counted.
    Dead(LineLoad),
    /// A full wall, by the footnote of the code's table: 60 plf, with nothing else.
    FullWall,
}

impl HeldDown {
    /// What it takes off.
    #[must_use]
    pub fn counted(self) -> LineLoad {
        match self {
            Self::Nothing => LineLoad::ZERO,
            Self::Dead(dead) => dead * OF_DEAD,
            Self::FullWall => EACH_WALL_ABOVE,
        }
    }
}

/// An opening with a header.
#[derive(Clone, Debug, PartialEq)]
pub struct WallOpening {
    /// Its width.
    pub width: Length,
    /// Each end of the header to its studs.
    pub header: Tie,
    /// The studs beside it to what is below.
    pub jamb: Tie,
}

/// One storey of the wall.
#[derive(Clone, Debug, PartialEq)]
pub struct WallStorey {
    /// What ties its studs to what is above: to the top plate in the highest storey, to the studs over the floor in others.
    pub above: Connections,
    /// Stud spacing.
    pub studs: Length,
    /// Openings.
    pub openings: Vec<WallOpening>,
    /// Weight that counts below it.
    pub weight: HeldDown,
}

/// A wall from its roof to its footing.
#[derive(Clone, Debug, PartialEq)]
pub struct Chain {
    /// Net uplift of a foot of wall at its top, allowable stress design, 0.6 of the roof's dead load counted; below zero where
    /// the roof presses down.
    pub uplift: LineLoad,
    /// Where it comes from.
    pub basis: UpliftBasis,
    /// Roof sheathing, where it is looked at.
    pub sheathing: Option<RoofSheathing>,
    /// Rafters or trusses on the top plate, at their spacing.
    pub roof: Connections,
    /// Storeys from the top down.
    pub storeys: Vec<WallStorey>,
    /// Studs of the lowest storey to the sill.
    pub stud_to_sill: Connections,
    /// Sill to the footing.
    pub sill: Connections,
}

/// Storeys of a house that the code's rules reach.
const MOST_STOREYS: usize = 3;
/// No connection of a wall is farther apart, and no opening of a house wider.
const WIDEST: Length = Length::from_feet(20.0);

impl Chain {
    /// Whether it can be worked out as it is described.
    ///
    /// # Errors
    /// No storey or more than three, a spacing or width that no wall has, a strength or a weight below zero, or the code's
    /// 60 plf a wall with an uplift that it does not belong to.
    pub(super) fn is_whole(&self) -> Result<(), OutsideTable> {
        if !(1..=MOST_STOREYS).contains(&self.storeys.len()) {
            let given = format!("{} storeys", self.storeys.len());
            return Err(refusal(UPLIFT_PATH, given, "one to three storeys", "An engineer designs a higher wall."));
        }
        let nails = self.sheathing.as_ref().map(|sheathing| &sheathing.nails);
        let above = self.storeys.iter().map(|storey| &storey.above);
        for connections in nails.into_iter().chain([&self.roof, &self.stud_to_sill, &self.sill]).chain(above) {
            length(connections.spacing)?;
            strength(&connections.tie)?;
        }
        for storey in &self.storeys {
            length(storey.studs)?;
            self.weight(storey.weight)?;
            for opening in &storey.openings {
                length(opening.width)?;
                strength(&opening.header)?;
                strength(&opening.jamb)?;
            }
        }
        Ok(())
    }

    fn weight(&self, weight: HeldDown) -> Result<(), OutsideTable> {
        let whole = matches!(self.basis, UpliftBasis::Table(Reduction::None | Reduction::AwayFromCorners));
        match weight {
            HeldDown::Dead(dead) if dead < LineLoad::ZERO => Err(refusal(
                UPLIFT_PATH,
                format!("a dead load of {} plf", dead.plf()),
                "dead loads from zero",
                "Give what surely stands on the wall.",
            )),
            HeldDown::FullWall if !whole => Err(refusal(
                EACH_WALL_ABOVE_SOURCE,
                "60 plf a wall with an uplift that was worked out, or lowered for a hip roof".to_owned(),
                "the uplift of Table R802.11 without the hip roof's factor",
                "Give the dead load of the wall instead, or leave it out.",
            )),
            _ => Ok(()),
        }
    }
}

fn length(given: Length) -> Result<(), OutsideTable> {
    if given > Length::ZERO && given <= WIDEST {
        return Ok(());
    }
    let text = format!("a spacing or a width of {} in", given.inches());
    Err(refusal(UPLIFT_PATH, text, "spacings and widths over zero, to 20 ft", "Measure it again."))
}

pub(super) fn strength(tie: &Tie) -> Result<(), OutsideTable> {
    let good = match tie {
        Tie::Nails { each: holds, .. } | Tie::Metal { allowable: holds, .. } | Tie::Weight(holds) => {
            *holds >= Force::ZERO
        }
        Tie::Bolts(bolts) => is_bolt(bolts),
        Tie::Unknown | Tie::Nothing | Tie::Panels(_) | Tie::ScheduleNailing | Tie::Refused(_) => true,
    };
    if good {
        return Ok(());
    }
    let next = "Type it again from the label, the drawing or the tape.";
    Err(refusal(UPLIFT_PATH, "a strength or a size below zero".to_owned(), "strengths and sizes from zero", next))
}

fn is_bolt(bolts: &SillBolts) -> bool {
    let side = match bolts.washer {
        Washer::Square { side, thickness } => side.min(thickness),
        Washer::Round { diameter } => diameter,
    };
    let anchored = bolts.anchorage.is_none_or(|anchorage| anchorage >= Force::ZERO);
    side > Length::ZERO && bolts.hole >= Length::ZERO && bolts.fc_perp.psi() >= 0.0 && anchored
}
