//! What stays in hand from one measurement to the next.

use fitup_view::{Edit, Refusal, Tool, Units};

/// Tool and unit, once they are chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Bench {
    /// The tool; `None` = the one that is good enough for what is measured.
    pub tool: Option<Tool>,
    /// The unit that is measured in; `None` = the one that the sheet is shown in.
    pub unit: Option<Units>,
}

/// What was entered and did nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct Refused {
    /// What was entered.
    pub edit: Edit,
    /// Why it did nothing.
    pub refusal: Refusal,
}

impl Refused {
    /// The same entered once more, meant so, if that was asked.
    pub fn insisted(&self) -> Option<Edit> {
        let Edit::Enter { at, found, .. } = self.edit.clone() else { return None };
        self.refusal.is_question.then_some(Edit::Enter { at, found, sure: true })
    }
}

#[cfg(test)]
mod tests {
    use fitup_view::{Entry, Place};

    use super::*;

    #[test]
    fn only_what_was_asked_about_can_be_insisted_on() {
        let edit = Edit::Enter { at: Place::default(), found: Entry::Presence(true), sure: false };
        let refused =
            |is_question| Refused { edit: edit.clone(), refusal: Refusal { says: String::new(), is_question } };
        assert!(matches!(refused(true).insisted(), Some(Edit::Enter { sure: true, .. })));
        assert_eq!(refused(false).insisted(), None);
    }
}
