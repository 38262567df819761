//! How long answers take natively: a header check over all sizes, each other kind of member over all sizes with its
//! working, and a list of two hundred members. Prints the middle of many runs beside its budget.
//!
//! Run with `cargo run --release -p framing --example timing`; `cargo xtask bench` does.

use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::Instant;

use framing::member::MemberKind;
use framing::quick::{QuickKind as _, derive};
use framing::{HeaderCase, derive_header};
use members::header::check_header;

const RUNS: u32 = 2000;
/// The most that one header check may take on this machine.
const BUDGET_US: f64 = 250.0;
/// The most that sizing any other member may take: it is felt as nothing at all.
const MEMBER_BUDGET_US: f64 = 2000.0;
/// The most that a list of two hundred members may take: a house in less than a blink.
const LIST_BUDGET_MS: f64 = 50.0;

fn main() {
    headers();
    for kind in MemberKind::ALL {
        member(*kind);
    }
    list();
}

fn headers() {
    let mut case = HeaderCase { above: Some("cripple_studs".to_owned()), ..HeaderCase::default() };
    let site = HeaderCase::default();
    let mut checks = Vec::new();
    let mut whole = Vec::new();
    for run in 0..RUNS {
        case.opening_width = Some(format!("{}\"", 36 + run % 120));
        let start = Instant::now();
        let outcome = black_box(derive_header(black_box(&case), &site));
        whole.push(microseconds(start));
        if let Some((input, _)) = outcome.answered {
            let start = Instant::now();
            black_box(check_header(black_box(&input)));
            checks.push(microseconds(start));
        }
    }
    println!("   header check over all sizes   {:>7.1} µs of {BUDGET_US:.0} µs", median(&mut checks));
    println!("   reading the inputs as well    {:>7.1} µs", median(&mut whole));
}

fn member(kind: MemberKind) {
    let mut times: Vec<f64> = (0..RUNS / 10).map(|run| timed(kind, run)).collect();
    println!("   {:<29} {:>7.1} µs of {MEMBER_BUDGET_US:.0} µs", kind.word(), median(&mut times));
}

/// As many of each kind as a house has.
const HOUSE: [(MemberKind, u32); 7] = [
    (MemberKind::Joist, 70),
    (MemberKind::Stud, 50),
    (MemberKind::Rafter, 40),
    (MemberKind::Beam, 20),
    (MemberKind::Post, 10),
    (MemberKind::HipValley, 8),
    (MemberKind::Ridge, 2),
];

fn list() {
    let listed: u32 = HOUSE.iter().map(|(_, count)| count).sum();
    let house = || {
        let start = Instant::now();
        for (kind, count) in HOUSE {
            (0..count).for_each(|run| {
                timed(kind, run);
            });
        }
        microseconds(start) / 1000.0
    };
    let mut times: Vec<f64> = (0..11).map(|_| house()).collect();
    println!("   a list of {listed} members         {:>7.1} ms of {LIST_BUDGET_MS:.0} ms", median(&mut times));
}

/// Reads and answers one member with its working, no two after each other alike.
fn timed(kind: MemberKind, run: u32) -> f64 {
    let length = 84 + run % 96;
    let (field, text) = match kind {
        MemberKind::SpanTable => ("table_dead", if run.is_multiple_of(2) { "10" } else { "20" }.to_owned()),
        MemberKind::Notch => ("joist_span", format!("{length}\"")),
        MemberKind::Beam | MemberKind::Ridge => (kind.first(), format!("{length}\", 12'")),
        _ => (kind.first(), format!("{length}\"")),
    };
    let case = BTreeMap::from([(field.to_owned(), text)]);
    let start = Instant::now();
    let outcome = black_box(derive(kind, black_box(&case), &BTreeMap::<String, String>::new()));
    let took = microseconds(start);
    if outcome.answered.is_none() {
        println!("   {kind:?} with {field} {:?} gave no answer, so its time says nothing", case[field]);
    }
    took
}

fn microseconds(start: Instant) -> f64 {
    start.elapsed().as_secs_f64() * 1e6
}

fn median(times: &mut [f64]) -> f64 {
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}
