//! What a floor must be before it is laid out.

use measure::{Length, MAX_READ_LENGTH};

use super::joists::between_ends;
use super::{Floor, FloorError, FloorOpening, JoistEnd};
use crate::wall::{NOISE, Span};

/// Smaller is no floor.
const LEAST: Length = Length::from_inches(12.0);

pub(super) fn check(floor: &Floor) -> Result<(), FloorError> {
    let taken = LEAST..=MAX_READ_LENGTH;
    if !taken.contains(&floor.length) || !taken.contains(&floor.width) {
        return Err(FloorError::Size { length: floor.length, width: floor.width });
    }
    lumber(floor)?;
    let most = floor.layout.spacing.length();
    if floor.layout.start.abs() > most {
        return Err(FloorError::Start { given: floor.layout.start, most });
    }
    floor.openings.iter().enumerate().try_for_each(|(at, opening)| check_opening(floor, at, opening))?;
    overlaps(floor)?;
    walls_above(floor)?;
    point_loads(floor)?;
    let sheets = floor.sheets.is_none_or(|size| {
        let gap = Length::ZERO <= size.gap && size.gap <= Length::from_inches(1.0);
        LEAST <= size.width && size.width <= size.length && most <= size.length && gap
    });
    if sheets { Ok(()) } else { Err(FloorError::Sheets) }
}

fn lumber(floor: &Floor) -> Result<(), FloorError> {
    let refused = |problem| Err(FloorError::Lumber { problem });
    let joist = &floor.joist;
    if joist.thickness.inches() < 0.5
        || joist.depth.inches() < 2.0
        || joist.thickness * 2.0 > floor.layout.spacing.length()
    {
        return refused(
            "The joists are under 1/2\" thick, thicker than half their spacing, or under 2\" deep. Write their measure as dressed, such as 1-1/2\" and 9-1/4\".",
        );
    }
    if floor.rim_stock < Length::from_feet(6.0) {
        return refused("Rims are cut from boards of 6 ft and more. Write the length of the boards on hand.");
    }
    for end in floor.ends {
        match end {
            JoistEnd::Cantilever { overhang } => return Err(FloorError::Cantilever { overhang }),
            JoistEnd::OnPlate { rim } if !(0.5..=6.0).contains(&rim.inches()) => {
                return refused("A rim is from 1/2\" to 6\" thick. Write its thickness, such as 1-1/2\".");
            }
            JoistEnd::InHangers { gap } if !(0.0..=1.0).contains(&gap.inches()) => {
                return refused(
                    "Joists stop from 0\" to 1\" before the face that they hang on. Write the maker's gap, such as 1/16\".",
                );
            }
            _ => {}
        }
    }
    if between_ends(floor).width() <= Length::ZERO {
        return refused("The rims leave no length for joists. Write the floor's measure along the joists, out to out.");
    }
    Ok(())
}

fn check_opening(floor: &Floor, at: usize, opening: &FloorOpening) -> Result<(), FloorError> {
    let least = Length::from_inches(3.0);
    let plies = (1..=4).contains(&opening.plies());
    if opening.across.width() < least || opening.along.width() < least || !plies {
        return Err(FloorError::OpeningSize { opening: at });
    }
    let thickness = floor.joist.thickness;
    let across = Span::new(Length::ZERO, floor.length).holds(opening.across);
    let ends = between_ends(floor);
    if across && ends.holds(opening.with_headers(thickness)) {
        return Ok(());
    }
    let headers = thickness * f64::from(opening.plies());
    Err(FloorError::OpeningOffFloor { opening: at, least: ends.from + headers, most: ends.to - headers })
}

/// No opening lies in another, or has another's trimmer or header running through it.
fn overlaps(floor: &Floor) -> Result<(), FloorError> {
    let thickness = floor.joist.thickness;
    let through = |one: &FloorOpening, other: &FloorOpening| {
        let trimmers = one.with_trimmers(thickness);
        let sides = [Span::new(trimmers.from, one.across.from), Span::new(one.across.to, trimmers.to)];
        sides.iter().any(|side| side.overlaps(other.across))
    };
    for (first, one) in floor.openings.iter().enumerate() {
        for (second, other) in floor.openings.iter().enumerate().skip(first + 1) {
            let both = one.across.overlaps(other.across)
                && one.with_headers(thickness).overlaps(other.with_headers(thickness));
            if both || through(one, other) || through(other, one) {
                return Err(FloorError::OpeningsOverlap { first, second });
            }
        }
    }
    Ok(())
}

fn walls_above(floor: &Floor) -> Result<(), FloorError> {
    let most = floor.layout.spacing.length();
    floor.walls_above.iter().enumerate().try_for_each(|(at, wall)| {
        if wall.spread.is_some_and(|spread| spread < Length::ZERO || spread > most) {
            let problem =
                "Joists under a wall are spread from 0\" to one spacing. Write the clear gap between the two.";
            return Err(FloorError::Lumber { problem });
        }
        let nearest = wall.centre.max(Length::ZERO).min(floor.length);
        let on_floor = (nearest - wall.centre).abs() <= NOISE;
        let refused = FloorError::WallAbove { wall: at, given: wall.centre, nearest: Some(nearest) };
        if on_floor { Ok(()) } else { Err(refused) }
    })
}

fn point_loads(floor: &Floor) -> Result<(), FloorError> {
    floor.point_loads.iter().enumerate().try_for_each(|(at, load)| {
        let point = |across: Span, along: Span| {
            across.from - NOISE <= load.across
                && load.across <= across.to + NOISE
                && along.from - NOISE <= load.along
                && load.along <= along.to + NOISE
        };
        let on_floor = point(Span::new(Length::ZERO, floor.length), Span::new(Length::ZERO, floor.width));
        let in_opening = floor.openings.iter().any(|opening| point(opening.across, opening.along));
        if on_floor && !in_opening && load.blocks > 0 { Ok(()) } else { Err(FloorError::PointLoad { load: at }) }
    })
}
