//! Level joints of the panels: where they fall, and what is to be done about them.

use bracing::Nailing;
use measure::Length;
use standards::sdpws_2015::table_4_3;

use super::frame;
use crate::reading::Reading;
use crate::words;

/// Width of a sheet.
const SHEET_WIDE: Length = Length::from_feet(4.0);
/// Two top plates: an edge that ends on them lies on framing.
const TOP_PLATES: Length = Length::from_inches(3.0);
/// Sheets as they are bought, by their long side, in feet.
const SHEETS: [f64; 4] = [8.0, 9.0, 10.0, 12.0];

/// Level joints above the bottom of a wall, panels from the bottom plate up.
pub(super) fn of(reading: &Reading, height: Length) -> Vec<Length> {
    let across = reading.word("panels_lie") == Some("across");
    let every = if across { Some(SHEET_WIDE) } else { reading.length("sheet_long") };
    let every = every.unwrap_or(height).max(SHEET_WIDE);
    let under_the_plates = height - TOP_PLATES;
    (1..).map(|index| every * f64::from(index)).take_while(|at| *at < under_the_plates).collect()
}

/// Spacing of the nails away from the edges.
pub(super) fn field_spacing(reading: &Reading, nailing: &Nailing, studs: Length) -> Length {
    match frame::framing(reading).map(|framing| framing.joints) {
        Some(bracing::LevelJoints::Unblocked { field }) => field,
        _ => table_4_3::field_spacing(nailing.thickness, studs),
    }
}

/// What to do about them.
pub(super) fn action(reading: &Reading, height: Length, blocked: bool) -> Vec<String> {
    let joints = of(reading, height);
    let upright = SHEETS.into_iter().map(Length::from_feet).find(|sheet| *sheet >= height - TOP_PLATES);
    let upright = upright.map(|sheet| format!("stand 4x{} sheets upright, which have no such joint", sheet.feet()));
    let at: Vec<String> = joints.iter().map(|at| words::length(*at)).collect();
    match (joints.is_empty(), blocked) {
        (true, true) => Vec::new(),
        (true, false) => vec![
            "So long sheets reach from plate to plate: no level joint is left. Say that every edge is on framing, and the wall counts in full.".to_owned(),
        ],
        (false, true) => {
            let or = upright.map_or_else(String::new, |upright| format!(" Or {upright}."));
            vec![format!(
                "Block the level joint {} up in every piece that counts, and nail both panel edges to it.{or}",
                at.join(" and ")
            )]
        }
        (false, false) => {
            let or = upright.map_or_else(String::new, |upright| format!(", or {upright}"));
            vec![
                "A wall with open level joints is an engineer's to design: ask before they are left open. Nails closer than 6\" count as 6\".".to_owned(),
                format!("Or block the joint {} up after the fact, from inside{or}.", at.join(" and ")),
            ]
        }
    }
}
