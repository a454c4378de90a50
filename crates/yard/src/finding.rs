//! Findings as plain data, held to their declarations.

use fitup_core::finding::{Evidence, Figure, Finding, Grade, Subject, Value, Verdict};
use fitup_core::fit::declaration;

/// A finding of a declared kind with some of its figures, without cautions and checks. Panics on a code or a figure that is
/// not declared, and on a value that the figure may not have.
pub fn finding(code: &str, subject: Subject, verdict: Verdict, grade: Grade, figures: &[(&str, Value)]) -> Finding {
    let declared = declaration(code).unwrap_or_else(|| panic!("{code} is not declared"));
    let figure = |(name, value): &(&str, Value)| {
        let figure = declared.figures.iter().find(|figure| figure.name == *name);
        let figure = figure.unwrap_or_else(|| panic!("{code} has no {name}"));
        assert!(figure.kind.admits(value), "{name} of {code} may not be {value:?}");
        Figure { name: figure.name, value: value.clone() }
    };
    Finding {
        code: declared.code,
        question: declared.question,
        subject,
        verdict,
        evidence: Evidence::of(grade),
        figures: figures.iter().map(figure).collect(),
        cautions: Vec::new(),
        checks: Vec::new(),
    }
}
