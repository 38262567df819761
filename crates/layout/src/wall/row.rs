//! Pieces in a row on a plate: which wood touches, and where one more piece finds room.

use measure::Length;

/// Binary noise, far below a pencil line.
pub(crate) const NOISE: Length = Length::from_inches(1e-6);
/// Pieces closer than this to each other count as touching.
const TOUCHING: Length = Length::from_inches(1.0 / 16.0);
/// Wood wanted on each side of a sheet's edge: room for a nail 3/8 in from the edge and wood beyond it.
/// Source: common practice.
pub const EDGE_BEARING: Length = Length::from_inches(0.5);
/// What a bay may be over its spacing. Source: common practice.
pub const SPACING_TOLERANCE: Length = Length::from_inches(0.25);
/// Wood that ends so much short of where a piece on the mark would end serves as well. A bay between two such is over by
/// no more than [`SPACING_TOLERANCE`]. Source: a site target for studs at sheets' edges (from memory).
const OFF_CENTRE: Length = Length::from_inches(1.0 / 8.0);

/// From here to there along a plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The near edge.
    pub from: Length,
    /// The far edge.
    pub to: Length,
}

impl Span {
    /// From here to there.
    #[must_use]
    pub const fn new(from: Length, to: Length) -> Self {
        Self { from, to }
    }

    /// So wide about a center.
    #[must_use]
    pub fn about(centre: Length, width: Length) -> Self {
        Self { from: centre - width / 2.0, to: centre + width / 2.0 }
    }

    /// Its middle.
    #[must_use]
    pub fn centre(self) -> Length {
        (self.from + self.to) / 2.0
    }

    /// How long it is.
    #[must_use]
    pub fn width(self) -> Length {
        self.to - self.from
    }

    /// Whether both hold a piece of the plate in common; touching is none.
    #[must_use]
    pub fn overlaps(self, other: Self) -> bool {
        self.from + NOISE < other.to && other.from + NOISE < self.to
    }

    /// Whether the other lies in it.
    #[must_use]
    pub fn holds(self, other: Self) -> bool {
        self.from <= other.from + NOISE && other.to <= self.to + NOISE
    }

    /// The same seen from the other end of a plate so long.
    #[must_use]
    pub fn mirrored(self, length: Length) -> Self {
        Self { from: length - self.to, to: length - self.from }
    }
}

/// Wood that touches, as one piece; ascending.
pub(crate) fn solids(pieces: impl IntoIterator<Item = Span>) -> Vec<Span> {
    let mut pieces: Vec<Span> = pieces.into_iter().collect();
    pieces.sort_by(|a, b| a.from.inches().total_cmp(&b.from.inches()));
    let mut solids: Vec<Span> = Vec::new();
    for piece in pieces {
        match solids.last_mut() {
            Some(last) if piece.from <= last.to + TOUCHING => last.to = last.to.max(piece.to),
            _ => solids.push(piece),
        }
    }
    solids
}

/// Whether a sheet's edge here has wood on each side.
pub(crate) fn bears(at: Length, solids: &[Span]) -> bool {
    has_wood(at, EDGE_BEARING, solids)
}

fn has_wood(at: Length, each_side: Length, solids: &[Span]) -> bool {
    solids.iter().any(|solid| solid.from + each_side <= at + NOISE && at + each_side <= solid.to + NOISE)
}

/// What becomes of a layout center.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Settled {
    /// Wood that is there serves it.
    Served,
    /// A piece with this center: on the layout, or tight beside what stands in its way.
    At(Length),
    /// No piece fits that would serve it.
    NoRoom,
}

/// Finds the place for a piece whose center is wanted at `mark`, among wood that may serve it and spans that are taken.
pub(crate) fn settle(mark: Length, thickness: Length, wood: &[Span], taken: &[Span]) -> Settled {
    let free = |centre: Length| !taken.iter().any(|span| span.overlaps(Span::about(centre, thickness)));
    if free(mark) {
        return Settled::At(mark);
    }
    let serving = EDGE_BEARING.max(thickness / 2.0 - OFF_CENTRE);
    if has_wood(mark, serving, &solids(wood.iter().copied())) {
        return Settled::Served;
    }
    let serves = |centre: Length| {
        let with = wood.iter().copied().chain([Span::about(centre, thickness)]);
        bears(mark, &solids(with))
    };
    let beside = taken.iter().flat_map(|span| [span.from - thickness / 2.0, span.to + thickness / 2.0]);
    let nearest = beside
        .filter(|centre| free(*centre) && serves(*centre))
        .min_by(|a, b| (*a - mark).abs().inches().total_cmp(&(*b - mark).abs().inches()));
    nearest.map_or(Settled::NoRoom, Settled::At)
}
