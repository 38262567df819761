//! Set-out: where the rows of strips go, and what each is made of.

use measure::Length;

use super::error::{StrappingError, in_order, within};
use super::obstacle::{Backing, Obstacle, backing, clear};
use super::pieces::{Joints, Run, joined};
use super::take_off::Stock;

/// The cross-section of a strip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strip {
    /// Its width, against the joists.
    pub width: Length,
    /// Its thickness.
    pub thickness: Length,
}

/// A 1x3 as it is dressed: 3/4 in by 2-1/2 in.
pub const ONE_BY_THREE: Strip = Strip { width: Length::from_inches(2.5), thickness: Length::from_inches(0.75) };

const SPACING: [Length; 2] = [Length::from_inches(12.0), Length::from_inches(24.0)];
const SIDE: [Length; 2] = [Length::from_inches(24.0), Length::from_inches(1200.0)];
const WIDTH: [Length; 2] = [Length::from_inches(1.5), Length::from_inches(5.5)];
const CLEARANCE: [Length; 2] = [Length::ZERO, Length::from_inches(2.0)];
const JOIST: [Length; 2] = [Length::from_inches(1.0), Length::from_inches(7.0)];
const MOST_JOISTS: usize = 200;
/// Width of a ceiling board.
const BOARD: Length = Length::from_inches(48.0);
const SAME: f64 = 1e-9;

/// A ceiling to be strapped.
#[derive(Clone, Debug, PartialEq)]
pub struct SetOut {
    /// From wall to wall along the strips, across the joists.
    pub across: Length,
    /// From wall to wall along the joists.
    pub along: Length,
    /// Centres of the joists, from the left wall.
    pub joists: Vec<Length>,
    /// Thickness of a joist.
    pub joist_thickness: Length,
    /// The strips.
    pub strip: Strip,
    /// Centre to centre of the rows: 16 in usual, 12 in for tiles.
    pub spacing: Length,
    /// What a row is shorter than the room, both ends together: 1/4 to 1/2 in, common practice.
    pub clearance: Length,
    /// Wood that each end at a joint needs on the joist: half a joist, 3/4 in, is what there is.
    pub bearing: Length,
    /// Length of the strips as bought.
    pub stock: Stock,
    /// Whether the left and the right wall take short pieces between the rows: where no joist carries the board's end.
    pub short_pieces: [bool; 2],
    /// Openings and beams that strips do not cross.
    pub obstacles: Vec<Obstacle>,
}

/// One line of strip.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Its centre line from the near wall.
    pub centre: Length,
    /// Its width; less than the strip's where the last one is ripped to fit.
    pub width: Length,
    /// What it is made of, from the left; more than one where it is cut by an opening or a beam.
    pub runs: Vec<Run>,
}

/// A ceiling set out.
#[derive(Clone, Debug, PartialEq)]
pub struct Strapping {
    /// The rows from the near wall.
    pub rows: Vec<Row>,
    /// Short pieces from row to row along the left and the right wall.
    pub short_pieces: [Vec<Length>; 2],
    /// Strips along the edges of openings and beams where no row is.
    pub backing: Vec<Backing>,
    /// The widest centre to centre of neighbouring rows. Beside the far wall it is up to half a strip more than the spacing,
    /// as the last strip is tight to that wall: a board whose spacing is at its limit takes one row more there.
    pub widest: Length,
    /// Whether every edge of 48 in boards, laid along the strips from the near wall, has a strip under it.
    pub board_edges_land: bool,
    /// Where strips cross joists.
    pub crossings: usize,
    /// Joints of strips on joists.
    pub joints: usize,
    /// Rows of which a joint shares its joist with one of the row before, as no other joist was within reach.
    pub unstaggered: Vec<usize>,
}

/// Centres and widths of the rows: the first strip tight to the near wall, then centres at whole spacings from that wall,
/// the last strip tight to the far wall. The last one is ripped where less than its width is left.
///
/// Source: common practice; so a 48 in edge lands on the middle of a strip at 12, 16 and 24 in.
///
/// # Errors
/// Where the spacing is not from 12 to 24 in, the room from 2 to 100 ft or the strip from 1-1/2 to 5-1/2 in.
pub fn rows(along: Length, spacing: Length, width: Length) -> Result<Vec<Row>, StrappingError> {
    within("the spacing of the rows", spacing, SPACING)?;
    within("the room along the joists", along, SIDE)?;
    within("the strip's width", width, WIDTH)?;
    let row = |centre, width| Row { centre, width, runs: Vec::new() };
    let mut rows = vec![row(width / 2.0, width)];
    let mut count = 1.0;
    while spacing * count < along - width - Length::from_inches(SAME) {
        rows.push(row(spacing * count, width));
        count += 1.0;
    }
    let left = along - rows.last().map_or(Length::ZERO, |row| row.centre + row.width / 2.0);
    let last = width.min(left);
    rows.push(row(along - last / 2.0, last));
    Ok(rows)
}

