//! Checks that cross crates; see `tests/tests` for the published sources and `tests/browser` for the journeys.
