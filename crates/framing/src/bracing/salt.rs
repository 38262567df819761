//! What metal the connectors of an answer should be of, near salt water.

use loads::criteria::corrosion::{SAME_METAL, is_of_class, metal_wanted, same_metal};
use standards::irc_2021::r317_3::Protection;
use standards::nfip_technical_bulletin_8::{CorrosionClass, MetalExposure};

use super::WRONG_METAL;
use crate::quick::reply::QuickReply;
use crate::quick::say::{capital, rule};
use crate::reading::Reading;
use crate::site::about::About;
use crate::site::{input, metal_of_class};
use crate::words;

/// Puts the metal beside an answer: a line of what to do, a panel, and a verdict where the metal is the wrong one. Nothing
/// where the distance to salt water was not said. It is a matter of durability and changes no strength.
pub(super) fn say(reading: &Reading, reply: &mut QuickReply, about: &mut About<'_>) {
    let Some(distance) = input::to_salt_water(reading) else {
        about.say("Near salt water connectors rust: say how far it is, and the metal is said here.");
        return;
    };
    let (exposure, place) = sits(reading);
    let Ok(found) = metal_wanted(Some(distance), exposure) else { return };
    if reading.word("metal_where").is_none() && found.class != CorrosionClass::Standard {
        about.ask("metal_where", "Where do the connectors sit: rained on, sheltered from rain, or closed in?");
    }
    let wanted = metal_of_class(found.class);
    reply.action.push(format!("Connectors here: {wanted}, {place}, and their fasteners of the same metal."));
    let (tie, nails) = (protection(reading, "metal_tie"), protection(reading, "metal_nails"));
    let mut wrong = Vec::new();
    if let (Some(tie), Some(nails)) = (tie, nails)
        && !same_metal(nails, tie)
    {
        wrong.push("Two metals are mixed: take fasteners of the connector's own metal.".to_owned());
    }
    for (what, given) in [("connector", tie), ("fasteners", nails)] {
        if given.is_some_and(|given| !is_of_class(given, found.class)) {
            wrong.push(format!("The {what} would rust there: take {wanted}."));
        }
    }
    let mut says = wrong.clone();
    says.push(format!("{}. {}.", words::source(found.source), words::source(SAME_METAL)));
    says.push(
        "Look at them again at regular times, and replace what rusts: write the interval on the plan.".to_owned(),
    );
    let holds = (tie.is_some() && nails.is_some() || !wrong.is_empty()).then_some(wrong.is_empty());
    reply.needs.push(rule("Metal near salt water", holds, capital(wanted), says));
    if !wrong.is_empty() {
        // What does not carry is worse still.
        if reply.ratio.is_none_or(|ratio| ratio <= 1.0) {
            WRONG_METAL.clone_into(&mut reply.verdict);
        }
        reply.action.splice(0..0, wrong);
    }
}

/// Where the metal sits; where nobody said, the worst.
fn sits(reading: &Reading) -> (MetalExposure, &'static str) {
    match reading.word("metal_where") {
        Some("rained_on") => (MetalExposure::BoldlyExposed, "rained on"),
        Some("vented") => (MetalExposure::VentedSpace, "in a vented space"),
        Some("inside") => (MetalExposure::DryInside, "closed in and dry"),
        _ => (MetalExposure::PartlySheltered, "outdoors and sheltered from rain"),
    }
}

fn protection(reading: &Reading, id: &str) -> Option<Protection> {
    Some(match reading.word(id)? {
        "electroplated" => Protection::Electroplated,
        "hot_dip" => Protection::HotDipGalvanized,
        "stainless" => Protection::Stainless,
        _ => Protection::StandardGalvanized,
    })
}
