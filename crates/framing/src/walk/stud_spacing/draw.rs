//! A row of studs as it is drawn: places from the plate's end.

use inspection::Verdict;
use inspection::stud_spacing::{Bay, BayKind, FirstPull, JudgedWall, Pulls, Rule, Wall, judge_spacing};
use lumber::SawnSize;
use measure::{Length, LengthUnit, read_length};

use super::{StudSpacingCase, required, row, studs, table_spacings, wall};
use crate::walk::answer::Answer;
use crate::walk::reading::Inputs;
use crate::walk::words;

/// A row of studs.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnRow {
    /// Thickness of a stud along the wall.
    pub stud: Length,
    /// Width of a stud across the wall.
    pub depth: Length,
    /// The spacing that is asked for.
    pub required: Length,
    /// Length of the plate, where it was measured.
    pub plate: Option<Length>,
    /// Centre of each stud that was pulled: the reading, counted from 0, and its centre.
    pub pulled: Vec<(usize, Length)>,
    /// Studs that were not pulled: the end studs.
    pub ends: Vec<Length>,
    /// The bays between neighbours.
    pub bays: Vec<DrawnBay>,
    /// The sheets' edges.
    pub edges: Vec<DrawnEdge>,
    /// Openings, from and to.
    pub openings: Vec<(Length, Length)>,
    /// Where several studs are asked for: the place, how many were found where that was seen, and how many are asked.
    pub packs: Vec<(Length, Option<u8>, u8)>,
    /// Single studs with something wrong: the place, and what: `bowed 3/8"`.
    pub wrong: Vec<(Length, String)>,
    /// Centres of studs to add.
    pub add: Vec<Length>,
    /// Centre of the next stud, if it stands on its mark.
    pub next: Option<Length>,
}

/// A bay between two studs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnBay {
    /// Centre of its first stud.
    pub from: Length,
    /// Centre of its second.
    pub to: Length,
    /// How it stands; none for a bay that an opening takes.
    pub verdict: Option<Verdict>,
    /// Whether a stud is missing in it.
    pub missing: bool,
}

/// An edge where two sheets meet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnEdge {
    /// Where.
    pub at: Length,
    /// How it stands; none over an opening.
    pub verdict: Option<Verdict>,
}

/// The row as it was read; what cannot be read is left out. While pulls contradict each other the studs are there and
/// nothing is judged.
#[must_use]
pub fn drawn(case: &StudSpacingCase) -> DrawnRow {
    let (inputs, answer) = (&mut Inputs::default(), &mut Answer::default());
    let row = row(inputs, case);
    let required = required(inputs, answer, case, row);
    let wall = wall(inputs, answer, case, row);
    let rule = Rule::usual(required, table_spacings(row));
    let judged = judge_spacing(&wall, &rule).judged;
    let centres = centres(&wall, &case.pulls);
    let bay = |bay: &Bay| DrawnBay {
        from: bay.from,
        to: bay.to,
        verdict: bay.verdict(),
        missing: bay.kind == BayKind::Missing,
    };
    let is_pulled = |centre: &Length| centres.iter().any(|(_, pulled)| (*pulled - *centre).abs() < SAME);
    DrawnRow {
        stud: wall.stud,
        depth: SawnSize::from_text(row.size).map_or(TWO_BY_FOUR, SawnSize::depth),
        required: rule.spacing.value,
        plate: wall.length,
        ends: judged.iter().flat_map(|row| &row.centres).copied().filter(|centre| !is_pulled(centre)).collect(),
        pulled: centres,
        bays: judged.iter().flat_map(|row| &row.bays).map(bay).collect(),
        edges: judged
            .iter()
            .flat_map(|row| &row.edges)
            .map(|edge| DrawnEdge { at: edge.at, verdict: edge.verdict() })
            .collect(),
        openings: wall.openings.iter().map(|opening| (opening.from, opening.to)).collect(),
        packs: studs::packs(inputs, case)
            .into_iter()
            .map(|pack| (pack.at, pack.found.observed(), pack.asked))
            .collect(),
        wrong: studs::wrongs(inputs, case).into_iter().map(wrong).collect(),
        add: judged.iter().flat_map(JudgedWall::studs_to_add).collect(),
        next: next_centre(case, &wall),
    }
}

fn wrong(stud: studs::Wrong) -> (Length, String) {
    let what = if stud.bowed { "bowed" } else { "notched" };
    let by = stud.by.observed().map(|by| format!(" {}", words::length(by))).unwrap_or_default();
    (stud.at, format!("{what}{by}"))
}

const TWO_BY_FOUR: Length = Length::from_inches(3.5);
/// Two places that are one stud's.
const SAME: Length = Length::from_inches(1.0 / 64.0);

/// Each pull that can be read, by its number in the list.
fn centres(wall: &Wall, texts: &crate::walk::Texts) -> Vec<(usize, Length)> {
    let readable = |text: &String| read_length(text, LengthUnit::Inches).is_ok();
    let numbers = texts.iter().flatten().enumerate().filter(|(_, text)| readable(text)).map(|(number, _)| number);
    numbers.zip(wall.pulled.centres(wall.stud)).collect()
}

fn next_centre(case: &StudSpacingCase, wall: &Wall) -> Option<Length> {
    let next = super::next_on_layout(case)?;
    let half = wall.stud / 2.0;
    Some(match wall.pulled.pulls {
        Pulls::RunningToCentre => next,
        Pulls::RunningToNearEdge => next + half,
        Pulls::RunningToFarEdge => next - half,
        Pulls::CentreToCentre(first) => {
            let start = if first == FirstPull::FromEndStud { half } else { Length::ZERO };
            wall.pulled.centres(wall.stud).last().copied().unwrap_or(start) + next
        }
    })
}
