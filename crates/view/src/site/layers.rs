//! Layers that one tap adds to what a roof, a ceiling, a floor or a wall is made of.

use crate::model::FieldId;

/// Whether an input is filled layer by layer.
#[must_use]
pub fn takes_layers(field: FieldId) -> bool {
    field.ends_with("_layers")
}

/// The names of the layers that are known.
#[must_use]
pub fn names() -> Vec<&'static str> {
    framing::site::layer_names().collect()
}

/// What is written when a layer is added.
#[must_use]
pub fn with_layer(text: Option<&str>, layer: usize) -> Option<String> {
    let name = names().get(layer).copied()?;
    Some(match text.map(str::trim).filter(|text| !text.is_empty()) {
        Some(text) => format!("{} + {name}", text.trim_end_matches(['+', ' '])),
        None => name.to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn layers_are_added_one_by_one() {
        let first = with_layer(None, 0).unwrap();
        assert_eq!(first, "asphalt shingles");
        assert_eq!(with_layer(Some("slate + "), 0).as_deref(), Some("slate + asphalt shingles"));
        assert_eq!(with_layer(None, 999), None);
        assert!(takes_layers("roof_layers") && !takes_layers("roof_dead"));
    }
}
