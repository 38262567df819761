//! The last step of `trunk build`: seals the page with its content policy and writes the worker with its file list.

use crate::outcome::{Failure, Outcome};
use crate::pages::{self, PAGES};
use crate::place::{self, Place};
use crate::policy;
use crate::site;
use sha2::{Digest as _, Sha256};
use std::fs;
use std::path::{Path, PathBuf};

const TEMPLATE: &str = "sw.template.js";
const WORKER: &str = "sw.js";

/// Works on the folder that trunk is about to put in place.
pub fn run(place: &Place) -> Outcome {
    let staging = std::env::var_os("TRUNK_STAGING_DIR")
        .ok_or_else(|| Failure::new("precache is run by trunk after a build; run `cargo xtask build` instead"))?;
    finish(&place.root().join(PathBuf::from(staging)))
}

fn finish(folder: &Path) -> Outcome {
    let index = folder.join("index.html");
    let html = place::text(&index)?;
    expect_preloads(&html)?;
    pages::write(folder, &html)?;
    let others = PAGES.map(|page| folder.join(page.file()));
    for page in [index].into_iter().chain(others) {
        let html = place::text(&page)?;
        place::write(&page, policy::seal(&html)?)?;
    }
    let template_path = folder.join(TEMPLATE);
    let template = place::text(&template_path)?;
    fs::remove_file(&template_path).map_err(|e| Failure::file("remove", &template_path, &e))?;
    let files = kept_files(folder)?;
    place::write(&folder.join(WORKER), worker(&template, &files)?)
}

/// Without these the browser would find the app's module only after reading the script that asks for it.
fn expect_preloads(html: &str) -> Outcome {
    if html.contains("modulepreload") && html.contains("application/wasm") {
        return Ok(());
    }
    Err(Failure::new("index.html: the app's script and module are not preloaded"))
}

/// A file that the worker keeps: its address and its digest.
#[derive(Debug, PartialEq, Eq)]
pub struct KeptFile {
    /// Relative to the worker; a page is its folder (`./`), which every host answers without a redirect.
    pub address: String,
    /// As the `integrity` of a request writes it.
    pub integrity: String,
}

/// Everything the app needs to open, sorted by address.
pub fn kept_files(folder: &Path) -> Outcome<Vec<KeptFile>> {
    let mut kept = Vec::new();
    for path in place::files_under(folder, |_| false)? {
        let address = place::address_of(&path, folder);
        if is_left_out(&address) {
            continue;
        }
        let integrity = policy::digest(&place::bytes(&path)?);
        let address = match address.strip_suffix("index.html") {
            Some("") => "./".to_owned(),
            Some(folder) => folder.to_owned(),
            None => address,
        };
        kept.push(KeptFile { address, integrity });
    }
    kept.sort_by(|a, b| a.address.cmp(&b.address));
    Ok(kept)
}

/// The worker itself, what only search engines read, and what a host picks instead of the plain file.
fn is_left_out(address: &str) -> bool {
    [WORKER, TEMPLATE, "robots.txt", "HEADERS.md"].contains(&address)
        || address.ends_with(".br")
        || address.ends_with(".gz")
}

/// The worker's source, without the template's comments. Its version is a digest of all it keeps and of itself.
fn worker(template: &str, files: &[KeptFile]) -> Outcome<String> {
    let code: String = template.lines().filter(|l| !l.starts_with("//")).flat_map(|l| [l, "\n"]).collect();
    let pairs: Vec<[&str; 2]> = files.iter().map(|f| [f.address.as_str(), f.integrity.as_str()]).collect();
    let list = serde_json::to_string(&pairs).map_err(|e| Failure::new(format!("the worker's file list: {e}")))?;
    let listed = replaced_once(&code, "__FILES__", &list)?;
    let digest = site::hex(&Sha256::digest(&listed));
    replaced_once(&listed, "__VERSION__", &digest[..16])
}

fn replaced_once(text: &str, mark: &str, with: &str) -> Outcome<String> {
    match text.matches(mark).count() {
        1 => Ok(text.replace(mark, with)),
        count => Err(Failure::new(format!("{TEMPLATE} holds {mark} {count} times; it must be there once"))),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEMPLATE_TEXT: &str = "// why\nconst VERSION = \"__VERSION__\";\nconst FILES = __FILES__;\n";

    fn file(address: &str, content: &str) -> KeptFile {
        KeptFile { address: address.to_owned(), integrity: policy::digest(content.as_bytes()) }
    }

    #[test]
    fn the_version_changes_with_any_content_and_with_nothing_else() {
        let of = |content| worker(TEMPLATE_TEXT, &[file("./", "page"), file("a.js", content)]).unwrap();
        assert_eq!(of("one"), of("one"));
        assert_ne!(of("one").lines().next(), of("two").lines().next());
        assert!(of("one").starts_with("const VERSION = \""));
        assert!(of("one").contains("[\"a.js\",\"sha256-"));
    }

    #[test]
    fn a_template_without_its_marks_is_refused() {
        assert!(worker("const FILES = __FILES__;", &[]).is_err());
        assert!(worker("__VERSION__ __VERSION__ __FILES__", &[]).is_err());
    }

    #[test]
    fn the_page_is_kept_under_its_folder_and_the_worker_is_not_kept() {
        let folder = std::env::temp_dir().join(format!("galeframe-precache-{}", std::process::id()));
        for name in ["index.html", "sw.js", "a.js", "a.js.br", "icons/b.svg", "inspection/index.html"] {
            place::write(&folder.join(name), name).unwrap();
        }
        let kept: Vec<String> = kept_files(&folder).unwrap().into_iter().map(|f| f.address).collect();
        fs::remove_dir_all(&folder).unwrap();
        assert_eq!(kept, ["./", "a.js", "icons/b.svg", "inspection/"]);
    }
}
