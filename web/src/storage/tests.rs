//! Against the browser's own database.

use idb::Query;
use job::file::JobFile;
use job::walk::{Draft, Photo, Record, RecordBody};
use job::{Fields, OpenError, Part, PartBody, SavedHeader, Typing, open_part};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

use super::database::{BROKEN, LOG, PARTS, completed, text, writing, writing_for_good};
use super::{StoreError, drafts, jobs, journal, log, parts, transfer};
use crate::browser::new_id;

fn header(id: &str, name: &str) -> PartBody {
    PartBody::Header(SavedHeader {
        id: id.to_owned(),
        name: name.to_owned(),
        fields: Fields::new(),
        answer: String::new(),
        saved_at: String::new(),
    })
}

async fn put_raw(key: &str, value: &str) -> Result<(), StoreError> {
    let transaction = writing(&[PARTS]).await?;
    transaction.object_store(PARTS)?.put(&text(value), Some(&text(key)))?.await?;
    completed(transaction).await
}

#[wasm_bindgen_test]
async fn a_part_is_found_again_with_its_revision_grown() {
    let job = new_id();
    let key = Part::new(&job, header("a", "")).key();
    for revision in 1..4 {
        let name = format!("Header {revision}");
        let (part, written) = parts::change(&job, &key, |_| Some(header("a", &name))).await.unwrap();
        assert!(written);
        assert_eq!(part.unwrap().revision, revision);
    }
    let shelf = parts::read_all(None).await.unwrap();
    let found: Vec<&Part> = shelf.parts.iter().filter(|part| part.job == job).collect();
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].revision, &found[0].body), (3, &header("a", "Header 3")));
}

#[wasm_bindgen_test]
async fn a_write_that_decides_against_itself_leaves_what_is_stored() {
    let job = new_id();
    let key = Part::new(&job, header("a", "")).key();
    parts::change(&job, &key, |_| Some(header("a", "first"))).await.unwrap();
    let (stored, written) = parts::change(&job, &key, |stored| {
        assert_eq!(stored.map(|part| part.revision), Some(1));
        None
    })
    .await
    .unwrap();
    assert!(!written);
    assert_eq!(stored.unwrap().body, header("a", "first"));
}

#[wasm_bindgen_test]
async fn only_the_revision_that_was_shown_is_removed() {
    let job = new_id();
    let key = Part::new(&job, header("a", "")).key();
    parts::change(&job, &key, |_| Some(header("a", "first"))).await.unwrap();
    parts::change(&job, &key, |_| Some(header("a", "second"))).await.unwrap();
    assert!(!parts::remove(&key, 1).await.unwrap());
    assert!(parts::remove(&key, 2).await.unwrap());
    assert!(!parts::remove(&key, 2).await.unwrap());
}

