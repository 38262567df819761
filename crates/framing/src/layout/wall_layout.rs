//! A wall that is laid out: the plates with their marks, what is cut, and what cannot be laid out well.

use layout::wall::{
    Ceiling, End, Heights, LaidWall, Notice, Opening, Part as Piece, Spacing, Wall, WallError, studs_by_the_pocketbook,
};
use measure::Length;

use super::PLATE_TO_PLATE;
use super::drawn::DrawnLayout;
use super::drawn_plates::DrawnPlates;
use super::tape::{hook, verdict};
use super::wall_inputs::{ReadWall, read, refuse};
use super::wall_steps::working;
use super::wall_tables::{cuts, panels, pulls};
use crate::quick::reply::{Drawn, FactReply, QuickReply};
use crate::quick::say::{cautions, fact, length_fact};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure, inches};

pub(super) const FIELDS: &[&str] = &[
    "plate_long",
    "plate_openings",
    "plate_every",
    "plate_hook",
    "plate_pull",
    "plate_beyond",
    "plate_height_by",
    "plate_stud",
    "plate_ceiling",
    "plate_floor",
    "plate_strap",
    "plate_board",
    "plate_left",
    "plate_right",
    "plate_meets",
    "plate_laps",
    "plate_inner",
    "plate_inner_thick",
    "plate_backing",
    "plate_posts",
    "plate_braced",
    "plate_stick",
    "plate_stud_thick",
    "plate_thick",
    "plate_tops",
    "plate_header",
    "plate_stock",
    "plate_panels",
    "plate_panel_long",
    "plate_gap",
    "plate_sized",
    "plate_below",
];

/// Half a foot of wallboard more than two sheets of 4 ft still fills: above it the sheets are wider, or three.
const OVER_TWO_SHEETS: Length = Length::from_inches(6.0);
/// What wallboard is kept off the floor. Source: field case 43.
const OFF_THE_FLOOR: Length = Length::from_inches(0.5);
/// Two sheets of 4 ft, and two of 54 in, one over the other.
const TWO_SHEETS: [Length; 2] = [Length::from_inches(96.0), Length::from_inches(108.0)];
/// A row of panels lower than this is a strip. Source: common practice.
const NARROWEST_ROW: Length = Length::from_inches(12.0);
/// The most places that a sentence names.
const NAMED: usize = 6;

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let given = read(reading)?;
    // What cannot be framed is said in places from the left end, as they were typed.
    let laid = match given.wall.lay_out().and_then(|laid| on_wall(&given.wall, laid)) {
        Ok(laid) => laid,
        Err(problem) => {
            refuse(reading, &given, problem);
            return None;
        }
    };
    if !given.from_right {
        return Some(reply(reading, &given, given.wall.clone(), laid));
    }
    let mirrored = given.wall.mirrored();
    match mirrored.lay_out() {
        Ok(laid) => Some(reply(reading, &given, mirrored, laid)),
        Err(problem) => {
            reading.refuse("plate_hook", format!("From the right end: {problem}"));
            None
        }
    }
}

/// Refuses a corner whose backing stands past the far end of a wall that is shorter than the corner.
fn on_wall(wall: &Wall, laid: LaidWall) -> Result<LaidWall, WallError> {
    let off = |centre: Length| centre < Length::ZERO || centre > wall.length;
    let meets = wall.ends.iter().find_map(|end| match *end {
        End::ThreeStuds { meets } | End::FlatStud { meets } => Some(meets),
        _ => None,
    });
    match meets {
        Some(meets) if laid.marks.iter().any(|mark| off(mark.centre)) => Err(WallError::Corner { meets }),
        _ => Ok(laid),
    }
}

