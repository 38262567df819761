//! A wall under rafters or trusses, from its roof sheathing to its footing; and what it has alike with a gable wall.

use bracing::uplift::{
    Chain, Connections, HeldDown, RoofSheathing, Tie, UpliftBasis, WallOpening, WallStorey, check_chain, ridge_tension,
};
use measure::{Length, LineLoad, Slope};
use members::working::Part;

use super::deck::{deck, nailed};
use super::lifted::{Lifted, lifted};
use super::says::{Found, finished, reply};
use super::ties::{WallTies, bolts, wall_ties};
use super::{Asks, Lifts, asked, asks_the_engineer, by_code, panels};
use crate::bracing::NOT_ENOUGH;
use crate::quick::read::plf;
use crate::quick::reply::QuickReply;
use crate::quick::say::{fact, force_fact, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::figure;

const OF_THE_WALL: Asks = ("uplift_given", "What does the drawing say lifts a foot of this wall?");

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (ties, nailed) = (wall_ties(reading, "rafter_tie"), nailed(reading));
    let (ties, nailed) = (ties?, nailed?);
    let reading = &*reading;
    let mut about = About::of(reading, &asked::used(reading));
    let lifted = match lifted(reading)? {
        Ok(lifted) => lifted,
        Err(sentence) => return Some(asks_the_engineer(about, OF_THE_WALL, sentence)),
    };
    let rolls = ties.rolls_plate();
    let toe_nails = by_code::toe_nails(reading, &ties.roof);
    let (sides, lapped) = (sides_asked(&ties), ties.has_lapped_panels());
    let mut chain = chain(reading, ties, (lifted.along, lifted.basis), reading.length("rafter_every")?)?;
    let deck = deck(reading, &mut about, nailed);
    chain.sheathing = deck.as_ref().map(|deck| deck.sheathing());
    let answer = match check_chain(&chain) {
        Ok(answer) => answer,
        Err(outside) => return Some(unworked(about, outside.to_string())),
    };
    let along = format!("{} plf", figure(lifted.along.plf().ceil()));
    let facts = vec![fact("uplift_plf", "a foot of wall is lifted by", lifted.along.plf(), along)];
    let mut part = Part::new("Link by link");
    part.step("u", lifted.says.as_str(), "", (lifted.along.plf(), "plf"), lifted.source);
    let mut reply = reply(reading, &mut about, Found { lifts: Lifts::Wall, answer, rolls, facts, part });
    ask_sides(&mut about, sides);
    if lapped {
        panels::say(&mut about);
    }
    about_deck(&mut about, deck.as_ref());
    ridge(reading, &mut about, &mut reply, &lifted);
    reply.by_code.extend(by_code::table_of_ties(reading));
    if let Some(rule) = toe_nails {
        reply.forbidden = rule.holds == Some(false) && reply.verdict != NOT_ENOUGH;
        if reply.forbidden {
            reply.action.splice(0..0, rule.says.first().cloned());
        }
        reply.by_code.push(rule);
    }
    about.say("No weight counts twice: what holds a shear wall's end down is not counted here again.");
    Some(finished(about, reply))
}

/// The wall under what lifts its top, its roof ties so far apart; without roof sheathing.
pub(super) fn chain(
    reading: &Reading,
    ties: WallTies,
    (uplift, basis): (LineLoad, UpliftBasis),
    roof: Length,
) -> Option<Chain> {
    let studs = reading.length("brace_spacing")?;
    let storeys: usize = reading.word("uplift_storeys")?.parse().ok()?;
    let WallTies { roof: roof_tie, plate, floor, sill, header, jamb } = ties;
    let opening = reading.length("uplift_opening").map(|width| WallOpening { width, header, jamb });
    let dead = plf(reading, "wall_dead");
    let weight = if dead > LineLoad::ZERO { HeldDown::Dead(dead) } else { HeldDown::Nothing };
    let storey = |index: usize| WallStorey {
        above: Connections { tie: if index == 0 { plate.clone() } else { floor.clone() }, spacing: studs },
        studs,
        openings: if index == 0 { opening.clone().into_iter().collect() } else { Vec::new() },
        weight,
    };
    Some(Chain {
        uplift,
        basis,
        sheathing: None::<RoofSheathing>,
        roof: Connections { tie: roof_tie, spacing: roof },
        storeys: (0..storeys).map(storey).collect(),
        stud_to_sill: Connections { tie: sill, spacing: studs },
        sill: Connections { tie: Tie::Bolts(bolts(reading)?), spacing: reading.length("bolt_every")? },
    })
}

/// Which sides of the plate are not said yet: that of the ties at the plate, that of the ties at the studs.
pub(super) fn sides_asked(ties: &WallTies) -> (bool, bool) {
    let not_said = |tie: &Tie| matches!(tie, Tie::Metal { side: None, .. });
    let above = not_said(&ties.roof);
    (above, matches!(ties.roof, Tie::Metal { .. }) && !above && not_said(&ties.plate))
}

pub(super) fn ask_sides(about: &mut About<'_>, (above, below): (bool, bool)) {
    if above {
        about.ask("rafter_tie_side", "On which side of the plate are the ties? On the inside they roll it.");
    }
    if below {
        about.ask("plate_tie_side", "On which side are the ties at the studs? They belong under those above.");
    }
}

/// What is to be known of the roof sheathing's nails.
pub(super) fn about_deck(about: &mut About<'_>, deck: Option<&super::deck::Deck>) {
    if let Some(deck) = deck {
        about.part(deck.working());
        about.say("The rafters are taken to be of the wood that is typed here, and dry; the sheathing's own weight does not help.");
    }
}

/// What pulls the ridge apart where the rafters lean on each other.
fn ridge(reading: &Reading, about: &mut About<'_>, reply: &mut QuickReply, lifted: &Lifted) {
    let pitch = reading.number("roof_pitch").map(Slope::from_rise_in_twelve);
    let (Some(pitch), Some(spacing)) = (pitch, reading.length("rafter_every")) else { return };
    match ridge_tension(lifted.along, pitch, spacing) {
        Ok(tension) => {
            reply.facts.push(force_fact("ridge_lb", "a strap over the ridge, at each pair of rafters", tension.demand));
        }
        Err(outside) => about.say(format!("The ridge: {outside}")),
    }
}
