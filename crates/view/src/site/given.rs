//! Who gave a value of the place, and when: kept beside the value, and gone with it.

use std::collections::BTreeMap;

use crate::model::FieldId;

/// Who may have given a value.
pub const GIVERS: [&str; 5] = ["building department", "the drawing", "the engineer", "read off a map", "own estimate"];

/// The values as they are stored.
type Fields = BTreeMap<String, String>;

/// Between who and when.
const BETWEEN: &str = "; ";

fn place(field: &str) -> String {
    format!("given_by/{field}")
}

/// Who gave the value of an input.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Given {
    /// Whether the input holds a value that someone gave.
    pub asked: bool,
    /// Who gave it; empty until it was said.
    pub by: String,
    /// When it was typed, by this phone's clock.
    pub when: String,
}

/// Who gave the value of an input, and when it was typed.
#[must_use]
pub fn given(fields: &Fields, field: FieldId) -> Given {
    if !fields.contains_key(field) {
        return Given::default();
    }
    let (by, when) = fields.get(&place(field)).and_then(|text| text.split_once(BETWEEN)).unwrap_or_default();
    Given { asked: true, by: by.to_owned(), when: when.to_owned() }
}

/// Writes a value; none, or an empty one, clears it with who gave it. What checks start from is worked out anew.
pub fn write(fields: &mut Fields, field: FieldId, text: Option<String>, now: &str) {
    match text.filter(|text| !text.is_empty()) {
        Some(text) => {
            let by = given(fields, field).by;
            fields.insert(field.to_owned(), text);
            give(fields, field, &by, now);
        }
        None => {
            fields.remove(field);
            fields.remove(&place(field));
        }
    }
    framing::site::work_out(fields);
}

/// Says who gave a value.
pub fn give(fields: &mut Fields, field: FieldId, by: &str, now: &str) {
    fields.insert(place(field), format!("{by}{BETWEEN}{now}"));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn who_gave_a_value_goes_with_it() {
        let mut fields = Fields::new();
        assert_eq!(given(&fields, "wind_speed"), Given::default());
        write(&mut fields, "wind_speed", Some("140".to_owned()), "9:00");
        let asked = Given { asked: true, by: String::new(), when: "9:00".to_owned() };
        assert_eq!(given(&fields, "wind_speed"), asked);
        give(&mut fields, "wind_speed", GIVERS[0], "9:01");
        write(&mut fields, "wind_speed", Some("150".to_owned()), "9:02");
        let again = Given { asked: true, by: GIVERS[0].to_owned(), when: "9:02".to_owned() };
        assert_eq!(given(&fields, "wind_speed"), again);
        write(&mut fields, "wind_speed", None, "9:03");
        assert!(fields.is_empty());
    }
}
