//! Studs by their pulls: spacing, sheet edges, drift, doubles, and pulls that look wrong.

use inspection::stud_spacing::{
    Doubt, FirstPull, Opening, Pulled, Pulls, Reading, Rule, Sheets, SpacingAnswer, Wall, judge_spacing,
};
use inspection::{Required, Verdict, Who};
use measure::Length;
use standards::irc_2021::r602_3_5::{StudRow, StudSpacing, StudSupporting, TABLE_R602_3_5, bearing_stud};
use standards::{Source, Status};

use super::answer::Answer;
use super::asked::asked_by;
use super::reading::{Field, Inputs, typed};
use super::{Walked, walk_case, words};

mod draw;
mod next;
mod says;
mod studs;

pub use draw::{DrawnBay, DrawnEdge, DrawnRow, drawn};
pub use next::next_on_layout;
pub use studs::packs_to_look_at;

walk_case! {
    /// The inputs of a look at stud spacing. Each is a text with its unit, or a list of such texts.
    StudSpacingCase
    texts {
        /// How the pulls were taken: `from_the_end` of the plate, or `centre_to_centre`.
        pulled,
        /// What pulls from the end are taken to: `centre`, `near_edge` or `far_edge` of each stud.
        pulled_to,
        /// Where the first of centre-to-centre pulls starts: `plate_end` or `end_stud`.
        first_pull,
        /// Greatest spacing that is asked for: `16"`.
        required_spacing,
        /// The sheet of the drawing that asks for it: `S2.1`.
        drawing,
        /// Its revision.
        drawing_revision,
        /// Nominal size of the studs: `2x4`, `2x6`, `3x4`.
        studs,
        /// Thickness of the studs along the wall, where it is not the dressed one.
        stud_thickness,
        /// What the wall carries: `roof_ceiling`, `one_floor_and_roof`, `two_floors_and_roof`, `one_floor_only`.
        carries,
        /// Height of the studs between supports at their sides: `8'`.
        stud_height,
        /// Length of the plate, where it was measured.
        plate_length,
        /// Whether the wall is sheathed: `yes` or `no`.
        sheathed,
        /// Length of a sheet along the wall: `48"`.
        sheet_length,
        /// Where the first sheet starts, from the plate's end.
        sheet_start,
        /// How far the first sheet laps past the plate's end, where it does.
        sheet_past_end,
        /// The most that a stud may be bowed: `1/4`.
        bow_limit,
    }
    lists {
        /// What the tape said, stud by stud: `16`, `33`, `50`.
        pulls,
        /// Pulls that were asked about and are right, by their numbers: `3`; or by number and text, `3: 84`, which no
        /// longer counts once that pull reads otherwise.
        confirmed,
        /// Openings, from king stud to king stud: `32-3/4 to 71-1/4`.
        openings,
        /// Where several studs are asked for, found and asked: `64: 1 of 2`.
        doubles,
        /// Single studs that are bowed or notched, by their places: `33: bowed 3/8`, `33: notched 1`.
        studs_found,
    }
}

const PULL: Field = Field::new("pulls", "Pull", 0.0, 2400.0);
const REQUIRED: Field = Field::new("required_spacing", "Required spacing", 4.0, 48.0);
const THICKNESS: Field = Field::new("stud_thickness", "Stud thickness", 0.75, 3.75);
const HEIGHT: Field = Field::new("stud_height", "Stud height", 12.0, 360.0);
const PLATE: Field = Field::new("plate_length", "Plate length", 12.0, 2400.0);
const SHEET: Field = Field::new("sheet_length", "Sheet length", 12.0, 144.0);
const SHEET_START: Field = Field::new("sheet_start", "Start of the first sheet", 0.0, 144.0);
const SHEET_PAST_END: Field = Field::new("sheet_past_end", "Sheet past the plate's end", 0.0, 143.0);
const CONFIRMED: Field = Field::new("confirmed", "Pull number", 1.0, 200.0);
const OPENING: Field = Field::new("openings", "Opening", 0.0, 2400.0);

