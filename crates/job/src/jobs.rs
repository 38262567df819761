//! The jobs that are kept side by side on one phone.

use crate::part::{Part, PartBody};

/// A job by its id, and its name as typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JobName {
    /// The job's id.
    pub job: String,
    /// Its name; empty where it was cleared.
    pub name: String,
}

/// Every job that has a head among these parts, in the order of the parts.
#[must_use]
pub fn jobs(parts: &[Part]) -> Vec<JobName> {
    let head = |part: &Part| match &part.body {
        PartBody::Head { name } => Some(JobName { job: part.job.clone(), name: name.clone() }),
        PartBody::Site { .. } | PartBody::Header(_) => None,
    };
    parts.iter().filter_map(head).collect()
}

/// The first name of the form `Job 1`, `Job 2` that no job has.
#[must_use]
pub fn next_job_name(jobs: &[JobName]) -> String {
    let taken = |name: &str| jobs.iter().any(|job| job.name.trim() == name);
    let mut number = 1_u32;
    while taken(&format!("Job {number}")) {
        number = number.saturating_add(1);
    }
    format!("Job {number}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Fields, Job};

    fn head(job: &str, name: &str) -> Part {
        Part::new(job, PartBody::Head { name: name.to_owned() })
    }

    #[test]
    fn each_head_is_a_job_and_nothing_else_is() {
        let site = Part::new("c", PartBody::Site { fields: Fields::new() });
        let found = jobs(&[head("b", "Barn"), site, head("a", "")]);
        let found: Vec<(&str, &str)> = found.iter().map(|job| (job.job.as_str(), job.name.as_str())).collect();
        assert_eq!(found, [("b", "Barn"), ("a", "")]);
        assert_eq!(jobs(&[]), []);
    }

    #[test]
    fn a_new_job_takes_the_first_number_that_is_free() {
        let named = |names: &[&str]| {
            let parts: Vec<Part> = names.iter().map(|name| head(name, name)).collect();
            next_job_name(&jobs(&parts))
        };
        assert_eq!(named(&[]), "Job 1");
        assert_eq!(named(&["Job 1", "Barn"]), "Job 2");
        assert_eq!(named(&["Job 1", "Job 3", " Job 2 "]), "Job 4");
        assert_eq!(named(&["Job 2", "Job 10", "job 1"]), "Job 1");
    }

    #[test]
    fn a_job_without_values_is_listed_by_the_name_that_it_opens_with() {
        let parts = [head("a", "Barn")];
        assert_eq!(jobs(&parts)[0].name, Job::from_parts("a", &parts).name);
    }
}
