//! What each link of the path is called, where it is drawn, and the input that says what is there.

use bracing::uplift::{Held, Link, LinkAnswer, UpliftCaution};

use super::Lifts;
use crate::quick::reply::LinkAt;
use crate::words::figure;

/// A link in words.
pub(super) struct Told {
    pub(super) name: String,
    /// Where it is drawn; openings are not.
    pub(super) at: Option<LinkAt>,
    /// The input that says what is there.
    pub(super) input: &'static str,
}

pub(super) fn told(link: Link, lifts: Lifts) -> Told {
    let told = |name: &str, at, input| Told { name: name.to_owned(), at, input };
    let over = lifts == Lifts::Gable;
    match link {
        Link::SheathingToRafter if over => told("sheathing to outlooker", Some(LinkAt::Deck), "deck_nail"),
        Link::SheathingToRafter => told("sheathing to rafter", Some(LinkAt::Deck), "deck_nail"),
        Link::OutlookerToTruss => told("outlooker to truss", Some(LinkAt::Truss), "outlooker_inner_tie"),
        Link::RoofToPlate if over => told("outlooker to plate", Some(LinkAt::Plate), "outlooker_tie"),
        Link::RoofToPlate => told("rafter to plate", Some(LinkAt::Plate), "rafter_tie"),
        Link::PlateToStud => told("plate to stud", Some(LinkAt::Studs), "plate_tie"),
        Link::FloorToFloor { storey } => told(&format!("over floor {storey}"), Some(LinkAt::Floor), "floor_tie"),
        Link::HeaderToJamb { .. } => told("header to stud", None, "header_tie"),
        Link::JambToBelow { .. } => told("studs beside the opening", None, "jamb_tie"),
        Link::StudToSill => told("stud to sill", Some(LinkAt::Sill), "sill_tie"),
        Link::SillToFooting => told("sill to footing", Some(LinkAt::Footing), "bolt_holds"),
        Link::RafterToBeam => told("rafter to beam", Some(LinkAt::Beam), "porch_rafter_tie"),
        Link::BeamToPost => told("beam to post", Some(LinkAt::Post), "post_top_tie"),
        Link::PostToFooting => told("post to footing", Some(LinkAt::PostBase), "post_base_tie"),
        Link::FootingToGround => told("weight of the footing", Some(LinkAt::Ground), "footing_weighs"),
    }
}

/// What a link holds, in words.
pub(super) fn held(link: &LinkAnswer) -> String {
    match &link.held {
        Held::Unknown => "what?".to_owned(),
        Held::Nothing => "nothing".to_owned(),
        Held::Carries(force) => format!("{} lb", figure(force.pounds().floor())),
        Held::Refused(_) => "may not count".to_owned(),
    }
}

pub(super) const fn caution(of: UpliftCaution) -> &'static str {
    match of {
        UpliftCaution::OtherSide => {
            "Ties above and below are on different sides of the wall: the plate between them rolls."
        }
        UpliftCaution::SideNotKnown => {
            "A tie belongs on the same side of the wall as the one above it, or the plate rolls."
        }
        UpliftCaution::ToeNailLimit => {
            "At the roof the code lets toe nails hold no more than 200 lb, whatever their number."
        }
        UpliftCaution::PlateBetween => {
            "Ties stand at other spacings than those above: set them at the same studs where you can. The plate between is not worked here."
        }
        UpliftCaution::PanelsInOnePiece => {
            "Panels that hold it down run in one piece from plate to plate, or are spliced over blocking."
        }
        UpliftCaution::StudsBelow => "Studs below an opening's sides take what comes down beside it.",
        UpliftCaution::SillBending => {
            "How the sill bends between studs and bolts is not worked here: bolts near the studs are better."
        }
        UpliftCaution::AnchorageNotCounted => {
            "What the bolt holds in the concrete is not counted: the washer on the sill is."
        }
        UpliftCaution::BoltsFarApart => "The bolts are farther apart than the 6' that the code lets them be.",
    }
}
