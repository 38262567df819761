//! The records of the log.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

use crate::FORMAT;
use crate::document::Fields;
use crate::open::{OpenError, Versioned, ids_are_plain, open};

/// Inputs that are a list, by their stable names: `pulls` to `16`, `33`, `50`.
pub type Lists = BTreeMap<String, Vec<String>>;

/// A line drawn with a finger: points across and down, in ten-thousandths of the width and of the height.
pub type Stroke = Vec<(u16, u16)>;

/// One record of a walk.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    /// The format it is written in.
    pub format: u32,
    /// Its stable id.
    pub id: String,
    /// The job that it belongs to.
    pub job: String,
    /// The walk that it belongs to: the id of the record that began it.
    pub walk: String,
    /// One more than the highest number of the log when it was added. A phone's clock may be wrong; this tells which
    /// record knew of which.
    pub number: u32,
    /// The phone's own time in ISO form, as the caller gave it.
    pub at: String,
    /// Who added it, as typed; empty where nobody said.
    pub by: String,
    /// What it holds.
    pub body: RecordBody,
}

impl Versioned for Record {
    fn format(&self) -> u32 {
        self.format
    }
}

/// What a record holds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum RecordBody {
    /// The walk begins.
    Begun {
        /// Its name: `Walk 1`.
        name: String,
    },
    /// Where, who, and what the work is compared with, from now on: the whole of it, by the inputs' stable names.
    Heading {
        /// The inputs.
        fields: Fields,
    },
    /// A mark, from now on.
    Mark(MarkVersion),
    /// Something was measured. It is never changed, so what stands shares it.
    Look(Arc<Look>),
    /// A photo was taken. Its bytes are kept beside the log.
    Photo(Photo),
    /// A photo was drawn on: the whole drawing, from now on. The photo itself stays as it was taken.
    Drawn {
        /// The photo's id.
        photo: String,
        /// The lines.
        strokes: Vec<Stroke>,
    },
    /// Something became of a finding.
    FollowUp {
        /// The look it is about.
        look: String,
        /// What.
        step: Step,
        /// In words: what is to be done, who said yes.
        says: String,
    },
    /// A record is crossed out. It stays in the log and in the printed record.
    Struck {
        /// Which.
        record: String,
        /// Why.
        why: String,
    },
    /// The walk is signed.
    Signed(Signature),
}

/// What is required of a mark: what was typed from the drawing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MarkVersion {
    /// The mark's stable id, the same in all its versions.
    pub mark: String,
    /// Its name: `W1`, `garage left`.
    pub name: String,
    /// By the inputs' stable names.
    pub fields: Fields,
}

/// One measurement: everything it is judged from, so that it can be judged again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Look {
    /// The mark's id.
    pub mark: String,
    /// Where on the mark, as typed.
    pub place: String,
    /// What was looked at, by its stable name: `stud_spacing`.
    pub kind: String,
    /// The inputs that are one text.
    pub texts: Fields,
    /// The inputs that are a list.
    pub lists: Lists,
    /// The verdict in words at the time: `out`.
    pub verdict: String,
    /// The answer in words at the time.
    pub says: String,
    /// How bad it is in the eyes of whoever looked: a stable name, empty where nothing was said.
    pub severity: String,
    /// A note of one's own.
    pub note: String,
    /// The look that this one corrects or checks again.
    pub follows: Option<Follows>,
}

/// How a look comes after another.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Follows {
    /// The earlier look.
    pub look: String,
    /// Why it was done again.
    pub because: Because,
    /// The same in one's own words; may be empty.
    pub why: String,
}

/// Why a look was done again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Because {
    /// The earlier one was typed or measured wrongly.
    Corrected,
    /// What it found was mended.
    Mended,
}

/// A photo.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Photo {
    /// The look or the mark that it is of.
    pub of: String,
    /// The id that its bytes are kept under.
    pub photo: String,
    /// Its width in pixels.
    pub width: u32,
    /// Its height in pixels.
    pub height: u32,
    /// What it shows: `wide`, `close`, `inside`, `outside`.
    pub shows: String,
    /// Whether a tape or a rule is in view.
    pub tape_in_view: bool,
    /// A caption of one's own.
    pub caption: String,
}

/// What became of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Step {
    /// What is to be done is agreed, by those who must say yes.
    Agreed,
    /// It was done.
    Done,
}

/// A signature.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Signature {
    /// Who signs.
    pub name: String,
    /// Title and licence.
    pub title: String,
    /// The closing words that the signer chose, by their stable name.
    pub closing: String,
    /// The signature as it was drawn.
    pub strokes: Vec<Stroke>,
}

impl Record {
    /// The JSON that is stored.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Texts, numbers and text-keyed maps always have a JSON form.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// The first version of a record, in the present format.
    #[must_use]
    pub fn new(id: String, job: &str, walk: &str, number: u32, body: RecordBody) -> Self {
        let (job, walk) = (job.to_owned(), walk.to_owned());
        Self { format: FORMAT, id, job, walk, number, at: String::new(), by: String::new(), body }
    }
}

/// Opens a stored record.
///
/// # Errors
/// When it was written by a newer version, or cannot be read. The bytes come back with the reason.
pub fn open_record(bytes: &[u8]) -> Result<Record, OpenError> {
    let record: Record = open(bytes)?;
    let own = match &record.body {
        RecordBody::Mark(version) => Some(&version.mark),
        RecordBody::Photo(photo) => Some(&photo.photo),
        _ => None,
    };
    ids_are_plain([&record.id, &record.job, &record.walk].into_iter().chain(own), bytes)?;
    Ok(record)
}
