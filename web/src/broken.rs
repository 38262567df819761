//! What is shown when the program itself breaks.

use web_sys::Element;

use crate::browser;
use crate::storage::settings;

/// From now on a break is written to the console and shown in plain words. The instance is dead afterwards: nothing of
/// it may run again, so the way on is a link that loads the page anew.
pub fn catch() {
    std::panic::set_hook(Box::new(|info| {
        console_error_panic_hook::hook(info);
        settings::keep_broke(true);
        let _ = show();
    }));
}

fn child(parent: &Element, tag: &str, words: &str) -> Option<Element> {
    let element = browser::document()?.create_element(tag).ok()?;
    element.set_text_content(Some(words));
    parent.append_child(&element).ok()?;
    Some(element)
}

fn show() -> Option<()> {
    let page = browser::document()?;
    let body: Element = page.body()?.into();
    body.set_text_content(None);
    let main = page.create_element("main").ok()?;
    main.set_class_name("broke");
    main.set_attribute("role", "alert").ok()?;
    child(&main, "h1", "Something broke.")?;
    child(&main, "p", "Your work is kept.")?;
    let link = child(&main, "a", "Reload")?;
    // An address that differs before the # is loaded anew; one that differs after it is not.
    let path = browser::window()?.location().pathname().ok()?;
    link.set_attribute("href", &format!("{path}?again={}", js_sys::Date::now())).ok()?;
    body.append_child(&main).ok()?;
    Some(())
}
