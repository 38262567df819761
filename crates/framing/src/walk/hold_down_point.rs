//! Anchor bolts of a sill plate, hold-downs, roof ties and straps.

use inspection::{Origin, Question, Required, Seen};
use measure::Length;

use super::answer::Answer;
use super::reading::{Field, Inputs, could_not_be_seen, typed};
use super::{Text, Texts, Walked, walk_case};

mod bolts;
mod connector;
mod hold_down;
mod roof_tie;
mod strap;

walk_case! {
    /// The inputs of a look at anchor bolts, a hold-down, a roof tie or a strap. Each is a text with its unit, or a list
    /// of such texts; a list of one counts for every bolt, and a dash stands for a bolt that was not looked at. `could
    /// not be seen` is taken for whatever is hidden.
    HoldDownPointCase
    texts {
        /// What was looked at: `anchor_bolt`, `hold_down`, `roof_tie` or `strap`.
        looking_at,
        /// The plate: `2x4`, `2x6`.
        plate,
        /// Its width as measured, where it is not the dressed one.
        plate_width,
        /// Length of this piece of plate.
        plate_length,
        /// Greatest spacing of the bolts that is asked for: `6'`.
        required_spacing,
        /// Diameter of the bolts that the drawing asks for.
        required_bolt_diameter,
        /// Whether plate washers are asked for: `yes` or `no`.
        plate_washers_required,
        /// The sheet of the drawing that asks for it: `S2.1`.
        drawing,
        /// Its revision.
        drawing_revision,
        /// Whether a stud is in the way of a nut or washer: `yes` or `no`.
        stud_in_the_way,
        /// The rod's end and the top of the tightened nut: `flush or proud`, or how far it is below: `1/4`.
        thread,
        /// Whether the rod stands off the post: `yes` or `no`.
        off_the_post,
        /// Diameter of the rod that the drawing asks for.
        required_diameter,
        /// Embedment that the drawing asks for.
        required_embedment,
        /// Nails, screws or bolts of a hold-down that the drawing or the maker asks for.
        required_fasteners,
        /// Nails of a tie, or of each side of a strap, that the drawing or the maker asks for.
        required_nails,
        /// Those that were found; of a strap, on the side that has fewer.
        fasteners,
        /// Studs that the hold-down must be fixed to.
        required_studs,
        /// Studs that it is fixed to.
        studs,
        /// What holds rafter or truss to the wall: `tie` or `toe_nails`.
        held_by,
        /// The side of the wall that the tie is nailed to: `sheathed` or `inside`.
        tie_side,
        /// Uplift that the drawing or the roof's table asks of one connection or strap: `334 lb`.
        required_uplift,
        /// Uplift that the maker lists for the tie or the strap in this wood: `500 lb`.
        listed_uplift,
        /// Spacing of the roof's connections along the wall: `24`.
        tie_spacing,
        /// Full walls over this one whose weight holds it down: `0`, `1` or `2`.
        full_walls_above,
        /// Whether the strap lies flat and straight: `yes` or `no`.
        lies_flat,
        /// Lot of the adhesive of an anchor in a drilled hole.
        adhesive_lot,
        /// Who watched the cleaning of that hole.
        cleaning_watched_by,
    }
    lists {
        /// Thickness of each plate under the nut: `1-1/2`, `1-1/2`.
        plates,
        /// Places of the bolts, from the end of the plate piece.
        bolts,
        /// Diameter of each bolt.
        diameters,
        /// How deep each is in the concrete.
        embedments,
        /// How far each stands up over the foundation.
        projections,
        /// The nut of each: `tight`, `loose` or `missing`.
        nuts,
        /// The washer of each: `none`, `cut`, or a plate by its size: `3 x 3 x 0.229`.
        washers,
        /// From either face of the plate to the centre of each.
        from_faces,
    }
}

/// Lists that have one reading a bolt, in the order of the list of their places, `bolts`.
pub const BY_BOLT: [&str; 6] = ["diameters", "embedments", "projections", "nuts", "washers", "from_faces"];

const DIAMETER: Field = Field::new("diameters", "Bolt diameter", 0.25, 2.0);
const EMBEDMENT: Field = Field::new("embedments", "Embedment", 0.0, 120.0);
const ASKED_FASTENERS: Field = Field::new("required_fasteners", "Fasteners asked for", 1.0, 500.0);
const ASKED_NAILS: Field = Field::new("required_nails", "Nails asked for", 1.0, 500.0);
const FASTENERS: Field = Field::new("fasteners", "Fasteners", 0.0, 500.0);

/// What can be looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum LookedAt {
    Bolts,
    HoldDown,
    RoofTie,
    Strap,
}

impl LookedAt {
    const ALL: [Self; 4] = [Self::Bolts, Self::HoldDown, Self::RoofTie, Self::Strap];

