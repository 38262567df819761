//! Roof sheathing of one plane, read and answered.

use layout::roof::{
    Corner, Course, Meeting, SheathedPlane, SheathingAnswer, SheathingEnd, Side, along_slope, sheathing,
};
use measure::{Length, Slope};
use members::working::{Basis, Part};

use super::SHEETS_TO_BUY;
use super::drawn::{DrawnCourse, DrawnLayout, DrawnSheathing};
use super::roof_inputs::{corner, is_a_roof, other_pitch_taken, pitch, refuse, run, run_taken};
use super::say::{angle_fact, cautions, degrees};
use crate::quick::reply::{Drawn, FactReply, QuickReply, TableReply};
use crate::quick::say::{capital, fact, length_fact};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "sheathed_eave",
    "left_end",
    "right_end",
    "roof_pitch",
    "cut_other_pitch",
    "corner_angle",
    "building_length",
    "house_width",
    "cut_run",
    "eave_overhang",
    "sheet_gap",
];

/// What the answer rests on, whatever stands at its ends.
const USED: &[&str] = &["left_end", "right_end", "roof_pitch", "eave_overhang", "sheet_gap"];
/// The same with a hip or a valley.
const USED_AT_A_CORNER: &[&str] =
    &["left_end", "right_end", "roof_pitch", "corner_angle", "eave_overhang", "sheet_gap"];

/// A sheet: along the eave, and up the slope.
const SHEET: (Length, Length) = (Length::from_inches(96.0), Length::from_inches(48.0));
/// The narrowest course that is laid by choice; common practice.
const NARROWEST: Length = Length::from_inches(24.0);

/// A plane with what was taken for it.
struct Read {
    plane: SheathedPlane,
    ends: [End; 2],
    gap: Length,
    level: Length,
}

/// What stands at an end of the plane.
#[derive(Clone, Copy)]
struct End {
    name: &'static str,
    corner: Option<Corner>,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    is_a_roof(reading, "roof_pitch")?;
    let ends = [end(reading, "left_end")?, end(reading, "right_end")?];
    let read = read(reading, ends)?;
    match sheathing(&read.plane) {
        Ok(answer) => Some(reply(reading, &read, &answer)),
        Err(problem) => {
            refuse(reading, &problem);
            None
        }
    }
}

fn end(reading: &mut Reading, input: &str) -> Option<End> {
    let (name, meeting) = match reading.word(input)? {
        "hip" => ("hip", Meeting::Hip),
        "valley" => ("valley", Meeting::Valley),
        _ => return Some(End { name: "gable", corner: None }),
    };
    corner(reading, meeting).map(|corner| End { name, corner: Some(corner) })
}

fn read(reading: &Reading, ends: [End; 2]) -> Option<Read> {
    let (pitch, overhang, gap) = (pitch(reading)?, reading.length("eave_overhang")?, reading.length("sheet_gap")?);
    let level = run(reading)? + overhang;
    let eave = match reading.length("sheathed_eave") {
        Some(eave) => eave,
        None => reading.length("building_length")? + ends.iter().map(|end| end.past_the_wall(overhang)).sum(),
    };
    let plane = SheathedPlane {
        pitch,
        eave,
        slope_length: along_slope(level, pitch),
        ends: ends.map(|end| end.corner.map(|corner| SheathingEnd { corner, side: Side::A })),
        course: SHEET.1 + gap,
    };
    Some(Read { plane, ends, gap, level })
}

impl End {
    /// How far the fascia stands past the end of the wall, along it: back of it at a valley.
    fn past_the_wall(self, overhang: Length) -> Length {
        let Some(corner) = self.corner else { return Length::ZERO };
        let past = overhang / (corner.angle() / 2.0).tan();
        if corner.meeting() == Meeting::Hip { past } else { -past }
    }
}

/// How far the cut stands in over a rise of so much along the slope; below zero it runs out.
fn back(read: &Read, answer: &SheathingAnswer, end: usize, up: Length) -> Length {
    answer.back[end] * (up / read.plane.course)
}

/// Sheets that one course takes, offcuts of other courses left out.
fn sheets(read: &Read, answer: &SheathingAnswer, course: &Course) -> f64 {
    let run_out: Length = (0..2).map(|end| back(read, answer, end, course.width).min(Length::ZERO).abs()).sum();
    let across = ((course.lower + run_out + read.gap) / (SHEET.0 + read.gap)).ceil();
    // A narrower last course is made 24 in wide by ripping the first.
    let strips = (SHEET.1 / course.width.max(NARROWEST)).floor().max(1.0);
    (across / strips).ceil()
}

