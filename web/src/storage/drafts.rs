//! What is being typed on a walk, kept a moment after each key: one record a form and a window.

use idb::Query;
use job::walk::{Draft, open_draft};

use super::StoreError;
use super::database::{DRAFTS, completed, reading, text, writing};

fn key(form: &str, window: &str) -> String {
    format!("{form} {window}")
}

/// The drafts of a job: for each form the one of this window, else the one that was typed last.
pub async fn read_drafts(job: &str, window: &str) -> Result<Vec<Draft>, StoreError> {
    let transaction = reading(&[DRAFTS]).await?;
    let store = transaction.object_store(DRAFTS)?;
    let (keys, values) = (store.get_all_keys(None, None)?, store.get_all(None, None)?);
    let mut found: Vec<(bool, Draft)> = Vec::new();
    for (place, value) in keys.await?.into_iter().zip(values.await?) {
        let Some(draft) = value.as_string().and_then(|value| open_draft(value.as_bytes()).ok()) else { continue };
        if draft.job != job {
            continue;
        }
        let own = place.as_string() == Some(key(&draft.form, window));
        match found.iter_mut().find(|(_, known)| known.form == draft.form) {
            Some(known) if own || (!known.0 && known.1.at < draft.at) => *known = (own, draft),
            Some(_) => {}
            None => found.push((own, draft)),
        }
    }
    Ok(found.into_iter().map(|(_, draft)| draft).collect())
}

/// Keeps a draft.
pub async fn keep_draft(draft: &Draft, window: &str) -> Result<(), StoreError> {
    let transaction = writing(&[DRAFTS]).await?;
    let place = text(&key(&draft.form, window));
    transaction.object_store(DRAFTS)?.put(&text(&draft.to_json()), Some(&place))?.await?;
    completed(transaction).await
}

/// Takes a form's drafts away, every window's: what was typed is in the log now.
pub async fn drop_drafts(form: &str) -> Result<(), StoreError> {
    let transaction = writing(&[DRAFTS]).await?;
    let store = transaction.object_store(DRAFTS)?;
    for place in store.get_all_keys(None, None)?.await? {
        if place.as_string().is_some_and(|place| place.starts_with(&key(form, ""))) {
            store.delete(Query::Key(place))?.await?;
        }
    }
    completed(transaction).await
}
