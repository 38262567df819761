//! Reads a schedule, line by line.

use core::fmt;

use measure::{Force, Length, LengthUnit, read_length, read_number};

use super::csv;
use super::{HoldDownMark, PanelMark, Schedule};
use crate::nailing_text::{NailingTextError, read_nailing};

/// What is wrong with a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ScheduleProblem {
    /// The line, from one.
    pub line: usize,
    /// What is wrong with it, as a sentence.
    pub problem: String,
}

impl fmt::Display for ScheduleProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Line {}: {}", self.line, self.problem)
    }
}

impl core::error::Error for ScheduleProblem {}

/// The most lines that are read.
const MOST: usize = 60;
/// The longest mark.
const MARK: usize = 16;

/// Reads a schedule. Lines end at a line's end or a semicolon; empty ones are passed over.
///
/// # Errors
/// Every line that is not understood, with what is wrong with it.
///
/// ```
/// use bracing::schedule::read_schedule;
/// let schedule = read_schedule("sheet S2.1 rev B\nP1: 15/32 10d 3/12, studs 2x6, hold-down HD2\nHD2: hold-down 5,000 lb, rod 5/8")?;
/// assert_eq!(schedule.panels[0].nailing.to_string(), "15/32\" 10d at 3\"");
/// assert_eq!(schedule.hold_down("hd2").map(|found| found.load.pounds()), Some(5000.0));
/// assert_eq!(read_schedule(&schedule.to_string()), Ok(schedule));
/// # Ok::<(), Vec<bracing::schedule::ScheduleProblem>>(())
/// ```
pub fn read_schedule(text: &str) -> Result<Schedule, Vec<ScheduleProblem>> {
    let lines = text.split(['\n', ';']).map(str::trim).enumerate().filter(|(_, line)| !line.is_empty());
    let lines: Vec<(usize, String)> = lines.map(|(index, line)| (index + 1, line.to_owned())).collect();
    // A tab that parts no table is a space.
    let lines = csv::as_lines(lines).into_iter().map(|(line, text)| (line, text.replace('\t', " ")));
    let lines: Vec<(usize, String)> = lines.collect();
    let mut schedule = Schedule::default();
    let mut problems = Vec::new();
    for (line, text) in lines.iter().take(MOST) {
        if let Err(problem) = read_line(&mut schedule, text) {
            problems.push(ScheduleProblem { line: *line, problem });
        }
    }
    if let Some((line, _)) = lines.get(MOST) {
        problems.push(ScheduleProblem { line: *line, problem: format!("to {MOST} lines are taken.") });
    }
    if problems.is_empty() { Ok(schedule) } else { Err(problems) }
}

fn read_line(schedule: &mut Schedule, text: &str) -> Result<(), String> {
    if let Some(sheet) = text.strip_prefix("sheet ").or_else(|| text.strip_prefix("Sheet ")) {
        sheet.trim().clone_into(&mut schedule.sheet);
        return Ok(());
    }
    let (mark, rest) = text.split_once(':').ok_or_else(|| {
        format!("“{text}” was given; a mark, a colon and what it is are taken, such as P1: 7/16 8d 4.")
    })?;
    let mark = mark.trim();
    if mark.is_empty() || mark.chars().count() > MARK {
        return Err(format!("“{mark}” was given; a mark of one to {MARK} letters is taken before the colon."));
    }
    if schedule.panel(mark).is_some() || schedule.hold_down(mark).is_some() {
        return Err(format!("{mark} stands in two lines; each mark is taken once."));
    }
    let parts = parts(rest);
    let first = parts.first().map(|part| part.to_lowercase()).unwrap_or_default();
    let is_hold_down = ["hold-down", "holdown", "hold down", "strap"].iter().any(|word| first.starts_with(word));
    if is_hold_down && load_of(&first).is_ok() {
        schedule.hold_downs.push(hold_down(mark, &first, parts.get(1..).unwrap_or_default())?);
    } else {
        schedule.panels.push(panel(mark, &parts)?);
    }
    Ok(())
}

/// What stands between commas; the comma of `5,000` parts nothing.
fn parts(text: &str) -> Vec<String> {
    let mut parts: Vec<String> = Vec::new();
    for part in text.split(',') {
        let thousands = part.len() >= 3 && part.chars().take(3).all(|digit| digit.is_ascii_digit());
        match parts.last_mut().filter(|last| thousands && last.ends_with(|end: char| end.is_ascii_digit())) {
            Some(last) => last.push_str(part),
            None => parts.push(part.trim().to_owned()),
        }
    }
    parts.retain(|part| !part.is_empty());
    parts
}

