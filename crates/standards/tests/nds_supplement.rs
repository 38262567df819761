//! The tables of the NDS Supplement as built, against their text under `data/`, and the shape that tables have.

#![expect(clippy::panic, reason = "a panic in a test is the report")]

use std::collections::BTreeSet;

use measure::Length;
use standards::{
    Status,
    nds_2018::supplement::{
        DRESSED_SIZE, DesignValues, GLULAM, LVL, PrintedGrade, SAWN, SizeClass, SpeciesGroup, dressed_size, glulam,
        lvl, sawn,
    },
};

const VALUES: &str = include_str!("../data/nds_supplement_2018/reference_design_values.csv");
const SIZES: &str = include_str!("../data/nds_supplement_2018/dressed_sizes.csv");

fn rows(text: &str) -> Vec<std::collections::BTreeMap<String, String>> {
    csv::Reader::from_reader(text.as_bytes()).deserialize().map(Result::unwrap).collect()
}

fn built() -> impl Iterator<Item = &'static DesignValues> {
    let sawn = SAWN.iter().map(|(_, row)| row);
    sawn.chain(GLULAM.iter().map(|(_, row)| row)).chain(LVL.iter().map(|(_, row)| row))
}

fn status(word: &str) -> Status {
    match word {
        "looked-up" => Status::LookedUp,
        "partly-looked-up" => Status::PartlyLookedUp,
        "disputed" => Status::Disputed,
        "from-memory" => Status::FromMemory,
        other => panic!("unknown status {other}"),
    }
}

/// Every number of every row, written out again, is the text it came from.
#[test]
fn every_design_value_is_the_printed_text() {
    let printed = rows(VALUES);
    assert_eq!(printed.len(), built().count());
    for (printed, built) in printed.iter().zip(built()) {
        let whole = |stress: measure::Stress| format!("{}", stress.psi());
        let cells = [
            ("fb_psi", whole(built.fb)),
            ("ft_psi", whole(built.ft)),
            ("fv_psi", whole(built.fv)),
            ("fc_perp_psi", whole(built.fc_perp)),
            ("fc_psi", whole(built.fc)),
            ("e_psi", whole(built.e)),
            ("emin_psi", whole(built.e_min)),
            ("sg", format!("{}", built.specific_gravity)),
            ("size_class", built.size_class.to_owned()),
            ("source", built.provenance.to_owned()),
        ];
        for (column, text) in cells {
            assert_eq!(printed[column], text, "{column} of {printed:?}");
        }
        assert_eq!(status(&printed["status"]), built.source.status, "{printed:?}");
        assert!(printed["table"].ends_with(built.source.place) || built.source.document == printed["table"]);
    }
}

/// The names in the text and the keys of the built table say the same species and grade.
#[test]
fn every_key_is_the_printed_name() {
    let letters = |text: &str| text.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_lowercase();
    for (printed, ((species, grade, _), _)) in rows(VALUES).iter().zip(&SAWN) {
        let name = letters(&printed["grade"]).replace("btr", "andbetter");
        assert_eq!(letters(&printed["species"]), letters(&format!("{species:?}")));
        assert_eq!(name, letters(&format!("{grade:?}")));
    }
}

#[test]
fn every_row_is_found_by_its_key_and_by_no_other() {
    let keys: BTreeSet<_> = SAWN.iter().map(|(key, _)| *key).collect();
    assert_eq!(keys.len(), SAWN.len());
    for (key, row) in &SAWN {
        assert_eq!(sawn(*key), Some(row));
    }
    for (key, row) in &GLULAM {
        assert_eq!(glulam(*key), Some(row));
    }
    for (key, row) in &LVL {
        assert_eq!(lvl(*key), row);
    }
    for (key, row) in &DRESSED_SIZE {
        assert_eq!(dressed_size(*key), Some(row));
    }
    let none = (SpeciesGroup::HemFir, PrintedGrade::No1, SizeClass::BeamsAndStringers);
    assert_eq!(sawn(none), None);
    assert_eq!(dressed_size((2, 7)), None);
}

/// Grades from strong to weak, where one table holds them side by side.
const FALLING: [&[PrintedGrade]; 3] = [
    &[
        PrintedGrade::SelectStructural,
        PrintedGrade::No1AndBetter,
        PrintedGrade::No1,
        PrintedGrade::No1No2,
        PrintedGrade::No2,
        PrintedGrade::No3,
        PrintedGrade::No3AndStud,
    ],
    &[
        PrintedGrade::DenseSelectStructural,
        PrintedGrade::SelectStructural,
        PrintedGrade::NonDenseSelectStructural,
        PrintedGrade::No1NonDense,
        PrintedGrade::No2NonDense,
    ],
    &[PrintedGrade::Construction, PrintedGrade::Standard, PrintedGrade::Utility],
];

