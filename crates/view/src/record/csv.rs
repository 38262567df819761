//! The findings as a table for a spreadsheet: one row a check, as RFC 4180 writes it.

use framing::walk::reply::WalkCheck;
use job::walk::{Because, Look, LookEntry, Mark, Point, Walk};

use super::judged::{judged, origin};
use super::words::{kind_words, severity_words};

/// A row's subject: a look with all that it belongs to, and the check of it that the row is about.
struct Row<'a> {
    walk: &'a Walk,
    job_name: &'a str,
    mark: &'a Mark,
    point: &'a Point,
    entry: &'a LookEntry,
    check: Option<&'a WalkCheck>,
}

/// A column: its name, and what stands in it.
type Column = (&'static str, fn(&Row<'_>) -> String);

const COLUMNS: [Column; 24] = [
    ("mark", |row| row.mark.name().to_owned()),
    ("place", |row| row.place()),
    ("kind", |row| kind_words(&row.look().kind).to_owned()),
    ("what", |row| row.checked(|check| &check.subject)),
    ("required", |row| row.checked(|check| &check.limit)),
    ("found", |row| row.checked(|check| &check.found)),
    ("margin", |row| row.checked(|check| &check.margin)),
    ("verdict", |row| row.check.map_or(&row.look().verdict, |check| &check.verdict).clone()),
    ("clause", |row| row.checked(|check| if check.clause.status.is_empty() { "" } else { &check.clause.source })),
    ("status", |row| row.checked(|check| &check.clause.status)),
    ("origin", |row| row.checked(|check| origin(&check.clause))),
    ("by", |row| row.entry.by.clone()),
    ("at", |row| row.entry.at.clone()),
    ("note", |row| row.look().note.clone()),
    ("correction of", |row| row.follows(Because::Corrected)),
    ("photos", |row| row.photos()),
    ("after mending", |row| row.follows(Because::Mended)),
    ("verdict at the time", |row| row.look().verdict.clone()),
    ("in words at the time", |row| row.look().says.clone()),
    ("severity", |row| severity_words(&row.look().severity).to_owned()),
    ("stands", |row| row.stands()),
    ("look", |row| row.entry.id.clone()),
    ("walk", |row| row.walk.begun.what.clone()),
    ("job", |row| row.job_name.to_owned()),
];

/// What was looked at, one row a check: every look, with what was corrected later and what is crossed out. A look that
/// compared nothing has one row. Lines end with CR and LF; a cell that a spreadsheet would work out begins with an
/// apostrophe.
#[must_use]
pub fn findings_csv(walk: &Walk, job_name: &str) -> String {
    let mut table = line(COLUMNS.iter().map(|(name, _)| (*name).to_owned()));
    for (mark, point) in walk.points() {
        for entry in &point.looks {
            let checks = judged(&entry.what).reply.checks;
            let row = |check| Row { walk, job_name, mark, point, entry, check };
            let nothing = checks.is_empty().then(|| row(None));
            for row in checks.iter().map(|check| row(Some(check))).chain(nothing) {
                table.push_str(&line(COLUMNS.iter().map(|(_, cell)| cell(&row))));
            }
        }
    }
    table
}

impl Row<'_> {
    fn look(&self) -> &Look {
        &self.entry.what
    }

    fn checked<'a>(&'a self, part: impl Fn(&'a WalkCheck) -> &'a str) -> String {
        self.check.map(part).unwrap_or_default().to_owned()
    }

    fn place(&self) -> String {
        let at = self.check.and_then(|check| check.at.as_deref()).unwrap_or("");
        let parts = [self.look().place.trim(), at];
        parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<&str>>().join(", ")
    }

    /// The id of the look that this one comes after, for that reason.
    fn follows(&self, because: Because) -> String {
        let follows = self.look().follows.as_ref().filter(|follows| follows.because == because);
        follows.map(|follows| follows.look.clone()).unwrap_or_default()
    }

    /// The photos of the thing that was looked at, by their ids.
    fn photos(&self) -> String {
        let held = self.point.photos.iter().filter(|(photo, _)| photo.struck.is_none());
        held.map(|(photo, _)| photo.what.photo.as_str()).collect::<Vec<&str>>().join(" ")
    }

    fn stands(&self) -> String {
        match &self.entry.struck {
            _ if self.mark.is_struck() => "the mark is crossed out".to_owned(),
            Some(why) => format!("crossed out: {why}"),
            None if self.point.now().is_some_and(|now| now.id == self.entry.id) => "yes".to_owned(),
            None => "a later look counts".to_owned(),
        }
    }
}

fn line(cells: impl Iterator<Item = String>) -> String {
    let quoted: Vec<String> = cells.map(|cell| quote(&defuse(cell))).collect();
    format!("{}\r\n", quoted.join(","))
}

/// A spreadsheet works out a cell that begins with one of these; with an apostrophe before it, it is a text.
fn defuse(cell: String) -> String {
    let works = cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    if works && !is_plain_number(&cell) { format!("'{cell}") } else { cell }
}

fn is_plain_number(cell: &str) -> bool {
    let digits = cell.strip_prefix(['-', '+']).unwrap_or(cell);
    let (whole, part) = digits.split_once('.').unwrap_or((digits, "0"));
    [whole, part].iter().all(|digits| !digits.is_empty() && digits.bytes().all(|letter| letter.is_ascii_digit()))
}

fn quote(cell: &str) -> String {
    if cell.contains([',', '"', '\r', '\n']) { format!("\"{}\"", cell.replace('"', "\"\"")) } else { cell.to_owned() }
}