#[wasm_bindgen_test]
async fn what_cannot_be_read_is_set_aside_whole_and_a_newer_part_stays() {
    let job = new_id();
    let (torn, newer) = (format!("job/{job}/torn"), format!("job/{job}/newer"));
    put_raw(&torn, "{ torn").await.unwrap();
    put_raw(&newer, r#"{"format":99}"#).await.unwrap();
    let shelf = parts::read_all(None).await.unwrap();
    assert!(shelf.refused.len() >= 2, "{:?}", shelf.refused);
    let transaction = writing(&[PARTS, BROKEN]).await.unwrap();
    let (kept, aside) = (transaction.object_store(PARTS).unwrap(), transaction.object_store(BROKEN).unwrap());
    assert!(kept.get(text(&torn)).unwrap().await.unwrap().is_none());
    let left = kept.get(text(&newer)).unwrap().await.unwrap().and_then(|value| value.as_string());
    assert!(matches!(open_part(left.unwrap().as_bytes()), Err(OpenError::Newer { found: 99, .. })));
    let keys = aside.get_all_keys(None, None).unwrap().await.unwrap();
    let key = keys.into_iter().find(|key| key.as_string().is_some_and(|key| key.starts_with(&torn))).unwrap();
    assert_eq!(
        aside.get(Query::Key(key)).unwrap().await.unwrap().and_then(|value| value.as_string()).as_deref(),
        Some("{ torn")
    );
    kept.delete(Query::Key(text(&newer))).unwrap().await.unwrap();
    completed(transaction).await.unwrap();
}

#[wasm_bindgen_test]
async fn a_part_that_cannot_be_read_is_not_written_over() {
    let job = new_id();
    let key = Part::new(&job, header("a", "")).key();
    put_raw(key.as_str(), r#"{"format":99}"#).await.unwrap();
    let refused = parts::change(&job, &key, |_| Some(header("a", "over it"))).await;
    assert!(matches!(refused, Err(StoreError::Other(_))));
    let transaction = writing(&[PARTS]).await.unwrap();
    let store = transaction.object_store(PARTS).unwrap();
    let left = store.get(text(key.as_str())).unwrap().await.unwrap().and_then(|value| value.as_string());
    assert_eq!(left.as_deref(), Some(r#"{"format":99}"#));
    store.delete(Query::Key(text(key.as_str()))).unwrap().await.unwrap();
    completed(transaction).await.unwrap();
}

#[wasm_bindgen_test]
async fn two_windows_that_open_at_once_share_one_job() {
    let head = || Some(Part::new(&new_id(), PartBody::Head { name: "Job 1".to_owned() }));
    let (first, second) = futures_util::future::join(parts::read_all(head()), parts::read_all(head())).await;
    let job = |shelf: parts::Shelf| shelf.parts.iter().find(|part| parts::is_head(part)).map(|head| head.job.clone());
    let first = job(first.unwrap());
    assert!(first.is_some());
    assert_eq!(first, job(second.unwrap()));
}

#[wasm_bindgen_test]
async fn jobs_that_are_begun_at_once_have_names_of_their_own() {
    let (first, second) = futures_util::future::join(jobs::begin_job(), jobs::begin_job()).await;
    let (first, second) = (first.unwrap(), second.unwrap());
    let kept = jobs::jobs().await.unwrap();
    let name = |id: &str| kept.iter().find(|job| job.job == id).map(|job| job.name.clone());
    assert!(name(&first).is_some_and(|name| name.starts_with("Job ")));
    assert_ne!(name(&first), name(&second));
}

#[wasm_bindgen_test]
async fn a_job_is_put_back_as_it_was_given_and_its_checks_stay() {
    let job = new_id();
    let site = |speed: &str| PartBody::Site { fields: Fields::from([("wind_speed".to_owned(), speed.to_owned())]) };
    let given = JobFile { job: job.clone(), parts: vec![Part::new(&job, site("150"))], ..JobFile::default() };
    jobs::put_back(&given).await.unwrap();
    let key = given.parts[0].key();
    parts::change(&job, &key, |_| Some(site("120"))).await.unwrap();
    parts::change(&job, &Part::new(&job, header("a", "")).key(), |_| Some(header("a", "Door"))).await.unwrap();
    jobs::put_back(&given).await.unwrap();
    let kept = transfer::gather(&job).await.unwrap().parts;
    let bodies: Vec<(u32, &PartBody)> = kept.iter().map(|part| (part.revision, &part.body)).collect();
    assert_eq!(bodies, [(1, &header("a", "Door")), (3, &site("150"))]);
}

#[wasm_bindgen_test]
async fn a_window_finds_its_own_typing_and_a_new_one_the_latest() {
    let (mine, other) = (new_id(), new_id());
    let typing = |at: &str| Typing { at: at.to_owned(), ..Typing::new("a") };
    journal::write(&mine, &typing("2999-01-01T00:00:00+00:00")).await.unwrap();
    journal::write(&other, &typing("2999-01-02T00:00:00+00:00")).await.unwrap();
    let found = async |window: &str| journal::read().await.unwrap().of(window, "a");
    assert_eq!(found(&mine).await, Some(typing("2999-01-01T00:00:00+00:00")));
    assert_eq!(found(&new_id()).await, Some(typing("2999-01-02T00:00:00+00:00")));
}

#[wasm_bindgen_test]
async fn a_window_that_looks_at_another_job_keeps_what_it_typed_for_the_first() {
    let (window, first, second) = (new_id(), new_id(), new_id());
    for job in [&first, &second] {
        journal::write(&window, &Typing::new(job)).await.unwrap();
    }
    for job in [&first, &second] {
        assert_eq!(journal::read().await.unwrap().of(&window, job), Some(Typing::new(job)));
    }
    assert_eq!(journal::read().await.unwrap().of(&window, &new_id()), None);
}

#[wasm_bindgen_test]
async fn only_so_many_windows_are_kept_and_the_oldest_go() {
    let windows: Vec<String> = (0..12).map(|_| new_id()).collect();
    for (number, window) in windows.iter().enumerate() {
        let at = format!("2998-01-{:02}T00:00:00+00:00", number + 1);
        journal::write(window, &Typing { at, ..Typing::new("a") }).await.unwrap();
    }
    journal::read().await.unwrap();
    let oldest = journal::read().await.unwrap().of(&windows[0], "a");
    assert_ne!(oldest.map(|typing| typing.at), Some("2998-01-01T00:00:00+00:00".to_owned()));
}

/// A walk's beginning, as the log keeps it.
fn begun(job: &str) -> Record {
    let id = new_id();
    Record::new(id.clone(), job, &id, 1, RecordBody::Begun { name: "Walk 1".to_owned() })
}

#[wasm_bindgen_test]
async fn a_record_is_added_once_and_never_written_over() {
    let job = new_id();
    let first = begun(&job);
    log::add(std::slice::from_ref(&first)).await.unwrap();
    let again = Record { by: "someone else".to_owned(), ..first.clone() };
    assert!(log::add(&[again, begun(&job)]).await.is_err(), "the same id is there");
    assert_eq!(log::read_log(&job).await.unwrap().records, [first], "and nothing of the second write is kept");
}

#[wasm_bindgen_test]
async fn a_photo_and_its_record_are_kept_together_or_not_at_all() {
    let (job, photo) = (new_id(), new_id());
    let bytes = log::PhotoBytes { photo: vec![1, 2, 3], thumb: vec![1] };
    let record = begun(&job);
    log::add_photo(&record, &photo, &bytes).await.unwrap();
    assert_eq!(log::photo(&photo, false).await.unwrap().as_deref(), Some(&[1, 2, 3][..]));
    assert_eq!(log::photo(&photo, true).await.unwrap().as_deref(), Some(&[1][..]));
    let lost = new_id();
    assert!(log::add_photo(&record, &lost, &bytes).await.is_err(), "the record is there already");
    assert_eq!(log::photo(&lost, false).await.unwrap(), None);
}

#[wasm_bindgen_test]
async fn a_record_that_cannot_be_read_is_set_aside_and_the_others_are_read() {
    let job = new_id();
    let good = begun(&job);
    log::add(std::slice::from_ref(&good)).await.unwrap();
    let torn = format!("{job}/torn");
    let transaction = writing(&[LOG]).await.unwrap();
    transaction.object_store(LOG).unwrap().put(&text("{ torn"), Some(&text(&torn))).unwrap().await.unwrap();
    completed(transaction).await.unwrap();
    let found = log::read_log(&job).await.unwrap();
    assert_eq!((found.records, found.refused.len()), (vec![good], 1));
    assert_eq!(log::read_log(&job).await.unwrap().refused.len(), 0, "it is in the store of broken things now");
    let transaction = writing(&[BROKEN]).await.unwrap();
    let keys = transaction.object_store(BROKEN).unwrap().get_all_keys(None, None).unwrap().await.unwrap();
    assert!(keys.iter().any(|key| key.as_string().is_some_and(|key| key.starts_with(&torn))));
}

#[wasm_bindgen_test]
async fn a_form_finds_its_own_windows_draft_and_loses_it_when_it_is_logged() {
    let (job, form) = (new_id(), format!("look/{}", new_id()));
    let draft = |at: &str| Draft { at: at.to_owned(), ..Draft::new(&job, &form) };
    let (mine, other) = (new_id(), new_id());
    drafts::keep_draft(&draft("2026-05-04T10:00:00-05:00"), &mine).await.unwrap();
    drafts::keep_draft(&draft("2026-05-04T11:00:00-05:00"), &other).await.unwrap();
    let at = |drafts: Vec<Draft>| drafts.into_iter().map(|draft| draft.at).collect::<Vec<String>>();
    assert_eq!(at(drafts::read_drafts(&job, &mine).await.unwrap()), ["2026-05-04T10:00:00-05:00"]);
    assert_eq!(at(drafts::read_drafts(&job, &new_id()).await.unwrap()), ["2026-05-04T11:00:00-05:00"]);
    drafts::drop_drafts(&form).await.unwrap();
    assert!(drafts::read_drafts(&job, &mine).await.unwrap().is_empty());
}

#[wasm_bindgen_test]
async fn a_job_file_taken_in_twice_changes_nothing_the_second_time() {
    let job = new_id();
    parts::change(&job, &Part::new(&job, header("a", "")).key(), |_| Some(header("a", "Kitchen"))).await.unwrap();
    let bytes = log::PhotoBytes { photo: vec![9], thumb: vec![9] };
    let photo = new_id();
    let shown = Photo {
        of: String::new(),
        photo: photo.clone(),
        width: 1,
        height: 1,
        shows: "close".to_owned(),
        tape_in_view: false,
        caption: String::new(),
    };
    let record = Record::new(new_id(), &job, "a", 1, RecordBody::Photo(shown));
    log::add_photo(&record, &photo, &bytes).await.unwrap();
    let file = transfer::gather(&job).await.unwrap();
    assert_eq!((file.parts.len(), file.log.len(), file.photos.len()), (1, 1, 1));
    let Ok(came) = transfer::bring_in(file.clone()).await else { panic!("the file was refused") };
    assert_eq!(came, job::file::CameIn::default());
    assert_eq!(transfer::gather(&job).await.unwrap(), file);
}

#[wasm_bindgen_test]
async fn a_finding_is_written_for_good() {
    let durability = |transaction| {
        let asked: JsValue = js_sys::Reflect::get(&JsValue::from(transaction), &text("durability")).unwrap();
        asked.as_string()
    };
    let (plain, for_good) = (writing(&[LOG]).await.unwrap(), writing_for_good(&[LOG]).await.unwrap());
    assert_ne!(durability(plain).as_deref(), Some("strict"));
    assert_eq!(durability(for_good).as_deref(), Some("strict"));
}
