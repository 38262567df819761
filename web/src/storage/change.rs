//! The site values, which more than one window and more than one page may change.

use std::collections::BTreeMap;

use job::{Clash, Fields, Job, Part, PartBody, merge_fields};
use leptos::prelude::*;

use super::keeper::{Keeper, by_key};
use super::{StoreError, parts};
use crate::desk::Desk;

/// The site values among a job's parts.
pub fn site_of<'a>(parts: impl IntoIterator<Item = &'a Part>) -> Fields {
    let fields = parts.into_iter().find_map(|part| match &part.body {
        PartBody::Site { fields } => Some(fields.clone()),
        PartBody::Head { .. } | PartBody::Header(_) => None,
    });
    fields.unwrap_or_default()
}

/// Puts away what was changed of the site values since `base`, brought together with what another window may have
/// stored. Gives the part as it is stored now, and what could not be brought together.
pub async fn put_site(job: &str, base: &Fields, ours: &Fields) -> Result<(Option<Part>, Vec<Clash>), StoreError> {
    let key = Part::new(job, PartBody::Site { fields: Fields::new() }).key();
    let mut clashes = Vec::new();
    let (part, _) = parts::change(job, &key, |stored| {
        let merged = match stored.map(|part| &part.body) {
            Some(PartBody::Site { fields }) => merge_fields(base, fields, ours),
            _ => merge_fields(&Fields::new(), &Fields::new(), ours),
        };
        clashes = merged.clashes;
        Some(PartBody::Site { fields: merged.fields })
    })
    .await?;
    Ok((part, clashes))
}

/// Puts the job's name away.
pub async fn put_name(job: &str, name: String) -> Result<(), StoreError> {
    let head = Part::new(job, PartBody::Head { name });
    parts::change(job, &head.key(), |_| Some(head.body.clone())).await.map(|_| ())
}

/// A value that two windows set differently, in a sentence; what is stored stands.
pub fn in_words(clash: &Clash) -> (String, String, String) {
    let or_nothing = |text: &Option<String>| text.clone().unwrap_or_else(|| "nothing".to_owned());
    (clash.field.replace('_', " "), or_nothing(&clash.stored), or_nothing(&clash.ours))
}

fn of_parts(parts: &BTreeMap<String, Part>) -> Fields {
    site_of(parts.values())
}

/// Puts the site values away if a check changed them.
pub async fn keep_site(keeper: Keeper, desk: Desk) -> Result<(), StoreError> {
    let base = keeper.parts.with_value(of_parts);
    let ours = desk.site_fields();
    if ours == base {
        return Ok(());
    }
    let job = keeper.job.with_untracked(|job| job.id.clone());
    let (part, clashes) = put_site(&job, &base, &ours).await?;
    keeper.remember(part);
    let stored = keeper.parts.with_value(of_parts);
    // What was typed while the phone was writing is newer than what was written.
    desk.take_site(merge_fields(&ours, &stored, &desk.site_fields()).fields);
    keep_clashes(desk, &clashes);
    Ok(())
}

/// Takes in parts as another window left them. What was changed here and is not put away yet stays.
pub fn take_in(keeper: Keeper, desk: Desk, found: Vec<Part>) {
    let base = keeper.parts.with_value(of_parts);
    let id = keeper.job.with_untracked(|job| job.id.clone());
    let job = Job::from_parts(&id, &found);
    keeper.parts.set_value(by_key(found));
    let merged = merge_fields(&base, &job.site, &desk.site_fields());
    if keeper.job.with_untracked(|known| *known != job) {
        keeper.job.set(job);
    }
    desk.take_site(merged.fields);
    keep_clashes(desk, &merged.clashes);
}

/// The stored value stands for the job, ours stays with this check.
fn keep_clashes(desk: Desk, clashes: &[Clash]) {
    for clash in clashes {
        if let Some(ours) = &clash.ours {
            desk.set_for_this_check(&clash.field, ours.clone());
        }
        let (name, stored, ours) = in_words(clash);
        desk.notices.say(format!(
            "Another window set {name} to {stored} for the job; here it was {ours}. The job has {stored}, and this check \
             keeps {ours}."
        ));
    }
}
