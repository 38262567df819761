//! Why the phone did not keep something, as sentences.

/// A failure of the phone's storage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StoreError {
    /// No room.
    Full,
    /// The browser keeps nothing here.
    NotAllowed,
    /// Another window holds an older database open.
    HeldByOther,
    /// Another window has already moved on to a newer database.
    NewerVersion,
    /// The phone did not answer in time.
    NoAnswer,
    /// Anything else, with the browser's own words.
    Other(String),
}

impl StoreError {
    /// What happened and what to do, in a sentence or two.
    pub fn sentence(&self) -> String {
        match self {
            Self::Full => {
                "Not kept: the phone is full. Free some room, then change anything here and it is tried again. \
                           Until then the work is on this screen only."
                    .to_owned()
            }
            Self::NotAllowed => {
                "Not kept: this browser keeps nothing here, as in a private window. Open Galeframe in an \
                                 ordinary window. Until then the work is on this screen only."
                    .to_owned()
            }
            Self::HeldByOther => {
                "Not kept: another window of Galeframe is in the way. Close the other window, then load \
                                  this one again."
                    .to_owned()
            }
            Self::NewerVersion => {
                "Not kept: another window runs a newer version. Note the answer, then load this window \
                                   again."
                    .to_owned()
            }
            Self::NoAnswer => {
                "Not kept: the phone's storage does not answer. Close other windows of Galeframe, then load \
                               this one again. Until then the work is on this screen only."
                    .to_owned()
            }
            Self::Other(words) => format!(
                "Not kept: the phone's storage said \u{201c}{words}\u{201d}. The work is on this screen only; note the \
                 answer before closing it."
            ),
        }
    }
}

impl From<idb::Error> for StoreError {
    fn from(error: idb::Error) -> Self {
        // The library wraps the browser's exception in many variants; its name is in the text of each.
        let words = format!("{error} {error:?}");
        let says = |name: &str| words.contains(name);
        if says("QuotaExceeded") {
            Self::Full
        } else if says("VersionError") {
            Self::NewerVersion
        } else if says("SecurityError") || says("InvalidStateError") || says("NotAllowedError") || says("NotFound(") {
            Self::NotAllowed
        } else {
            Self::Other(error.to_string())
        }
    }
}
