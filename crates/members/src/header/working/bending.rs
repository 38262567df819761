//! Bending with lateral stability, and shear.

use lumber::Adjusted;
use measure::Length;
use standards::nds_2018::chapter_3::{self, BendingCase};
use standards::{Source, Status};

use super::{Sheet, adjusted_step, quotient};
use crate::header::demand::Demand;
use crate::header::input::Above;
use crate::header::result::Check;
use crate::working::{Basis, Part, figure};

pub(super) fn bending_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Bending");
    let Some(demand) = sheet.demand(check) else { return part };
    let Some(strength) = sheet.strengths(demand.duration) else { return part };
    sheet.strong_bending(&mut part, demand, &strength);
    part.step("F_b'", "bending strength", "", (check.capacity, "psi"), Basis::Arithmetic);
    sheet.share(&mut part, check, quotient(check));
    part
}

pub(super) fn shear_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Shear");
    let Some(demand) = sheet.demand(check) else { return part };
    let Some(strength) = sheet.strengths(demand.duration) else { return part };
    let section = sheet.tried.member.section();
    let half = sheet.case.input.opening / 2.0;
    let shear = demand.total * (half - section.depth).max(Length::ZERO);
    part.step(
        "V",
        "shear a depth away from the support",
        format!(
            "{} plf × ({} − {}) / 12",
            figure(demand.total.plf()),
            figure(half.inches()),
            figure(section.depth.inches())
        ),
        (shear.pounds(), "lb"),
        Basis::Published(Source::new("NDS 2018", "§3.4.3.1", Status::LookedUp)),
    );
    let stress = chapter_3::rectangular_shear_stress(shear, section.breadth, section.depth);
    part.step(
        "f_v",
        "shear stress",
        format!(
            "3 × {} / (2 × {} × {})",
            figure(shear.pounds()),
            figure(section.breadth.inches()),
            figure(section.depth.inches())
        ),
        (stress.value.psi(), "psi"),
        Basis::Published(stress.source),
    );
    adjusted_step(&mut part, &strength.fv, "shear strength");
    sheet.share(&mut part, check, quotient(check));
    part
}

pub(super) fn slenderness_part(check: &Check, sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Slenderness");
    let section = sheet.tried.member.section();
    let expression = format!(
        "√(l_e × {} / {}²), over {}",
        figure(section.depth.inches()),
        figure(section.breadth.inches()),
        figure(check.capacity)
    );
    let limit = Source::new("NDS 2018", "§3.3.3.7", Status::LookedUp);
    part.step(
        "R_B",
        "more than is allowed with nothing to hold its top",
        expression,
        (check.demand, ""),
        Basis::Published(limit),
    );
    part
}

impl Sheet<'_> {
    /// The bending stress under a load and the strength against it, down the narrow faces.
    pub(super) fn strong_bending(&self, part: &mut Part, demand: &Demand, strength: &Adjusted) {
        let section = self.tried.member.section();
        let moment = demand.total * self.span * self.span / 8.0;
        part.step(
            "M",
            "moment at mid-span",
            format!("{} plf × ({} ft)² / 8", figure(demand.total.plf()), figure(self.span.feet())),
            (moment.foot_pounds(), "ft-lb"),
            Basis::Arithmetic,
        );
        let modulus = section.section_modulus_strong;
        part.step(
            "f_b",
            "bending stress",
            format!("{} × 12 / {} in³", figure(moment.foot_pounds()), figure(modulus.cubic_inches())),
            ((moment / modulus).psi(), "psi"),
            Basis::Arithmetic,
        );
        adjusted_step(part, &strength.fb_star, "bending strength before stability");
        self.stability(part, strength);
    }

    pub(super) fn stability(&self, part: &mut Part, strength: &Adjusted) {
        let input = self.case.input;
        let section = self.tried.member.section();
        if input.above == Some(Above::FramingBears) || section.depth <= section.breadth {
            let held = Source::new("NDS 2018", "§3.3.3.3", Status::FromMemory);
            part.step("C_L", "beam stability: the top edge is held", "1.0", (1.0, ""), Basis::Published(held));
        } else {
            self.unbraced(part, strength);
        }
        if let Some(volume) = self.tried.member.volume_factor(self.span) {
            part.step(
                "C_V",
                "volume factor; the lesser of C_L and C_V counts",
                "",
                (volume.value, ""),
                Basis::Published(volume.source),
            );
        }
    }

    pub(super) fn unbraced(&self, part: &mut Part, strength: &Adjusted) {
        let section = self.tried.member.section();
        let (depth, breadth) = (section.depth, section.breadth);
        let effective = chapter_3::effective_length(BendingCase::SimpleUniform, self.span, depth);
        part.step(
            "l_e",
            "effective length: nothing holds the top edge between the ends",
            format!("l_u {} in, d {} in", figure(self.span.inches()), figure(depth.inches())),
            (effective.value.inches(), "in"),
            Basis::Published(effective.source),
        );
        let Ok(slenderness) = chapter_3::slenderness_ratio(effective.value, depth, breadth) else { return };
        part.step(
            "R_B",
            "slenderness ratio, the plies rolling as one",
            format!(
                "√({} × {} / {}²)",
                figure(effective.value.inches()),
                figure(depth.inches()),
                figure(breadth.inches())
            ),
            (slenderness.value, ""),
            Basis::Published(slenderness.source),
        );
        let Ok(critical) = chapter_3::critical_buckling_stress(strength.e_min_weak.value, slenderness.value) else {
            return;
        };
        part.step(
            "F_bE",
            "critical buckling stress",
            format!("1.20 × {} / {}²", figure(strength.e_min_weak.value.psi()), figure(slenderness.value)),
            (critical.value.psi(), "psi"),
            Basis::Published(critical.source),
        );
        let Ok(factor) = chapter_3::beam_stability_factor(critical.value, strength.fb_star.value) else { return };
        part.step("C_L", "beam stability factor", "", (factor.value, ""), Basis::Published(factor.source));
    }
}
