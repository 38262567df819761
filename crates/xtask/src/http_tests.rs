//! What a browser gets back for each kind of request.

use super::*;

fn get(path: &str) -> Request {
    Request { method: "GET".to_owned(), path: path.to_owned(), ..Request::default() }
}

/// A site on disk that is gone at the end of the test.
struct Site(PathBuf);

impl Site {
    fn new(test: &str) -> Self {
        let folder = std::env::temp_dir().join(format!("galeframe-http-{}-{test}", std::process::id()));
        for (name, content) in [
            ("index.html", "page"),
            ("sw.js", "worker"),
            ("manifest.webmanifest", "{}"),
            ("web-0123456789abcdef_bg.wasm", "module"),
            ("web-0123456789abcdef_bg.wasm.br", "small"),
        ] {
            crate::place::write(&folder.join(name), content).unwrap();
        }
        Self(folder)
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

#[test]
fn a_place_inside_the_app_gets_the_page_and_a_missing_file_does_not() {
    let site = Site::new("places");
    for path in ["/", "/members/header", "/index.html", "/members/7%27%203"] {
        let answer = answer(&site.0, &get(path));
        assert_eq!((answer.status, answer.body.as_slice()), ("200 OK", b"page".as_slice()), "{path}");
        assert_eq!(answer.header("Cache-Control"), Some("no-cache"));
    }
    assert_eq!(answer(&site.0, &get("/web-ffffffffffffffff.js")).status, "404 Not Found");
}

#[test]
fn a_path_cannot_lead_out_of_the_folder() {
    let site = Site::new("paths");
    for path in ["/../secret.txt", "/%2e%2e/secret.txt", "/a/..%2fsecret.txt", "/.git", "/a%00b.txt", "/%zz.txt", "x"] {
        assert_eq!(answer(&site.0, &get(path)).status, "400 Bad Request", "{path}");
    }
}

#[test]
fn types_and_caching_follow_the_name() {
    let site = Site::new("types");
    let module = answer(&site.0, &get("/web-0123456789abcdef_bg.wasm"));
    assert_eq!(module.header("Content-Type"), Some("application/wasm"));
    assert!(module.header("Cache-Control").unwrap().contains("immutable"));
    let worker = answer(&site.0, &get("/sw.js"));
    assert_eq!(worker.header("Content-Type"), Some("text/javascript; charset=utf-8"));
    assert_eq!(worker.header("Cache-Control"), Some("no-cache"));
    let manifest = answer(&site.0, &get("/manifest.webmanifest"));
    assert_eq!(manifest.header("Content-Type"), Some("application/manifest+json"));
}

#[test]
fn the_compressed_copy_is_sent_to_those_who_take_it() {
    let site = Site::new("compressed");
    let mut request = get("/web-0123456789abcdef_bg.wasm");
    assert_eq!(answer(&site.0, &request).header("Content-Encoding"), None);
    request.encodings = "gzip, deflate, br;q=1.0".to_owned();
    let compressed = answer(&site.0, &request);
    assert_eq!(compressed.header("Content-Encoding"), Some("br"));
    assert_eq!(compressed.header("Content-Type"), Some("application/wasm"));
    assert_eq!(compressed.body, b"small");
}

#[test]
fn an_unchanged_file_is_not_sent_again() {
    let site = Site::new("tags");
    let mut request = get("/sw.js");
    request.known_tag = answer(&site.0, &request).header("ETag").unwrap().to_owned();
    let second = answer(&site.0, &request);
    assert_eq!((second.status, second.body.len()), ("304 Not Modified", 0));
}

#[test]
fn only_reading_is_answered() {
    let site = Site::new("methods");
    let request = Request { method: "POST".to_owned(), ..get("/") };
    assert_eq!(answer(&site.0, &request).status, "405 Method Not Allowed");
}

#[test]
fn every_answer_forbids_framing() {
    let site = Site::new("framing");
    let mut sent = Vec::new();
    answer(&site.0, &get("/")).send(&mut sent, true).unwrap();
    let text = String::from_utf8(sent).unwrap();
    assert!(text.starts_with("HTTP/1.1 200 OK\r\nContent-Length: 4\r\n"), "{text}");
    assert!(text.contains("\r\nContent-Security-Policy: frame-ancestors 'none'\r\n"), "{text}");
    assert!(text.ends_with("\r\n\r\npage"), "{text}");
}

#[test]
fn a_head_is_read_as_browsers_write_it() {
    let head =
        "GET /a/b?x=1 HTTP/1.1\r\nHost: localhost\r\naccept-encoding: gzip, br\r\nIf-None-Match: \"t\"\r\n\r\nrest";
    let request = Request::read(head.as_bytes()).unwrap();
    assert_eq!((request.method.as_str(), request.path.as_str()), ("GET", "/a/b"));
    assert!(request.accepts("br") && request.accepts("gzip") && !request.accepts("zstd"));
    assert_eq!(request.known_tag, "\"t\"");
    assert_eq!(Request::read("\r\n".as_bytes()), None);
}

#[test]
fn a_hashed_name_is_told_from_a_plain_one() {
    assert!(is_hashed("style-9913adb263f59568.css"));
    assert!(is_hashed("web-cf6d3732103eb74b_bg.wasm"));
    assert!(!is_hashed("icon-192.png"));
    assert!(!is_hashed("web-cf6d3732103eb74b0.js"));
    assert!(!is_hashed("index.html"));
}
