//! The compressed copies that a host sends to browsers that take them.

use crate::outcome::{Failure, Outcome};
use flate2::Compression;
use flate2::write::GzEncoder;
use std::io::Write as _;

/// The smallest brotli form (quality 11).
pub fn brotli(bytes: &[u8]) -> Outcome<Vec<u8>> {
    let parameters = brotli::enc::BrotliEncoderParams { quality: 11, lgwin: 22, ..Default::default() };
    let mut small = Vec::new();
    brotli::BrotliCompress(&mut &*bytes, &mut small, &parameters)
        .map_err(|e| Failure::new(format!("brotli could not compress: {e}")))?;
    Ok(small)
}

/// The smallest gzip form.
pub fn gzip(bytes: &[u8]) -> Outcome<Vec<u8>> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    let written = encoder.write_all(bytes).and_then(|()| encoder.finish());
    written.map_err(|e| Failure::new(format!("gzip could not compress: {e}")))
}

/// Whether a file of this name gets smaller: pictures are compressed already.
pub fn is_worth_it(name: &str) -> bool {
    let extension = name.rsplit_once('.').map_or("", |(_, extension)| extension);
    ["html", "js", "css", "wasm", "svg", "webmanifest", "json", "txt"].contains(&extension)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read as _;

    #[test]
    fn both_forms_give_the_bytes_back() {
        let bytes = b"the header over the opening ".repeat(50);
        let mut from_brotli = Vec::new();
        brotli::Decompressor::new(&*brotli(&bytes).unwrap(), 4096).read_to_end(&mut from_brotli).unwrap();
        let mut from_gzip = Vec::new();
        flate2::read::GzDecoder::new(&*gzip(&bytes).unwrap()).read_to_end(&mut from_gzip).unwrap();
        assert_eq!(from_brotli, bytes);
        assert_eq!(from_gzip, bytes);
    }
}
