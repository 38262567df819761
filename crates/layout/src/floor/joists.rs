//! Where joists run: first what has its place, then the layout's joists around it, cut at openings.

use measure::Length;

use super::{Floor, FloorError, FloorNotice, FloorPart, FloorPiece, JoistEnd, OnSides};
use crate::wall::{NOISE, SHORTEST_CRIPPLE, SPACING_TOLERANCE, Settled, Span, board_joints, settle, solids};

/// Blocks between two joists spread under a wall are no farther apart. Source: IRC 2021 R502.4 (looked up).
const WALL_BLOCKS: Length = Length::from_feet(4.0);

/// A line of joists across the floor.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Line {
    pub(super) part: FloorPart,
    pub(super) across: Span,
    /// Its pieces along: one of a whole joist, more of tails.
    pub(super) runs: Vec<Span>,
    /// The layout center that it stands for.
    pub(super) layout: Option<Length>,
}

impl Line {
    fn whole(floor: &Floor, part: FloorPart, across: Span) -> Self {
        Self { part, across, runs: vec![between_ends(floor)], layout: None }
    }
}

/// From joist end to joist end.
pub(super) fn between_ends(floor: &Floor) -> Span {
    Span::new(floor.ends[0].stops_short(), floor.width - floor.ends[1].stops_short())
}

pub(super) fn spans(lines: &[Line]) -> Vec<Span> {
    lines.iter().map(|line| line.across).collect()
}

/// Every line of joists, ascending.
pub(super) fn lines(floor: &Floor, notices: &mut Vec<FloorNotice>) -> Result<Vec<Line>, FloorError> {
    let thickness = floor.joist.thickness;
    let ends = [Span::new(Length::ZERO, thickness), Span::new(floor.length - thickness, floor.length)];
    let mut lines: Vec<Line> = ends.map(|across| Line::whole(floor, FloorPart::EndJoist, across)).to_vec();
    trimmers(floor, &mut lines)?;
    under_walls(floor, &mut lines, notices)?;
    on_layout(floor, &mut lines);
    lines.sort_by(|a, b| a.across.from.inches().total_cmp(&b.across.from.inches()));
    wide_bays(floor, &lines, notices);
    Ok(lines)
}

fn trimmers(floor: &Floor, lines: &mut Vec<Line>) -> Result<(), FloorError> {
    let thickness = floor.joist.thickness;
    for (at, opening) in floor.openings.iter().enumerate() {
        let framed = opening.with_trimmers(thickness);
        for ply in 0..opening.plies() {
            let near = framed.from + thickness * f64::from(ply);
            let far = opening.across.to + thickness * f64::from(ply);
            for from in [near, far] {
                let across = Span::new(from, from + thickness);
                let met = lines.iter().find(|line| line.across.overlaps(across));
                match met {
                    None => lines.push(Line::whole(floor, FloorPart::Trimmer, across)),
                    // One trimmer serves two openings that lie in one line.
                    Some(met) if met.across.holds(across) && met.part == FloorPart::Trimmer => {}
                    Some(met) => {
                        let plies = opening.across.from - framed.from;
                        let before = met.across.centre() < opening.across.centre();
                        let nearest = if before {
                            met.across.to + plies
                        } else {
                            met.across.from - plies - opening.across.width()
                        };
                        return Err(FloorError::OpeningMeets { opening: at, from: opening.across.from, nearest });
                    }
                }
            }
        }
    }
    Ok(())
}

/// What is taken across: lines that stand, and openings, which no whole joist crosses.
fn taken(floor: &Floor, lines: &[Line]) -> Vec<Span> {
    lines.iter().map(|line| line.across).chain(floor.openings.iter().map(|opening| opening.across)).collect()
}

fn under_walls(floor: &Floor, lines: &mut Vec<Line>, notices: &mut Vec<FloorNotice>) -> Result<(), FloorError> {
    let thickness = floor.joist.thickness;
    for (at, wall) in floor.walls_above.iter().enumerate() {
        let spread = wall.spread.unwrap_or(Length::ZERO);
        let width = thickness * 2.0 + spread;
        let taken = taken(floor, lines);
        let free = |centre: &Length| {
            let pack = Span::about(*centre, width);
            Span::new(Length::ZERO, floor.length).holds(pack) && !taken.iter().any(|span| span.overlaps(pack))
        };
        let beside = taken.iter().flat_map(|span| [span.from - width / 2.0, span.to + width / 2.0]);
        let off = |centre: &Length| (*centre - wall.centre).abs();
        let nearest = [wall.centre].into_iter().chain(beside).filter(free);
        let nearest = nearest.min_by(|a, b| off(a).inches().total_cmp(&off(b).inches()));
        // Farther off than its own width, the pack is no longer under the wall.
        let Some(centre) = nearest.filter(|centre| off(centre) <= width) else {
            return Err(FloorError::WallAbove { wall: at, given: wall.centre, nearest });
        };
        if off(&centre) > NOISE {
            notices.push(FloorNotice::WallMoved { wall: at, wanted: wall.centre, stands: centre });
        }
        let pack = Span::about(centre, width);
        let pair = [Span::new(pack.from, pack.from + thickness), Span::new(pack.to - thickness, pack.to)];
        lines.extend(pair.map(|across| Line::whole(floor, FloorPart::WallJoist, across)));
    }
    Ok(())
}

fn on_layout(floor: &Floor, lines: &mut Vec<Line>) {
    let thickness = floor.joist.thickness;
    for (_, mark) in floor.layout.centres(floor.length, thickness) {
        let there = spans(lines);
        let Settled::At(centre) = settle(mark, thickness, &there, &there) else { continue };
        let across = Span::about(centre, thickness);
        let runs = runs(floor, across);
        let part = if runs.len() == 1 && runs[0] == between_ends(floor) { FloorPart::Joist } else { FloorPart::Tail };
        lines.push(Line { part, across, runs, layout: Some(mark) });
    }
}

