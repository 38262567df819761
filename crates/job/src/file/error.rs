//! Why a job file is refused.

use core::fmt;

use crate::FORMAT;
use crate::open::OpenError;

/// Why a job file is refused; `Display` is a sentence for the person whose file it is.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FileError {
    /// Something else than a job file.
    #[error("This is not a job file: {reason}. Choose a file that was saved from a job.")]
    NotAJobFile {
        /// What is wrong, in words.
        reason: String,
    },
    /// Bytes are missing, or others than were written.
    #[error(
        "This job file is damaged or was cut short: {reason}. Nothing of it was taken in. Have it sent or saved again."
    )]
    Torn {
        /// What is wrong, in words.
        reason: String,
    },
    /// Written by a newer version of this program.
    #[error(
        "This job file was saved by a newer version: format {found}, and this version opens formats 1 to {FORMAT}. \
         Nothing of it was taken in. Take up the new version, then open it again."
    )]
    Newer {
        /// The format found.
        found: u32,
    },
    /// One thing in it cannot be read, and so nothing of it is taken.
    #[error("{piece} of the job file cannot be read: {reason}. Nothing of it was taken in and nothing was changed.")]
    Corrupt {
        /// Which.
        piece: Piece,
        /// What is wrong, in words.
        reason: String,
    },
    /// A thing in it, or all of it, is larger than is taken.
    #[error(
        "{piece} of the job file takes {} MB, and at most {} MB is taken. Nothing was changed.",
        .given.div_ceil(1_000_000), .most / 1_000_000
    )]
    TooLarge {
        /// Which.
        piece: Piece,
        /// How many bytes it has.
        given: u64,
        /// How many it may have.
        most: u64,
    },
    /// More names than are taken.
    #[error("The job file holds {given} files, and at most {most} are taken. Nothing was changed.")]
    TooMany {
        /// How many there are.
        given: u64,
        /// How many there may be.
        most: u64,
    },
    /// It holds another job than the one that it is to be brought into.
    #[error(
        "This file holds another job than the one that is open. Nothing was changed. Take it in as a job of its own."
    )]
    OtherJob {
        /// The job that it holds.
        found: String,
    },
}

/// A thing in a job file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Piece {
    /// All that is taken from it.
    Whole,
    /// `job.json`.
    Contents,
    /// A part of the job, counted from one.
    Part(usize),
    /// A record of the log, counted from one.
    Record(usize),
    /// A photo, by its id.
    Photo(String),
    /// A name of a file in it.
    Name(String),
}

impl fmt::Display for Piece {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Whole => write!(to, "The content"),
            Self::Contents => write!(to, "The list job.json"),
            Self::Part(number) => write!(to, "Part {number}"),
            Self::Record(number) => write!(to, "Record {number}"),
            Self::Photo(id) => write!(to, "Photo {id}"),
            Self::Name(name) => write!(to, "The name {name:?}"),
        }
    }
}

impl Piece {
    /// This piece cannot be read.
    pub(super) fn corrupt(self, reason: &str) -> FileError {
        FileError::Corrupt { piece: self, reason: reason.to_owned() }
    }

    /// This piece did not open.
    pub(super) fn did_not_open(self, error: OpenError) -> FileError {
        match error {
            OpenError::Newer { found, .. } => FileError::Newer { found },
            OpenError::Corrupt { reason, .. } => FileError::Corrupt { piece: self, reason },
        }
    }
}

/// The bytes are not as they were written.
pub(super) fn torn(reason: &str) -> FileError {
    FileError::Torn { reason: reason.to_owned() }
}
