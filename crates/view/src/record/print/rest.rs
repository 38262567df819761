//! What is open, what could not be seen, what was assumed, and the usual cautions.

use framing::walk::words::WHO_DECIDES;
use job::walk::Walk;
use maud::{Markup, html};

use super::super::judged::{Judged, Judgements};
use super::super::overview::{Overview, standing};
use super::summary::items;

/// What is still to be mended, decided, or written down.
pub(super) fn open_items(overview: &Overview) -> Markup {
    let open = overview.to_mend.len() + overview.left_to_others.len() + overview.lacks.len();
    html! {
        section.open-items {
            h2 { "Open items" }
            @if open == 0 { p { "None." } }
            @if !overview.to_mend.is_empty() { h3 { "To be mended" } (items(&overview.to_mend)) }
            @if !overview.left_to_others.is_empty() { h3 { "For others to decide" } (items(&overview.left_to_others)) }
            @if !overview.lacks.is_empty() {
                h3 { "Not written down yet" }
                ul { @for lack in &overview.lacks { li { (lack.says) } } }
            }
        }
    }
}

/// What could not be seen: whole looks, then parts of looks that were seen otherwise.
pub(super) fn not_seen(walk: &Walk, judgements: &Judgements<'_>, overview: &Overview) -> Markup {
    let parts = parts_not_seen(walk, judgements);
    html! {
        section.not-seen {
            h2 { "What could not be seen" }
            @if overview.not_seen.is_empty() && parts.is_empty() {
                p { "Nothing is recorded as not seen. See also “Not visible or not reached” above." }
            }
            @if !overview.not_seen.is_empty() { (items(&overview.not_seen)) }
            @if !parts.is_empty() { ul { @for part in &parts { li { (part) } } } }
        }
    }
}

/// Parts that could not be seen at looks that are seen otherwise, each with its mark and place.
fn parts_not_seen(walk: &Walk, judgements: &Judgements<'_>) -> Vec<String> {
    let looks = standing(walk).flat_map(|mark| mark.points.iter().filter_map(move |point| Some((mark, point.now()?))));
    let parts = looks.flat_map(|(mark, look)| {
        let names = [mark.name(), look.what.place.trim()];
        let place = names.into_iter().filter(|part| !part.is_empty()).collect::<Vec<&str>>().join(", ");
        let parts = judgements.look(look).map_or(&[][..], |judged| &judged.reply.not_seen);
        parts.iter().map(move |part| format!("{place}: {part}"))
    });
    parts.collect()
}

/// What was assumed, each once, and the usual cautions.
pub(super) fn assumed_and_cautions(walk: &Walk, judgements: &Judgements<'_>) -> Markup {
    let (mut assumed, mut cautions) = (Vec::new(), vec![WHO_DECIDES.to_owned()]);
    let once = |list: &mut Vec<String>, says: &str| {
        if !list.iter().any(|known| known == says) {
            list.push(says.to_owned());
        }
    };
    for look in standing(walk).flat_map(|mark| mark.points.iter().filter_map(|point| point.now())) {
        let Some(Judged { reply, .. }) = judgements.look(look) else { continue };
        reply.assumed.iter().for_each(|assumption| once(&mut assumed, &assumption.says));
        reply.cautions.iter().for_each(|caution| once(&mut cautions, caution));
    }
    html! {
        section.assumed {
            h2 { "Assumed, and cautions" }
            @if !assumed.is_empty() {
                h3 { "Assumed where nothing was said" }
                ul { @for says in &assumed { li.assumption { (says) } } }
            }
            ul.cautions { @for says in &cautions { li { (says) } } }
        }
    }
}