/// What the answer rests on.
fn used(reading: &Reading, wall: &Wall) -> Vec<&'static str> {
    let ceiling = reading.word("plate_height_by") == Some("ceiling");
    let left_out = |id: &str| match id {
        "plate_stud" => ceiling,
        "plate_ceiling" => !ceiling,
        "plate_floor" | "plate_strap" | "plate_board" => !ceiling && wallboard(&wall.heights).is_none(),
        "plate_header" => wall.openings.is_empty(),
        "plate_inner_thick" | "plate_backing" => wall.partitions.is_empty(),
        "plate_meets" => ["plate_left", "plate_right", "plate_laps"]
            .iter()
            .all(|id| !matches!(reading.word(id), Some("three" | "flat" | "over" | "short"))),
        "plate_panel_long" | "plate_gap" | "plate_sized" | "plate_below" => wall.sheets.is_none(),
        _ => false,
    };
    FIELDS.iter().copied().filter(|id| !left_out(id)).collect()
}

fn reply(reading: &Reading, given: &ReadWall, wall: Wall, laid: LaidWall) -> QuickReply {
    let mut about = About::of(reading, &used(reading, &wall));
    let end = if given.from_right { "right" } else { "left" };
    if !wall.openings.is_empty() {
        about.assume("plate_openings", "Of an opening whose line does not say it: one jack and one king at each side, a header of two plies, one sill plate.");
    }
    about.say(format!("Every pull is from the {end} end of the plate; heights are from the top of the subfloor."));
    about.say("Sizes of openings are rough: the unit and what its maker asks around it. Write them from the unit's own sheet.");
    for notice in laid.notices.iter().filter(|notice| !wants_settling(notice)) {
        about.say(notice.to_string());
    }
    cautions(&mut about);
    about.caution("Headers, jacks and studs are sized in Members, and the drawing wins: here they are only laid out.");
    about.caution("What is laid out is not yet braced. A narrow piece beside an opening counts for nothing here: Bracing judges it.");
    about.part(working(reading, given, &wall));
    let studs = full_height(&laid);
    let unsettled = laid.notices.iter().filter(|notice| wants_settling(notice)).count();
    QuickReply {
        size: format!("{studs} studs, {}", inches(wall.heights.stud)),
        verdict: verdict(PLATE_TO_PLATE, unsettled),
        facts: facts(&wall, &laid, &given.ceiling),
        action: action(&wall, &laid, &given.ceiling, end),
        tables: [pulls(&laid, end), cuts(&laid)].into_iter().chain(panels(&laid, end)).collect(),
        drawn: Drawn::Layout(DrawnLayout::Plates(Box::new(DrawnPlates { wall, laid, from_right: given.from_right }))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

/// Whether something must be done about it; the rest is only to be known.
const fn wants_settling(notice: &Notice) -> bool {
    !matches!(notice, Notice::Clips { .. } | Notice::LevelJoint { .. })
}

/// Pieces as long as a stud.
fn full_height(laid: &LaidWall) -> usize {
    laid.marks.iter().filter(|mark| mark.part.is_full_height() || mark.part == Piece::FlatStud).count()
}

/// The first pull of the layout.
fn first_pull(laid: &LaidWall) -> Option<Length> {
    laid.marks.iter().find(|mark| mark.layout.is_some()).map(|mark| mark.pull)
}

/// The two sheets of wallboard that are hung on a wall so high, if it is of such a height.
fn wallboard(heights: &Heights) -> Option<Length> {
    TWO_SHEETS.into_iter().find(|sheets| *sheets <= heights.frame() && heights.frame() < *sheets + OVER_TWO_SHEETS)
}

fn facts(wall: &Wall, laid: &LaidWall, ceiling: &Ceiling) -> Vec<FactReply> {
    let mut facts = Vec::new();
    facts.extend(first_pull(laid).map(|pull| length_fact("first_pull_in", "first pull on the layout", pull)));
    let studs = full_height(laid);
    facts.push(fact("studs", "studs from plate to plate", studs as f64, studs.to_string()));
    facts.push(fact("stud_in", "each long", wall.heights.stud.inches(), inches(wall.heights.stud)));
    facts.push(length_fact("frame_in", "subfloor to the top of the plates", wall.heights.frame()));
    facts.push(length_fact("finished_in", "finish floor to finished ceiling", wall.heights.finished(ceiling)));
    if let Some(sheets) = wallboard(&wall.heights) {
        let gap = wall.heights.board_gap(ceiling, sheets);
        facts.push(length_fact("board_gap_in", format!("left under {} of wallboard", inches(sheets)), gap));
    }
    facts.push(length_fact("diagonal_in", "both diagonals, without the very top plate", laid.diagonal));
    let plates: Length = laid.plates.iter().map(|plate| plate.along.width()).sum();
    facts.push(length_fact("plates_in", "plates in all", plates));
    if wall.layout.spacing == Spacing::Sixteen {
        let by_rule = studs_by_the_pocketbook(wall.length);
        let what = "studs by the old rule, three for every 4' and one, without openings";
        facts.push(fact("pocketbook_studs", what, by_rule, figure(by_rule)));
    }
    if !laid.sheets.is_empty() {
        facts.push(fact(
            "panels",
            "panels and pieces of them",
            laid.sheets.len() as f64,
            laid.sheets.len().to_string(),
        ));
    }
    facts
}

fn action(wall: &Wall, laid: &LaidWall, ceiling: &Ceiling, end: &str) -> Vec<String> {
    let on_mark =
        |mark: &&layout::wall::Mark| mark.off_layout().is_some_and(|off| off.abs() < Length::from_inches(1e-3));
    let on_layout = laid.marks.iter().filter(on_mark).map(|mark| mark.pull);
    let mut says = vec![hook(end, on_layout, wall.layout.pull_to)];
    says.extend(laid.notices.iter().filter(|notice| wants_settling(notice)).map(ToString::to_string));
    says.extend(no_room_for_board(wall, ceiling));
    says.extend(strip_of_panel(laid));
    says.extend(wall.openings.iter().map(|opening| framed(wall, opening)));
    if !laid.carried_down.is_empty() {
        let mut places: Vec<String> = laid.carried_down.iter().take(NAMED).map(|pack| inches(pack.centre())).collect();
        if laid.carried_down.len() > NAMED {
            places.push("and so on".to_owned());
        }
        says.push(format!(
            "Under each post and stack of jacks, at {}: solid wood through the floor, down to the foundation. Photograph it before it is closed.",
            places.join(", ")
        ));
    }
    says.push(format!("Square the frame as it lies: both diagonals read {}.", words::length(laid.diagonal)));
    says
}

/// What an opening is framed with.
fn framed(wall: &Wall, opening: &Opening) -> String {
    let (heights, rough) = (&wall.heights, opening.rough());
    let what = if opening.sill.is_some() { "Window" } else { "Door" };
    let mut parts = vec![format!("header {}", inches(opening.between_kings(wall.stud.thickness).width()))];
    if opening.jacks > 0 {
        parts.push(format!("jacks {}", inches(opening.jack(heights))));
    }
    let above = opening.cripple_above(heights);
    if above > Length::from_inches(1e-6) {
        parts.push(format!("cripples above {}", inches(above)));
    }
    if let Some(below) = opening.cripple_below(heights) {
        parts.push(format!("sill {}, cripples below {}", inches(opening.width), inches(below)));
    }
    format!("{what} from {} to {}: {}.", inches(rough.from), inches(rough.to), parts.join(", "))
}

/// Wallboard that does not fit under the ceiling, and the studs that it fits with.
fn no_room_for_board(wall: &Wall, ceiling: &Ceiling) -> Option<String> {
    let sheets = wallboard(&wall.heights)?;
    let gap = wall.heights.board_gap(ceiling, sheets);
    if gap >= Length::ZERO {
        return None;
    }
    let stud = wall.heights.stud + OFF_THE_FLOOR - gap;
    Some(format!(
        "{} of wallboard does not fit under this ceiling: {} is missing. Studs of {} leave {} at the floor.",
        inches(sheets),
        inches(gap.abs()),
        inches(stud),
        inches(OFF_THE_FLOOR)
    ))
}

/// A strip of panel at the top that is too narrow to brace.
fn strip_of_panel(laid: &LaidWall) -> Option<String> {
    let top = laid.sheets.last().filter(|sheet| sheet.row > 0)?.upright.width();
    (top < NARROWEST_ROW).then(|| {
        format!(
            "The panels leave a strip of {} at the top. Take longer ones, which reach from plate to plate.",
            inches(top)
        )
    })
}
