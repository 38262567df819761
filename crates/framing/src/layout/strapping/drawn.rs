//! What the pictures show: the ceiling in plan, and its worst row from the side.

use layout::strapping::{Crossing, Known, Row, Run, Shim, Strapping};
use measure::Length;

use super::given::Given;
use super::shimmed::Shimmed;
use crate::layout::drawn_strapping::{DrawnCrossing, DrawnRow, DrawnSide, DrawnStrapping};

pub(super) fn drawn(given: &Given, strapping: &Strapping, shimmed: Option<&Shimmed>) -> DrawnStrapping {
    let room = &given.room;
    DrawnStrapping {
        room: [room.across, room.along],
        joists: room.joists.clone(),
        joist_thick: room.joist_thickness,
        rows: strapping.rows.iter().map(row).collect(),
        short: [0, 1].map(|side| if room.short_pieces[side] { between(&strapping.rows) } else { Vec::new() }),
        strip_wide: room.strip.width,
        crossings: shimmed.map_or_else(Vec::new, crossings),
        side: shimmed.and_then(|shimmed| side(given, shimmed)),
    }
}

fn row(row: &Row) -> DrawnRow {
    DrawnRow { centre: row.centre, wide: row.width, pieces: row.runs.iter().flat_map(pieces).collect() }
}

fn pieces(run: &Run) -> Vec<[Length; 2]> {
    let ends = run.pieces.iter().scan(run.from, |end, piece| {
        let from = *end;
        *end = from + *piece;
        Some([from, *end])
    });
    ends.collect()
}

/// From strip to strip.
fn between(rows: &[Row]) -> Vec<[Length; 2]> {
    let gaps = rows.windows(2).map(|pair| [pair[0].centre + pair[0].width / 2.0, pair[1].centre - pair[1].width / 2.0]);
    gaps.filter(|[from, to]| to > from).collect()
}

fn crossings(shimmed: &Shimmed) -> Vec<DrawnCrossing> {
    let readings = &shimmed.reads.readings;
    let planed = shimmed.planing.as_ref().and_then(|planing| planing.better.as_ref());
    let crossing = |at: Crossing| {
        let found = shim(shimmed, at);
        Some(DrawnCrossing {
            name: [shimmed.strip(at)? + 1, at.joist + 1],
            at: [*readings.joists().get(at.joist)?, *readings.rows().get(at.row)?],
            shim: found.map(|shim| shim.thickness),
            read: found.is_some_and(|shim| shim.known == Known::Read),
            doubtful: shimmed.plan.doubts.iter().any(|doubt| doubt.at == at),
            planed: planed.is_some_and(|planed| planed.cuts.iter().any(|cut| cut.at == at)),
        })
    };
    readings.crossings().filter_map(crossing).collect()
}

/// Shims stand row by row.
fn shim(shimmed: &Shimmed, at: Crossing) -> Option<&Shim> {
    let shims = &shimmed.plan.shims;
    shims.get(shims.binary_search_by_key(&at, |shim| shim.at).ok()?)
}

/// The row with the thickest shim.
fn side(given: &Given, shimmed: &Shimmed) -> Option<DrawnSide> {
    let row = shimmed.worst()?.at.row;
    let along = *shimmed.reads.readings.rows().get(row)?;
    let heights = [Length::ZERO, given.room.across].map(|across| shimmed.plan.plane.height_at(across, along));
    let low = heights[0].min(heights[1]);
    let gap = |joist: usize| {
        let at = Crossing { row, joist };
        shim(shimmed, at).map(|shim| shim.exact)
    };
    let joists = shimmed.reads.readings.joists().iter().enumerate().map(|(joist, at)| (*at, gap(joist))).collect();
    Some(DrawnSide {
        row: shimmed.strip(Crossing { row, joist: 0 })? + 1,
        backs: heights.map(|height| height - low),
        strip: given.room.strip.thickness,
        joists,
    })
}
