//! Set up, serve, test, bench and package.
fn main() {}
