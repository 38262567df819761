//! Reading and changing the parts of the job.

use idb::Query;
use job::{OpenError, Part, PartBody, PartKey, open_part};
use wasm_bindgen::JsValue;

use super::database::{BROKEN, PARTS, completed, text, writing};
use super::{StoreError, settings};
use crate::local_time;

/// What was found in the store.
#[derive(Clone, Debug, Default)]
pub struct Shelf {
    /// The parts that opened.
    pub parts: Vec<Part>,
    /// A sentence for each that did not.
    pub refused: Vec<String>,
}

fn bytes_of(value: &JsValue) -> Vec<u8> {
    value.as_string().map_or_else(|| format!("{value:?}").into_bytes(), String::into_bytes)
}

/// Reads every part. One that cannot be read is moved to the store of broken things with its bytes; one of a newer
/// version stays where it is. Where there is no job yet, `head` begins one, in the same transaction, so that two windows
/// that open at once share it.
pub async fn read_all(head: Option<Part>) -> Result<Shelf, StoreError> {
    let transaction = writing(&[PARTS, BROKEN]).await?;
    let (parts, broken) = (transaction.object_store(PARTS)?, transaction.object_store(BROKEN)?);
    // Both are asked for before the first is awaited: each wait is felt on a slow phone.
    let (keys, values) = (parts.get_all_keys(None, None)?, parts.get_all(None, None)?);
    let (keys, values) = (keys.await?, values.await?);
    let mut shelf = Shelf::default();
    let mut written = false;
    for (key, value) in keys.into_iter().zip(values) {
        match open_part(&bytes_of(&value)) {
            Ok(part) => shelf.parts.push(part),
            Err(error) => {
                if matches!(error, OpenError::Corrupt { .. }) {
                    let place = format!("{} {}", key.as_string().unwrap_or_default(), local_time::now());
                    broken.put(&value, Some(&text(&place)))?.await?;
                    parts.delete(Query::Key(key))?.await?;
                    written = true;
                }
                shelf.refused.push(error.to_string());
            }
        }
    }
    if let Some(head) = head.filter(|_| !shelf.parts.iter().any(is_head)) {
        parts.put(&text(&head.to_json()), Some(&text(head.key().as_str())))?.await?;
        shelf.parts.push(head);
        written = true;
    }
    if written {
        completed(transaction).await?;
    }
    Ok(shelf)
}

/// The job that is worked on: the one that was chosen, else the first. It stays the one of this window, whichever
/// another window opens.
pub fn chosen_job(parts: &[Part]) -> Option<String> {
    let chosen = settings::last_job();
    let mut heads = parts.iter().filter(|part| is_head(part)).map(|head| &head.job);
    let job = heads.clone().find(|job| Some(*job) == chosen.as_ref()).or_else(|| heads.next()).cloned();
    if let Some(job) = &job {
        settings::keep_window_job(job);
    }
    job
}

/// The parts among stored values that open.
pub fn opened(values: &[JsValue]) -> Vec<Part> {
    values.iter().filter_map(|value| open_part(value.as_string()?.as_bytes()).ok()).collect()
}

/// Whether a part is the head of a job.
pub fn is_head(part: &Part) -> bool {
    matches!(part.body, PartBody::Head { .. })
}

/// Changes one part inside one transaction: `decide` sees what is stored now and gives what to store, or nothing to
/// leave it. Gives the part as it is stored afterwards, and whether it was written.
pub async fn change(
    job: &str,
    key: &PartKey,
    decide: impl FnOnce(Option<&Part>) -> Option<PartBody>,
) -> Result<(Option<Part>, bool), StoreError> {
    let transaction = writing(&[PARTS]).await?;
    let store = transaction.object_store(PARTS)?;
    let stored = match store.get(text(key.as_str()))?.await? {
        // What cannot be opened is not written over: the next start sets it aside.
        Some(value) => Some(open_part(&bytes_of(&value)).map_err(|error| StoreError::Other(error.to_string()))?),
        None => None,
    };
    let Some(body) = decide(stored.as_ref()) else {
        completed(transaction).await?;
        return Ok((stored, false));
    };
    let part = stored.map_or_else(|| Part::new(job, body.clone()), |stored| stored.next(body.clone()));
    store.put(&text(&part.to_json()), Some(&text(key.as_str())))?.await?;
    completed(transaction).await?;
    Ok((Some(part), true))
}

/// Takes a part away if it is still the revision that was shown; gives whether it was.
pub async fn remove(key: &PartKey, revision: u32) -> Result<bool, StoreError> {
    let transaction = writing(&[PARTS]).await?;
    let store = transaction.object_store(PARTS)?;
    let stored = store.get(text(key.as_str()))?.await?;
    let same = stored.is_some_and(|value| open_part(&bytes_of(&value)).is_ok_and(|part| part.revision == revision));
    if same {
        store.delete(Query::Key(text(key.as_str())))?.await?;
    }
    completed(transaction).await?;
    Ok(same)
}
