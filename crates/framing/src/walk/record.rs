//! The head of a walk's record: its inputs as they are written, and what is still to be written down.

use inspection::record::{CodeSections, Heading, Lack, Observer, Paper};

use super::ByName;

/// What one writes where nothing was hidden: an answer of its own, never assumed.
pub const ALL_WAS_SEEN: &str = "all was seen";

/// The same in other words.
const ALSO_ALL_SEEN: [&str; 3] = ["all seen", "none", "nothing"];

/// The paper's approval, as it is written at the end of its line. What stands first is looked for first.
const APPROVALS: [(&str, Option<bool>); 5] = [
    ("not approved", Some(false)),
    ("approval not known", None),
    ("not known", None),
    ("approved yes", Some(true)),
    ("approved", Some(true)),
];

/// How a revision is written after the sheet. What stands first is looked for first.
const REVISIONS: [&str; 3] = [" revision ", " rev. ", " rev "];

/// How a paper without revisions is kept: a letter, a certificate.
const NO_REVISION: &str = "none";

/// The papers, as they are written: one a line or parted by `;`, each like `S2.1 rev B, approved`.
#[must_use]
pub fn papers(text: &str) -> Vec<Paper> {
    parts(text, &['\n', ';']).iter().map(|line| paper(line)).collect()
}

/// A paper as it was understood: `S2.1, revision B, approved`.
#[must_use]
pub fn paper_words(paper: &Paper) -> String {
    let approved = match paper.approved {
        Some(true) => "approved",
        Some(false) => "not approved",
        None => "not known whether approved",
    };
    match paper.revision.as_deref() {
        Some(NO_REVISION) => format!("{}, no revision, {approved}", paper.sheet),
        Some(revision) => format!("{}, revision {revision}, {approved}", paper.sheet),
        None => format!("{}, revision not written, {approved}", paper.sheet),
    }
}

/// Whether a text says that nothing was hidden.
#[must_use]
pub fn says_all_was_seen(text: &str) -> bool {
    let said = text.trim().trim_end_matches('.');
    [ALL_WAS_SEEN].iter().chain(&ALSO_ALL_SEEN).any(|all| said.eq_ignore_ascii_case(all))
}

/// What is still to be written down, with the input that it belongs to.
#[must_use]
pub fn heading_lacks(texts: &ByName<String>) -> Vec<(&'static str, String)> {
    let heading = heading(texts);
    heading.lacks().into_iter().map(|lack| lacking(lack, texts, &heading)).collect()
}

fn paper(line: &str) -> Paper {
    let (rest, approved) = approval(line);
    if let Some((sheet, "")) = split_at_word(rest, " no revision") {
        return Paper {
            sheet: sheet.trim_end_matches([' ', ',']).to_owned(),
            revision: Some(NO_REVISION.to_owned()),
            approved,
        };
    }
    let found = REVISIONS.iter().find_map(|word| split_at_word(rest, word));
    let (sheet, revision) = match found {
        Some((sheet, revision)) => (sheet, Some(revision.trim().to_owned())),
        None => (rest, None),
    };
    Paper { sheet: sheet.trim_end_matches([' ', ',']).to_owned(), revision, approved }
}

/// The line without its approval, and the approval.
fn approval(line: &str) -> (&str, Option<bool>) {
    let line = line.trim_matches([' ', ',']);
    let ending = APPROVALS.iter().find_map(|(words, approved)| {
        let (rest, end) = line.split_at_checked(line.len().checked_sub(words.len())?)?;
        let is_word = rest.ends_with([' ', ',']);
        (is_word && end.eq_ignore_ascii_case(words)).then_some((rest, *approved))
    });
    let (rest, approved) = ending.unwrap_or((line, None));
    (rest.trim_end_matches([' ', ',']), approved)
}

/// What stands before and after a word, however its letters are set.
fn split_at_word<'a>(text: &'a str, word: &str) -> Option<(&'a str, &'a str)> {
    text.char_indices().find_map(|(at, _)| {
        let (before, rest) = text.split_at_checked(at)?;
        let (found, after) = rest.split_at_checked(word.len())?;
        found.eq_ignore_ascii_case(word).then_some((before, after))
    })
}

fn parts(text: &str, at: &[char]) -> Vec<String> {
    text.split(at).map(str::trim).filter(|part| !part.is_empty()).map(str::to_owned).collect()
}

fn heading(texts: &ByName<String>) -> Heading {
    let text = |name: &str| texts.get(name).map(|text| text.trim().to_owned()).unwrap_or_default();
    let held = |name: &str| Some(text(name)).filter(|text| !text.is_empty());
    let code =
        CodeSections { edition: text("code_edition"), sections: parts(&text("code_sections"), &[',', ';', '\n']) };
    let hidden = |text: String| if says_all_was_seen(&text) { Vec::new() } else { parts(&text, &[';', '\n']) };
    Heading {
        project: text("project"),
        address: text("address"),
        permit: text("permit"),
        date: text("date"),
        start: text("start"),
        end: text("end"),
        weather: text("weather"),
        observer: Observer {
            name: text("observer_name"),
            title: text("observer_title"),
            licence: held("observer_licence"),
        },
        papers: papers(&text("papers")),
        codes: vec![code],
        components: parts(&text("components"), &[',', ';', '\n']),
        not_visible: held("not_visible").map(hidden),
    }
}

fn lacking(lack: Lack, texts: &ByName<String>, heading: &Heading) -> (&'static str, String) {
    let empty = |name: &str| texts.get(name).is_none_or(|text| text.trim().is_empty());
    let first_empty = |one: &'static str, other: &'static str| if empty(one) { one } else { other };
    let (field, says) = match lack {
        Lack::Project => ("project", "Write the project's name."),
        Lack::Address => ("address", "Write the address or the lot."),
        Lack::Permit => ("permit", "Write the permit number, or that there is none."),
        Lack::Date => ("date", "Write the date of the visit."),
        Lack::Times => (first_empty("start", "end"), "Write when the visit began and when it ended."),
        Lack::Weather => ("weather", "Write the weather and the temperature."),
        Lack::Observer => {
            (first_empty("observer_name", "observer_title"), "Write who looked, and that person's title.")
        }
        Lack::Papers => ("papers", "Write the drawing that the work was compared with."),
        Lack::PaperState => return ("papers", paper_state(heading)),
        Lack::Codes => {
            (first_empty("code_edition", "code_sections"), "Write the code's edition and the sections used.")
        }
        Lack::Components => ("components", "Write which parts of the frame were covered."),
        Lack::NotVisible => ("not_visible", "Write what was not visible or not reached, or “all was seen”."),
    };
    (field, says.to_owned())
}

/// Names the papers of which the revision or the approval is open.
fn paper_state(heading: &Heading) -> String {
    let open = heading.papers.iter().filter(|paper| paper.revision.is_none() || paper.approved.is_none());
    let sheets: Vec<&str> = open.map(|paper| paper.sheet.as_str()).collect();
    format!("{}: write the revision, and whether it is approved.", sheets.join(", "))
}
