//! The page's side of the service worker: registered in release builds, its new versions offered, never forced.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    RegistrationOptions, ServiceWorker, ServiceWorkerContainer, ServiceWorkerRegistration, ServiceWorkerState,
    ServiceWorkerUpdateViaCache,
};

use crate::browser;

/// What the worker is told when its version is taken up.
const TAKE_OVER: &str = "take-over";
/// Looks at whether the typing is put away, and milliseconds between them, before the page is left regardless.
const LOOKS: u32 = 40;
const BETWEEN_LOOKS: i32 = 50;

thread_local! {
    /// The sign that a new version waits, and the work that is put away before the page is left.
    static PAGE: std::cell::Cell<Option<(RwSignal<bool>, Work)>> = const { std::cell::Cell::new(None) };
}

/// What is being typed, to be put away before the page is left.
#[derive(Clone, Copy)]
pub struct Work {
    /// Whether it is put away.
    pub is_put_away: Signal<bool>,
    /// Puts it away.
    pub put_away: Callback<()>,
}

/// Whether a new version waits: given to every component as a context.
#[derive(Clone, Copy)]
pub struct Worker {
    waits: RwSignal<bool>,
    put_off: RwSignal<bool>,
    work: Work,
}

/// Missing in old browsers, in some private windows and outside secure pages.
fn container() -> Option<ServiceWorkerContainer> {
    let navigator = browser::window()?.navigator();
    js_sys::Reflect::get(&navigator, &"serviceWorker".into()).ok()?.dyn_into().ok()
}

impl Worker {
    /// Gives the worker's sign to every component.
    pub fn provide(work: Work) {
        let worker = Self { waits: RwSignal::new(false), put_off: RwSignal::new(false), work };
        PAGE.set(Some((worker.waits, work)));
        provide_context(worker);
    }

    /// Whether a new version is to be offered now.
    pub fn offers(self) -> bool {
        self.waits.get() && !self.put_off.get()
    }

    /// Not now; it is offered again the next time the page opens.
    pub fn later(self) {
        self.put_off.set(true);
    }

    /// Puts the typing away, then lets the new version take over; the page is loaded anew when it has.
    pub fn take_up(self) {
        once_put_away(self.work, || {
            spawn_local(async {
                if let Some(waiting) = registration().await.and_then(|registration| registration.waiting()) {
                    let _ = waiting.post_message(&JsValue::from_str(TAKE_OVER));
                }
            });
        });
    }
}

/// Goes on when the typing is put away. A phone that does not answer holds nothing up for ever.
pub fn once_put_away(work: Work, go_on: impl FnOnce() + 'static) {
    look_again(work, LOOKS, go_on);
}

fn look_again(work: Work, looks: u32, go_on: impl FnOnce() + 'static) {
    if work.is_put_away.get_untracked() || looks == 0 {
        go_on();
    } else {
        work.put_away.run(());
        browser::after(BETWEEN_LOOKS, move || look_again(work, looks - 1, go_on));
    }
}

async fn registration() -> Option<ServiceWorkerRegistration> {
    JsFuture::from(container()?.get_registration()).await.ok()?.dyn_into().ok()
}

fn say_waiting() {
    if let Some((waits, _)) = PAGE.get() {
        waits.set(true);
    }
}

/// Watches a worker that is being installed until it is ready beside one that already serves this page.
fn watch(worker: &ServiceWorker) {
    let seen = worker.clone();
    browser::listen(worker, "statechange", move |_| {
        let served = container().is_some_and(|container| container.controller().is_some());
        if seen.state() == ServiceWorkerState::Installed && served {
            say_waiting();
        }
    });
}

/// Registers the worker, once the first answer is on the screen. In a debug build it would serve stale files.
pub fn register() {
    if cfg!(debug_assertions) {
        return;
    }
    let Some(container) = container() else { return };
    reload_on_change(&container);
    spawn_local(async move {
        let options = RegistrationOptions::new();
        options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
        let asked = JsFuture::from(container.register_with_options("sw.js", &options)).await;
        let Some(registration) = asked.ok().and_then(|found| found.dyn_into::<ServiceWorkerRegistration>().ok()) else {
            return;
        };
        if registration.waiting().is_some() {
            say_waiting();
        }
        if let Some(worker) = registration.installing() {
            watch(&worker);
        }
        let found = registration.clone();
        browser::listen(&registration, "updatefound", move |_| {
            if let Some(worker) = found.installing() {
                watch(&worker);
            }
        });
        look_for_updates(registration);
    });
}

/// An installed app can stay open for days.
fn look_for_updates(registration: ServiceWorkerRegistration) {
    browser::on_document("visibilitychange", move |_| {
        if browser::is_visible()
            && let Ok(asked) = registration.update()
        {
            // Without a signal it fails, and is tried again the next time.
            spawn_local(async move {
                let _ = JsFuture::from(asked).await;
            });
        }
    });
}

/// A page that began without a worker is greeted by its first one: that is no reason to load it anew.
fn reload_on_change(container: &ServiceWorkerContainer) {
    let mut greeted = container.controller().is_some();
    browser::listen(container, "controllerchange", move |_| {
        match PAGE.get() {
            Some((_, work)) if greeted => once_put_away(work, browser::reload),
            _ => (),
        }
        greeted = true;
    });
}
