//! A sheet that slides up: a plain dialog, closed by its key, by Escape or by the phone's back key.

use leptos::html::Dialog;
use leptos::prelude::*;

/// The dialog. The browser keeps the focus inside it and gives it back afterwards.
#[component]
pub fn SlideUp(
    /// Whether it is up.
    shown: Memo<bool>,
    /// Takes it down.
    close: Callback<()>,
    /// Its heading.
    heading: &'static str,
    /// What is on it; made anew each time it slides up.
    children: ChildrenFn,
) -> impl IntoView {
    let dialog = NodeRef::<Dialog>::new();
    Effect::new(move |_| {
        if let Some(dialog) = dialog.get() {
            if shown.get() && !dialog.open() {
                let _ = dialog.show_modal();
            } else if !shown.get() && dialog.open() {
                dialog.close();
            }
        }
    });
    view! {
        <dialog
            class="slide-up"
            node_ref=dialog
            aria-label=heading
            on:cancel=move |event: web_sys::Event| {
                event.prevent_default();
                close.run(());
            }
        >
            <Show when=move || shown.get()>
                <div class="slide-up-page">
                    <h2 class="slide-up-heading" tabindex="-1" autofocus=true>{heading}</h2>
                    <div class="slide-up-body" role="region" aria-label=heading tabindex="0">{children()}</div>
                    <button type="button" class="key close" on:click=move |_| close.run(())>"Close"</button>
                </div>
            </Show>
        </dialog>
    }
}
