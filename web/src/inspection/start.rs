//! What was kept, read once before the first picture.

use job::walk::{Draft, Record};
use job::{Job, Part, PartBody};

use crate::browser;
use crate::storage::{self, StoreError, settings};

/// What was found at the start.
#[derive(Clone, Debug)]
pub struct Found {
    /// The job.
    pub job: Job,
    /// The records of its walks.
    pub records: Vec<Record>,
    /// What was being typed.
    pub drafts: Vec<Draft>,
    /// A sentence for each that did not open.
    pub refused: Vec<String>,
    /// Why nothing can be kept, when nothing can.
    pub problem: Option<StoreError>,
}

async fn read() -> Result<Found, StoreError> {
    let head = Part::new(&browser::new_id(), PartBody::Head { name: "Job 1".to_owned() });
    let shelf = storage::read_parts(Some(head)).await?;
    let job = storage::chosen_job(&shelf.parts).unwrap_or_default();
    let log = storage::read_log(&job).await?;
    let drafts = storage::read_drafts(&job, &settings::window_id()).await?;
    let refused = shelf.refused.into_iter().chain(log.refused).collect();
    Ok(Found { job: Job::from_parts(&job, &shelf.parts), records: log.records, drafts, refused, problem: None })
}

/// Reads what was kept. A failure is part of what is found: the screen opens either way.
pub async fn at_start() -> Found {
    settings::keep_broke(false);
    read().await.unwrap_or_else(|problem| Found {
        job: Job::new(browser::new_id(), "Job 1".to_owned()),
        records: Vec::new(),
        drafts: Vec::new(),
        refused: Vec::new(),
        problem: Some(problem),
    })
}
