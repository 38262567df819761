//! Blocks of corners and partitions, and what is to be said of backing and bays.

use measure::Length;

use super::backing::{BLOCK, BLOCKS};
use super::studs::{Standing, spans};
use super::{
    BACKING, Backing, End, LADDER, NOISE, Notice, Part, Partition, Piece, SPACING_TOLERANCE, Span, Wall, solids,
};

/// Blocks of corners and partitions, and what is to be said of backing and bays.
pub(super) fn back(wall: &Wall, standing: &[Standing], pieces: &mut Vec<Piece>, notices: &mut Vec<Notice>) {
    let wood = solids(spans(standing));
    for (end, at) in wall.ends.iter().zip([Length::ZERO, wall.length]) {
        match end {
            End::TwoStudsAndClips => notices.push(Notice::Clips { at }),
            End::ThreeStuds { .. } => corner_blocks(wall, standing, at, pieces),
            End::OneStud | End::FlatStud { .. } => {}
        }
    }
    for (at, partition) in wall.partitions.iter().enumerate() {
        match partition.backing {
            Backing::TwoStudsAndBlocks => blocks(wall, partition.meets(), pieces),
            Backing::Ladder => ladder(wall, &wood, partition, pieces),
            Backing::FlatStud(_) => {}
        }
        notices.extend(without_backing(wall, &wood, at, partition));
    }
    for pair in wood.windows(2) {
        let bay = Span::new(pair[0].to, pair[1].from);
        let opening = wall.openings.iter().any(|opening| opening.rough().overlaps(bay));
        let most = wall.layout.spacing.length() - wall.stud.thickness + SPACING_TOLERANCE;
        if !opening && bay.width() > most + NOISE {
            notices.push(Notice::WideBay { from: bay.from, to: bay.to });
        }
    }
}

fn corner_blocks(wall: &Wall, standing: &[Standing], end: Length, pieces: &mut Vec<Piece>) {
    let corner = standing.iter().filter(|stood| stood.part == Part::CornerStud);
    let nearest = corner.min_by(|a, b| {
        let off = |stood: &Standing| (stood.along.centre() - end).abs().inches();
        off(a).total_cmp(&off(b))
    });
    let thickness = wall.stud.thickness;
    let Some(stud) = nearest else { return };
    let between = if end == Length::ZERO {
        Span::new(thickness, stud.along.from)
    } else {
        Span::new(stud.along.to, wall.length - thickness)
    };
    blocks(wall, between, pieces);
}

/// Blocks at the bottom, the middle and the top between two studs, where nothing stands.
fn blocks(wall: &Wall, between: Span, pieces: &mut Vec<Piece>) {
    let (from, to) = (wall.heights.plate, wall.heights.stud_top());
    let length = BLOCK.min(wall.heights.stud / f64::from(BLOCKS));
    let step = (to - from - length) / f64::from(BLOCKS - 1);
    for block in 0..BLOCKS {
        let bottom = from + step * f64::from(block);
        let piece = Piece::standing(Part::Block, between, Span::new(bottom, bottom + length));
        if between.width() > NOISE && !pieces.iter().any(|other| other.overlaps(&piece)) {
            pieces.push(piece);
        }
    }
}

/// Flat blocks in each bay that the inner wall and its backing touch.
fn ladder(wall: &Wall, wood: &[Span], partition: &Partition, pieces: &mut Vec<Piece>) {
    let (plate, top, depth) = (wall.heights.plate, wall.heights.stud_top(), wall.stud.depth);
    for pair in wood.windows(2) {
        let bay = Span::new(pair[0].to, pair[1].from);
        let touches = bay.overlaps(partition.with_backing());
        let in_opening = wall.openings.iter().any(|opening| opening.rough().overlaps(bay));
        if !touches || in_opening {
            continue;
        }
        let rungs = (1_u32..).map(|rung| plate + LADDER * f64::from(rung)).take_while(|at| *at + depth / 2.0 <= top);
        for at in rungs {
            let piece = Piece::lying(Part::LadderBlock, bay, Span::about(at, depth));
            if !pieces.iter().any(|other| other.overlaps(&piece)) {
                pieces.push(piece);
            }
        }
    }
}

/// Sides of an inner wall where neither wood nor a ladder backs the wallboard.
fn without_backing(wall: &Wall, wood: &[Span], at: usize, partition: &Partition) -> Vec<Notice> {
    let Span { from, to } = partition.meets();
    let backed = |strip: Span| {
        let off_wall = strip.from < -NOISE || strip.to > wall.length + NOISE;
        let solid = wood.iter().any(|solid| solid.holds(strip));
        let in_opening = wall.openings.iter().any(|opening| opening.rough().overlaps(strip));
        off_wall || solid || (partition.backing == Backing::Ladder && !in_opening)
    };
    let sides = [(true, Span::new(from - BACKING, from)), (false, Span::new(to, to + BACKING))];
    let bare = sides.into_iter().filter(|(_, strip)| !backed(*strip));
    bare.map(|(near_side, _)| Notice::NoBacking { partition: at, near_side }).collect()
}
