//! What a wall is made of, layer by layer from the studs out: whether its panels brace it, and whether its fasteners reach.

use measure::{AreaLoad, Length};
use standards::OutsideTable;
use standards::irc_2021::r703_15::{FurringFastener, thickest_foam};
use standards::sdpws_2015::table_4_3::{SHEAR_WALLS, ShearFastener, ShearWallTable, Sheathing};

/// What a layer is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LayerKind {
    /// Strand board or plywood that may brace.
    Panel,
    /// Gypsum board.
    Gypsum,
    /// Foam sheathing.
    Foam,
    /// A sheathing panel with insulation in it that is not listed as bracing.
    InsulatedPanel,
    /// Fiberboard that insulates, not structural.
    InsulatingBoard,
    /// Housewrap or paper: so thin that it is no gap.
    Barrier,
    /// Furring.
    Furring,
    /// A drainage mat, shims, a channel: air.
    Gap,
    /// Cladding.
    Cladding,
}

/// A layer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// What it is.
    pub kind: LayerKind,
    /// Its thickness; none of a barrier.
    pub thickness: Length,
}

/// A wall's layers and fasteners.
#[derive(Clone, Debug, PartialEq)]
pub struct MakeUp {
    /// Layers, from the studs out.
    pub layers: Vec<Layer>,
    /// Nails of the panels.
    pub panel_nail: ShearFastener,
    /// Their length.
    pub panel_nail_length: Length,
    /// Length of what holds the furring, or the cladding where there is none; none where it is not said.
    pub outer_fastener: Option<Length>,
    /// What holds the furring, and how far apart along it.
    pub furring_fastener: (FurringFastener, Length),
    /// Furring, centre to centre.
    pub furring_spacing: Length,
    /// Weight of the cladding.
    pub cladding: AreaLoad,
}

/// Whether the panels brace the wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Braces {
    /// They lie on the studs.
    Yes,
    /// They lie over gypsum board, by a table of its own that asks for larger nails.
    OverGypsum,
    /// Nothing that braces is there.
    NoPanel,
    /// This lies between them and the studs: no table has such a wall, and they count for nothing.
    Kept(LayerKind),
}

/// A fault in the order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Misplaced {
    /// No water barrier anywhere.
    NoBarrier,
    /// The barrier lies inside of the panels: they get wet behind the cladding.
    BarrierInside,
    /// The barrier lies outside of furring or cladding.
    BarrierOutside,
    /// Furring lies inside of foam.
    FurringInside,
}

/// A fastener's length, with what it must be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reach {
    /// What it must be, at the least.
    pub least: Length,
    /// What it is; none where it is not said.
    pub is: Option<Length>,
}

impl Reach {
    /// Whether it surely reaches; none while it is not known.
    #[must_use]
    pub fn reaches(&self) -> Option<bool> {
        self.is.map(|is| is.inches() + 1e-9 >= self.least.inches())
    }
}

/// What is to be said of a wall's layers.
#[derive(Clone, Debug, PartialEq)]
pub struct MakeUpAnswer {
    /// Whether its panels brace it.
    pub braces: Braces,
    /// The panels' nails, where there are panels that count.
    pub panel_nails: Option<Reach>,
    /// What goes through everything outside of the studs into them.
    pub outer: Option<Reach>,
    /// The thickest foam that the furring's fasteners carry; none where there is no furring over foam.
    pub foam: Option<Result<Length, OutsideTable>>,
    /// Thickness of the foam outside of the panels.
    pub foam_outside: Length,
    /// Faults in the order.
    pub misplaced: Vec<Misplaced>,
}

/// Furring and cladding go so deep into the framing with nails: Table R703.15.2, and R703.15.1 from memory.
const INTO_FRAMING: Length = Length::from_inches(1.25);