/// Within a species and a size no stress rises as the grade falls.
#[test]
fn values_fall_with_the_grade() {
    let groups: BTreeSet<_> = SAWN.iter().map(|((species, _, class), _)| (*species, *class)).collect();
    for (species, class) in groups {
        for grades in FALLING {
            let ladder: Vec<_> = grades.iter().filter_map(|grade| sawn((species, *grade, class))).collect();
            for pair in ladder.windows(2) {
                let [better, worse] = [pair[0], pair[1]];
                let columns = [
                    (better.fb, worse.fb),
                    (better.ft, worse.ft),
                    (better.fc, worse.fc),
                    (better.e, worse.e),
                    (better.e_min, worse.e_min),
                ];
                for (better, worse) in columns {
                    assert!(better >= worse, "{species:?} {class:?}: {worse:?} over {better:?}");
                }
            }
        }
    }
}

/// Southern Pine is printed by width: the wider the piece, the less it may be bent, pulled and pressed.
#[test]
fn southern_pine_falls_with_the_width() {
    const WIDTHS: [SizeClass; 5] = [
        SizeClass::SouthernPineTwoToFourWide,
        SizeClass::SouthernPineFiveToSixWide,
        SizeClass::SouthernPineEightWide,
        SizeClass::SouthernPineTenWide,
        SizeClass::SouthernPineTwelveWide,
    ];
    let of_grade = |grade| WIDTHS.map(|class| sawn((SpeciesGroup::SouthernPine, grade, class)));
    let grades: BTreeSet<_> =
        SAWN.iter().filter(|((_, _, class), _)| *class == WIDTHS[0]).map(|((_, grade, _), _)| *grade).collect();
    assert_eq!(grades.len(), 10);
    for grade in grades {
        let ladder = of_grade(grade).map(Option::unwrap);
        for pair in ladder.windows(2) {
            assert!(pair[0].fb > pair[1].fb && pair[0].ft > pair[1].ft && pair[0].fc >= pair[1].fc, "{grade:?}");
            assert_eq!((pair[0].e, pair[0].fv), (pair[1].e, pair[1].fv), "{grade:?}");
        }
    }
}

/// NDS Appendix D (from memory): `E_min` is 0.365 of `E` for sawn lumber (variation 25 %), rounded to 10,000 psi.
#[test]
fn stability_modulus_follows_the_modulus() {
    for ((species, grade, class), row) in &SAWN {
        let exact = 1.03 * row.e.psi() * (1.0 - 1.645 * 0.25) / 1.66;
        let off = (row.e_min.psi() - exact).abs();
        assert!(off <= 5_000.0, "{species:?} {grade:?} {class:?}: {} against {exact}", row.e_min.psi());
    }
}

/// Sizes as printed in Table 1A become the same numbers of inches.
#[test]
fn every_dressed_size_is_the_printed_text() {
    let printed = rows(SIZES);
    assert_eq!(printed.len(), DRESSED_SIZE.len());
    for (printed, ((thickness, width), built)) in printed.iter().zip(&DRESSED_SIZE) {
        assert_eq!(printed["nominal"], built.nominal);
        assert_eq!(format!("{thickness}x{width}"), built.nominal);
        assert_eq!(printed["breadth_in"], fraction(built.breadth));
        assert_eq!(printed["depth_in"], fraction(built.depth));
        assert_eq!(status(&printed["status"]), built.source.status);
    }
}

/// Quarters of an inch as the table prints them.
fn fraction(length: Length) -> String {
    let whole = length.inches().floor();
    let part = match (length.inches() - whole) * 4.0 {
        0.0 => "",
        1.0 => "-1/4",
        2.0 => "-1/2",
        3.0 => "-3/4",
        other => panic!("{other} quarters"),
    };
    format!("{whole}{part}")
}

/// Within a thickness the sizes ascend, each a little under its name.
#[test]
fn sizes_ascend_and_are_under_their_names() {
    for pair in DRESSED_SIZE.windows(2) {
        let [(key, size), (next_key, next)] = [pair[0], pair[1]];
        assert!(key < next_key);
        assert!(key.0 != next_key.0 || size.depth < next.depth);
    }
    for ((thickness, width), size) in &DRESSED_SIZE {
        let under = |nominal: u8, dressed: Length| f64::from(nominal) - dressed.inches();
        assert_eq!(under(*thickness, size.breadth), 0.5);
        assert_eq!(under(*width, size.depth), if *width > 6 { 0.75 } else { 0.5 });
    }
}
