//! Opening what was stored.

use serde::Deserialize;
use serde::de::DeserializeOwned;

use crate::part::Part;
use crate::typing::Typing;
use crate::{FORMAT, PartBody};

/// Why stored bytes do not open; `Display` is a sentence for the person whose work it is. The bytes are kept inside.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum OpenError {
    /// Written by a newer version of this program.
    #[error(
        "This was saved by a newer version: format {found}, and this version opens formats 1 to {FORMAT}. It was left \
         as it is. Take up the new version, then open it again."
    )]
    Newer {
        /// The format found.
        found: u32,
        /// What was stored, untouched.
        bytes: Vec<u8>,
    },
    /// Not something that this program wrote.
    #[error("This cannot be read: {reason}. It was set aside as it is and nothing of it was changed.")]
    Corrupt {
        /// What is wrong, in words.
        reason: String,
        /// What was stored, untouched.
        bytes: Vec<u8>,
    },
}

impl OpenError {
    /// What was stored, untouched.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        match self {
            Self::Newer { bytes, .. } | Self::Corrupt { bytes, .. } => bytes,
        }
    }
}

/// The format alone: a newer one is refused whole, whatever else it holds.
#[derive(Deserialize)]
struct FormatOnly {
    format: u32,
}

fn corrupt(reason: &str, bytes: &[u8]) -> OpenError {
    OpenError::Corrupt { reason: reason.to_owned(), bytes: bytes.to_vec() }
}

/// What says which format it is written in.
pub(crate) trait Versioned {
    /// The format.
    fn format(&self) -> u32;
}

/// Opens what was stored. A long log is read at once, so what reads whole is read once; the format is looked at by itself
/// only where it does not.
pub(crate) fn open<T: DeserializeOwned + Versioned>(bytes: &[u8]) -> Result<T, OpenError> {
    let text = core::str::from_utf8(bytes).map_err(|_| corrupt("it is not text", bytes))?;
    let whole = serde_json::from_str::<T>(text);
    let format = match &whole {
        Ok(whole) => whole.format(),
        Err(_) => {
            serde_json::from_str::<FormatOnly>(text)
                .map_err(|_| corrupt("it does not say which format it is in", bytes))?
                .format
        }
    };
    match format {
        0 => Err(corrupt("there is no format 0", bytes)),
        format if format > FORMAT => Err(OpenError::Newer { found: format, bytes: bytes.to_vec() }),
        _ => whole.map_err(|error| corrupt(&format!("a piece is missing or unknown ({error})"), bytes)),
    }
}

/// Opens a stored part of a job.
///
/// # Errors
/// When it was written by a newer version, or cannot be read. The bytes come back with the reason.
pub fn open_part(bytes: &[u8]) -> Result<Part, OpenError> {
    let part: Part = open(bytes)?;
    let own = match &part.body {
        PartBody::Header(header) => Some(&header.id),
        PartBody::Head { .. } | PartBody::Site { .. } => None,
    };
    ids_are_plain([&part.job].into_iter().chain(own), bytes)?;
    Ok(part)
}

/// An id becomes part of a key and of a file's name: it holds letters, digits and dashes only.
pub(crate) fn ids_are_plain<'a>(ids: impl IntoIterator<Item = &'a String>, bytes: &[u8]) -> Result<(), OpenError> {
    let is_plain = |id: &String| !id.is_empty() && id.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-');
    if ids.into_iter().all(is_plain) {
        Ok(())
    } else {
        Err(corrupt("an id holds something other than letters, digits and dashes", bytes))
    }
}

/// Opens what was being typed.
///
/// # Errors
/// When it was written by a newer version, or cannot be read. The bytes come back with the reason.
pub fn open_typing(bytes: &[u8]) -> Result<Typing, OpenError> {
    open(bytes)
}
