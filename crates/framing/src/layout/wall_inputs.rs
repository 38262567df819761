//! A wall read from its inputs, and the core's refusals brought to the input that they are about.

use layout::wall::{Backing, Braced, Ceiling, End, Heights, Lay, Partition, Post, Sheets, Stud, Wall, WallError};
use lumber::SawnSize;
use measure::Length;

use super::tape::layout;
use super::wall_openings::{Usual, openings};
use crate::bracing::lists::{each, length};
use crate::reading::Reading;

/// Where a place on a wall may be, feet.
const PLACE: (f64, f64) = (0.0, 200.0);

/// A wall as it was read, its places from the left end.
pub(super) struct ReadWall {
    pub(super) wall: Wall,
    /// The line that each opening stands in.
    pub(super) lines: Vec<usize>,
    pub(super) ceiling: Ceiling,
    pub(super) from_right: bool,
}

/// The wall; what is wrong with its inputs is said.
pub(super) fn read(reading: &mut Reading) -> Option<ReadWall> {
    let usual = Usual { header: reading.length("plate_header")? };
    let lined = openings(reading, "plate_openings", usual)?;
    let partitions = partitions(reading)?;
    let (posts, braced) = (posts(reading)?, braced(reading)?);
    let ceiling = Ceiling {
        finish_floor: reading.length("plate_floor")?,
        strapping: reading.length("plate_strap")?,
        board: reading.length("plate_board")?,
    };
    let stud = Stud {
        thickness: reading.length("plate_stud_thick")?,
        depth: SawnSize::from_text(reading.word("plate_stick")?).ok()?.depth(),
    };
    let mut wall = Wall {
        stud,
        ends: [end(reading, "plate_left")?, end(reading, "plate_right")?],
        laps: [lap(reading)?; 2],
        plate_stock: reading.length("plate_stock")?,
        openings: lined.iter().map(|(_, opening)| *opening).collect(),
        partitions,
        posts,
        braced,
        ..Wall::plain(
            reading.length("plate_long")?,
            layout(reading, ["plate_every", "plate_pull", "plate_beyond"])?,
            heights(reading, &ceiling)?,
        )
    };
    wall.sheets = sheets(reading, &wall)?;
    let from_right = reading.word("plate_hook")? == "right";
    Some(ReadWall { wall, lines: lined.iter().map(|(line, _)| *line).collect(), ceiling, from_right })
}

fn heights(reading: &Reading, ceiling: &Ceiling) -> Option<Heights> {
    let (plate, top_plates) = (reading.length("plate_thick")?, reading.word("plate_tops")?.parse().ok()?);
    Some(if reading.word("plate_height_by")? == "ceiling" {
        Heights::for_ceiling(reading.length("plate_ceiling")?, ceiling, plate, top_plates)
    } else {
        Heights { stud: reading.length("plate_stud")?, plate, top_plates }
    })
}

fn end(reading: &Reading, id: &str) -> Option<End> {
    let meets = reading.length("plate_meets")?;
    Some(match reading.word(id)? {
        "three" => End::ThreeStuds { meets },
        "clips" => End::TwoStudsAndClips,
        "flat" => End::FlatStud { meets },
        _ => End::OneStud,
    })
}

fn lap(reading: &Reading) -> Option<Length> {
    let meets = reading.length("plate_meets")?;
    Some(match reading.word("plate_laps")? {
        "over" => meets,
        "short" => -meets,
        _ => Length::ZERO,
    })
}

fn sheets(reading: &Reading, wall: &Wall) -> Option<Option<Sheets>> {
    let lay = match reading.word("plate_panels")? {
        "none" => return Some(None),
        "lying" => Lay::Lying,
        _ => Lay::Upright,
    };
    Some(Some(Sheets {
        length: Length::from_feet(reading.word("plate_panel_long")?.parse().ok()?),
        gap: reading.length("plate_gap")?,
        sized_for_spacing: reading.word("plate_sized")? == "yes",
        bottom: -reading.length("plate_below")?,
        ..Sheets::usual(lay, wall)
    }))
}

fn partitions(reading: &mut Reading) -> Option<Vec<Partition>> {
    let thickness = reading.length("plate_inner_thick")?;
    let backing = match reading.word("plate_backing")? {
        "ladder" => Backing::Ladder,
        "flat" => Backing::FlatStud(SawnSize::from_text(reading.word("plate_stick")?).ok()?.depth()),
        _ => Backing::TwoStudsAndBlocks,
    };
    listed(reading, "plate_inner", |part| Ok(Partition { centre: length(part, PLACE)?, thickness, backing }))
}

fn posts(reading: &mut Reading) -> Option<Vec<Post>> {
    listed(reading, "plate_posts", |part| {
        let plain = part.to_lowercase();
        let (plies, place) = plain
            .split_once("at")
            .ok_or_else(|| format!("“{part}” was given; studs and a place are taken, such as 3 at 10' 6\"."))?;
        Ok(Post { centre: length(place.trim(), PLACE)?, plies: plies_of(plies)? })
    })
}

fn braced(reading: &mut Reading) -> Option<Vec<Braced>> {
    listed(reading, "plate_braced", |part| {
        let plain = part.to_lowercase();
        let (from, rest) = plain.split_once("to").ok_or_else(|| {
            format!("“{part}” was given; where it begins and ends is taken, such as 0 to 4' posts 2.")
        })?;
        let (to, plies) = rest.split_once("posts").unwrap_or((rest, "2"));
        let (from, to) = (length(from.trim(), PLACE)?, length(to.trim(), PLACE)?);
        Ok(Braced { from, to, plies: plies_of(plies)? })
    })
}

fn plies_of(text: &str) -> Result<u8, String> {
    let text = text.trim();
    let plies = text.parse().ok().filter(|plies| (1..=8).contains(plies));
    plies.ok_or_else(|| format!("“{text}” studs were given; a whole number from 1 to 8 is taken."))
}

/// Several values; none where nothing is said.
fn listed<T>(reading: &mut Reading, id: &'static str, read: impl FnMut(&str) -> Result<T, String>) -> Option<Vec<T>> {
    if reading.word(id).is_none() { Some(Vec::new()) } else { each(reading, id, read) }
}

/// Says what the core refuses at the input that it is about, with the line of an opening.
pub(super) fn refuse(reading: &mut Reading, read: &ReadWall, error: WallError) {
    let (id, opening) = match error {
        WallError::Length { .. } => ("plate_long", None),
        WallError::StudLength { .. } if reading.word("plate_height_by") == Some("ceiling") => ("plate_ceiling", None),
        WallError::StudLength { .. } => ("plate_stud", None),
        WallError::Lumber { .. } => ("plate_laps", None),
        WallError::Start { .. } => ("plate_beyond", None),
        WallError::OpeningOffWall { opening, .. }
        | WallError::OpeningMeets { opening, .. }
        | WallError::OpeningWidth { opening, .. }
        | WallError::OpeningFrame { opening }
        | WallError::Head { opening, .. }
        | WallError::Sill { opening, .. }
        | WallError::OpeningsOverlap { second: opening, .. } => ("plate_openings", Some(opening)),
        WallError::Partition { .. } => ("plate_inner", None),
        WallError::Post { .. } => ("plate_posts", None),
        WallError::Braced { .. } => ("plate_braced", None),
        WallError::Corner { .. } => ("plate_meets", None),
        WallError::Sheets => ("plate_panels", None),
    };
    let line = opening.and_then(|opening| read.lines.get(opening));
    reading.refuse(id, line.map_or_else(|| error.to_string(), |line| format!("Line {line}: {error}")));
}