fn panel(mark: &str, parts: &[String]) -> Result<PanelMark, String> {
    let [first, rest @ ..] = parts else {
        return Err(format!("{mark}: nothing follows its colon; panels and nails are taken, such as 7/16 8d 4."));
    };
    let nailing = read_nailing(first).map_err(|problem: NailingTextError| problem.to_string())?;
    let mut panel = PanelMark {
        mark: mark.to_owned(),
        nailing,
        boundary: None,
        field: field_of(first),
        studs: String::new(),
        post: String::new(),
        blocked: None,
        blocking: String::new(),
        plate: String::new(),
        sill: String::new(),
        bolts: None,
        washer: String::new(),
        hold_down: String::new(),
    };
    for part in rest {
        panel_part(&mut panel, part)?;
    }
    Ok(panel)
}

const PANEL_PARTS: &str = "both faces, Structural I, across, boundary 3, field 12, studs 2x6, post 3, blocked, unblocked, blocking 2x4 flat, plate 16d at 4, sill 16d at 6, bolts 5/8 at 32, washer 3x3x1/4, hold-down HD1";

fn panel_part(panel: &mut PanelMark, part: &str) -> Result<(), String> {
    let lower = part.to_lowercase();
    let (word, rest) = lower.split_once(' ').unwrap_or((lower.as_str(), ""));
    let rest = rest.trim();
    let said =
        || if rest.is_empty() { Err(format!("“{part}”: nothing follows the word.")) } else { Ok(rest.to_owned()) };
    match word {
        "both" => panel.nailing.both_faces = true,
        "across" => panel.nailing.across_studs = true,
        "structural" => panel.nailing.sheathing = crate::Sheathing::StructuralI,
        "blocked" | "block" => panel.blocked = Some(true),
        "unblocked" => unblock(panel),
        "blocking" => match said()?.as_str() {
            "no" | "none" | "unblocked" => unblock(panel),
            "yes" | "y" | "x" | "1" | "true" | "all" | "blocked" | "block" => panel.blocked = Some(true),
            what => {
                what.clone_into(&mut panel.blocking);
                panel.blocked = Some(true);
            }
        },
        "boundary" => panel.boundary = Some(inches(rest)?),
        "field" => panel.field = Some(inches(rest)?),
        "studs" | "stud" => panel.studs = said()?,
        "post" | "posts" => panel.post = said()?,
        "plate" | "plates" => panel.plate = said()?,
        "sill" | "sills" => panel.sill = said()?,
        "washer" | "washers" => panel.washer = said()?,
        "bolts" | "bolt" => {
            let (thick, apart) =
                rest.split_once(" at ").ok_or_else(|| format!("“{part}” was given; bolts 5/8 at 32 is taken."))?;
            panel.bolts = Some((inches(thick)?, inches(apart)?));
        }
        "hold-down" | "holdown" | "hd" => panel.hold_down = said()?.to_uppercase(),
        _ => return Err(format!("“{part}” was given; these are taken after the nails: {PANEL_PARTS}.")),
    }
    Ok(())
}

fn unblock(panel: &mut PanelMark) {
    panel.blocked = Some(false);
    panel.blocking.clear();
}

/// The second number of `4/12` after the nail.
fn field_of(text: &str) -> Option<Length> {
    let after = text.split_whitespace().skip(2).find(|word| word.contains('/'))?;
    let (_, field) = after.trim_matches('"').split_once('/')?;
    inches(field).ok().filter(|field| field.inches() >= 3.0)
}

fn hold_down(mark: &str, first: &str, rest: &[String]) -> Result<HoldDownMark, String> {
    let mut found = HoldDownMark {
        mark: mark.to_owned(),
        strap: first.starts_with("strap"),
        load: load_of(first)?,
        rod: None,
        post: String::new(),
        gives: None,
    };
    for part in rest {
        let lower = part.to_lowercase();
        let (word, value) = lower.split_once(' ').unwrap_or((lower.as_str(), ""));
        match word {
            "rod" | "bolt" => found.rod = Some(inches(value)?),
            "post" | "posts" => value.trim().clone_into(&mut found.post),
            "gives" => found.gives = Some(inches(value)?),
            _ => {
                return Err(format!("“{part}” was given; these are taken after the load: rod 5/8, post 3, gives 1/8."));
            }
        }
    }
    Ok(found)
}

/// The load after the first word: `hold-down 5000 lb`.
fn load_of(text: &str) -> Result<Force, String> {
    let number = text.trim_start_matches(|letter: char| !letter.is_ascii_digit());
    let pounds = read_number(number, &["lb", "lbs", "pounds"]).map_err(|problem| problem.to_string())?;
    if (20.0..=200_000.0).contains(&pounds) {
        return Ok(Force::from_pounds(pounds));
    }
    Err(format!("{number} was given; a load from 20 to 200,000 lb is taken."))
}

fn inches(text: &str) -> Result<Length, String> {
    let read = read_length(text.trim(), LengthUnit::Inches).map_err(|problem| problem.to_string())?.length;
    if (0.0..=120.0).contains(&read.inches()) {
        return Ok(read);
    }
    Err(format!("{} in was given; to 120 in is taken.", read.inches()))
}
