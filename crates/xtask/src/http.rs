//! As much of HTTP as serving a folder to a browser takes: reading a request's head, and the answer to it.

use crate::policy;
use std::io::{self, BufRead, Write};
use std::path::{Path, PathBuf};

/// A request's head longer than this is not from a browser.
const LONGEST_HEAD: u64 = 16 * 1024;

/// What of a request matters here.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Request {
    /// `GET`, `HEAD` or what else was sent.
    pub method: String,
    /// The path, still percent-encoded, without the query.
    pub path: String,
    /// The value of `Accept-Encoding`.
    pub encodings: String,
    /// The value of `If-None-Match`.
    pub known_tag: String,
}

impl Request {
    /// Reads the head of a request; `None` when it is not one.
    pub fn read(stream: impl BufRead) -> Option<Self> {
        let mut lines = stream.take(LONGEST_HEAD).lines();
        let first = lines.next()?.ok()?;
        let mut words = first.split_whitespace();
        let (method, target) = (words.next()?.to_owned(), words.next()?);
        let path = target.split(['?', '#']).next().unwrap_or_default().to_owned();
        let mut request = Self { method, path, ..Self::default() };
        for line in lines.map_while(Result::ok).take_while(|line| !line.is_empty()) {
            let Some((name, value)) = line.split_once(':') else { continue };
            match name.to_ascii_lowercase().as_str() {
                "accept-encoding" => value.trim().clone_into(&mut request.encodings),
                "if-none-match" => value.trim().clone_into(&mut request.known_tag),
                _ => {}
            }
        }
        Some(request)
    }

    fn accepts(&self, encoding: &str) -> bool {
        self.encodings.split(',').any(|one| one.split(';').next().is_some_and(|name| name.trim() == encoding))
    }
}

/// What goes back.
#[derive(Debug)]
pub struct Answer {
    /// The status line without the version.
    pub status: &'static str,
    headers: Vec<(&'static str, String)>,
    body: Vec<u8>,
}

impl Answer {
    fn plain(status: &'static str) -> Self {
        let headers = vec![("Content-Type", "text/plain; charset=utf-8".to_owned())];
        Self { status, headers, body: format!("{status}\n").into_bytes() }
    }

    /// The value of a header, if it is sent.
    #[cfg(test)]
    pub fn header(&self, name: &str) -> Option<&str> {
        self.headers.iter().find(|(n, _)| *n == name).map(|(_, value)| value.as_str())
    }

    /// Writes it; `with_body` is false for `HEAD`.
    pub fn send(&self, mut stream: impl Write, with_body: bool) -> io::Result<()> {
        let mut head =
            format!("HTTP/1.1 {}\r\nContent-Length: {}\r\nConnection: close\r\n", self.status, self.body.len());
        let always = ALWAYS_SENT.iter().map(|(name, value)| (*name, *value));
        for (name, value) in always.chain(self.headers.iter().map(|(name, value)| (*name, value.as_str()))) {
            head.push_str(&format!("{name}: {value}\r\n"));
        }
        head.push_str("\r\n");
        stream.write_all(head.as_bytes())?;
        if with_body {
            stream.write_all(&self.body)?;
        }
        stream.flush()
    }
}

/// The file that answers for its folder.
const PAGE: &str = "index.html";

/// No other site may frame the app, guess a type, learn an address or share a browsing group.
const ALWAYS_SENT: [(&str, &str); 5] = [
    ("Content-Security-Policy", "frame-ancestors 'none'"),
    ("X-Frame-Options", "DENY"),
    ("X-Content-Type-Options", "nosniff"),
    ("Referrer-Policy", "no-referrer"),
    ("Cross-Origin-Opener-Policy", "same-origin"),
];

/// The answer of the folder `site` to `request`.
///
/// A path without an extension is a place inside the app and gets the page of its folder, or the first page; a missing
/// file is a missing file.
pub fn answer(site: &Path, request: &Request) -> Answer {
    if request.method != "GET" && request.method != "HEAD" {
        return Answer::plain("405 Method Not Allowed");
    }
    let Some(inside) = safe_path(&request.path) else {
        return Answer::plain("400 Bad Request");
    };
    let inside = match inside.extension() {
        Some(_) => inside,
        None if site.join(&inside).join(PAGE).is_file() => inside.join(PAGE),
        None => PathBuf::from(PAGE),
    };
    match best_copy(&site.join(&inside), request) {
        Some((body, encoding)) => file_answer(&inside, body, encoding, request),
        None => Answer::plain("404 Not Found"),
    }
}

/// The decoded path below the site's folder; `None` when it leads out of it.
fn safe_path(path: &str) -> Option<PathBuf> {
    let decoded = percent_decoded(path.strip_prefix('/')?)?;
    if decoded.contains(['\\', '\0', ':']) || decoded.split('/').any(|part| part.starts_with('.')) {
        return None;
    }
    Some(decoded.split('/').filter(|part| !part.is_empty()).collect())
}

fn percent_decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        bytes.push(match byte {
            b'%' => u8::from_str_radix(std::str::from_utf8(&[rest.next()?, rest.next()?]).ok()?, 16).ok()?,
            plain => plain,
        });
    }
    String::from_utf8(bytes).ok()
}

/// The smallest stored form of the file that the browser takes.
fn best_copy(path: &Path, request: &Request) -> Option<(Vec<u8>, Option<&'static str>)> {
    for (encoding, suffix) in [("br", ".br"), ("gzip", ".gz")] {
        let mut name = path.as_os_str().to_owned();
        name.push(suffix);
        if request.accepts(encoding)
            && let Ok(body) = std::fs::read(name)
        {
            return Some((body, Some(encoding)));
        }
    }
    std::fs::read(path).ok().map(|body| (body, None))
}

fn file_answer(inside: &Path, body: Vec<u8>, encoding: Option<&'static str>, request: &Request) -> Answer {
    let name = inside.file_name().unwrap_or_default().to_string_lossy();
    let tag = format!("\"{}\"", policy::digest(&body));
    let cache = if is_hashed(&name) { "public, max-age=31536000, immutable" } else { "no-cache" };
    let mut headers = vec![
        ("Content-Type", mime(&name).to_owned()),
        ("Cache-Control", cache.to_owned()),
        ("Vary", "Accept-Encoding".to_owned()),
        ("ETag", tag.clone()),
    ];
    headers.extend(encoding.map(|encoding| ("Content-Encoding", encoding.to_owned())));
    if request.known_tag == tag {
        return Answer { status: "304 Not Modified", headers, body: Vec::new() };
    }
    Answer { status: "200 OK", headers, body }
}

/// Whether the build put a digest of the content into the name: `web-0123456789abcdef_bg.wasm`.
pub fn is_hashed(name: &str) -> bool {
    name.rsplit_once('-').is_some_and(|(_, last)| {
        let digits = last.bytes().take_while(u8::is_ascii_hexdigit).count();
        digits == 16 && last[16..].starts_with(['.', '_'])
    })
}

/// The type of a file by its extension.
pub fn mime(name: &str) -> &'static str {
    match name.rsplit_once('.').map_or("", |(_, extension)| extension) {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        "json" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" | "jpeg" => "image/jpeg",
        "pdf" => "application/pdf",
        "txt" | "md" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
#[path = "http_tests.rs"]
mod tests;
