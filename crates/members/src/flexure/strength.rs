//! What a piece has to set against what is asked of it.

use core::cell::OnceCell;

use lumber::{AdjustedStresses, Conditions, DesignBasis, Family, LoadDuration, Member, Product, SheetJoist};
use measure::{Area, FlexuralRigidity, Force, Length, LineLoad, Moment, Ratio, Stress};
use standards::nds_2018::chapter_3::{self, BendingCase};
use standards::nds_2018::chapter_4::{LateralSupport, lateral_support_for_full_strength};

use super::input::{FlexureInput, Held};
use crate::beam::StretchKind;

/// What a member is made of.
#[derive(Clone, Debug, PartialEq)]
pub enum Piece {
    /// Lumber, by its stresses.
    Lumber(Member),
    /// An engineered joist, by its maker's sheet.
    Sheet(SheetJoist),
}

impl Piece {
    /// Its name.
    #[must_use]
    pub fn name(&self) -> String {
        match self {
            Self::Lumber(member) => member.name(),
            Self::Sheet(joist) => joist.name().to_owned(),
        }
    }

    /// Its kind.
    #[must_use]
    pub const fn family(&self) -> Family {
        match self {
            Self::Lumber(member) => member.family(),
            Self::Sheet(_) => Family::Labelled,
        }
    }

    /// Its depth.
    #[must_use]
    pub fn depth(&self) -> Length {
        match self {
            Self::Lumber(member) => member.section().depth,
            Self::Sheet(joist) => joist.depth(),
        }
    }

    /// Its breadth.
    #[must_use]
    pub fn breadth(&self) -> Length {
        match self {
            Self::Lumber(member) => member.section().breadth,
            Self::Sheet(joist) => joist.breadth(),
        }
    }

    /// Area of its section; of an engineered joist, of the rectangle around it.
    #[must_use]
    pub fn area(&self) -> Area {
        self.breadth() * self.depth()
    }

    /// Its own weight along it.
    #[must_use]
    pub fn self_weight(&self) -> LineLoad {
        match self {
            Self::Lumber(member) => member.self_weight(),
            Self::Sheet(joist) => joist.weight(),
        }
    }

    /// The lumber, where it is lumber.
    #[must_use]
    pub const fn member(&self) -> Option<&Member> {
        match self {
            Self::Lumber(member) => Some(member),
            Self::Sheet(_) => None,
        }
    }
}

/// Conditions of use of a piece: three or more sawn plies that share their load are repetitive members.
pub(super) fn conditions(piece: &Piece, input: &FlexureInput) -> Conditions {
    let plies = piece.member().map_or(1, Member::plies);
    let shared = piece.family() == Family::BuiltUp2x && plies >= 3 && input.plies_share_load;
    Conditions { repetitive: input.conditions.repetitive || shared, ..input.conditions }
}

/// What bending does at an edge: none where a stretch is not held well enough for the standard to give a number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Rolling {
    /// It cannot roll.
    Held,
    /// It rolls at this stress.
    At(Stress),
    /// It is slenderer than the standard allows, by this ratio of 50.
    TooSlender(Ratio),
}

