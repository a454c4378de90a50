//! Lays texts out for the program, so that it need not know Fluent: a line each, the key, a tab and
//! the text, in the order of the keys. See `src/texts.rs`, which reads them.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

use crate::check::entries;
use crate::marks::{BAR, CLOSE, OPEN};

/// All the texts of one language's files (name, text).
pub fn lay_out(files: &[(String, String)], faults: &mut Vec<String>) -> String {
    join(lines(files, faults))
}

/// Texts by key, a line each.
pub fn join(lines: BTreeMap<String, String>) -> String {
    // A tab comes before every letter of a key, so the lines are in order as their keys are.
    lines.into_iter().map(|(key, text)| format!("{key}\t{text}")).collect::<Vec<_>>().join("\n")
}

/// The texts of files (name, text) by key, each as it is laid out.
pub fn lines(files: &[(String, String)], faults: &mut Vec<String>) -> BTreeMap<String, String> {
    let mut lines = BTreeMap::new();
    for (_, text) in files {
        let resource = match parser::parse(text.as_str()) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        for (key, pattern) in entries(&resource) {
            let mut line = String::new();
            if let Err(what) = write(pattern, &mut line) {
                faults.push(format!("{key} holds {what}; write it out"));
            }
            lines.insert(key, line);
        }
    }
    lines
}

/// What a region writes in its own way has to stand in its language too, and to be something else there. Both are laid out.
pub fn overlay(
    region: &str,
    own: &BTreeMap<String, String>,
    whole: &BTreeMap<String, String>,
    faults: &mut Vec<String>,
) {
    for (key, text) in own {
        match whole.get(key) {
            None => faults.push(format!("{region} has a text for {key} and its language has none; take it out")),
            Some(same) if same == text => {
                faults.push(format!("{region} says of {key} what its language says; take it out"));
            }
            Some(other) if values(other) != values(text) => {
                faults.push(format!("{region} {key} shows other values than its language; they have to be the same"));
            }
            Some(_) => {}
        }
    }
}

/// The values that a text laid out shows or chooses by.
fn values(text: &str) -> BTreeSet<&str> {
    text.split(OPEN).skip(1).map(|rest| rest.split([BAR, CLOSE]).next().unwrap_or_default()).collect()
}

fn write(pattern: &Pattern<&str>, line: &mut String) -> Result<(), &'static str> {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } if value.contains('\n') => return Err("a line break"),
            PatternElement::TextElement { value } => line.push_str(value),
            PatternElement::Placeable { expression } => placeable(expression, line)?,
        }
    }
    Ok(())
}

fn placeable(expression: &Expression<&str>, line: &mut String) -> Result<(), &'static str> {
    match expression {
        Expression::Inline(InlineExpression::VariableReference { id }) => {
            line.extend([OPEN]);
            line.push_str(id.name);
        }
        Expression::Inline(InlineExpression::StringLiteral { value }) => {
            line.push_str(value);
            return Ok(());
        }
        Expression::Inline(_) => return Err("more than variables and words"),
        Expression::Select { selector: InlineExpression::VariableReference { id }, variants } => {
            line.extend([OPEN]);
            line.push_str(id.name);
            // The default last, where it stands for everything that is not named.
            let (rest, named): (Vec<_>, Vec<_>) = variants.iter().partition(|variant| variant.default);
            for variant in named.into_iter().chain(rest) {
                let (fluent_syntax::ast::VariantKey::Identifier { name: key }
                | fluent_syntax::ast::VariantKey::NumberLiteral { value: key }) = variant.key;
                line.extend([BAR]);
                line.push_str(key);
                line.extend([BAR]);
                write(&variant.value, line)?;
            }
        }
        Expression::Select { .. } => return Err("a choice by something else than a variable"),
    }
    line.extend([CLOSE]);
    Ok(())
}
