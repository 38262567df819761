//! The end of the record: the closing words that the signer chose, and the signature.

use job::walk::{Entry, Signature, Walk};
use maud::{Markup, html};

use super::super::words::{closing_words, sentence, when_and_who};
use super::strokes::drawing;
use super::{crossed, struck_why};

pub(super) fn signatures(walk: &Walk) -> Markup {
    html! {
        section.signatures {
            h2 { "Signature" }
            @if !walk.is_signed() {
                p { "This record is not signed." }
                div.signature-space { p { "Name and title" } p { "Signature" } p { "Date" } p { "Seal" } }
            }
            @for entry in &walk.signatures { (signature(entry)) }
        }
    }
}

fn signature(entry: &Entry<Signature>) -> Markup {
    let (signed, struck) = (&entry.what, entry.struck.is_some());
    html! {
        div class={ "signature" @if struck { " struck" } } {
            @if !signed.closing.trim().is_empty() {
                p.closing-words {
                    (crossed(struck, &format!("Closing words, chosen by the signer: {}", words(signed))))
                }
            }
            @if signed.strokes.is_empty() {
                p.note { "Signed by name, without a drawn signature." }
            } @else {
                (drawing("drawn-signature", &signed.strokes, &format!("Signature of {}", signed.name)))
            }
            p { (crossed(struck, &signed.name)) @if !signed.title.trim().is_empty() { ", " (signed.title) } }
            p.note { (when_and_who(&entry.at, &entry.by)) }
            (struck_why(entry.struck.as_ref()))
        }
    }
}

fn words(signed: &Signature) -> String {
    sentence(closing_words(&signed.closing))
}
