//! Whether a look says anything that can be logged.

use super::screen::LookScreen;
use crate::model::State;

impl LookScreen {
    /// Whether something was judged, or is left to others. What was only begun is not logged as looked at.
    #[must_use]
    pub fn is_judged(&self) -> bool {
        self.answer.state != State::NotKnown || !self.checks.is_empty()
    }
}
