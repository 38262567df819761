//! The record of a walk: its head, how it stands, what is printed, and the table of findings.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

// Logs to read walks from.
#[path = "record_of_a_walk/log.rs"]
mod log;

// The head and what is still to be written down.
#[path = "record_of_a_walk/heading.rs"]
mod heading;

// How a walk and its marks stand.
#[path = "record_of_a_walk/standing.rs"]
mod standing;

// What is put on the page.
#[path = "record_of_a_walk/page.rs"]
mod page;

// What is printed.
#[path = "record_of_a_walk/print.rs"]
mod print;

// The table for a spreadsheet.
#[path = "record_of_a_walk/csv.rs"]
mod csv;
