//! The blade: ivory, black figures, feet flagged, stud marks at 16 in and diamonds at 19.2 in.

use leptos::prelude::*;

use super::tape_drag::PIXELS_PER_INCH;

/// Inches that are drawn at a time; a new piece is drawn when the hairline has moved on by [`PIECE_STEP`].
const PIECE: i32 = 48;
const PIECE_STEP: i32 = 8;
/// Height of the blade, pixels.
pub const HEIGHT: i32 = 108;

/// The first inch of the piece that is drawn while `inches` is under the hairline.
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
fn figure(inch: i32) -> AnyView {
    let at = x(f64::from(inch));
    let stud = inch % 16 == 0;
    let foot = inch % 12 == 0;
    let hundreds = inch >= 100;
    view! {
        <g class:stud=stud class:hundreds=hundreds>
            {stud.then(|| view! { <path class="stud-mark" d=format!("M{} 60h-42v27h42z", at - 3.0) /> })}
            <text class="inch" x=at - 6.0 y="82">{inch}</text>
            {foot.then(|| view! {
                <path class="foot-flag" d=format!("M{at} 84h40v24h-40z") />
                <text class="foot" x=at + 6.0 y="103">{format!("{}'", inch / 12)}</text>
            })}
        </g>
    }
    .into_any()
}

/// One piece of the blade, from the tape's first inch to its last.
#[component]
pub fn TapeBlade(
    /// First inch of the piece.
    start: Memo<i32>,
    /// Ends of the blade, inches.
    ends: (f64, f64),
) -> impl IntoView {
    let from = move || start.get().max(ends.0.floor() as i32).max(0);
    let to = move || (start.get() + PIECE).min(ends.1.ceil() as i32);
    view! {
        <rect class="ivory" x=move || x(f64::from(from())) y="0" width=move || x(f64::from((to() - from()).max(0))) height=HEIGHT />
        <path class="fine-marks" d=move || marks(from(), to(), false) />
        <path class="heavy-marks" d=move || marks(from(), to(), true) />
        <path class="diamonds" d=move || diamonds(from(), to()) />
        {move || (from().max(1)..=to()).map(figure).collect_view()}
    }
}
