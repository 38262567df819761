//! The content policy that is written into `index.html`.
//!
//! Nothing may run, be shown or be fetched but what this site serves, and of inline code only what the build wrote.
//! `require-trusted-types-for` is left out: the interface library sets static parts of a view through `innerHTML`,
//! which it blocks; the app then starts with an empty page.

use crate::outcome::{Failure, Outcome};
use base64::Engine as _;
use sha2::{Digest as _, Sha256};

const CHARSET: &str = "<meta charset=";

/// Puts the policy into the page, right after the character set so that it governs everything behind it.
pub fn seal(html: &str) -> Outcome<String> {
    if html.contains(" style=") {
        return Err(Failure::new("index.html: a style attribute would be blocked by the content policy; use a rule"));
    }
    let at = html.find(CHARSET).and_then(|start| Some(start + html[start..].find('>')? + 1));
    let at = at.ok_or_else(|| Failure::new("index.html: there is no <meta charset> to put the policy after"))?;
    let policy = of(html);
    let meta = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
    Ok([&html[..at], &meta, &html[at..]].concat())
}

/// The policy for a page, with the hashes of its inline code.
pub fn of(html: &str) -> String {
    let scripts = hashes(html, "script");
    let styles = hashes(html, "style");
    format!(
        "default-src 'none'; script-src 'self'{scripts} 'wasm-unsafe-eval'; style-src 'self'{styles}; \
         img-src 'self' blob: data:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'self'; \
         form-action 'none'"
    )
}

/// `" 'sha256-…'"` for each inline element of the name.
fn hashes(html: &str, element: &str) -> String {
    inline_bodies(html, element).map(|body| format!(" '{}'", digest(body.as_bytes()))).collect()
}

/// The digest as the policy and the worker's `integrity` write it.
pub fn digest(bytes: &[u8]) -> String {
    format!("sha256-{}", base64::engine::general_purpose::STANDARD.encode(Sha256::digest(bytes)))
}

/// What stands between the tags of each `element` that fetches nothing.
fn inline_bodies<'h>(html: &'h str, element: &str) -> impl Iterator<Item = &'h str> {
    let (open, close) = (format!("<{element}"), format!("</{element}>"));
    html.match_indices(&open).map(|(at, _)| at).collect::<Vec<_>>().into_iter().filter_map(move |at| {
        let (tag, rest) = html[at..].split_once('>')?;
        let body = rest.split_once(&close)?.0;
        (!tag.contains(" src=")).then_some(body)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The digest of the empty text is a published one (FIPS 180-4 examples).
    #[test]
    fn a_digest_is_the_published_one() {
        assert_eq!(digest(b""), "sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=");
    }

    #[test]
    fn only_inline_code_is_hashed() {
        let html = "<meta charset=utf-8><style>a{}</style><script src=x.js></script><script type=module>go()</script>";
        let policy = of(html);
        assert!(policy.contains(&format!("script-src 'self' '{}' 'wasm-unsafe-eval'", digest(b"go()"))));
        assert!(policy.contains(&format!("style-src 'self' '{}';", digest(b"a{}"))));
    }

    #[test]
    fn the_policy_stands_right_after_the_charset() {
        let sealed = seal("<!doctype html><meta charset=\"utf-8\"><title>t</title>").unwrap();
        assert!(
            sealed.starts_with("<!doctype html><meta charset=\"utf-8\"><meta http-equiv=\"Content-Security-Policy\"")
        );
        assert!(sealed.ends_with("\"><title>t</title>"));
    }

    #[test]
    fn a_page_that_the_policy_would_break_is_refused() {
        assert!(seal("<title>t</title>").is_err());
        assert!(seal("<meta charset=utf-8><p style=color:red>").is_err());
    }
}
