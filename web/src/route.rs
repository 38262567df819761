//! Where one is, read from the part of the address after `#`: `#/members/working`.

use leptos::prelude::*;

use crate::browser;
use crate::place::Place;
use crate::storage::settings;
use crate::worker::{Work, once_put_away};

/// What can slide up over a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sheet {
    /// The working of the answer.
    Working,
    /// Naming and saving the check.
    Save,
    /// The saved checks.
    Saved,
}

impl Sheet {
    const ALL: [Self; 3] = [Self::Working, Self::Save, Self::Saved];

    const fn address(self) -> &'static str {
        match self {
            Self::Working => "working",
            Self::Save => "save",
            Self::Saved => "saved",
        }
    }
}

/// A place, and what has slid up over it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Spot {
    /// The place.
    pub place: Place,
    /// What lies over it.
    pub sheet: Option<Sheet>,
}

impl Spot {
    /// Reads `#/members/working`; nothing that is known gives the place one was at last.
    pub fn read(hash: &str) -> Self {
        let mut words = hash.trim_start_matches('#').split('/').filter(|word| !word.is_empty());
        let place = words.next().and_then(Place::at).or_else(settings::last_place).unwrap_or_default();
        let sheet = words.next().and_then(|word| Sheet::ALL.into_iter().find(|sheet| sheet.address() == word));
        Self { place, sheet }
    }

    /// Its address: `#/members/working`.
    pub fn address(self) -> String {
        let sheet = self.sheet.map(|sheet| format!("/{}", sheet.address())).unwrap_or_default();
        format!("#/{}{sheet}", self.place.address())
    }
}

/// The way about: given to every component as a context.
#[derive(Clone, Copy)]
pub struct Route {
    spot: RwSignal<Spot>,
    work: Work,
}

impl Route {
    /// Follows the address from now on. A place on another page is gone to when the work is put away.
    pub fn provide(work: Work) -> Self {
        let spot = RwSignal::new(Spot::read(&browser::hash()));
        browser::on_window("hashchange", move |_| {
            let now = Spot::read(&browser::hash());
            if now.place.page() == Place::default().page() {
                settings::keep_last_place(now.place);
                spot.set(now);
            } else {
                leave_for(now.place, work);
            }
        });
        let route = Self { spot, work };
        provide_context(route);
        route
    }

    /// Where one is.
    pub fn spot(self) -> Spot {
        self.spot.get()
    }

    /// Whether that sheet lies over the place.
    pub fn shows(self, sheet: Sheet) -> Memo<bool> {
        Memo::new(move |_| self.spot.with(|spot| spot.sheet == Some(sheet)))
    }

    /// What takes the sheet away.
    pub fn closing(self) -> Callback<()> {
        Callback::new(move |()| self.slide_down())
    }

    /// Slides a sheet up over the place one is at; the phone's back key takes it away again.
    pub fn slide_up(self, sheet: Sheet) {
        browser::set_hash(&Spot { sheet: Some(sheet), ..self.spot.get_untracked() }.address());
    }

    /// Takes the sheet away.
    pub fn slide_down(self) {
        browser::replace_hash(&Spot { sheet: None, ..self.spot.get_untracked() }.address());
    }

    /// Goes to a place.
    pub fn go(self, place: Place) {
        if place.page() == Place::default().page() {
            browser::set_hash(&Spot { place, sheet: None }.address());
        } else {
            leave_for(place, self.work);
        }
    }
}

/// Goes to a place on another page, when the work is put away.
pub fn leave_for(place: Place, work: Work) {
    settings::keep_last_place(place);
    once_put_away(work, move || browser::go(&place.full_address()));
}
