//! Sag under live and total load.

use measure::Ratio;

use super::{Sheet, adjusted_step, quotient};
use crate::header::result::{Check, Limit};
use crate::working::{Basis, Part, figure};

pub(super) fn sag_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let live = check.limit == Limit::LiveDeflection;
    let mut part = Part::new(if live { "Sag under live load" } else { "Sag under total load" });
    let Some(demand) = sheet.demand(check) else { return part };
    let Some(strength) = sheet.strengths(demand.duration) else { return part };
    let load = if live { demand.transient } else { demand.total };
    let inertia = sheet.tried.member.section().second_moment_strong;
    adjusted_step(&mut part, &strength.e, "modulus of elasticity");
    part.step(
        "Δ",
        "sag at mid-span; wood goes on sagging for years under lasting load, which is not in it",
        format!(
            "5 × {} plf / 12 × ({} in)⁴ / (384 × {} × {})",
            figure(load.plf()),
            figure(sheet.span.inches()),
            figure(strength.e.value.psi()),
            figure(inertia.inches_fourth())
        ),
        (check.demand, "in"),
        Basis::Arithmetic,
    );
    let (limit, input): (Ratio, _) = if live {
        (sheet.case.input.limits.live, "live_limit")
    } else {
        (sheet.case.input.limits.total, "total_limit")
    };
    let allowed = format!("{} in / {}", figure(sheet.span.inches()), figure(limit));
    part.step("", "sag allowed", allowed, (check.capacity, "in"), Basis::Input(input));
    sheet.share(&mut part, check, quotient(check));
    part
}
