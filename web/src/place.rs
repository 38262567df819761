//! The six places, in the order of the job.

/// A place of the field book.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Place {
    /// The site's loads and the job's name.
    Site,
    /// Headers, and in time joists, rafters and posts.
    #[default]
    Members,
    /// Wall lines and hold-downs.
    Bracing,
    /// Plate marks and cuts.
    Layout,
    /// What to order.
    Takeoff,
    /// What to measure and prove.
    Inspection,
}

impl Place {
    /// All of them, as they stand in the bar.
    pub const ALL: [Self; 6] =
        [Self::Site, Self::Members, Self::Bracing, Self::Layout, Self::Takeoff, Self::Inspection];

    /// Its word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Site => "Site",
            Self::Members => "Members",
            Self::Bracing => "Bracing",
            Self::Layout => "Layout",
            Self::Takeoff => "Takeoff",
            Self::Inspection => "Inspection",
        }
    }

    /// Its part of the address.
    pub const fn address(self) -> &'static str {
        match self {
            Self::Site => "site",
            Self::Members => "members",
            Self::Bracing => "bracing",
            Self::Layout => "layout",
            Self::Takeoff => "takeoff",
            Self::Inspection => "inspection",
        }
    }

    /// The page that it is on, relative to where the app stands.
    pub const fn page(self) -> &'static str {
        match self {
            Self::Site => "site/",
            Self::Bracing => "bracing/",
            Self::Layout => "layout/",
            Self::Inspection => "inspection/",
            Self::Members | Self::Takeoff => "./",
        }
    }

    /// Its full address: `./#/members`.
    pub fn full_address(self) -> String {
        format!("{}#/{}", self.page(), self.address())
    }

    /// The place of that address.
    pub fn at(address: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|place| place.address() == address)
    }
}
