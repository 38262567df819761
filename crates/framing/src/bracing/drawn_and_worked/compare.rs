//! One wall as it is drawn beside the lightest panels and nails that carry it.

use bracing::braced_walls::{BracedWall, BracedWalls, EndsError, Pull, pulls};
use bracing::schedule::{HoldDownMark, PanelMark, Schedule};
use bracing::{Ends, Framing, Nailing, SegmentedWall, Strength, check_line, check_segmented, strength};
use measure::{Force, Length, Ratio};

use super::super::shear_wall::{Tried, strongest};
use super::super::{frame, shear_wall};
use crate::reading::Reading;

/// What all walls are compared by.
pub(super) struct By<'s> {
    pub(super) schedule: &'s Schedule,
    pub(super) ends: Ends,
    pub(super) floor: Length,
    framing: Framing,
    across: bool,
    offered: Vec<Tried>,
}

/// Panels and nails on the pieces of a wall.
pub(super) struct Column {
    pub(super) nailing: Nailing,
    pub(super) strength: Strength,
    /// What all pieces carry.
    pub(super) capacity: Force,
    /// Share of it that the push uses; none where no piece counts.
    pub(super) used: Option<Ratio>,
}

/// What the drawing says of a wall.
pub(super) enum Drawing {
    /// Nothing.
    NotNamed,
    /// A mark that no line of the schedule gives.
    NotInSchedule(String),
    /// Something that has no number by the tables, with why.
    NotWorked(PanelMark, String),
    /// Panels and nails.
    Worked(PanelMark, Box<Column>),
}

/// What follows for the panels of a wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Panels {
    /// The drawing carries, and asks for no more than is worked.
    Agree,
    /// The drawing carries and asks for more.
    AsksMore,
    /// By the tables the drawing is used over what it carries.
    Over,
    /// Nothing of the tables carries on these pieces, nor does the drawing.
    NothingCarries,
    /// The drawing has no number.
    NotWorked,
    /// The schedule has no such mark.
    NotInSchedule,
    /// The drawing does not name the wall.
    NotNamed,
}

/// What holds its ends by the drawing.
pub(super) enum Held {
    /// Nothing need, or the drawing is not known.
    NotAsked,
    /// Nothing need, and the drawing has a hold-down.
    NotNeeded,
    /// Its mark names no hold-down.
    NotSaid,
    /// No line gives the hold-down that its mark names.
    Missing(String),
    /// This hold-down, with its share.
    By(HoldDownMark, Ratio),
}

/// A wall with both of its columns.
pub(super) struct Compared<'w> {
    pub(super) wall: &'w BracedWall,
    /// The walls on it and it itself, from the top down.
    pub(super) stack: Vec<&'w BracedWall>,
    pub(super) drawing: Drawing,
    /// The lightest that carries; none where none does.
    pub(super) worked: Option<Column>,
    /// What is missing of full-height wall where none does, with the strongest panels and nails that there are.
    pub(super) missing: Option<(Column, Length)>,
    /// What pulls hardest at an end; none where no piece counts.
    pub(super) pull: Result<Option<Pull>, EndsError>,
    pub(super) panels: Panels,
    pub(super) held: Held,
}

impl<'s> By<'s> {
    pub(super) fn of(reading: &Reading, schedule: &'s Schedule) -> Option<Self> {
        let framing = frame::framing(reading)?;
        Some(Self {
            schedule,
            ends: frame::ends(reading)?.1,
            floor: reading.length("floor_between")?,
            across: reading.word("panels_lie") == Some("across"),
            // Blocked and bare inside: what is offered is the same for every wall.
            offered: shear_wall::tried(reading, None, &framing, (Length::ZERO, &[])),
            framing,
        })
    }

    pub(super) fn compare<'w>(&self, walls: &'w BracedWalls, wall: &'w BracedWall) -> Compared<'w> {
        let line = wall.segmented(self.ends);
        let stack = walls.stack(wall);
        let drawing = self.drawing(wall, &line);
        let worked = self.lightest(&line);
        let missing = if worked.is_none() { self.missing(&drawing, &line) } else { None };
        let pull = self.pull(&stack);
        let panels = panels(&drawing, worked.as_ref());
        let held = self.held(&drawing, &pull);
        Compared { wall, stack, drawing, worked, missing, pull, panels, held }
    }

    fn drawing(&self, wall: &BracedWall, line: &SegmentedWall) -> Drawing {
        let Some(mark) = &wall.mark else { return Drawing::NotNamed };
        let Some(panel) = self.schedule.panel(mark) else { return Drawing::NotInSchedule(mark.clone()) };
        if panel.blocked == Some(false) {
            return Drawing::NotWorked(panel.clone(), "Panels with unblocked edges are not worked.".to_owned());
        }
        let nailing = Nailing { across_studs: self.across, ..panel.nailing };
        match strength(&nailing, &self.framing) {
            Ok(strength) => Drawing::Worked(panel.clone(), Box::new(Column::of(line, nailing, &strength))),
            Err(outside) => Drawing::NotWorked(panel.clone(), outside.to_string()),
        }
    }

