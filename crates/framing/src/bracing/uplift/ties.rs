//! What is there at the links of a wall, with the side of the plate that the ties are on.

use bracing::uplift::{Side, SillBolts, Tie, Washer};
use fastening::Driven;
use measure::{Force, Length, read_number};
use standards::asme_b18;

use super::panels::{is_panels, lapped};
use crate::bracing::frame::plate;
use crate::bracing::ties::tie;
use crate::reading::Reading;

/// What is there at the links of a wall.
pub(super) struct WallTies {
    pub(super) roof: Tie,
    pub(super) plate: Tie,
    pub(super) floor: Tie,
    pub(super) sill: Tie,
    pub(super) header: Tie,
    pub(super) jamb: Tie,
}

impl WallTies {
    /// Whether panels are nailed for uplift beside their shear at any of the links.
    pub(super) fn has_lapped_panels(&self) -> bool {
        [&self.plate, &self.floor, &self.sill].iter().any(|tie| matches!(tie, Tie::Panels(_)))
    }

    /// Whether the ties at the plate would roll it: they are not on the side of what goes on below. On the inside they do
    /// unless ties at the studs go on there.
    pub(super) fn rolls_plate(&self) -> bool {
        let Tie::Metal { side: Some(above), .. } = self.roof else { return false };
        let below = match self.plate {
            Tie::Metal { side, .. } => side,
            _ => Some(Side::Sheathed),
        };
        below.unwrap_or(Side::Sheathed) != above
    }
}

/// Whether an input gives a load of a tie's label.
pub(super) fn is_load(reading: &Reading, id: &str) -> bool {
    let is_load = |text: &str| read_number(text.trim(), &["lb", "lbs", "pounds"]).is_ok_and(|load| load > 0.0);
    reading.word(id).is_some_and(|text| is_load(&text.to_ascii_lowercase()))
}

/// Reads the ties of a wall; what is wrong with one is said at its input.
pub(super) fn wall_ties(reading: &mut Reading, roof: &'static str) -> Option<WallTies> {
    let mut ties = Vec::new();
    for id in [roof, "plate_tie", "floor_tie", "sill_tie", "header_tie", "jamb_tie"] {
        ties.push(tie(reading, id, Driven::Toe));
    }
    let panels = lapped(reading);
    let ties: Option<Vec<Tie>> = ties.into_iter().collect();
    let panels = panels?;
    let [roof, plate, floor, sill, header, jamb]: [Tie; 6] = ties?.try_into().ok()?;
    let nailed = |tie: Tie, id: &str| match &panels {
        Some(panels) if is_panels(reading, id) => panels.clone(),
        _ => tie,
    };
    Some(WallTies {
        roof: on_side(reading, roof, "rafter_tie_side"),
        plate: on_side(reading, nailed(plate, "plate_tie"), "plate_tie_side"),
        floor: nailed(floor, "floor_tie"),
        sill: nailed(sill, "sill_tie"),
        header,
        jamb,
    })
}

fn on_side(reading: &Reading, tie: Tie, id: &str) -> Tie {
    let side = match reading.word(id) {
        Some("sheathed") => Some(Side::Sheathed),
        Some("inside") => Some(Side::Inside),
        _ => None,
    };
    match tie {
        Tie::Metal { allowable, .. } => Tie::Metal { allowable, side },
        other => other,
    }
}

/// The anchor bolts of the sill.
pub(super) fn bolts(reading: &Reading) -> Option<SillBolts> {
    let diameter = Length::from_inches(match reading.word("bolt_thick")? {
        "5/8" => 0.625,
        "3/4" => 0.75,
        _ => 0.5,
    });
    let washer = if reading.word("bolt_washer")? == "plate" {
        Washer::Square { side: Length::from_inches(3.0), thickness: Length::from_inches(0.25) }
    } else {
        Washer::Round { diameter: asme_b18::nut_and_washer(diameter)?.across }
    };
    Some(SillBolts {
        washer,
        hole: diameter + Length::from_inches(1.0 / 16.0),
        fc_perp: plate(reading)?,
        anchorage: reading.number("bolt_holds").map(Force::from_pounds),
    })
}
