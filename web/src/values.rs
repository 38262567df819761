//! The job's values on a page that writes them as they are typed, and how they are kept: Site, and Members.

use job::{Fields, Job, Part, PartBody, merge_fields};
use leptos::prelude::*;
use leptos::task::spawn_local;
use view::model::FieldId;

use crate::bars::Notices;
use crate::browser;
use crate::storage::{self, Kept, StoreError, settings};

/// So long after the last key the values are put away, milliseconds; the promise is half a second.
const MOMENT: i32 = 350;
/// So many steps can be taken back.
const STEPS_BACK: usize = 60;

/// What was found at the start.
#[derive(Clone, Debug)]
pub struct Found {
    job: Job,
    refused: Vec<String>,
    problem: Option<StoreError>,
}

/// Reads what was kept. A failure is part of what is found: the screen opens either way.
pub async fn at_start() -> Found {
    settings::keep_broke(false);
    let head = Part::new(&browser::new_id(), PartBody::Head { name: "Job 1".to_owned() });
    match storage::read_parts(Some(head)).await {
        Ok(shelf) => {
            let id = storage::chosen_job(&shelf.parts).unwrap_or_default();
            Found { job: Job::from_parts(&id, &shelf.parts), refused: shelf.refused, problem: None }
        }
        Err(problem) => {
            Found { job: Job::new(browser::new_id(), "Job 1".to_owned()), refused: Vec::new(), problem: Some(problem) }
        }
    }
}

/// The job's values, and how they are kept.
#[derive(Clone, Copy)]
pub struct Values {
    /// The job as it is stored.
    pub job: RwSignal<Job>,
    /// The job's values, by name.
    pub fields: RwSignal<Fields>,
    /// Whether what is on the screen is kept.
    pub state: RwSignal<Kept>,
    /// What is to be told.
    pub notices: Notices,
    past: RwSignal<Vec<(FieldId, Fields)>>,
    /// The values as they were stored last.
    stored: StoredValue<Fields>,
    keys: StoredValue<u32>,
    busy: StoredValue<bool>,
    /// A name that is not put away yet.
    new_name: StoredValue<Option<String>>,
}

impl Values {
    /// Lays out what was found.
    pub fn new(found: &Found) -> Self {
        let values = Self {
            job: RwSignal::new(found.job.clone()),
            fields: RwSignal::new(found.job.site.clone()),
            state: RwSignal::new(found.problem.clone().map_or(Kept::Safe, Kept::Not)),
            notices: Notices::default(),
            past: RwSignal::new(Vec::new()),
            stored: StoredValue::new(found.job.site.clone()),
            keys: StoredValue::new(0),
            busy: StoredValue::new(false),
            new_name: StoredValue::new(None),
        };
        for sentence in &found.refused {
            values.notices.say(sentence.clone());
        }
        // A check, or an older version, may have left what was worked out behind.
        let mut up_to_date = values.fields.get_untracked();
        if framing::site::work_out(&mut up_to_date) {
            values.fields.set(up_to_date);
            values.touch();
        }
        provide_context(values.notices);
        values
    }

    /// Changes a value of the input in hand.
    pub fn change(self, field: FieldId, change: impl FnOnce(&mut Fields)) {
        self.remember_before(field);
        self.fields.update(change);
        self.touch();
    }

    fn remember_before(self, field: FieldId) {
        let same = self.past.with_untracked(|past| past.last().is_some_and(|(last, _)| *last == field));
        if same {
            return;
        }
        let before = self.fields.get_untracked();
        self.past.update(|past| {
            if past.len() == STEPS_BACK {
                past.remove(0);
            }
            past.push((field, before));
        });
    }

    /// Whether there is a step to take back.
    pub fn can_undo(self) -> bool {
        self.past.with(|past| !past.is_empty())
    }

    /// Takes one step back; gives the input that it was taken in.
    pub fn undo(self) -> Option<FieldId> {
        let (field, before) = self.past.try_update(Vec::pop).flatten()?;
        self.fields.set(before);
        self.touch();
        Some(field)
    }

    /// Something was typed.
    fn touch(self) {
        self.keys.update_value(|keys| *keys = keys.wrapping_add(1));
        if !matches!(self.state.get_untracked(), Kept::Not(_)) {
            self.state.set(Kept::Writing);
        }
        let keys = self.keys.get_value();
        browser::after(MOMENT, move || {
            if self.keys.get_value() == keys {
                self.keep_now();
            }
        });
    }

    /// Puts away what is on the screen, if it is not put away yet.
    pub fn keep_now(self) {
        if self.busy.get_value() || self.state.get_untracked() == Kept::Safe {
            return;
        }
        self.busy.set_value(true);
        spawn_local(async move {
            let keys = self.keys.get_value();
            let done = self.put_away().await;
            self.busy.set_value(false);
            match done {
                Err(problem) => self.state.set(Kept::Not(problem)),
                Ok(()) if self.keys.get_value() == keys => self.state.set(Kept::Safe),
                Ok(()) => self.keep_now(),
            }
        });
    }

    async fn put_away(self) -> Result<(), StoreError> {
        let job = self.job.with_untracked(|job| job.id.clone());
        self.put_name_away(&job).await?;
        let (base, ours) = (self.stored.get_value(), self.fields.get_untracked());
        if base == ours {
            return Ok(());
        }
        let (part, clashes) = storage::put_site(&job, &base, &ours).await?;
        let stored = storage::site_of(part.as_ref());
        // What was typed while the phone was writing is newer than what was written.
        self.take(merge_fields(&ours, &stored, &self.fields.get_untracked()).fields, stored);
        self.tell(&clashes);
        storage::tell_other_windows();
        Ok(())
    }

    async fn put_name_away(self, job: &str) -> Result<(), StoreError> {
        let Some(name) = self.new_name.get_value() else { return Ok(()) };
        storage::put_name(job, name.clone()).await?;
        // Another one may have been typed while the phone was writing.
        self.new_name.update_value(|waiting| *waiting = waiting.take().filter(|waiting| *waiting != name));
        storage::tell_other_windows();
        Ok(())
    }

    fn take(self, fields: Fields, stored: Fields) {
        self.stored.set_value(stored);
        if self.fields.with_untracked(|known| *known != fields) {
            self.fields.set(fields);
        }
    }

    /// What two windows set differently: the stored one stands.
    fn tell(self, clashes: &[job::Clash]) {
        for clash in clashes {
            let (name, stored, ours) = storage::in_words(clash);
            self.notices.say(format!("Another window set {name} to {stored}; here it was {ours}. {stored} stands."));
        }
    }

    /// Reads the values again: another window may have changed them.
    pub fn read_again(self) {
        spawn_local(async move {
            let Ok(shelf) = storage::read_parts(None).await else { return };
            let id = self.job.with_untracked(|job| job.id.clone());
            let job = Job::from_parts(&id, &shelf.parts);
            let merged = merge_fields(&self.stored.get_value(), &job.site, &self.fields.get_untracked());
            self.take(merged.fields, job.site.clone());
            self.tell(&merged.clashes);
            if self.job.with_untracked(|known| *known != job) {
                self.job.set(job);
            }
        });
    }

    /// Gives the job another name.
    pub fn rename_job(self, name: String) {
        self.job.update(|job| job.name.clone_from(&name));
        self.new_name.set_value(Some(name));
        self.touch();
        self.keep_now();
    }
}