/// Sets a ceiling out.
///
/// Each row runs from wall to wall, less the clearance, in the fewest pieces; joints stand on the middle of a joist, on no
/// joist that a joint of the row before stands on, and no piece is held by one joist alone.
///
/// # Errors
/// As [`rows`]; where joists are missing, out of order or out of the room, half a joist is less than the bearing, or no joist
/// is within reach of a strip.
pub fn set_out(given: &SetOut) -> Result<Strapping, StrappingError> {
    check(given)?;
    let mut rows = rows(given.along, given.spacing, given.strip.width)?;
    let whole = [given.clearance / 2.0, given.across - given.clearance / 2.0];
    let (mut before, mut unstaggered) = (Vec::new(), Vec::new());
    for (index, row) in rows.iter_mut().enumerate() {
        let band = [row.centre - row.width / 2.0, row.centre + row.width / 2.0];
        let joints = Joints { joists: &given.joists, stock: given.stock.length(), avoid: &before };
        let free = clear(whole, band, &given.obstacles);
        row.runs = free.into_iter().map(|run| joined(run, &joints)).collect::<Result<_, _>>()?;
        if row.runs.iter().any(|run| run.joints.iter().any(|joint| before.contains(joint))) {
            unstaggered.push(index);
        }
        before = row.runs.iter().flat_map(|run| run.joints.iter().copied()).collect();
    }
    let backing = backing(given, &rows)?;
    let runs = || rows.iter().flat_map(|row| &row.runs).chain(backing.iter().map(|backing| &backing.run));
    Ok(Strapping {
        crossings: runs().map(|run| run.crossings).sum(),
        joints: runs().map(|run| run.joints.len()).sum(),
        short_pieces: given.short_pieces.map(|wanted| if wanted { short_pieces(&rows) } else { Vec::new() }),
        widest: rows.windows(2).map(|pair| pair[1].centre - pair[0].centre).fold(Length::ZERO, Length::max),
        board_edges_land: board_edges_land(given.along, &rows),
        backing,
        rows,
        unstaggered,
    })
}

fn check(given: &SetOut) -> Result<(), StrappingError> {
    within("the room across the joists", given.across, SIDE)?;
    within("the clearance", given.clearance, CLEARANCE)?;
    within("the joist's thickness", given.joist_thickness, JOIST)?;
    if given.joists.is_empty() || given.joists.len() > MOST_JOISTS {
        return Err(StrappingError::Count { what: "joists", given: given.joists.len(), most: MOST_JOISTS });
    }
    for joist in &given.joists {
        within("a joist's centre", *joist, [Length::ZERO, given.across])?;
    }
    in_order("the joists", &given.joists)?;
    given.obstacles.iter().try_for_each(|obstacle| obstacle.check([given.across, given.along]))?;
    let there = given.joist_thickness / 2.0;
    if given.bearing > there {
        return Err(StrappingError::Bearing { needed: given.bearing, there });
    }
    Ok(())
}

/// From strip to strip.
fn short_pieces(rows: &[Row]) -> Vec<Length> {
    let between = |pair: &[Row]| pair[1].centre - pair[0].centre - (pair[0].width + pair[1].width) / 2.0;
    rows.windows(2).map(between).filter(|length| length.inches() > SAME).collect()
}

/// A board's edge lands where 3/4 in of strip or more is on each side of it: half of the 1-1/2 in that a joint of boards
/// needs.
///
/// Source: gypsum board handbook, width of furring at joints.
fn board_edges_land(along: Length, rows: &[Row]) -> bool {
    let half = Length::from_inches(0.75 - SAME);
    let under = |edge: Length| {
        rows.iter()
            .any(|row| edge >= row.centre - row.width / 2.0 + half && edge <= row.centre + row.width / 2.0 - half)
    };
    let edges = (along / BOARD).floor() as u32;
    (1..=edges).map(|edge| BOARD * f64::from(edge)).filter(|edge| (along - *edge).inches() > SAME).all(under)
}
