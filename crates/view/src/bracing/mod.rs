//! How Bracing is shown: which of its inputs speak, and its pictures.

mod wall;

use framing::bracing::BracingKind;
use framing::quick::reply::{Drawn, QuickReply};

use crate::pen::Pen;
use crate::quick::{QuickScreen, Shown};
use crate::scene::Scene;

/// Everything that the screen of Bracing shows.
pub type BracingScreen = QuickScreen<BracingKind>;

impl Shown for BracingKind {
    const CHAPTER: &'static str = "bracing";

    const OTHERS: (&'static str, &'static str) = ("Other panels and nails", "Find the lightest instead");

    fn picture(self, reply: &QuickReply) -> Scene {
        match &reply.drawn {
            Drawn::Wall(drawn) => wall::picture(drawn, reply),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }
}
