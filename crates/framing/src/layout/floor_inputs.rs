//! A floor read from its inputs, and the core's refusals brought to the input that they are about.

use layout::floor::{
    Bridging, Floor, FloorError, FloorOpening, Joist, JoistEnd, JoistKind, PointLoad, SheetSize, WallAbove,
};
use layout::wall::Span;
use lumber::SawnSize;
use measure::{LengthUnit, read_length};

use super::lined::{Words, lined};
use super::tape::layout;
use crate::bracing::lists::{each, length};
use crate::reading::Reading;

/// Where a place on a floor may be, feet.
const PLACE: (f64, f64) = (0.0, 200.0);
/// What an opening's line may be, said where one is not.
const SUCH_AS: &str = "such as 3' 6\" x 10' at 12', in 2'";

/// A floor as it was read, its places from the left end.
pub(super) struct ReadFloor {
    pub(super) floor: Floor,
    /// The line that each opening stands in.
    pub(super) lines: Vec<usize>,
    pub(super) from_right: bool,
}

/// The floor; what is wrong with its inputs is said.
pub(super) fn read(reading: &mut Reading) -> Option<ReadFloor> {
    let lined = lined(reading, "joists_openings", opening)?;
    let walls_above = listed(reading, "joists_walls", wall_above)?;
    let point_loads = listed(reading, "joists_loads", point_load)?;
    let plain = Floor::plain(
        reading.length("joists_long")?,
        reading.length("joists_deep")?,
        layout(reading, ["joists_every", "joists_pull", "joists_beyond"])?,
        joist(reading)?,
    );
    let floor = Floor {
        ends: [end(reading, "joists_near")?, end(reading, "joists_far")?],
        walls_above,
        openings: lined.iter().map(|(_, opening)| *opening).collect(),
        bridging: reading.word("joists_rows")?.parse().map_or(Bridging::AsTheCodeAsks, Bridging::Rows),
        point_loads,
        rim_stock: reading.length("joists_stock")?,
        sheets: sheets(reading)?,
        ..plain
    };
    let from_right = reading.word("joists_hook")? == "right";
    Some(ReadFloor { floor, lines: lined.iter().map(|(line, _)| *line).collect(), from_right })
}

/// The same floor with the tape hooked on its other end; the panels start there.
pub(super) fn mirrored(floor: &Floor) -> Floor {
    let opening = |opening: &FloorOpening| FloorOpening { across: opening.across.mirrored(floor.length), ..*opening };
    let wall = |wall: &WallAbove| WallAbove { centre: floor.length - wall.centre, ..*wall };
    let load = |load: &PointLoad| PointLoad { across: floor.length - load.across, ..*load };
    Floor {
        openings: floor.openings.iter().map(opening).collect(),
        walls_above: floor.walls_above.iter().map(wall).collect(),
        point_loads: floor.point_loads.iter().map(load).collect(),
        ..floor.clone()
    }
}

fn joist(reading: &Reading) -> Option<Joist> {
    if reading.word("joists_stick")? == "made" {
        let (thickness, depth) = (reading.length("joists_flange")?, reading.length("joists_made_deep")?);
        return Some(Joist { kind: JoistKind::Engineered, thickness, depth, nominal_depth: 0 });
    }
    let size = SawnSize::from_text(reading.word("joists_stick")?).ok()?;
    Some(Joist {
        kind: JoistKind::Sawn,
        thickness: size.breadth(),
        depth: size.depth(),
        nominal_depth: size.nominal_width(),
    })
}

fn end(reading: &Reading, id: &str) -> Option<JoistEnd> {
    Some(match reading.word(id)? {
        "hangers" => JoistEnd::InHangers { gap: reading.length("joists_hanger_gap")? },
        _ => JoistEnd::OnPlate { rim: reading.length("joists_rim")? },
    })
}

