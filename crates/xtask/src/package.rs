//! Writes `package/`: the folder to put on a web host.

use crate::compress;
use crate::outcome::{Failure, Outcome};
use crate::pages::PAGES;
use crate::place::{self, Place};
use crate::policy;
use crate::setup;
use crate::site;
use crate::step::step;
use std::fs;
use std::path::Path;

const HEADERS: &str = include_str!("headers.md");

/// Builds for hosting under `base`, and writes the files with their compressed copies and the hosting notes.
pub fn write(place: &Place, base: &str) -> Outcome {
    write_to(place, base, &place.path("package"))?;
    println!("\npackage/ holds the app for {base}; HEADERS.md in it says what the host must send.");
    Ok(())
}

/// The same, into `folder`.
pub fn write_to(place: &Place, base: &str, folder: &Path) -> Outcome {
    setup::builders(place)?;
    step("release build", "3 minutes the first time, half a minute after", || site::trunk(place, base, folder))?;
    step("compress", "20 s", || compress_all(folder))?;
    // One policy for all pages: it names the inline code of each.
    let mut pages = place::text(&folder.join("index.html"))?;
    for page in PAGES {
        pages += &place::text(&folder.join(page.file()))?;
    }
    place::write(&folder.join("HEADERS.md"), notes(base, &pages))
}

fn compress_all(folder: &Path) -> Outcome {
    for path in place::files_under(folder, |_| false)? {
        let name = place::address_of(&path, folder);
        if !compress::is_worth_it(&name) {
            continue;
        }
        let content = place::bytes(&path)?;
        for (suffix, small) in [("br", compress::brotli(&content)?), ("gz", compress::gzip(&content)?)] {
            if small.len() < content.len() {
                place::write(&folder.join(format!("{name}.{suffix}")), small)?;
            }
        }
    }
    // A leftover of the build's own working folder is not for the host.
    let staging = folder.join(".stage");
    if staging.exists() {
        fs::remove_dir_all(&staging).map_err(|e| Failure::file("remove", &staging, &e))?;
    }
    Ok(())
}

fn notes(base: &str, html: &str) -> String {
    HEADERS.replace("__BASE__", base).replace("__POLICY__", &policy::of(html))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_notes_carry_the_pages_own_policy() {
        let notes = notes("/field/", "<script>go()</script>");
        assert!(notes.contains(&policy::digest(b"go()")));
        assert!(notes.contains("/field/") && !notes.contains("__"));
    }
}