    const fn name(self) -> &'static str {
        match self {
            Self::Bolts => "anchor_bolt",
            Self::HoldDown => "hold_down",
            Self::RoofTie => "roof_tie",
            Self::Strap => "strap",
        }
    }

    /// What the other inputs tell. An uplift may be asked of a tie or of a strap, and tells nothing.
    fn of(case: &HoldDownPointCase) -> Self {
        let any = |texts: &[&Text]| texts.iter().any(|text| typed(text).is_some());
        if any(&[&case.held_by, &case.tie_side, &case.tie_spacing, &case.full_walls_above]) {
            Self::RoofTie
        } else if any(&[&case.lies_flat]) {
            Self::Strap
        } else if any(&[&case.thread, &case.off_the_post, &case.required_fasteners]) {
            Self::HoldDown
        } else {
            Self::Bolts
        }
    }

    const fn assumed(self) -> &'static str {
        match self {
            Self::Bolts => "Looked at: anchor bolts of a sill (the common case).",
            Self::HoldDown => "Looked at: a hold-down (what was given is a hold-down's).",
            Self::RoofTie => "Looked at: a roof tie (what was given is a roof tie's).",
            Self::Strap => "Looked at: a strap (what was given is a strap's).",
        }
    }

    /// Reads what is this one's alone, to say what is wrong with it.
    fn read(self, inputs: &mut Inputs, case: &HoldDownPointCase) {
        match self {
            Self::Bolts => inputs.only_refuse(|aside| bolts::read(aside, case)),
            Self::HoldDown => inputs.only_refuse(|aside| hold_down::read(aside, case)),
            Self::RoofTie => inputs.only_refuse(|aside| roof_tie::read(aside, case)),
            Self::Strap => inputs.only_refuse(|aside| strap::read(aside, case)),
        }
    }
}

/// Reads and answers a case.
///
/// # Errors
/// The inputs that were refused.
pub fn answer(case: &HoldDownPointCase) -> Walked {
    let (mut inputs, mut answer) = (Inputs::default(), Answer::default());
    let options = LookedAt::ALL.map(|one| (one.name(), one));
    let given = LookedAt::of(case);
    let looked_at = inputs.choice_or(&case.looking_at, "looking_at", &options, given, given.assumed());
    for other in LookedAt::ALL.into_iter().filter(|other| *other != looked_at) {
        other.read(&mut inputs, case);
    }
    let answers = match looked_at {
        LookedAt::Bolts => bolts::answer,
        LookedAt::HoldDown => hold_down::answer,
        LookedAt::RoofTie => roof_tie::answer,
        LookedAt::Strap => strap::answer,
    };
    answers(&mut inputs, &mut answer, case);
    answer.finish(inputs)
}

/// One reading a bolt: a list of one counts for all.
fn each<T: Copy>(
    inputs: &mut Inputs,
    (texts, id): (&Texts, &str),
    bolts: usize,
    mut read: impl FnMut(&mut Inputs, &str, Option<usize>) -> Option<T>,
) -> Vec<Seen<T>> {
    let texts = inputs.list(texts, id);
    let mut seen = Vec::new();
    for (index, text) in texts.iter().enumerate() {
        seen.push(match text.trim() {
            "-" => Seen::NotObserved,
            hidden if could_not_be_seen(hidden) => Seen::CouldNotBeSeen,
            text => read(inputs, text, Some(index + 1)).map_or(Seen::NotObserved, Seen::Observed),
        });
    }
    match seen[..] {
        [] => vec![Seen::NotObserved; bolts],
        [one] => vec![one; bolts],
        _ if seen.len() == bolts => seen,
        _ => {
            let problem =
                format!("{} were given for {bolts} bolts; one for each, or one for all, is taken.", seen.len());
            inputs.refuse(id, problem);
            vec![Seen::NotObserved; bolts]
        }
    }
}

fn lengths(inputs: &mut Inputs, texts: &Texts, field: &Field, bolts: usize) -> Vec<Seen<Length>> {
    each(inputs, (texts, field.id), bolts, |inputs, text, which| inputs.read_one(text, field, which))
}

fn required<T>(value: Option<T>, by: &Origin) -> Option<Required<T>> {
    value.map(|value| Required::new(value, by.clone()))
}

/// The input that answers a question.
const fn input_of(question: Question) -> &'static str {
    match question {
        Question::Embedment => EMBEDMENT.id,
        Question::Projection => "projections",
        Question::BoltAcrossPlate => "from_faces",
        Question::NutAndWasherSize => DIAMETER.id,
        Question::TieSide => "tie_side",
        Question::UpliftRequired => connector::UPLIFT.id,
        _ => "nuts",
    }
}
