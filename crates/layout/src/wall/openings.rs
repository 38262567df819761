//! What frames an opening between its kings: header, sill, and cripples on the layout's marks.

use measure::Length;

use super::opening::SHORTEST_CRIPPLE;
use super::studs::Standing;
use super::{EDGE_BEARING, NOISE, Notice, Opening, Part, Piece, Settled, Span, Wall, settle};

/// Adds headers, sills and cripples; gives the cripples as they stand on the plates.
pub(super) fn frame(wall: &Wall, pieces: &mut Vec<Piece>, notices: &mut Vec<Notice>) -> Vec<Standing> {
    let mut cripples = Vec::new();
    for (at, opening) in wall.openings.iter().enumerate() {
        header(wall, opening, pieces);
        sill(wall, opening, pieces);
        let above = opening.cripple_above(&wall.heights);
        if above > NOISE {
            cripples.extend(cripples_above(wall, opening));
            short(at, above, true, notices);
        }
        if let Some(below) = opening.cripple_below(&wall.heights).filter(|below| *below > NOISE) {
            cripples.extend(cripples_below(wall, opening));
            short(at, below, false, notices);
        }
    }
    pieces.extend(cripples.iter().map(|cripple| piece(wall, cripple)));
    cripples
}

fn short(opening: usize, length: Length, above: bool, notices: &mut Vec<Notice>) {
    if length < SHORTEST_CRIPPLE {
        notices.push(Notice::ShortCripple { opening, length, above });
    }
}

/// The header on the jacks, its flat plates below it first.
fn header(wall: &Wall, opening: &Opening, pieces: &mut Vec<Piece>) {
    let along = opening.between_kings(wall.stud.thickness);
    let (plate, header) = (wall.heights.plate, opening.header);
    let below = header.flat_plates.div_ceil(2);
    let bottom = opening.head + plate * f64::from(below);
    let beam = Span::new(bottom, bottom + header.depth);
    pieces.push(Piece { plies: header.plies, ..Piece::lying(Part::Header, along, beam) });
    let under = (0..below).map(|flat| opening.head + plate * f64::from(flat));
    let over = (0..header.flat_plates - below).map(|flat| beam.to + plate * f64::from(flat));
    let flats = under.chain(over).map(|from| Piece::lying(Part::HeaderPlate, along, Span::new(from, from + plate)));
    pieces.extend(flats);
}

fn sill(wall: &Wall, opening: &Opening, pieces: &mut Vec<Piece>) {
    let Some(top) = opening.sill else { return };
    let plate = wall.heights.plate;
    let sills = (0..opening.sill_plates).map(|flat| top - plate * f64::from(flat));
    pieces.extend(sills.map(|to| Piece::lying(Part::Sill, opening.rough(), Span::new(to - plate, to))));
}

fn cripples_above(wall: &Wall, opening: &Opening) -> Vec<Standing> {
    let thickness = wall.stud.thickness;
    let (framed, row) = (opening.framed(thickness), opening.between_kings(thickness));
    let sides = [Span::new(framed.from, row.from), Span::new(row.to, framed.to)];
    on_layout(wall, row, &sides, Part::CrippleAbove)
}

/// Cripples at the sill's ends carry it; the rest stand on the layout. Source: common practice.
fn cripples_below(wall: &Wall, opening: &Opening) -> Vec<Standing> {
    let thickness = wall.stud.thickness;
    let (framed, row) = (opening.framed(thickness), opening.rough());
    let ends = [Span::new(row.from, row.from + thickness), Span::new(row.to - thickness, row.to)];
    let sides = [Span::new(framed.from, row.from), Span::new(row.to, framed.to), ends[0], ends[1]];
    let mut cripples: Vec<Standing> =
        ends.map(|along| Standing { part: Part::CrippleBelow, along, layout: None }).to_vec();
    cripples.extend(on_layout(wall, row, &sides, Part::CrippleBelow));
    cripples
}

/// Cripples on the layout centers in a row, or tight beside what stands there.
fn on_layout(wall: &Wall, row: Span, wood: &[Span], part: Part) -> Vec<Standing> {
    let thickness = wall.stud.thickness;
    let near = |mark: &Length| row.from < *mark + EDGE_BEARING && *mark < row.to + EDGE_BEARING;
    let marks = wall.layout.centres(wall.length, thickness).map(|(_, mark)| mark).filter(near);
    let mut taken = wood.to_vec();
    let mut cripples = Vec::new();
    for mark in marks {
        let Settled::At(centre) = settle(mark, thickness, &taken, &taken) else { continue };
        let along = Span::about(centre, thickness);
        // Beyond the kings the wall's own studs stand.
        if row.holds(along) {
            taken.push(along);
            cripples.push(Standing { part, along, layout: Some(mark) });
        }
    }
    cripples
}

fn piece(wall: &Wall, cripple: &Standing) -> Piece {
    let heights = &wall.heights;
    let of = wall.openings.iter().find(|opening| opening.between_kings(wall.stud.thickness).holds(cripple.along));
    let upright = match (of, cripple.part) {
        (Some(opening), Part::CrippleAbove) => {
            Span::new(heights.stud_top() - opening.cripple_above(heights), heights.stud_top())
        }
        (Some(opening), _) => {
            let below = opening.cripple_below(heights).unwrap_or(Length::ZERO);
            Span::new(heights.plate, heights.plate + below)
        }
        (None, _) => Span::new(heights.plate, heights.stud_top()),
    };
    Piece::standing(cripple.part, cripple.along, upright)
}
