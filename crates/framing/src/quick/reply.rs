//! What the command answers of a quick check: plain data, with units in the names.

use bracing::diaphragm::Layout;
use measure::{FlexuralRigidity, Length};
use members::beam::Section;
use members::flexure::{Acting, Cut};
use schemars::JsonSchema;
use serde::Serialize;

use super::drawn_compared::DrawnPair;
use super::drawn_fasteners::{DrawnJoint, DrawnSill, DrawnSwap};
use crate::layout::drawn::DrawnLayout;
use crate::reply::CheckReply;
use crate::site::reply::AboutReply;

/// A number of an answer, with its name.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FactReply {
    /// Its stable name: `longest_span_in`.
    pub name: String,
    /// What it is, in words.
    pub what: String,
    /// The number.
    pub value: f64,
    /// The number as it is written, with its unit.
    pub written: String,
}

/// One size that was tried.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TriedReply {
    /// The size.
    pub size: String,
    /// Its family.
    pub family: String,
    /// The verdict.
    pub verdict: String,
    /// Share used.
    pub ratio: Option<f64>,
    /// What governs.
    pub governs: Option<String>,
    /// Why there is no answer, or why it does not fit.
    pub reason: Option<String>,
}

/// What a support gives.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SupportReply {
    /// Where it is, from the left end.
    pub at_in: f64,
    /// The same in words.
    pub at: String,
    /// Up, by kind of load, lb; wind at strength level.
    pub by_case_lb: Vec<(String, f64)>,
    /// The most that it holds up, in any combination, lb.
    pub most_lb: f64,
    /// The least; below zero it must be held down, lb.
    pub least_lb: f64,
}

/// What a rule of the code says of it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RuleReply {
    /// Its heading: `Span table`.
    pub heading: String,
    /// Whether it is kept; none where it gives no answer, or only a number.
    pub holds: Option<bool>,
    /// Its answer, short: `15' 5"`.
    pub figure: String,
    /// What it says, in sentences.
    pub says: Vec<String>,
}

/// A member as it was found, beside the one that was drawn.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AsFoundReply {
    /// The size as drawn.
    pub drawn: String,
    /// Its verdict.
    pub verdict: String,
    /// Its share.
    pub ratio: Option<f64>,
    /// What differs, in sentences.
    pub says: Vec<String>,
}

/// A table of the answer.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TableReply {
    /// Its heading.
    pub heading: String,
    /// What stands over its columns.
    pub columns: Vec<String>,
    /// Its rows, the first of each its name.
    pub rows: Vec<Vec<String>>,
    /// What is to be known of it.
    pub notes: Vec<String>,
}

/// Lines of text of the answer, to be copied as they stand.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct TextReply {
    /// Its heading.
    pub heading: String,
    /// The lines.
    pub text: String,
}

/// What is drawn of a member; lengths in inches of the real thing.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Drawn {
    /// Nothing yet.
    #[default]
    Nothing,
    /// A member on supports, with its loads and what goes on in it.
    Beam(DrawnBeam),
    /// A rafter.
    Rafter(DrawnRafter),
    /// A hip or a valley in plan.
    Corner(DrawnCorner),
    /// A stud in its wall, or a post.
    Upright(DrawnUpright),
    /// A cut member.
    Cut(DrawnCut),
    /// A braced wall.
    Wall(DrawnWall),
    /// The path of uplift.
    Path(Vec<DrawnLink>),
    /// The layers of a wall.
    Layers(DrawnLayers),
    /// The panels of a schedule.
    Marks(Vec<DrawnMark>),
    /// Walls as drawn and as worked.
    Compared(Vec<DrawnPair>),
    /// A nail in its joint.
    Joint(DrawnJoint),
    /// One nail beside another.
    Swap(DrawnSwap),
    /// A bottom plate on its bolts.
    Sill(DrawnSill),
    /// Wall lines in plan.
    Lines(DrawnLines),
    /// A floor or a roof in plan.
    Floor(DrawnFloor),
    /// What is marked and cut.
    Layout(DrawnLayout),
}

/// A panel of a schedule.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnMark {
    /// Its mark.
    pub mark: String,
    /// Spacing of nails along its edges.
    pub edge: Length,
    /// In its field.
    pub field: Length,
    /// Stud spacing.
    pub studs: Length,
}

