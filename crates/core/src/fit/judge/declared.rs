//! Every kind of finding there is. Each is declared beside the joint or rule that says it; this only gathers them.

use super::DECLARED;
use crate::finding::Declared;
use crate::fit::{joint, rule};

/// Every kind of finding, in the order of the files that declare them.
///
/// # Examples
/// ```
/// use fitup_core::finding::Question;
/// use fitup_core::fit::declared;
/// let overloaded = declared().find(|declared| declared.code == "axle-overloaded").unwrap();
/// assert_eq!(overloaded.question, Question::Work);
/// assert_eq!(overloaded.figures.iter().map(|figure| figure.name).collect::<Vec<_>>(), ["axle", "load", "rated", "over"]);
/// ```
pub fn declared() -> impl Iterator<Item = &'static Declared> {
    let files = [DECLARED].into_iter().chain(joint::SAID.iter().copied()).chain(rule::SAID.iter().copied());
    files.flatten().copied()
}

/// The declaration of a code; `None` if there is none.
pub fn declaration(code: &str) -> Option<&'static Declared> {
    declared().find(|declared| declared.code == code)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn no_code_is_declared_twice_nor_any_figure_of_one() {
        let codes: BTreeSet<&str> = declared().map(|declared| declared.code).collect();
        assert_eq!(codes.len(), declared().count());
        for Declared { code, figures, .. } in declared() {
            let names: BTreeSet<&str> = figures.iter().map(|figure| figure.name).collect();
            assert_eq!(names.len(), figures.len(), "{code}");
        }
    }

    #[test]
    fn codes_and_coded_words_are_kebab_case() {
        let is_kebab = |text: &str| {
            text.split('-')
                .all(|part| !part.is_empty() && part.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit()))
        };
        for Declared { code, figures, .. } in declared() {
            assert!(is_kebab(code), "{code}");
            for word in figures.iter().flat_map(|figure| figure.kind.words()) {
                assert!(is_kebab(word), "{code}: {word}");
            }
        }
    }
}
