//! Where, when, who, and what the work was compared with.

/// Who looked.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Observer {
    /// Name.
    pub name: String,
    /// Title.
    pub title: String,
    /// Licence, where there is one.
    pub licence: Option<String>,
}

/// A drawing, a letter or a paper of a product that the work was compared with.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Paper {
    /// Sheet or title.
    pub sheet: String,
    /// Revision.
    pub revision: Option<String>,
    /// Whether the town has approved it; none when nobody knows.
    pub approved: Option<bool>,
}

/// A code and the sections that were used.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CodeSections {
    /// Code and edition.
    pub edition: String,
    /// Sections.
    pub sections: Vec<String>,
}

/// The head of the record.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Heading {
    /// Project.
    pub project: String,
    /// Address or lot.
    pub address: String,
    /// Permit number.
    pub permit: String,
    /// Date of the visit.
    pub date: String,
    /// When it began.
    pub start: String,
    /// When it ended.
    pub end: String,
    /// Weather and temperature.
    pub weather: String,
    /// Who looked.
    pub observer: Observer,
    /// Papers it was compared with.
    pub papers: Vec<Paper>,
    /// Codes and sections.
    pub codes: Vec<CodeSections>,
    /// Components that were covered.
    pub components: Vec<String>,
    /// What was not visible or not reached; none while nobody has said, and empty where all was seen.
    pub not_visible: Option<Vec<String>>,
}

/// What the head lacks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Lack {
    /// The project.
    Project,
    /// Address or lot.
    Address,
    /// The permit number.
    Permit,
    /// The date.
    Date,
    /// Start or end.
    Times,
    /// The weather.
    Weather,
    /// Name and title of the observer.
    Observer,
    /// A paper that it was compared with.
    Papers,
    /// The revision of a paper, or whether it is approved.
    PaperState,
    /// Code edition and sections.
    Codes,
    /// Components that were covered.
    Components,
    /// What was not visible.
    NotVisible,
}

impl Heading {
    /// What is still to be written down.
    #[must_use]
    pub fn lacks(&self) -> Vec<Lack> {
        let held = |text: &String| !text.trim().is_empty();
        let paper = |paper: &Paper| paper.revision.as_ref().is_some_and(held) && paper.approved.is_some();
        let code = |code: &CodeSections| held(&code.edition) && code.sections.iter().any(held);
        let all = [
            (held(&self.project), Lack::Project),
            (held(&self.address), Lack::Address),
            (held(&self.permit), Lack::Permit),
            (held(&self.date), Lack::Date),
            (held(&self.start) && held(&self.end), Lack::Times),
            (held(&self.weather), Lack::Weather),
            (held(&self.observer.name) && held(&self.observer.title), Lack::Observer),
            (self.papers.iter().any(|paper| held(&paper.sheet)), Lack::Papers),
            (self.papers.iter().all(paper), Lack::PaperState),
            (self.codes.iter().any(code), Lack::Codes),
            (self.components.iter().any(held), Lack::Components),
            (self.not_visible.is_some(), Lack::NotVisible),
        ];
        all.into_iter().filter_map(|(held, lack)| (!held).then_some(lack)).collect()
    }
}
