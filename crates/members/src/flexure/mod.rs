//! What bends: a member on supports under loads by case, judged in every size that it may have.
//!
//! [`FlexureInput`] says how it lies, what holds it and what it carries; [`check_flexure`] judges every piece in bending
//! both ways, shear, bearing and sag under every combination of loads and, over more spans than one, every pattern of
//! them. The statics are those of [`crate::beam`]: exact, and worked once for all pieces, since only a piece's own weight
//! differs between them.
//!
//! *Invariant*: nothing here knows what the member is for; joists, rafters, ridges and beams say that in their own modules.

mod analysis;
mod cut;
mod demand;
mod input;
mod judge;
mod result;
mod strength;
pub(crate) mod working;

pub use analysis::Analysis;
pub use cut::{Cut, Edge, at_cut};
pub use input::{Acting, Bearing, Case, DeflectionLimits, Edges, FlexureInput, Held, LoadedFrom};
pub use judge::{judge, judge_governing};
pub use result::{FlexureAnswer, SupportForce, Traced, Tried};
pub use strength::Piece;

use crate::choose::{best, smallest_of_each_family};

/// Judges every piece; answers about the chosen one, or else the smallest that carries and fits.
///
/// `misfit` says why a piece cannot be used, whatever it carries; `more` adds what its kind is judged by besides.
///
/// # Errors
/// A sentence, when no such beam can be worked: its supports or loads are impossible.
pub fn check_flexure(
    input: &FlexureInput,
    pieces: impl IntoIterator<Item = Piece>,
    chosen: Option<&Piece>,
    misfit: impl Fn(&Piece) -> Option<String>,
    more: impl Fn(&Piece, &Analysis) -> Result<Vec<Traced>, String>,
) -> Result<FlexureAnswer, String> {
    let analysis = Analysis::of(input)?;
    let one = |piece: Piece| {
        let mut tried = judge(piece, input, &analysis, &more);
        tried.misfit = misfit(&tried.piece);
        tried
    };
    let tried: Vec<Tried> = pieces.into_iter().map(one).collect();
    if tried.is_empty() {
        return Err("No size of this wood has a published value. Choose another species or grade.".to_owned());
    }
    let smallest = smallest_of_each_family(&tried);
    let chosen = chosen.and_then(|chosen| tried.iter().position(|tried| tried.piece == *chosen));
    let judged = best(&tried, &smallest, chosen);
    let forces = analysis.forces(&tried[judged].piece, input);
    let working = working::working(&tried[judged], input, &analysis);
    let diagram = analysis.diagram(&tried[judged], input);
    Ok(FlexureAnswer { tried, judged, smallest, forces, diagram, working })
}
