//! A link of the path, and what it answers.

use measure::{Force, Length, LineLoad, Ratio};
use standards::{OutsideTable, Source};

/// A link, from the roof down. Storeys and openings are counted from nought, storeys from the top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Link {
    /// Roof sheathing to rafter or truss, one nail.
    SheathingToRafter,
    /// Rafter or truss to the top plate.
    RoofToPlate,
    /// Top plate to stud, in the highest storey.
    PlateToStud,
    /// Studs over a floor to the studs of this storey.
    FloorToFloor {
        /// The storey below the floor.
        storey: usize,
    },
    /// End of a header to its studs.
    HeaderToJamb {
        /// The storey.
        storey: usize,
        /// The opening.
        opening: usize,
    },
    /// Studs beside an opening to what is below them.
    JambToBelow {
        /// The storey.
        storey: usize,
        /// The opening.
        opening: usize,
    },
    /// Studs of the lowest storey to the sill.
    StudToSill,
    /// Sill to the footing.
    SillToFooting,
    /// Inner end of an outlooker to the truss behind a gable wall.
    OutlookerToTruss,
    /// Rafter of a porch to its beam.
    RafterToBeam,
    /// Beam of a porch to its post.
    BeamToPost,
    /// Post of a porch to its base, and the base to the footing.
    PostToFooting,
    /// The footing itself, by its weight.
    FootingToGround,
}

impl Link {
    /// Whether it gathers what comes down beside an opening.
    pub(super) const fn is_at_opening(self) -> bool {
        matches!(self, Self::HeaderToJamb { .. } | Self::JambToBelow { .. })
    }

    /// Whether the code's limit of toe nails at a roof is for it.
    pub(super) const fn is_at_roof(self) -> bool {
        matches!(self, Self::RoofToPlate | Self::RafterToBeam | Self::OutlookerToTruss)
    }
}

/// What one connection holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Held {
    /// Not known yet.
    Unknown,
    /// Nothing is there.
    Nothing,
    /// So much, allowable stress design.
    Carries(Force),
    /// What is there may not be counted here, and why.
    Refused(OutsideTable),
}

/// What must be looked at beside the number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UpliftCaution {
    /// This link and the one above it are on different sides of the wall: the plate between them rolls.
    OtherSide,
    /// Which side the tie is on is not known: it belongs on the side of the tie above, best the sheathed one.
    SideNotKnown,
    /// At a roof the code lets toe nails hold no more than 200 lb, whatever their number.
    ToeNailLimit,
    /// Connections stand at other spacings than those above: the plate bends between them, which is not worked out.
    PlateBetween,
    /// Panels must run in one piece from plate to plate, or be spliced over blocking.
    PanelsInOnePiece,
    /// Studs below must take what comes down beside the opening: it does not spread by itself.
    StudsBelow,
    /// The sill bends between bolt and stud: not worked out. Straps or bolts near the studs are better than few bolts.
    SillBending,
    /// What the bolt holds in the concrete was not given: the number is that of the washer on the sill alone.
    AnchorageNotCounted,
    /// Bolts farther apart than the 6 ft that the code lets anchor bolts be.
    BoltsFarApart,
}

/// One link.
#[derive(Clone, Debug, PartialEq)]
pub struct LinkAnswer {
    /// The link.
    pub link: Link,
    /// Net uplift of a foot that passes; below zero where it is pressed down. At the roof sheathing, of a foot of rafter. Of a
    /// connection by itself none.
    pub along: LineLoad,
    /// Length of which one connection takes the uplift: its spacing, of panels a foot. Of a connection by itself none.
    pub takes: Length,
    /// Uplift on one connection.
    pub demand: Force,
    /// What one holds.
    pub held: Held,
    /// Share of it that is used; infinite where nothing holds and something lifts; none while it is not known.
    pub used: Option<Ratio>,
    /// What is missing on one connection; none of it where it holds. Of what is not known it is the whole demand.
    pub missing: Force,
    /// What else must be looked at.
    pub cautions: Vec<UpliftCaution>,
    /// Where what it holds stands: none where it was typed.
    pub source: Option<Source>,
}

impl LinkAnswer {
    pub(super) fn new(link: Link, (along, takes): (LineLoad, Length), held: Held) -> Self {
        Self { along, takes, ..Self::pulled(link, along * takes, held) }
    }

    /// A connection by itself.
    pub(super) fn pulled(link: Link, pull: Force, held: Held) -> Self {
        let demand = pull.max(Force::ZERO);
        let carries = match &held {
            Held::Carries(force) => *force,
            Held::Unknown | Held::Nothing | Held::Refused(_) => Force::ZERO,
        };
        let used = match held {
            _ if demand == Force::ZERO => Some(0.0),
            Held::Unknown => None,
            _ if carries > Force::ZERO => Some(demand / carries),
            _ => Some(f64::INFINITY),
        };
        let missing = (demand - carries).max(Force::ZERO);
        let (along, takes) = (LineLoad::ZERO, Length::ZERO);
        Self { link, along, takes, demand, held, used, missing, cautions: Vec::new(), source: None }
    }

    /// Whether it surely holds.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.used.is_some_and(|used| used <= 1.0)
    }
}
