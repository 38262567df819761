//! From what lifts the roof to what each link must hold, and the weakest of them.

use measure::{Force, Length, LineLoad};
use standards::irc_2021::r403_1_6;
use standards::irc_2021::r802_11::{TOE_NAILS, UPLIFT_PATH, WALL_TOP_LIMIT};
use standards::sdpws_2015::uplift::{BOLTS, UpliftNailing, panel_uplift};
use standards::{OutsideTable, Source};

use super::holds::by_itself;
use super::link::{Held, Link, LinkAnswer, UpliftCaution};
use super::refusal;
use super::tie::{Connections, Tie};
use super::wall::{Chain, WallStorey};

/// What the path answers.
#[derive(Clone, Debug, PartialEq)]
pub struct ChainAnswer {
    /// Every link, from the roof down.
    pub links: Vec<LinkAnswer>,
    /// Where in them the weakest stands: the one that is used most, of equal ones the highest. None where nothing lifts, or
    /// nothing is known.
    pub weakest: Option<usize>,
}

impl ChainAnswer {
    /// Links one after the other, with the weakest of them found.
    #[must_use]
    pub fn of(links: Vec<LinkAnswer>) -> Self {
        let weakest = weakest(&links);
        Self { links, weakest }
    }

    /// The weakest link.
    #[must_use]
    pub fn weakest_link(&self) -> Option<&LinkAnswer> {
        self.links.get(self.weakest?)
    }

    /// Links that are lifted and have nothing that may count.
    pub fn bare(&self) -> impl Iterator<Item = &LinkAnswer> {
        let none = |link: &&LinkAnswer| matches!(link.held, Held::Nothing | Held::Refused(_));
        self.links.iter().filter(none).filter(|link| link.demand > Force::ZERO)
    }

    /// Links that are lifted and of which nothing is known.
    pub fn unknown(&self) -> impl Iterator<Item = &LinkAnswer> {
        self.links.iter().filter(|link| link.used.is_none())
    }

    /// Whether every link surely holds.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.links.iter().all(LinkAnswer::holds)
    }
}

/// Works out the path of uplift, from the roof sheathing to the footing.
///
/// A connection takes its spacing of the wall. At an opening each end of the header takes half the width, and the studs
/// beside it that and half a stud's spacing; no weight is counted for them. Below each storey its weight is taken off.
///
/// Source: statics; 0.6D + 0.6W of ASCE 7-16 2.4.1; IRC R602.3.5 for the schedule's nailing, R802.11.1 for toe nails, SDPWS
/// 2015 4.4 for panels (both from memory).
///
/// # Errors
/// No storey or more than three, a spacing or width that no wall has, a strength or weight below zero, or the code's 60 plf
/// a wall where it may not be taken.
pub fn check_chain(chain: &Chain) -> Result<ChainAnswer, OutsideTable> {
    chain.is_whole()?;
    let mut path = Path { chain, along: chain.uplift, wall_top: chain.uplift, links: Vec::new() };
    path.roof();
    for (index, storey) in chain.storeys.iter().enumerate() {
        path.storey(index, storey);
    }
    path.foot();
    Ok(ChainAnswer::of(path.links))
}

fn weakest(links: &[LinkAnswer]) -> Option<usize> {
    let used = links.iter().enumerate().filter_map(|(index, link)| Some((index, link.used?)));
    let first = used.filter(|(_, used)| *used > 0.0).reduce(|most, next| if next.1 > most.1 { next } else { most });
    first.map(|(index, _)| index)
}

/// The path as far as it has come.
struct Path<'a> {
    chain: &'a Chain,
    /// What passes now.
    along: LineLoad,
    /// What came in at the top of the storey.
    wall_top: LineLoad,
    links: Vec<LinkAnswer>,
}

