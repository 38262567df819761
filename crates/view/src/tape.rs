//! The steel tape's blade: ivory, black figures, feet flagged, stud marks at 16 in and diamonds at 19.2 in.

use maud::{Markup, html};

/// Pixels of blade to an inch.
pub const PIXELS_PER_INCH: f64 = 48.0;

/// Inches that are drawn at a time; a new piece is drawn when the hairline has moved on by [`PIECE_STEP`].
const PIECE: i32 = 48;
const PIECE_STEP: i32 = 8;
/// Height of the blade, pixels.
const HEIGHT: i32 = 108;

/// The first inch of the piece that is drawn while `inches` is under the hairline.
#[must_use]
pub fn piece_start(inches: f64) -> i32 {
    ((inches / f64::from(PIECE_STEP)).floor() as i32) * PIECE_STEP - (PIECE - PIECE_STEP) / 2
}

fn x(inches: f64) -> f64 {
    inches * PIXELS_PER_INCH
}

/// Length of a mark, pixels, by its sixteenth.
const fn mark_length(sixteenth: i32) -> i32 {
    match sixteenth.rem_euclid(16) {
        0 => 58,
        8 => 40,
        4 | 12 => 31,
        2 | 6 | 10 | 14 => 23,
        _ => 14,
    }
}

fn marks(from: i32, to: i32, heavy: bool) -> String {
    let wanted = (from * 16..=to * 16).filter(|mark| (mark.rem_euclid(4) == 0) == heavy);
    wanted.map(|mark| format!("M{} 0V{}", x(f64::from(mark) / 16.0), mark_length(mark))).collect()
}

fn diamonds(from: i32, to: i32) -> String {
    let first = (f64::from(from) / 19.2).ceil() as i32;
    let last = (f64::from(to) / 19.2).floor() as i32;
    (first..=last)
        .filter(|number| *number > 0)
        .map(|number| format!("M{} 88l7 9l-7 9l-7 -9z", x(f64::from(number) * 19.2)))
        .collect()
}

/// The figure of an inch stands left of its mark; at a stud mark it stands on black.
fn figure(inch: i32) -> Markup {
    let at = x(f64::from(inch));
    html! {
        g class={ @if inch % 16 == 0 { "stud " } @if inch >= 100 { "hundreds" } } {
            @if inch % 16 == 0 { path.stud-mark d=(format!("M{} 60h-42v27h42z", at - 3.0)) {} }
            text.inch x=(at - 6.0) y="82" { (inch) }
            @if inch % 12 == 0 {
                path.foot-flag d=(format!("M{at} 84h40v24h-40z")) {}
                text.foot x=(at + 6.0) y="103" { (inch / 12) "'" }
            }
        }
    }
}

/// One piece of the blade that begins at the inch `start`, on a tape from `ends.0` to `ends.1` inches.
#[must_use]
pub fn blade(start: i32, ends: (f64, f64)) -> Markup {
    let from = start.max(ends.0.floor() as i32).max(0);
    let to = (start + PIECE).min(ends.1.ceil() as i32);
    html! {
        rect.ivory x=(x(f64::from(from))) y="0" width=(x(f64::from((to - from).max(0)))) height=(HEIGHT) {}
        path.fine-marks d=(marks(from, to, false)) {}
        path.heavy-marks d=(marks(from, to, true)) {}
        path.diamonds d=(diamonds(from, to)) {}
        @for inch in from.max(1)..=to { (figure(inch)) }
    }
}

#[cfg(test)]
mod tests {
    use super::{blade, piece_start};

    #[test]
    fn a_piece_reaches_beyond_the_hairline_on_both_sides() {
        for inches in [0.0, 7.99, 8.0, 72.5, 287.9] {
            let start = f64::from(piece_start(inches));
            assert!(start + 12.0 <= inches && inches <= start + 36.0, "{inches}");
        }
    }

    #[test]
    fn stud_marks_feet_and_ends_stand_where_a_tape_has_them() {
        let piece = blade(0, (12.0, 40.0)).into_string();
        assert_eq!(piece.matches("stud-mark").count(), 2, "16 and 32");
        assert_eq!(piece.matches("foot-flag").count(), 3, "12, 24 and 36");
        assert!(!piece.contains(">11<") && piece.contains(">40<") && !piece.contains(">41<"));
    }
}
