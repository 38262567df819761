//! Bringing two copies of the same values together.

use crate::document::Fields;

/// One value that both sides changed, and not to the same.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clash {
    /// The input's stable name.
    pub field: String,
    /// What is stored, which stands; none where it was cleared.
    pub stored: Option<String>,
    /// What this side wanted; none where it was cleared.
    pub ours: Option<String>,
}

/// Two copies brought together.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Merged {
    /// The values.
    pub fields: Fields,
    /// What could not be brought together: the stored value stands, and ours is here for the caller to keep.
    pub clashes: Vec<Clash>,
}

/// Brings our changes since `base` into what is stored now. A value that only one side changed is taken from that
/// side; where both changed it, what is stored stands and ours comes back as a clash. Nothing is dropped.
#[must_use]
pub fn merge_fields(base: &Fields, stored: &Fields, ours: &Fields) -> Merged {
    let mut merged = Merged { fields: stored.clone(), clashes: Vec::new() };
    let names = base.keys().chain(ours.keys().filter(|name| !base.contains_key(*name)));
    for name in names {
        let (was, theirs, mine) = (base.get(name), stored.get(name), ours.get(name));
        if mine == was || mine == theirs {
            continue;
        }
        if theirs == was {
            match mine {
                Some(text) => merged.fields.insert(name.clone(), text.clone()),
                None => merged.fields.remove(name),
            };
        } else {
            merged.clashes.push(Clash { field: name.clone(), stored: theirs.cloned(), ours: mine.cloned() });
        }
    }
    merged
}
