//! The steel tape: drag it to the mark under the hairline.

use leptos::html::Div;
use leptos::prelude::*;

use super::sixteenths;
use super::tape_drag::Drag;
use view::tape::{PIXELS_PER_INCH, blade, piece_start};

/// So many sixteenths a key moves the tape, for those who use keys.
fn key_step(key: &str) -> Option<i32> {
    match key {
        "ArrowRight" | "ArrowUp" => Some(1),
        "ArrowLeft" | "ArrowDown" => Some(-1),
        "PageUp" => Some(16),
        "PageDown" => Some(-16),
        "Home" => Some(i32::MIN / 2),
        "End" => Some(i32::MAX / 2),
        _ => None,
    }
}

/// A tape, and a slider to those who do not see it.
#[component]
pub fn Tape(
    /// The length in use.
    inches: Memo<Option<f64>>,
    /// Ends of the tape, inches.
    ends: (f64, f64),
    /// Takes a new length, in sixteenths.
    set: Callback<i32>,
    /// What is measured.
    label: &'static str,
) -> impl IntoView {
    let room = NodeRef::<Div>::new();
    let drag = RwSignal::new(None::<Drag>);
    let under = move || drag.get().map(|drag| drag.inches).or_else(|| inches.get()).unwrap_or(ends.0);
    let mark = Memo::new(move |_| sixteenths::within(sixteenths::nearest(under()), ends));
    let start = Memo::new(move |_| piece_start(under()));
    let drawn = Signal::derive(move || blade(start.get(), ends).into_string());
    let shift = Signal::derive(move || format!("translate({:.2} 0)", -under() * PIXELS_PER_INCH));
    let said =
        Signal::derive(
            move || if inches.get().is_some() { sixteenths::spoken(mark.get()) } else { "not said".to_owned() },
        );
    let now = Signal::derive(move || sixteenths::inches(mark.get()).to_string());
    let held = Signal::derive(move || drag.with(Option::is_some));
    let send = move |marks: i32| {
        let marks = sixteenths::within(marks, ends);
        if inches.get_untracked() != Some(sixteenths::inches(marks)) {
            set.run(marks);
        }
    };
    let follow = move |event: web_sys::PointerEvent| {
        if let Some(now) = drag.get_untracked() {
            let now = now.moved(f64::from(event.client_x()), event.time_stamp(), ends);
            drag.set(Some(now));
            send(sixteenths::nearest(now.inches));
        }
    };
    view! {
        <div
            class="tape"
            class:held=held
            node_ref=room
            role="slider"
            tabindex="0"
            aria-label=format!("{label}, tape")
            aria-valuemin=ends.0
            aria-valuemax=ends.1
            aria-valuenow=now
            aria-valuetext=said
            on:pointerdown=move |event| {
                if let Some(room) = room.get_untracked() {
                    let _ = room.set_pointer_capture(event.pointer_id());
                }
                drag.set(Some(Drag::begin(untrack(under), f64::from(event.client_x()), event.time_stamp())));
            }
            on:pointermove=follow
            on:pointerup=move |_| drag.set(None)
            on:pointercancel=move |_| drag.set(None)
            on:keydown=move |event| {
                if let Some(step) = key_step(&event.key()) {
                    event.prevent_default();
                    send(mark.get_untracked().saturating_add(step));
                }
            }
        >
            <svg class="blade" aria-hidden="true" focusable="false">
                <g transform=shift inner_html=drawn></g>
            </svg>
            <svg class="hairline" viewBox="0 0 24 108" aria-hidden="true">
                <path d="M12 0V108" />
                <path class="carrier" d="M3 0H21L12 11Z" />
            </svg>
        </div>
    }
}
