//! The app opens in a browser: its answer is on the page, the opening picture is gone, and the page says that it is
//! ready.
#![cfg(target_arch = "wasm32")]
#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

async fn pause() {
    let wait = js_sys::Promise::new(&mut |done, _| {
        let window = web_sys::window().unwrap();
        window.set_timeout_with_callback_and_timeout_and_arguments_0(&done, 50).unwrap();
    });
    JsFuture::from(wait).await.unwrap();
}

#[wasm_bindgen_test]
async fn the_first_answer_is_shown_and_the_page_says_it_is_ready() {
    let page = web_sys::window().unwrap().document().unwrap();
    let shell = page.create_element("div").unwrap();
    shell.set_id("app-shell");
    page.body().unwrap().append_child(&shell).unwrap();
    web::start();
    let root: web_sys::HtmlElement = page.document_element().unwrap().dyn_into().unwrap();
    for _ in 0..200 {
        if root.dataset().get("ready").as_deref() == Some("true") {
            break;
        }
        pause().await;
    }
    assert_eq!(root.dataset().get("ready").as_deref(), Some("true"));
    assert!(page.get_element_by_id("app-shell").is_none());
    let figure = page.query_selector(".answer-figure").unwrap().unwrap();
    assert!(figure.text_content().unwrap().chars().any(|letter| letter.is_ascii_digit()));
}
