//! The page of the members beside the header: joists, beams, rafters, ridges, hips and valleys, studs, posts, cuts, and the
//! code's span tables.

use framing::member::MemberKind;
use view::model::Group;

use crate::fields::Groups;
use crate::place::Place;
use crate::quick::Chapter;

impl Chapter for MemberKind {
    const PLACE: Place = Place::Members;

    const GROUPS: Groups = &[
        (Group::Shape, "The member", false),
        (Group::Carries, "What it carries", false),
        (Group::Bears, "What holds it", false),
        (Group::Lies, "How it lies", false),
        (Group::Wood, "The wood", false),
        (Group::Place, "The place, from the job", true),
        (Group::Cut, "A notch or a hole", true),
        (Group::AsBuilt, "What was found", true),
        (Group::Limits, "Limits", true),
        (Group::Label, "A member from its label", true),
        (Group::Sheet, "A joist from its maker's sheet", true),
    ];

    const ANOTHER: &'static str = "another member";

    const ALL_OF_THEM: &'static str = "Members";

    const ELSEWHERE: Option<(&'static str, &'static str)> = Some(("./#/members", "Header"));
}
