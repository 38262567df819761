//! The page of Bracing: walls that keep the house square, what holds them down, and what nails carry.

use framing::bracing::BracingKind;
use view::model::Group;

use crate::fields::Groups;
use crate::place::Place;
use crate::quick::Chapter;

impl Chapter for BracingKind {
    const PLACE: Place = Place::Bracing;

    const GROUPS: Groups = &[
        (Group::Shape, "What is built", false),
        (Group::Carries, "What it must take", false),
        (Group::Bears, "What holds it", false),
        (Group::Wood, "Wood and panels", false),
        (Group::Place, "The place, from the job", true),
        (Group::Limits, "Rules", true),
    ];

    const ANOTHER: &'static str = "another check";

    const ALL_OF_THEM: &'static str = "Bracing";

    const ELSEWHERE: Option<(&'static str, &'static str)> = None;
}