/// Looks at a wall's layers.
///
/// Panels brace where nothing but a barrier, or gypsum board of 1/2 or 5/8 in, lies between them and the studs. Foam, air
/// and boards without a value bend the nail like a lever: no table has a wall so made.
///
/// Source: IRC 2021 R602.3; SDPWS 2015 Tables 4.3A and 4.3B; IRC 2021 Table R703.15.2.
#[must_use]
pub fn check_make_up(wall: &MakeUp) -> MakeUpAnswer {
    let at = |kind: LayerKind| wall.layers.iter().position(|layer| layer.kind == kind);
    let panel = at(LayerKind::Panel);
    let braces = panel.map_or(Braces::NoPanel, |panel| braces(wall.layers.get(..panel).unwrap_or_default()));
    let counts = matches!(braces, Braces::Yes | Braces::OverGypsum);
    let through = |to: usize| wall.layers.iter().take(to).fold(Length::ZERO, |sum, layer| sum + layer.thickness);
    let panel_nails = panel.filter(|_| counts).map(|panel| Reach {
        least: through(panel + 1) + into_framing(wall.panel_nail, braces),
        is: Some(wall.panel_nail_length),
    });
    let outermost = at(LayerKind::Furring).or_else(|| at(LayerKind::Cladding));
    let furred = at(LayerKind::Furring).is_some();
    let deep = if furred { wall.furring_fastener.0.penetration() } else { INTO_FRAMING };
    let outer = outermost.map(|last| Reach { least: through(last + 1) + deep, is: wall.outer_fastener });
    let foam_outside = panel.map_or(Length::ZERO, |panel| {
        let outside = wall.layers.iter().skip(panel + 1).filter(|layer| layer.kind == LayerKind::Foam);
        outside.fold(Length::ZERO, |sum, layer| sum + layer.thickness)
    });
    let foam = (furred && foam_outside > Length::ZERO).then(|| {
        let (fastener, apart) = wall.furring_fastener;
        thickest_foam(fastener, apart, wall.furring_spacing, wall.cladding)
    });
    MakeUpAnswer { braces, panel_nails, outer, foam, foam_outside, misplaced: misplaced(wall) }
}

fn braces(between: &[Layer]) -> Braces {
    let mut over_gypsum = false;
    for layer in between {
        match layer.kind {
            LayerKind::Barrier => {}
            LayerKind::Gypsum if !over_gypsum && is_half_inch_or_more(layer.thickness) => over_gypsum = true,
            other => return Braces::Kept(other),
        }
    }
    if over_gypsum { Braces::OverGypsum } else { Braces::Yes }
}

/// Table 4.3B is for 1/2 and 5/8 in.
fn is_half_inch_or_more(thickness: Length) -> bool {
    (0.5..=0.625).contains(&thickness.inches())
}

/// How deep the panel's nail goes into the framing, as the tables print it of that nail.
fn into_framing(nail: ShearFastener, braces: Braces) -> Length {
    let (table, sheathing) = match braces {
        Braces::OverGypsum => (ShearWallTable::B, Sheathing::SheathingOverGypsum),
        _ => (ShearWallTable::A, Sheathing::Sheathing),
    };
    let of_nail =
        SHEAR_WALLS.iter().filter(|row| row.table == table && row.sheathing == sheathing && row.fastener == nail);
    of_nail.filter_map(|row| row.penetration).fold(Length::ZERO, Length::max)
}

fn misplaced(wall: &MakeUp) -> Vec<Misplaced> {
    let at = |kind: LayerKind| wall.layers.iter().position(|layer| layer.kind == kind);
    let mut faults = Vec::new();
    let cover = at(LayerKind::Furring).or_else(|| at(LayerKind::Cladding));
    match (at(LayerKind::Barrier), at(LayerKind::Panel)) {
        (None, _) => faults.push(Misplaced::NoBarrier),
        (Some(barrier), Some(panel)) if barrier < panel => faults.push(Misplaced::BarrierInside),
        (Some(barrier), _) if cover.is_some_and(|cover| barrier > cover) => faults.push(Misplaced::BarrierOutside),
        _ => {}
    }
    if let (Some(furring), Some(foam)) = (at(LayerKind::Furring), at(LayerKind::Foam))
        && furring < foam
    {
        faults.push(Misplaced::FurringInside);
    }
    faults
}
