//! What goes with a look beside its measurements: where on the mark, how bad, a note. While it is typed it stands among
//! the look's inputs, under names that no kind of look uses.

use std::collections::BTreeMap;

use job::walk::Look;

use super::words::{SEVERITIES, severity_words};
use crate::model::{Entry, Field, FieldId, Group, Origin};
use crate::walk::Typed;

const PLACE: FieldId = "where_on_mark";
const SEVERITY: FieldId = "severity";
const NOTE: FieldId = "note";
const NAMES: [FieldId; 3] = [PLACE, SEVERITY, NOTE];

/// What goes with a look.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Aside {
    /// Where on the mark.
    pub place: String,
    /// How bad it is, by its stable name.
    pub severity: String,
    /// A note.
    pub note: String,
}

/// The inputs of it.
#[must_use]
pub fn aside_fields(texts: &BTreeMap<String, String>) -> Vec<Field> {
    let field = |id: FieldId, label, help, entry| {
        let text = texts.get(id).cloned().unwrap_or_default();
        let typed = !text.trim().is_empty();
        let shown = if id == SEVERITY { severity_words(text.trim()).to_owned() } else { text.trim().to_owned() };
        let origin = if typed { Origin::Typed } else { Origin::Unknown };
        let (echo, number, problem, group) = (String::new(), None, None, Group::Record);
        Field { id, label, help, entry, text, shown, echo, number, origin, problem, group }
    };
    vec![
        field(PLACE, "Where on the mark", "Bay 3, north end, second sheet.", Entry::Text),
        field(SEVERITY, "How bad it is", "", Entry::Choice(&SEVERITIES)),
        field(NOTE, "Note", "", Entry::Text),
    ]
}

/// Takes it out of what was typed.
#[must_use]
pub fn without_aside(mut typed: Typed) -> (Typed, Aside) {
    let [place, severity, note] =
        NAMES.map(|name| typed.texts.remove(name).map(|text| text.trim().to_owned()).unwrap_or_default());
    (typed, Aside { place, severity, note })
}

/// Puts an earlier look's back among its inputs, to be typed over.
#[must_use]
pub fn with_aside(mut typed: Typed, look: &Look) -> Typed {
    let held = [(PLACE, &look.place), (SEVERITY, &look.severity), (NOTE, &look.note)];
    let held = held.into_iter().filter(|(_, text)| !text.is_empty());
    typed.texts.extend(held.map(|(name, text)| (name.to_owned(), text.clone())));
    typed
}

#[cfg(test)]
mod tests {
    use super::{NAMES, without_aside};
    use crate::walk::{Kind, Typed};

    #[test]
    fn no_kind_of_look_uses_these_names() {
        for kind in Kind::ALL {
            assert!(NAMES.iter().all(|name| kind.field(name) != *name), "{kind:?}");
        }
    }

    #[test]
    fn what_goes_beside_is_taken_out_and_the_rest_stays() {
        let text = |name: &str, text: &str| (name.to_owned(), text.to_owned());
        let texts = [text("note", " wet "), text("drawing", "S2.1")].into_iter().collect();
        let (typed, aside) = without_aside(Typed { texts, ..Typed::default() });
        assert_eq!((aside.note.as_str(), aside.place.as_str()), ("wet", ""));
        assert_eq!(typed.texts.into_keys().collect::<Vec<_>>(), ["drawing"]);
    }
}
