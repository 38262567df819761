//! Dimension lumber, timbers and engineered members one can pick up.
