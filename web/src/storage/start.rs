//! What was kept, read once before the first picture.

use job::{Part, PartBody, Typing};

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
    let shelf = parts::read_all().await?;
    let mut found = Found { parts: shelf.parts, refused: shelf.refused, ..Found::default() };
    if !found.parts.iter().any(|part| matches!(part.body, PartBody::Head { .. })) {
        let head = parts::ensure_job(&browser::new_id(), "Job 1").await?;
        found.parts.push(head);
    }
    let head = found.parts.iter().find(|part| matches!(part.body, PartBody::Head { .. }));
    found.job = head.map(|part| part.job.clone()).unwrap_or_default();
    found.typing = journal::last(&settings::window_id()).await?.filter(|typing| typing.job == found.job);
    Ok(found)
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
