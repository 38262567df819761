//! Who asks for a value that was typed.

use inspection::{Drawing, Origin};

use super::Text;
use super::reading::typed;

/// The drawing, where its sheet was typed; else whoever typed the value.
pub(super) fn asked_by(sheet: &Text, revision: &Text) -> Origin {
    typed(sheet).map_or(Origin::Typed, |sheet| {
        Origin::Drawing(Drawing { sheet: sheet.to_owned(), revision: typed(revision).map(str::to_owned) })
    })
}
