//! What is being typed, kept a moment after each key.

use idb::Query;
use job::{Typing, open_typing};

use super::StoreError;
use super::database::{JOURNAL, completed, text, writing};

/// So many windows' typing is kept; the oldest beyond it goes.
const WINDOWS: usize = 8;

/// Keeps what is being typed in a window.
pub async fn write(window: &str, typing: &Typing) -> Result<(), StoreError> {
    let transaction = writing(&[JOURNAL]).await?;
    transaction.object_store(JOURNAL)?.put(&text(&typing.to_json()), Some(&text(window)))?.await?;
    completed(transaction).await
}

/// What was being typed: in this window if it was loaded again, else in the window that typed last.
pub async fn last(window: &str) -> Result<Option<Typing>, StoreError> {
    let transaction = writing(&[JOURNAL]).await?;
    let store = transaction.object_store(JOURNAL)?;
    let (keys, values) = (store.get_all_keys(None, None)?, store.get_all(None, None)?);
    let (keys, values) = (keys.await?, values.await?);
    let mut found: Vec<(String, Typing)> = Vec::new();
    let opened = keys
        .iter()
        .zip(&values)
        .filter_map(|(key, value)| Some((key.as_string()?, open_typing(value.as_string()?.as_bytes()).ok()?)));
    for (key, typing) in opened {
        let place = found.partition_point(|(_, before)| before.at >= typing.at);
        found.insert(place, (key, typing));
    }
    for (key, _) in found.iter().skip(WINDOWS).filter(|(key, _)| key != window) {
        store.delete(Query::Key(text(key)))?.await?;
    }
    let place = found.iter().position(|(key, _)| key == window).unwrap_or(0);
    Ok(found.into_iter().nth(place).map(|(_, typing)| typing))
}
