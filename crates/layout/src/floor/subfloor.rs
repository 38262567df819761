//! Sheets on a floor: rows across the joists, staggered, with their joints on joists.

use measure::Length;

use super::joists::{Line, spans};
use super::{Floor, FloorNotice, SheetSize};
use crate::wall::{EDGE_BEARING, Lay, NOISE, Sheets, Span, bears, sheet_joints, solids};

/// An offcut shorter than this is not laid. Source: common practice.
const SHORTEST_OFFCUT: Length = Length::from_feet(4.0);

/// A sheet in its place.
#[derive(Clone, Debug, PartialEq)]
pub struct FloorSheet {
    /// Row from the near side, from 0.
    pub row: usize,
    /// From edge to edge across the joists.
    pub across: Span,
    /// From edge to edge along the joists.
    pub along: Span,
}

/// The sheets of a floor.
#[derive(Clone, Debug, PartialEq)]
pub struct Subfloor {
    /// Each in its place, row by row.
    pub sheets: Vec<FloorSheet>,
    /// Rows.
    pub rows: usize,
    /// Sheets to buy, with offcuts of 4 ft and more laid again. Openings are not taken off.
    pub to_buy: usize,
    /// Adhesive: a line on every joist, one more at every end joint, and one in every tongue.
    pub adhesive: Length,
}

pub(super) fn subfloor(floor: &Floor, lines: &[Line], notices: &mut Vec<FloorNotice>) -> Option<Subfloor> {
    let size = floor.sheets.as_ref()?;
    let spacing = floor.layout.spacing;
    if !spacing.goes_into(size.length) {
        notices.push(FloorNotice::SheetsOffLayout { along: size.length, spacing });
    }
    let as_given = lying(floor, size);
    let whole = Span::new(floor.layout.start, floor.length);
    let deep = Span::new(Length::ZERO, floor.width);
    let rows = sheet_joints(deep, &as_given, size.width, Length::ZERO);
    let wood = solids(spans(lines));
    let (mut sheets, mut cuts, mut end_joints) = (Vec::new(), Vec::new(), Length::ZERO);
    for (row, pair) in rows.windows(2).enumerate() {
        let along = as_given.edges(pair[0], pair[1], deep, size.width);
        let stagger = if row % 2 == 1 { spacing.stagger() } else { Length::ZERO };
        let columns = sheet_joints(whole, &as_given, size.length, stagger);
        notices.extend(said(floor, &wood, row, &columns));
        let inner = columns.len().saturating_sub(2);
        end_joints += (pair[1] - pair[0]) * inner as f64;
        sheets.extend(columns.windows(2).map(|pair| {
            let across = as_given.edges(pair[0], pair[1], whole, size.length);
            FloorSheet { row, across, along }
        }));
        let strips = (size.width / (pair[1] - pair[0]) + 1e-9).floor().max(1.0) as usize;
        cuts.push((strips, columns.windows(2).map(|pair| pair[1] - pair[0]).collect::<Vec<_>>()));
    }
    let joists = lines.iter().flat_map(|line| &line.runs).map(|run| run.width()).sum::<Length>();
    let tongues = floor.length * rows.len().saturating_sub(2) as f64;
    let to_buy = to_buy(&cuts, size.length);
    Some(Subfloor { sheets, rows: rows.len() - 1, to_buy, adhesive: joists + end_joints + tongues })
}

/// A floor's sheets as a wall's that lie.
fn lying(floor: &Floor, size: &SheetSize) -> Sheets {
    let SheetSize { width, length, gap, sized_for_spacing } = *size;
    Sheets { lay: Lay::Lying, width, length, gap, sized_for_spacing, bottom: Length::ZERO, top: floor.width }
}

fn said(floor: &Floor, wood: &[Span], row: usize, columns: &[Length]) -> Vec<FloorNotice> {
    let inner = columns.get(1..columns.len().saturating_sub(1)).unwrap_or_default();
    let off = inner.iter().filter(|at| **at > EDGE_BEARING && !bears(at.min(floor.length - EDGE_BEARING), wood));
    let mut said: Vec<FloorNotice> = off.map(|at| FloorNotice::JointOffJoist { at: *at, row }).collect();
    if let [.., _, from, to] = *columns
        && (to - from) + NOISE < floor.layout.spacing.length() * 2.0
    {
        said.push(FloorNotice::NarrowSheet { from, to, row });
    }
    said
}

/// Sheets to buy: whole rows share their offcuts; strips of a narrow row come side by side out of one sheet.
fn to_buy(rows: &[(usize, Vec<Length>)], sheet: Length) -> usize {
    let lengths = |narrow: bool| {
        let of = rows.iter().filter(move |(strips, _)| (*strips > 1) == narrow);
        let mut lengths: Vec<Length> = of.flat_map(|(_, row)| row.iter().copied()).collect();
        lengths.sort_by(|a, b| b.inches().total_cmp(&a.inches()));
        lengths
    };
    let strips = rows.iter().map(|(strips, _)| *strips).max().unwrap_or(1).max(1);
    packed(&lengths(false), sheet) + packed(&lengths(true), sheet).div_ceil(strips)
}

/// The longest piece first, each from the first offcut that is long enough and worth keeping.
fn packed(longest_first: &[Length], sheet: Length) -> usize {
    let (mut offcuts, mut sheets): (Vec<Length>, usize) = (Vec::new(), 0);
    for &piece in longest_first {
        match offcuts.iter_mut().find(|left| **left + NOISE >= piece && **left + NOISE >= SHORTEST_OFFCUT) {
            Some(left) => *left = *left - piece,
            None => {
                sheets += 1;
                let left = sheet - piece;
                // Most pieces are whole sheets: only what can be laid again is remembered.
                if left + NOISE >= SHORTEST_OFFCUT {
                    offcuts.push(left);
                }
            }
        }
    }
    sheets
}

impl Subfloor {
    /// The fewest sheets that cover so much floor: its area over a sheet's.
    #[must_use]
    pub fn fewest(floor: &Floor, size: &SheetSize) -> usize {
        let sheets = (floor.length * floor.width) / (size.width * size.length);
        (sheets - 1e-9).ceil().clamp(0.0, 1e9) as usize
    }
}
