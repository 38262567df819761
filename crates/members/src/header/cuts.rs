//! What to cut around the opening.

use lumber::Member;
use measure::Length;

use super::demand::JACK_THICKNESS;
use super::input::HeaderInput;
use super::jacks::PLATE_THICKNESS;
use super::result::{CutKind, CutPiece};
use super::{TOP_PLATES, room};

/// The cut list. Lengths are exact; whoever writes them rounds to the tape.
///
/// Common practice: header = opening + 1-1/2 in for each jack; jack = head height less the bottom plate; king = wall
/// height less three plates; cripples above fill what is left, on the wall's layout and at both ends.
pub(super) fn cuts(header: &Member, jacks: u8, kings: u8, input: &HeaderInput) -> Vec<CutPiece> {
    let header_length = input.opening + JACK_THICKNESS * (2.0 * f64::from(jacks));
    let mut cuts = vec![
        CutPiece { count: u32::from(header.plies()), piece: CutKind::Header, length: header_length },
        CutPiece {
            count: 2 * u32::from(jacks),
            piece: CutKind::Jack,
            length: input.wall.head_height - PLATE_THICKNESS,
        },
        CutPiece {
            count: 2 * u32::from(kings),
            piece: CutKind::King,
            length: input.wall.height - TOP_PLATES - PLATE_THICKNESS,
        },
    ];
    let left = room(input) - header.section().depth;
    if left >= SHORTEST_CRIPPLE {
        let count = cripples(header_length, input.wall.spacing);
        cuts.push(CutPiece { count, piece: CutKind::CrippleAbove, length: left });
    }
    cuts
}

/// Shorter pieces split when they are nailed (common practice): the gap is packed flat instead.
const SHORTEST_CRIPPLE: Length = Length::from_inches(2.0);

/// One at each end and one at each layout mark between; where the marks fall depends on the wall's own layout, so
/// this is the most that there can be.
fn cripples(header_length: Length, spacing: Length) -> u32 {
    let between = (header_length / spacing).ceil();
    // The field's limits keep this under 40.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a small positive whole number")]
    let between = between as u32;
    between + 1
}
