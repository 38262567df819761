//! Pieces of lumber against published examples and tables, own vectors, and what must hold for every piece.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

mod common;
mod own_vectors;
mod pieces;
mod properties;
mod published_examples;