    fn lightest(&self, line: &SegmentedWall) -> Option<Column> {
        let strong = self.offered.iter().filter_map(|one| Some((one.nailing, one.strength.as_ref().ok()?)));
        strong.map(|(nailing, strength)| Column::of(line, nailing, strength)).find(Column::carries)
    }

    /// By the strongest that is offered, or by what is drawn where that is stronger.
    fn missing(&self, drawing: &Drawing, line: &SegmentedWall) -> Option<(Column, Length)> {
        let offered = self.offered.get(strongest(&self.offered)).map(|one| one.nailing);
        let drawn = match drawing {
            Drawing::Worked(_, column) => Some(column.nailing),
            _ => None,
        };
        let missing = |nailing: Nailing| {
            let missing = check_line(line, &nailing, &self.framing).ok()?.missing?;
            Some((Column::of(line, nailing, &strength(&nailing, &self.framing).ok()?), missing))
        };
        let all = offered.into_iter().chain(drawn).filter_map(missing);
        all.min_by(|(_, one), (_, other)| one.inches().total_cmp(&other.inches()))
    }

    fn pull(&self, stack: &[&BracedWall]) -> Result<Option<Pull>, EndsError> {
        // However it is nailed the pull is the same: any strength will do.
        let Some(strength) = self.offered.iter().find_map(|one| one.strength.as_ref().ok()) else { return Ok(None) };
        let all = pulls(stack, strength, self.ends, self.floor)?;
        Ok(all.into_iter().max_by(|one, other| one.tension.pounds().total_cmp(&other.tension.pounds())))
    }

    fn held(&self, drawing: &Drawing, pull: &Result<Option<Pull>, EndsError>) -> Held {
        let (Drawing::Worked(mark, _) | Drawing::NotWorked(mark, _), Ok(Some(pull))) = (drawing, pull) else {
            return Held::NotAsked;
        };
        let named = &mark.hold_down;
        match (pull.tension > Force::ZERO, self.schedule.hold_down(named)) {
            (false, _) if named.is_empty() => Held::NotAsked,
            (false, _) => Held::NotNeeded,
            (true, Some(hold_down)) => Held::By(hold_down.clone(), pull.tension / hold_down.load),
            (true, None) if named.is_empty() => Held::NotSaid,
            (true, None) => Held::Missing(named.clone()),
        }
    }
}

impl Column {
    fn of(line: &SegmentedWall, nailing: Nailing, strength: &Strength) -> Self {
        let found = check_segmented(line, strength);
        let used = (found.capacity > Force::ZERO).then_some(found.used);
        Self { nailing, strength: strength.clone(), capacity: found.capacity, used }
    }

    fn carries(&self) -> bool {
        self.used.is_some_and(|used| used <= 1.0)
    }
}

fn panels(drawing: &Drawing, worked: Option<&Column>) -> Panels {
    let carries = matches!(drawing, Drawing::Worked(_, column) if column.carries());
    match (drawing, worked) {
        (_, None) if !carries => Panels::NothingCarries,
        (Drawing::NotNamed, _) => Panels::NotNamed,
        (Drawing::NotInSchedule(_), _) => Panels::NotInSchedule,
        (Drawing::NotWorked(..), _) => Panels::NotWorked,
        (Drawing::Worked(..), _) if !carries => Panels::Over,
        (Drawing::Worked(_, drawn), Some(worked)) if drawn.capacity <= worked.capacity => Panels::Agree,
        (Drawing::Worked(..), _) => Panels::AsksMore,
    }
}

impl Compared<'_> {
    /// Whether something is to be asked before it is nailed.
    pub(super) fn asks(&self) -> bool {
        !matches!(self.panels, Panels::Agree | Panels::AsksMore) || self.ends_ask()
    }

    /// Whether its ends are to be asked about.
    pub(super) fn ends_ask(&self) -> bool {
        match &self.held {
            Held::NotSaid | Held::Missing(_) => true,
            Held::By(_, share) => *share > 1.0,
            Held::NotAsked | Held::NotNeeded => self.pull.is_err(),
        }
    }

    /// Whether the drawing asks for more than is worked.
    pub(super) fn asks_more(&self) -> bool {
        self.panels == Panels::AsksMore || matches!(self.held, Held::NotNeeded)
    }

    /// The panels that are drawn, where they have a number.
    pub(super) fn drawn(&self) -> Option<&Column> {
        if let Drawing::Worked(_, column) = &self.drawing { Some(column.as_ref()) } else { None }
    }

    /// The share of the hold-down that is drawn.
    pub(super) fn hold_down_share(&self) -> Option<Ratio> {
        if let Held::By(_, share) = &self.held { Some(*share) } else { None }
    }

    /// The mark, as it was typed; empty where none was.
    pub(super) fn mark(&self) -> &str {
        self.wall.mark.as_deref().unwrap_or_default()
    }

    /// What its ends must be held for; none where that has no number.
    pub(super) fn tension(&self) -> Option<Force> {
        Some(self.pull.as_ref().ok()?.as_ref()?.tension.max(Force::ZERO))
    }
}
