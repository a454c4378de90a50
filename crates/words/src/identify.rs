//! Which unit it could be, in words.

use fitup_core::item::Catalogue;
use fitup_core::search::{Candidate, Identified, TellApart};

use crate::{Arg, LengthStyle, Words, text};

impl Words {
    /// A candidate with its likelihood, and what speaks for and against it.
    pub fn candidate(&self, catalogue: &Catalogue, candidate: &Candidate) -> (String, Vec<String>) {
        let body = catalogue.body(candidate.item);
        let named = self.ui(
            "identify-candidate",
            &[
                ("item", body.label.as_str().into()),
                ("port", candidate.port.as_str().into()),
                ("likelihood", self.reader().probability(candidate.likelihood).into()),
            ],
        );
        let mut said = Vec::new();
        if candidate.compared > 0 {
            let key = if candidate.worst <= 1.0 { "identify-measured" } else { "identify-measured-not" };
            said.push(self.ui(key, &[("count", candidate.compared.into())]));
        }
        let says = |is_so: Option<bool>, yes: &str, no: &str| Some(self.ui(if is_so? { yes } else { no }, &[]));
        said.extend(says(candidate.bears, "identify-bears", "identify-bears-not"));
        said.extend(says(candidate.counts, "identify-counts", "identify-counts-not"));
        (named, said)
    }

    /// What to look at next, and which of the two leading candidates it speaks for.
    pub fn tell_apart(&self, catalogue: &Catalogue, found: &Identified, tell: &TellApart) -> String {
        let label = |at: usize| -> Arg {
            found.candidates.get(at).map_or("", |candidate| catalogue.body(candidate.item).label.as_str()).into()
        };
        let (key, what, first, second): (&str, Arg, String, String) = match tell {
            TellApart::Measure { dimension, first, second } => {
                let [first, second] = [first, second].map(|length| self.reader().length(*length, LengthStyle::Part));
                ("identify-next-measure", self.value_name(dimension).into(), first, second)
            }
            TellApart::Read { first, second } => {
                ("identify-next-read", "".into(), first.join(" + "), second.join(" + "))
            }
            TellApart::Count { first, second } => {
                ("identify-next-count", "".into(), first.to_string(), second.to_string())
            }
        };
        let args =
            [("what", what), ("first", first.into()), ("second", second.into()), ("a", label(0)), ("b", label(1))];
        text(&self.spans(key, &args))
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::quantity::Length;
    use fitup_yard::{FRAME, OTHER_FRAME, Yard};

    use super::*;
    use crate::{Lang, Units};

    fn candidate(item: fitup_core::item::ItemRef, likelihood: f64) -> Candidate {
        let (port, bears, counts) = ("rack".to_owned(), Some(true), Some(false));
        Candidate { item, port, likelihood, worst: 1.2, compared: 2, bears, counts }
    }

    #[test]
    fn a_candidate_tells_its_likelihood_and_what_speaks_for_it() {
        let yard = Yard::new();
        let words = Words::new(Lang::En, Units::Metric);
        let (named, said) = words.candidate(&yard.catalogue, &candidate(FRAME, 0.82));
        assert_eq!(named, "Long frame, rack: 82%");
        assert_eq!(
            said,
            [
                "What was measured differs from what is stated by more than both may be off.",
                "It bears the number that was read.",
                "It has another number of holes or points."
            ]
        );
        let fits = Candidate { worst: 0.4, bears: None, counts: None, ..candidate(FRAME, 0.999) };
        assert_eq!(words.candidate(&yard.catalogue, &fits).1, ["2 measured dimensions agree with what is stated."]);
    }

    #[test]
    fn the_next_look_says_which_candidate_each_outcome_speaks_for() {
        let yard = Yard::new();
        let candidates = vec![candidate(FRAME, 0.6), candidate(OTHER_FRAME, 0.4)];
        let found = Identified { candidates, tell_apart: Vec::new() };
        let [first, second] = [460.0, 470.0].map(Length::from_mm);
        for lang in Lang::ALL {
            let words = Words::new(lang, Units::Metric);
            for tell in [
                TellApart::Measure { dimension: "spread".to_owned(), first, second },
                TellApart::Read { first: vec!["460".to_owned()], second: vec!["470".to_owned()] },
                TellApart::Count { first: 460, second: 470 },
            ] {
                let said = words.tell_apart(&yard.catalogue, &found, &tell);
                assert!(said.contains("460") && said.contains("470") && said.contains("Long frame"), "{said}");
            }
        }
    }
}
