//! The walks' records and their photos. A record is added and never changed: adding one whose id is there fails.

use idb::Query;
use job::OpenError;
use job::walk::{Record, RecordBody, open_record};
use js_sys::Uint8Array;
use wasm_bindgen::{JsCast, JsValue};

use super::StoreError;
use super::database::{BROKEN, LOG, PHOTOS, THUMBS, completed, reading, text, writing, writing_for_good};
use crate::local_time;

/// A photo's bytes as they are kept: downscaled, and small for a list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PhotoBytes {
    /// The photo, a JPEG.
    pub photo: Vec<u8>,
    /// The same, small.
    pub thumb: Vec<u8>,
}

/// What was found in the log.
#[derive(Clone, Debug, Default)]
pub struct Found {
    /// The records that opened.
    pub records: Vec<Record>,
    /// A sentence for each that did not.
    pub refused: Vec<String>,
}

/// Where a record is kept.
pub fn key(record: &Record) -> JsValue {
    text(&format!("{}/{}", record.job, record.id))
}

/// The photo that a record is of.
pub fn photo_of(record: &Record) -> Option<&str> {
    match &record.body {
        RecordBody::Photo(photo) => Some(&photo.photo),
        _ => None,
    }
}

/// Reads every record of a job. One that cannot be read is moved to the store of broken things with its bytes; one of a
/// newer version stays where it is.
pub async fn read_log(job: &str) -> Result<Found, StoreError> {
    let transaction = reading(&[LOG]).await?;
    let values = transaction.object_store(LOG)?.get_all(None, None)?.await?;
    let mut found = Found::default();
    let mut broken = false;
    for value in values {
        match open_record(&bytes(&value)) {
            Ok(record) if record.job == job => found.records.push(record),
            Ok(_) => {}
            Err(error) => {
                broken |= matches!(error, OpenError::Corrupt { .. });
                found.refused.push(error.to_string());
            }
        }
    }
    if broken {
        set_aside().await?;
    }
    Ok(found)
}

fn bytes(value: &JsValue) -> Vec<u8> {
    value.as_string().map_or_else(|| format!("{value:?}").into_bytes(), String::into_bytes)
}

/// Moves what cannot be read to the store of broken things.
async fn set_aside() -> Result<(), StoreError> {
    let transaction = writing(&[LOG, BROKEN]).await?;
    let (log, broken) = (transaction.object_store(LOG)?, transaction.object_store(BROKEN)?);
    let (keys, values) = (log.get_all_keys(None, None)?, log.get_all(None, None)?);
    for (key, value) in keys.await?.into_iter().zip(values.await?) {
        if matches!(open_record(&bytes(&value)), Err(OpenError::Corrupt { .. })) {
            let place = format!("{} {}", key.as_string().unwrap_or_default(), local_time::now());
            broken.put(&value, Some(&text(&place)))?.await?;
            log.delete(Query::Key(key))?.await?;
        }
    }
    completed(transaction).await
}

/// Adds records, all or none, for good: a finding or a signature is not made again.
pub async fn add(records: &[Record]) -> Result<(), StoreError> {
    let transaction = writing_for_good(&[LOG]).await?;
    let log = transaction.object_store(LOG)?;
    for record in records {
        log.add(&text(&record.to_json()), Some(&key(record)))?.await?;
    }
    completed(transaction).await
}

/// Adds a photo: its record and its bytes in one transaction, so that neither is there without the other.
pub async fn add_photo(record: &Record, id: &str, bytes: &PhotoBytes) -> Result<(), StoreError> {
    let transaction = writing_for_good(&[LOG, PHOTOS, THUMBS]).await?;
    let place = text(id);
    for (store, bytes) in [(PHOTOS, &bytes.photo), (THUMBS, &bytes.thumb)] {
        transaction.object_store(store)?.put(&Uint8Array::from(bytes.as_slice()), Some(&place))?.await?;
    }
    transaction.object_store(LOG)?.add(&text(&record.to_json()), Some(&key(record)))?.await?;
    completed(transaction).await
}

/// Photos by their ids, for a record: all asked for at once, their bytes left with the browser. One that is not there is
/// left out.
pub async fn photos(ids: Vec<String>) -> Result<Vec<(String, Uint8Array)>, StoreError> {
    let transaction = reading(&[PHOTOS]).await?;
    let store = transaction.object_store(PHOTOS)?;
    let asked = ids.iter().map(|id| store.get(text(id))).collect::<Result<Vec<_>, _>>()?;
    let mut found = Vec::with_capacity(ids.len());
    for (id, asked) in ids.into_iter().zip(asked) {
        let bytes = asked.await?.and_then(|value| value.dyn_into::<Uint8Array>().ok());
        found.extend(bytes.map(|bytes| (id, bytes)));
    }
    Ok(found)
}

/// A photo's bytes: the photo, or the small one.
pub async fn photo(id: &str, small: bool) -> Result<Option<Vec<u8>>, StoreError> {
    let transaction = reading(&[THUMBS, PHOTOS]).await?;
    let mut value = None;
    if small {
        value = transaction.object_store(THUMBS)?.get(text(id))?.await?;
    }
    // A photo that came in with a job file has no small one.
    if value.is_none() {
        value = transaction.object_store(PHOTOS)?.get(text(id))?.await?;
    }
    Ok(value.and_then(|value| value.dyn_into::<Uint8Array>().ok()).map(|bytes| bytes.to_vec()))
}
