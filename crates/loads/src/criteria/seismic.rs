//! What the seismic design category means here: it is recorded, and from where the code asks for more, the bracing for
//! wind is not enough.

use standards::OutsideTable;
use standards::irc_2021::r301_2::{Dwelling, SEISMIC, SeismicDesignCategory, SeismicProvisions, seismic_provisions};

/// Whether bracing for wind alone is all that the code asks of a dwelling: in A and B, and of a detached one in C.
/// There the category is recorded and changes nothing.
///
/// # Errors
/// A townhouse in C, and any dwelling in D0 and up.
pub fn bracing_for_wind_is_enough(category: SeismicDesignCategory, dwelling: Dwelling) -> Result<(), OutsideTable> {
    let next_step = match seismic_provisions(category, dwelling) {
        SeismicProvisions::None => return Ok(()),
        SeismicProvisions::Prescriptive => {
            "Brace it by the code's rules for earthquakes, which are not worked here, or have an engineer design it."
        }
        SeismicProvisions::DesignRequired => "An engineer designs its bracing.",
    };
    let kind = match dwelling {
        Dwelling::Detached => "a house",
        Dwelling::Townhouse => "a townhouse",
    };
    Err(OutsideTable {
        source: SEISMIC,
        given: format!("{kind} in Seismic Design Category {}", category.name()),
        covers: "bracing for wind alone: detached houses in A, B and C, townhouses in A and B",
        next_step,
    })
}
