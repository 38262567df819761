//! Turns the published tables under `data/` into Rust.

#[path = "build/asce7.rs"]
mod asce7;
#[path = "build/fasteners.rs"]
mod fasteners;
#[path = "build/irc.rs"]
mod irc;
#[path = "build/nds.rs"]
mod nds;
#[path = "build/sdpws.rs"]
mod sdpws;

use std::{env, error::Error, path::PathBuf};

fn main() -> Result<(), Box<dyn Error>> {
    println!("cargo::rerun-if-changed=data");
    println!("cargo::rerun-if-changed=build");
    println!("cargo::rerun-if-changed=build.rs");
    let out_dir = PathBuf::from(env::var_os("OUT_DIR").ok_or("OUT_DIR is not set")?);
    nds::generate(&out_dir)?;
    fasteners::generate(&out_dir)?;
    irc::generate(&out_dir)?;
    asce7::generate(&out_dir)?;
    sdpws::generate(&out_dir)?;
    Ok(())
}
