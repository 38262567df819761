//! A small drawing for each place, in the hand of the large ones.

use leptos::prelude::*;

use crate::place::Place;

/// Outlines that are cut through, and fine lines, on a field of 32 by 24.
const fn lines(place: Place) -> (&'static str, &'static str) {
    match place {
        // A house on its lot, with north.
        Place::Site => ("M6 9H20V20H6Z", "M2 22V4M2 22H24M27 20V5M23.5 9.5L27 4L30.5 9.5"),
        // A header on two jacks.
        Place::Members => ("M4 5H28V11H4Z", "M6 11V22M9 11V22M23 11V22M26 11V22M2 22H30"),
        // A framed wall with its brace.
        Place::Bracing => ("M4 4H28V20H4Z", "M12 4V20M20 4V20M4 20L28 4M2 22.5H30"),
        // Studs seen in plan on a plate.
        Place::Layout => ("M4 7H10V17H4ZM22 7H28V17H22Z", "M4 7L10 17M10 7L4 17M22 7L28 17M28 7L22 17M1 7H31M1 17H31"),
        // Lumber ends, stacked.
        Place::Takeoff => (
            "M3 14H13V21H3ZM19 14H29V21H19ZM11 5H21V12H11Z",
            "M3 14L13 21M13 14L3 21M19 14L29 21M29 14L19 21M11 5L21 12M21 5L11 12",
        ),
        // A plumb bob beside a stud.
        Place::Inspection => ("M18 10H26L22 22Z", "M22 2V10M15 2H29M6 2V22M11 2V22"),
    }
}

/// The drawing of a place.
#[component]
pub fn PlaceDrawing(
    /// The place.
    place: Place,
) -> impl IntoView {
    let (cut, fine) = lines(place);
    view! {
        <svg class="place-drawing" viewBox="0 0 32 24" aria-hidden="true">
            <path class="fine-line" d=fine />
            <path class="cut-line" d=cut />
        </svg>
    }
}
