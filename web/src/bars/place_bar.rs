//! The six places, in reach of the thumb.

use leptos::prelude::*;

use super::place_drawing::PlaceDrawing;
use crate::place::Place;
use crate::route::{Route, Spot};

/// The bar at the bottom.
#[component]
pub fn PlaceBar() -> impl IntoView {
    let route = expect_context::<Route>();
    let link = move |place: Place| {
        let here = move || route.spot().place == place;
        view! {
            <a
                class="place"
                class:here=here
                href=Spot { place, sheet: None }.address()
                aria-current=move || here().then_some("page")
                on:click=move |event| {
                    event.prevent_default();
                    route.go(place);
                }
            >
                <PlaceDrawing place />
                <span>{place.word()}</span>
            </a>
        }
    };
    view! { <nav class="place-bar" aria-label="Places">{Place::ALL.map(link).into_iter().collect_view()}</nav> }
}