/// A piece ready to be judged.
pub(super) enum Strength<'p> {
    Lumber { member: &'p Member, at: Box<ByDuration> },
    Sheet(&'p SheetJoist),
}

/// Stresses of a piece.
pub(crate) struct ByDuration {
    basis: DesignBasis,
    lasting: AdjustedStresses,
    of: [OnceCell<Timed>; LoadDuration::ALL.len()],
}

/// Those that go with the duration of a load.
#[derive(Clone, Copy, Debug)]
pub(super) struct Timed {
    pub(super) fb_star: Stress,
    pub(super) fv: Stress,
}

impl ByDuration {
    fn of(basis: DesignBasis) -> Self {
        let lasting = basis.stresses(LoadDuration::ALL[0]);
        Self { basis, lasting, of: [const { OnceCell::new() }; LoadDuration::ALL.len()] }
    }

    /// Worked when first asked for: most loads have two or three durations.
    pub(super) fn at(&self, duration: LoadDuration) -> Timed {
        *self.of[duration as usize].get_or_init(|| {
            let (fb_star, fv) = self.basis.bending_and_shear(duration);
            Timed { fb_star, fv }
        })
    }

    /// For what no duration changes: stiffness, and crushing across the grain.
    pub(super) const fn lasting(&self) -> &AdjustedStresses {
        &self.lasting
    }
}

impl<'p> Strength<'p> {
    pub(super) fn of(piece: &'p Piece, input: &FlexureInput) -> Result<Self, String> {
        match piece {
            Piece::Lumber(member) => {
                let basis = member.design_basis(&conditions(piece, input)).map_err(|problem| problem.to_string())?;
                Ok(Self::Lumber { member, at: Box::new(ByDuration::of(basis)) })
            }
            Piece::Sheet(joist) => {
                if input.edges.top != Held::Along {
                    return Err(
                        "The maker's numbers hold for a joist whose top flange is held all along. The maker says what \
                         it carries otherwise."
                            .to_owned(),
                    );
                }
                Ok(Self::Sheet(joist))
            }
        }
    }

    /// Bending stiffness.
    pub(super) fn rigidity(&self) -> FlexuralRigidity {
        match self {
            Self::Lumber { member, at } => at.lasting().e * member.section().second_moment_strong,
            Self::Sheet(joist) => joist.ei(),
        }
    }

    /// What a uniform moment of an inch-pound adds to the sag by shear, inches.
    pub(super) fn shear_sag(&self, moment: Moment) -> Length {
        match self {
            Self::Sheet(joist) => joist.shear_stiffness().map_or(Length::ZERO, |k| moment * 8.0 / k),
            Self::Lumber { .. } => Length::ZERO,
        }
    }

    /// How an edge of a stretch can roll.
    pub(super) fn rolling(&self, held: Held, kind: StretchKind, stretch: Length) -> Rolling {
        let Self::Lumber { member, at } = self else { return Rolling::Held };
        let section = member.section();
        let unbraced = match held {
            Held::Along => return Rolling::Held,
            Held::Every(apart) => apart.min(stretch),
            Held::AtSupports => stretch,
        };
        if section.depth <= section.breadth || (held == Held::AtSupports && needs_its_ends_only(member)) {
            return Rolling::Held;
        }
        let case = match (kind, held) {
            (StretchKind::Span, Held::AtSupports) => BendingCase::SimpleUniform,
            (StretchKind::Span, _) => BendingCase::AnyOther,
            _ => BendingCase::CantileverEndPoint,
        };
        let effective = chapter_3::effective_length(case, unbraced, section.depth).value;
        match chapter_3::slenderness_ratio(effective, section.depth, section.breadth) {
            Err(outside) => Rolling::TooSlender(outside.given / MOST_SLENDER),
            Ok(ratio) => chapter_3::critical_buckling_stress(at.lasting().e_min_weak, ratio.value)
                .map_or(Rolling::TooSlender(1.0), |critical| Rolling::At(critical.value)),
        }
    }

    /// The moment that it carries, as a stress or as itself: what is asked and what there is, with the unit.
    pub(super) fn bending(
        &self,
        moment: Moment,
        duration: LoadDuration,
        rolling: Rolling,
        span: Length,
    ) -> (f64, f64, &'static str) {
        self.bending_with(moment, duration, rolling, self.volume(span))
    }

    /// What a long, deep piece loses; one where it loses nothing.
    fn volume(&self, span: Length) -> Ratio {
        match self {
            Self::Lumber { member, .. } => member.volume_factor(span).map_or(1.0, |factor| factor.value),
            Self::Sheet(_) => 1.0,
        }
    }

    fn bending_with(
        &self,
        moment: Moment,
        duration: LoadDuration,
        rolling: Rolling,
        volume: Ratio,
    ) -> (f64, f64, &'static str) {
        match self {
            Self::Lumber { member, at } => {
                let strength = at.at(duration);
                let stability = stability(rolling, strength.fb_star);
                let allowed = strength.fb_star * stability.min(volume);
                ((moment / member.section().section_modulus_strong).psi(), allowed.psi(), "psi")
            }
            Self::Sheet(joist) => {
                let carries = joist.moment().foot_pounds() * duration.factor().value;
                (moment.foot_pounds(), carries, "ft-lb")
            }
        }
    }

    /// The share of its bending that a moment of an inch-pound uses, for each duration, in the order of
    /// [`LoadDuration::ALL`]; none for those that are not asked for.
    pub(super) fn bending_by_one(
        &self,
        rolling: Rolling,
        span: Length,
        asked: [bool; LoadDuration::ALL.len()],
    ) -> [Option<Ratio>; LoadDuration::ALL.len()] {
        let (one, volume) = (Moment::from_inch_pounds(1.0), self.volume(span));
        LoadDuration::ALL.map(|duration| {
            let share = || {
                let (demand, capacity, _) = self.bending_with(one, duration, rolling, volume);
                demand / capacity
            };
            asked[duration as usize].then(share)
        })
    }

    /// The shear that it carries.
    pub(super) fn shear(&self, shear: Force, duration: LoadDuration) -> (f64, f64, &'static str) {
        match self {
            Self::Lumber { member, at } => {
                let section = member.section();
                let stress = chapter_3::rectangular_shear_stress(shear, section.breadth, section.depth).value;
                (stress.psi(), at.at(duration).fv.psi(), "psi")
            }
            Self::Sheet(joist) => (shear.pounds(), joist.shear().pounds() * duration.factor().value, "lb"),
        }
    }

    /// The reaction that it takes on a bearing, so far from its end.
    pub(super) fn bearing(
        &self,
        reaction: Force,
        length: Length,
        below: Option<Stress>,
        (interior, to_end): (bool, Length),
    ) -> (f64, f64, &'static str) {
        match self {
            Self::Lumber { member, at } => {
                let stress = chapter_3::bearing_stress(reaction, member.section().breadth, length).value;
                let helped = chapter_3::bearing_area_factor(length, to_end).map_or(1.0, |factor| factor.value);
                let own = at.lasting().fc_perp * helped;
                (stress.psi(), below.map_or(own, |below| below.min(own)).psi(), "psi")
            }
            Self::Sheet(joist) => {
                let takes = joist.reaction(interior);
                let takes = below.map_or(takes, |below| takes.min(below * (joist.breadth() * length)));
                (reaction.pounds(), takes.pounds(), "lb")
            }
        }
    }
}

/// A single sawn piece whose depth is no more than four times its breadth, by their names: held at its ends it cannot roll
/// (NDS 2018 4.4.1.2).
fn needs_its_ends_only(member: &Member) -> bool {
    let Product::Sawn(sawn) = member.product() else { return false };
    member.plies() == 1
        && lateral_support_for_full_strength(sawn.size.nominal_width(), sawn.size.nominal_thickness())
            .is_ok_and(|support| matches!(support.value, LateralSupport::None | LateralSupport::EndsHeld))
}

/// The most that the slenderness ratio `R_B` may be (NDS 2018 3.3.3.7).
pub(super) const MOST_SLENDER: Ratio = 50.0;

/// `C_L`.
pub(super) fn stability(rolling: Rolling, fb_star: Stress) -> Ratio {
    match rolling {
        Rolling::Held => 1.0,
        Rolling::At(critical) => chapter_3::beam_stability_factor(critical, fb_star).map_or(0.0, |factor| factor.value),
        // The slenderness is a check of its own; the number that goes with it here is that of the limit.
        Rolling::TooSlender(_) => 1.0,
    }
}
