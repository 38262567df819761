//! A job taken in as a job of its own.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::JobFile;
use crate::part::{Part, PartBody};
use crate::walk::{Record, RecordBody};

/// The same job as one of its own. Every id is renewed: of the job, its checks, its records, marks and photos. So the
/// copy shares nothing with the job that it was made from, wherever they are stored, and bringing a later file of that
/// job in cannot touch it. What spoke of what still does, also where the thing spoken of is missing. Times, numbers and
/// revisions stay, and names but for the job's own, which says that it is a copy.
///
/// `new_id` gives plain ids, each a new one.
#[must_use]
pub fn as_copy(file: JobFile, new_id: &mut dyn FnMut() -> String) -> JobFile {
    let job = new_id();
    let mut ids = Renewed { known: BTreeMap::new(), new_id };
    let parts = file.parts.into_iter().map(|part| ids.part(part, &job)).collect();
    let log = file.log.into_iter().map(|record| ids.record(record, &job)).collect();
    let photos = file.photos.into_iter().map(|(id, bytes)| (ids.of(id), bytes)).collect();
    JobFile { job, parts, log, photos }
}

/// The new ids by the old.
struct Renewed<'a> {
    known: BTreeMap<String, String>,
    new_id: &'a mut dyn FnMut() -> String,
}

impl Renewed<'_> {
    fn of(&mut self, old: String) -> String {
        self.known.entry(old).or_insert_with(&mut *self.new_id).clone()
    }

    fn renew(&mut self, id: &mut String) {
        *id = self.of(core::mem::take(id));
    }

    fn part(&mut self, mut part: Part, job: &str) -> Part {
        job.clone_into(&mut part.job);
        match &mut part.body {
            PartBody::Header(header) => self.renew(&mut header.id),
            PartBody::Head { name } => name.push_str(" (copy)"),
            PartBody::Site { .. } => {}
        }
        part
    }

    fn record(&mut self, mut record: Record, job: &str) -> Record {
        job.clone_into(&mut record.job);
        self.renew(&mut record.id);
        self.renew(&mut record.walk);
        match &mut record.body {
            RecordBody::Begun { .. } | RecordBody::Heading { .. } | RecordBody::Signed(_) => {}
            RecordBody::Mark(version) => self.renew(&mut version.mark),
            RecordBody::Look(look) => {
                let look = Arc::make_mut(look);
                self.renew(&mut look.mark);
                if let Some(follows) = &mut look.follows {
                    self.renew(&mut follows.look);
                }
            }
            RecordBody::Photo(photo) => {
                self.renew(&mut photo.of);
                self.renew(&mut photo.photo);
            }
            RecordBody::Drawn { photo, .. } => self.renew(photo),
            RecordBody::FollowUp { look, .. } => self.renew(look),
            RecordBody::Struck { record, .. } => self.renew(record),
        }
        record
    }
}