impl Path<'_> {
    fn roof(&mut self) {
        let chain = self.chain;
        if let Some(sheathing) = &chain.sheathing {
            let along = sheathing.suction * chain.roof.spacing;
            self.link(Link::SheathingToRafter, &sheathing.nails.tie, along, sheathing.nails.spacing);
        }
        self.along_wall(Link::RoofToPlate, &chain.roof);
    }

    fn storey(&mut self, index: usize, storey: &WallStorey) {
        self.wall_top = self.along;
        let above = if index == 0 { Link::PlateToStud } else { Link::FloorToFloor { storey: index } };
        self.along_wall(above, &storey.above);
        let upper = match index.checked_sub(1).and_then(|upper| self.chain.storeys.get(upper)) {
            Some(upper) => &upper.above,
            None => &self.chain.roof,
        };
        let cautions = between(upper, &storey.above);
        self.caution(cautions);
        for (opening, described) in storey.openings.iter().enumerate() {
            let (half, beside) = (described.width / 2.0, storey.studs / 2.0);
            self.link(Link::HeaderToJamb { storey: index, opening }, &described.header, self.along, half);
            self.link(Link::JambToBelow { storey: index, opening }, &described.jamb, self.along, half + beside);
            if index + 1 < self.chain.storeys.len() {
                self.caution([UpliftCaution::StudsBelow]);
            }
        }
        self.along = self.along - storey.weight.counted();
    }

    fn foot(&mut self) {
        let studs = &self.chain.stud_to_sill;
        self.along_wall(Link::StudToSill, studs);
        let above = self.chain.storeys.last().map(|storey| &storey.above);
        self.caution(above.filter(|above| is_shifted(above, studs)).map(|_| UpliftCaution::PlateBetween));
        let sill = &self.chain.sill;
        self.along_wall(Link::SillToFooting, sill);
        if let Tie::Bolts(bolts) = &sill.tie {
            let far = (sill.spacing > r403_1_6::SPACING).then_some(UpliftCaution::BoltsFarApart);
            let concrete = bolts.anchorage.is_none().then_some(UpliftCaution::AnchorageNotCounted);
            self.caution([Some(UpliftCaution::SillBending), concrete, far].into_iter().flatten());
        }
    }

    fn along_wall(&mut self, link: Link, connections: &Connections) {
        let a_foot = Length::from_feet(1.0);
        let takes = if connections.tie.is_along_the_wall() { a_foot } else { connections.spacing };
        self.link(link, &connections.tie, self.along, takes);
    }

    fn link(&mut self, link: Link, tie: &Tie, along: LineLoad, takes: Length) {
        let (held, source) = self.holds(link, tie, takes);
        self.links.push(LinkAnswer { source, ..LinkAnswer::new(link, (along, takes), held) });
        let limited = matches!(tie, Tie::Nails { .. }) && source == Some(TOE_NAILS);
        let in_one_piece = matches!(tie, Tie::Panels(_)).then_some(UpliftCaution::PanelsInOnePiece);
        let limit = limited.then_some(UpliftCaution::ToeNailLimit);
        self.caution([limit, in_one_piece].into_iter().flatten());
    }

    fn caution(&mut self, cautions: impl IntoIterator<Item = UpliftCaution>) {
        if let Some(last) = self.links.last_mut() {
            last.cautions.extend(cautions);
        }
    }

    /// What one connection holds at a link, and where that stands.
    fn holds(&self, link: Link, tie: &Tie, takes: Length) -> (Held, Option<Source>) {
        match tie {
            Tie::Bolts(bolts) if link == Link::SillToFooting => (Held::Carries(bolts.holds()), None),
            Tie::Panels(nailing) if laps(link) => self.panels(nailing, takes),
            Tie::ScheduleNailing if laps(link) => (self.schedule(takes), Some(UPLIFT_PATH)),
            tie => by_itself(link, tie),
        }
    }

    fn panels(&self, nailing: &UpliftNailing, takes: Length) -> (Held, Option<Source>) {
        match self.chain.sill.hold_for_panels() {
            None => return (Held::Unknown, Some(BOLTS)),
            Some(false) => {
                let given = "panels in uplift over another sill than one bolted so".to_owned();
                let covers = "sills with bolts at 16 in or less and plate washers of 3 x 3 x 0.229 in";
                let next = "Bolt the sill so, or carry the uplift by straps.";
                return (Held::Refused(refusal(BOLTS, given, covers, next)), Some(BOLTS));
            }
            Some(true) => {}
        }
        match panel_uplift(nailing) {
            Ok(panel) => (Held::Carries(panel.nominal.allowable_for_wind() * takes), Some(panel.source)),
            Err(outside) => {
                let source = outside.source;
                (Held::Refused(outside), Some(source))
            }
        }
    }

    fn schedule(&self, takes: Length) -> Held {
        if self.wall_top <= WALL_TOP_LIMIT {
            return Held::Carries(WALL_TOP_LIMIT * takes);
        }
        Held::Refused(refusal(
            UPLIFT_PATH,
            format!("{:.0} plf at the top of the wall", self.wall_top.plf()),
            "net uplift to 100 plf at the top of the wall, where the schedule's nailing is path enough",
            "Carry it by straps, or by panels that are nailed for it.",
        ))
    }
}

/// Links that panels reach across.
const fn laps(link: Link) -> bool {
    matches!(link, Link::PlateToStud | Link::FloorToFloor { .. } | Link::StudToSill)
}

/// What two links one over the other are to each other.
fn between(upper: &Connections, lower: &Connections) -> Vec<UpliftCaution> {
    let metal = |tie: &Tie| matches!(tie, Tie::Metal { .. });
    let sided = |tie: &Tie| metal(tie) || tie.is_along_the_wall();
    let mut cautions = Vec::new();
    if sided(&upper.tie) && sided(&lower.tie) {
        match (upper.tie.side(), lower.tie.side()) {
            (Some(above), Some(below)) if above != below => cautions.push(UpliftCaution::OtherSide),
            (Some(_), Some(_)) => {}
            _ => cautions.push(UpliftCaution::SideNotKnown),
        }
    }
    if is_shifted(upper, lower) {
        cautions.push(UpliftCaution::PlateBetween);
    }
    cautions
}

/// Whether connections stand at another spacing than those above them.
fn is_shifted(upper: &Connections, lower: &Connections) -> bool {
    let spaced = |connections: &Connections| !connections.tie.is_along_the_wall();
    spaced(upper) && spaced(lower) && upper.spacing != lower.spacing
}
