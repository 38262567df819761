//! How every header table of the code is read, whichever edition printed it.

use measure::{AreaLoad, Length, LineLoad};

use crate::{OutsideTable, Source, Status};

/// Nominal depth of dimension lumber, 2 inches thick, in inches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum NominalDepth {
    /// 2x4.
    Four,
    /// 2x6.
    Six,
    /// 2x8.
    Eight,
    /// 2x10.
    Ten,
    /// 2x12.
    Twelve,
}

impl NominalDepth {
    /// Every depth the tables list, shallowest first.
    pub const ALL: [Self; 5] = [Self::Four, Self::Six, Self::Eight, Self::Ten, Self::Twelve];

    /// The nominal number: 10 for a 2x10.
    #[must_use]
    pub const fn nominal_inches(self) -> u8 {
        match self {
            Self::Four => 4,
            Self::Six => 6,
            Self::Eight => 8,
            Self::Ten => 10,
            Self::Twelve => 12,
        }
    }
}

/// A header as the tables name it: plies of 2 in dimension lumber, `2-2x10`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HeaderSize {
    /// How many pieces side by side.
    pub plies: u8,
    /// Nominal depth of each.
    pub depth: NominalDepth,
}

impl HeaderSize {
    /// As the tables write it: `2-2x10`.
    #[must_use]
    pub fn name(self) -> String {
        format!("{}-2x{}", self.plies, self.depth.nominal_inches())
    }

    /// Reads what [`Self::name`] writes. Whether a table lists the size is for the table to say.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        let (plies, depth) = name.split_once("-2x")?;
        let plies = plies.parse().ok().filter(|&plies| plies > 0)?;
        let depth: u8 = depth.parse().ok()?;
        let depth = NominalDepth::ALL.into_iter().find(|d| d.nominal_inches() == depth)?;
        Some(Self { plies, depth })
    }
}

/// One cell of a header table, as printed, with the headings it stands under.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeaderCell<Supporting> {
    /// What the header carries.
    pub supporting: Supporting,
    /// Its size.
    pub size: HeaderSize,
    /// Ground snow load of the column; none on an interior wall.
    pub ground_snow: Option<AreaLoad>,
    /// Width of the building, at right angles to the ridge.
    pub width: Length,
    /// Longest clear span.
    pub span: Length,
    /// Number of jack studs at each end, `NJ`.
    pub jack_studs: u8,
    /// The one load that gives the column its spans; computed, not printed.
    pub line_load: Option<LineLoad>,
    /// How the cell came here.
    pub status: Status,
}

/// What a header table says for a building.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeaderSpan {
    /// Longest clear span with the top held sideways by framing that bears on the header.
    pub span: Length,
    /// Number of jack studs at each end: the larger of the two columns read.
    pub jack_studs: u8,
    /// Ground snow load of the column read; none on an interior wall.
    pub ground_snow: Option<AreaLoad>,
    /// Building widths of the columns read, narrower first; the same twice where one column was enough.
    pub widths: [Length; 2],
    /// The load those columns stand for, where it has been worked back.
    pub line_load: Option<LineLoad>,
    /// The table, and how the less certain of the cells that were read came here.
    pub source: Source,
}

/// A table with the words for where it ends.
pub(crate) struct HeaderTable<Supporting: 'static> {
    pub cells: &'static [HeaderCell<Supporting>],
    pub document: &'static str,
    pub place: &'static str,
    pub snow: &'static str,
    pub widths: &'static str,
    pub sizes: &'static str,
}

const ENGINEER: &str = "An engineer sizes this header.";

impl<Supporting: Copy + PartialEq> HeaderTable<Supporting> {
    fn outside(&self, given: String, covers: &'static str) -> OutsideTable {
        let source = Source::new(self.document, self.place, Status::PartlyLookedUp);
        OutsideTable { source, given, covers, next_step: ENGINEER }
    }

    /// The column for a ground snow load: the next one up. The lowest column serves for less snow only where the roof
    /// live load is no more than 20 psf.
    pub fn snow_column(&self, ground: AreaLoad, roof_live: AreaLoad) -> Result<AreaLoad, OutsideTable> {
        let columns = || self.cells.iter().filter_map(|cell| cell.ground_snow);
        let next_up = columns().filter(|&column| column >= ground).reduce(AreaLoad::min);
        let column = next_up
            .filter(|_| ground >= AreaLoad::ZERO)
            .ok_or_else(|| self.outside(format!("ground snow load {} psf", ground.psf()), self.snow))?;
        let less_than_every_column = columns().all(|other| ground < other);
        if less_than_every_column && roof_live > AreaLoad::from_psf(20.0) {
            return Err(self.outside(
                format!("roof live load {} psf", roof_live.psf()),
                "roof live loads to 20 psf where there is little snow",
            ));
        }
        Ok(column)
    }
}

/// Reads a header table: the width interpolates between columns, and a building narrower than the narrowest column
/// takes that column.
pub(crate) fn look_up<Supporting: Copy + PartialEq>(
    table: &HeaderTable<Supporting>,
    supporting: Supporting,
    size: HeaderSize,
    column: Option<AreaLoad>,
    width: Length,
) -> Result<HeaderSpan, OutsideTable> {
    let cells = || table.cells.iter().filter(move |c| c.supporting == supporting && c.ground_snow == column);
    if cells().next().is_none() {
        return Err(
            table.outside("another kind of load above".to_owned(), "roof and ceiling, and one center-bearing floor")
        );
    }
    let of_size = || cells().filter(move |cell| cell.size == size);
    if of_size().next().is_none() {
        return Err(table.outside(format!("header {}", size.name()), table.sizes));
    }
    let wider =
        of_size().filter(|cell| cell.width >= width).min_by(|a, b| a.width.inches().total_cmp(&b.width.inches()));
    let upper = wider
        .filter(|_| width > Length::ZERO)
        .ok_or_else(|| table.outside(format!("building width {} ft", width.feet()), table.widths))?;
    let narrower =
        of_size().filter(|cell| cell.width <= width).max_by(|a, b| a.width.inches().total_cmp(&b.width.inches()));
    Ok(between(table, narrower.unwrap_or(upper), upper, width))
}

fn between<Supporting: Copy + PartialEq>(
    table: &HeaderTable<Supporting>,
    lower: &HeaderCell<Supporting>,
    upper: &HeaderCell<Supporting>,
    width: Length,
) -> HeaderSpan {
    let gap = upper.width - lower.width;
    let share = if gap > Length::ZERO { (width - lower.width) / gap } else { 0.0 };
    let line_load = lower.line_load.zip(upper.line_load).map(|(low, high)| low + (high - low) * share);
    HeaderSpan {
        span: lower.span + (upper.span - lower.span) * share,
        jack_studs: lower.jack_studs.max(upper.jack_studs),
        ground_snow: upper.ground_snow,
        widths: [lower.width, upper.width],
        line_load,
        source: Source::new(table.document, table.place, lower.status.max(upper.status)),
    }
}
