//! What is being typed, kept a moment after each key: one record a window and a job.

use idb::Query;
use job::{Typing, open_typing};

use super::StoreError;
use super::database::{JOURNAL, completed, text, writing};

/// So many windows' typing is kept of a job; the oldest beyond it goes.
const WINDOWS: usize = 8;

/// Where a window's typing for a job is kept: a look at another job does not touch it.
fn place(window: &str, job: &str) -> String {
    [window, " ", job].concat()
}

/// Keeps what is being typed in a window.
pub async fn write(window: &str, typing: &Typing) -> Result<(), StoreError> {
    let transaction = writing(&[JOURNAL]).await?;
    let place = text(&place(window, &typing.job));
    transaction.object_store(JOURNAL)?.put(&text(&typing.to_json()), Some(&place))?.await?;
    completed(transaction).await
}

/// What was being typed in every window and for every job.
#[derive(Debug, Default)]
pub struct Journal {
    /// By where it is kept, the latest first.
    found: Vec<(String, Typing)>,
}

impl Journal {
    /// What was being typed for a job: in this window if it was loaded again, else in the window that typed last.
    pub fn of(self, window: &str, job: &str) -> Option<Typing> {
        let own = place(window, job);
        let mut of_job: Vec<(String, Typing)> =
            self.found.into_iter().filter(|(_, typing)| typing.job == job).collect();
        let here = of_job.iter().position(|(key, _)| *key == own).unwrap_or(0);
        (here < of_job.len()).then(|| of_job.swap_remove(here).1)
    }
}

/// Reads what was being typed.
pub async fn read() -> Result<Journal, StoreError> {
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
    for (index, (key, typing)) in found.iter().enumerate() {
        let later = found.iter().take(index).filter(|(_, other)| other.job == typing.job).count();
        if later >= WINDOWS {
            store.delete(Query::Key(text(key)))?.await?;
        }
    }
    Ok(Journal { found })
}
