//! Lines drawn with a finger: on a photo, or as a signature.

use job::walk::Stroke;
use leptos::html::Div;
use leptos::prelude::*;

/// Points closer than this to the one before add nothing, ten-thousandths.
const STEP: u16 = 40;
const FULL: f64 = 10_000.0;

/// The lines as a drawing over whatever lies below.
pub fn drawn(strokes: &[Stroke]) -> String {
    view::record::strokes(strokes).into_string()
}

/// Where a finger is on an element, in ten-thousandths.
fn at(element: &web_sys::Element, event: &web_sys::PointerEvent) -> (u16, u16) {
    let room = element.get_bounding_client_rect();
    let share = |from: f64, start: f64, length: f64| ((from - start) / length.max(1.0) * FULL).clamp(0.0, FULL) as u16;
    (
        share(f64::from(event.client_x()), room.left(), room.width()),
        share(f64::from(event.client_y()), room.top(), room.height()),
    )
}

/// A field to draw on, over its children.
#[component]
pub fn Ink(
    /// The lines.
    strokes: RwSignal<Vec<Stroke>>,
    /// What it is to those who do not see it.
    label: &'static str,
    /// What lies below the lines.
    children: Children,
) -> impl IntoView {
    let room = NodeRef::<Div>::new();
    let down = StoredValue::new(false);
    let lines = Signal::derive(move || strokes.with(|strokes| drawn(strokes)));
    let begin = move |event: web_sys::PointerEvent| {
        if let Some(room) = room.get_untracked() {
            let _ = room.set_pointer_capture(event.pointer_id());
            down.set_value(true);
            strokes.update(|strokes| strokes.push(vec![at(&room, &event)]));
        }
    };
    let follow = move |event: web_sys::PointerEvent| {
        let Some(room) = room.get_untracked().filter(|_| down.get_value()) else { return };
        let point = at(&room, &event);
        let far = strokes.with_untracked(|strokes| {
            let last = strokes.last().and_then(|stroke| stroke.last());
            last.is_none_or(|last| last.0.abs_diff(point.0).max(last.1.abs_diff(point.1)) >= STEP)
        });
        if far {
            strokes.update(|strokes| {
                if let Some(stroke) = strokes.last_mut() {
                    stroke.push(point);
                }
            });
        }
    };
    view! {
        <div
            class="ink-field"
            node_ref=room
            role="img"
            aria-label=label
            on:pointerdown=begin
            on:pointermove=follow
            on:pointerup=move |_| down.set_value(false)
            on:pointercancel=move |_| down.set_value(false)
        >
            {children()}
            <div class="ink-lines" inner_html=lines></div>
        </div>
    }
}
