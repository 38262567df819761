//! The walk at a glance.

use maud::{Markup, html};

use super::super::overview::Overview;
use super::super::point::PointRow;
use super::super::words::{counted, sentence};
use crate::markup::{beam, state_class};

pub(super) fn summary(overview: &Overview) -> Markup {
    html! {
        section.summary {
            h2 { "Summary" }
            p class={ "summary-figure " (state_class(overview.state)) } {
                (beam(overview.state))
                strong { (overview.figure) }
            }
            p { (sentence(&overview.share_text)) }
            @if overview.mended > 0 {
                p { (counted(overview.mended, "was", "were")) " out, mended, and found right when looked at again." }
            }
            table.counts {
                thead { tr {
                    th scope="col" { "Mark" }
                    th scope="col" { "Looked at" }
                    th scope="col" { "To mend" }
                    th scope="col" { "Not seen" }
                    th scope="col" { "For others to decide" }
                } }
                tbody {
                    @for mark in &overview.marks {
                        tr {
                            th scope="row" { (mark.name) }
                            td { (mark.looked_at) }
                            td { (mark.to_mend) }
                            td { (mark.not_seen) }
                            td { (mark.left_to_others) }
                        }
                    }
                }
            }
            @if overview.to_mend.is_empty() {
                p { "Nothing that was looked at is to be mended." }
            } @else {
                h3 { "To be mended" }
                (items(&overview.to_mend))
            }
        }
    }
}

/// Things that were looked at, one a line, with how far each has come.
pub(super) fn items(rows: &[PointRow]) -> Markup {
    html! {
        ol.items {
            @for row in rows {
                li {
                    strong { (row.name()) } ": " (row.verdict) ". " (sentence(&row.says))
                    @if !row.severity_words.is_empty() { " " (sentence(&row.severity_words)) }
                    @if let Some(stage) = row.stage { " Stage: " (stage.word()) "." }
                }
            }
        }
    }
}
