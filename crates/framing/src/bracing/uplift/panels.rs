//! Panels that lap the plates and hold a wall down beside their shear, read as a tie.

use bracing::uplift::{Tie, lapping};
use bracing::{Edition, Framing, LevelJoints, OtherFace, read_nailing};
use lumber::Species;
use measure::LineLoad;
use standards::sdpws_2015::uplift::NailRows;

use crate::reading::Reading;
use crate::site::about::About;

/// Whether an input names the panels as what holds.
pub(super) fn is_panels(reading: &Reading, id: &str) -> bool {
    let names = |text: &str| matches!(text.trim(), "panels" | "panel" | "sheathing");
    reading.word(id).is_some_and(|text| names(&text.to_ascii_lowercase()))
}

/// The panels as a tie, where their nails for uplift were said: not known while nobody said what shear is in them. None twice
/// over where no such nails are; none where what was typed is wrong, which is then said.
pub(super) fn lapped(reading: &mut Reading) -> Option<Option<Tie>> {
    let named = ["plate_tie", "floor_tie", "sill_tie"].iter().any(|id| is_panels(reading, id));
    let Some(text) = reading.word("lap_panels").filter(|_| named).map(str::to_owned) else { return Some(None) };
    let nailing = match read_nailing(&text) {
        Ok(nailing) => nailing,
        Err(problem) => {
            reading.refuse("lap_panels", problem.to_string());
            return None;
        }
    };
    let rows = if reading.word("lap_rows")? == "2" { NailRows::Double } else { NailRows::Single };
    let spacing = reading.length("lap_every")?;
    Some(Some(match reading.number("lap_shear") {
        Some(shear) => lapping(&nailing, &framing(reading)?, (rows, spacing), LineLoad::from_plf(shear)),
        None => Tie::Unknown,
    }))
}

/// What is to be known where panels hold the wall down.
pub(super) fn say(about: &mut About<'_>) {
    about.say("The bolts of these panels take their shear too: Anchor bolts has both. Beside openings straps hold the wall down, not panels.");
    about.say("Two rows of nails stand 1/2\" apart or more, staggered, 3/4\" from the edges of the plate (SDPWS 2015 4.4, from memory).");
}

/// What the panels are nailed to; for their shear the later edition, with hold-downs in the bay, is the careful one.
fn framing(reading: &Reading) -> Option<Framing> {
    let species = Species::from_text(reading.word("species")?).ok()?;
    Some(Framing {
        specific_gravity: species.specific_gravity().value,
        studs: reading.length("brace_spacing")?,
        wet: false,
        hold_downs_inside: true,
        edition: Edition::Of2021,
        joints: LevelJoints::Blocked,
        other_face: OtherFace::Bare,
    })
}
