//! What must hold for every piece under all conditions.

use crate::common::DRY;
use lumber::{
    Conditions, Grade, LoadDuration, Member, Product, Sawn, SawnSize, ServiceMoisture, Species, SustainedTemperature,
};
use measure::Stress;
use proptest::prelude::*;

fn member() -> impl Strategy<Value = Member> {
    let sizes: Vec<SawnSize> = SawnSize::all().collect();
    let parts = (prop::sample::select(&Species::ALL), prop::sample::select(&Grade::ALL), prop::sample::select(sizes));
    parts
        .prop_map(|(species, grade, size)| Member::single(Product::Sawn(Sawn { species, grade, size })))
        .prop_filter("no value is held", |member| member.reference_values().is_ok())
}

fn duration() -> impl Strategy<Value = LoadDuration> {
    prop::sample::select(&LoadDuration::ALL)
}

fn values(member: &Member, conditions: &Conditions, duration: LoadDuration) -> Vec<Stress> {
    member.adjusted_stresses(conditions, duration).map_or_else(
        |_| Vec::new(),
        |found| {
            let held = [found.fb_weak, found.ft, found.fc_star].into_iter().flatten();
            let always = [found.fb_star, found.fv, found.fc_perp, found.e, found.e_min, found.e_weak, found.e_min_weak];
            always.into_iter().chain(held).collect()
        },
    )
}

fn none_stronger(first: &[Stress], second: &[Stress]) -> bool {
    first.len() == second.len() && first.iter().zip(second).all(|(first, second)| first <= second)
}

proptest! {
    /// Every piece that has a value has a size factor too.
    #[test]
    fn a_piece_with_a_value_has_a_design_basis(member in member()) {
        let problem = member.design_basis(&DRY).err();
        prop_assert!(problem.is_none(), "{}: {problem:?}", member.name());
        prop_assert!(values(&member, &DRY, LoadDuration::TenYears).iter().all(|value| *value > Stress::ZERO));
    }

    #[test]
    fn wetter_hotter_or_slit_is_never_stronger(member in member(), duration in duration()) {
        let wet = Conditions { service: ServiceMoisture::Wet, ..DRY };
        let warm = Conditions { temperature: SustainedTemperature::Over100To125F, ..DRY };
        let hot = Conditions { temperature: SustainedTemperature::Over125To150F, ..DRY };
        let slit = Conditions { incised: true, ..DRY };
        let hot_and_wet = Conditions { service: ServiceMoisture::Wet, ..hot };
        let at = |conditions: &Conditions| values(&member, conditions, duration);
        for worse in [wet, warm, hot, slit, hot_and_wet] {
            prop_assert!(none_stronger(&at(&worse), &at(&DRY)));
        }
        prop_assert!(none_stronger(&at(&hot), &at(&warm)));
        prop_assert!(none_stronger(&at(&hot_and_wet), &at(&wet)));
    }

    /// A shorter load never takes strength away, and changes neither stiffness nor bearing.
    #[test]
    fn a_shorter_load_is_never_harder_to_carry(member in member(), durations in (duration(), duration())) {
        let (long, short) = (durations.0.min(durations.1), durations.0.max(durations.1));
        prop_assert!(none_stronger(&values(&member, &DRY, long), &values(&member, &DRY, short)));
        let fixed = |duration| {
            member.adjusted_stresses(&DRY, duration).map(|found| (found.fc_perp, found.e, found.e_min, found.e_min_weak))
        };
        prop_assert_eq!(fixed(long), fixed(short));
    }

    #[test]
    fn load_sharing_touches_bending_on_edge_alone(member in member(), duration in duration()) {
        let shared = Conditions { repetitive: true, ..DRY };
        let at = |conditions: &Conditions| member.adjusted_stresses(conditions, duration);
        if let (Ok(alone), Ok(together)) = (at(&DRY), at(&shared)) {
            prop_assert!(together.fb_star >= alone.fb_star);
            prop_assert_eq!(lumber::AdjustedStresses { fb_star: alone.fb_star, ..together }, alone);
        }
    }

    /// No text makes the readers stop, and what they refuse they explain.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,24}") {
        for problem in [
            Species::from_text(&text).err(),
            Grade::from_text(&text).err(),
            SawnSize::from_text(&text).err(),
            lumber::species_and_grade(&text).err(),
        ].into_iter().flatten() {
            prop_assert!(problem.to_string().ends_with('.'));
        }
    }
}
