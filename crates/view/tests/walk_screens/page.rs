//! What is put on the page of a look.

use view::markup::{
    Act, assumptions, cautions, walk_checks, walk_facts, walk_findings, walk_questions, walk_readings, walk_remedies,
};
use view::svg::picture;
use view::walk::{InHand, Kind, LookScreen, look};

use crate::{seventeen, shown, typed};

/// Everything that is read on the page of a look.
fn page(screen: &LookScreen) -> String {
    let readings = screen.readings.iter().map(walk_readings);
    let parts = [
        walk_questions(&screen.questions),
        walk_checks(&screen.checks),
        walk_findings(screen),
        walk_remedies(&screen.remedies),
        walk_facts(&screen.facts),
        assumptions(&screen.assumptions),
        cautions(&screen.cautions),
        picture(&screen.picture, (330.0, 200.0), "pulls"),
    ];
    readings.chain(parts).map(maud::PreEscaped::into_string).collect()
}

/// The words of a page, without its marks.
fn words(page: &str) -> String {
    let mut words = String::new();
    let mut inside = false;
    for letter in page.chars() {
        match letter {
            '<' => inside = true,
            '>' => inside = false,
            letter if !inside => words.push(letter),
            _ => {}
        }
    }
    words.replace("&quot;", "\"").replace("&amp;", "&")
}

/// A text with a fraction stands in pieces on the page; without one it stands whole.
#[track_caller]
fn says(page: &str, sentence: &str) {
    assert!(
        sentence.contains('/') || words(page).contains(sentence),
        "{sentence} is not on the page:\n{}",
        words(page)
    );
}

#[test]
fn every_sentence_stands_on_the_page() {
    let screen = seventeen();
    let page = page(&screen);
    for (what, who) in &screen.remedies {
        says(&page, what);
        who.iter().for_each(|who| says(&page, who));
    }
    screen.says.iter().chain(&screen.cautions).for_each(|sentence| says(&page, sentence));
    screen.questions.iter().for_each(|(_, _, question)| says(&page, question));
    screen.assumptions.iter().for_each(|(_, assumed)| says(&page, assumed));
    for (what, value, source) in &screen.facts {
        [what, value, source].into_iter().for_each(|text| says(&page, text));
    }
    for check in &screen.checks {
        [&check.subject, &check.found, &check.margin, &check.word, &check.clause]
            .into_iter()
            .for_each(|text| says(&page, text));
    }
    assert_eq!(page.matches("verdict-beam").count(), screen.checks.len(), "each check has its beam");
}

#[test]
fn a_doubt_stands_under_its_reading_with_the_key_that_it_is_right() {
    let wall = typed(&[("required_spacing", "16")], &[("pulls", &["16", "32", "84", "64"])]);
    let screen = look(Kind::StudSpacing, &wall, InHand { field: "pulls", reading: 4 }, None);
    let page = page(&screen);
    assert!(page.contains("data-act=\"reading pulls 2\"") && page.contains("data-act=\"confirm 2\""), "{page}");
    assert!(page.contains("It is right"), "{page}");
    says(&page, "Perhaps 48\", if two digits changed places.");
    let refused = shown(Kind::StudSpacing, &[], &[("pulls", &["hay"])]);
    assert!(!self::page(&refused).contains("It is right"), "what cannot be read cannot be right");
}

#[test]
fn what_can_be_tapped_is_an_act() {
    let page = page(&seventeen());
    let acts: Vec<&str> = page.split("data-act=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
    assert!(acts.len() > 20, "{acts:?}");
    for act in acts {
        assert!(Act::read(act).is_some(), "{act}");
    }
}

/// Nothing that was typed breaks out of its place.
#[test]
fn what_was_typed_is_escaped() {
    const HOSTILE: &str = "\"><img src=x onerror=alert(1)>";
    for kind in Kind::ALL {
        let ids: Vec<&str> = shown(kind, &[], &[]).fields.iter().map(|field| field.id).collect();
        for id in ids {
            let one = if kind.is_list(id) { typed(&[], &[(id, &[HOSTILE])]) } else { typed(&[(id, HOSTILE)], &[]) };
            let screen = look(kind, &one, InHand { field: id, reading: 0 }, None);
            let page = page(&screen);
            assert!(!page.contains("<img"), "{kind:?} {id}: {page}");
        }
    }
    let wet = shown(Kind::Moisture, &[("meter", HOSTILE)], &[("places", &[HOSTILE]), ("visits", &["<b>: 22"])]);
    let page = page(&wet);
    assert!(!page.contains("<img") && !page.contains("<b>") && page.contains("&lt;img"), "{page}");
}
