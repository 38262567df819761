//! From what was understood to quantities: what more than one kind of member needs.

use lumber::{EngineeredLabel, Grade, LabelInput, Member, Product, Sawn, SawnSize, SheetInput, SheetJoist, Species};
use measure::{FlexuralRigidity, Force, Length, LengthUnit, LineLoad, Moment, Stress, read_length};
use members::check::DeflectionLimits;
use members::flexure::Piece;

pub(super) use crate::quick::read::{plf, pounds, psf, wood};
use crate::reading::Reading;
use crate::site::about::About;

/// Limits of sag: as typed, else as the code asks for this use, which is then said to be assumed.
pub(super) fn limits(
    reading: &Reading,
    about: &mut About<'_>,
    (live, total): (f64, f64),
    why: &str,
) -> DeflectionLimits {
    let mut of = |id: &str, usual: f64, what: &str| {
        reading.number(id).unwrap_or_else(|| {
            about.assume(id, &format!("{what}: the length over {} ({why}).", members::working::figure(usual)));
            usual
        })
    };
    DeflectionLimits {
        live: of("sag_limit", live, "Sag under live load"),
        total: of("total_sag_limit", total, "Total sag"),
    }
}

/// Up to five spans, with a comma between them; what is wrong with them is said.
pub(super) fn spans(reading: &mut Reading, id: &'static str) -> Option<Vec<Length>> {
    let text = reading.word(id)?.to_owned();
    let parts: Vec<&str> = text.split([',', ';']).map(str::trim).filter(|part| !part.is_empty()).collect();
    let problem = if parts.is_empty() || parts.len() > 5 {
        Some(format!("{} spans were given; one to five are taken, with a comma between them.", parts.len()))
    } else {
        None
    };
    let mut spans = Vec::new();
    let mut wrong = problem;
    for part in parts {
        match read_length(part, LengthUnit::Feet) {
            Ok(read) if (1.0..=60.0).contains(&read.length.feet()) => spans.push(read.length),
            Ok(read) => {
                let given = crate::words::length(read.length);
                wrong.get_or_insert(format!("A span of {given} was given; from 1' to 60' is taken."));
            }
            Err(problem) => {
                wrong.get_or_insert(problem.to_string());
            }
        }
    }
    match wrong {
        Some(problem) => {
            reading.refuse(id, problem);
            None
        }
        None => Some(spans),
    }
}

/// A member by its name, `2x10` or `2-2x12`, of this wood.
pub(super) fn sawn(text: &str, (species, grade): (Species, Grade)) -> Result<Member, String> {
    let plain = text.trim().to_ascii_lowercase().replace([' ', '(', ')'], "");
    let (plies, size) = match plain.split_once('-') {
        Some((plies, size)) if plies.len() == 1 && size.contains('x') => (plies.parse().unwrap_or(0), size),
        _ => (1, plain.as_str()),
    };
    let size = SawnSize::from_text(size).map_err(|problem| problem.to_string())?;
    let member =
        Member::new(Product::Sawn(Sawn { species, grade, size }), plies).map_err(|problem| problem.to_string())?;
    member.reference_values().map_err(|problem| problem.to_string())?;
    Ok(member)
}

/// The piece to judge, where one was asked for: one of those tried, or a sawn one by its name.
pub(super) fn chosen(
    reading: &mut Reading,
    id: &'static str,
    tried: impl IntoIterator<Item = Piece>,
    wood: (Species, Grade),
) -> Option<Piece> {
    let text = reading.word(id)?.to_owned();
    let plain = |name: &str| name.to_ascii_lowercase().replace([' ', '(', ')'], "");
    if let Some(found) = tried.into_iter().find(|piece| plain(&piece.name()) == plain(&text)) {
        return Some(found);
    }
    match sawn(&text, wood) {
        Ok(member) => Some(Piece::Lumber(member)),
        Err(problem) => {
            reading.refuse(id, problem);
            None
        }
    }
}

const LABEL: [&str; 7] =
    ["label_breadth", "label_depth", "label_fb", "label_fv", "label_e", "label_fc_perp", "label_depth_exponent"];

/// The inputs of a member from its label.
pub(super) const LABEL_FIELDS: [&str; 8] = [
    "label_name",
    "label_breadth",
    "label_depth",
    "label_fb",
    "label_fv",
    "label_e",
    "label_fc_perp",
    "label_depth_exponent",
];

/// Refuses what is missing of a member that was begun to be typed in; whether it was begun.
fn begun(reading: &mut Reading, name: &str, fields: &[&'static str]) -> bool {
    let begun = reading.word(name).is_some() || fields.iter().any(|id| reading.word(id).is_some());
    if begun {
        let missing: Vec<&str> = fields.iter().copied().filter(|id| reading.word(id).is_none()).collect();
        for id in missing {
            let problem =
                "Nothing was typed; a member from its label or sheet needs it. Type it as it is printed there.";
            reading.refuse(id, problem.to_owned());
        }
    }
    begun
}

/// A member typed in from its label: all of it or none.
pub(super) fn labelled(reading: &mut Reading) -> Option<Piece> {
    if !begun(reading, "label_name", &LABEL) {
        return None;
    }
    let stress = |id| reading.number(id).map(Stress::from_psi);
    let label = LabelInput {
        name: reading.word("label_name").unwrap_or("From its label").to_owned(),
        breadth: reading.length("label_breadth")?,
        depth: reading.length("label_depth")?,
        fb: stress("label_fb")?,
        fv: stress("label_fv")?,
        e: stress("label_e")?,
        fc_perp: stress("label_fc_perp")?,
        depth_exponent: reading.number("label_depth_exponent")?,
    };
    match EngineeredLabel::new(label) {
        Ok(label) => Some(Piece::Lumber(Member::single(Product::Labelled(label)))),
        Err(problem) => {
            reading.refuse("label_name", problem.to_string());
            None
        }
    }
}

const SHEET: [&str; 7] =
    ["sheet_depth", "sheet_flange", "sheet_moment", "sheet_shear", "sheet_ei", "sheet_end_reaction", "sheet_weight"];

/// A joist typed in from its maker's sheet: all of it or none.
pub(super) fn sheet(reading: &mut Reading) -> Option<Piece> {
    if !begun(reading, "sheet_name", &SHEET) {
        return None;
    }
    let force = |id| reading.number(id).map(Force::from_pounds);
    let input = SheetInput {
        name: reading.word("sheet_name").unwrap_or("From its sheet").to_owned(),
        depth: reading.length("sheet_depth")?,
        breadth: reading.length("sheet_flange")?,
        moment: Moment::from_foot_pounds(reading.number("sheet_moment")?),
        shear: force("sheet_shear")?,
        ei: FlexuralRigidity::from_pound_square_inches(reading.number("sheet_ei")? * 1e6),
        shear_stiffness: reading.number("sheet_k").map(|millions| Force::from_pounds(millions * 1e6)),
        end_reaction: force("sheet_end_reaction")?,
        interior_reaction: force("sheet_interior_reaction"),
        weight: LineLoad::from_plf(reading.number("sheet_weight")?),
    };
    match SheetJoist::new(input) {
        Ok(joist) => Some(Piece::Sheet(joist)),
        Err(problem) => {
            reading.refuse("sheet_name", problem.to_string());
            None
        }
    }
}
