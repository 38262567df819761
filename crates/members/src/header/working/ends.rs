//! Where the header sits: the load on the jacks, crushing, the jacks as columns, the plate under them.

use measure::{Force, Length};
use standards::nds_2018::chapter_3;
use standards::{Source, Status};

use super::{Sheet, adjusted_step, jacks_in_words, quotient};
use crate::header::demand::{Demand, JACK_THICKNESS};
use crate::header::result::Check;
use crate::working::{Basis, Part, figure};

pub(super) fn reaction(part: &mut Part, demand: &Demand, sheet: &Sheet<'_>) -> Force {
    let reaction = demand.total * sheet.span / 2.0;
    part.step(
        "R",
        "load on each side's jacks",
        format!("{} plf × {} ft / 2", figure(demand.total.plf()), figure(sheet.span.feet())),
        (reaction.pounds(), "lb"),
        Basis::Arithmetic,
    );
    reaction
}

pub(super) fn bearing_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Bearing on the jacks");
    let Some(demand) = sheet.demand(check) else { return part };
    let Some(strength) = sheet.strengths(demand.duration) else { return part };
    let reaction = reaction(&mut part, demand, sheet);
    let breadth = sheet.tried.member.section().breadth.min(sheet.case.input.wall.stud.depth());
    crushing(&mut part, reaction, breadth, sheet.jacks);
    adjusted_step(&mut part, &strength.fc_perp, "strength across the grain; no gain from duration");
    sheet.share(&mut part, check, quotient(check));
    part
}

pub(super) fn crushing(part: &mut Part, reaction: Force, breadth: Length, jacks: u8) {
    let length = JACK_THICKNESS * f64::from(jacks);
    let stress = chapter_3::bearing_stress(reaction, breadth, length);
    part.step(
        "f_c⊥",
        format!("crushing on {}", jacks_in_words(jacks)),
        format!("{} / ({} × {})", figure(reaction.pounds()), figure(breadth.inches()), figure(length.inches())),
        (stress.value.psi(), "psi"),
        Basis::Published(stress.source),
    );
}

pub(super) fn jack_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Jacks as columns");
    let Some(demand) = sheet.demand(check) else { return part };
    reaction(&mut part, demand, sheet);
    let jacks = sheet.case.jacks;
    part.step(
        "l_e/d",
        "slenderness through the wall; the king and the sheathing hold the other way",
        format!("{} / {}", figure(jacks.length.inches()), figure(sheet.case.input.wall.stud.depth().inches())),
        (jacks.slenderness, ""),
        Basis::Published(Source::new("NDS 2018", "§3.7.1", Status::LookedUp)),
    );
    part.step(
        "P'",
        format!("what {} can carry", jacks_in_words(sheet.jacks)),
        format!("{} × {} lb", sheet.jacks, figure(jacks.capacity(demand.duration).pounds())),
        (check.capacity, "lb"),
        Basis::Published(Source::new("NDS 2018", "Eq. 3.7-1", Status::Computed)),
    );
    sheet.share(&mut part, check, quotient(check));
    part
}

pub(super) fn plate_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Bearing on the bottom plate");
    let Some(demand) = sheet.demand(check) else { return part };
    let reaction = reaction(&mut part, demand, sheet);
    crushing(&mut part, reaction, sheet.case.input.wall.stud.depth(), sheet.jacks);
    part.step("F_c⊥'", "plate of the same wood", "", (check.capacity, "psi"), Basis::Input("species"));
    sheet.share(&mut part, check, quotient(check));
    part
}
