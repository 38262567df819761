//! The generated tables of nails, nailing and studs against the printed text, and what can be read from them.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use std::collections::BTreeSet;

use measure::{Length, Speed};
use standards::{
    Status,
    irc_2021::{
        r301::ExposureCategory,
        r602_3_1::{ScheduleDriven, ScheduleFastener, TABLE_R602_3_1, alternatives, connections, find_connections},
        r602_3_2::{TABLE_R602_3_2, alternate_attachments},
        r602_3_3::{TABLE_R602_3_3, wall_sheathing},
        r602_3_5::{StudSupporting, TABLE_R602_3_5, bearing_stud, nonbearing_stud},
    },
    nds_2018::{
        appendix_l::{NailKind, TABLE_L4, nail_size},
        chapter_2::{LoadDuration, ServiceMoisture, SustainedTemperature},
        chapter_11::{
            ConnectionMoisture, load_duration_factor, temperature_factor, wet_service_factor_lateral,
            wet_service_factor_withdrawal,
        },
        chapter_12::{diaphragm_factor, end_grain_factor_lateral, toe_nail_factor_lateral, toe_nail_factor_withdrawal},
    },
};

fn printed(name: &str) -> Vec<csv::StringRecord> {
    let path = format!("{}/data/{name}.csv", env!("CARGO_MANIFEST_DIR"));
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).unwrap();
    reader.records().collect::<Result<_, _>>().unwrap()
}

/// A printed length, read as a carpenter reads it.
fn inches(text: &str) -> f64 {
    measure::read_length(text, measure::LengthUnit::Inches).unwrap().length.inches()
}

/// Table L4: every row is built, and a common nail is never thinner than the box nail or the sinker of its name.
#[test]
fn nail_sizes() {
    let rows = printed("nds_2018/table_l4");
    assert_eq!((rows.len(), TABLE_L4.len()), (29, 29));
    for (row, built) in rows.iter().zip(TABLE_L4) {
        let of = (built.kind.name(), format!("{}d", built.penny));
        assert_eq!((&row[0], &row[1]), (of.0, of.1.as_str()));
        assert_eq!(
            [&row[2], &row[3], &row[4]].map(inches),
            [built.length, built.diameter, built.head].map(Length::inches)
        );
        let common = nail_size(NailKind::Common, built.penny).unwrap();
        assert!(common.diameter >= built.diameter && common.length >= built.length);
        assert!(built.head > built.diameter && built.source().place == "Table L4");
    }
    let status = |kind, penny| nail_size(kind, penny).map(|size| size.status);
    assert_eq!(status(NailKind::Common, 8), Some(Status::LookedUp));
    assert_eq!(status(NailKind::Sinker, 8), Some(Status::FromMemory));
    assert_eq!(nail_size(NailKind::Box, 6).map(|size| size.head_status), Some(Status::Disputed));
    assert_eq!(nail_size(NailKind::Box, 60), None);
}

/// Table R602.3(1): every row is built, and a nail with a penny name is the nail of Table L4.
#[test]
fn fastening_schedule() {
    let rows = printed("irc_2021/table_r602_3_1");
    assert_eq!(rows.len(), TABLE_R602_3_1.len());
    for (row, built) in rows.iter().zip(TABLE_R602_3_1) {
        assert_eq!((row[0].to_owned(), &row[2]), (built.item.to_string(), built.connection));
        let optional = |length: Option<Length>| length.map_or(String::new(), |length| length.inches().to_string());
        let count = built.count.map_or(String::new(), |count| count.to_string());
        assert_eq!([&row[3], &row[8], &row[9]], [&count, &optional(built.spacing), &optional(built.field_spacing)]);
        match built.fastener {
            ScheduleFastener::Nail { size, length, diameter } => {
                assert_eq!([&row[5], &row[6]].map(inches), [length, diameter].map(Length::inches));
                assert_eq!(size, &row[4]);
                let penny = size.split_once("d ").and_then(|(penny, kind)| Some((penny.parse().ok()?, kind)));
                if let Some((penny, kind)) = penny {
                    let kind = NailKind::ALL.into_iter().find(|known| known.name() == kind).unwrap();
                    let sheet = nail_size(kind, penny).unwrap();
                    assert_eq!((sheet.length, sheet.diameter), (length, diameter), "{size}");
                }
            }
            ScheduleFastener::Other(words) => assert_eq!(words, &row[7]),
        }
        let how_many = built.count.is_some() || built.spacing.is_some();
        assert!(how_many || built.place == "number from Table R802.5.2", "{}", built.connection);
        assert_eq!(built.source().place, "Table R602.3(1)");
    }
}

