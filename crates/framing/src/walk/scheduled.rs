//! What a mark of the walk asks, filled from the engineer's schedule that was typed in Bracing.

use bracing::nail_name;
use bracing::schedule::{PanelMark, Schedule, read_schedule};
use measure::{Denominator, Length};

use super::ByName;

/// A mark of the schedule, with what it asks by the names of a mark's inputs. What the schedule does not say is left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scheduled {
    /// The mark on the drawing.
    pub mark: String,
    /// What it asks.
    pub asks: ByName<String>,
}

/// Every panel mark of a schedule. A schedule that is not understood has none: Bracing says why.
#[must_use]
pub fn scheduled(lines: &str) -> Vec<Scheduled> {
    let schedule = read_schedule(lines).unwrap_or_default();
    schedule.panels.iter().map(|panel| asked(&schedule, panel)).collect()
}

fn asked(schedule: &Schedule, panel: &PanelMark) -> Scheduled {
    let mut asks = ByName::new();
    let mut ask = |name: &str, value: String| {
        if !value.is_empty() {
            asks.insert(name.to_owned(), value);
        }
    };
    let (sheet, revision) = schedule.sheet.split_once(" rev ").unwrap_or((schedule.sheet.as_str(), ""));
    ask("drawing", sheet.trim().to_owned());
    ask("drawing_revision", revision.trim().to_owned());
    ask("studs", panel.studs.to_lowercase());
    ask("sheathed", "yes".to_owned());
    ask("sheathing_thickness", panel.nailing.thickness.to_inches_fraction(Denominator::ThirtySecond));
    ask("nail", nail_name(panel.nailing.fastener).to_owned());
    ask("edge_spacing", inches(panel.nailing.edge));
    ask("field_spacing", panel.field.map(inches).unwrap_or_default());
    ask("nails_hold", "engineers_drawing".to_owned());
    if let Some((diameter, apart)) = panel.bolts {
        ask("bolt_diameter", inches(diameter));
        ask("bolt_spacing", inches(apart));
    }
    if !panel.washer.is_empty() {
        ask("plate_washers", "yes".to_owned());
    }
    if let Some(hold_down) = schedule.hold_down(&panel.hold_down) {
        ask("rod_diameter", hold_down.rod.map(inches).unwrap_or_default());
        if hold_down.strap {
            ask("uplift", format!("{} lb", hold_down.load.pounds()));
        }
    }
    Scheduled { mark: panel.mark.clone(), asks }
}

fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::SixtyFourth)
}
