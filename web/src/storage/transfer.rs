//! A job as a file: gathered from the stores, and brought into them in one transaction.

use std::collections::{BTreeMap, BTreeSet};

use idb::Query;
use job::Part;
use job::file::{CameIn, Here, JobFile, Met, merge_file};
use js_sys::Uint8Array;
use wasm_bindgen::JsCast;

use super::StoreError;
use super::database::{BROKEN, LOG, PARTS, PHOTOS, completed, reading, text, writing_for_good};
use super::log::{self, read_log};
use super::parts;
use crate::browser;

/// Why a job did not come in.
pub enum Trouble {
    /// The file was refused.
    File(job::file::FileError),
    /// The phone did not keep it.
    Store(StoreError),
}

impl From<StoreError> for Trouble {
    fn from(problem: StoreError) -> Self {
        Self::Store(problem)
    }
}

impl From<idb::Error> for Trouble {
    fn from(problem: idb::Error) -> Self {
        Self::Store(problem.into())
    }
}

async fn parts_of(job: &str) -> Result<Vec<Part>, StoreError> {
    let transaction = reading(&[PARTS]).await?;
    let values = transaction.object_store(PARTS)?.get_all(None, None)?.await?;
    Ok(parts::opened(&values).into_iter().filter(|part| part.job == job).collect())
}

async fn photo_ids() -> Result<BTreeSet<String>, StoreError> {
    let transaction = reading(&[PHOTOS]).await?;
    let keys = transaction.object_store(PHOTOS)?.get_all_keys(None, None)?.await?;
    let mut ids = BTreeSet::new();
    ids.extend(keys.iter().filter_map(wasm_bindgen::JsValue::as_string));
    Ok(ids)
}

/// A job with its photos, as it stands in the stores.
pub async fn gather(job: &str) -> Result<JobFile, StoreError> {
    let (parts, log) = (parts_of(job).await?, read_log(job).await?.records);
    let mut photos = BTreeMap::new();
    for id in log.iter().filter_map(log::photo_of) {
        let transaction = reading(&[PHOTOS]).await?;
        let value = transaction.object_store(PHOTOS)?.get(Query::Key(text(id)))?.await?;
        if let Some(bytes) = value.and_then(|value| value.dyn_into::<Uint8Array>().ok()) {
            photos.insert(id.to_owned(), bytes.to_vec());
        }
    }
    Ok(JobFile { job: job.to_owned(), parts, log, photos })
}

/// Brings a job file into the stores: all of it or nothing. What is here is never written over with something older;
/// what stands no longer is set aside.
pub async fn bring_in(file: JobFile) -> Result<CameIn, Trouble> {
    let job = file.job.clone();
    let (parts, log, photos) = (parts_of(&job).await?, read_log(&job).await?.records, photo_ids().await?);
    let here = Here { job: &job, parts: &parts, log: &log, photos: &photos };
    let met = merge_file(here, file, &mut browser::new_id).map_err(Trouble::File)?;
    let came_in = met.came_in;
    put(&parts, &log, met).await?;
    Ok(came_in)
}

async fn put(parts: &[Part], log: &[job::walk::Record], met: Met) -> Result<(), Trouble> {
    let transaction = writing_for_good(&[PARTS, LOG, PHOTOS, BROKEN]).await?;
    let store = transaction.object_store(PARTS)?;
    for part in met.parts.iter().filter(|part| !parts.contains(part)) {
        store.put(&text(&part.to_json()), Some(&text(part.key().as_str())))?.await?;
    }
    let store = transaction.object_store(LOG)?;
    let mut known = BTreeSet::new();
    known.extend(log.iter().map(|record| record.id.as_str()));
    for record in met.log.iter().filter(|record| !known.contains(record.id.as_str())) {
        store.add(&text(&record.to_json()), Some(&log::key(record)))?.await?;
    }
    let store = transaction.object_store(PHOTOS)?;
    for (id, bytes) in &met.photos {
        store.put(&Uint8Array::from(bytes.as_slice()), Some(&text(id)))?.await?;
    }
    let store = transaction.object_store(BROKEN)?;
    let aside = met.older.iter().chain(&met.clashes).map(|part| (part.key().as_str().to_owned(), part.to_json()));
    let changed = met.changed_records.iter().map(|record| (record.id.clone(), record.to_json()));
    for (key, json) in aside.chain(changed) {
        let place = format!("{key} {}", crate::local_time::now());
        store.put(&text(&json), Some(&text(&place)))?.await?;
    }
    Ok(completed(transaction).await?)
}
