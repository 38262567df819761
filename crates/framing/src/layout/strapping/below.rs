//! What hangs below the joists, and what stands below the ceiling: what strips hide, and whether the wall boards fit.

use layout::strapping::{Below, Ceiling, Hides, WallBoards, beam_below, hides};
use lumber::SawnSize;
use measure::Length;

use super::given::Given;
use super::shimmed::under;
use crate::quick::reply::{FactReply, RuleReply};
use crate::quick::say::{length_fact, rule};
use crate::reading::Reading;
use crate::words;

/// What is said of both.
#[derive(Default)]
pub(super) struct Told {
    pub action: Vec<String>,
    pub facts: Vec<FactReply>,
    pub rules: Vec<RuleReply>,
}

/// Refuses what contradicts itself or is not enough.
pub(super) fn check(reading: &mut Reading) -> Option<()> {
    if reading.length("strap_stud").is_some() && reading.length("strap_wall_high").is_some() {
        reading.refuse(
            "strap_wall_high",
            "The studs were given too. One of both is taken: take the other out.".to_owned(),
        );
        return None;
    }
    if reading.length("strap_beam_deep").is_some()
        && reading.length("strap_below").is_none()
        && depth(reading).is_none()
    {
        let problem = "How deep the joists are was not given. Their size or their depth is taken: give it, or measure how far the beam hangs below.";
        reading.refuse("strap_beam_deep", problem.to_owned());
        return None;
    }
    Some(())
}

/// Depth of a joist: as measured, else of its size.
fn depth(reading: &Reading) -> Option<Length> {
    let of_size = || Some(SawnSize::from_text(reading.word("strap_joists_are")?).ok()?.depth());
    reading.length("strap_joist_deep").or_else(of_size)
}

pub(super) fn rules(reading: &Reading, given: &Given) -> Told {
    let mut told = Told::default();
    hidden(reading, given, &mut told);
    wall(reading, given, &mut told);
    told
}

/// What hangs: as it was measured, else the beam's depth less the joists'.
fn hangs(reading: &Reading) -> Option<(Length, bool)> {
    if let Some(measured) = reading.length("strap_below") {
        return Some((measured, false));
    }
    let beam = beam_below(reading.length("strap_beam_deep")?, depth(reading)?, reading.length("strap_beam_proud")?);
    Some((Below { beam, ..Below::default() }.lowest(), true))
}

fn hidden(reading: &Reading, given: &Given, told: &mut Told) {
    let Some((below, is_beam)) = hangs(reading) else { return };
    let strip = given.room.strip.thickness;
    let found = hides(&Below { hanger: below, ..Below::default() }, strip, Length::ZERO);
    told.facts.push(length_fact("below_in", "hangs below the joists", below));
    let (holds, figure, first) = match found {
        Hides::By(left) => {
            told.facts.push(length_fact("hidden_by_in", "left between it and the board", left));
            let left = words::inches(left);
            (true, format!("hidden, {left} left"), format!("The strips clear it by {left}, with no shim there."))
        }
        Hides::ProudBy { proud, pack, strip } => {
            told.facts.push(length_fact("proud_by_in", "stands proud of the strips by", proud));
            told.facts.push(length_fact("pack_in", "packer that just hides it", pack));
            told.facts.push(length_fact("strip_needed_in", "or a strip so thick", strip));
            let (proud, pack, strip) = (words::inches(proud), words::inches(pack), words::inches(strip));
            told.action.push(format!(
                "What hangs below the joists stands {proud} proud of the strips: put {pack} behind every strip, or take strips {strip} thick, or let the ceiling step there."
            ));
            (
                false,
                format!("{proud} proud"),
                format!(
                    "With no shim there it stands {proud} proud: a packer of {pack} or a strip of {strip} just hides it."
                ),
            )
        }
    };
    let mut says = vec![first, "A shim at that place adds to what the strip hides: it is not counted here.".to_owned()];
    if is_beam {
        says.push("From the depths: the beam's less the joists', and what their tops stand over it. Measure it: depths of both vary.".to_owned());
        says.push(
            "A joist sits on the seat of its hanger. Do not leave a gap under it to bring its top up.".to_owned(),
        );
    }
    told.rules.push(rule("What hangs below the joists", Some(holds), figure, says));
}

fn wall(reading: &Reading, given: &Given, told: &mut Told) -> Option<()> {
    let (stud, plates) = match reading.length("strap_wall_high") {
        Some(high) => (high, Length::ZERO),
        None => (reading.length("strap_stud")?, reading.length("strap_plates")?),
    };
    let under = under(reading, given);
    let (boards, wanted) = (reading.length("strap_wall_boards")?, reading.length("strap_floor_gap")?);
    let with = WallBoards { plates, ceiling: under, boards };
    let bare = WallBoards { ceiling: Ceiling { strip: Length::ZERO, ..under }, ..with };
    let (gap, gap_bare) = (with.gap(stud), bare.gap(stud));
    let clear = stud + plates - under.thickness() - reading.length("strap_floor_thick")?;
    told.facts.push(length_fact("gap_in", "left under the wall boards", gap));
    told.facts.push(length_fact("gap_bare_in", "the same without strips", gap_bare));
    told.facts.push(length_fact("clear_height_in", "floor to finished ceiling, with no shim", clear));
    let (needed, needed_name) = (with.stud(wanted), if plates > Length::ZERO { "studs" } else { "a wall" });
    told.facts.push(length_fact("stud_in", "stud, or wall, that leaves the wanted gap", needed));
    let fits = gap >= Length::ZERO;
    let mut says = vec![
        format!("{} under the boards with strips, {} without.", words::inches(gap), words::inches(gap_bare)),
        format!("For {} at the floor take {needed_name} of {}.", words::inches(wanted), words::inches(needed)),
        "Plates differ: a sixteenth on each of three is 3/16\". Measure the wall. A shim brings the ceiling down further.".to_owned(),
    ];
    if !fits {
        let short = words::inches(-gap);
        told.action.push(format!(
            "The wall boards do not fit by {short}: rip one, or take {needed_name} of {}.",
            words::inches(needed)
        ));
        says.push(format!("They do not fit by {short}."));
    }
    let figure =
        if fits { format!("{} left", words::inches(gap)) } else { format!("{} too high", words::inches(-gap)) };
    told.rules.push(rule("Wall boards under the ceiling", Some(fits), figure, says));
    Some(())
}
