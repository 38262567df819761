//! Between the check's inputs and the texts that are stored.

use framing::HeaderCase;
use job::Fields;
use view::model::FieldId;

/// What was typed, by name.
pub fn to_fields(case: &HeaderCase) -> Fields {
    let typed = HeaderCase::FIELDS.iter().filter_map(|field| Some(((*field).to_owned(), case.get(field)?.to_owned())));
    let mut fields = Fields::new();
    fields.extend(typed);
    fields
}

/// The inputs from what was stored. A name that this version does not know stays in the store and is passed over here.
pub fn from_fields(fields: &Fields) -> HeaderCase {
    let mut case = HeaderCase::default();
    for (field, text) in fields {
        case.set(field, Some(text.clone()));
    }
    case
}

/// The input of that name.
pub fn field_id(name: &str) -> Option<FieldId> {
    HeaderCase::FIELDS.iter().copied().find(|field| *field == name)
}