fn sheets(reading: &Reading) -> Option<Option<SheetSize>> {
    if reading.word("joists_panels")? == "no" {
        return Some(None);
    }
    let (gap, sized_for_spacing) = (reading.length("joists_gap")?, reading.word("joists_sized")? == "yes");
    Some(Some(SheetSize { gap, sized_for_spacing, ..SheetSize::usual() }))
}

/// `3' 6" x 10' at 12', in 2', plies 2`.
fn opening(line: &str) -> Result<FloorOpening, String> {
    let words = Words::of(line, &["at", "in", "plies"])?;
    let (wide, long) = words
        .size()
        .ok_or_else(|| format!("“{line}” was given; a size x a size is taken, across the joists first, {SUCH_AS}."))?;
    let (wide, long) = (length(wide, (0.25, 100.0))?, length(long, (0.25, 60.0))?);
    let place = |key: &str| {
        let missing = || format!("“{line}” says nothing of {key}; a place is taken, {SUCH_AS}.");
        words.length(key, PLACE)?.ok_or_else(missing)
    };
    let (across, along) = (place("at")?, place("in")?);
    Ok(FloorOpening {
        across: Span::new(across, across + wide),
        along: Span::new(along, along + long),
        plies: words.count("plies", (1, 4))?,
    })
}

/// `12'`, or `20' spread 4"`.
fn wall_above(part: &str) -> Result<WallAbove, String> {
    let plain = part.to_lowercase();
    let (centre, spread) = plain.split_once("spread").map_or((plain.as_str(), None), |(at, gap)| (at, Some(gap)));
    let gap = |text: &str| read_length(text.trim(), LengthUnit::Inches).map(|read| read.length);
    let spread = spread.map(gap).transpose().map_err(|problem| problem.to_string())?;
    Ok(WallAbove { centre: length(centre.trim(), PLACE)?, spread })
}

/// `2 at 12' x 0'`.
fn point_load(part: &str) -> Result<PointLoad, String> {
    let plain = part.to_lowercase();
    let place = plain.split_once("at").and_then(|(blocks, place)| Some((blocks, place.split_once(['x', '×'])?)));
    let (blocks, (across, along)) =
        place.ok_or_else(|| format!("“{part}” was given; blocks and a place are taken, such as 2 at 12' x 0'."))?;
    let blocks = blocks.trim();
    let count = blocks.parse().ok().filter(|count| (1..=12).contains(count));
    Ok(PointLoad {
        across: length(across.trim(), PLACE)?,
        along: length(along.trim(), PLACE)?,
        blocks: count.ok_or_else(|| format!("“{blocks}” blocks were given; a whole number from 1 to 12 is taken."))?,
    })
}

/// Several values; none where nothing is said.
fn listed<T>(reading: &mut Reading, id: &'static str, read: impl FnMut(&str) -> Result<T, String>) -> Option<Vec<T>> {
    if reading.word(id).is_none() { Some(Vec::new()) } else { each(reading, id, read) }
}

/// Says what the core refuses at the input that it is about, with the line of an opening.
pub(super) fn refuse(reading: &mut Reading, read: &ReadFloor, error: FloorError) {
    let (id, opening) = match error {
        FloorError::Size { .. } => ("joists_long", None),
        // Of lumber all but the gap under a wall is held in its limits as it is read.
        FloorError::Lumber { .. } | FloorError::WallAbove { .. } => ("joists_walls", None),
        FloorError::Start { .. } => ("joists_beyond", None),
        FloorError::Cantilever { .. } => ("joists_near", None),
        FloorError::OpeningOffFloor { opening, .. }
        | FloorError::OpeningSize { opening }
        | FloorError::OpeningMeets { opening, .. }
        | FloorError::OpeningsOverlap { second: opening, .. } => ("joists_openings", Some(opening)),
        FloorError::PointLoad { .. } => ("joists_loads", None),
        FloorError::Sheets => ("joists_panels", None),
    };
    let line = opening.and_then(|opening| read.lines.get(opening));
    reading.refuse(id, line.map_or_else(|| error.to_string(), |line| format!("Line {line}: {error}")));
}
