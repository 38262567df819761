//! What a header check answers.

use loads::header::{CaseLoads, LoadPart};
use loads::snow::RoofSnow;
use lumber::{Family, Member};
use measure::{AreaLoad, Force, Length, LineLoad, Ratio};
use standards::Source;

use crate::check::{Verdict, governing};
use crate::working::Part;

/// What limits a header.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Limit {
    /// Bending under gravity, with lateral stability.
    Bending,
    /// Shear at a depth from the support.
    Shear,
    /// The header crushed on its jacks.
    Bearing,
    /// The jacks as columns.
    JackColumn,
    /// The bottom plate crushed under the jacks.
    PlateBearing,
    /// Sag under live load.
    LiveDeflection,
    /// Sag under total load.
    TotalDeflection,
    /// Wind across the header, together with gravity.
    Wind,
    /// So slender that it rolls over: the standard allows no such beam without its top held.
    Slenderness,
}

impl Limit {
    /// Every limit, in the order of the screen.
    pub const ALL: [Self; 9] = [
        Self::Bending,
        Self::Shear,
        Self::Bearing,
        Self::JackColumn,
        Self::PlateBearing,
        Self::LiveDeflection,
        Self::TotalDeflection,
        Self::Wind,
        Self::Slenderness,
    ];

    /// In the trade's words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Bending => "bending",
            Self::Shear => "shear",
            Self::Bearing => "bearing on the jacks",
            Self::JackColumn => "jacks as columns",
            Self::PlateBearing => "bearing on the bottom plate",
            Self::LiveDeflection => "live-load sag",
            Self::TotalDeflection => "total sag",
            Self::Wind => "wind with gravity",
            Self::Slenderness => "slenderness",
        }
    }
}

/// One limit of one size of header.
pub type Check = crate::check::Check<Limit>;

/// Why a size cannot stand in this wall, whatever it carries.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Misfit {
    /// Deeper than the room between head and top plates.
    TooDeep {
        /// The room.
        room: Length,
    },
    /// Thicker than the wall's studs.
    TooThick {
        /// The studs' depth.
        room: Length,
    },
}

/// One size that was tried.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// The size.
    pub member: Member,
    /// Its family.
    pub family: Family,
    /// Jacks at each side that it needs; none when no number of jacks is enough.
    pub jacks: Option<u8>,
    /// Its limits; empty where no published value is held or a rule was left.
    pub checks: Vec<Check>,
    /// Why there is no answer, as a sentence.
    pub outside: Option<String>,
    /// Why it does not fit.
    pub misfit: Option<Misfit>,
}

impl Tried {
    /// The limit that uses the greatest share.
    #[must_use]
    pub fn governing(&self) -> Option<&Check> {
        governing(&self.checks)
    }

    /// The verdict on its strength and stiffness.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        if self.outside.is_some() {
            return Verdict::Outside;
        }
        self.governing().map_or(Verdict::Outside, |check| Verdict::of(check.share))
    }

    /// Whether it carries and fits.
    #[must_use]
    pub fn works(&self) -> bool {
        self.verdict().holds() && self.misfit.is_none()
    }
}

/// The kings beside the opening.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kings {
    /// Kings at each side by strength.
    pub for_bending: u8,
    /// Kings at each side by stiffness.
    pub for_stiffness: u8,
    /// Share of one king's bending strength that is asked: over 1 when one is not enough.
    pub one_king_share: Ratio,
    /// Bow of the kings chosen, as the `n` of `H/n`, under the wind for deflection.
    pub bow: Ratio,
    /// Wind on them, at allowable-stress level.
    pub pressure: AreaLoad,
    /// Strip of wall that each side's kings hold.
    pub tributary: Length,
    /// Wind along them.
    pub line_load: LineLoad,
}

impl Kings {
    /// Kings at each side.
    #[must_use]
    pub const fn each_side(&self) -> u8 {
        if self.for_bending >= self.for_stiffness { self.for_bending } else { self.for_stiffness }
    }
}

/// What the code's header table says of the judged size.
#[derive(Clone, Debug, PartialEq)]
pub enum TableAnswer {
    /// What stands on the header was not said: the table is not read before it is.
    AskAbove,
    /// The wall bears nothing: the code asks for no header, and says nothing of the wind.
    Nonbearing {
        /// Whether a flat 2x4 may head the opening.
        flat_two_by_four: bool,
    },
    /// The table does not cover the case; a sentence says why.
    Outside(String),
    /// The table's span.
    Span {
        /// The span allowed, after the footnote for cripples where it applies.
        allowed: Length,
        /// The span as printed or interpolated.
        printed: Length,
        /// The factor for a top that nothing braces; 1 where it does not apply.
        unbraced_top_factor: Ratio,
        /// Jacks each side by the table.
        jacks: u8,
        /// Which cells were read, in words.
        cells: String,
        /// The table.
        source: Source,
        /// Why it and the calculation differ, in sentences.
        differences: Vec<String>,
    },
}

/// Kings by the code's own table.
#[derive(Clone, Debug, PartialEq)]
pub enum KingTable {
    /// The table does not cover the case; a sentence says why.
    Outside(String),
    /// Kings at each side.
    Kings {
        /// How many.
        each_side: u8,
        /// The table.
        source: Source,
    },
}

/// One row of the cut list.
#[derive(Clone, Debug, PartialEq)]
pub struct CutPiece {
    /// How many.
    pub count: u32,
    /// What.
    pub piece: CutKind,
    /// Its length.
    pub length: Length,
}

/// The pieces around an opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CutKind {
    /// A ply of the header, or the header in one piece.
    Header,
    /// A jack.
    Jack,
    /// A king.
    King,
    /// A cripple above the header.
    CrippleAbove,
}

/// What was found of a gap between header and jack.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GapAnswer {
    /// The gap that was measured.
    pub found: Length,
    /// The shrinkage to expect.
    pub expected: Length,
    /// The least that is usual.
    pub least: Length,
    /// The most that is usual.
    pub most: Length,
}

/// The whole answer.
#[derive(Clone, Debug, PartialEq)]
pub struct HeaderAnswer {
    /// What comes down, part by part.
    pub parts: Vec<LoadPart>,
    /// What comes down, by case.
    pub loads: CaseLoads,
    /// Snow on the roof, and what set it.
    pub roof_snow: RoofSnow,
    /// Every size tried, by family and size.
    pub tried: Vec<Tried>,
    /// Which of them the answer is about.
    pub judged: usize,
    /// The smallest of each family that works.
    pub smallest: Vec<usize>,
    /// Load along the judged header, its own weight included, under the combination that loads it most.
    pub line_load: LineLoad,
    /// What each side's jacks carry.
    pub reaction: Force,
    /// Jacks to set at each side: what the calculation needs, or the code's table where it asks for more.
    pub jacks_to_set: u8,
    /// Kings to set at each side, in the same way.
    pub kings_to_set: u8,
    /// The kings; none for an inner wall.
    pub kings: Option<Kings>,
    /// Why the kings could not be worked out, as a sentence.
    pub kings_outside: Option<String>,
    /// Kings by the code's table.
    pub king_table: Option<KingTable>,
    /// The code's header table.
    pub table: TableAnswer,
    /// Room between the head of the opening and the top plates.
    pub room: Length,
    /// What to cut.
    pub cuts: Vec<CutPiece>,
    /// What a gap at the jack means.
    pub gap: Option<GapAnswer>,
    /// The working of the judged size.
    pub working: Vec<Part>,
}
