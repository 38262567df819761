//! The six places, in reach of the thumb.

use leptos::prelude::*;

use super::place_drawing::PlaceDrawing;
use crate::place::Place;

/// The bar at the bottom.
#[component]
pub fn PlaceBar(
    /// Where one is.
    here: Signal<Place>,
    /// Goes to a place.
    go: Callback<Place>,
) -> impl IntoView {
    let link = move |place: Place| {
        let here = move || here.get() == place;
        view! {
            <a
                class="place"
                class:here=here
                href=place.full_address()
                aria-current=move || here().then_some("page")
                on:click=move |event| {
                    event.prevent_default();
                    go.run(place);
                }
            >
                <PlaceDrawing place />
                <span>{place.word()}</span>
            </a>
        }
    };
    view! { <nav class="place-bar" aria-label="Places">{Place::ALL.map(link).into_iter().collect_view()}</nav> }
}
