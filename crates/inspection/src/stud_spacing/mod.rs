//! The spacing of studs: from pulls of the tape to bays, drift, sheet edges and studs to add.
//!
//! A pull that looks wrong is asked about and never corrected. What can be judged without it is judged.

mod bays;
mod doubts;
mod edges;
mod guess;
mod layout;
mod pulls;
mod solid;
mod studs;

pub use bays::{Bay, BayKind};
pub use doubts::{Doubt, Oddity};
pub use edges::{Edge, EdgeState};
pub use guess::{Guess, Slip};
pub use pulls::{FirstPull, Opening, Pulled, Pulls, Reading};
pub use studs::{StudAsked, StudFinding, judge_stud};

use measure::{Length, Ratio};
use standards::{Source, Status};

use crate::remedy::Remedy;
use crate::required::{Origin, Required};
use crate::verdict::Verdict;

/// Site target for studs between sheet edges. No code prints a tolerance for stud spacing.
pub const SPACING_TOLERANCE: Source = Source::new("Common practice", "stud layout, 1/4 in", Status::CommonPractice);
/// Wood wanted under a sheet's edge: room for a nail 3/8 in from the edge and wood beyond it.
pub const EDGE_BEARING: Source = Source::new("Common practice", "1/2 in under a sheet's edge", Status::CommonPractice);

/// The sheets of the wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheets {
    /// Where the first sheet starts, from the plate's end; negative where it laps past the end.
    pub start: Length,
    /// Width of a sheet along the wall.
    pub width: Length,
}

impl Sheets {
    /// Sheets of 4 ft, upright, from the plate's end.
    #[must_use]
    pub const fn four_feet() -> Self {
        Self { start: Length::ZERO, width: Length::from_inches(48.0) }
    }
}

/// What the spacing is judged by.
#[derive(Clone, Debug, PartialEq)]
pub struct Rule {
    /// Greatest spacing, centre to centre.
    pub spacing: Required<Length>,
    /// What a bay may be over it before it is out.
    pub tolerance: Required<Length>,
    /// Least wood under a sheet's edge, on each side.
    pub edge_bearing: Required<Length>,
    /// The spacings of the code table, ascending, to find the row that the wall as built falls into.
    pub table_spacings: Vec<Length>,
}

impl Rule {
    /// A spacing with the tolerance and the edge bearing of the trade: 1/4 in and 1/2 in.
    #[must_use]
    pub fn usual(spacing: Required<Length>, table_spacings: Vec<Length>) -> Self {
        Self {
            spacing,
            tolerance: Required::new(Length::from_inches(0.25), SPACING_TOLERANCE),
            edge_bearing: Required::new(Length::from_inches(0.5), EDGE_BEARING),
            table_spacings,
        }
    }
}

/// A wall as it was measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Wall {
    /// What the tape said.
    pub pulled: Pulled,
    /// Thickness of the studs.
    pub stud: Length,
    /// Length of the plate, where it was measured: the last stud stands at its end.
    pub length: Option<Length>,
    /// Openings, whose bays are not judged by the studs' spacing.
    pub openings: Vec<Opening>,
    /// Sheets, where the wall is to be sheathed.
    pub sheets: Option<Sheets>,
}

/// What the pulls bring.
#[derive(Clone, Debug, PartialEq)]
pub struct SpacingAnswer {
    /// Pulls to be asked about, in their order.
    pub doubts: Vec<Doubt>,
    /// The wall as read; none while the pulls contradict each other.
    pub judged: Option<JudgedWall>,
}

