//! What is required of one wall mark, and the points that one walks to.

use measure::{Force, Length};

use crate::anchor::{HoldDownRequired, SillRequired};
use crate::nailing::NailSize;
use crate::required::Required;

/// Nailing of a sheathed wall.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NailingRequired {
    /// The nail, by diameter and length.
    pub nail: Option<Required<NailSize>>,
    /// Spacing along the edges of each panel.
    pub edge: Option<Required<Length>>,
    /// Spacing along the studs between.
    pub field: Option<Required<Length>>,
    /// Spacing along the outer edges of the wall, where it is another.
    pub boundary: Option<Required<Length>>,
    /// Whether every panel edge must lie on framing or blocking.
    pub blocked: Option<Required<bool>>,
}

/// What is required of a wall mark of the schedule. What nothing says is not required.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MarkRequirements {
    /// Dressed thickness and width of the studs.
    pub stud_size: Option<Required<(Length, Length)>>,
    /// Their greatest spacing.
    pub stud_spacing: Option<Required<Length>>,
    /// Where several studs stand together, from the plate's end, and how many.
    pub stud_packs: Vec<(Length, Required<u8>)>,
    /// Performance category of the sheathing, as a thickness.
    pub sheathing: Option<Required<Length>>,
    /// Nailing of the sheathing.
    pub nailing: NailingRequired,
    /// Anchorage of the sill.
    pub sill: Option<SillRequired>,
    /// Hold-downs, from the plate's end.
    pub hold_downs: Vec<(Length, HoldDownRequired)>,
    /// Straps, from the plate's end, each with the load that it is drawn for.
    pub straps: Vec<(Length, Required<Force>)>,
    /// Uplift on each roof-to-wall connection.
    pub uplift: Option<Required<Force>>,
}

/// A point of the walk. Where several are alike, the number counts them as the requirements list them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Point {
    /// Bolts of the sill.
    Sill,
    /// A hold-down.
    HoldDown(usize),
    /// Size of the studs.
    StudSize,
    /// Their spacing, and the sheet edges.
    StudSpacing,
    /// A pack of studs.
    StudPack(usize),
    /// Notches and holes in the studs.
    CutStuds,
    /// Cuts in the top plates.
    CutPlates,
    /// The sheathing's stamp.
    Sheathing,
    /// The nail itself.
    Nail,
    /// Nails along panel edges.
    EdgeNails,
    /// Nails along the outer edges of the wall.
    BoundaryNails,
    /// Nails in the field.
    FieldNails,
    /// Depth of the nails.
    NailDepth,
    /// Blocking behind panel edges.
    Blocking,
    /// A strap.
    Strap(usize),
    /// Roof to wall.
    RoofToWall,
    /// Moisture before it is closed in.
    Moisture,
}

impl MarkRequirements {
    /// The points of this mark, from the foundation up and from the frame to its cover. Cuts and moisture are looked at
    /// on every wall.
    #[must_use]
    pub fn points(&self) -> Vec<Point> {
        let nailing = &self.nailing;
        let nailed = nailing.edge.is_some() || nailing.field.is_some() || nailing.boundary.is_some();
        let mut points = Vec::new();
        points.extend(self.sill.as_ref().map(|_| Point::Sill));
        points.extend((0..self.hold_downs.len()).map(Point::HoldDown));
        points.extend(self.stud_size.as_ref().map(|_| Point::StudSize));
        points.extend(self.stud_spacing.as_ref().map(|_| Point::StudSpacing));
        points.extend((0..self.stud_packs.len()).map(Point::StudPack));
        points.extend([Point::CutStuds, Point::CutPlates]);
        points.extend(self.sheathing.as_ref().map(|_| Point::Sheathing));
        points.extend(nailing.nail.as_ref().map(|_| Point::Nail));
        points.extend(nailing.edge.as_ref().map(|_| Point::EdgeNails));
        points.extend(nailing.boundary.as_ref().map(|_| Point::BoundaryNails));
        points.extend(nailing.field.as_ref().map(|_| Point::FieldNails));
        points.extend(nailed.then_some(Point::NailDepth));
        points.extend(nailing.blocked.as_ref().filter(|blocked| blocked.value).map(|_| Point::Blocking));
        points.extend((0..self.straps.len()).map(Point::Strap));
        points.extend(self.uplift.as_ref().map(|_| Point::RoofToWall));
        points.push(Point::Moisture);
        points
    }
}
