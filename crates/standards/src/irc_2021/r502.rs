//! R502.3 to R502.10: cantilevers, partitions above, bridging and openings of floors.

use measure::Length;

use super::DOCUMENT;
use crate::{Source, Status};

/// R502.3.3: a cantilever of plain floor joists is no longer than the joist is deep by name, and may carry a wall and a
/// roof only by a table of its own. Read in a floor summary of a state.
pub const CANTILEVER: Source = Source::new(DOCUMENT, "R502.3.3", Status::LookedUp);
/// R502.3.3 and its table: a cantilever that carries a bearing wall keeps three times its length behind it, and a full
/// rim and blocking. Read in a builders' reference.
pub const BACK_SPAN_TIMES: f64 = 3.0;
/// R502.4: a bearing wall along a joist stands on a doubled one.
pub const PARTITIONS: Source = Source::new(DOCUMENT, "R502.4", Status::LookedUp);
/// R502.7: ends held against turning by full-depth blocking, a rim or a header.
pub const ENDS_HELD: Source = Source::new(DOCUMENT, "R502.7", Status::LookedUp);
/// R502.7.1: joists deeper than this by name take bridging or blocking.
pub const BRIDGING: Source = Source::new(DOCUMENT, "R502.7.1", Status::LookedUp);
/// The deepest joist by name that needs none.
pub const DEEPEST_WITHOUT_BRIDGING: u8 = 12;
/// Bridging or blocking is no farther apart than this.
pub const BRIDGING_SPACING: Length = Length::from_feet(8.0);
/// R502.8.2 and R502.11: engineered joists, and what stands on them, follow their maker's papers.
pub const BY_ITS_MAKER: Source = Source::new(DOCUMENT, "R502.8.2, R502.11", Status::FromMemory);
/// R502.10: headers and trimmers of floor openings.
pub const OPENINGS: Source = Source::new(DOCUMENT, "R502.10", Status::FromMemory);
/// A header joist to this length may be single.
pub const SINGLE_HEADER: Length = Length::from_feet(4.0);
/// Over this length a header joist hangs in hangers.
pub const HEADER_IN_HANGERS: Length = Length::from_feet(6.0);
/// Over this length a tail joist hangs in hangers or sits on a ledger.
pub const TAIL_IN_HANGERS: Length = Length::from_feet(12.0);
