//! The head and what is still to be written down.

use proptest::prelude::*;
use view::model::{Entry, Group, Origin};
use view::record::{heading_fields, heading_lacks};

use crate::log::{WHOLE_HEAD, fields};

/// The head with one entry in place of another.
fn with(name: &'static str, text: &'static str) -> Vec<(&'static str, String)> {
    let changed = WHOLE_HEAD.map(|pair| if pair.0 == name { (name, text) } else { pair });
    heading_lacks(&fields(&changed))
}

#[test]
fn an_empty_head_lacks_everything_each_in_a_sentence() {
    let lacks = heading_lacks(&fields(&[]));
    let says: Vec<(&str, &str)> = lacks.iter().map(|(field, says)| (*field, says.as_str())).collect();
    assert_eq!(
        says,
        [
            ("project", "Write the project's name."),
            ("address", "Write the address or the lot."),
            ("permit", "Write the permit number, or that there is none."),
            ("date", "Write the date of the visit."),
            ("start", "Write when the visit began and when it ended."),
            ("weather", "Write the weather and the temperature."),
            ("observer_name", "Write who looked, and that person's title."),
            ("papers", "Write the drawing that the work was compared with."),
            ("code_edition", "Write the code's edition and the sections used."),
            ("components", "Write which parts of the frame were covered."),
            ("not_visible", "Write what was not visible or not reached, or “all was seen”."),
        ]
    );
}

#[test]
fn a_whole_head_lacks_nothing() {
    assert_eq!(heading_lacks(&fields(&WHOLE_HEAD)), []);
}

/// Each entry that is needed: blanks are nothing, and the sentence leads to the entry that is empty.
#[test]
fn one_entry_that_is_missing_is_the_one_that_is_asked_for() {
    for (name, _) in WHOLE_HEAD {
        let lacks = with(name, "  ");
        assert_eq!(lacks.iter().map(|(field, _)| *field).collect::<Vec<&str>>(), [name]);
    }
}

#[test]
fn a_paper_needs_its_revision_and_whether_it_is_approved() {
    assert_eq!(with("papers", "S2.1 rev B, not approved"), []);
    assert_eq!(with("papers", "Letter of May 4, no revision, approved; S2.1, Rev. 3, approved"), []);
    let open = with("papers", "S2.1 rev B, approved\nS3.1, approved; S4.1 rev A, not known");
    assert_eq!(open, [("papers", "S3.1, S4.1: write the revision, and whether it is approved.".to_owned())]);
}

#[test]
fn the_papers_are_echoed_as_they_were_understood() {
    let echo = |papers: &str| {
        let shown = heading_fields(&fields(&[("papers", papers)]));
        shown.iter().find(|field| field.id == "papers").unwrap().echo.clone()
    };
    assert_eq!(echo("S2.1 rev B, APPROVED"), "S2.1, revision B, approved");
    assert_eq!(echo("S2.1 Revision 2 not approved"), "S2.1, revision 2, not approved");
    assert_eq!(echo("Letter, no revision, approved"), "Letter, no revision, approved");
    assert_eq!(echo("S2.1"), "S2.1, revision not written, not known whether approved");
    assert_eq!(
        echo("S2.1; ;S3"),
        "S2.1, revision not written, not known whether approved; S3, revision not written, not known whether approved"
    );
    // A sheet whose name ends like an approval is a sheet.
    assert_eq!(echo("approved"), "approved, revision not written, not known whether approved");
}

/// That nothing was hidden is an answer of its own; an empty entry is none.
#[test]
fn all_was_seen_is_an_answer() {
    for said in ["all was seen", "All was seen.", "none"] {
        assert_eq!(with("not_visible", said), []);
    }
    assert_eq!(with("not_visible", "north wall behind the tub"), []);
    assert_eq!(with("not_visible", "")[0].0, "not_visible");
}

#[test]
fn the_inputs_are_of_the_record_and_nothing_is_assumed() {
    let shown = heading_fields(&fields(&[("project", "Lot 7 "), ("permit", " ")]));
    assert!(shown.iter().all(|field| field.group == Group::Record && field.entry == Entry::Text));
    let at = |id: &str| shown.iter().find(|field| field.id == id).unwrap();
    assert_eq!((at("project").origin, at("project").text.as_str()), (Origin::Typed, "Lot 7 "));
    assert_eq!(at("permit").origin, Origin::Unknown);
    assert!(WHOLE_HEAD.iter().all(|(name, _)| shown.iter().any(|field| field.id == *name)));
}

proptest! {
    /// Whatever is typed is read without stopping, and no entry is lost: as many papers are echoed as were written.
    #[test]
    fn any_papers_are_read(lines in proptest::collection::vec("[^;\n]{0,30}", 0..4)) {
        let shown = heading_fields(&fields(&[("papers", &lines.join("\n"))]));
        let echo = &shown.iter().find(|field| field.id == "papers").unwrap().echo;
        let written = lines.iter().filter(|line| !line.trim().is_empty()).count();
        prop_assert_eq!(echo.split("; ").filter(|paper| !paper.is_empty()).count(), written);
        let lacks = heading_lacks(&fields(&[("papers", &lines.join("\n")), ("not_visible", &lines.join(";"))]));
        prop_assert!(lacks.iter().all(|(_, says)| says.ends_with('.')));
    }
}
