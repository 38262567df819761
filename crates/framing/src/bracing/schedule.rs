//! The engineer's schedule, read, and beside it what its panels would be worth by the tables.

use bracing::schedule::{HoldDownMark, PanelMark, Schedule};
use bracing::strength;
use measure::{Denominator, Length};
use members::working::{Basis, Part};
use standards::sdpws_2015::table_4_3;

use super::frame;
use crate::quick::reply::{Drawn, DrawnMark, QuickReply, TableReply, TextReply};
use crate::quick::say::{cautions, fact, pounds};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] =
    &["schedule_lines", "brace_spacing", "panels_lie", "nailed_wet", "species", "provisions"];

const USED: &[&str] = &["brace_spacing", "panels_lie", "nailed_wet", "species", "provisions"];

/// What is asked while there is no schedule.
pub(super) const WHAT_IT_SAYS: &str = "What does the drawing's schedule say? Type a mark a line, or paste the table.";

/// The verdict on a schedule that is understood.
const FROM_THE_DRAWING: &str = "from the drawing";
/// The verdict while there is none.
const NOT_SAID: &str = "still to be said";

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let schedule = match reading.word("schedule_lines") {
        None => Schedule::default(),
        Some(_) => frame::schedule(reading)?,
    };
    let reading = &*reading;
    let mut about = About::of(reading, USED);
    let panels = schedule.panels.len();
    let mut reply = QuickReply {
        size: match panels {
            0 => "No mark yet".to_owned(),
            1 => "1 mark".to_owned(),
            more => format!("{more} marks"),
        },
        verdict: if panels + schedule.hold_downs.len() > 0 { FROM_THE_DRAWING } else { NOT_SAID }.to_owned(),
        ..QuickReply::default()
    };
    reply.facts.push(fact("panel_marks", "marks of panels", panels as f64, panels.to_string()));
    let hold_downs = schedule.hold_downs.len();
    reply.facts.push(fact("hold_down_marks", "marks of hold-downs", hold_downs as f64, hold_downs.to_string()));
    if panels == 0 {
        about.ask("schedule_lines", WHAT_IT_SAYS);
    }
    if panels > 0 && schedule.sheet.is_empty() {
        about.ask("schedule_lines", "Which sheet and revision is it from? Write it as a line: sheet S2.1 rev B.");
    }
    reply.action = action(&schedule);
    if panels > 0 {
        reply.tables.push(panels_table(reading, &schedule));
        about.part(working(reading, &schedule));
    }
    if hold_downs > 0 {
        reply.tables.push(hold_downs_table(&schedule));
    }
    if panels + hold_downs > 0 {
        let text = |heading: &str, text: String| TextReply { heading: heading.to_owned(), text };
        reply.texts.push(text("To copy, line by line", schedule.to_string()));
        reply.texts.push(text("To copy, as CSV", schedule.to_csv()));
    }
    say_sheet(&mut about, &schedule);
    about.say("What the tables give stands beside it to compare with, for wood panels; of those that are not blocked, as the table of open level joints has them. The drawing wins, also where it asks for more or for less.");
    about.say("In the checks of walls a mark may be typed for panels and nails.");
    cautions(&mut about);
    reply.drawn = Drawn::Marks(schedule.panels.iter().map(|panel| drawn(reading, panel)).collect());
    reply.about = about.finish();
    Some(reply)
}

/// Which sheet it is from.
pub(super) fn say_sheet(about: &mut About<'_>, schedule: &Schedule) {
    let sheet = &schedule.sheet;
    if !sheet.is_empty() {
        about.say(format!("From sheet {sheet}. A newer revision wins: ask for it before nailing."));
    }
}

fn action(schedule: &Schedule) -> Vec<String> {
    let missing = schedule.missing_hold_downs();
    let mut says: Vec<String> = missing
        .map(|(panel, hold_down)| format!("{panel} names {hold_down}, and no line gives it: look on the drawing."))
        .collect();
    let unsaid = |said: fn(&PanelMark) -> bool, what: &str| {
        let marks: Vec<&str> =
            schedule.panels.iter().filter(|panel| !said(panel)).map(|panel| panel.mark.as_str()).collect();
        (!marks.is_empty()).then(|| format!("{what} of {} is not in it: look on the drawing.", marks.join(", ")))
    };
    says.extend(unsaid(|panel| panel.blocked.is_some(), "Blocking"));
    says.extend(unsaid(|panel| !panel.hold_down.is_empty(), "The hold-down"));
    let plate_is_held = |panel: &PanelMark| panel.bolts.is_some() || !panel.plate.is_empty() || !panel.sill.is_empty();
    says.extend(unsaid(plate_is_held, "What holds the plate"));
    says
}

