//! Who gave the value in hand.

use maud::{Markup, html};

use super::Act;
use crate::record::when;
use crate::site::{GIVERS, Given};

/// The keys that say who gave the value in hand; nothing while nothing is typed.
#[must_use]
pub fn given(given: &Given) -> Markup {
    html! {
        @if given.asked {
            div.given role="group" aria-label="Given by" {
                p.note {
                    "Given by " (if given.by.is_empty() { "…" } else { &given.by })
                    @if !given.when.is_empty() { ", typed " (when(&given.when)) " by this phone's clock" }
                }
                div.given-keys {
                    @for (index, by) in GIVERS.iter().enumerate() {
                        button.plain
                            type="button"
                            aria-pressed=(if given.by == *by { "true" } else { "false" })
                            data-act=(Act::Ready(index))
                        { (by) }
                    }
                }
            }
        }
    }
}

/// The keys that add a layer to the input in hand.
#[must_use]
pub fn layer_keys(names: &[&str]) -> Markup {
    html! {
        div.given role="group" aria-label="Layers" {
            div.given-keys {
                @for (index, name) in names.iter().enumerate() {
                    button.plain type="button" data-act=(Act::Ready(index)) { "+ " (name) }
                }
            }
        }
    }
}

/// Values that are published for the input in hand: one tap writes one.
#[must_use]
pub fn value_keys(values: &[(String, String)]) -> Markup {
    html! {
        @if !values.is_empty() {
            div.given role="group" aria-label="Published values" {
                div.given-keys {
                    @for (of, value) in values {
                        button.plain type="button" data-act=(Act::Write(value)) { (of) ": " strong { (value) } }
                    }
                }
            }
        }
    }
}
