//! Walls: plates, studs and openings as they are marked, one pull from one end.
//!
//! Start at [`Wall::lay_out`]. A length along the plate runs from the one end at which the tape is hooked, a height from
//! the top of the subfloor. Layout studs keep their centers: in an opening they become cripples on the same marks, and
//! where other studs stand in the way they stand tight beside them, or are left out where those serve the sheet's edge.
//!
//! *Absent on purpose*: sizes of headers and numbers of jacks and kings, which are given; gable and rake walls, which
//! follow their roof.

mod backing;
mod blocks;
mod check;
mod error;
mod height;
mod nails;
mod notice;
mod opening;
mod openings;
mod panels;
mod piece;
mod plates;
mod row;
mod sheets;
mod spacing;
mod studs;

pub use backing::{BACKING, Backing, Braced, End, LADDER, Partition, Post};
pub use error::WallError;
pub use height::{Ceiling, Heights, PRECUT, PRECUT_STUDS, door_head};
pub use nails::{SheetNails, nails_in_sheet};
pub use notice::Notice;
pub use opening::{Header, Opening, RoughSize, SHORTEST_CRIPPLE};
pub use panels::{Lay, Sheets};
pub use piece::{Cut, Mark, OnPlates, Part, Piece, board_feet, studs_by_the_pocketbook};
pub use plates::{JOINT_OFFSET, PLATE_JOINTS, PlatePiece};
pub use row::{EDGE_BEARING, SPACING_TOLERANCE, Span};
pub use sheets::{ChalkLine, Sheet};
pub use spacing::{Layout, NoModule, PullTo, Spacing, XSide};

pub(crate) use piece::cut_list;
pub(crate) use plates::joints as board_joints;
pub(crate) use row::{NOISE, Settled, bears, settle, solids};
pub(crate) use sheets::joints as sheet_joints;

use measure::Length;
use studs::Standing;

/// A stud as it stands: its measure along the wall and across it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stud {
    /// Thickness, along the wall: 1-1/2 in.
    pub thickness: Length,
    /// Depth, across the wall.
    pub depth: Length,
}

/// A wall to be laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct Wall {
    /// Length of the plates between the ends, without laps.
    pub length: Length,
    /// Spacing, where the sheets start, and what the pulls are taken to.
    pub layout: Layout,
    /// The studs.
    pub stud: Stud,
    /// Studs' length and plates.
    pub heights: Heights,
    /// The end at which the tape is hooked, and the far one.
    pub ends: [End; 2],
    /// How far the very top plate runs past each end over another wall; negative where it stays short for another.
    pub laps: [Length; 2],
    /// Length of the boards that plates are cut from.
    pub plate_stock: Length,
    /// Openings, in any order.
    pub openings: Vec<Opening>,
    /// Inner walls that meet.
    pub partitions: Vec<Partition>,
    /// Doubled studs and posts under loads.
    pub posts: Vec<Post>,
    /// Braced pieces with posts for hold-downs.
    pub braced: Vec<Braced>,
    /// Sheathing.
    pub sheets: Option<Sheets>,
}

impl Wall {
    /// A plain wall: 1-1/2 by 3-1/2 studs, one at each end, plates from 16 ft boards, nothing in it.
    #[must_use]
    pub fn plain(length: Length, layout: Layout, heights: Heights) -> Self {
        Self {
            length,
            layout,
            stud: Stud { thickness: Length::from_inches(1.5), depth: Length::from_inches(3.5) },
            heights,
            ends: [End::OneStud; 2],
            laps: [Length::ZERO; 2],
            plate_stock: Length::from_feet(16.0),
            openings: Vec::new(),
            partitions: Vec::new(),
            posts: Vec::new(),
            braced: Vec::new(),
            sheets: None,
        }
    }

