//! What stands: studs that lean against the wind while they carry, and posts, solid or built up of plies.
//!
//! Where to look: [`column`] has what all have in common, the column of NDS 2018 3.7 with its plies; [`stud`], [`post`] and
//! [`end_post`] say what each is asked.

mod column;
pub mod end_post;
pub mod post;
pub mod stud;

pub use column::{Held, Uprights};

use lumber::{Family, Member};
use measure::Ratio;

use crate::check::{Check, Verdict, governing};
use crate::choose::Candidate;
use crate::limit::Limit;

/// One size that was tried.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// The size.
    pub member: Member,
    /// Its limits; empty where no published value is held or a rule was left.
    pub checks: Vec<Check<Limit>>,
    /// Why there is no answer, as a sentence.
    pub outside: Option<String>,
}

impl Tried {
    fn of(member: Member, judged: Result<Vec<Check<Limit>>, String>) -> Self {
        match judged {
            Ok(checks) => Self { member, checks, outside: None },
            Err(sentence) => Self { member, checks: Vec::new(), outside: Some(sentence) },
        }
    }

    /// The limit that uses the greatest share.
    #[must_use]
    pub fn governing(&self) -> Option<&Check<Limit>> {
        governing(&self.checks)
    }

    /// The verdict on it.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        if self.outside.is_some() {
            return Verdict::Outside;
        }
        self.governing().map_or(Verdict::Outside, |check| Verdict::of(check.share))
    }
}

impl Candidate for Tried {
    fn family(&self) -> Family {
        self.member.family()
    }

    fn area(&self) -> f64 {
        self.member.section().area.square_inches()
    }

    fn works(&self) -> bool {
        self.verdict().holds()
    }

    fn fits(&self) -> bool {
        true
    }

    fn telling_share(&self) -> Ratio {
        self.governing().map_or(f64::INFINITY, |check| check.share)
    }
}
