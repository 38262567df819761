//! How Bracing is shown: which of its inputs speak, and its pictures.

mod joint;
mod sill;
mod swap;
mod wall;

use framing::bracing::BracingKind;
use framing::quick::reply::{Drawn, QuickReply};
use framing::reading::Reading;

use crate::pen::Pen;
use crate::quick::{QuickScreen, Shown};
use crate::scene::Scene;

/// Everything that the screen of Bracing shows.
pub type BracingScreen = QuickScreen<BracingKind>;

impl Shown for BracingKind {
    const CHAPTER: &'static str = "bracing";

    const OTHERS: (&'static str, &'static str) = ("Other panels and nails", "Find the lightest instead");

    fn speaks(self, id: &str, reading: &Reading) -> bool {
        let of = |input: &str| reading.word(input).unwrap_or_default();
        let ringed = |input: &str| of(input).ends_with("ring");
        match (self, id) {
            (Self::Nail | Self::NailSwap, "nail_gauge") => of("nail_side") == "steel",
            (Self::Nail | Self::NailSwap, "nail_side_thick") => of("nail_side") != "steel",
            (Self::Nail | Self::NailSwap, "nail_ringed") => ringed("nail_shank") || ringed("asked_shank"),
            (Self::NailSwap, "code_element") => of("nailed_work") == "framing",
            _ => true,
        }
    }

    fn picture(self, reply: &QuickReply) -> Scene {
        match &reply.drawn {
            Drawn::Wall(drawn) => wall::picture(drawn, reply),
            Drawn::Joint(drawn) => joint::picture(drawn, reply),
            Drawn::Swap(drawn) => swap::picture(drawn, reply),
            Drawn::Sill(drawn) => sill::picture(drawn, reply),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }
}
