//! What is written is read back the same, and no bytes make opening fail in any other way than with a reason.

use job::{FORMAT, Fields, Job, OpenError, Part, PartBody, SavedHeader, Typing, merge_fields, open_part, open_typing};
use proptest::collection::{btree_map, vec};
use proptest::prelude::*;

fn fields() -> impl Strategy<Value = Fields> {
    btree_map("[a-z_]{1,20}", any::<String>(), 0..12)
}

fn header() -> impl Strategy<Value = SavedHeader> {
    ("[a-z0-9-]{1,20}", any::<String>(), fields(), any::<String>(), any::<String>())
        .prop_map(|(id, name, fields, answer, saved_at)| SavedHeader { id, name, fields, answer, saved_at })
}

fn body() -> impl Strategy<Value = PartBody> {
    prop_oneof![
        any::<String>().prop_map(|name| PartBody::Head { name }),
        fields().prop_map(|fields| PartBody::Site { fields }),
        header().prop_map(PartBody::Header),
    ]
}

fn part() -> impl Strategy<Value = Part> {
    ("[a-z0-9]{1,16}", any::<u32>(), body()).prop_map(|(job, revision, body)| Part {
        format: FORMAT,
        job,
        revision,
        body,
    })
}

proptest! {
    #[test]
    fn a_part_is_read_back_as_written(part in part()) {
        prop_assert_eq!(open_part(part.to_json().as_bytes()), Ok(part));
    }

    #[test]
    fn typing_is_read_back_as_written(fields in fields(), hand in any::<String>(), at in any::<String>()) {
        let typing = Typing { fields, hand, at, ..Typing::new("a1") };
        prop_assert_eq!(open_typing(typing.to_json().as_bytes()), Ok(typing));
    }

    #[test]
    fn a_job_is_the_sum_of_its_parts(name in any::<String>(), site in fields(), headers in vec(header(), 0..5)) {
        let bodies = [PartBody::Head { name: name.clone() }, PartBody::Site { fields: site.clone() }];
        let bodies = bodies.into_iter().chain(headers.iter().cloned().map(PartBody::Header));
        let parts: Vec<Part> = bodies.map(|body| Part::new("a1", body)).collect();
        let job = Job::from_parts("a1", &parts);
        prop_assert_eq!((&job.name, &job.site, job.headers.len()), (&name, &site, headers.len()));
        for header in &headers {
            prop_assert!(job.headers.contains(header));
        }
        prop_assert!(Job::from_parts("b2", &parts).headers.is_empty());
    }

    #[test]
    fn any_bytes_open_or_give_a_reason_and_themselves_back(bytes in vec(any::<u8>(), 0..400)) {
        if let Err(error) = open_part(&bytes) {
            prop_assert_eq!(error.bytes(), &bytes[..]);
        }
    }

    #[test]
    fn a_damaged_part_opens_or_gives_a_reason(part in part(), at in any::<prop::sample::Index>(), byte in any::<u8>()) {
        let mut bytes = part.to_json().into_bytes();
        let place = at.index(bytes.len());
        bytes[place] = byte;
        if let Err(error) = open_part(&bytes) {
            prop_assert_eq!(error.bytes(), &bytes[..]);
        }
    }

    #[test]
    fn a_part_cut_short_never_opens(part in part(), at in any::<prop::sample::Index>()) {
        let whole = part.to_json();
        let cut = &whole.as_bytes()[..at.index(whole.len())];
        let refused = matches!(open_part(cut), Err(OpenError::Corrupt { .. }));
        prop_assert!(refused);
    }

    #[test]
    fn a_newer_format_is_refused_whatever_it_holds(part in part(), newer in FORMAT + 1..) {
        let text = Part { format: newer, ..part }.to_json();
        let refused = matches!(open_part(text.as_bytes()), Err(OpenError::Newer { found, .. }) if found == newer);
        prop_assert!(refused);
    }

    #[test]
    fn merging_keeps_every_change_of_both_sides(base in fields(), stored in fields(), ours in fields()) {
        let merged = merge_fields(&base, &stored, &ours);
        for name in base.keys().chain(stored.keys()).chain(ours.keys()) {
            let (was, theirs, mine) = (base.get(name), stored.get(name), ours.get(name));
            let found = merged.fields.get(name);
            if theirs != was {
                prop_assert_eq!(found, theirs);
            }
            if mine != was && mine != theirs {
                let kept = merged.clashes.iter().any(|clash| &clash.field == name && clash.ours.as_ref() == mine);
                prop_assert!(kept || found == mine);
            }
        }
    }

    #[test]
    fn merging_with_nothing_changed_on_one_side_gives_the_other(base in fields(), other in fields()) {
        let theirs_only = merge_fields(&base, &other, &base);
        prop_assert_eq!((&theirs_only.fields, theirs_only.clashes.len()), (&other, 0));
        let ours_only = merge_fields(&base, &base, &other);
        prop_assert_eq!((&ours_only.fields, ours_only.clashes.len()), (&other, 0));
    }
}

#[test]
fn the_next_name_is_the_first_free_one() {
    let header = |name: &str| SavedHeader {
        id: name.replace(' ', "-"),
        name: name.to_owned(),
        fields: Fields::new(),
        answer: String::new(),
        saved_at: String::new(),
    };
    let mut job = Job::new("a1".to_owned(), "Beach house".to_owned());
    assert_eq!(job.next_header_name(), "Header 1");
    job.headers = vec![header("Header 1"), header("Kitchen"), header("Header 3")];
    assert_eq!(job.next_header_name(), "Header 2");
}
