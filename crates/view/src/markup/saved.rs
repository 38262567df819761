//! The saved checks.

use maud::{Markup, html};

use super::Act;

/// A saved check as its row shows it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SavedRow {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Its answer.
    pub answer: String,
    /// When it was saved.
    pub when: String,
}

/// The rows, in the order they come in. A check is opened by a tap and removed by two: `to_remove` is the one that the
/// second tap is awaited for.
#[must_use]
pub fn saved(rows: &[SavedRow], to_remove: Option<&str>) -> Markup {
    html! {
        @if rows.is_empty() {
            p { "Nothing is saved yet. Save puts the check and its answer here." }
        } @else {
            ul.saved { @for one in rows { (row(one, to_remove == Some(one.id.as_str()))) } }
        }
    }
}

fn row(row: &SavedRow, sure: bool) -> Markup {
    html! {
        li.saved-row {
            button.open type="button" data-act=(Act::Open(&row.id)) {
                strong { (row.name) }
                span { (row.answer) }
                span.note { (row.when) }
            }
            @if sure {
                button.plain.danger type="button" data-act=(Act::RemoveForGood(&row.id)) { "Remove for good" }
                button.plain type="button" data-act=(Act::Leave(&row.id)) { "Leave it" }
            } @else {
                button.plain type="button" aria-label={ "Remove " (row.name) } data-act=(Act::Remove(&row.id)) { "Remove" }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{SavedRow, saved};

    #[test]
    fn a_name_cannot_break_out_of_its_row() {
        let row = |id: &str, name: &str| SavedRow {
            id: id.to_owned(),
            name: name.to_owned(),
            answer: "2-2x10".to_owned(),
            when: String::new(),
        };
        let rows = [row("a", "\"><img src=x onerror=alert(1)>"), row("b", "Header 2")];
        let shown = saved(&rows, Some("b")).into_string();
        assert!(!shown.contains("<img"), "{shown}");
        assert_eq!(shown.matches("Remove for good").count(), 1);
        assert!(shown.contains("data-act=\"remove a\"") && shown.contains("data-act=\"remove-for-good b\""), "{shown}");
    }
}
