//! The one flow from a job to its answers, and the headless command.

mod case;

pub use case::HeaderCase;