/// A wall cut through, its layers from the studs out.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnLayers {
    /// Name and thickness of each; none thick of a barrier.
    pub layers: Vec<(String, Length)>,
    /// The panel's place among them.
    pub panel: Option<usize>,
    /// Length of the panel's nail.
    pub panel_nail: Length,
    /// Whether it reaches; none where no panel counts.
    pub panel_nail_reaches: Option<bool>,
    /// The outer fastener: the place of what it holds among the layers, its least length, and its length where it is said.
    pub outer: Option<(usize, Length, Option<Length>)>,
    /// Whether the panels brace.
    pub braces: bool,
}

/// Where in a house a link of the path of uplift is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkAt {
    /// Rafter on the top plate.
    Plate,
    /// Top plate on the studs.
    Studs,
    /// Studs over a floor.
    Floor,
    /// Studs on the sill.
    Sill,
    /// Sill on the footing.
    Footing,
    /// Sheathing on the roof.
    Deck,
    /// Outlooker on the truss behind a gable wall.
    Truss,
    /// Rafter on the beam of a porch.
    Beam,
    /// Beam on its post.
    Post,
    /// Post on its footing.
    PostBase,
    /// Footing in the ground.
    Ground,
}

/// A link of the path of uplift as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnLink {
    /// Where it is.
    pub at: LinkAt,
    /// The input that says what is there.
    pub input: &'static str,
    /// Its name: `rafter to plate`.
    pub name: String,
    /// What it must hold, in words.
    pub demand: String,
    /// What it holds, in words.
    pub held: String,
    /// Whether it holds; none while it is not known.
    pub holds: Option<bool>,
    /// Whether it is the weakest.
    pub weakest: bool,
}

/// A piece of a braced wall that reaches from plate to plate.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnPiece {
    /// Its length.
    pub length: Length,
    /// Whether it counts.
    pub counts: bool,
    /// What holds its left end down, in words; empty where nothing need.
    pub left: String,
    /// What holds its right end down.
    pub right: String,
}

/// An opening in a braced wall.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnOpening {
    /// Its width.
    pub width: Length,
    /// Its height.
    pub height: Length,
    /// Whether panels close the wall above and below it.
    pub sheathed: bool,
}

/// A braced wall seen from the front, one storey or several of the same length.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnWall {
    /// Height of each storey with its push in words, from the top down.
    pub storeys: Vec<(Length, String)>,
    /// Its pieces from the left.
    pub pieces: Vec<DrawnPiece>,
    /// What is between each two of them; none where that is not said.
    pub openings: Vec<DrawnOpening>,
    /// Stud spacing.
    pub studs: Length,
    /// Spacing of the nails along the edges, and in the field; none where no panels are asked about.
    pub nails: Option<(Length, Length)>,
    /// Breadth of the post at each end.
    pub post: Length,
    /// What holds each storey's ends down, in words, from the top down.
    pub holds: Vec<String>,
    /// Level joints of the panels, above the bottom of the wall.
    pub level_joints: Vec<Length>,
    /// Whether they lie on blocking.
    pub blocked: bool,
}

/// A wall line in plan.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnLine {
    /// How far it stands from the left end, or from the front where the wind blows along the house.
    pub at: Length,
    /// What it is given at the lowest storey, in words; empty where that is not known.
    pub force: String,
    /// Whether it is given the most.
    pub hardest: bool,
}

/// A house with its wall lines in plan, the front below.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnLines {
    /// Its length.
    pub length: Length,
    /// Its width.
    pub width: Length,
    /// Whether the wind blows across it, on its long side.
    pub across: bool,
    /// The lines that run along the wind.
    pub lines: Vec<DrawnLine>,
    /// Where the other lines stand.
    pub others: Vec<Length>,
    /// All the wind above the lowest storey's walls, in words.
    pub push: String,
    /// Sides without a line along the wind: at its beginning, at its end.
    pub open: (bool, bool),
}

/// A floor or a roof in plan between its wall lines, the wind from above.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnFloor {
    /// Between its wall lines.
    pub span: Length,
    /// Along the wind.
    pub deep: Length,
    /// How its panels lie.
    pub layout: Layout,
    /// The push on a foot of it, in words.
    pub push: String,
    /// What each wall line is given, in words.
    pub reaction: String,
    /// Pull and push in its chords, in words.
    pub chord: String,
    /// Where the plate is spliced, from the left.
    pub splice: Length,
    /// Walls of the line at its left end, from above; none where nobody said.
    pub walls: Vec<(Length, Length)>,
    /// The most in the collector: where, from above, and in words.
    pub collector: Option<(Length, String)>,
}

