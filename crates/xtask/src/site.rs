//! Builds the web app for release, and knows when that is not needed.

use crate::outcome::{Failure, Outcome};
use crate::place::{self, Place};
use crate::setup;
use crate::step::step;
use crate::tool::Tool;
use sha2::{Digest as _, Sha256};
use std::path::{Path, PathBuf};

/// Everything that can change what the build writes.
const INPUTS: [&str; 9] = [
    "crates",
    "web",
    "public",
    "Cargo.toml",
    "Cargo.lock",
    "Trunk.toml",
    "rust-toolchain.toml",
    ".cargo/config.toml",
    "package-lock.json",
];

/// Makes sure that `dist/` holds a release build of what is in the folder now.
pub fn ensure(place: &Place) -> Outcome {
    setup::builders(place)?;
    let inputs = inputs_digest(place)?;
    let found = stamp(place, &inputs);
    if found.is_some() && found == place::text(&stamp_path(place)).ok() {
        println!("dist/ is up to date.");
        return Ok(());
    }
    let expected = "3 minutes the first time, half a minute after an edit";
    step("release build", expected, || trunk(place, "/", &place.dist()))?;
    let written = stamp(place, &inputs).ok_or_else(|| Failure::new("the build wrote no sw.js"))?;
    place::write(&stamp_path(place), written)
}

/// Builds for hosting under `base` into `folder`.
pub fn trunk(place: &Place, base: &str, folder: &Path) -> Outcome {
    // trunk builds offline, so that it can only use the pinned tools; the crates are fetched here.
    Tool::new(place, "cargo").args(["fetch", "--quiet", "--locked"]).run()?;
    Tool::new(place, "trunk")
        .args(["build", "--release", "--offline", "--skip-version-check", "--public-url", base, "--dist"])
        .args([folder])
        // trunk takes this variable for an option of its own, and stops at its usual value.
        .without_env("NO_COLOR")
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", compiler_flags(place))
        .run()
}

/// Flags for the app's crates alone: one type for all views makes the module smaller (7 % when it was measured), and
/// the folders of this machine have no business in what is shipped.
fn compiler_flags(place: &Place) -> String {
    let mut flags = vec!["--cfg=erase_components".to_owned()];
    let cargo_home = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    let cargo_home = cargo_home.or_else(|| std::env::home_dir().map(|home| home.join(".cargo")));
    for (folder, name) in [(Some(place.root().to_owned()), "galeframe"), (cargo_home, "crates")] {
        // The variable is split at spaces, so a folder with one cannot be named in it.
        let folder = folder.map(|folder| folder.display().to_string()).filter(|folder| !folder.contains(' '));
        flags.extend(folder.map(|folder| format!("--remap-path-prefix={folder}={name}")));
    }
    flags.join(" ")
}

/// What the stamp of a finished build says: the inputs, and the version that the build gave to its files. It is `None`
/// when there is no build.
fn stamp(place: &Place, inputs: &str) -> Option<String> {
    let worker = place::text(&place.dist().join("sw.js")).ok()?;
    let version = worker.split('"').nth(1)?;
    Some(format!("{inputs} {version}\n"))
}

fn stamp_path(place: &Place) -> PathBuf {
    place.path("target/xtask/dist.stamp")
}

fn inputs_digest(place: &Place) -> Outcome<String> {
    let mut digest = Sha256::new();
    for input in INPUTS {
        let path = place.path(input);
        let files = if path.is_dir() { place::files_under(&path, |_| false)? } else { vec![path] };
        for file in files {
            digest.update(place::address_of(&file, place.root()));
            digest.update([0]);
            digest.update(Sha256::digest(place::bytes(&file)?));
        }
    }
    Ok(hex(&digest.finalize()))
}

/// Bytes as lower-case hexadecimal.
pub fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
