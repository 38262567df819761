//! Ceiling strapping, read and answered: the set-out of the strips, and the shims where the joists were read.
//!
//! Where to look: `given` turns inputs into a ceiling, `reads` lines of readings into heights, `refused` says which input
//! an error is about; `laid` answers the set-out, `shimmed` and `shim_tables` the shims, `planed` a low joist, `below` what
//! hangs or stands below; `drawn` makes the pictures' data.

mod below;
mod drawn;
mod given;
mod laid;
mod planed;
mod reads;
mod refused;
mod shim_tables;
mod shimmed;
mod working;

use layout::strapping::{Strapping, TakeOff, set_out, take_off};

use super::drawn::DrawnLayout;
use crate::quick::reply::{Drawn, QuickReply};
use crate::quick::say::cautions;
use crate::reading::Reading;
use crate::site::about::About;
use given::Given;
use shimmed::Shimmed;

pub(super) const FIELDS: &[&str] = &[
    "strap_across",
    "strap_along",
    "strap_joist_every",
    "strap_joist_first",
    "strap_joists_at",
    "strap_joist_thick",
    "strap_every",
    "strap_strip",
    "strap_stock",
    "strap_bundle",
    "strap_short",
    "strap_readings",
    "strap_read_in",
    "strap_read_at",
    "strap_datum",
    "strap_level",
    "strap_datum_high",
    "strap_aim",
    "strap_shims",
    "strap_shim_most",
    "strap_joists_are",
    "strap_joist_deep",
    "strap_below",
    "strap_beam_deep",
    "strap_beam_proud",
    "strap_board",
    "strap_stud",
    "strap_wall_high",
    "strap_plates",
    "strap_wall_boards",
    "strap_floor_gap",
    "strap_floor_thick",
];

/// What the set-out rests on.
const SET_OUT: &[&str] = &[
    "strap_across",
    "strap_along",
    "strap_joist_thick",
    "strap_every",
    "strap_strip",
    "strap_stock",
    "strap_bundle",
    "strap_short",
];
/// What the shims rest on.
const SHIMS: &[&str] = &["strap_read_in", "strap_datum", "strap_level", "strap_aim", "strap_shim_most", "strap_board"];
/// What the wall under it rests on.
const WALL: &[&str] = &["strap_board", "strap_wall_boards", "strap_floor_gap", "strap_floor_thick"];

/// What is looked at when they are up.
const NEIGHBOURS_AGAIN: &str =
    "When the strips are up, read their undersides again: neighbours within 1/8\" of one plane.";

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let given = given::read(reading)?;
    let strapping = refused::taken(reading, set_out(&given.room))?;
    let takes = refused::taken(reading, take_off(&strapping, &given.buy))?;
    let shimmed = match reading.word("strap_readings") {
        Some(_) => Some(shimmed::work(reading, &given, &strapping)?),
        None => None,
    };
    below::check(reading)?;
    Some(reply(reading, &given, &strapping, &takes, shimmed.as_ref()))
}

fn reply(
    reading: &Reading,
    given: &Given,
    strapping: &Strapping,
    takes: &TakeOff,
    shimmed: Option<&Shimmed>,
) -> QuickReply {
    let mut about = about(reading, shimmed.is_some());
    let below = below::rules(reading, given);
    let mut action = Vec::new();
    let (mut facts, mut tables) = (Vec::new(), Vec::new());
    let (size, verdict) = match shimmed {
        Some(shimmed) => {
            action.extend(shimmed::action(shimmed));
            facts.extend(shimmed::facts(reading, given, shimmed));
            tables.extend(shim_tables::tables(shimmed));
            shimmed::headline(reading, given, shimmed)
        }
        None => laid::headline(given, strapping),
    };
    action.extend(below.action);
    action.extend(laid::action(given, strapping, takes));
    facts.extend(laid::facts(given, strapping, takes));
    facts.extend(below.facts);
    tables.push(laid::rows(given, strapping));
    working::parts(&mut about, reading, given, strapping, takes, shimmed);
    QuickReply {
        size,
        verdict,
        action,
        facts,
        tables,
        by_code: shimmed.map_or_else(Vec::new, planed::rules),
        needs: below.rules,
        drawn: Drawn::Layout(DrawnLayout::Strapping(Box::new(drawn::drawn(given, strapping, shimmed)))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

fn about(reading: &Reading, was_read: bool) -> About<'_> {
    let said = |id: &str| reading.get(id).is_some_and(|value| value.origin == crate::reading::Origin::Typed);
    let mut used: Vec<&str> = SET_OUT.to_vec();
    if !said("strap_joists_at") {
        used.push("strap_joist_every");
    }
    if was_read {
        used.extend(SHIMS);
    }
    if said("strap_stud") || said("strap_wall_high") {
        used.extend(WALL.iter().filter(|id| !used.contains(*id)).copied().collect::<Vec<_>>());
        if !said("strap_wall_high") || said("strap_stud") {
            used.push("strap_plates");
        }
    }
    if said("strap_beam_deep") && !said("strap_below") {
        used.push("strap_beam_proud");
    }
    let mut about = About::of(reading, &used);
    if !was_read {
        about.ask(
            "strap_readings",
            "What does a laser or a string read to the underside of each joist? Type a line for each row of strips, or leave it: this is the set-out.",
        );
    }
    if was_read && !said("strap_level") && reading.word("strap_aim") == Some("level") {
        about.ask("strap_level", "Was the laser or the string checked for level? That it is level is assumed.");
    }
    if was_read && !said("strap_joists_are") {
        about
            .ask("strap_joists_are", "What are the joists? A low one may be less work planed, where the code lets it.");
    }
    if was_read && !said("strap_shims") {
        about.assume("strap_shims", "Shims at hand: every sixteenth to 1/2\", and 3/4\" (a common set of packers).");
    }
    if !said("strap_joist_first") && !said("strap_joists_at") {
        about.assume("strap_joist_first", "First joist: one spacing from the left wall.");
    }
    about.say("Rows are counted from the near wall, joists from the left wall, both from 1.");
    about.say("Each row is 1/2\" shorter than the room, both ends together. Saw cuts of 1/8\" are counted. All strips are taken as straight.");
    if was_read {
        about.say(format!("{NEIGHBOURS_AGAIN} {}.", crate::words::source(layout::strapping::NEIGHBOURS)));
        about.say("Strings of one ceiling must lie in one plane. A missing reading is never made up: a shim between two readings of its joist is marked with ?, one past them is left open.");
    }
    if said("strap_datum_high") && reading.word("strap_level") == Some("no") {
        about.say("A string that is not level has no one height: no height of the ceiling is worked from it.");
    }
    if wide_spacing(reading) {
        about.say("Strips over 16\" apart need a ceiling board that is rated for it (from memory): see its label.");
    }
    cautions(&mut about);
    about.caution("Two nails of 2-1/2\" or two screws hold each strip at each joist. Over a thick shim take longer ones: what counts is the length in the joist.");
    about
}

fn wide_spacing(reading: &Reading) -> bool {
    reading.number("strap_every").is_some_and(|every| every > 16.0)
}