/// Source: IRC 2021 Table R602.3(1) items 13 and 17, as a reference page quotes them; 8d common in item 17 disputed.
#[test]
fn reading_the_schedule() {
    assert!((1..=40).all(|item| connections(item).next().is_some()));
    let plates: Vec<_> = alternatives("top plate to top plate").collect();
    assert_eq!(plates.len(), 3);
    let sixteen = plates.iter().find(|row| matches!(row.fastener, ScheduleFastener::Nail { size: "16d common", .. }));
    assert_eq!(sixteen.and_then(|row| row.spacing), Some(Length::from_inches(16.0)));
    let toed: Vec<_> = alternatives("top or bottom plate to stud: toe nailed").collect();
    assert!(toed.iter().all(|row| row.driven == Some(ScheduleDriven::Toe)));
    let disputed: Vec<_> = toed.iter().filter(|row| row.status == Status::Disputed).map(|row| row.count).collect();
    assert_eq!(disputed, [Some(4)]);
    let once: BTreeSet<_> = TABLE_R602_3_1.iter().map(|row| row.connection).collect();
    let listed: Vec<_> = (1..=40).flat_map(connections).collect();
    assert_eq!(listed.len(), once.len(), "a connection is listed twice");
    assert_eq!(alternatives("no such joint").count(), 0);
}

/// Table R602.3(2): every row is built.
#[test]
fn alternate_attachments_of_panels() {
    let rows = printed("irc_2021/table_r602_3_2");
    assert_eq!((rows.len(), TABLE_R602_3_2.len()), (13, 13));
    for (row, built) in rows.iter().zip(TABLE_R602_3_2) {
        let lengths = [built.thinnest, built.thickest, built.spacing, built.field_spacing];
        assert_eq!([&row[0], &row[1], &row[5], &row[6]].map(inches), lengths.map(Length::inches));
        match built.fastener {
            ScheduleFastener::Nail { length, diameter, .. } => {
                assert_eq!([&row[2], &row[3]].map(inches), [length, diameter].map(Length::inches));
            }
            ScheduleFastener::Other(words) => assert_eq!(words, &row[4]),
        }
        assert_eq!((built.status, built.source().place), (Status::FromMemory, "Table R602.3(2)"));
    }
    let count = |panel| alternate_attachments(Length::from_inches(panel)).count();
    assert_eq!([0.0, 0.5, 0.51, 0.6, 0.75, 1.0, 1.01].map(count), [0, 3, 0, 3, 4, 3, 0]);
}

/// Words find a connection in any order and case; what has all of them and nothing else.
#[test]
fn finding_a_connection() {
    let found: Vec<_> = find_connections("STUD plate").collect();
    assert!(found.contains(&"top or bottom plate to stud: toe nailed"));
    assert!(found.iter().all(|name| name.contains("stud") && name.contains("plate")));
    let all = find_connections("a").count();
    assert!(found.len() < all);
    assert_eq!([" ", "no such joint"].map(|text| find_connections(text).count()), [0, 0]);
}