    /// The same wall with the tape hooked on its other end. The sheets start from there as they did from here.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let mirrored = |from: Length, to: Length| Span::new(from, to).mirrored(self.length);
        let opening = |o: &Opening| Opening { from: mirrored(o.from, o.from + o.width).from, ..*o };
        let braced = |b: &Braced| {
            let Span { from, to } = mirrored(b.from, b.to);
            Braced { from, to, plies: b.plies }
        };
        Self {
            ends: [self.ends[1], self.ends[0]],
            laps: [self.laps[1], self.laps[0]],
            openings: self.openings.iter().map(opening).collect(),
            partitions: self.partitions.iter().map(|p| Partition { centre: self.length - p.centre, ..*p }).collect(),
            posts: self.posts.iter().map(|p| Post { centre: self.length - p.centre, ..*p }).collect(),
            braced: self.braced.iter().map(braced).collect(),
            ..self.clone()
        }
    }

    /// Lays the wall out.
    ///
    /// # Errors
    /// When the wall cannot be framed as given: see [`WallError`].
    ///
    /// # Example
    /// ```
    /// use layout::wall::{Heights, Layout, Spacing, Wall};
    /// use measure::{Denominator, Length};
    ///
    /// let heights = Heights::usual(Length::from_inches(92.625));
    /// let wall = Wall::plain(Length::from_inches(175.5), Layout::usual(Spacing::Sixteen), heights);
    /// let laid = wall.lay_out()?;
    /// assert_eq!(laid.marks.len(), 12);
    /// assert_eq!(laid.marks[1].pull.to_inches_fraction(Denominator::Sixteenth), "15-1/4\"");
    /// # Ok::<(), layout::wall::WallError>(())
    /// ```
    pub fn lay_out(&self) -> Result<LaidWall, WallError> {
        check::check(self)?;
        let mut notices = Vec::new();
        let standing = studs::stand(self)?;
        let mut pieces = studs::pieces(self, &standing);
        let cripples = openings::frame(self, &mut pieces, &mut notices);
        blocks::back(self, &standing, &mut pieces, &mut notices);
        let plates = plates::plates(self, &standing, &mut notices);
        pieces.extend(plates::as_they_stand(self, &plates));
        let sheets = sheets::sheets(self, &standing, &cripples, &mut pieces, &mut notices);
        let uncut = pieces.iter().filter(|piece| piece.part != Part::BottomPlate && piece.part != Part::TopPlate);
        let uncut = uncut.filter(|piece| piece.part != Part::VeryTopPlate);
        let cut = uncut.map(|piece| (piece.part, piece.length, piece.plies));
        Ok(LaidWall {
            marks: marks(self, &standing, &cripples),
            cuts: cut_list(cut.chain(plates.iter().map(|plate| (plate.part, plate.along.width(), 1)))),
            carried_down: studs::carried_down(self),
            diagonal: self.diagonal(),
            pieces,
            plates,
            sheets,
            notices,
        })
    }

    /// Corner to corner of the frame as it lies on the floor without its very top plate: both diagonals read this when it
    /// is square.
    #[must_use]
    pub fn diagonal(&self) -> Length {
        let height = self.heights.stud_top() + self.heights.plate;
        let square = |side: Length| side.inches() * side.inches();
        Length::from_inches((square(self.length) + square(height)).sqrt())
    }
}

/// A wall laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct LaidWall {
    /// The marks, rising from the end at which the tape is hooked.
    pub marks: Vec<Mark>,
    /// Every piece as it stands; the bottom plate is cut out at doors. No two overlap.
    pub pieces: Vec<Piece>,
    /// The plates as they are cut and laid, whole across doors.
    pub plates: Vec<PlatePiece>,
    /// What to cut: by piece, the longest first.
    pub cuts: Vec<Cut<Part>>,
    /// The sheets, row by row from the bottom.
    pub sheets: Vec<Sheet>,
    /// Posts and stacks of jacks: each wants solid wood below it down to the foundation.
    pub carried_down: Vec<Span>,
    /// Corner to corner for squaring: see [`Wall::diagonal`].
    pub diagonal: Length,
    /// What cannot be laid out well.
    pub notices: Vec<Notice>,
}

impl LaidWall {
    /// How many pieces of a kind are cut.
    #[must_use]
    pub fn count(&self, part: Part) -> u32 {
        self.cuts.iter().filter(|cut| cut.piece == part).map(|cut| cut.count).sum()
    }
}

/// Marks of all that stands on the plates. A cripple below and one above with one center are one mark.
fn marks(wall: &Wall, standing: &[Standing], cripples: &[Standing]) -> Vec<Mark> {
    let mark = |stood: &Standing, on: OnPlates| {
        let pull = match wall.layout.pull_to {
            PullTo::NearEdge => stood.along.from,
            PullTo::Centre => stood.along.centre(),
            PullTo::FarEdge => stood.along.to,
        };
        let (centre, x) = (stood.along.centre(), wall.layout.pull_to.x());
        Mark { pull, x, centre, part: stood.part, on, layout: stood.layout }
    };
    // A jack stops at its header; above it a cripple may stand.
    let on = |stood: &Standing| if stood.part == Part::Jack { OnPlates::Bottom } else { OnPlates::Both };
    let mut marks: Vec<Mark> = standing.iter().map(|stood| mark(stood, on(stood))).collect();
    for cripple in cripples {
        let on = if cripple.part == Part::CrippleAbove { OnPlates::Top } else { OnPlates::Bottom };
        let next = mark(cripple, on);
        let same =
            |other: &&mut Mark| (other.centre - next.centre).abs() < NOISE && other.on != on && is_cripple(other);
        match marks.iter_mut().find(same) {
            Some(other) => other.on = OnPlates::Both,
            None => marks.push(next),
        }
    }
    marks.sort_by(|a, b| a.pull.inches().total_cmp(&b.pull.inches()));
    marks
}

fn is_cripple(mark: &Mark) -> bool {
    matches!(mark.part, Part::CrippleAbove | Part::CrippleBelow)
}
