//! The page of Inspection: the same page with another module, so that neither weighs on the other.
//!
//! trunk builds the second module under a plain name and writes no page for it. Here its files get names with their own
//! digest, and `inspection/index.html` is made from `index.html` by putting them in the place of the first module's. A
//! folder with a page in it is answered by every host without a redirect.

use crate::outcome::{Failure, Outcome};
use crate::place;
use crate::site;
use base64::Engine as _;
use sha2::{Digest as _, Sha256, Sha384};
use std::fs;
use std::path::Path;

/// Where the page stands.
pub const PAGE: &str = "inspection/index.html";
/// What the worker and the browser ask for.
pub const ADDRESS: &str = "inspection/";
/// The second module's files as trunk writes them.
const SCRIPT: &str = "inspection.js";
const MODULE: &str = "inspection_bg.wasm";
const STYLE: &str = "inspection.css";

/// Whether a file is of the second page alone.
pub fn is_its_own(address: &str) -> bool {
    address.starts_with("inspection")
}

/// Names the second module's files, and writes its page beside the first, whose text is `html`.
pub fn write(folder: &Path, html: &str) -> Outcome {
    let (script, module, style) = (named(folder, SCRIPT)?, named(folder, MODULE)?, named(folder, STYLE)?);
    let first = First::find(html)?;
    let base = first.script.rsplit_once('/').map_or("", |(base, _)| base);
    let page = replaced(html, first.script, first.script_digest, base, &script)?;
    let page = replaced(&page, first.module, first.module_digest, base, &module)?;
    let link = format!("<link href={base}/{} integrity={} rel=stylesheet>", style.name, style.digest);
    let at = page.find("<script type=module>").ok_or_else(|| missing("the script that starts the app"))?;
    place::write(&folder.join(PAGE), [&page[..at], &link, &page[at..]].concat())
}

fn missing(what: &str) -> Failure {
    Failure::new(format!("index.html: {what} was not found, so the page of Inspection cannot be made from it"))
}

/// A file with its digest in its name.
struct Named {
    name: String,
    digest: String,
}

fn named(folder: &Path, plain: &str) -> Outcome<Named> {
    let path = folder.join(plain);
    let content = place::bytes(&path)?;
    let hash = &site::hex(&Sha256::digest(&content))[..16];
    let (stem, rest) = plain.split_at(plain.find(['.', '_']).unwrap_or(plain.len()));
    let name = format!("{stem}-{hash}{rest}");
    fs::rename(&path, folder.join(&name)).map_err(|e| Failure::file("rename", &path, &e))?;
    let digest = format!("sha384-{}", base64::engine::general_purpose::STANDARD.encode(Sha384::digest(&content)));
    Ok(Named { name, digest })
}

/// The first module's files as the page names them.
struct First<'h> {
    script: &'h str,
    script_digest: &'h str,
    module: &'h str,
    module_digest: &'h str,
}

impl<'h> First<'h> {
    fn find(html: &'h str) -> Outcome<Self> {
        let script = between(html, "import init, * as bindings from '", "'")?;
        let module = between(html, "module_or_path: '", "'")?;
        let (script_digest, module_digest) = (digest_of(html, script)?, digest_of(html, module)?);
        Ok(Self { script, script_digest, module, module_digest })
    }
}

fn between<'h>(html: &'h str, before: &str, after: &str) -> Outcome<&'h str> {
    let found = html.split_once(before).and_then(|(_, rest)| rest.split_once(after));
    found.map(|(found, _)| found).ok_or_else(|| missing(before))
}

/// The digest in the link that preloads a file.
fn digest_of<'h>(html: &'h str, address: &str) -> Outcome<&'h str> {
    between(html, &format!("href={address} integrity="), " ")
}

fn replaced(html: &str, address: &str, digest: &str, base: &str, by: &Named) -> Outcome<String> {
    if html.matches(address).count() != 2 || html.matches(digest).count() != 1 {
        return Err(missing(address));
    }
    Ok(html.replace(address, &format!("{base}/{}", by.name)).replace(digest, &by.digest))
}

#[cfg(test)]
mod tests {
    use super::*;

    const HTML: &str = "<head><script type=module>import init, * as bindings from '/field/web-1.js';\n\
        const wasm = await init({ module_or_path: '/field/web-1_bg.wasm' });</script>\
        <link href=/field/web-1.js integrity=sha384-a rel=modulepreload>\
        <link as=fetch href=/field/web-1_bg.wasm integrity=sha384-b rel=preload></head>";

    #[test]
    fn the_second_page_asks_for_its_own_files_and_for_none_of_the_first() {
        let folder = std::env::temp_dir().join(format!("galeframe-second-page-{}", std::process::id()));
        for name in [SCRIPT, MODULE, STYLE] {
            place::write(&folder.join(name), name).unwrap();
        }
        write(&folder, HTML).unwrap();
        let page = place::text(&folder.join(PAGE)).unwrap();
        let files = place::files_under(&folder, |_| false).unwrap();
        fs::remove_dir_all(&folder).unwrap();
        assert!(!page.contains("web-1") && !page.contains("sha384-a") && !page.contains("sha384-b"), "{page}");
        let own: Vec<String> = files.iter().map(|file| place::address_of(file, &folder)).collect();
        for name in own.iter().filter(|name| *name != PAGE) {
            assert!(page.contains(&format!("/field/{name}")), "{name} in {page}");
            assert!(is_its_own(name) && crate::http::is_hashed(name), "{name}");
        }
        assert_eq!(own.len(), 4);
    }

    #[test]
    fn a_page_of_another_form_is_refused() {
        assert!(First::find("<head></head>").is_err());
        assert!(First::find(&HTML.replace("integrity=", "data-x=")).is_err());
    }
}
