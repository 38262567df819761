//! The tie between roof and wall, and whether the uplift ends there.

use measure::{Force, Length, LineLoad};
use standards::irc_2021::r802_11::{EACH_WALL_ABOVE, TOE_NAIL_LIMIT, TOE_NAILS, UPLIFT_PATH, WALL_TOP_LIMIT};
use standards::{Source, Status};

use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::strap::Nails;
use crate::subject::{Question, Subject};
use crate::verdict::Check;

/// A tie inside the wall rolls the plate and leaves the sheathing out of the path.
pub const TIE_ON_SHEATHED_SIDE: Source =
    Source::new("Storm-damage reports of trade journals", "side of the tie", Status::LookedUp);

/// Which side of the wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The sheathed side.
    Sheathed,
    /// The other side.
    Inside,
}

/// What holds rafter or truss to the wall.
#[derive(Clone, Debug, PartialEq)]
pub enum Held {
    /// A metal tie.
    Tie {
        /// The side it is nailed to.
        side: Seen<Side>,
        /// What its maker lists for it in this wood, where that is at hand.
        listed: Option<Required<Force>>,
    },
    /// Toe nails alone.
    ToeNails,
}

/// A roof-to-wall connection.
#[derive(Clone, Debug, PartialEq)]
pub struct RoofToWall {
    /// Uplift on one connection, at allowable-stress level, by the drawing or the roof's table.
    pub uplift: Option<Required<Force>>,
    /// Spacing of the connections along the wall.
    pub spacing: Length,
    /// Full walls over this one whose weight holds it down.
    pub full_walls_above: u8,
    /// What holds it.
    pub held: Seen<Held>,
    /// Its nails, judged where a number is asked for.
    pub nails: Nails,
}

/// A further link that must be looked at when the uplift goes on down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PathLink {
    /// Top plate to stud, on the side of the tie.
    PlateToStud,
    /// Header ends to their studs.
    HeaderEnds,
    /// Floor to floor.
    FloorToFloor,
    /// Stud or sheathing to the bottom plate.
    StudToBottomPlate,
    /// Bottom plate to the foundation.
    PlateToFoundation,
}

impl PathLink {
    /// Every link, from the top down.
    pub const ALL: [Self; 5] =
        [Self::PlateToStud, Self::HeaderEnds, Self::FloorToFloor, Self::StudToBottomPlate, Self::PlateToFoundation];
}

/// The judgement of a roof-to-wall connection.
#[derive(Clone, Debug, PartialEq)]
pub struct TieAnswer {
    /// How the connection stands.
    pub finding: Finding,
    /// Net uplift at the top of the wall, beside what the nailing of the panels may carry; none while the uplift is not
    /// known. It is no fault of the connection: out of its limit, the path goes on.
    pub wall_top: Option<Check>,
    /// The links that must be looked at; none where the panels' nailing is path enough.
    pub path: Vec<PathLink>,
}

/// Judges a roof-to-wall connection.
#[must_use]
pub fn judge_roof_to_wall(connection: &RoofToWall) -> TieAnswer {
    let mut finding = Finding::default();
    match &connection.held {
        Seen::Observed(Held::Tie { side, listed }) => {
            tie_side(&mut finding, *side);
            listed_tie(&mut finding, connection.uplift.as_ref(), listed.as_ref());
        }
        Seen::Observed(Held::ToeNails) => toe_nails(&mut finding, connection.uplift.as_ref()),
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::Uplift),
    }
    let in_holes = !matches!(connection.held, Seen::Observed(Held::ToeNails));
    let fill = if in_holes { Remedy::FillConnector } else { Remedy::AddNails };
    connection.nails.judge(&mut finding, Subject::ConnectionNails, fill);
    if connection.uplift.is_none() {
        finding.questions.push(Question::UpliftRequired);
    }
    let known = connection.uplift.as_ref().filter(|_| connection.spacing > Length::ZERO);
    let wall_top = known.map(|uplift| wall_top(connection, uplift.value));
    let goes_on = wall_top.as_ref().is_some_and(|check| !check.verdict.holds());
    let path = if goes_on { PathLink::ALL.to_vec() } else { Vec::new() };
    if goes_on {
        finding.remedy(&[Remedy::CarryUpliftDown]);
    }
    TieAnswer { finding, wall_top, path }
}

fn toe_nails(finding: &mut Finding, uplift: Option<&Required<Force>>) {
    let Some(uplift) = uplift else {
        finding.not_seen.push(Subject::Uplift);
        return;
    };
    finding.checks.push(Check::at_most(Subject::Uplift, uplift.value, TOE_NAIL_LIMIT, TOE_NAILS));
    if finding.is_out(Subject::Uplift) {
        finding.remedy(&[Remedy::AddTie]);
    }
}

fn tie_side(finding: &mut Finding, side: Seen<Side>) {
    match side {
        Seen::Observed(Side::Sheathed) => {}
        Seen::Observed(Side::Inside) => {
            finding.wrong.push(Subject::TieSide);
            finding.remedy(&[Remedy::TieOnSheathedSide, Remedy::EngineerDetail]);
        }
        Seen::NotObserved => {
            finding.not_seen.push(Subject::TieSide);
            finding.questions.push(Question::TieSide);
        }
        Seen::CouldNotBeSeen => finding.not_seen.push(Subject::TieSide),
    }
}

fn listed_tie(finding: &mut Finding, uplift: Option<&Required<Force>>, listed: Option<&Required<Force>>) {
    let (Some(uplift), Some(listed)) = (uplift, listed) else {
        finding.not_seen.push(Subject::Uplift);
        return;
    };
    let check = Check::at_most(Subject::Uplift, uplift.value, listed.value, listed.origin.clone());
    finding.checks.push(check);
    if finding.is_out(Subject::Uplift) {
        finding.remedy(&[Remedy::AddTie, Remedy::EngineerDetail]);
    }
}

fn wall_top(connection: &RoofToWall, uplift: Force) -> Check {
    let gross = uplift / connection.spacing;
    let net: LineLoad = gross - EACH_WALL_ABOVE * f64::from(connection.full_walls_above);
    Check::at_most(Subject::UpliftAtWallTop, net.max(LineLoad::ZERO), WALL_TOP_LIMIT, UPLIFT_PATH)
}
