//! What a wall must be before it is laid out.

use measure::{Length, MAX_READ_LENGTH};

use super::{End, Opening, Span, Wall, WallError};
use crate::wall::NOISE;

/// Lower walls are solid blocking. Source: IRC 2021 R602.9 (looked up): under 14 in, one face sheathed or solid blocks.
const SHORTEST_STUD: Length = Length::from_inches(14.0);
/// Longer boards are not stocked. Source: common practice.
const LONGEST_STUD: Length = Length::from_feet(24.0);

/// Checks everything that one piece of the wall does not need the others for, then openings against each other.
pub(super) fn check(wall: &Wall) -> Result<(), WallError> {
    let thickness = wall.stud.thickness;
    lumber(wall)?;
    let least = thickness * 2.0;
    if !(least <= wall.length && wall.length <= MAX_READ_LENGTH) {
        return Err(WallError::Length { given: wall.length, least, most: MAX_READ_LENGTH });
    }
    if !(SHORTEST_STUD <= wall.heights.stud && wall.heights.stud <= LONGEST_STUD) {
        return Err(WallError::StudLength { given: wall.heights.stud });
    }
    let most = wall.layout.spacing.length();
    if wall.layout.start.abs() > most {
        return Err(WallError::Start { given: wall.layout.start, most });
    }
    wall.ends.iter().try_for_each(|end| corner(end, wall.stud.depth))?;
    wall.openings.iter().enumerate().try_for_each(|(at, opening)| check_opening(wall, at, opening))?;
    overlaps(wall)?;
    partitions(wall)?;
    wall.braced.iter().enumerate().try_for_each(|(at, braced)| {
        let Span { from, to } = Span::new(braced.from, braced.to);
        let on_wall = Length::ZERO <= from && from < to && to <= wall.length && braced.plies > 0;
        let clear = !wall.openings.iter().any(|opening| opening.rough().overlaps(Span::new(from, to)));
        if on_wall && clear { Ok(()) } else { Err(WallError::Braced { piece: at, from, to }) }
    })?;
    if wall.sheets.as_ref().is_some_and(|sheets| !sheets.can_be(wall)) { Err(WallError::Sheets) } else { Ok(()) }
}

fn lumber(wall: &Wall) -> Result<(), WallError> {
    let refused = |problem| Err(WallError::Lumber { problem });
    let heights = &wall.heights;
    if wall.stud.thickness.inches() < 0.5 || wall.stud.depth.inches() < 0.5 || heights.plate.inches() < 0.5 {
        return refused(
            "A stud or a plate is under 1/2\" thick. Write their dressed thickness and depth, such as 1-1/2\" and 3-1/2\".",
        );
    }
    if wall.stud.thickness * 2.0 > wall.layout.spacing.length() {
        return refused(
            "The studs are thicker than half their spacing. Write their thickness along the wall, such as 1-1/2\".",
        );
    }
    if !(1..=2).contains(&heights.top_plates) {
        return refused("One or two top plates are taken: write 2, or 1 for an inner wall that carries nothing.");
    }
    if wall.plate_stock < Length::from_feet(6.0) {
        return refused("Plates are cut from boards of 6 ft and more. Write the length of the boards on hand.");
    }
    if wall.laps.iter().any(|lap| lap.abs() * 2.0 > wall.length) {
        return refused(
            "The very top plate laps by more than half the wall. Write the thickness of the wall that it laps over.",
        );
    }
    Ok(())
}

fn corner(end: &End, depth: Length) -> Result<(), WallError> {
    match *end {
        End::OneStud | End::TwoStudsAndClips => Ok(()),
        End::ThreeStuds { meets } | End::FlatStud { meets } => {
            // The corner's inner stud stands where the other wall's inner face is.
            let fits = Length::from_inches(2.0) <= meets && meets <= depth * 3.0;
            if fits { Ok(()) } else { Err(WallError::Corner { meets }) }
        }
    }
}

fn check_opening(wall: &Wall, at: usize, opening: &Opening) -> Result<(), WallError> {
    let Span { from, to } = opening.rough();
    let least = wall.stud.thickness * 2.0;
    if opening.width < least {
        return Err(WallError::OpeningWidth { opening: at, given: opening.width, least });
    }
    if from < Length::ZERO || to > wall.length {
        return Err(WallError::OpeningOffWall { opening: at, from, to, wall: wall.length });
    }
    let header = opening.header;
    let sill_is_there = opening.sill.is_none() || opening.sill_plates > 0;
    if opening.kings == 0 || header.depth <= Length::ZERO || header.plies == 0 || !sill_is_there {
        return Err(WallError::OpeningFrame { opening: at });
    }
    let plate = wall.heights.plate;
    let most = wall.heights.stud_top() - header.whole_depth(plate);
    if opening.head > most + NOISE || opening.head <= plate {
        return Err(WallError::Head { opening: at, given: opening.head, most });
    }
    let lowest = plate * (1.0 + f64::from(opening.sill_plates));
    match opening.sill {
        Some(given) if given + NOISE < lowest || given >= opening.head => {
            Err(WallError::Sill { opening: at, given, least: lowest, most: opening.head })
        }
        _ => Ok(()),
    }
}

fn overlaps(wall: &Wall) -> Result<(), WallError> {
    let thickness = wall.stud.thickness;
    let mut order: Vec<(usize, &Opening)> = wall.openings.iter().enumerate().collect();
    order.sort_by(|a, b| a.1.from.inches().total_cmp(&b.1.from.inches()));
    for pair in order.windows(2) {
        let [(first, before), (second, after)] = pair else { continue };
        if before.framed(thickness).to > after.framed(thickness).from + NOISE {
            let nearest = before.framed(thickness).to + (after.from - after.framed(thickness).from);
            return Err(WallError::OpeningsOverlap { first: *first, second: *second, nearest });
        }
    }
    Ok(())
}

fn partitions(wall: &Wall) -> Result<(), WallError> {
    wall.partitions.iter().enumerate().try_for_each(|(at, partition)| {
        let half = partition.thickness / 2.0;
        let refused = |nearest| Err(WallError::Partition { partition: at, given: partition.centre, nearest });
        if partition.thickness.inches() < 0.5 || partition.thickness > wall.length {
            return refused(wall.length / 2.0);
        }
        let on_wall = partition.centre.max(half).min(wall.length - half);
        if (on_wall - partition.centre).abs() > NOISE {
            return refused(on_wall);
        }
        match wall.openings.iter().map(Opening::rough).find(|rough| rough.overlaps(partition.meets())) {
            None => Ok(()),
            Some(rough) if partition.centre < rough.centre() => refused(rough.from - half),
            Some(rough) => refused(rough.to + half),
        }
    })
}
