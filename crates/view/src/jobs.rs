//! The jobs on this phone, as cards: which there are, which one is open, and which one is only an example.

use job::JobName;

/// The id of the example house, the same on every phone.
pub const EXAMPLE: &str = "example-boatbuilders-house";

/// What is said where a job has no name.
const NO_NAME: &str = "A job without a name";
/// What is said of the job that is open.
const OPEN: &str = "open now";
/// What is said of the example.
const NOT_REAL: &str = "an example, nothing of it is real";

/// What is told once the example is as it was.
pub const PUT_BACK: &str = "The example house is as it was. What was logged on its walks stays.";

/// A job as a card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JobCard {
    /// The job's id.
    pub job: String,
    /// What it is called.
    pub name: String,
    /// What there is to know of it; empty where there is nothing.
    pub note: String,
    /// Whether it is the one that is open.
    pub open: bool,
    /// Whether it is the example.
    pub example: bool,
}

/// The cards, by name; the example stands last. `open` is the job that is open, by the name that it has on the screen.
#[must_use]
pub fn cards(jobs: &[JobName], open: &JobName) -> Vec<JobCard> {
    let mut cards: Vec<JobCard> = jobs.iter().map(|job| card(job, open)).collect();
    cards.sort_by_cached_key(|card| (card.example, card.name.to_lowercase(), card.job.clone()));
    cards
}

/// Whether the example is among the jobs.
#[must_use]
pub fn has_example(jobs: &[JobName]) -> bool {
    jobs.iter().any(|job| job.job == EXAMPLE)
}

fn card(job: &JobName, open: &JobName) -> JobCard {
    let (is_open, example) = (job.job == open.job, job.job == EXAMPLE);
    let name = if is_open { open.name.trim() } else { job.name.trim() };
    let notes = [is_open.then_some(OPEN), example.then_some(NOT_REAL)];
    JobCard {
        job: job.job.clone(),
        name: Some(name).filter(|name| !name.is_empty()).unwrap_or(NO_NAME).to_owned(),
        note: notes.into_iter().flatten().collect::<Vec<&str>>().join("; "),
        open: is_open,
        example,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(jobs: &[(&str, &str)]) -> Vec<JobName> {
        let one = |(job, name): &(&str, &str)| JobName { job: (*job).to_owned(), name: (*name).to_owned() };
        jobs.iter().map(one).collect()
    }

    #[test]
    fn jobs_stand_by_name_and_the_example_last() {
        let jobs = named(&[(EXAMPLE, "A house (example)"), ("2", "lot 4"), ("1", "Barn"), ("4", ""), ("3", "Old")]);
        let cards = cards(&jobs, &named(&[("3", "Barn, new on the screen")])[0]);
        let shown: Vec<(&str, &str)> = cards.iter().map(|card| (card.name.as_str(), card.note.as_str())).collect();
        assert_eq!(
            shown,
            [
                ("A job without a name", ""),
                ("Barn", ""),
                ("Barn, new on the screen", "open now"),
                ("lot 4", ""),
                ("A house (example)", "an example, nothing of it is real"),
            ]
        );
        assert_eq!(cards.iter().filter(|card| card.open).count(), 1);
        assert_eq!(cards.iter().filter(|card| card.example).count(), 1);
    }

    #[test]
    fn the_example_says_so_while_it_is_open_too() {
        let jobs = named(&[(EXAMPLE, "A house (example)")]);
        assert_eq!(cards(&jobs, &jobs[0])[0].note, "open now; an example, nothing of it is real");
        assert!(has_example(&jobs) && !has_example(&named(&[("1", "a house (example)")])));
    }
}
