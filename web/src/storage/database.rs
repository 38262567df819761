//! Opening the one database.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use idb::{Database, DatabaseEvent, Factory, ObjectStoreParams, Transaction, TransactionMode, TransactionResult};
use js_sys::{Array, Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::StoreError;
use crate::browser;

const NAME: &str = "galeframe";
/// 1: parts, journal, broken. 2: the walk's log, its drafts and its photos.
const VERSION: u32 = 2;
/// Longest wait for the database to open, milliseconds.
const PATIENCE: i32 = 4000;

/// The store of a job's parts.
pub const PARTS: &str = "parts";
/// The store of what is being typed.
pub const JOURNAL: &str = "journal";
/// The store of bytes that could not be read.
pub const BROKEN: &str = "broken";

/// The store of the walks' records.
pub const LOG: &str = "walk_log";
/// The store of what is being typed on a walk.
pub const DRAFTS: &str = "walk_drafts";
/// The store of photos, downscaled.
pub const PHOTOS: &str = "photos";
/// The store of the same, small.
pub const THUMBS: &str = "thumbs";

const STORES: [&str; 7] = [PARTS, JOURNAL, BROKEN, LOG, DRAFTS, PHOTOS, THUMBS];

thread_local! {
    static OPEN: RefCell<Option<Rc<Database>>> = const { RefCell::new(None) };
}

fn forget() {
    if let Some(database) = OPEN.with(|open| open.borrow_mut().take()) {
        database.close();
    }
}

/// The database, opened if it is not.
pub async fn database() -> Result<Rc<Database>, StoreError> {
    if let Some(database) = OPEN.with(|open| open.borrow().clone()) {
        return Ok(database);
    }
    let opened = Rc::new(in_time(open()).await?);
    OPEN.with(|open| *open.borrow_mut() = Some(Rc::clone(&opened)));
    Ok(opened)
}

async fn open() -> Result<Database, StoreError> {
    let mut request = Factory::new()?.open(NAME, Some(VERSION))?;
    request.on_upgrade_needed(|event| {
        if let Ok(database) = event.database() {
            let there = database.store_names();
            for store in STORES.into_iter().filter(|store| !there.iter().any(|name| name == store)) {
                // A failure here makes the opening itself fail, which is reported.
                let _ = database.create_object_store(store, ObjectStoreParams::new());
            }
        }
    });
    let blocked = Rc::new(Cell::new(false));
    let seen = Rc::clone(&blocked);
    request.on_blocked(move |_| seen.set(true));
    let mut database =
        request.await.map_err(|error| if blocked.get() { StoreError::HeldByOther } else { StoreError::from(error) })?;
    // A newer version in another window needs the database: it is let go at once.
    database.on_version_change(|_| forget());
    database.on_close(|_| forget());
    Ok(database)
}

/// Waits for an answer, but not for ever.
async fn in_time<T: 'static>(work: impl Future<Output = Result<T, StoreError>> + 'static) -> Result<T, StoreError> {
    let result = Rc::new(RefCell::new(None));
    let place = Rc::clone(&result);
    let done = wasm_bindgen_futures::future_to_promise(async move {
        let answer = work.await;
        *place.borrow_mut() = Some(answer);
        Ok(JsValue::UNDEFINED)
    });
    let late = js_sys::Promise::new(&mut |resolve, _| {
        if let Some(window) = browser::window() {
            let _ = window.set_timeout_with_callback_and_timeout_and_arguments_0(resolve.unchecked_ref(), PATIENCE);
        }
    });
    let _ = JsFuture::from(js_sys::Promise::race(&Array::of2(&done, &late))).await;
    let answer = result.borrow_mut().take();
    answer.unwrap_or(Err(StoreError::NoAnswer))
}

/// Starts a transaction that may write.
pub async fn writing(stores: &[&str]) -> Result<Transaction, StoreError> {
    begin(stores, TransactionMode::ReadWrite).await
}

/// Starts a transaction that may write and that counts as completed only once it is on the phone's disk: what is written
/// in it is still there when the battery dies in the next second. A browser that does not know of this keeps it as it
/// keeps everything.
pub async fn writing_for_good(stores: &[&str]) -> Result<Transaction, StoreError> {
    // The library cannot ask for it, so the browser's own database is asked, which is got by way of a transaction.
    let plain = writing(stores).await?;
    let strict = || -> Result<JsValue, JsValue> {
        let database = JsValue::from(plain.database());
        let options = js_sys::Object::new();
        Reflect::set(&options, &text("durability"), &text("strict"))?;
        let begin: Function = Reflect::get(&database, &text("transaction"))?.dyn_into()?;
        let stores: Array = stores.iter().map(|store| text(store)).collect();
        begin.call3(&database, &stores, &text("readwrite"), &options)
    };
    match strict().map(Transaction::try_from) {
        Ok(Ok(transaction)) => Ok(transaction),
        _ => Ok(plain),
    }
}

/// Starts a transaction that only reads.
pub async fn reading(stores: &[&str]) -> Result<Transaction, StoreError> {
    begin(stores, TransactionMode::ReadOnly).await
}

async fn begin(stores: &[&str], mode: TransactionMode) -> Result<Transaction, StoreError> {
    let database = database().await?;
    match database.transaction(stores, mode) {
        Ok(transaction) => Ok(transaction),
        Err(_) => {
            // The connection may have been closed behind our back; once more with a new one.
            forget();
            Ok(self::database().await?.transaction(stores, mode)?)
        }
    }
}

/// Waits until a transaction has completed: only then is anything kept.
pub async fn completed(transaction: Transaction) -> Result<(), StoreError> {
    match transaction.await? {
        TransactionResult::Committed => Ok(()),
        // The browser gives an aborted commit no reason; a full phone is the common one.
        TransactionResult::Aborted => Err(StoreError::Full),
    }
}

/// A text as the database takes it.
pub fn text(words: &str) -> JsValue {
    JsValue::from_str(words)
}
