//! The jobs side by side: which there are, another one, and the parts of one put back as they were given.

use job::file::JobFile;
use job::{JobName, Part, PartBody, next_job_name};

use super::database::{PARTS, completed, text, writing};
use super::{StoreError, parts, tell_other_windows};
use crate::browser;

/// Every job that is kept here.
pub async fn jobs() -> Result<Vec<JobName>, StoreError> {
    Ok(job::jobs(&parts::read_all(None).await?.parts))
}

/// Begins another job and gives its id. Its name is chosen in the transaction that keeps it, so that two windows that
/// begin one at once do not choose the same.
pub async fn begin_job() -> Result<String, StoreError> {
    let transaction = writing(&[PARTS]).await?;
    let store = transaction.object_store(PARTS)?;
    let kept = parts::opened(&store.get_all(None, None)?.await?);
    let name = next_job_name(&job::jobs(&kept));
    let head = Part::new(&browser::new_id(), PartBody::Head { name });
    store.put(&text(&head.to_json()), Some(&text(head.key().as_str())))?.await?;
    completed(transaction).await?;
    tell_other_windows();
    Ok(head.job)
}

/// Puts a job's name and its values back as they are given, each one revision on. Saved checks and walks stay.
pub async fn put_back(given: &JobFile) -> Result<(), StoreError> {
    for part in given.parts.iter().filter(|part| !matches!(part.body, PartBody::Header(_))) {
        parts::change(&given.job, &part.key(), |_| Some(part.body.clone())).await?;
    }
    tell_other_windows();
    Ok(())
}
