//! A line of one's own words, with its label.

use leptos::prelude::*;

/// The line.
#[component]
pub fn Line(
    /// Its id on the page.
    id: &'static str,
    /// Its label.
    label: &'static str,
    /// What stands in it.
    #[prop(into)]
    words: Signal<String>,
    /// Takes what is typed.
    write: Callback<String>,
) -> impl IntoView {
    view! {
        <label class="name" for=id>{label}</label>
        <input
            id=id
            class="name-line"
            type="text"
            autocomplete="off"
            enterkeyhint="done"
            prop:value=move || words.get()
            on:input:target=move |event| write.run(event.target().value())
        />
    }
}

/// Writes what is typed where it is kept.
pub fn into(words: RwSignal<String>) -> Callback<String> {
    Callback::new(move |typed| words.set(typed))
}
