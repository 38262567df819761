//! Saved checks.

use job::{Part, PartBody, SavedHeader};
use leptos::prelude::*;

use super::keeper::Keeper;
use super::{StoreError, parts};
use crate::browser;

/// How a check was saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saved {
    /// Under its own name.
    Kept(SavedHeader),
    /// Another window had changed it since it was opened: both are kept, this one under another name.
    AsCopy(SavedHeader),
}

impl Saved {
    /// The check as it was saved.
    pub const fn header(&self) -> &SavedHeader {
        match self {
            Self::Kept(header) | Self::AsCopy(header) => header,
        }
    }
}

impl Keeper {
    /// Saves a check: anew when its id is empty, else over the one it was opened from. Comes back when it is kept.
    pub async fn save(self, mut header: SavedHeader) -> Result<Saved, StoreError> {
        if header.id.is_empty() {
            header.id = browser::new_id();
        }
        if self.write_header(&header).await? {
            return Ok(Saved::Kept(header));
        }
        header.id = browser::new_id();
        header.name = format!("{} (other window)", header.name);
        self.write_header(&header).await?;
        Ok(Saved::AsCopy(header))
    }

    async fn write_header(self, header: &SavedHeader) -> Result<bool, StoreError> {
        let job = self.job.with_untracked(|job| job.id.clone());
        let part = Part::new(&job, PartBody::Header(header.clone()));
        let known = self.parts.with_value(|parts| parts.get(part.key().as_str()).map(|part| part.revision));
        let (stored, written) = parts::change(&job, &part.key(), |stored| {
            let as_known = stored.is_none_or(|stored| Some(stored.revision) == known);
            as_known.then(|| part.body.clone())
        })
        .await?;
        self.remember(stored);
        Ok(written)
    }

    /// Takes a saved check away; gives false when another window has changed it meanwhile.
    pub async fn remove(self, header: &SavedHeader) -> Result<bool, StoreError> {
        let job = self.job.with_untracked(|job| job.id.clone());
        let key = Part::new(&job, PartBody::Header(header.clone())).key();
        let known = self.parts.with_value(|parts| parts.get(key.as_str()).map(|part| part.revision));
        let gone = parts::remove(&key, known.unwrap_or_default()).await?;
        if gone {
            self.parts.update_value(|parts| {
                parts.remove(key.as_str());
            });
        }
        self.remember(None);
        Ok(gone)
    }
}