fn allowable(reading: &Reading, panel: &PanelMark) -> Result<f64, String> {
    let framing = frame::framing(reading).ok_or_else(|| "not worked".to_owned())?;
    let framing = bracing::Framing { joints: frame::joints_of(panel), ..framing };
    let nailing = frame::lying(panel.nailing, reading);
    strength(&nailing, &framing)
        .map(|strength| strength.allowable.line_load().plf())
        .map_err(|outside| outside.to_string())
}

fn panels_table(reading: &Reading, schedule: &Schedule) -> TableReply {
    let row = |panel: &PanelMark| {
        let worth =
            allowable(reading, panel).map_or_else(|_| "—".to_owned(), |plf| format!("{} plf", figure(plf.round())));
        let ends = if panel.hold_down.is_empty() { "—".to_owned() } else { panel.hold_down.clone() };
        vec![panel.mark.clone(), panel.nailing.to_string(), worth, ends]
    };
    TableReply {
        heading: "Panels".to_owned(),
        columns: ["mark", "panels and nails", "by the tables", "hold-down"].map(str::to_owned).to_vec(),
        rows: schedule.panels.iter().map(row).collect(),
        notes: schedule.panels.iter().filter_map(beside).collect(),
    }
}

/// What a mark says beside its panels: `P1: 2" at the boundary, blocking 2x4 flat, sill 16d at 6.`
fn beside(panel: &PanelMark) -> Option<String> {
    let boundary = panel.boundary.map(|boundary| format!("{} at the boundary", words::inches(boundary)));
    let said = |word: &str, text: &str| (!text.is_empty()).then(|| format!("{word} {text}"));
    let open = (panel.blocked == Some(false)).then(|| "level joints not blocked".to_owned());
    let parts =
        [boundary, open, said("blocking", &panel.blocking), said("plate", &panel.plate), said("sill", &panel.sill)];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    (!parts.is_empty()).then(|| format!("{}: {}.", panel.mark, parts.join(", ")))
}

fn hold_downs_table(schedule: &Schedule) -> TableReply {
    let row = |hold_down: &HoldDownMark| {
        let rod = hold_down.rod.map_or_else(|| "—".to_owned(), |rod| rod.to_inches_fraction(Denominator::ThirtySecond));
        let what = if hold_down.strap { "strap" } else { "hold-down" };
        vec![hold_down.mark.clone(), what.to_owned(), pounds(hold_down.load), rod]
    };
    TableReply {
        heading: "Hold-downs and straps".to_owned(),
        columns: ["mark", "what", "load", "rod"].map(str::to_owned).to_vec(),
        rows: schedule.hold_downs.iter().map(row).collect(),
        notes: Vec::new(),
    }
}

fn working(reading: &Reading, schedule: &Schedule) -> Part {
    let mut part = Part::new("By the tables");
    for panel in &schedule.panels {
        match allowable(reading, panel) {
            Ok(plf) => {
                let meaning = format!("{}: a foot of it carries in wind", panel.mark);
                let source = table_4_3::wood_panel(
                    panel.nailing.sheathing,
                    panel.nailing.thickness,
                    panel.nailing.fastener,
                    panel.nailing.edge,
                );
                let basis = source.map_or(Basis::Arithmetic, |row| Basis::Published(row.source()));
                part.step("v", meaning, panel.nailing.to_string(), (plf, "plf"), basis);
            }
            Err(why) => {
                part.step("v", format!("{}: {why}", panel.mark), "", (0.0, "plf"), Basis::Input("schedule_lines"))
            }
        }
    }
    part
}

fn drawn(reading: &Reading, panel: &PanelMark) -> DrawnMark {
    let studs = reading.length("brace_spacing").unwrap_or(Length::from_inches(16.0));
    DrawnMark {
        mark: panel.mark.clone(),
        edge: panel.nailing.edge,
        field: panel.field.unwrap_or_else(|| table_4_3::field_spacing(panel.nailing.thickness, studs)),
        studs,
    }
}