/// The wall as read.
#[derive(Clone, Debug, PartialEq)]
pub struct JudgedWall {
    /// Centres of the studs from the plate's end, the end stud first.
    pub centres: Vec<Length>,
    /// Drift of each stud from its layout mark: positive away from the plate's end. None for a stud off the layout: an
    /// end stud, one of a pack, an added one.
    pub drift: Vec<Option<Length>>,
    /// The bays between neighbours.
    pub bays: Vec<Bay>,
    /// The sheets' edges.
    pub edges: Vec<Edge>,
    /// The widest bay that an opening does not take.
    pub widest: Length,
    /// What a stud beside the widest bay carries, as a share of what the required spacing gives it.
    pub spacing_ratio: Ratio,
    /// The code table's spacing that the widest bay falls into: the smallest that is no less. None past the last.
    pub table_row: Option<Length>,
    /// Whether the drift grows by as much at each stud: measured from stud to stud, not from one end.
    pub creeps: bool,
    /// Who asks for the spacing.
    pub by: Origin,
    /// What a bay was allowed over it, and who says so.
    pub tolerance: Required<Length>,
    /// What can be done.
    pub remedies: Vec<Remedy>,
}

impl JudgedWall {
    /// The worst of bays and edges.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        let bays = self.bays.iter().filter_map(Bay::verdict);
        let edges = self.edges.iter().filter_map(Edge::verdict);
        Verdict::worst(bays.chain(edges)).unwrap_or(Verdict::NotSeen)
    }

    /// Where studs are to be added: missing ones, and one at each sheet edge in the air.
    pub fn studs_to_add(&self) -> impl Iterator<Item = Length> + '_ {
        self.remedies.iter().filter_map(|remedy| match remedy {
            Remedy::AddStudAt(at) => Some(*at),
            _ => None,
        })
    }
}

/// Judges the spacing of a wall's studs. Nothing is judged where the spacing that is asked for is no wider than a stud.
#[must_use]
pub fn judge_spacing(wall: &Wall, rule: &Rule) -> SpacingAnswer {
    let spacing = rule.spacing.value;
    if wall.stud <= Length::ZERO || spacing <= wall.stud {
        return SpacingAnswer { doubts: Vec::new(), judged: None };
    }
    let doubts = doubts::doubts(wall, spacing);
    let judged = wall.pulled.in_order().then(|| judged(wall, rule));
    SpacingAnswer { doubts, judged: judged.flatten() }
}

fn judged(wall: &Wall, rule: &Rule) -> Option<JudgedWall> {
    let spacing = rule.spacing.value;
    let centres = wall.centres();
    let bays = bays::bays(&centres, wall, rule);
    let edges = edges::edges(&centres, wall, rule);
    let counted = bays.iter().filter(|bay| bay.kind != BayKind::Opening);
    let widest = counted.map(|bay| bay.spacing).reduce(Length::max)?;
    let table_row = rule.table_spacings.iter().copied().find(|row| *row >= widest);
    let drift = layout::drift(&centres, wall, spacing);
    let creeps = layout::creeps(&drift);
    let remedies = remedies(&bays, &edges, table_row, rule);
    Some(JudgedWall {
        drift,
        bays,
        edges,
        widest,
        spacing_ratio: widest / spacing,
        table_row,
        creeps,
        by: rule.spacing.origin.clone(),
        tolerance: rule.tolerance.clone(),
        remedies,
        centres,
    })
}

/// Studs at the edges first: they may cure a bay as well.
fn remedies(bays: &[Bay], edges: &[Edge], table_row: Option<Length>, rule: &Rule) -> Vec<Remedy> {
    let mut remedies: Vec<Remedy> = Vec::new();
    remedies.extend(edges.iter().filter_map(|edge| edge.add).map(Remedy::AddStudAt));
    remedies.extend(bays.iter().flat_map(|bay| &bay.missing).map(|at| Remedy::AddStudAt(*at)));
    if bays.iter().any(|bay| bay.verdict() == Some(Verdict::Out)) {
        let next = table_row.filter(|row| *row > rule.spacing.value);
        remedies.extend(next.map(Remedy::JudgeByNextSpacing));
        remedies.push(Remedy::WorkOutAsBuilt);
    }
    remedies
}
