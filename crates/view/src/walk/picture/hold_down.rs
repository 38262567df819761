//! A hold-down in elevation: the post, the rod and its nut.

use framing::walk::could_not_be_seen;

use super::bolts::{length, nut_words};
use super::pen::{Pen, crossed, rectangle};
use super::values::{Values, inches};
use crate::scene::{Ink, Scene, Weight};

/// Width and height of what is drawn of the post; the foundation below it; inches.
const POST: (f64, f64) = (3.0, 9.0);
const BELOW: f64 = 4.0;
/// The hold-down's seat over the post's foot.
const SEAT: f64 = POST.1 - 4.0;
/// A rod whose diameter was not measured is drawn so thick.
const USUAL_ROD: f64 = 0.625;

/// The end of the rod beside the nut's top.
#[derive(Clone, Copy, PartialEq)]
enum RodEnd {
    FlushOrProud,
    BelowBy(f64),
    /// Seen to be below, and nobody measured by how much.
    Below,
    NotSeen,
}

/// What is known of it.
struct Rod {
    diameter: f64,
    end: RodEnd,
    off: bool,
}

impl Rod {
    fn of(values: Values<'_>) -> Self {
        let thread = values.typed.text("thread");
        Self {
            diameter: inches(values.of("diameters", 0)).unwrap_or(USUAL_ROD).clamp(0.25, 2.0),
            end: match inches(thread) {
                Some(below) if below > 0.0 => RodEnd::BelowBy(below),
                None if thread.eq_ignore_ascii_case("no") => RodEnd::Below,
                None if thread.is_empty() || could_not_be_seen(thread) => RodEnd::NotSeen,
                _ => RodEnd::FlushOrProud,
            },
            off: values.typed.text("off_the_post") == "yes",
        }
    }

    fn middle(&self) -> f64 {
        POST.0 + if self.off { 2.5 } else { 1.5 }
    }

    fn nut_top(&self) -> f64 {
        SEAT - self.diameter
    }
}

/// The foot of the post with its rod; drawn before anything is measured, so that it shows what is looked at.
pub(super) fn picture(values: Values<'_>) -> Scene {
    let rod = Rod::of(values);
    let mut pen = Pen::new((0.0, 0.0), (POST.0 + 6.0, POST.1 + BELOW));
    pen.margin(44.0, 12.0, 12.0);
    post(&mut pen, &rod);
    nut(&mut pen, &rod, values.of("nuts", 0));
    draw_rod(&mut pen, &rod);
    if let Some(embedment) = inches(values.of("embedments", 0)) {
        let x = -pen.paper(20.0);
        pen.dimension((x, POST.1 + BELOW), (x, POST.1), &length(embedment), Some("embedments"));
    }
    pen.scene(alt(values, &rod))
}

fn post(pen: &mut Pen, rod: &Rod) {
    let foot = POST.1;
    crossed(pen, 0.0, foot - 1.5, POST.0, foot, Ink::Ink);
    pen.shape(rectangle(0.0, 0.0, POST.0, foot - 1.5), Weight::Seen, Ink::Ink, false);
    pen.line((0.0, foot), (POST.0 + 6.0, foot), Weight::Cut, Ink::Ink);
    pen.line((POST.0, SEAT), (rod.middle() + 1.5, SEAT), Weight::Cut, if rod.off { Ink::Short } else { Ink::Ink });
    pen.line((POST.0, 1.0), (POST.0, SEAT), Weight::Cut, Ink::Ink);
}

/// The nut on its seat, drawn as high as the rod is thick; a loose one stands over it.
fn nut(pen: &mut Pen, rod: &Rod, nut: &str) {
    const LOOSE_BY: f64 = 0.25;
    let half = rod.diameter * 0.8;
    let (ink, lifted) = if nut == "loose" { (Ink::Short, LOOSE_BY) } else { (Ink::Ink, 0.0) };
    let corners = rectangle(rod.middle() - half, rod.nut_top() - lifted, rod.middle() + half, SEAT - lifted);
    match nut {
        "missing" | "none" => pen.shape(corners, Weight::Hidden, Ink::Short, false),
        "tight" | "loose" => pen.shape(corners, Weight::Seen, ink, true),
        _ => pen.shape(corners, Weight::Hidden, Ink::Ink, false),
    }
}

/// Its end flush with the nut or proud of it, or so far below; dashed where nobody saw it.
fn draw_rod(pen: &mut Pen, rod: &Rod) {
    const PROUD: f64 = 0.25;
    let (middle, half) = (rod.middle(), rod.diameter / 2.0);
    let (end, weight, ink) = match rod.end {
        RodEnd::FlushOrProud => (rod.nut_top() - PROUD, Weight::Seen, Ink::Ink),
        RodEnd::BelowBy(below) => ((rod.nut_top() + below).min(POST.1), Weight::Seen, Ink::Short),
        RodEnd::Below => ((rod.nut_top() + SEAT) / 2.0, Weight::Seen, Ink::Short),
        RodEnd::NotSeen => (rod.nut_top(), Weight::Hidden, Ink::Ink),
    };
    pen.shape(rectangle(middle - half, end, middle + half, POST.1), weight, ink, false);
    for x in [middle - half, middle + half] {
        pen.line((x, POST.1), (x, POST.1 + BELOW), Weight::Hidden, Ink::Ink);
    }
    if let RodEnd::BelowBy(below) = rod.end {
        let x = middle + rod.diameter * 0.8 + pen.paper(24.0);
        pen.dimension((x, end), (x, rod.nut_top()), &length(below), Some("thread"));
    }
}

fn alt(values: Values<'_>, rod: &Rod) -> String {
    let nut = match values.of("nuts", 0) {
        "" | "-" => "The nut was not looked at".to_owned(),
        nut => format!("The nut: {}", nut_words(nut)),
    };
    let end = match rod.end {
        RodEnd::FlushOrProud => "the rod's end is flush with its top, or proud of it".to_owned(),
        RodEnd::BelowBy(below) => format!("the rod ends {} below its top", length(below)),
        RodEnd::Below => "the rod ends below its top".to_owned(),
        RodEnd::NotSeen => "the rod's end was not seen".to_owned(),
    };
    let off = if rod.off { " The rod stands off the post." } else { "" };
    format!("A hold-down at the foot of its post, not to scale but for its rod and its gap. {nut}; {end}.{off}")
}
