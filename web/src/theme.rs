//! Paper, dusk, full sun: as the phone has it at first, one tap to full sun.

use leptos::prelude::*;

use crate::browser;
use crate::storage::settings;

/// The look of the sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// Light or dark, as the phone has it.
    #[default]
    Phone,
    /// Ink on paper.
    Paper,
    /// Light on dark.
    Dusk,
    /// Black on white, for glare.
    Sun,
}

impl Theme {
    /// All of them, as they are offered.
    pub const ALL: [Self; 4] = [Self::Phone, Self::Paper, Self::Dusk, Self::Sun];

    /// Its words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Phone => "As the phone",
            Self::Paper => "Paper",
            Self::Dusk => "Dusk",
            Self::Sun => "Full sun",
        }
    }

    /// Its name in the settings and in the style sheet.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Phone => "phone",
            Self::Paper => "paper",
            Self::Dusk => "dusk",
            Self::Sun => "sun",
        }
    }
}

/// The theme that was chosen before.
pub fn chosen() -> Theme {
    let name = settings::theme();
    Theme::ALL.into_iter().find(|theme| Some(theme.name()) == name.as_deref()).unwrap_or_default()
}

/// Puts a theme on the page.
pub fn apply(theme: Theme) {
    if let Some(root) = browser::root() {
        let _ = root.dataset().set("theme", theme.name());
    }
    browser::after_paint(tint_the_phones_bar);
}

/// The phone's own bar takes the ground's colour, whichever theme gave it.
fn tint_the_phones_bar() {
    let ground = browser::window()
        .zip(browser::root())
        .and_then(|(window, root)| window.get_computed_style(&root).ok().flatten())
        .and_then(|style| style.get_property_value("--ground").ok());
    let metas = browser::document().and_then(|page| page.query_selector_all("meta[name=theme-color]").ok());
    if let (Some(ground), Some(metas)) = (ground, metas) {
        for place in 0..metas.length() {
            let meta = metas.item(place).and_then(|node| wasm_bindgen::JsCast::dyn_into::<web_sys::Element>(node).ok());
            if let Some(meta) = meta {
                let _ = meta.set_attribute("content", ground.trim());
            }
        }
    }
}

/// The theme as a context.
#[derive(Clone, Copy)]
pub struct Look(RwSignal<Theme>, StoredValue<Theme>);

impl Look {
    /// Gives the theme to every component.
    pub fn provide() {
        let now = chosen();
        let before = if now == Theme::Sun { Theme::Phone } else { now };
        provide_context(Self(RwSignal::new(now), StoredValue::new(before)));
    }

    /// The theme.
    pub fn get(self) -> Theme {
        self.0.get()
    }

    /// Chooses a theme.
    pub fn choose(self, theme: Theme) {
        if theme != Theme::Sun {
            self.1.set_value(theme);
        }
        self.0.set(theme);
        settings::keep_theme(theme.name());
        apply(theme);
    }

    /// Full sun, or back to what it was before.
    pub fn turn(self) {
        let next = if self.0.get_untracked() == Theme::Sun { self.1.get_value() } else { Theme::Sun };
        self.choose(next);
    }
}
