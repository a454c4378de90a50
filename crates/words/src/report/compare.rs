//! Builds side by side as plain data.

use fitup_core::item::Catalogue;
use fitup_core::search::{Comparison, Sameness};
use serde::Serialize;

use super::figures::{FigureValue, number};
use super::finding::verdict_name;
use super::question::{QuestionReport, answers};
use crate::Words;

/// Builds side by side.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CompareReport {
    /// The answers, in the order of the builds.
    pub builds: Vec<ComparedReport>,
    /// The figures, a line each.
    pub rows: Vec<CompareRowReport>,
}

/// A build that is compared.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ComparedReport {
    /// The worse of fit and work; nothing as long as it is not decided.
    pub verdict: Option<&'static str>,
    /// The answers to fit, work, travel and site.
    pub answers: Vec<QuestionReport>,
}

/// A figure of every build.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CompareRowReport {
    /// Its name, with the unit of its values.
    pub name: String,
    /// Its name in words.
    pub label: String,
    /// One value a build; `null` = not known.
    pub values: Vec<Option<FigureValue>>,
    /// The values in words.
    pub text: Vec<String>,
    /// Whether all builds agree.
    pub same: bool,
}

impl Words {
    /// Builds side by side, as data.
    pub fn compare_report(&self, catalogue: &Catalogue, compared: &Comparison) -> CompareReport {
        let builds = compared.answers.iter().map(|answer| ComparedReport {
            verdict: answer.decided().map(verdict_name),
            answers: answers(self, catalogue, answer),
        });
        let rows = compared.rows.iter().map(|row| {
            let unit = row.values.iter().flatten().next().map_or("", |value| number(catalogue, value).0);
            let text = |value: &Option<_>| {
                value.as_ref().map_or_else(|| self.ui("ui-not-known", &[]), |value| self.value(catalogue, value))
            };
            CompareRowReport {
                name: format!("{}{unit}", row.name.replace('-', "_")),
                label: self.ui(&format!("footprint-{}", row.name), &[]),
                values: row.values.iter().map(|value| Some(number(catalogue, value.as_ref()?).1)).collect(),
                text: row.values.iter().map(text).collect(),
                same: row.sameness == Sameness::Same,
            }
        });
        CompareReport { builds: builds.collect(), rows: rows.collect() }
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::fit::Desk;
    use fitup_core::search::compare;
    use fitup_yard::Yard;

    use super::*;
    use crate::{Lang, Units};

    #[test]
    fn a_figure_has_its_unit_in_its_name_and_a_label_in_every_language() {
        let yard = Yard::new();
        let builds = [yard.build.clone(), yard.clone().with_flail().build];
        let compared = compare(&Desk::new(yard.catalogue.clone()), &builds);
        for lang in Lang::ALL {
            let report = Words::new(lang, Units::Metric).compare_report(&yard.catalogue, &compared);
            assert_eq!((report.builds.len(), report.rows.len()), (2, compared.rows.len()));
            assert!(report.rows.iter().all(|row| !row.label.starts_with("footprint-") && row.values.len() == 2));
            let length = report.rows.iter().find(|row| row.name == "length_mm").expect("there is a length");
            assert!(!length.same && length.text[0].contains("mm"), "{length:?}");
        }
    }
}
