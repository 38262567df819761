//! Sheets on a wall: each with the lines to chalk on it, their joints, and what is narrow or in the air.

use measure::Length;

use super::studs::{Standing, spans};
use super::{EDGE_BEARING, Lay, NOISE, Notice, Part, Piece, Sheets, Span, Wall, bears, solids};

/// A line to chalk on a sheet: the center of what stands behind it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChalkLine {
    /// From the end at which the tape is hooked.
    pub from_end: Length,
    /// From the sheet's own near edge.
    pub from_edge: Length,
    /// What stands there.
    pub part: Part,
}

/// A sheet in its place.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// Row from the bottom, from 0.
    pub row: usize,
    /// From edge to edge along the wall: what it is cut to is its width.
    pub along: Span,
    /// From edge to edge upright.
    pub upright: Span,
    /// Openings that it is cut out for, by their place in the wall's list.
    pub openings: Vec<usize>,
    /// The lines to chalk, from the near edge on.
    pub lines: Vec<ChalkLine>,
}

/// Lays out the sheets. Blocks at level joints are added to the pieces.
pub(super) fn sheets(
    wall: &Wall,
    standing: &[Standing],
    cripples: &[Standing],
    pieces: &mut Vec<Piece>,
    notices: &mut Vec<Notice>,
) -> Vec<Sheet> {
    let Some(sheets) = &wall.sheets else { return Vec::new() };
    let spacing = wall.layout.spacing;
    if !spacing.goes_into(sheets.along()) {
        notices.push(Notice::SheetsOffLayout { along: sheets.along(), spacing });
    }
    let outer = Span::new(sheets.bottom, sheets.top);
    let rows = joints(outer, sheets, sheets.upright(), Length::ZERO);
    let mut laid = Vec::new();
    for (row, upright) in rows.windows(2).enumerate() {
        let upright = sheets.edges(upright[0], upright[1], outer, sheets.upright());
        let staggered = sheets.lay == Lay::Lying && row % 2 == 1;
        let whole = Span::new(wall.layout.start, wall.length);
        let columns = joints(whole, sheets, sheets.along(), if staggered { spacing.stagger() } else { Length::ZERO });
        if row == 0 || sheets.lay == Lay::Lying {
            notices.extend(joints_in_air(wall, standing, cripples, upright, &columns));
            notices.extend(narrow(wall, upright.from, &columns));
        }
        laid.extend(columns.windows(2).map(|pair| {
            let along = sheets.edges(pair[0], pair[1], whole, sheets.along());
            Sheet {
                row,
                along,
                upright,
                openings: cut_out(wall, along, upright),
                lines: lines(along, standing, cripples),
            }
        }));
    }
    let inner = rows.get(1..rows.len().saturating_sub(1)).unwrap_or_default();
    inner.iter().for_each(|at| level_joint(wall, *at, pieces, notices));
    laid
}

/// Where sheets begin and end in a run, at joints' middles; the first is as long as the stagger where there is one. A rest no wider than
/// the gap is none.
pub(crate) fn joints(run: Span, sheets: &Sheets, measure: Length, stagger: Length) -> Vec<Length> {
    let pitch = sheets.pitch(measure);
    let first = if stagger > Length::ZERO { stagger } else { pitch };
    // The gap past a full sheet has its middle half a gap beyond it.
    let past = if sheets.sized_for_spacing { Length::ZERO } else { -sheets.gap / 2.0 };
    let joints = (0_u32..).map(|number| run.from + first + past + pitch * f64::from(number));
    let inner = joints.skip_while(|at| *at <= run.from + NOISE).take_while(|at| *at < run.to - sheets.gap - NOISE);
    [run.from].into_iter().chain(inner).chain([run.to]).collect()
}

fn cut_out(wall: &Wall, along: Span, upright: Span) -> Vec<usize> {
    let meets = |opening: &super::Opening| {
        let void = Span::new(opening.sill.unwrap_or(Length::ZERO), opening.head);
        opening.rough().overlaps(along) && void.overlaps(upright)
    };
    wall.openings.iter().enumerate().filter(|(_, opening)| meets(opening)).map(|(at, _)| at).collect()
}

