//! Jacks, kings, the code's table, wind, the gap; and the cut list.

use std::cmp::Ordering;

use framing::words;
use measure::Denominator;
use members::header::{CutKind, GapAnswer, HeaderAnswer, HeaderInput, Kings, Limit, TableAnswer, Verdict};
use members::working::figure;

use super::answer::state_of;
use crate::model::{Cut, Panel, State};

/// In the order of the screen.
pub(super) fn panels(input: &HeaderInput, found: &HeaderAnswer) -> Vec<Panel> {
    let mut panels = vec![jacks(input, found)];
    panels.extend(kings(found));
    panels.push(table(input, found));
    panels.extend(found.gap.as_ref().map(gap));
    panels.push(rough_opening(input, found));
    panels
}

fn a_side(count: u8, piece: &str) -> String {
    format!("{count} {piece}{} a side", if count == 1 { "" } else { "s" })
}

fn jacks(input: &HeaderInput, found: &HeaderAnswer) -> Panel {
    let judged = &found.tried[found.judged];
    let (figure_text, state) = match judged.jacks {
        Some(_) => (a_side(found.jacks_to_set, "jack"), State::Carries),
        None if judged.outside.is_some() => ("Jacks not known".to_owned(), State::Outside),
        None => ("5 jacks a side are not enough".to_owned(), State::Short),
    };
    let mut lines = vec![format!("Each side carries {} lb.", figure(found.reaction.pounds().round()))];
    let bearing = judged
        .checks
        .iter()
        .filter(|check| matches!(check.limit, Limit::Bearing | Limit::JackColumn | Limit::PlateBearing));
    if let Some(worst) = bearing.reduce(|most, check| if check.share > most.share { check } else { most }) {
        lines.push(format!("{} of what {} allows.", words::percent(worst.share), worst.limit.words()));
    }
    if let (TableAnswer::Span { jacks, .. }, Some(needed)) = (&found.table, judged.jacks) {
        let [by_table, by_strength] = [*jacks, needed].map(|count| a_side(count, "jack"));
        lines.push(match jacks.cmp(&needed) {
            Ordering::Greater => format!("{by_strength} by strength; the code's table asks for {by_table}: set those."),
            Ordering::Equal => format!("By the code's table: {by_table} as well."),
            Ordering::Less => format!("By the code's table: {by_table}; strength asks for more."),
        });
    }
    if let Some(one) = members::header::one_jack_bearing(input, &judged.member).filter(|one| one.share > 1.0) {
        lines.push(format!(
            "One jack would be crushed into: {} psi against {} psi.",
            figure(one.demand),
            figure(one.capacity)
        ));
    }
    Panel { heading: "Jacks".to_owned(), state, figure: figure_text, lines }
}

fn kings(found: &HeaderAnswer) -> Option<Panel> {
    if let Some(outside) = &found.kings_outside {
        return Some(Panel {
            heading: "Kings".to_owned(),
            state: State::Outside,
            figure: "Ask an engineer".to_owned(),
            lines: vec![outside.clone()],
        });
    }
    let kings = found.kings?;
    let mut lines = king_lines(&kings);
    lines.extend(words::king_table(found));
    if found.kings_to_set > kings.each_side() {
        let needed = a_side(kings.each_side(), "king");
        lines.push(format!("{needed} by calculation; the table asks for more: set those."));
    }
    Some(Panel {
        heading: "Kings".to_owned(),
        state: State::Carries,
        figure: a_side(found.kings_to_set, "king"),
        lines,
    })
}

fn king_lines(kings: &Kings) -> Vec<String> {
    let mut lines = vec![format!(
        "Wind of {} psf on {} of wall: {} plf. Jacks do not help; they stop at the header.",
        figure(kings.pressure.psf()),
        words::length(kings.tributary),
        figure(kings.line_load.plf()),
    )];
    if kings.one_king_share > 1.0 {
        lines.push(format!("One king would be at {} of its strength.", words::percent(kings.one_king_share)));
    }
    if kings.for_stiffness > kings.for_bending {
        lines.push(format!(
            "{} by strength; {} so that it bows no more than height over 180.",
            kings.for_bending, kings.for_stiffness
        ));
    }
    lines
}

fn table(input: &HeaderInput, found: &HeaderAnswer) -> Panel {
    let mut lines = words::table(found, input).into_iter();
    let first = lines.next().unwrap_or_default();
    let (state, figure_text) = match &found.table {
        TableAnswer::AskAbove => (State::NotKnown, "Say what sits on it".to_owned()),
        TableAnswer::Nonbearing { .. } => (State::NotKnown, "No bearing header asked".to_owned()),
        TableAnswer::Outside(_) => (State::Outside, "Not in the table".to_owned()),
        TableAnswer::Span { allowed, .. } => {
            let verdict = if input.opening <= *allowed { Verdict::Carries } else { Verdict::TooSmall };
            let word = if verdict.holds() { "passes" } else { "does not pass" };
            (state_of(verdict), format!("{word}: spans {}", words::length(*allowed)))
        }
    };
    let heading = format!("The code's table, {}", input.edition.name());
    Panel { heading, state, figure: figure_text, lines: std::iter::once(first).chain(lines).collect() }
}

fn gap(gap: &GapAnswer) -> Panel {
    let mut lines = vec![format!(
        "Found {}. Shrinkage to expect: {}, usually between {} and {}.",
        words::length(gap.found),
        words::length(gap.expected),
        words::length(gap.least),
        words::length(gap.most),
    )];
    lines.extend(words::gap_action());
    Panel { heading: "Gap at the jack".to_owned(), state: State::Short, figure: "Fix before cover".to_owned(), lines }
}

/// The hole that is framed, and how the header's top meets the plates.
fn rough_opening(input: &HeaderInput, found: &HeaderAnswer) -> Panel {
    let depth = found.tried[found.judged].member.section().depth;
    let left = found.room - depth;
    let above = if left.inches() < 0.0 {
        format!("The header is {} too deep to stand under the top plates.", words::length(left.abs()))
    } else if found.cuts.iter().any(|cut| cut.piece == CutKind::CrippleAbove) {
        format!("Cripples of {} stand on the header.", words::length(left))
    } else if left.inches() > 0.0 {
        format!("{} is left under the top plates: pack it tight, full length.", words::length(left))
    } else {
        "The header stands tight under the top plates.".to_owned()
    };
    Panel {
        heading: "Rough opening".to_owned(),
        state: State::NotKnown,
        figure: format!("{} × {}", words::length(input.opening), words::length(input.wall.head_height)),
        lines: vec![
            "Width by head height, from under the bottom plate; a window's sill is not asked.".to_owned(),
            above,
        ],
    }
}

/// The cut list.
pub(super) fn cuts(input: &HeaderInput, found: &HeaderAnswer) -> Vec<Cut> {
    let header = found.tried[found.judged].member.name();
    found
        .cuts
        .iter()
        .map(|cut| Cut {
            count: cut.count,
            piece: framing::piece(cut.piece, &header, input),
            length: words::length(cut.length),
            spoken: cut.length.spoken(Denominator::Sixteenth),
            note: words::cut_note(cut.piece).to_owned(),
        })
        .collect()
}
