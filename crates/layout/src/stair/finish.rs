//! What finish floors and treads make of measured risers.

use measure::Length;

use super::error::{StairError, count, size, thickness};

/// What is still to be laid on a floor or on all treads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Covering {
    /// Nothing.
    None,
    /// A finish that counts: tile, wood, pads.
    Hard(Length),
    /// Carpet with its pad: the code measures without it (IRC R311.7.5).
    Carpet(Length),
    /// Not known yet: the riser that it changes is not known either.
    Unknown,
}

impl Covering {
    /// What it adds: none where it is not known.
    fn adds(self, with_carpet: bool) -> Option<Length> {
        match self {
            Self::None => Some(Length::ZERO),
            Self::Hard(thickness) => Some(thickness),
            Self::Carpet(thickness) => Some(if with_carpet { thickness } else { Length::ZERO }),
            Self::Unknown => None,
        }
    }

    fn checked(self, what: &'static str) -> Result<Self, StairError> {
        match self {
            Self::Hard(given) | Self::Carpet(given) => thickness(what, given).map(|_| self),
            Self::None | Self::Unknown => Ok(self),
        }
    }
}

/// What is still to be laid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coverings {
    /// On the lower floor.
    pub bottom: Covering,
    /// On every tread, alike.
    pub treads: Covering,
    /// On the upper floor.
    pub top: Covering,
}

/// Risers when all is laid. One that hangs on what is not known is none.
#[derive(Clone, Debug, PartialEq)]
pub struct Finished {
    /// As the code measures: without carpet.
    pub by_code: Vec<Option<Length>>,
    /// As they are walked, with carpet: for information.
    pub with_carpet: Vec<Option<Length>>,
}

impl Finished {
    /// The risers by the code that are known.
    #[must_use]
    pub fn known(&self) -> Vec<Length> {
        self.by_code.iter().flatten().copied().collect()
    }

    /// Whether every riser is known.
    #[must_use]
    pub fn all_known(&self) -> bool {
        self.by_code.iter().all(Option::is_some)
    }
}

/// Works out the risers when finishes are laid: the first gains what treads gain and loses what the lower floor gains, the last
/// gains what the upper floor gains and loses what treads gain.
///
/// # Errors
/// Fewer than two risers, or more than 300; a riser of nothing; a finish below nothing.
pub fn after_finish(risers: &[Length], coverings: &Coverings) -> Result<Finished, StairError> {
    count(risers.len(), 2)?;
    for &riser in risers {
        size("riser", riser)?;
    }
    let given = Coverings {
        bottom: coverings.bottom.checked("finish of the lower floor")?,
        treads: coverings.treads.checked("finish of the treads")?,
        top: coverings.top.checked("finish of the upper floor")?,
    };
    Ok(Finished { by_code: laid(risers, &given, false), with_carpet: laid(risers, &given, true) })
}

fn laid(risers: &[Length], coverings: &Coverings, with_carpet: bool) -> Vec<Option<Length>> {
    let last = risers.len() - 1;
    let [bottom, treads, top] =
        [coverings.bottom, coverings.treads, coverings.top].map(|covering| covering.adds(with_carpet));
    let riser = |(index, &riser): (usize, &Length)| {
        let below = if index == 0 { bottom } else { treads };
        let above = if index == last { top } else { treads };
        // Between two treads the same is added below and above, whatever it is.
        if index != 0 && index != last { Some(riser) } else { Some(riser + above? - below?) }
    };
    risers.iter().enumerate().map(riser).collect()
}