/// Source: IRC 2018 Table R602.3(3), from memory.
#[test]
fn wall_sheathing_by_wind() {
    use ExposureCategory::{B, C, D};
    assert_eq!(TABLE_R602_3_3.len(), 3);
    let found = |studs, mph, exposure| {
        wall_sheathing(Length::from_inches(studs), Speed::from_mph(mph), exposure)
            .map(|row| (row.panel.inches(), row.nail_size))
    };
    let (thin, thick) = ((0.375, "6d common"), (0.4375, "8d common"));
    for (exposure, thin_to, thick_to) in [(B, 140.0, 170.0), (C, 115.0, 140.0), (D, 110.0, 135.0)] {
        assert_eq!(found(16.0, thin_to, exposure), Ok(thin));
        assert_eq!(found(16.0, thin_to + 0.1, exposure), Ok(thick));
        assert_eq!(found(16.0, thick_to, exposure), Ok(thick));
        assert!(found(16.0, thick_to + 0.1, exposure).is_err());
        assert_eq!(found(24.0, thin_to, exposure), Ok(thick));
        assert!(found(24.0, thin_to + 0.1, exposure).is_err());
    }
    let refused = found(24.1, 100.0, B).unwrap_err().to_string();
    assert!(refused.contains("24-1/8\" on center") && refused.contains("engineer"), "{refused}");
    assert!(found(0.0, 100.0, B).is_err() && found(16.0, -1.0, B).is_err());
}

/// Source: IRC Table R602.3(5): 2x4 24, 16, none and 2x6 24, 24, 16 read in a trade field guide; the rest from memory.
#[test]
fn stud_spacings() {
    let feet = Length::from_feet;
    let spacing =
        |size, supporting| bearing_stud(size, feet(10.0), supporting).ok().map(|found| found.spacing.inches());
    let row = |size| StudSupporting::ALL.map(|supporting| spacing(size, supporting));
    assert_eq!(TABLE_R602_3_5.len(), 5);
    assert_eq!(row("2x3"), [None; 4]);
    assert_eq!(row("2x4"), [Some(24.0), Some(16.0), None, Some(24.0)]);
    assert_eq!(row("3x4"), [Some(24.0), Some(24.0), Some(16.0), Some(24.0)]);
    assert_eq!(row("2x5"), [Some(24.0), Some(24.0), None, Some(24.0)]);
    assert_eq!(row("2x6"), [Some(24.0), Some(24.0), Some(16.0), Some(24.0)]);
    assert!(bearing_stud("2x6", feet(10.01), StudSupporting::RoofCeiling).is_err());
    let alone = |size, height| nonbearing_stud(size, feet(height)).map(|found| found.spacing.inches());
    for (size, height, apart) in [("2x3", 10.0, 16.0), ("2x4", 14.0, 24.0), ("2x5", 16.0, 24.0), ("2x6", 20.0, 24.0)] {
        assert_eq!(alone(size, height), Ok(apart));
        assert!(alone(size, height + 0.01).is_err());
    }
    let refused = bearing_stud("2x8", feet(8.0), StudSupporting::RoofCeiling).unwrap_err().to_string();
    assert!(refused.starts_with("Given: 2x8 studs."), "{refused}");
}

/// Source: NDS 2018 §11.3.2, Tables 11.3.3 and 11.3.4, §12.5.
#[test]
fn factors_of_connections() {
    assert_eq!(LoadDuration::ALL.map(|d| load_duration_factor(d).value), [0.9, 1.0, 1.15, 1.25, 1.6, 1.6]);
    use {ServiceMoisture as M, SustainedTemperature as T};
    for (at_fabrication, in_service, lateral, withdrawal) in [
        (M::Dry, M::Dry, 1.0, 1.0),
        (M::Wet, M::Dry, 0.7, 0.25),
        (M::Dry, M::Wet, 0.7, 0.25),
        (M::Wet, M::Wet, 0.7, 1.0),
    ] {
        let moisture = ConnectionMoisture { at_fabrication, in_service };
        assert_eq!(wet_service_factor_lateral(moisture).value, lateral);
        assert_eq!(wet_service_factor_withdrawal(moisture).value, withdrawal);
    }
    for (temperature, dry, wet) in [(T::UpTo100F, 1.0, 1.0), (T::Over100To125F, 0.8, 0.7), (T::Over125To150F, 0.7, 0.5)]
    {
        assert_eq!([M::Dry, M::Wet].map(|service| temperature_factor(temperature, service).value), [dry, wet]);
    }
    let driven =
        [toe_nail_factor_lateral(), toe_nail_factor_withdrawal(), end_grain_factor_lateral(), diaphragm_factor()];
    assert_eq!(driven.map(|factor| factor.value), [0.83, 0.67, 0.67, 1.1]);
}
