//! The pages beside the first: the same page with another module, so that none weighs on the others.
//!
//! trunk builds their modules under plain names and writes no pages for them. Here each one's files get names with their
//! own digest, and its `index.html`, in a folder of its name, is made from the first page's by putting them in the place
//! of the first module's. A folder with a page in it is answered by every host without a redirect.

use crate::outcome::{Failure, Outcome};
use crate::place;
use crate::site;
use base64::Engine as _;
use sha2::{Digest as _, Sha256, Sha384};
use std::fs;
use std::path::Path;

/// A page beside the first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Page {
    /// Its name: of its module, its stylesheet and its folder.
    pub name: &'static str,
    /// The most that it may weigh, in bytes of brotli.
    pub budget: usize,
}

/// Every page but the first.
pub const PAGES: [Page; 5] = [
    Page { name: "bracing", budget: 500_000 },
    Page { name: "inspection", budget: 500_000 },
    Page { name: "layout", budget: 500_000 },
    Page { name: "member", budget: 500_000 },
    Page { name: "site", budget: 400_000 },
];

impl Page {
    /// Where it stands: `inspection/index.html`.
    pub fn file(self) -> String {
        format!("{}/index.html", self.name)
    }

    /// Whether a file is of this page alone.
    pub fn owns(self, address: &str) -> bool {
        address.strip_prefix(self.name).is_some_and(|rest| rest.starts_with(['-', '/']))
    }
}

/// Writes every page beside the first, whose text is `html`.
pub fn write(folder: &Path, html: &str) -> Outcome {
    PAGES.into_iter().try_for_each(|page| write_one(folder, html, page))
}

/// Names the page's own files, and writes it.
fn write_one(folder: &Path, html: &str, page: Page) -> Outcome {
    let of_page = |ending| named(folder, &format!("{}{ending}", page.name));
    let (script, module, style) = (of_page(".js")?, of_page("_bg.wasm")?, of_page(".css")?);
    let first = First::find(html)?;
    let base = first.script.rsplit_once('/').map_or("", |(base, _)| base);
    let text = replaced(html, first.script, first.script_digest, base, &script)?;
    let text = replaced(&text, first.module, first.module_digest, base, &module)?;
    let link = format!("<link href={base}/{} integrity={} rel=stylesheet>", style.name, style.digest);
    let at = text.find("<script type=module>").ok_or_else(|| missing("the script that starts the app"))?;
    place::write(&folder.join(page.file()), [&text[..at], &link, &text[at..]].concat())
}

fn missing(what: &str) -> Failure {
    Failure::new(format!("index.html: {what} was not found, so no other page can be made from it"))
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
    fn a_page_asks_for_its_own_files_and_for_none_of_another() {
        let folder = std::env::temp_dir().join(format!("galeframe-pages-{}", std::process::id()));
        for page in PAGES {
            for ending in [".js", "_bg.wasm", ".css"] {
                place::write(&folder.join(format!("{}{ending}", page.name)), page.name.to_owned() + ending).unwrap();
            }
        }
        write(&folder, HTML).unwrap();
        let texts = PAGES.map(|page| place::text(&folder.join(page.file())).unwrap());
        let files = place::files_under(&folder, |_| false).unwrap();
        fs::remove_dir_all(&folder).unwrap();
        let files: Vec<String> = files.iter().map(|file| place::address_of(file, &folder)).collect();
        assert_eq!(files.len(), 4 * PAGES.len());
        for (page, text) in PAGES.iter().zip(texts) {
            assert!(!text.contains("web-1") && !text.contains("sha384-a") && !text.contains("sha384-b"), "{text}");
            for name in files.iter().filter(|name| !name.ends_with(".html")) {
                assert_eq!(text.contains(&format!("/field/{name}")), page.owns(name), "{name} in {text}");
                assert!(crate::http::is_hashed(name), "{name}");
            }
        }
    }

    #[test]
    fn a_file_belongs_to_the_page_that_it_is_named_after() {
        let owner = |address: &str| PAGES.iter().find(|page| page.owns(address)).map(|page| page.name);
        assert_eq!(owner("site/index.html"), Some("site"));
        assert_eq!(owner("inspection-0123456789abcdef.js"), Some("inspection"));
        assert_eq!((owner("sitemap.txt"), owner("index.html")), (None, None));
    }

    #[test]
    fn a_page_of_another_form_is_refused() {
        assert!(First::find("<head></head>").is_err());
        assert!(First::find(&HTML.replace("integrity=", "data-x=")).is_err());
    }
}