const SUPPORTING: [(&str, StudSupporting); 4] = [
    ("roof_ceiling", StudSupporting::RoofCeiling),
    ("one_floor_and_roof", StudSupporting::OneFloorAndRoof),
    ("two_floors_and_roof", StudSupporting::TwoFloorsAndRoof),
    ("one_floor_only", StudSupporting::OneFloorOnly),
];

/// Reads and answers a case.
///
/// # Errors
/// The inputs that were refused.
pub fn answer(case: &StudSpacingCase) -> Walked {
    let (mut inputs, mut answer) = (Inputs::default(), Answer::default());
    let row = row(&mut inputs, case);
    let required = required(&mut inputs, &mut answer, case, row);
    let wall = wall(&mut inputs, &mut answer, case, row);
    studs::doubles(&mut inputs, &mut answer, case);
    studs::single(&mut inputs, &mut answer, case, row);
    if inputs.refused.is_empty() {
        let rule = Rule::usual(required, table_spacings(row));
        let found = judge_spacing(&wall, &rule);
        doubts(&mut answer, case, &found);
        judged(&mut answer, &wall, &rule, &found);
        says::table(&mut answer, row);
    }
    answer.finish(inputs)
}

fn row(inputs: &mut Inputs, case: &StudSpacingCase) -> &'static StudRow {
    const ASSUMED: &str = "2x4";
    let rows: Vec<(&str, &'static StudRow)> = TABLE_R602_3_5.iter().map(|row| (row.size, row)).collect();
    let says = "Studs: 2x4 (the common stud for which the code's table asks the closest spacing).";
    let assumed = TABLE_R602_3_5.iter().find(|row| row.size == ASSUMED).unwrap_or(&TABLE_R602_3_5[0]);
    inputs.choice_or(&case.studs, "studs", &rows, assumed, says)
}

/// The spacings of the code's table for this stud, the closest first.
fn table_spacings(row: &StudRow) -> Vec<Length> {
    let mut spacings: Vec<Length> = row.spacings.into_iter().flatten().chain([row.nonbearing_spacing]).collect();
    spacings.sort_by(|a, b| a.inches().total_cmp(&b.inches()));
    spacings.dedup();
    spacings
}

/// The spacing that is asked for: typed, or the code's for what the wall carries, or the usual one.
fn required(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase, row: &StudRow) -> Required<Length> {
    const USUAL: Length = Length::from_inches(16.0);
    let by_code = by_code(inputs, answer, case, row);
    if typed(&case.required_spacing).is_some() {
        let asked = inputs.length(&case.required_spacing, &REQUIRED).unwrap_or(USUAL);
        if let Some(code) = by_code.filter(|code| code.spacing < asked) {
            let (code, asked) = (words::length(code.spacing), words::length(asked));
            answer.say(format!(
                "The code's stud table goes to {code} here; {asked} is asked for. Find out which counts."
            ));
        }
        return Required::new(asked, asked_by(&case.drawing, &case.drawing_revision));
    }
    if let Some(code) = by_code {
        return Required::new(code.spacing, code.source);
    }
    inputs.assume("required_spacing", "Required spacing: 16\" (the common one).");
    answer.ask("What spacing does the drawing or the code ask for here?", "required_spacing");
    Required::new(USUAL, Source::new("Common practice", "studs at 16 in", Status::CommonPractice))
}

/// What the code's table asks of this stud, where it was said what the wall carries.
fn by_code(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase, row: &StudRow) -> Option<StudSpacing> {
    let height = inputs.length(&case.stud_height, &HEIGHT);
    let supporting = inputs.choice(&case.carries, "carries", &SUPPORTING)?;
    let height = height.unwrap_or_else(|| {
        inputs.assume("stud_height", "Stud height: 8' (a common wall).");
        Length::from_feet(8.0)
    });
    match bearing_stud(row.size, height, supporting) {
        Ok(found) => Some(found),
        Err(problem) => {
            answer.say(problem.to_string());
            answer.leave_to("Studs outside the code's table", &[Who::Engineer]);
            None
        }
    }
}

