//! Settings whose loss would hurt no one. Every read and write may fail, in a private window for one, and then the
//! default stands.

use gloo_storage::{LocalStorage, SessionStorage, Storage};

use crate::browser;
use crate::place::Place;

const THEME: &str = "galeframe.theme";
const PLACE: &str = "galeframe.place";
const JOB: &str = "galeframe.job";
const BACKED_UP: &str = "galeframe.backed-up";
const WALK: &str = "galeframe.walk";
const BROKE: &str = "galeframe.broke";
const WINDOW: &str = "galeframe.window";

/// The name of the theme that was chosen.
pub fn theme() -> Option<String> {
    LocalStorage::get(THEME).ok()
}

/// Keeps the theme's name.
pub fn keep_theme(name: &str) {
    let _ = LocalStorage::set(THEME, name);
}

/// The place one was at last.
pub fn last_place() -> Option<Place> {
    LocalStorage::get::<String>(PLACE).ok().and_then(|address| Place::at(&address))
}

/// Keeps the place.
pub fn keep_last_place(place: Place) {
    let _ = LocalStorage::set(PLACE, place.address());
}

/// Keeps which page of quick checks one was at: `member` is one in the place Members.
pub fn keep_last_page(chapter: &str) {
    let _ = LocalStorage::set(PLACE, chapter);
}

/// The job that was chosen: in this window, else on this phone.
pub fn last_job() -> Option<String> {
    SessionStorage::get(JOB).or_else(|_| LocalStorage::get(JOB)).ok()
}

/// Keeps which job is worked on.
pub fn keep_last_job(job: &str) {
    keep_window_job(job);
    let _ = LocalStorage::set(JOB, job);
}

/// Keeps which job this window works on; another window may work on another.
pub fn keep_window_job(job: &str) {
    let _ = SessionStorage::set(JOB, job);
}

/// How many records the last file of a job held.
pub fn backed_up(job: &str) -> usize {
    LocalStorage::get(of_job(BACKED_UP, job)).unwrap_or(0)
}

/// Keeps how many records the last file of a job held.
pub fn keep_backed_up(job: &str, records: usize) {
    let _ = LocalStorage::set(of_job(BACKED_UP, job), records);
}

/// The walk of a job that was looked at last.
pub fn last_walk(job: &str) -> Option<String> {
    LocalStorage::get(of_job(WALK, job)).ok()
}

/// Keeps which walk of a job is looked at.
pub fn keep_last_walk(job: &str, walk: &str) {
    let _ = LocalStorage::set(of_job(WALK, job), walk);
}

/// A setting that each job has for itself.
fn of_job(setting: &str, job: &str) -> String {
    [setting, ".", job].concat()
}

/// Whether the program broke the last time.
pub fn broke() -> bool {
    LocalStorage::get(BROKE).unwrap_or(false)
}

/// Keeps whether it broke.
pub fn keep_broke(broke: bool) {
    let _ = LocalStorage::set(BROKE, broke);
}

/// The id of this window, the same after a reload.
pub fn window_id() -> String {
    SessionStorage::get(WINDOW).unwrap_or_else(|_| {
        let id = browser::new_id();
        let _ = SessionStorage::set(WINDOW, &id);
        id
    })
}
