//! What a check starts from: the job's values, and what follows from those of Site.

use measure::Length;
use members::working::figure;

use super::{gravity, input, read_site};
use crate::field::HEADER_FIELDS;
use crate::{HeaderCase, Texts, words};

/// The values that every header check of the job starts from. What Site works out stands where nothing was typed for it:
/// the house's mean roof height, the factor of the ground, the roof's weight by its layers, the house's width.
#[must_use]
pub fn starts(fields: &dyn Texts) -> HeaderCase {
    let mut case = HeaderCase::default();
    for spec in HEADER_FIELDS {
        if let Some(text) = fields.text(spec.id) {
            case.set(spec.id, Some(text.to_owned()));
        }
    }
    weights(fields, &mut case);
    for (field, text) in worked_out(fields) {
        if case.get(field).is_none() {
            case.set(field, Some(text));
        }
    }
    case
}

fn worked_out(fields: &dyn Texts) -> Vec<(&'static str, String)> {
    const OF_HOUSE: [&str; 4] = ["eave_height", "house_width", "roof_pitch", "roof_kind"];
    let said = |ids: &[&str]| ids.iter().any(|id| fields.text(id).is_some());
    let mut worked = Vec::new();
    if !said(&OF_HOUSE) && !said(&["hill"]) {
        return worked;
    }
    let reading = read_site(fields);
    let Some(house) = input::house(&reading) else { return worked };
    if said(&OF_HOUSE) {
        worked.push(("mean_roof_height", words::length(house.mean_roof_height().max(Length::from_feet(6.0)))));
    }
    if let Some(Ok(factor)) = input::hill_factor(&reading, input::mean_roof_height(&reading, &house)) {
        worked.push(("topographic_factor", figure((factor.factor * 1000.0).ceil() / 1000.0)));
    }
    worked
}

/// Weights by layer stand over a typed weight, here as on Site.
fn weights(fields: &dyn Texts, case: &mut HeaderCase) {
    const LAYERED: [(&str, &str); 3] =
        [("roof_dead", "roof_layers"), ("ceiling_dead", "ceiling_layers"), ("floor_dead", "floor_layers")];
    if LAYERED.iter().all(|(_, layers)| fields.text(layers).is_none()) {
        return;
    }
    let reading = read_site(fields);
    let Some(house) = input::house(&reading) else { return };
    for (id, layers) in LAYERED {
        let layers = input::layers(&reading, layers).unwrap_or_default();
        if let Some(psf) = gravity::weight(&reading, &house, id, &layers).filter(|_| !layers.is_empty()) {
            case.set(id, Some(format!("{psf:.1} psf")));
        }
    }
}
