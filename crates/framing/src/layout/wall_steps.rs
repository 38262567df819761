//! The steps by which the lengths of a wall are worked.

use layout::wall::{Opening, Wall};
use measure::Length;
use members::working::{Basis, Part};

use super::wall_inputs::ReadWall;
use crate::reading::Reading;
use crate::words::{figure, inches};

/// Heights, the first centre, what frames each opening, and the diagonal.
pub(super) fn working(reading: &Reading, given: &ReadWall, wall: &Wall) -> Part {
    let mut part = Part::new("Lengths");
    let (heights, ceiling) = (&wall.heights, &given.ceiling);
    let number = |length: Length| figure(length.inches());
    let plates = heights.plate * f64::from(heights.top_plates + 1);
    if reading.word("plate_height_by") == Some("ceiling") {
        let finished = heights.finished(ceiling);
        let [floor, strap, board] = [ceiling.finish_floor, ceiling.strapping, ceiling.board].map(number);
        part.step(
            "H",
            "subfloor to the top of the plates: finished ceiling, finish floor, strapping and board",
            format!("{} + {floor} + {strap} + {board}", number(finished)),
            (heights.frame().inches(), "in"),
            Basis::Input("plate_ceiling"),
        );
        let expression = format!("{} - {}", number(heights.frame()), number(plates));
        part.step("L", "stud, H less the plates", expression, (heights.stud.inches(), "in"), Basis::Arithmetic);
    } else {
        part.step("L", "stud", "", (heights.stud.inches(), "in"), Basis::Input("plate_stud"));
        let expression = format!("{} + {}", number(heights.stud), number(plates));
        part.step("H", "stud and plates", expression, (heights.frame().inches(), "in"), Basis::Arithmetic);
    }
    let (spacing, start) = (wall.layout.spacing.length(), wall.layout.start);
    part.step(
        "c_1",
        "first centre: one spacing from where the panels start",
        format!("{} - {}", number(spacing), number(start.abs())),
        ((spacing + start).inches(), "in"),
        Basis::Input("plate_every"),
    );
    for opening in &wall.openings {
        opening_steps(&mut part, wall, opening);
    }
    let height = heights.stud_top() + heights.plate;
    let expression = format!("√({}² + {}²)", number(wall.length), number(height));
    part.step("d", "diagonal of the frame", expression, (wall.diagonal().inches(), "in"), Basis::Arithmetic);
    part
}

fn opening_steps(part: &mut Part, wall: &Wall, opening: &Opening) {
    let number = |length: Length| figure(length.inches());
    let heights = &wall.heights;
    let at = inches(opening.from);
    let header = opening.between_kings(wall.stud.thickness).width();
    part.step(
        "h",
        format!("header of the opening at {at}: its width and the jacks"),
        format!("{} + 2 × {} × {}", number(opening.width), opening.jacks, number(wall.stud.thickness)),
        (header.inches(), "in"),
        Basis::Input("plate_openings"),
    );
    let jack = opening.jack(heights);
    let expression = format!("{} - {}", number(opening.head), number(heights.plate));
    part.step("j", "jack, head less the plate", expression, (jack.inches(), "in"), Basis::Arithmetic);
    let depth = number(opening.header.whole_depth(heights.plate));
    part.step(
        "c_a",
        "cripple above, stud less jack less header",
        format!("{} - {} - {depth}", number(heights.stud), number(jack)),
        (opening.cripple_above(heights).inches(), "in"),
        Basis::Arithmetic,
    );
    if let (Some(below), Some(sill)) = (opening.cripple_below(heights), opening.sill) {
        part.step(
            "c_b",
            "cripple below, sill less its plates and the bottom plate",
            format!("{} - {} × {}", number(sill), opening.sill_plates + 1, number(heights.plate)),
            (below.inches(), "in"),
            Basis::Arithmetic,
        );
    }
}
