//! From a header's answer to its drawing.

use framing::words;
use measure::Denominator;
use members::header::{HeaderAnswer, HeaderInput};
use members::working::figure;

use super::answer::state;
use super::opening::{OpeningDrawing, draw};
use crate::model::State;
use crate::scene::{Ink, Scene};

/// The opening drawn to scale, with the judged header in it.
pub(super) fn picture(input: &HeaderInput, found: &HeaderAnswer) -> Scene {
    let judged = &found.tried[found.judged];
    let (jacks, kings) = (found.jacks_to_set, found.kings_to_set);
    let load = format!("{} plf", figure(found.line_load.plf().round()));
    let reaction = format!("{} lb", figure(found.reaction.pounds().round()));
    draw(&OpeningDrawing {
        opening: input.opening.inches(),
        wall_height: input.wall.height.inches(),
        head_height: input.wall.head_height.inches(),
        header_depth: judged.member.section().depth.inches(),
        jacks,
        kings,
        spacing: input.wall.spacing.inches(),
        ink: ink(state(judged)),
        opening_figure: words::length(input.opening),
        head_figure: words::length(input.wall.head_height),
        wall_figure: words::length(input.wall.height),
        alt: alt(input, found, jacks, kings),
        load,
        reaction,
    })
}

const fn ink(state: State) -> Ink {
    match state {
        State::Carries => Ink::Carries,
        State::AtLimit => Ink::AtLimit,
        State::Short => Ink::Short,
        State::Outside => Ink::Outside,
        State::NotKnown | State::Told => Ink::Ink,
    }
}

fn alt(input: &HeaderInput, found: &HeaderAnswer, jacks: u8, kings: u8) -> String {
    let judged = &found.tried[found.judged];
    format!(
        "Opening {} wide, head at {}, in a wall {} high. Header {}, on {jacks} jack{} and beside {kings} king{} a side. \
         {} plf comes down on it; each side's jacks carry {} lb.",
        input.opening.spoken(Denominator::Sixteenth),
        input.wall.head_height.spoken(Denominator::Sixteenth),
        input.wall.height.spoken(Denominator::Sixteenth),
        judged.member.name(),
        if jacks == 1 { "" } else { "s" },
        if kings == 1 { "" } else { "s" },
        figure(found.line_load.plf().round()),
        figure(found.reaction.pounds().round()),
    )
}

/// A sheet with nothing drawn on it.
pub(super) fn empty() -> Scene {
    Scene {
        left: 0.0,
        top: 0.0,
        width: 100.0,
        height: 100.0,
        marks: Vec::new(),
        alt: "Nothing is drawn yet.".to_owned(),
    }
}
