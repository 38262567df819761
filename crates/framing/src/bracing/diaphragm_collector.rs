//! What the end line of a floor or a roof gathers along itself: its walls, their shares and the plate over the gaps.

use bracing::diaphragm::{CollectorPoint, WallPiece, collect};
use bracing::{Ends, Framing, LevelJoints, OtherFace, SegmentedWall, check_segmented, nailings, strength};
use measure::{Force, Length, LineLoad};
use members::working::{Basis, Part};

use super::diaphragm::{Told, size};
use super::diaphragm_chord::{SpliceNail, nails};
use super::{frame, lists};
use crate::quick::reply::{QuickReply, TableReply};
use crate::quick::say::{force_fact, pounds};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

/// So little along a plate is nothing.
const NOTHING: Force = Force::from_pounds(0.5);

/// The walls of the end line; what is wrong with them is said.
pub(super) fn end_line(reading: &mut Reading, deep: Length) -> Option<Vec<(Length, bool)>> {
    reading.word("end_line")?;
    let line = lists::walls_and_gaps(reading, "end_line")?;
    let sum: Length = line.iter().map(|(long, _)| *long).sum();
    if sum > deep + Length::from_inches(0.1) {
        let problem = format!(
            "{} of walls and gaps was given; to the depth of the floor, {}, is taken.",
            words::length(sum),
            words::length(deep)
        );
        reading.refuse("end_line", problem);
        return None;
    }
    Some(line)
}

/// Walls of the line by where they begin and end.
pub(super) fn stretches(line: &[(Length, bool)]) -> Vec<(Length, Length)> {
    let mut from = Length::ZERO;
    let mut walls = Vec::new();
    for (long, is_wall) in line {
        if *is_wall {
            walls.push((from, from + *long));
        }
        from += *long;
    }
    walls
}

/// The walls of the line with their shares of what the floor brings; a sentence where none counts.
fn shares(told: &Told<'_>, walls: &[(Length, Length)]) -> Option<Result<Vec<WallPiece>, String>> {
    let reading = told.reading;
    let wall = SegmentedWall {
        height: reading.length("wall_high")?,
        pieces: walls.iter().map(|(from, to)| *to - *from).collect(),
        shear: told.answer.reaction,
        dead: LineLoad::ZERO,
        ends: Ends { post: Length::ZERO, hold_down: Length::ZERO },
    };
    let framing = Framing {
        specific_gravity: frame::wood(reading)?.0.specific_gravity().value,
        studs: Length::from_inches(16.0),
        wet: false,
        hold_downs_inside: true,
        edition: frame::edition(reading)?,
        joints: LevelJoints::Blocked,
        other_face: OtherFace::Bare,
    };
    // How walls share does not hang on their nailing while all are nailed alike.
    let any = strength(&nailings().next()?, &framing).ok()?;
    let shared = check_segmented(&wall, &any);
    if shared.capacity <= Force::ZERO {
        return Some(Err(
            "No wall of the end line is long enough to count: nothing takes what the floor brings.".to_owned()
        ));
    }
    let piece = |((from, to), piece): (&(Length, Length), &bracing::Segment)| WallPiece {
        from: *from,
        to: *to,
        share: piece.share,
    };
    Some(Ok(walls.iter().zip(&shared.pieces).map(piece).collect()))
}

/// The force along the end line, and its most: where, and in words.
pub(super) fn collector(
    reply: &mut QuickReply,
    about: &mut About<'_>,
    told: &Told<'_>,
    line: Option<&[(Length, bool)]>,
    nail: Option<SpliceNail>,
) -> Option<(Length, String)> {
    let Some(line) = line else {
        about.ask("end_line", "What walls stand in the line at its end, and where is there none? The plate over a gap must carry the push on to a wall.");
        return None;
    };
    let found = shares(told, &stretches(line))?
        .and_then(|walls| collect(told.floor.width, &walls).map_err(|outside| outside.to_string()));
    let points = match found {
        Ok(points) => points,
        Err(sentence) => {
            about.outside(sentence);
            return None;
        }
    };
    let hardest = points.iter().max_by(|a, b| size(a.force).pounds().total_cmp(&size(b.force).pounds()))?;
    let most = size(hardest.force);
    let at = words::length(hardest.at);
    reply.facts.push(force_fact(
        "collector_lb",
        format!("the plate of the end line, {at} from the corner, carries"),
        most,
    ));
    reply.tables.push(collector_table(&points));
    let mut part = Part::new("Along the end line");
    let brought = (told.answer.reaction / told.floor.width).plf();
    for point in &points {
        let meaning = format!("{} from the corner: brought less what walls took", words::length(point.at));
        let expression = format!("{} × {} − ΣV", figure(brought), figure(point.at.feet()));
        part.step("F", meaning, expression, (point.force.pounds(), "lb"), Basis::Arithmetic);
    }
    about.part(part);
    if most > NOTHING {
        let by = match nail {
            Some(SpliceNail { name, each, .. }) => {
                format!(", or is spliced with {} nails ({name}) each side", figure(nails(most, each)))
            }
            None => String::new(),
        };
        reply.action.push(format!("The plate over the gaps of the end line runs through for {}{by}.", pounds(most)));
    }
    about.say("Walls of the end line are nailed alike and share the push by their strength; one that is narrower than 2:1 takes less, one past 3.5:1 none.");
    Some((hardest.at, pounds(most)))
}

fn collector_table(points: &[CollectorPoint]) -> TableReply {
    let row = |point: &CollectorPoint| {
        let force = size(point.force);
        let carried = if force > NOTHING { force } else { Force::ZERO };
        vec![words::length(point.at), pounds(carried)]
    };
    TableReply {
        heading: "Along the end line".to_owned(),
        columns: ["from the corner", "in the plate"].map(str::to_owned).to_vec(),
        rows: points.iter().map(row).collect(),
        notes: vec!["Straight between these places. Each pulls or presses, as the wind blows.".to_owned()],
    }
}
