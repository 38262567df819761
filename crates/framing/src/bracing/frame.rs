//! From inputs to what walls are made of: panels, nails, studs and the posts at the ends.

use bracing::braced_walls::{BracedWalls, read_braced_walls};
use bracing::schedule::{HoldDownMark, PanelMark, Schedule, read_schedule};
use bracing::wall_lines::wind_decides;
use bracing::{Edition, Ends, Framing, LevelJoints, Nailing, OtherFace, read_nailing, read_other_face};
use lumber::{Conditions, Grade, LoadDuration, Member, Product, Sawn, SawnSize, Species};
use measure::{Length, Stress};

use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::site::input;

/// What the panels are nailed to.
pub(super) fn framing(reading: &Reading) -> Option<Framing> {
    Some(Framing {
        specific_gravity: species(reading)?.specific_gravity().value,
        studs: reading.length("brace_spacing")?,
        wet: reading.word("nailed_wet")? == "yes",
        hold_downs_inside: reading.word("held_on").is_none_or(|on| on == "inside"),
        edition: edition(reading)?,
        joints: joints(reading),
        other_face: reading.word("other_face").and_then(|text| read_other_face(text).ok()).unwrap_or(OtherFace::Bare),
    })
}

/// What the level joints lie on: as was said, else as the mark has it, else blocked.
fn joints(reading: &Reading) -> LevelJoints {
    let typed = |id: &str| reading.get(id).is_some_and(|value| value.origin == Origin::Typed);
    let panel = marked(reading).map(|(panel, _)| panel);
    let said = reading.word("wall_blocking") == Some("unblocked");
    let drawn = panel.as_ref().is_some_and(|panel| panel.blocked == Some(false));
    let open = if typed("wall_blocking") { said } else { said || drawn };
    if !open {
        return LevelJoints::Blocked;
    }
    let of_mark = panel.and_then(|panel| panel.field).filter(|_| !typed("field_nails"));
    let said = if reading.word("field_nails") == Some("6") { 6.0 } else { 12.0 };
    LevelJoints::Unblocked { field: of_mark.unwrap_or(Length::from_inches(said)) }
}

/// What the level joints of a mark lie on; field nails at 12 in where it does not say.
pub(super) fn joints_of(panel: &PanelMark) -> LevelJoints {
    match panel.blocked {
        Some(false) => LevelJoints::Unblocked { field: panel.field.unwrap_or(Length::from_inches(12.0)) },
        _ => LevelJoints::Blocked,
    }
}

/// Looks at what was said of the other face; what is wrong with it is said.
pub(super) fn other_face(reading: &mut Reading) {
    if let Some(Err(problem)) = reading.word("other_face").map(read_other_face) {
        reading.refuse("other_face", problem.to_string());
    }
}

/// The edition of the provisions.
pub(super) fn edition(reading: &Reading) -> Option<Edition> {
    Some(if reading.word("provisions")? == "2015" { Edition::Of2015 } else { Edition::Of2021 })
}

fn species(reading: &Reading) -> Option<Species> {
    Species::from_text(reading.word("species")?).ok()
}

/// Species, grade and conditions of the studs: dry, as within a closed wall.
pub(super) fn wood(reading: &Reading) -> Option<(Species, Grade, Conditions)> {
    Some((species(reading)?, Grade::from_text(reading.word("grade")?).ok()?, Conditions::default()))
}

/// Why the walls of this house are not for this tool to decide: earthquakes.
pub(super) fn earthquakes(reading: &Reading) -> Option<String> {
    wind_decides(input::seismic(reading)?).err().map(|outside| outside.to_string())
}

/// Says that wind decides, where nobody said where the house stands.
pub(super) fn seismic_assumed(reading: &Reading, about: &mut About<'_>) {
    if input::seismic(reading).is_none() {
        let says = "Seismic design category: A to C (where the wind decides; ask the building department).";
        about.assume("seismic_design_category", says);
    }
}

/// The drawing's schedule, where there is one; or what is wrong with it.
fn schedule_of(reading: &Reading) -> Option<Result<Schedule, String>> {
    Some(read_schedule(reading.word("schedule_lines")?).map_err(|problems| first_of(&problems)))
}

/// So many lines that are not understood are said at once.
const SAID: usize = 3;

fn first_of(problems: &[impl ToString]) -> String {
    let said: Vec<String> = problems.iter().take(SAID).map(ToString::to_string).collect();
    said.join(" ")
}

/// The walls that were typed, none where none were; what is wrong with them is said.
pub(super) fn braced_walls(reading: &mut Reading) -> Option<BracedWalls> {
    let read = reading.word("braced_walls").map_or_else(|| Ok(BracedWalls::default()), read_braced_walls);
    match read {
        Ok(walls) => Some(walls),
        Err(problems) => {
            reading.refuse("braced_walls", first_of(&problems));
            None
        }
    }
}

/// The drawing's schedule, where there is one; what is wrong with it is said.
pub(super) fn schedule(reading: &mut Reading) -> Option<Schedule> {
    match schedule_of(reading)? {
        Ok(schedule) => Some(schedule),
        Err(problem) => {
            reading.refuse("schedule_lines", problem);
            None
        }
    }
}

/// The panels of the schedule whose mark was typed, with the hold-down at their ends.
pub(super) fn marked(reading: &Reading) -> Option<(PanelMark, Option<HoldDownMark>)> {
    let schedule = schedule_of(reading)?.ok()?;
    let panel = schedule.panel(reading.word("drawn_size")?)?;
    Some((panel.clone(), schedule.hold_down(&panel.hold_down).cloned()))
}

/// Panels and nails as drawn, where they were said, by a mark of the schedule or written out; what is wrong with them, or
/// with the schedule, is said.
pub(super) fn drawn(reading: &mut Reading) -> Option<Nailing> {
    schedule(reading);
    let text = reading.word("drawn_size")?.to_owned();
    if let Some((panel, _)) = marked(reading) {
        return Some(lying(panel.nailing, reading));
    }
    match read_nailing(&text) {
        Ok(nailing) => Some(lying(nailing, reading)),
        Err(problem) => {
            reading.refuse("drawn_size", problem.to_string());
            None
        }
    }
}

/// The same panels, laid as was said.
pub(super) fn lying(nailing: Nailing, reading: &Reading) -> Nailing {
    Nailing { across_studs: reading.word("panels_lie") == Some("across"), ..nailing }
}

/// The post at each end, and where its hold-down stands.
pub(super) fn ends(reading: &Reading) -> Option<(Member, Ends)> {
    let plies: u8 = reading.word("end_post")?.parse().ok()?;
    let (species, grade, _) = wood(reading)?;
    let size = SawnSize::from_text(reading.word("brace_studs")?).ok()?;
    let member = Member::new(Product::Sawn(Sawn { species, grade, size }), plies).ok()?;
    let post = member.section().breadth;
    Some((member, Ends { post, hold_down: reading.length("rod_in")? }))
}

/// Strength across the grain of the bottom plate under a post, of the studs' own wood; none where no table has it. At the
/// end of a wall no length of plate goes on past the post, so nothing is added.
pub(super) fn plate(reading: &Reading) -> Option<Stress> {
    let (species, grade, conditions) = wood(reading)?;
    let size = SawnSize::from_text(reading.word("brace_studs")?).ok()?;
    let member = Member::single(Product::Sawn(Sawn { species, grade, size }));
    Some(member.adjusted_stresses(&conditions, LoadDuration::TenYears).ok()?.fc_perp)
}
