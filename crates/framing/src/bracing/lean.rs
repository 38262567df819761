//! How far a wall leans, by both printed equations.

use bracing::{Nailing, Strength};
use measure::{Force, Length, LineLoad};
use members::working::{Basis, Part};
use standards::sdpws_2015::deflection::{
    self, LeaningWall, PanelMake, four_terms, nail_slip, panel_rigidity, three_terms,
};
use standards::sdpws_2015::table_4_3::Sheathing;

use super::frame::{ends, wood};
use crate::quick::reply::QuickReply;
use crate::quick::say::fact;
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

/// The lean in this push.
pub(super) struct Lean {
    /// By the equation in three terms.
    three: Length,
    /// By the one in four, where it may be used.
    four: Option<Length>,
    part: Part,
}

/// How far the wall leans; none where the table has no stiffness.
pub(super) fn lean(
    reading: &Reading,
    nailing: &Nailing,
    (strength, shear): (&Strength, LineLoad),
    (height, length): (Length, Length),
    tension: Force,
) -> Option<Lean> {
    let stiffness = strength.stiffness?;
    let (member, _) = ends(reading)?;
    let modulus = member.adjusted_stresses(&wood(reading)?.2, lumber::LoadDuration::TenMinutes).ok()?.e;
    let wall = LeaningWall { height, length, end_post: member.section().area, modulus };
    // A label prints what it gives at its own load; less load, less give.
    let share = match reading.number("hold_down_label") {
        Some(label) if label > 0.0 => (tension.pounds() / label).clamp(0.0, 1.0),
        _ => 1.0,
    };
    let gives = if tension > Force::ZERO { reading.length("hold_down_gives")? * share } else { Length::ZERO };
    let lean = three_terms(&wall, shear, stiffness, gives);
    let mut part = Part::new("How far it leans");
    let source = Basis::Published(deflection::THREE_TERMS);
    let (v, h, b) = (shear.plf(), height.feet(), length.feet());
    let area = wall.end_post.square_inches();
    let kips = stiffness.pounds_per_inch() / 1000.0;
    part.step(
        "Δ_b",
        "end posts stretched and pressed, 8vh³/(EAb)",
        format!("8 × {} × {}³ / ({} × {} × {})", figure(v), figure(h), figure(modulus.psi()), figure(area), figure(b)),
        (lean.bending.inches(), "in"),
        source,
    );
    let sheared = format!("{} × {} / (1,000 × {})", figure(v), figure(h), figure(kips));
    part.step("Δ_v", "panels and their nails, vh/(1000 G_a)", sheared, (lean.shear.inches(), "in"), source);
    let turned = format!("{} × {} / {}", figure(h), figure(gives.inches()), figure(b));
    part.step("Δ_a", "what gives at the hold-down, hΔ/b", turned, (lean.anchorage.inches(), "in"), source);
    part.step("δ", "in all", "", (lean.total().inches(), "in"), Basis::Arithmetic);
    let four = is_for_four_terms(reading, strength).then(|| in_four(&mut part, nailing, (&wall, shear), gives));
    Some(Lean { three: lean.total(), four: four.flatten(), part })
}

/// The slip of nails is printed for framing that was dry, and the four terms for panels of one kind with all edges nailed.
fn is_for_four_terms(reading: &Reading, strength: &Strength) -> bool {
    strength.blocked && strength.second.is_none() && reading.word("nailed_wet") == Some("no")
}

/// The lean in four terms, of strand board; none where the nail has no slip or the panel no rigidity.
fn in_four(
    part: &mut Part,
    nailing: &Nailing,
    (wall, shear): (&LeaningWall, LineLoad),
    gives: Length,
) -> Option<Length> {
    let rigidity = panel_rigidity(PanelMake::StrandBoard, nailing.thickness).ok()?;
    let a_face = shear / if nailing.both_faces { 2.0 } else { 1.0 };
    let on_a_nail = a_face * nailing.edge;
    let slip = nail_slip(nailing.fastener, on_a_nail, nailing.sheathing == Sheathing::StructuralI)?;
    let bending = four_terms(wall, shear, rigidity, slip, gives).bending;
    let lean = deflection::Lean { bending, ..four_terms(wall, a_face, rigidity, slip, gives) };
    let source = Basis::Published(deflection::FOUR_TERMS);
    let (v, h) = (a_face.plf(), wall.height.feet());
    let load = format!("{} × {} / 12", figure(v), figure(nailing.edge.inches()));
    part.step("V_n", "a nail is given", load, (on_a_nail.pounds(), "lb"), Basis::Arithmetic);
    part.step("e_n", "it slips", "", (slip.inches(), "in"), Basis::Published(deflection::NAIL_SLIP));
    let sheared = format!("{} × {} / {}", figure(v), figure(h), figure(rigidity.pounds_per_inch()));
    part.step("Δ_v", "panels alone, vh/(G_v t_v)", sheared, (lean.shear.inches(), "in"), source);
    let slipped = format!("0.75 × {} × {}", figure(h), figure(slip.inches()));
    part.step("Δ_n", "nails, 0.75 h e_n", slipped, (lean.slip.inches(), "in"), source);
    part.step("δ", "in all by four terms", "", (lean.total().inches(), "in"), Basis::Arithmetic);
    Some(lean.total())
}

/// Both leans as facts, and why they differ.
pub(super) fn say(reply: &mut QuickReply, about: &mut About<'_>, lean: Lean, height: Length) {
    let of_height = if lean.three > Length::ZERO { height / lean.three } else { f64::INFINITY };
    let written = format!("{}, the height over {}", words::inches(lean.three), figure(of_height.floor()));
    reply.facts.push(fact("lean_in", "it leans in this push", lean.three.inches(), written));
    if let Some(four) = lean.four {
        let inches = |lean: Length| figure(lean.inches());
        let written = format!("{} in, beside {} in", inches(four), inches(lean.three));
        reply.facts.push(fact("lean_four_terms_in", "by the equation in four terms", four.inches(), written));
        about.say("The two equations differ: three terms have one stiffness at all loads, that of 1.4 times the allowable unit shear for earthquakes; four terms have the slip of the nails at this load. Take the larger.");
    }
    about.part(lean.part);
}
