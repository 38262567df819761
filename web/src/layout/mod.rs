//! The page of Layout: where to cut and where to mark.

use framing::layout::LayoutKind;
use view::model::Group;

use crate::fields::Groups;
use crate::place::Place;
use crate::quick::Chapter;

impl Chapter for LayoutKind {
    const PLACE: Place = Place::Layout;

    const GROUPS: Groups = &[
        (Group::Shape, "What is built", false),
        (Group::Wood, "The sticks", false),
        (Group::Bears, "Where it stands", false),
        (Group::Place, "The house, from the job", true),
        (Group::Limits, "Rules", true),
    ];

    const ANOTHER: &'static str = "another layout";

    const ALL_OF_THEM: &'static str = "Layout";

    const ELSEWHERE: Option<(&'static str, &'static str)> = None;
}
