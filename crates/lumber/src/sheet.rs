//! An I-joist or another engineered joist, by the numbers of its maker's own sheet.

use std::sync::Arc;

use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment};

use crate::LumberError;

/// Most characters of a sheet joist's name.
const MOST_NAME: usize = 60;

/// What a maker's sheet says of a joist, before it is checked. Capacities are for normal load duration.
#[derive(Clone, Debug, PartialEq)]
pub struct SheetInput {
    /// What the joist is called there.
    pub name: String,
    /// Depth.
    pub depth: Length,
    /// Width of its flange.
    pub breadth: Length,
    /// Moment it carries, its compression flange held.
    pub moment: Moment,
    /// Shear it carries.
    pub shear: Force,
    /// Stiffness in bending `E I`.
    pub ei: FlexuralRigidity,
    /// Stiffness in shear `K`, where the sheet has it: a uniform load adds `w L² / K` to the sag.
    pub shear_stiffness: Option<Force>,
    /// Reaction it takes at an end, at the bearing that it is given with.
    pub end_reaction: Force,
    /// Reaction it takes over a support between its ends; the end's where the sheet has none.
    pub interior_reaction: Option<Force>,
    /// Weight along its length.
    pub weight: LineLoad,
}

/// A joist by its maker's sheet, checked for being possible.
#[derive(Clone, Debug, PartialEq)]
pub struct SheetJoist {
    name: Arc<str>,
    input: SheetValues,
}

#[derive(Clone, Copy, Debug, PartialEq)]
struct SheetValues {
    depth: Length,
    breadth: Length,
    moment: Moment,
    shear: Force,
    ei: FlexuralRigidity,
    shear_stiffness: Option<Force>,
    end_reaction: Force,
    interior_reaction: Force,
    weight: LineLoad,
}

impl SheetJoist {
    /// Takes what was typed when every value is one that such a joist can have.
    ///
    /// Accepted: 7 to 36 in deep, 1-1/4 to 7 in broad, moments of 500 to 60,000 ft-lb, forces of 200 to 20,000 lb, `E I`
    /// of 50 to 5,000 million lb-in², 0.5 to 20 lb a foot. The ranges catch slips of a digit or a unit; they are common
    /// practice, not a standard's.
    ///
    /// # Errors
    /// When the name is empty or over 60 characters, or a value is outside its range.
    pub fn new(input: SheetInput) -> Result<Self, LumberError> {
        let name = input.name.trim();
        if name.is_empty() || name.chars().count() > MOST_NAME {
            return Err(LumberError::LabelName { most: MOST_NAME });
        }
        let reaction = within("End reaction", input.end_reaction.pounds(), (200.0, 20_000.0), "lb")?;
        let interior = input.interior_reaction.map_or(Ok(reaction), |interior| {
            within("Reaction over a support", interior.pounds(), (200.0, 40_000.0), "lb")
        })?;
        let shear_stiffness = input
            .shear_stiffness
            .map(|stiffness| within("Shear stiffness K", stiffness.pounds(), (1e5, 1e9), "lb"))
            .transpose()?;
        let million = input.ei.pound_square_inches() / 1e6;
        let values = SheetValues {
            depth: Length::from_inches(within("Depth", input.depth.inches(), (7.0, 36.0), "in")?),
            breadth: Length::from_inches(within("Flange width", input.breadth.inches(), (1.25, 7.0), "in")?),
            moment: Moment::from_foot_pounds(within("Moment", input.moment.foot_pounds(), (500.0, 60_000.0), "ft-lb")?),
            shear: Force::from_pounds(within("Shear", input.shear.pounds(), (200.0, 20_000.0), "lb")?),
            ei: FlexuralRigidity::from_pound_square_inches(
                within("Stiffness E I", million, (50.0, 5_000.0), "million lb-in²")? * 1e6,
            ),
            shear_stiffness: shear_stiffness.map(Force::from_pounds),
            end_reaction: Force::from_pounds(reaction),
            interior_reaction: Force::from_pounds(interior),
            weight: LineLoad::from_plf(within("Weight", input.weight.plf(), (0.5, 20.0), "lb a foot")?),
        };
        Ok(Self { name: Arc::from(name), input: values })
    }

    /// What it is called.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Depth.
    #[must_use]
    pub const fn depth(&self) -> Length {
        self.input.depth
    }

    /// Width of its flange.
    #[must_use]
    pub const fn breadth(&self) -> Length {
        self.input.breadth
    }

    /// Moment it carries at normal load duration.
    #[must_use]
    pub const fn moment(&self) -> Moment {
        self.input.moment
    }

    /// Shear it carries at normal load duration.
    #[must_use]
    pub const fn shear(&self) -> Force {
        self.input.shear
    }

    /// Stiffness in bending.
    #[must_use]
    pub const fn ei(&self) -> FlexuralRigidity {
        self.input.ei
    }

    /// Stiffness in shear, where the sheet has it.
    #[must_use]
    pub const fn shear_stiffness(&self) -> Option<Force> {
        self.input.shear_stiffness
    }

    /// Reaction it takes at an end, or over a support between its ends.
    #[must_use]
    pub const fn reaction(&self, interior: bool) -> Force {
        if interior { self.input.interior_reaction } else { self.input.end_reaction }
    }

    /// Weight along its length.
    #[must_use]
    pub const fn weight(&self) -> LineLoad {
        self.input.weight
    }
}

fn within(what: &'static str, given: f64, (low, high): (f64, f64), unit: &'static str) -> Result<f64, LumberError> {
    if (low..=high).contains(&given) {
        Ok(given)
    } else {
        Err(LumberError::OutsideRange { what, given, low, high, unit })
    }
}
