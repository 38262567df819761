//! Turns the published tables under `data/` into Rust.

fn main() {
    println!("cargo::rerun-if-changed=data");
}
