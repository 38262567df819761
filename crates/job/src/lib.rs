//! The stored job document.
