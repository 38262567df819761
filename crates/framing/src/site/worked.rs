//! What Site works out for the checks of the job, to be kept beside what was typed: a check then need not carry all of
//! Site along.

use std::collections::BTreeMap;

use measure::Length;
use members::working::figure;
use standards::asce7_16::chapter_26::Enclosure;

use super::starts::WORKED;
use super::{gravity, input, read_site};
use crate::{Texts, words};

/// Brings the worked-out values up to date with what was typed: the house's mean roof height, the factor of the ground,
/// weights by layer. Gives whether anything changed.
pub fn work_out(fields: &mut BTreeMap<String, String>) -> bool {
    let worked: BTreeMap<String, String> =
        worked_out(fields).into_iter().map(|(id, text)| (format!("{WORKED}{id}"), text)).collect();
    let before: BTreeMap<String, String> = fields
        .iter()
        .filter(|(name, _)| name.starts_with(WORKED))
        .map(|(name, text)| (name.clone(), text.clone()))
        .collect();
    if before == worked {
        return false;
    }
    fields.retain(|name, _| !name.starts_with(WORKED));
    fields.extend(worked);
    true
}

fn worked_out(fields: &dyn Texts) -> Vec<(&'static str, String)> {
    const OF_HOUSE: [&str; 4] = ["eave_height", "house_width", "roof_pitch", "roof_kind"];
    const LAYERED: [(&str, &str); 3] =
        [("roof_dead", "roof_layers"), ("ceiling_dead", "ceiling_layers"), ("floor_dead", "floor_layers")];
    let mut worked = Vec::new();
    let reading = read_site(fields);
    let Some(house) = input::house(&reading) else { return worked };
    if OF_HOUSE.iter().any(|id| fields.text(id).is_some()) {
        worked.push(("mean_roof_height", words::length(house.mean_roof_height().max(Length::from_feet(6.0)))));
    }
    if let Some(Ok(found)) = input::ground_finding(&reading, input::mean_roof_height(&reading, &house)) {
        worked.push(("topographic_factor", figure((found.factor * 1000.0).ceil() / 1000.0)));
    }
    if input::glass_breaks(&reading) {
        let word = match input::enclosure(&reading, &house) {
            Some(Enclosure::PartiallyEnclosed) => Some("partially_enclosed"),
            Some(Enclosure::PartiallyOpen) => Some("partially_open"),
            _ => None,
        };
        worked.extend(word.map(|word| ("enclosure", word.to_owned())));
    }
    for (id, layers) in LAYERED {
        let layers = input::layers(&reading, layers).unwrap_or_default();
        if let Some(weight) = gravity::weight(&reading, &house, id, &layers).filter(|_| !layers.is_empty()) {
            worked.push((id, format!("{:.1} psf", weight.psf())));
        }
    }
    worked
}
