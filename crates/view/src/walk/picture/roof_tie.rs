//! A roof tie in a section across the wall: rafter or truss over the top plates, what holds it, and the uplift.

use framing::walk::could_not_be_seen;

use super::pen::{Pen, crossed, rectangle};
use super::values::Values;
use crate::scene::{Ink, Mark, Scene, Weight};

/// Wall from its sheathing inward, and how much of it is drawn; inches.
const SHEATHING: f64 = 0.5;
const WALL: f64 = 3.5;
const HEIGHT: f64 = 12.0;
/// Underside of rafter or truss, and of the top plates.
const CHORD: f64 = 3.5;
const PLATES: f64 = CHORD + 3.0;
/// Rafter or truss past the wall's faces.
const PAST: f64 = 2.5;

/// What holds it, as it was said.
#[derive(Clone, Copy, PartialEq)]
enum HeldBy {
    Sheathed,
    Inside,
    /// A tie whose side nobody saw.
    SomeSide,
    ToeNails,
    NotSeen,
}

impl HeldBy {
    fn of(values: Values<'_>) -> Self {
        let side = values.text("tie_side");
        match (values.text("held_by"), side) {
            ("toe_nails", _) => Self::ToeNails,
            ("tie", "sheathed") => Self::Sheathed,
            ("tie", "inside") => Self::Inside,
            ("tie", _) => Self::SomeSide,
            _ => Self::NotSeen,
        }
    }
}

/// Drawn before anything is known of it, so that it shows what is looked at.
pub(super) fn picture(values: Values<'_>) -> Scene {
    let held = HeldBy::of(values);
    let mut pen = Pen::new((-PAST, 0.0), (WALL + 2.0 * PAST, HEIGHT));
    // A drawing so high is scaled down to its room and its figures are not: they get the more paper.
    pen.margin(210.0, 140.0, 12.0);
    wall(&mut pen);
    hold(&mut pen, held);
    let uplift = values.pounds("required_uplift");
    if let Some(uplift) = &uplift {
        arrow(&mut pen, uplift);
    }
    pen.scene(alt(values, held, uplift.as_deref()))
}

fn wall(pen: &mut Pen) {
    pen.shape(rectangle(-PAST, 0.0, WALL + PAST, CHORD), Weight::Seen, Ink::Ink, false);
    pen.shape(rectangle(-SHEATHING, CHORD, 0.0, HEIGHT), Weight::Seen, Ink::Ink, true);
    let middle = (CHORD + PLATES) / 2.0;
    crossed(pen, 0.0, CHORD, WALL, middle, Ink::Ink);
    crossed(pen, 0.0, middle, WALL, PLATES, Ink::Ink);
    pen.shape(rectangle(0.0, PLATES, WALL, HEIGHT), Weight::Seen, Ink::Ink, false);
    pen.label((-SHEATHING - pen.paper(125.0), (PLATES + HEIGHT) / 2.0), "sheathing");
}

fn hold(pen: &mut Pen, held: HeldBy) {
    let tie = |x: f64| [(x, CHORD / 4.0), (x, PLATES + 2.0)];
    let [sheathed, inside] = [tie(-SHEATHING - 0.25), tie(WALL + 0.25)];
    match held {
        HeldBy::Sheathed => pen.line(sheathed[0], sheathed[1], Weight::Cut, Ink::Ink),
        HeldBy::Inside => pen.line(inside[0], inside[1], Weight::Cut, Ink::Short),
        HeldBy::SomeSide => {
            for [from, to] in [sheathed, inside] {
                pen.line(from, to, Weight::Hidden, Ink::Ink);
            }
        }
        HeldBy::ToeNails => {
            for (from, to) in [(0.5, 1.4), (WALL - 0.5, WALL - 1.4)] {
                pen.line((from, CHORD - 1.25), (to, CHORD + 1.25), Weight::Cut, Ink::Ink);
            }
        }
        HeldBy::NotSeen => {}
    }
}

/// The uplift over rafter or truss, with its number between the two.
fn arrow(pen: &mut Pen, uplift: &str) {
    let (x, tail, head) = (WALL / 2.0, -pen.paper(56.0), -pen.paper(130.0));
    pen.marks.push(Mark::Arrow { from: (x, tail), to: (x, head), figure: uplift.to_owned(), ink: Ink::Ink });
}

fn alt(values: Values<'_>, held: HeldBy, uplift: Option<&str>) -> String {
    let held = match held {
        HeldBy::Sheathed => "held by a tie on the sheathed side",
        HeldBy::Inside => "held by a tie inside the wall",
        HeldBy::SomeSide if could_not_be_seen(values.text("tie_side")) => "held by a tie whose side could not be seen",
        HeldBy::SomeSide => "held by a tie whose side was not looked at",
        HeldBy::ToeNails => "held by toe nails",
        HeldBy::NotSeen => "what holds it was not seen",
    };
    let uplift = uplift.map_or_else(|| "The uplift is not known".to_owned(), |uplift| format!("The uplift: {uplift}"));
    format!("Rafter or truss on the top plates, across the wall, not to scale; {held}. {uplift}.")
}
