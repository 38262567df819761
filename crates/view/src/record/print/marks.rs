//! A mark: what is required of it, and a table of everything that was looked at there.

use job::walk::{Entry, Mark, MarkVersion};
use maud::{Markup, html};

use super::super::judged::{Judgements, input_words};
use super::super::words::when_and_who;
use super::cover::changed;
use super::{Thumbs, crossed, looks, photos, struck_why};

/// The columns of the table.
const COLUMNS: [&str; 7] = ["What", "Place", "Required", "Found", "Verdict", "Margin", "Clause"];

pub(super) fn mark(thumbs: Thumbs<'_>, judgements: &Judgements<'_>, mark: &Mark) -> Markup {
    let struck = mark.is_struck();
    html! {
        section class={ "record-mark" @if struck { " struck" } } {
            h2 { (crossed(struck, &format!("Mark {}", mark.name()))) }
            @if struck { (struck_why(mark.versions.last().and_then(|version| version.struck.as_ref()))) }
            (required(mark))
            (versions(&mark.versions))
            @if mark.points.is_empty() {
                p { "Nothing was looked at here." }
            } @else {
                table.findings {
                    thead { tr { @for column in COLUMNS { th scope="col" { (column) } } } }
                    @for point in &mark.points { (looks::point(judgements, point)) }
                }
            }
            (photos::photos(thumbs, mark))
        }
    }
}

/// What was typed from the drawing, as it was typed.
fn required(mark: &Mark) -> Markup {
    let typed = mark.now().map(|version| &version.fields);
    let held = || typed.into_iter().flatten().filter(|(_, text)| !text.trim().is_empty());
    html! {
        @if held().next().is_some() {
            p.as-typed {
                "Typed for this mark: "
                @for (number, (name, text)) in held().enumerate() {
                    @if number > 0 { ", " }
                    (input_words(name)) " “" (text.trim()) "”"
                }
                "."
            }
        }
    }
}

fn versions(versions: &[Entry<MarkVersion>]) -> Markup {
    html! {
        @if versions.len() > 1 {
            ol.changes {
                @for (before, version) in versions.iter().zip(versions.iter().skip(1)) {
                    li {
                        p.note { "Mark changed, " (when_and_who(&version.at, &version.by)) }
                        @if before.what.name != version.what.name {
                            p.change { "name: “" (before.what.name) "” became “" (version.what.name) "”." }
                        }
                        (changed(&before.what.fields, &version.what.fields, version.struck.is_some()))
                        (struck_why(version.struck.as_ref()))
                    }
                }
            }
        }
    }
}
