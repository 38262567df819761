//! What the answer of a wall says of its other face.

use bracing::{Joined, SecondFace, Strength};
use members::working::{Basis, Part};

use super::frame;
use crate::quick::reply::QuickReply;
use crate::quick::say::fact;
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::figure;

/// The other face in the working.
pub(super) fn steps(part: &mut Part, strength: &Strength, second: &SecondFace) {
    let (one, other) = (strength.one_face.plf(), second.shear.plf());
    part.step("v_w", "the other face alone, nominal", "", (other, "plf"), Basis::Published(second.row.source()));
    let (meaning, expression) = match second.joined {
        Joined::Added => ("both faces, added in wind", format!("{} + {}", figure(one), figure(other))),
        Joined::ByStiffness => ("both faces, by their stiffnesses", "(G_a1 + G_a2) × min(v/G_a)".to_owned()),
        Joined::TwiceTheWeaker => ("both faces, twice the weaker", format!("2 × {}", figure(one.min(other)))),
        Joined::StrongerAlone => ("both faces, the stronger alone", String::new()),
    };
    part.step("v_w", meaning, expression, (second.both.plf(), "plf"), Basis::Published(second.source));
}

/// What is to be known of it.
pub(super) fn say(reading: &Reading, reply: &mut QuickReply, about: &mut About<'_>, strength: &Strength) {
    let Some(text) = reading.word("other_face") else { return };
    let Some(second) = &strength.second else {
        if frame::framing(reading).is_some_and(|framing| framing.other_face != bracing::OtherFace::Bare) {
            about.say(format!("The other face, {text}, is not counted: board counts in pieces to 2:1, to 1.5:1 where it is not blocked, and nothing counts over panels that are on both faces."));
        }
        return;
    };
    let other = second.shear.allowable_for_wind().line_load().plf();
    let written = format!("{} plf", figure(other.round()));
    reply.facts.push(fact("other_face_plf", "the other face alone carries", other, written));
    about.say(match second.joined {
        Joined::Added => "Gypsum board on the other face is added in wind, and for nothing else: in earthquakes it is left out. It counts while it is dry, whole and fastened as the table has it.",
        Joined::ByStiffness => "The same panels nailed otherwise on the other face work by their stiffnesses: the first face that is used up decides.",
        Joined::TwiceTheWeaker => "Other panels on the other face: twice the weaker face counts.",
        Joined::StrongerAlone => "Other panels on the other face: the stronger face alone counts, which is more than twice the weaker.",
    });
    if second.stiffness.is_none() {
        about.say("The lean counts the panels that are asked about alone: no rule was read for the stiffness of the other face.");
    }
}
