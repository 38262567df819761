//! The desk: what was typed, and the one memo over it. Everything on the screen follows from here.

mod case_fields;
mod header_pad;
mod saved_checks;
mod settled;
mod undo;

use framing::HeaderCase;
use job::{Fields, SavedHeader, Typing};
use leptos::prelude::*;
use view::model::{FieldId, Group, HeaderScreen};

pub use case_fields::field_id;
pub use header_pad::{HEADER_GROUPS, header_pad};
pub use settled::Settled;

use crate::bars::Notices;
use crate::storage::{Found, Keeper};
use case_fields::{from_fields, to_fields};
use undo::Snapshot;

/// The input that comes to hand first.
const FIRST: FieldId = "opening_width";

/// What was typed, and what follows from it.
#[derive(Clone, Copy)]
pub struct Desk {
    /// What was typed for this check.
    pub case: RwSignal<HeaderCase>,
    /// What the job has for every check and every place, by name.
    pub site: RwSignal<Fields>,
    /// What of it this check starts from.
    start: Memo<HeaderCase>,
    /// The input in hand.
    pub hand: RwSignal<FieldId>,
    /// The saved check that this one was opened from.
    pub opened: RwSignal<Option<SavedHeader>>,
    /// The check that was saved last and is still on the desk.
    pub last_saved: RwSignal<Option<SavedHeader>>,
    /// Everything that is shown.
    pub screen: Memo<HeaderScreen>,
    /// The same a moment later, for what lies below the fold.
    pub settled: Settled,
    /// Keeps it all.
    pub keeper: Keeper,
    /// What is to be told.
    pub notices: Notices,
    past: RwSignal<Vec<Snapshot>>,
}

impl Desk {
    /// Lays out what was found.
    pub fn provide(found: &Found) -> Self {
        let keeper = Keeper::new(found);
        let site = RwSignal::new(keeper.job.with_untracked(|job| job.site.clone()));
        let start = Memo::new(move |_| site.with(|site| framing::site::starts(site)));
        let case = RwSignal::new(HeaderCase::default());
        let screen = Memo::new(move |before: Option<&HeaderScreen>| {
            case.with(|case| start.with(|start| view::header::screen(case, start, before)))
        });
        let desk = Self {
            case,
            site,
            start,
            hand: RwSignal::new(FIRST),
            opened: RwSignal::new(None),
            last_saved: RwSignal::new(None),
            screen,
            settled: Settled::follow(screen),
            keeper,
            notices: Notices::default(),
            past: RwSignal::new(Vec::new()),
        };
        desk.tell_what_was_found(found);
        provide_context(desk);
        provide_context(desk.notices);
        desk
    }

    fn tell_what_was_found(self, found: &Found) {
        for sentence in &found.refused {
            self.notices.say(sentence.clone());
        }
        let Some(typing) = found.typing.clone() else { return };
        if found.broke {
            let words = "Something broke while this was being worked on. What was typed is kept.".to_owned();
            self.notices.offer(words, "Bring it back", move || self.put_back(&typing));
        } else {
            self.put_back(&typing);
        }
    }

    fn put_back(self, typing: &Typing) {
        self.case.set(from_fields(&typing.fields));
        self.hand.set(field_id(&typing.hand).unwrap_or(FIRST));
        let headers = self.keeper.job.with_untracked(|job| job.headers.clone());
        self.opened.set(headers.into_iter().find(|header| header.id == typing.opened));
    }

    /// The screen as it is to be kept while it is being typed.
    pub fn typing(self, job: &str) -> Typing {
        Typing {
            fields: self.case.with_untracked(to_fields),
            hand: self.hand.get_untracked().to_owned(),
            opened: self
                .opened
                .with_untracked(|opened| opened.as_ref().map(|header| header.id.clone()))
                .unwrap_or_default(),
            at: crate::local_time::now(),
            ..Typing::new(job)
        }
    }

    /// What the check starts from, as it is stored with a saved one.
    fn start_fields(self) -> Fields {
        self.start.with_untracked(to_fields)
    }

    /// The job's values as they are stored.
    pub fn site_fields(self) -> Fields {
        self.site.get_untracked()
    }

    /// Takes in the job's values from the store.
    pub fn take_site(self, fields: Fields) {
        if self.site.with_untracked(|site| *site != fields) {
            self.site.set(fields);
        }
    }

    /// Writes an input of this check; none clears it.
    pub fn write(self, field: FieldId, text: Option<String>) {
        let text = text.filter(|text| !text.is_empty());
        // Cleared here, the job's own value would come back at once: clearing means both, unless a saved check is open.
        let both = text.is_none() && self.opened.with_untracked(Option::is_none) && self.is_kept_with_job(field);
        self.remember_before(Some(field));
        if both {
            self.site.update(|site| {
                site.remove(field);
            });
        }
        self.case.update(|case| {
            case.set(field, text);
        });
        self.keeper.touch(self);
    }

    /// What was typed for an input, for this check or for the job.
    pub fn typed(self, field: FieldId) -> Option<String> {
        let own = self.case.with(|case| case.get(field).map(str::to_owned));
        own.or_else(|| self.site.with(|site| site.get(field).cloned()))
    }

    /// Sets a value for this check only.
    pub fn set_for_this_check(self, field: &str, text: String) {
        self.case.update(|case| {
            case.set(field, Some(text));
        });
        self.keeper.touch(self);
    }

    /// Brings an input to hand.
    pub fn bring(self, field: FieldId) {
        self.settle();
        self.hand.set(field);
        self.keeper.touch(self);
    }

    /// Moves what was typed of the job's own values (loads, wood, limits) from this check to the job, so that the next
    /// check starts with them. A saved check that was opened keeps its own.
    pub fn settle(self) {
        if self.opened.with_untracked(Option::is_some) {
            return;
        }
        let good: Vec<FieldId> = self.screen.with_untracked(|screen| {
            let kept = screen.fields.iter().filter(|field| kept_with_job(field.group) && field.problem.is_none());
            kept.map(|field| field.id).collect()
        });
        for field in good {
            if let Some(text) = self.case.with_untracked(|case| case.get(field).map(str::to_owned)) {
                self.site.update(|site| {
                    site.insert(field.to_owned(), text);
                });
                self.case.update(|case| {
                    case.set(field, None);
                });
            }
        }
    }

    fn is_kept_with_job(self, field: FieldId) -> bool {
        self.screen
            .with_untracked(|screen| screen.fields.iter().any(|known| known.id == field && kept_with_job(known.group)))
    }
}

/// Whether values of a group belong to the job rather than to one check.
pub const fn kept_with_job(group: Group) -> bool {
    matches!(group, Group::Site | Group::Wood | Group::Limits)
}
