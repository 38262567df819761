//! A photo: taken with the phone's camera or chosen, downscaled, said what it shows, and added to the log.

use job::walk::Photo;
use js_sys::{Array, Uint8Array};
use leptos::html::Input;
use leptos::prelude::*;
use leptos::task::spawn_local;
use view::record::PHOTO_SHOWS;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, CanvasRenderingContext2d, HtmlCanvasElement, ImageBitmap};

use super::book::Book;
use super::line::{self, Line};
use crate::browser;
use crate::storage::PhotoBytes;

/// The longer side of a photo as it is kept, and of the small one, pixels.
const LONGEST: f64 = 1600.0;
const LONGEST_SMALL: f64 = 240.0;
/// How little of a picture is lost when it is written.
const QUALITY: f64 = 0.82;

/// A photo that is not in the log yet.
#[derive(Clone)]
struct Taken {
    bytes: PhotoBytes,
    width: u32,
    height: u32,
    address: String,
}

/// Writes a picture as a JPEG whose longer side has so many pixels at the most.
async fn written(picture: &ImageBitmap, longest: f64) -> Option<(Vec<u8>, u32, u32)> {
    let (width, height) = (f64::from(picture.width()), f64::from(picture.height()));
    let scale = (longest / width.max(height)).min(1.0);
    let (width, height) = ((width * scale).round().max(1.0), (height * scale).round().max(1.0));
    let canvas: HtmlCanvasElement = browser::document()?.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width as u32);
    canvas.set_height(height as u32);
    let pen: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    pen.draw_image_with_image_bitmap_and_dw_and_dh(picture, 0.0, 0.0, width, height).ok()?;
    let promise = js_sys::Promise::new(&mut |resolve, _| {
        let _ = canvas.to_blob_with_type_and_encoder_options(&resolve, "image/jpeg", &JsValue::from_f64(QUALITY));
    });
    let blob: Blob = JsFuture::from(promise).await.ok()?.dyn_into().ok()?;
    Some((bytes_of(&blob).await?, width as u32, height as u32))
}

/// The bytes of a file.
pub async fn bytes_of(blob: &Blob) -> Option<Vec<u8>> {
    let buffer = JsFuture::from(blob.array_buffer()).await.ok()?;
    Some(Uint8Array::new(&buffer).to_vec())
}

/// An address under which the page shows bytes, until it is let go.
pub fn address_of(bytes: &[u8], kind: &str) -> Option<String> {
    address_of_array(&Uint8Array::from(bytes), kind)
}

/// The same for bytes that the browser holds.
pub fn address_of_array(bytes: &Uint8Array, kind: &str) -> Option<String> {
    let options = web_sys::BlobPropertyBag::new();
    options.set_type(kind);
    let parts = Array::of1(bytes);
    let blob = Blob::new_with_u8_array_sequence_and_options(&parts, &options).ok()?;
    web_sys::Url::create_object_url_with_blob(&blob).ok()
}

async fn take(file: &Blob) -> Option<Taken> {
    let promise = browser::window()?.create_image_bitmap_with_blob(file).ok()?;
    let picture: ImageBitmap = JsFuture::from(promise).await.ok()?.dyn_into().ok()?;
    let (photo, width, height) = written(&picture, LONGEST).await?;
    let (thumb, _, _) = written(&picture, LONGEST_SMALL).await?;
    picture.close();
    let address = address_of(&thumb, "image/jpeg")?;
    Some(Taken { bytes: PhotoBytes { photo, thumb }, width, height, address })
}

/// A key that takes a photo of a look or of a mark.
#[component]
pub fn Camera(
    /// The id of what it is of.
    of: String,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let taken = RwSignal::new(None::<Taken>);
    let line = NodeRef::<Input>::new();
    let of = StoredValue::new(of);
    let chosen = move |event: leptos::ev::Event| {
        let input = event_target::<web_sys::HtmlInputElement>(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
        spawn_local(async move {
            match take(&file).await {
                Some(photo) => taken.set(Some(photo)),
                None => book.notices.say(
                    "This phone cannot read that file as a photo. Take one with the camera, or choose a JPEG."
                        .to_owned(),
                ),
            }
            // The same file may be chosen once more.
            input.set_value("");
        });
    };
    let open = move |_| {
        if let Some(line) = line.get_untracked() {
            line.click();
        }
    };
    view! {
        <input class="said" node_ref=line type="file" accept="image/*" capture="environment" tabindex="-1" aria-hidden="true" on:change=chosen />
        <button type="button" class="key" on:click=open>"Photo"</button>
        {move || taken.get().map(|photo| view! { <NewPhoto of photo taken /> })}
    }
}

/// What a new photo shows, said before it is kept.
#[component]
fn NewPhoto(of: StoredValue<String>, photo: Taken, taken: RwSignal<Option<Taken>>) -> impl IntoView {
    let book = expect_context::<Book>();
    let shows = RwSignal::new(PHOTO_SHOWS[0].0);
    let (tape, caption) = (RwSignal::new(false), RwSignal::new(String::new()));
    let address = photo.address.clone();
    let card = move |(name, words): (&'static str, &'static str)| {
        view! {
            <label class="option">
                <input type="radio" name="photo-shows" prop:checked=move || shows.get() == name on:change=move |_| shows.set(name) />
                <span>{words}</span>
            </label>
        }
    };
    let keep = move |_| {
        let note = Photo {
            of: of.get_value(),
            photo: browser::new_id(),
            width: photo.width,
            height: photo.height,
            shows: shows.get_untracked().to_owned(),
            tape_in_view: tape.get_untracked(),
            caption: caption.get_untracked().trim().to_owned(),
        };
        book.add_photo(note, photo.bytes.clone(), move |_| taken.set(None));
    };
    view! {
        <section class="new-photo" aria-label="New photo">
            <img src=address alt="The photo that was taken" />
            <div class="options" role="radiogroup" aria-label="What it shows">{PHOTO_SHOWS.map(card).into_iter().collect_view()}</div>
            <label class="option">
                <input type="checkbox" prop:checked=move || tape.get() on:change=move |_| tape.update(|tape| *tape = !*tape) />
                <span>"A tape or rule is in view"</span>
            </label>
            <Line id="photo-caption" label="Caption" words=caption write=line::into(caption) />
            <div class="keys-row">
                <button type="button" class="key" on:click=move |_| taken.set(None)>"Leave it"</button>
                <button type="button" class="key save" on:click=keep>"Keep photo"</button>
            </div>
        </section>
    }
}