fn wall(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase, row: &StudRow) -> Wall {
    let dressed = Length::from_inches(if row.size.starts_with('3') { 2.5 } else { 1.5 });
    let stud = inputs.length_or(&case.stud_thickness, &THICKNESS, dressed, "dressed");
    let pulled = pulled(inputs, answer, case);
    let openings = openings(inputs, case);
    Wall { pulled, stud, length: inputs.length(&case.plate_length, &PLATE), openings, sheets: sheets(inputs, case) }
}

fn pulled(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase) -> Pulled {
    let pulls = how_pulled(inputs, answer, case);
    let mut readings: Vec<Reading> = inputs.lengths(&case.pulls, &PULL).into_iter().map(Reading::of).collect();
    if readings.is_empty() {
        answer.ask("What did the tape say, stud by stud?", "pulls");
    }
    confirm(inputs, case, &mut readings);
    Pulled { pulls, readings }
}

fn confirm(inputs: &mut Inputs, case: &StudSpacingCase, readings: &mut [Reading]) {
    for (index, text) in inputs.list(&case.confirmed, CONFIRMED.id).iter().enumerate() {
        let (number, reads) =
            text.split_once(':').map_or((text.as_str(), None), |(number, reads)| (number, Some(reads)));
        let Some(number) = inputs.count_one(number.trim(), &CONFIRMED, Some(index + 1)) else { continue };
        let place = number as usize - 1;
        let typed = case.pulls.iter().flatten().nth(place);
        match (readings.get_mut(place), reads) {
            (Some(reading), None) => reading.confirmed = true,
            (Some(reading), Some(reads)) => reading.confirmed = typed.is_some_and(|typed| typed.trim() == reads.trim()),
            // What was confirmed is there no longer.
            (None, Some(_)) => {}
            (None, None) => {
                inputs.refuse(CONFIRMED.id, format!("Pull {number} was given; there are {}.", readings.len()));
            }
        }
    }
}

fn how_pulled(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase) -> Pulls {
    const PULLED_TO: [(&str, Pulls); 3] = [
        ("centre", Pulls::RunningToCentre),
        ("near_edge", Pulls::RunningToNearEdge),
        ("far_edge", Pulls::RunningToFarEdge),
    ];
    const FIRST: [(&str, FirstPull); 2] =
        [("plate_end", FirstPull::FromPlateEnd), ("end_stud", FirstPull::FromEndStud)];
    if typed(&case.pulled).is_none() {
        answer.ask("Were the pulls taken from the end of the plate, or from stud to stud?", "pulled");
    }
    let says = "Pulls: from the end of the plate (as a wall is laid out).";
    let pulled = [("from_the_end", true), ("centre_to_centre", false)];
    let from_the_end = inputs.choice_or(&case.pulled, "pulled", &pulled, true, says);
    let (pulled_to, first) = (
        inputs.choice(&case.pulled_to, "pulled_to", &PULLED_TO),
        inputs.choice(&case.first_pull, "first_pull", &FIRST),
    );
    if from_the_end {
        if pulled_to.is_none() {
            inputs.assume("pulled_to", "Pulled to: the centre of each stud (spacing is measured so).");
        }
        return pulled_to.unwrap_or(Pulls::RunningToCentre);
    }
    if first.is_none() {
        inputs.assume("first_pull", "First pull: from the plate's end (a sheet's edge then falls on a centre).");
    }
    Pulls::CentreToCentre(first.unwrap_or(FirstPull::FromPlateEnd))
}

