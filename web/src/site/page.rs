//! What every check of the job starts from.

use framing::HeaderCase;
use leptos::prelude::*;
use view::model::FieldId;

use super::look_choice::LookChoice;
use crate::browser;
use crate::desk::{Desk, HEADER_GROUPS, header_pad, kept_with_job};
use crate::fields::{Hand, Inputs, Pad};
use crate::laid::Laid;

/// The input that comes to hand first here.
const FIRST: FieldId = "wind_speed";

/// The place.
#[component]
pub fn Site() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let hand = RwSignal::new(FIRST);
    let screen = Memo::new(move |_| desk.site.with(|site| view::header::screen(site, &HeaderCase::default(), None)));
    let pad = Pad {
        belongs: |field| kept_with_job(field.group),
        ..header_pad(
            screen,
            hand,
            Callback::new(move |field| hand.set(field)),
            Callback::new(move |field: FieldId| desk.site.with(|site| site.get(field).map(str::to_owned))),
            Callback::new(move |(field, text)| desk.write_site(field, text)),
        )
    };
    let laid = Laid::begin(3, browser::say_ready);
    let name = move || desk.keeper.job.with(|job| job.name.clone());
    view! {
        <div class="site" class:typing=pad.typing>
            <h1>"Site"</h1>
            <label class="name" for="job-name">"Job"</label>
            <input
                id="job-name"
                type="text"
                autocomplete="off"
                enterkeyhint="done"
                prop:value=name
                on:change:target=move |event| desk.keeper.rename_job(desk, event.target().value())
            />
            <p>"Every check of this job starts from these."</p>
            {laid.part(1, move || view! { <Hand pad /> }.into_any())}
            {laid.part(2, move || view! { <Inputs pad groups=HEADER_GROUPS open=true /> }.into_any())}
            {laid.part(3, || view! { <LookChoice /> }.into_any())}
        </div>
    }
}
