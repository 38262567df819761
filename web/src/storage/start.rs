//! What was kept, read once before the first picture.

use futures_util::future::join;
use job::{Part, PartBody, Typing};

use super::database::database;
use super::parts::Shelf;
use super::{StoreError, journal, parts, settings};
use crate::browser;

/// What was found at the start.
#[derive(Clone, Debug, Default)]
pub struct Found {
    /// The job's id.
    pub job: String,
    /// Its parts.
    pub parts: Vec<Part>,
    /// What was being typed.
    pub typing: Option<Typing>,
    /// A sentence for each part that did not open.
    pub refused: Vec<String>,
    /// Why nothing can be kept, when nothing can.
    pub problem: Option<StoreError>,
    /// Whether the program broke the last time: then the typing is offered, not put back, or it might break again.
    pub broke: bool,
}

async fn read() -> Result<Found, StoreError> {
    database().await?;
    let head = Part::new(&browser::new_id(), PartBody::Head { name: "Job 1".to_owned() });
    let (shelf, journal) = join(parts::read_all(Some(head)), journal::read()).await;
    let Shelf { parts, refused } = shelf?;
    let job = parts::chosen_job(&parts).unwrap_or_default();
    let typing = journal?.of(&settings::window_id(), &job);
    Ok(Found { job, parts, typing, refused, ..Found::default() })
}

/// Reads what was kept. A failure is part of what is found: the screen opens either way.
pub async fn at_start() -> Found {
    let broke = settings::broke();
    settings::keep_broke(false);
    match read().await {
        Ok(found) => Found { broke, ..found },
        Err(problem) => Found { job: browser::new_id(), problem: Some(problem), broke, ..Found::default() },
    }
}
