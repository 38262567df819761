//! Exact analysis of straight beams: spans in a row, overhangs at either end, and the loads carpenters meet.
//!
//! What is here: [`Beam`] on any number of supports, each a simple one that lets the beam turn or a fixed one
//! that does not; [`Load`], a force or a couple at a point, or distributed evenly or sloping over any part; and
//! [`Solution`], with the reactions, the shear, moment, slope and deflection at any point, the extremes of each
//! [`Stretch`] and the points of a picture ([`Solution::diagram`]). A uniform load on one span has its own quick way,
//! [`simple_span_uniform`].
//!
//! The beam has one flexural rigidity `EI` over its whole length. It bends by moment only (no shear deflection),
//! deflects little, and its supports neither settle nor let go: a support that is pulled up on holds down, and its
//! reaction is then negative. Between two points where anything changes, the deflection is one polynomial of the fifth
//! degree, so nothing is meshed: the results are those of the beam equation to the rounding of the arithmetic.
//!
//! | quantity | positive when |
//! |---|---|
//! | load | it pushes down |
//! | couple, fixing moment | it turns clockwise on the beam |
//! | reaction | it pushes up on the beam |
//! | shear | the part to the left is pushed up |
//! | moment | it sags: the bottom edge is in tension |
//! | deflection | it is down |
//! | slope | the beam falls towards the right |
//!
//! *Invariant*: this module knows statics and nothing else: no wood, no allowable value, no default load. Every place
//! is measured along the beam from its left end.
//!
//! ```
//! use measure::{FlexuralRigidity, Force, Length, LineLoad};
//! use members::beam::{Beam, Load};
//!
//! // Two 10 ft joist spans over a middle girder, 50 plf on the whole joist and a post at 5 ft.
//! let supports = [0.0, 10.0, 20.0].map(Length::from_feet);
//! let joist = Beam::new(&supports, Length::from_feet(20.0), FlexuralRigidity::from_pound_square_inches(1.6e8))?;
//! let post = Load::point(Length::from_feet(5.0), Force::from_pounds(300.0));
//! let solution = joist.solve(&[joist.uniform(LineLoad::from_plf(50.0)), post])?;
//! let up: f64 = solution.reactions().iter().map(|reaction| reaction.force.pounds()).sum();
//! assert!((up - 1300.0).abs() < 1e-9);
//! # Ok::<(), members::beam::BeamError>(())
//! ```

mod error;
mod extremes;
mod frame;
mod load;
mod model;
mod polynomial;
mod segment;
mod simple_span;
mod solution;
mod solve;
mod strips;

pub use error::BeamError;
pub use extremes::{Extreme, Extremes, Turns};
pub use load::Load;
pub use model::{Beam, Restraint, Support};
pub use simple_span::{SimpleSpan, simple_span_uniform};
pub use solution::{Reaction, Section, Solution, Stretch, StretchKind};
