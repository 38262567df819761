//! Wind across the header, together with gravity.

use lumber::Adjusted;
use standards::nds_2018::chapter_2::LoadDuration;
use standards::{Source, Status};

use super::{Sheet, adjusted_step};
use crate::header::result::Check;
use crate::working::{Basis, Part, figure};

pub(super) fn wind_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Wind across the header, with gravity");
    let Some(wind) = &sheet.case.wind else { return part };
    let Some(demand) = sheet.demand(check) else { return part };
    let Some(strength) = sheet.strengths(demand.duration) else { return part };
    wind.steps(&mut part);
    sheet.strong_bending(&mut part, demand, &strength);
    let section = sheet.tried.member.section();
    let across = wind.line_load(demand.wind);
    let moment = across * sheet.span * sheet.span / 8.0;
    part.step(
        "M_2",
        "moment across the header",
        format!("{} plf × ({} ft)² / 8", figure(across.plf()), figure(sheet.span.feet())),
        (moment.foot_pounds(), "ft-lb"),
        Basis::Arithmetic,
    );
    let modulus = section.section_modulus_weak;
    part.step(
        "f_b2",
        "bending stress across it, each ply by itself",
        format!("{} × 12 / {} in³", figure(moment.foot_pounds()), figure(modulus.cubic_inches())),
        ((moment / modulus).psi(), "psi"),
        Basis::Arithmetic,
    );
    flat_step(&mut part, &strength, sheet, demand.duration);
    let combined = Source::new("NDS 2018", "Eq. 3.9-3 with f_c = 0", Status::LookedUp);
    part.step(
        "",
        format!("both ways together, {}", check.combination.name()),
        "",
        (check.share, ""),
        Basis::Published(combined),
    );
    part
}

fn flat_step(part: &mut Part, strength: &Adjusted, sheet: &Sheet<'_>, duration: LoadDuration) {
    if let Some(flat) = &strength.fb_weak {
        adjusted_step(part, flat, "strength across the wide faces");
        return;
    }
    let Ok(edge) = sheet.tried.member.reference_values().map(|values| values.fb) else { return };
    let factor = duration.factor().value;
    let source = Source::new("common practice:", "no flat value is printed, so the edge value", Status::CommonPractice);
    part.step(
        "F_b2'",
        "strength across the wide faces",
        format!("{} × {} C_D", figure(edge.psi()), figure(factor)),
        ((edge * factor).psi(), "psi"),
        Basis::Published(source),
    );
}
