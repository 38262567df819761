//! Writes walls as the lines that read back as they are. A length is written to the finest mark of a tape.

use core::fmt;

use measure::{Denominator, Length, LineLoad};

use super::{BracedWall, BracedWalls};

fn feet(length: Length) -> String {
    length.to_feet_inches(Denominator::SixtyFourth)
}

impl fmt::Display for BracedWalls {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let lines: Vec<String> = self.as_slice().iter().map(ToString::to_string).collect();
        write!(f, "{}", lines.join("\n"))
    }
}

impl fmt::Display for BracedWall {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: ", self.name)?;
        if let Some(mark) = &self.mark {
            write!(f, "{mark}, ")?;
        }
        let pieces: Vec<String> = self.pieces.iter().map(|piece| feet(*piece)).collect();
        write!(f, "walls {}, high {}, push {} lb", pieces.join(", "), feet(self.height), self.push.pounds())?;
        if self.dead > LineLoad::ZERO {
            write!(f, ", dead {} plf", self.dead.plf())?;
        }
        match &self.under {
            Some(under) => write!(f, ", under {under}"),
            None => Ok(()),
        }
    }
}
