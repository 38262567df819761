//! Writes a schedule as the lines that read back as it.

use core::fmt;

use measure::{Denominator, Length};

use super::{HoldDownMark, PanelMark, Schedule};
use crate::strength::Nailing;

pub(super) fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::SixtyFourth).trim_end_matches('"').to_owned()
}

impl fmt::Display for Schedule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sheet = (!self.sheet.is_empty()).then(|| format!("sheet {}", self.sheet));
        let panels = self.panels.iter().map(ToString::to_string);
        let hold_downs = self.hold_downs.iter().map(ToString::to_string);
        let lines: Vec<String> = sheet.into_iter().chain(panels).chain(hold_downs).collect();
        write!(f, "{}", lines.join("\n"))
    }
}

impl fmt::Display for PanelMark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plain = Nailing { both_faces: false, ..self.nailing };
        write!(f, "{}: {plain}", self.mark)?;
        if self.nailing.both_faces {
            write!(f, ", both faces")?;
        }
        if self.nailing.across_studs {
            write!(f, ", across")?;
        }
        if let Some(boundary) = self.boundary {
            write!(f, ", boundary {}", inches(boundary))?;
        }
        if let Some(field) = self.field {
            write!(f, ", field {}", inches(field))?;
        }
        let said = [("studs", &self.studs), ("post", &self.post)];
        for (word, value) in said.into_iter().filter(|(_, value)| !value.is_empty()) {
            write!(f, ", {word} {value}")?;
        }
        match self.blocked {
            Some(true) => write!(f, ", blocked")?,
            Some(false) => write!(f, ", unblocked")?,
            None => {}
        }
        if let Some((thick, apart)) = self.bolts {
            write!(f, ", bolts {} at {}", inches(thick), inches(apart))?;
        }
        let said = [
            ("blocking", &self.blocking),
            ("plate", &self.plate),
            ("sill", &self.sill),
            ("washer", &self.washer),
            ("hold-down", &self.hold_down),
        ];
        for (word, value) in said.into_iter().filter(|(_, value)| !value.is_empty()) {
            write!(f, ", {word} {value}")?;
        }
        Ok(())
    }
}

impl fmt::Display for HoldDownMark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let word = if self.strap { "strap" } else { "hold-down" };
        write!(f, "{}: {word} {} lb", self.mark, self.load.pounds())?;
        if let Some(rod) = self.rod {
            write!(f, ", rod {}", inches(rod))?;
        }
        if !self.post.is_empty() {
            write!(f, ", post {}", self.post)?;
        }
        match self.gives {
            Some(gives) => write!(f, ", gives {}", inches(gives)),
            None => Ok(()),
        }
    }
}
