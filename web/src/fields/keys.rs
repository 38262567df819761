//! The carpenter's keys: what a phone's digit keys lack, and the fractions at one tap.

use leptos::html::Input;
use leptos::prelude::*;
use view::model::FieldId;

use super::next_key::NextKey;
use super::pad::Pad;
use super::sixteenths::PER_INCH;

const SIGNS: [(&str, &str); 5] =
    [("'", "Feet mark"), ("\"", "Inch mark"), ("-", "Dash"), ("/", "Stroke"), (" ", "Space")];
const UPPER: [(i32, &str); 4] = [(2, "1/8"), (4, "1/4"), (6, "3/8"), (8, "1/2")];
const LOWER: [(i32, &str); 3] = [(10, "5/8"), (12, "3/4"), (14, "7/8")];

/// Puts a sign where the caret stands. A whole line that is selected is kept: none of these signs begins a length.
fn put(line: &web_sys::HtmlInputElement, sign: &str) -> Option<String> {
    let text = line.value();
    let length = text.encode_utf16().count() as u32;
    let (mut start, end) = (line.selection_start().ok()??, line.selection_end().ok()??);
    if start == 0 && end == length {
        start = end;
    }
    line.set_range_text_with_start_and_end(sign, start, end).ok()?;
    let caret = start + 1;
    line.set_selection_range(caret, caret).ok()?;
    Some(line.value())
}

/// The keys. They leave the line in focus, so that the phone's own keys stay up.
#[component]
pub fn Keys(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
    /// The line that is typed into.
    line: NodeRef<Input>,
    /// Whether the phone shows its letters.
    letters: RwSignal<bool>,
    /// The length that was understood.
    inches: Memo<Option<f64>>,
    /// Takes a new length, in sixteenths.
    set: Callback<i32>,
) -> impl IntoView {
    let sign = move |sign: &'static str| {
        if let Some(text) = line.get_untracked().and_then(|line| put(&line, sign)) {
            pad.write.run((id, Some(text)));
        }
    };
    let fraction = move |marks: i32| set.run(inches.get_untracked().unwrap_or(0.0).floor() as i32 * PER_INCH + marks);
    let pressed = Signal::derive(move || letters.get().to_string());
    let signs = SIGNS.map(|(mark, said)| {
        let shown = if mark == " " { "space" } else { mark };
        view! { <button type="button" class="key sign" aria-label=said on:click=move |_| sign(mark)>{shown}</button> }
    });
    let fractions = move |marks: &[(i32, &'static str)]| {
        let one = |(marks, words): (i32, &'static str)| {
            let face = view::markup::figure(words).into_string();
            view! { <button type="button" class="key" on:click=move |_| fraction(marks) inner_html=face></button> }
        };
        marks.iter().copied().map(one).collect_view()
    };
    view! {
        <div class="keys" on:pointerdown=|event| event.prevent_default() role="group" aria-label="Signs and fractions">
            {signs.into_iter().collect_view()}
            {fractions(&UPPER)}
            <button type="button" class="key" aria-pressed=pressed aria-label="Letters" on:click=move |_| letters.update(|on| *on = !*on)>
                "abc"
            </button>
            {fractions(&LOWER)}
            <button type="button" class="key" aria-label="Whole inches" on:click=move |_| fraction(0)>"whole"</button>
            <NextKey pad />
        </div>
    }
}
