//! Photos with their captions, and the lines drawn on them. The photo itself stays as it was taken.

use job::walk::{Entry, Mark, Photo, Stroke};
use maud::{Markup, html};

use super::super::words::{kind_words, sentence, when_and_who};
use super::strokes::drawing;
use super::{Thumbs, crossed, struck_why};

type Taken = (Entry<Photo>, Vec<Stroke>);

/// The photos of a mark: its own first, then those of what was looked at there.
pub(super) fn photos(thumbs: Thumbs<'_>, mark: &Mark) -> Markup {
    let own = mark.photos.iter().map(|taken| (mark.name().to_owned(), taken));
    let of_points = mark.points.iter().flat_map(|point| {
        let look = point.now().or_else(|| point.first()).map(|look| &look.what);
        let parts =
            [mark.name(), look.map_or("", |look| kind_words(&look.kind)), look.map_or("", |look| look.place.trim())];
        let place = parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<&str>>().join(", ");
        point.photos.iter().map(move |taken| (place.clone(), taken))
    });
    let all: Vec<(String, &Taken)> = own.chain(of_points).collect();
    html! {
        @if !all.is_empty() {
            div.photos { @for (place, taken) in all { (photo(thumbs, &place, taken)) } }
        }
    }
}

fn photo(thumbs: Thumbs<'_>, place: &str, (entry, strokes): &Taken) -> Markup {
    let (photo, struck) = (&entry.what, entry.struck.is_some());
    html! {
        figure class={ "photo" @if struck { " struck" } } {
            @match thumbs(&photo.photo) {
                Some(address) => div.picture {
                    img src=(address) width=(photo.width) height=(photo.height) alt=(alt(place, photo));
                    @if !strokes.is_empty() { (drawing("drawn", strokes, "")) }
                },
                None => p { "The picture is not at hand on this phone." },
            }
            figcaption {
                @if !photo.caption.trim().is_empty() { p { (crossed(struck, &sentence(&photo.caption))) } }
                p.note { (place) ", " (shows(photo)) "." }
                p.note { (when_and_who(&entry.at, &entry.by)) }
                @if !strokes.is_empty() {
                    p.note { "The lines were drawn on it later; the photo is kept without them." }
                }
                (struck_why(entry.struck.as_ref()))
            }
        }
    }
}

/// What a photo shows, in words.
pub(in crate::record) fn shows(photo: &Photo) -> String {
    let view = match photo.shows.as_str() {
        "wide" => "wide view",
        "close" => "close view",
        "inside" => "from inside",
        "outside" => "from outside",
        other => other,
    };
    let tape = if photo.tape_in_view { "tape in view" } else { "no tape in view" };
    [view, tape].into_iter().filter(|part| !part.is_empty()).collect::<Vec<&str>>().join(", ")
}

fn alt(place: &str, photo: &Photo) -> String {
    let caption = photo.caption.trim();
    if caption.is_empty() { format!("Photo of {place}") } else { format!("Photo of {place}: {caption}") }
}
