//! The nails of the roof sheathing: the first link of the path, where their nail was said.

use bracing::uplift::{Connections, RoofSheathing, Tie};
use fastening::{
    FasteningError, Joint, LoadDuration, NailConditions, NailSpec, Shank, SideMember, UpliftLimit, UpliftValue, Wood,
    WoodPanel, read_nail, uplift_value,
};
use lumber::Species;
use measure::{AreaLoad, Length};
use members::working::{Basis, Part};

use super::Lifts;
use super::pressures::{Of, Pull, SMALL, pull};
use crate::bracing::nail_joint::{factored, fine};
use crate::reading::Reading;
use crate::site::about::About;
use crate::site::input;
use crate::words::figure;

/// The nails as they were read.
pub(super) struct Nailed {
    value: UpliftValue,
    every: Length,
}

/// The nails with what pulls at them.
pub(super) struct Deck {
    nailed: Nailed,
    pull: Pull,
}

/// The nails, where one was said; none twice over where none was. What is wrong with it is said.
pub(super) fn nailed(reading: &mut Reading) -> Option<Option<Nailed>> {
    let Some(text) = reading.word("deck_nail").map(str::to_owned) else { return Some(None) };
    let read = match read_nail(&text) {
        Ok(read) => read,
        Err(problem) => {
            reading.refuse("deck_nail", problem.to_string());
            return None;
        }
    };
    let ringed = reading.length("deck_ringed")?;
    let shank = if reading.word("deck_shank")? == "ring" { Shank::RoofSheathingRing { ringed } } else { Shank::Smooth };
    match uplift_value(&NailSpec { nail: read.nail, shank, head: None }, &joint(reading)?) {
        Ok(value) => Some(Some(Nailed { value, every: reading.length("deck_every")? })),
        Err(problem) => {
            let input = if matches!(problem, FasteningError::Rings { .. }) { "deck_ringed" } else { "deck_nail" };
            reading.refuse(input, problem.to_string());
            None
        }
    }
}

fn joint(reading: &Reading) -> Option<Joint> {
    let panel = if reading.word("deck_panel")? == "plywood" { WoodPanel::PlywoodOther } else { WoodPanel::Osb };
    let rafter = Wood::Lumber(Species::from_text(reading.word("species")?).ok()?);
    let side = SideMember::wood(Wood::Panel(panel), reading.length("deck_thick")?);
    let conditions = NailConditions { duration: LoadDuration::TenMinutes, ..NailConditions::REFERENCE };
    Some(Joint { conditions, ..Joint::face_nailed(side, rafter) })
}

/// The nails with what pulls at them: as typed, else as Site works it out. Where neither is there it is asked for, and they are
/// not looked at.
pub(super) fn deck(reading: &Reading, about: &mut About<'_>, nailed: Option<Nailed>) -> Option<Deck> {
    let Some(nailed) = nailed else {
        about.ask("deck_nail", "What nail holds the roof sheathing? It is the first link of the path.");
        return None;
    };
    match suction(reading)? {
        Ok(pull) => Some(Deck { nailed, pull }),
        Err(sentence) => {
            about.outside(sentence);
            about.ask("deck_suction", "What suction is on the roof sheathing? Without it its nails are not looked at.");
            None
        }
    }
}

fn suction(reading: &Reading) -> Option<Result<Pull, String>> {
    if let Some(typed) = reading.number("deck_suction") {
        return Some(Ok(Pull { psf: AreaLoad::from_psf(typed), source: Basis::Input("deck_suction") }));
    }
    if Lifts::of(reading) == Lifts::Porch {
        return Some(Err(
            "Under the sheathing of an open porch the wind pushes too; no pressure for it is here.".to_owned()
        ));
    }
    if reading.word("deck_zone")? == "field" {
        return pull(reading, Of::Field, SMALL);
    }
    let house = input::house(reading)?;
    let between = match pull(reading, Of::Roof, SMALL)? {
        Ok(between) => between,
        Err(outside) => return Some(Err(outside)),
    };
    if house.eave_overhang.max(house.rake_overhang) <= Length::ZERO {
        return Some(Ok(between));
    }
    // A hip has eaves to stand out, and no rake.
    let out = pull(reading, Of::Eaves, SMALL)?;
    Some(out.map(|out| if out.psf > between.psf { out } else { between }))
}

impl Deck {
    /// As the path has it: one nail, and how far apart.
    pub(super) fn sheathing(&self) -> RoofSheathing {
        RoofSheathing { suction: self.pull.psf, nails: Connections { tie: self.tie(), spacing: self.nailed.every } }
    }

    pub(super) fn tie(&self) -> Tie {
        Tie::Nails { count: 1, each: self.nailed.value.adjusted }
    }

    /// What pulls at one nail, on rafters so far apart.
    pub(super) fn on_one(&self, rafters: Length) -> measure::Force {
        self.pull.psf * rafters * self.nailed.every
    }

    /// How it was worked.
    pub(super) fn working(&self) -> Part {
        let value = &self.nailed.value;
        let mut part = Part::new("One nail of the roof sheathing");
        part.step("p", "suction, 0.6 of the wind", "", (self.pull.psf.psf(), "psf"), self.pull.source);
        let shank = &value.withdrawal;
        let along = shank.per_length;
        let basis = Basis::Published(along.source);
        part.step("W", "withdrawal of an inch of it", "", (along.value.plf() / 12.0, "lb/in"), basis);
        let reached = format!("{} × {}", figure(along.value.plf() / 12.0), figure(shank.penetration.inches()));
        part.step("", "as far as it goes in", reached, (shank.reference.pounds(), "lb"), Basis::Arithmetic);
        factored(&mut part, ("W'", "its shank holds"), (shank.reference, &shank.factors), shank.adjusted);
        if let Some(head) = &value.pull_through {
            let basis = Basis::Published(head.reference.source);
            let says = format!("pull-through of its head of {}", fine(head.head));
            part.step("W_H", says, "", (head.reference.value.pounds(), "lb"), basis);
            factored(&mut part, ("W_H'", "its head holds"), (head.reference.value, &head.factors), head.adjusted);
        }
        let first = if value.governs == UpliftLimit::Withdrawal { "the shank" } else { "the head" };
        part.step("", format!("{first} gives first"), "", (value.adjusted.pounds(), "lb"), Basis::Arithmetic);
        part
    }
}
