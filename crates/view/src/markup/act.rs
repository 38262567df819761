//! What a tap on a part of the page does.

use core::fmt;

/// Written into `data-act` and read from it when the part is tapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Act<'a> {
    /// Brings the input of that name to hand.
    Bring(&'a str),
    /// Brings one reading of a list to hand, counted from 0.
    Reading(&'a str, usize),
    /// Says that a pull that was asked about is right, counted from 0.
    Confirm(usize),
    /// Writes what that key says, counted from 0.
    Ready(usize),
    /// Writes that text into the input in hand.
    Write(&'a str),
    /// Opens the working at that part, counted from 0.
    Working(usize),
    /// Judges that size.
    Judge(&'a str),
    /// Finds the smallest size again.
    FindSmallest,
    /// Opens the saved check of that id.
    Open(&'a str),
    /// Asks whether the saved check is to go.
    Remove(&'a str),
    /// Removes it.
    RemoveForGood(&'a str),
    /// Leaves it after all.
    Leave(&'a str),
    /// Opens what was looked at, by the id of its first look.
    Look(&'a str),
}

impl<'a> Act<'a> {
    /// Reads what was written; none for anything else.
    #[must_use]
    pub fn read(text: &'a str) -> Option<Self> {
        match text.split_once(' ') {
            Some(("bring", field)) => Some(Self::Bring(field)),
            Some(("reading", rest)) => {
                let (field, index) = rest.rsplit_once(' ')?;
                Some(Self::Reading(field, index.parse().ok()?))
            }
            Some(("confirm", index)) => Some(Self::Confirm(index.parse().ok()?)),
            Some(("ready", index)) => Some(Self::Ready(index.parse().ok()?)),
            Some(("write", value)) => Some(Self::Write(value)),
            Some(("working", part)) => Some(Self::Working(part.parse().ok()?)),
            Some(("judge", size)) => Some(Self::Judge(size)),
            Some(("open", id)) => Some(Self::Open(id)),
            Some(("remove", id)) => Some(Self::Remove(id)),
            Some(("remove-for-good", id)) => Some(Self::RemoveForGood(id)),
            Some(("leave", id)) => Some(Self::Leave(id)),
            Some(("look", id)) => Some(Self::Look(id)),
            None if text == "smallest" => Some(Self::FindSmallest),
            _ => None,
        }
    }
}

impl fmt::Display for Act<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bring(field) => write!(f, "bring {field}"),
            Self::Reading(field, index) => write!(f, "reading {field} {index}"),
            Self::Confirm(index) => write!(f, "confirm {index}"),
            Self::Ready(index) => write!(f, "ready {index}"),
            Self::Write(value) => write!(f, "write {value}"),
            Self::Working(part) => write!(f, "working {part}"),
            Self::Judge(size) => write!(f, "judge {size}"),
            Self::FindSmallest => f.write_str("smallest"),
            Self::Open(id) => write!(f, "open {id}"),
            Self::Remove(id) => write!(f, "remove {id}"),
            Self::RemoveForGood(id) => write!(f, "remove-for-good {id}"),
            Self::Leave(id) => write!(f, "leave {id}"),
            Self::Look(id) => write!(f, "look {id}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Act;

    #[test]
    fn what_is_written_is_read() {
        let of_fields = [Act::Bring("opening_width"), Act::Judge("2-1-3/4 x 11-7/8 LVL"), Act::FindSmallest];
        let of_saved =
            [Act::Open("0a"), Act::Remove("0a"), Act::RemoveForGood("0a"), Act::Leave("0a"), Act::Look("0a")];
        let of_site = [Act::Write("30 psf"), Act::Working(4)];
        let of_walk = [Act::Reading("pulls", 3), Act::Confirm(0), Act::Ready(2)];
        for act in of_fields.into_iter().chain(of_saved).chain(of_walk).chain(of_site) {
            assert_eq!(Act::read(&act.to_string()), Some(act));
        }
        for nonsense in
            ["", "bring", "smallest 2", "<b>", "reading pulls", "reading pulls x", "confirm -1", "confirm 1 2"]
        {
            assert_eq!(Act::read(nonsense), None, "{nonsense}");
        }
    }
}
