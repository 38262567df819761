//! The walk through a framed house: what was measured with a tape, a meter or the eye, beside what is required.
//!
//! One file a kind: its inputs as a person writes them, what is assumed where one is left out, and how the findings of
//! `inspection` and `fastening` become an answer. The sentences are in [`words`].
//!
//! *Invariant*: nothing is judged here. A reading that looks wrong is asked about and never changed; what was not seen
//! is never taken for seen.

mod answer;
mod asked;
pub mod flatness;
pub mod hold_down_point;
mod judge;
pub mod moisture;
pub mod nailing;
pub mod notch_found;
mod reading;
pub mod record;
pub mod reply;
mod scheduled;
pub mod stud_spacing;
pub mod words;

pub use inspection::Verdict;
pub use judge::judge;
pub use reading::{could_not_be_seen, which_reading};
pub use reply::WalkReply;
pub use scheduled::{Scheduled, scheduled};

use std::collections::BTreeMap;

use crate::reply::Refusal;

/// A walk's check, answered; or the inputs that were refused.
pub type Walked = Result<WalkReply, Vec<Refusal>>;

/// The type of an input as it is typed: one text.
pub type Text = Option<String>;

/// The type of an input that is a list of texts.
pub type Texts = Option<Vec<String>>;

/// Inputs by their stable names.
pub type ByName<T> = BTreeMap<String, T>;

/// Makes the inputs of a kind: a struct of texts and lists of texts, and their names.
macro_rules! walk_case {
    (
        $(#[doc = $about:literal])+
        $case:ident
        texts { $($(#[doc = $text_doc:literal])+ $text:ident,)* }
        lists { $($(#[doc = $list_doc:literal])+ $list:ident,)* }
    ) => {
        $(#[doc = $about])+
        #[derive(Clone, Debug, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $case {
            $(
                $(#[doc = $text_doc])+
                #[serde(default, skip_serializing_if = "Option::is_none")]
                pub $text: $crate::walk::Text,
            )*
            $(
                $(#[doc = $list_doc])+
                #[serde(default, skip_serializing_if = "Option::is_none")]
                pub $list: $crate::walk::Texts,
            )*
        }

        impl $case {
            /// The stable names of the inputs that are one text.
            pub const TEXTS: &[&str] = &[$(stringify!($text)),*];
            /// The stable names of the inputs that are a list of texts.
            pub const LISTS: &[&str] = &[$(stringify!($list)),*];

            /// The inputs by their stable names: texts, then lists. Other names are passed over.
            #[must_use]
            pub fn of(inputs: (&$crate::walk::ByName<String>, &$crate::walk::ByName<Vec<String>>)) -> Self {
                Self {
                    $($text: inputs.0.get(stringify!($text)).cloned(),)*
                    $($list: inputs.1.get(stringify!($list)).cloned(),)*
                }
            }
        }
    };
}
pub(crate) use walk_case;