fn reply(reading: &Reading, read: &Read, answer: &SheathingAnswer) -> QuickReply {
    let has_corner = read.ends.iter().any(|end| end.corner.is_some());
    let mut about = About::of(reading, if has_corner { USED_AT_A_CORNER } else { USED });
    run_taken(reading, &mut about);
    if has_corner {
        other_pitch_taken(reading, &mut about);
    }
    if reading.length("sheathed_eave").is_none() {
        about.assume(
            "sheathed_eave",
            &format!("Eave: {} (the house, out to the fascia at a hip).", words::length(read.plane.eave)),
        );
    }
    about.say("Sheets of 4 by 8 feet, long side along the eave, from the outer face of the fascia to the middle of the ridge. Leave the slot of a ridge vent as its maker asks.");
    let up = answer.courses.last().map_or(Length::ZERO, |last| last.from_eave + last.width);
    if up < read.plane.slope_length - Length::from_inches(1.0 / 16.0) {
        about.say(format!(
            "Both hips meet {} up the slope, under the ridge: this side ends there in a point.",
            words::length(up)
        ));
    }
    about.say("Sheets are counted course by course: what is cut off is not used in another course.");
    cautions(&mut about);
    about.part(working(read, answer));
    let total: f64 = answer.courses.iter().map(|course| sheets(read, answer, course)).sum();
    QuickReply {
        size: if total == 1.0 { "1 sheet".to_owned() } else { format!("{} sheets", figure(total)) },
        verdict: SHEETS_TO_BUY.to_owned(),
        facts: facts(read, answer, total),
        tables: vec![courses(read, answer)],
        action: action(read, answer),
        drawn: Drawn::Layout(DrawnLayout::Sheathing(Box::new(drawn(read, answer)))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

/// The width of the first course that leaves the last wide enough.
fn first_course(answer: &SheathingAnswer) -> Length {
    match answer.courses.as_slice() {
        [_, .., last] if last.width < NARROWEST => SHEET.1 - (NARROWEST - last.width),
        [only] => only.width.min(SHEET.1),
        _ => SHEET.1,
    }
}

fn action(read: &Read, answer: &SheathingAnswer) -> Vec<String> {
    let first = first_course(answer);
    let mut says = Vec::new();
    if let Some(last) = answer.courses.last().filter(|_| answer.courses.len() > 1 && first < SHEET.1) {
        says.push(format!(
            "Laid whole from the eave, the last course is {} wide. Rip the first to {}: the last is then 24\". Common practice: no course under 24\".",
            words::inches(last.width),
            words::inches(first)
        ));
    }
    says.push(format!(
        "Snap a line {} up the slope from the outer face of the fascia, and lay the first course to it.",
        words::inches(first)
    ));
    for (end, cut) in read.ends.iter().zip(answer.cuts) {
        let (Some(corner), Some(cut)) = (end.corner, cut) else { continue };
        let mark = words::length(SHEET.1 / cut.from_axis().tan());
        let way = if corner.meeting() == Meeting::Hip { "back" } else { "out" };
        let says_of = format!(
            "{}: {} from the eave edge; {mark} {way} across a sheet. Blade {} to stand plumb over the {}, {} for a true mitre.",
            capital(end.name),
            degrees(cut.from_axis()),
            degrees(cut.tilt),
            end.name,
            degrees(corner.sheathing_mitre())
        );
        if !says.contains(&says_of) {
            says.push(says_of);
        }
    }
    says.push("Break the joints: start every other course with half a sheet. Joints lie on rafters.".to_owned());
    says.push(format!("Leave {} between sheets, or what is printed on them.", words::inches(read.gap)));
    says
}

fn facts(read: &Read, answer: &SheathingAnswer, total: f64) -> Vec<FactReply> {
    let mut facts = vec![
        fact("sheets", "sheets to buy, without spares", total, figure(total)),
        length_fact("eave_in", "eave, at the fascia", read.plane.eave),
        length_fact("slope_in", "eave to ridge, along the slope", read.plane.slope_length),
        fact("courses", "courses", answer.courses.len() as f64, answer.courses.len().to_string()),
    ];
    facts.extend(answer.courses.last().map(|last| length_fact("last_in", "width of the last course", last.width)));
    for (index, (side, end)) in ["left", "right"].iter().zip(read.ends).enumerate() {
        let (Some(corner), Some(cut)) = (end.corner, answer.cuts[index]) else { continue };
        let name = end.name;
        facts.extend([
            angle_fact(
                &format!("{side}_cut_degrees"),
                format!("{side} end, at the {name}: cut from the eave edge"),
                cut.from_axis(),
            ),
            length_fact(
                &format!("{side}_back_in"),
                format!("{side} end: {} across 48\"", if name == "hip" { "back" } else { "out" }),
                SHEET.1 / cut.from_axis().tan(),
            ),
            angle_fact(
                &format!("{side}_blade_degrees"),
                format!("{side} end: blade, cut plumb along the {name}"),
                cut.tilt,
            ),
            angle_fact(
                &format!("{side}_mitre_degrees"),
                format!("{side} end: blade, true mitre"),
                corner.sheathing_mitre(),
            ),
        ]);
    }
    facts
}

fn courses(read: &Read, answer: &SheathingAnswer) -> TableReply {
    let whole = |course: &Course| ((course.lower.min(course.upper) + read.gap) / (SHEET.0 + read.gap)).floor();
    let row = |(index, course): (usize, &Course)| {
        let lengths = [course.from_eave, course.width, course.lower, course.upper].map(words::length);
        let counts = [whole(course), sheets(read, answer, course)].map(figure);
        core::iter::once((index + 1).to_string()).chain(lengths).chain(counts).collect()
    };
    TableReply {
        heading: "Every course, from the eave up".to_owned(),
        columns: ["course", "starts at", "width", "lower edge", "upper edge", "whole", "sheets"]
            .map(str::to_owned)
            .to_vec(),
        rows: answer.courses.iter().enumerate().map(row).collect(),
        notes: vec!["Starts are along the slope, with the gap under each course.".to_owned()],
    }
}

fn working(read: &Read, answer: &SheathingAnswer) -> Part {
    let mut part = Part::new("The plane unfolded");
    let pitch: Slope = read.plane.pitch;
    part.step(
        "S",
        "eave to ridge, (run + overhang) / cos P",
        format!("{} / cos {}°", figure(read.level.inches()), figure(pitch.angle().degrees())),
        (read.plane.slope_length.inches(), "in"),
        Basis::Arithmetic,
    );
    part.step(
        "c",
        "a course, 48 and the gap",
        format!("48 + {}", figure(read.gap.inches())),
        (read.plane.course.inches(), "in"),
        Basis::Input("sheet_gap"),
    );
    for (end, cut) in read.ends.iter().zip(answer.cuts) {
        let (Some(corner), Some(cut)) = (end.corner, cut) else { continue };
        let (plan, steep) = (figure(corner.plan_angle(Side::A).degrees()), figure(pitch.angle().degrees()));
        let mut step = |symbol, meaning: &str, expression: String, angle: measure::Angle| {
            part.step(symbol, meaning, expression, (angle.degrees(), "°"), Basis::Arithmetic);
        };
        step(
            "e",
            "cut from the eave edge, tan e = tan d / cos P",
            format!("tan {plan}° / cos {steep}°"),
            cut.from_axis(),
        );
        step("b", "blade, cut plumb, sin b = sin P cos d", format!("sin {steep}° × cos {plan}°"), cut.tilt);
        step("m", "blade of a true mitre, half of both backings", String::new(), corner.sheathing_mitre());
    }
    part
}

fn drawn(read: &Read, answer: &SheathingAnswer) -> DrawnSheathing {
    let place = |course: &Course| DrawnCourse {
        from_eave: course.from_eave,
        width: course.width,
        left: [course.from_eave, course.from_eave + course.width].map(|up| back(read, answer, 0, up)),
        lengths: [course.lower, course.upper],
    };
    DrawnSheathing {
        eave: read.plane.eave,
        slope: answer.courses.last().map_or(Length::ZERO, |last| last.from_eave + last.width),
        courses: answer.courses.iter().map(place).collect(),
        sheet: SHEET.0 + read.gap,
        cuts: answer.cuts.map(|cut| cut.map(|cut| degrees(cut.from_axis()))),
        ends: read.ends.map(|end| end.name),
    }
}
