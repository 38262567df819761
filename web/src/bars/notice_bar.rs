//! A sentence to be read, put away by a tap.

use leptos::prelude::*;

use super::notices::Notices;

/// The latest notice.
#[component]
pub fn NoticeBar() -> impl IntoView {
    let notices = expect_context::<Notices>();
    view! {
        <div role="status">
            {move || {
                notices
                    .latest()
                    .map(|notice| {
                        let offer = notice.offer.map(|(label, act)| {
                            view! {
                                <button type="button" class="plain" on:click=move |_| { notices.put_away(); act.run(()); }>
                                    {label}
                                </button>
                            }
                        });
                        view! {
                            <div class="notice">
                                <p>{notice.words}</p>
                                {offer}
                                <button type="button" class="plain" on:click=move |_| notices.put_away()>"OK"</button>
                            </div>
                        }
                    })
            }}
        </div>
    }
}