/// A member on supports.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnBeam {
    /// From end to end.
    pub length: Length,
    /// Where it rests.
    pub supports: Vec<Length>,
    /// Its depth.
    pub depth: Length,
    /// Its loads, without its own weight.
    pub loads: Vec<Acting>,
    /// Shear, moment and sag under the loads that bend it most.
    pub diagram: Vec<Section>,
    /// The combination that bends it most.
    pub combination: String,
    /// A notch or a hole in it.
    pub cut: Option<Cut>,
    /// Its stiffness.
    pub rigidity: FlexuralRigidity,
}

/// A rafter as it is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnRafter {
    /// Level run, plate to ridge.
    pub run: Length,
    /// Rise on twelve.
    pub rise_in_twelve: f64,
    /// Overhang.
    pub overhang: Length,
    /// Its depth.
    pub depth: Length,
    /// Level seat.
    pub seat: Length,
    /// Ties above the plate; none where there are none.
    pub tie: Option<Length>,
    /// Pull in each tie, in words.
    pub tie_pull: String,
    /// Purlin.
    pub purlin: Option<Length>,
    /// Depth and thickness of the ridge.
    pub ridge: (Length, Length),
    /// Whether the ridge carries.
    pub ridge_carries: bool,
    /// What presses and what lifts, in words.
    pub down: String,
    /// What lifts.
    pub up: String,
}

/// A hip or a valley in plan.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnCorner {
    /// Whether it is a valley.
    pub is_valley: bool,
    /// Run of the commons on each side.
    pub runs: (Length, Length),
    /// Plan angle to the first commons, in words.
    pub angles: (String, String),
    /// Its true length, in words.
    pub length: String,
    /// A post under it, in plan from the lower corner.
    pub post: Option<Length>,
    /// Load at its heavy end, in words.
    pub heavy: String,
}

/// What stands.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnUpright {
    /// Its length.
    pub height: Length,
    /// Breadth of one ply, and depth.
    pub ply: (Length, Length),
    /// How many plies.
    pub plies: u8,
    /// Spacing of the studs beside it; none for a post.
    pub spacing: Option<Length>,
    /// What comes down on it, in words.
    pub down: String,
    /// Wind across it, in words; empty on an inner wall.
    pub wind: String,
    /// Rows of nails, spacing along them and to the ends, for a post of plies.
    pub nails: Option<(u8, Length, Length, Length)>,
    /// Depth of a notch, or diameter of a hole, and whether it is a hole.
    pub cut: Option<(Length, bool)>,
}

/// A cut member.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnCut {
    /// Its length between bearings.
    pub span: Length,
    /// Its depth.
    pub depth: Length,
    /// The cut.
    pub cut: Option<Cut>,
    /// The deepest notch and the widest hole that the code allows there.
    pub allowed: (Length, Length),
}

/// The answer of a quick check.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct QuickReply {
    /// Verdict, in the trade's words.
    pub verdict: String,
    /// The size that it is about.
    pub size: String,
    /// Greatest share of capacity.
    pub ratio: Option<f64>,
    /// What governs.
    pub governs: Option<String>,
    /// The combination.
    pub combination: Option<String>,
    /// Why there is no answer.
    pub reason: Option<String>,
    /// Its numbers.
    pub facts: Vec<FactReply>,
    /// Its limits.
    pub checks: Vec<CheckReply>,
    /// Every size tried.
    pub sizes: Vec<TriedReply>,
    /// The smallest of each family that works.
    pub smallest: Vec<String>,
    /// What its supports give.
    pub supports: Vec<SupportReply>,
    /// What the code's own rules say.
    pub by_code: Vec<RuleReply>,
    /// What else must be there for it: the path down from a ridge, the ridge that a rafter without ties hangs on.
    pub needs: Vec<RuleReply>,
    /// The member as drawn, where it was found otherwise.
    pub as_found: Option<AsFoundReply>,
    /// Tables.
    pub tables: Vec<TableReply>,
    /// Lines of text to be copied.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub texts: Vec<TextReply>,
    /// What to do.
    pub action: Vec<String>,
    /// What goes with it.
    #[serde(flatten)]
    pub about: AboutReply,
    /// What is drawn of it.
    #[serde(skip)]
    pub drawn: Drawn,
    /// Whether a rule that decides over strength is broken.
    #[serde(skip)]
    pub forbidden: bool,
}

impl QuickReply {
    /// A fact by its name.
    #[must_use]
    pub fn fact(&self, name: &str) -> Option<f64> {
        self.facts.iter().find(|fact| fact.name == name).map(|fact| fact.value)
    }
}
