//! What holds a link of the path of uplift, read from what was typed: a label's load, nails, panels, or nothing.

use bracing::uplift::Tie;
use fastening::{Driven, Joint, LoadDuration, NailConditions, Shank, SideMember, Wood, read_nail, withdrawal_value};
use lumber::Species;
use measure::{Force, Length, read_number};

use crate::reading::Reading;

/// Thickness of what a toe nail goes through.
const THROUGH: Length = Length::from_inches(1.5);
/// The most nails at one connection.
const MOST: u8 = 20;

/// The tie of an input; what is wrong with it is said. Nothing typed: it is not known.
pub(super) fn tie(reading: &mut Reading, id: &'static str, driven: Driven) -> Option<Tie> {
    let Some(text) = reading.word(id).map(str::to_ascii_lowercase) else { return Some(Tie::Unknown) };
    let species = reading.word("species").and_then(|text| Species::from_text(text).ok())?;
    match read(&text, species, driven) {
        Ok(tie) => Some(tie),
        Err(problem) => {
            reading.refuse(id, problem);
            None
        }
    }
}

fn read(text: &str, species: Species, driven: Driven) -> Result<Tie, String> {
    let text = text.trim();
    match text {
        "none" | "nothing" | "no" | "0" => return Ok(Tie::Nothing),
        "panels" | "panel" | "sheathing" => return Ok(Tie::ScheduleNailing),
        _ => {}
    }
    if let Ok(pounds) = read_number(text, &["lb", "lbs", "pounds"]) {
        return if (0.0..=50_000.0).contains(&pounds) && pounds >= 20.0 {
            Ok(Tie::Metal { allowable: Force::from_pounds(pounds), side: None })
        } else {
            Err(format!("{text} was given; a label's load from 20 to 50,000 lb is taken."))
        };
    }
    nails(text, species, driven)
}

/// `3 8d common`, `3-0.131 x 2-1/2`.
fn nails(text: &str, species: Species, driven: Driven) -> Result<Tie, String> {
    let digits = text.len() - text.trim_start_matches(|letter: char| letter.is_ascii_digit()).len();
    let (count, nail) = text.split_at(digits);
    let nail = nail.trim_start_matches(['-', ' ', '×', 'x']).trim_end_matches("toe").trim();
    let count: u8 = count.parse().ok().filter(|count| (1..=MOST).contains(count)).ok_or_else(|| {
        format!("“{text}” was given; a load such as 500 lb, nails such as 3 8d common, panels, or none is taken.")
    })?;
    let nail = read_nail(nail).map_err(|problem| problem.to_string())?.nail;
    let wood = Wood::Lumber(species);
    let joint = Joint {
        driven,
        conditions: NailConditions { duration: LoadDuration::TenMinutes, ..NailConditions::REFERENCE },
        ..Joint::face_nailed(SideMember::wood(wood, THROUGH), wood)
    };
    match withdrawal_value(nail, Shank::Smooth, &joint) {
        Ok(value) => Ok(Tie::Nails { count, each: value.adjusted }),
        Err(problem) => Err(problem.to_string()),
    }
}