/// A joist's line cut at the headers of the openings that it meets.
fn runs(floor: &Floor, across: Span) -> Vec<Span> {
    let thickness = floor.joist.thickness;
    let met = floor.openings.iter().filter(|opening| opening.across.overlaps(across));
    met.map(|opening| opening.with_headers(thickness)).fold(vec![between_ends(floor)], |runs, cut| {
        let outside = |run: &Span| [Span::new(run.from, run.to.min(cut.from)), Span::new(run.from.max(cut.to), run.to)];
        runs.iter().flat_map(outside).filter(|run| run.width() > NOISE).collect()
    })
}

fn wide_bays(floor: &Floor, lines: &[Line], notices: &mut Vec<FloorNotice>) {
    let most = floor.layout.spacing.length() - floor.joist.thickness + SPACING_TOLERANCE;
    let wood = solids(spans(lines));
    let bays = wood.windows(2).map(|pair| Span::new(pair[0].to, pair[1].from));
    let wide = bays.filter(|bay| bay.width() > most + NOISE);
    notices.extend(wide.map(|bay| FloorNotice::WideBay { from: bay.from, to: bay.to }));
}

/// Which plates a line comes to; none of a tail between two openings.
pub(super) fn on_sides(floor: &Floor, line: &Line) -> Option<OnSides> {
    let ends = between_ends(floor);
    let near = line.runs.iter().any(|run| run.from <= ends.from + NOISE);
    let far = line.runs.iter().any(|run| run.to + NOISE >= ends.to);
    match (near, far) {
        (true, true) => Some(OnSides::Both),
        (true, false) => Some(OnSides::Near),
        (false, true) => Some(OnSides::Far),
        (false, false) => None,
    }
}

/// The plan of rims, joists, tails and headers.
pub(super) fn pieces(floor: &Floor, lines: &[Line], notices: &mut Vec<FloorNotice>) -> Vec<FloorPiece> {
    let thickness = floor.joist.thickness;
    let mut pieces = rims(floor, lines);
    for line in lines {
        for &along in &line.runs {
            let length = along.width();
            pieces.push(FloorPiece { part: line.part, across: line.across, along, length, plies: 1 });
            if line.part == FloorPart::Tail && length < SHORTEST_CRIPPLE {
                notices.push(FloorNotice::ShortTail { at: line.across.centre(), length });
            }
        }
    }
    for opening in &floor.openings {
        let (whole, across, plies) = (opening.with_headers(thickness), opening.across, opening.plies());
        let sides = [Span::new(whole.from, opening.along.from), Span::new(opening.along.to, whole.to)];
        let header = |along| FloorPiece { part: FloorPart::Header, across, along, length: across.width(), plies };
        pieces.extend(sides.map(header));
    }
    pieces.extend(wall_blocks(floor, lines));
    pieces
}

fn rims(floor: &Floor, lines: &[Line]) -> Vec<FloorPiece> {
    let centres: Vec<Length> = lines.iter().map(|line| line.across.centre()).collect();
    let whole = Span::new(Length::ZERO, floor.length);
    let joints = board_joints(whole, floor.rim_stock, &centres, &[]);
    let ends: Vec<Length> = [whole.from].into_iter().chain(joints).chain([whole.to]).collect();
    let rim = |along: Span| {
        let board = move |pair: &[Length]| {
            let across = Span::new(pair[0], pair[1]);
            FloorPiece { part: FloorPart::Rim, across, along, length: across.width(), plies: 1 }
        };
        ends.windows(2).map(board).collect::<Vec<_>>()
    };
    let near = match floor.ends[0] {
        JoistEnd::OnPlate { rim: thick } => rim(Span::new(Length::ZERO, thick)),
        _ => Vec::new(),
    };
    let far = match floor.ends[1] {
        JoistEnd::OnPlate { rim: thick } => rim(Span::new(floor.width - thick, floor.width)),
        _ => Vec::new(),
    };
    near.into_iter().chain(far).collect()
}

/// Blocks between two joists that are spread under a wall, evenly and no farther apart than the code says.
fn wall_blocks(floor: &Floor, lines: &[Line]) -> Vec<FloorPiece> {
    let under: Vec<Span> =
        lines.iter().filter(|line| line.part == FloorPart::WallJoist).map(|line| line.across).collect();
    let ends = between_ends(floor);
    let spaces = (ends.width() / WALL_BLOCKS).ceil().max(1.0) as u32;
    let spread = floor.walls_above.iter().filter_map(|wall| wall.spread).filter(|spread| *spread > NOISE);
    let pairs = spread.flat_map(|spread| {
        let apart = move |pair: &&[Span]| ((pair[1].from - pair[0].to) - spread).abs() < NOISE;
        under.windows(2).filter(apart).map(|pair| Span::new(pair[0].to, pair[1].from)).collect::<Vec<_>>()
    });
    let mut gaps: Vec<Span> = pairs.collect();
    gaps.sort_by(|a, b| a.from.inches().total_cmp(&b.from.inches()));
    gaps.dedup_by(|a, b| (a.from - b.from).abs() < NOISE);
    let block = |across: Span, number: u32| {
        let at = ends.from + ends.width() * (f64::from(number) / f64::from(spaces));
        let along = Span::about(at, floor.joist.thickness);
        FloorPiece { part: FloorPart::WallBlock, across, along, length: across.width(), plies: 1 }
    };
    gaps.into_iter().flat_map(|across| (1..spaces).map(move |number| block(across, number))).collect()
}