fn openings(inputs: &mut Inputs, case: &StudSpacingCase) -> Vec<Opening> {
    let mut openings = Vec::new();
    for (index, text) in inputs.list(&case.openings, OPENING.id).iter().enumerate() {
        let which = Some(index + 1);
        let Some((from, to)) = text.split_once(" to ") else {
            inputs.refuse_one(OPENING.id, which, "an opening is written like 32-3/4 to 71-1/4.");
            continue;
        };
        let ends = (inputs.read_one(from, &OPENING, which), inputs.read_one(to, &OPENING, which));
        match ends {
            (Some(from), Some(to)) if from < to => openings.push(Opening { from, to }),
            (Some(_), Some(_)) => {
                inputs.refuse_one(OPENING.id, which, "an opening ends after it begins.");
            }
            _ => {}
        }
    }
    openings
}

fn sheets(inputs: &mut Inputs, case: &StudSpacingCase) -> Option<Sheets> {
    let says = "Sheathed: yes (an outer wall is, and a sheet's edge needs a stud).";
    let sheathed = inputs.choice_or(&case.sheathed, "sheathed", &[("yes", true), ("no", false)], true, says);
    if !sheathed {
        inputs.only_refuse(|aside| (aside.length(&case.sheet_length, &SHEET), sheet_start(aside, case)));
        return None;
    }
    let width = inputs.length_or(&case.sheet_length, &SHEET, Sheets::four_feet().width, "sheets set upright");
    let start = sheet_start(inputs, case).unwrap_or_else(|| {
        inputs.assume(SHEET_START.id, "Start of the first sheet: 0\" (from the plate's end).");
        Length::ZERO
    });
    Some(Sheets { start, width })
}

/// From the plate's end; negative where the sheet laps past it.
fn sheet_start(inputs: &mut Inputs, case: &StudSpacingCase) -> Option<Length> {
    let start = inputs.length(&case.sheet_start, &SHEET_START);
    let past = inputs.length(&case.sheet_past_end, &SHEET_PAST_END);
    if start.is_some_and(|start| start > Length::ZERO) && past.is_some_and(|past| past > Length::ZERO) {
        let problem = "A start from the plate's end was given as well. Leave one of the two empty.";
        inputs.refuse(SHEET_PAST_END.id, problem.to_owned());
    }
    past.filter(|past| *past > Length::ZERO).map(|past| -past).or(start)
}

fn doubts(answer: &mut Answer, case: &StudSpacingCase, found: &SpacingAnswer) {
    for Doubt { reading, oddity, perhaps, .. } in &found.doubts {
        let typed = case.pulls.as_ref().and_then(|pulls| pulls.get(*reading)).cloned();
        let text = typed.clone().unwrap_or_default();
        let question = super::reply::WalkQuestion {
            asks: says::doubt(*reading + 1, &text, *oddity),
            input: Some("pulls".to_owned()),
            which: Some(*reading + 1),
            typed,
            perhaps: perhaps.iter().map(says::guess).collect(),
        };
        answer.reply.questions.push(question);
    }
}

fn judged(answer: &mut Answer, wall: &Wall, rule: &Rule, found: &SpacingAnswer) {
    let Some(judged) = &found.judged else {
        answer.verdict(Verdict::NotSeen);
        if !found.doubts.is_empty() {
            answer.say("The pulls contradict each other. Nothing is judged until the questions are answered.");
        }
        return;
    };
    // A verdict that a doubtful pull helps to pass is no pass.
    if !found.doubts.is_empty() {
        answer.verdict(Verdict::NotSeen);
        answer.say("Judged by the pulls as they were read. Answer the questions on them first.");
    }
    if wall.pulled.readings.is_empty() {
        answer.verdict(Verdict::NotSeen);
    }
    says::bays(answer, judged, rule);
    says::edges(answer, judged);
    says::facts(answer, judged, rule);
    for remedy in &judged.remedies {
        answer.remedy(remedy);
    }
}
