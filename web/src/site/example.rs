//! The example house: a job that comes with the app, brought in as a job file is. It has an id of its own and never
//! meets another job.

use job::file::{JobFile, read_contents};
use view::jobs::has_example;

use crate::storage::{self, Trouble};

/// The contents of its job file.
const CONTENTS: &str = include_str!("../../example/boatbuilders_house.json");

fn as_given() -> Result<JobFile, String> {
    read_contents(CONTENTS.as_bytes()).map_err(|problem| problem.to_string())
}

/// Brings it in; one that is here already is left as it stands. What went wrong is said in a sentence.
pub async fn bring_in() -> Result<(), String> {
    if has_example(&storage::jobs().await.map_err(|problem| problem.sentence())?) {
        return Ok(());
    }
    storage::bring_in(as_given()?).await.map(|_| ()).map_err(|trouble| match trouble {
        Trouble::File(problem) => problem.to_string(),
        Trouble::Store(problem) => problem.sentence(),
    })?;
    storage::tell_other_windows();
    Ok(())
}

/// Puts its name and its values back as they were.
pub async fn put_back() -> Result<(), String> {
    storage::put_back(&as_given()?).await.map_err(|problem| problem.sentence())
}