fn lines(along: Span, standing: &[Standing], cripples: &[Standing]) -> Vec<ChalkLine> {
    let behind = standing.iter().chain(cripples).filter(|stood| stood.along.overlaps(along));
    let line = |stood: &Standing| {
        let from_end = stood.along.centre();
        ChalkLine { from_end, from_edge: from_end - along.from, part: stood.part }
    };
    let mut lines: Vec<ChalkLine> = behind.map(line).collect();
    lines.sort_by(|a, b| a.from_end.inches().total_cmp(&b.from_end.inches()));
    lines.dedup_by(|a, b| (a.from_end - b.from_end).abs() < NOISE);
    lines
}

/// Joints without wood behind both edges. Over an opening the wood is that of the cripples, or the header's own.
fn joints_in_air(
    wall: &Wall,
    standing: &[Standing],
    cripples: &[Standing],
    upright: Span,
    columns: &[Length],
) -> Vec<Notice> {
    let thickness = wall.stud.thickness;
    let inner = columns.get(1..columns.len().saturating_sub(1)).unwrap_or_default();
    let on_wood = |at: Length| {
        let within = |span: Span| span.from < at && at < span.to;
        let Some(opening) = wall.openings.iter().find(|opening| within(opening.between_kings(thickness))) else {
            return bears(at, &solids(spans(standing)));
        };
        let bears_with = |part: Part, jacks: bool| {
            let stand = standing.iter().filter(|stood| jacks || stood.part != Part::Jack);
            let wood = stand.chain(cripples.iter().filter(|cripple| cripple.part == part));
            bears(at, &solids(wood.map(|stood| stood.along)))
        };
        let above = opening.cripple_above(&wall.heights);
        let over = Span::new(wall.heights.stud_top() - above, wall.heights.stud_top());
        let under = opening.cripple_below(&wall.heights).unwrap_or(Length::ZERO);
        let under = Span::new(wall.heights.plate, wall.heights.plate + under);
        let crosses = |band: Span| band.width() > NOISE && band.overlaps(upright);
        (!crosses(over) || bears_with(Part::CrippleAbove, false))
            && (!crosses(under) || bears_with(Part::CrippleBelow, true))
    };
    // Of a strip narrower than the bearing, all that there is lies on the end stud.
    let judged = |at: Length| on_wood(at.min(wall.length - EDGE_BEARING));
    let off = inner.iter().filter(|at| **at > EDGE_BEARING && !judged(**at));
    off.map(|at| Notice::JointOffStud { at: *at, row: upright.from }).collect()
}

/// The last piece where it is narrower than two bays, and the joint that serves better.
fn narrow(wall: &Wall, row: Length, columns: &[Length]) -> Option<Notice> {
    let [.., before, from, to] = *columns else { return None };
    let left = to - from;
    if left + NOISE >= wall.layout.spacing.length() * 2.0 {
        return None;
    }
    let narrower = |joint: Length| (joint - before).min(to - joint);
    let marks = wall.layout.centres(wall.length, wall.stud.thickness).map(|(_, mark)| mark);
    let better = marks.filter(|mark| *mark > before && *mark < from && narrower(*mark) > left + NOISE);
    let better = better.max_by(|a, b| narrower(*a).inches().total_cmp(&narrower(*b).inches()));
    Some(Notice::NarrowSheet { from, to, row, better })
}

/// A level joint between the plates: a block in every bay at that height.
fn level_joint(wall: &Wall, at: Length, pieces: &mut Vec<Piece>, notices: &mut Vec<Notice>) {
    let heights = &wall.heights;
    if at <= heights.plate || at >= heights.stud_top() {
        return;
    }
    notices.push(Notice::LevelJoint { at });
    let upright = Span::about(at, wall.stud.thickness);
    let there = pieces.iter().filter(|piece| piece.upright.overlaps(upright)).map(|piece| piece.along);
    let wood = solids(there);
    let void = |bay: Span| {
        wall.openings.iter().any(|opening| {
            let bottom = opening.sill.unwrap_or(Length::ZERO);
            opening.rough().overlaps(bay) && bottom < at && at < opening.head
        })
    };
    let bays = wood.windows(2).map(|pair| Span::new(pair[0].to, pair[1].from));
    pieces.extend(bays.filter(|bay| !void(*bay)).map(|bay| Piece::lying(Part::PanelBlock, bay, upright)));
}
