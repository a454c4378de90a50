//! Reads Fluent texts and compares languages. Shared by the build script and its test.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Resource};
use fluent_syntax::parser;

/// What the texts of one language show: by key (`message` or `message.attribute`).
pub type Texts = BTreeMap<String, Shows>;

/// The variables of one text.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Shows {
    /// Variables whose value appears in the text.
    pub shown: BTreeSet<String>,
    /// Variables that only choose between variants.
    pub chosen_by: BTreeSet<String>,
    /// Messages and terms that the text brings in.
    pub refers: BTreeSet<String>,
}

/// Reads the files (name, text) of one language.
pub fn read(files: &[(String, String)], faults: &mut Vec<String>) -> Texts {
    let mut texts = Texts::new();
    for (name, text) in files {
        let resource = match parser::parse(text.as_str()) {
            Ok(resource) => resource,
            Err((resource, errors)) => {
                for error in errors {
                    let line = text[..error.pos.start.min(text.len())].matches('\n').count() + 1;
                    faults.push(format!("{name}:{line}: {error}"));
                }
                resource
            }
        };
        for (key, pattern) in entries(&resource) {
            let mut shows = Shows::default();
            gather(pattern, &mut shows);
            if texts.insert(key.clone(), shows).is_some() {
                faults.push(format!("{name}: {key} stands twice; take one out"));
            }
        }
    }
    for (key, shows) in &texts {
        for other in &shows.refers {
            if !texts.contains_key(other) {
                faults.push(format!("{key} refers to {other}, which is not there"));
            }
        }
    }
    texts
}

/// Every text of the first language has to be in the others, showing the same variables.
pub fn compare(languages: &[(&str, Texts)], faults: &mut Vec<String>) {
    let Some(((first, model), others)) = languages.split_first() else { return };
    for (language, texts) in others {
        for (key, shows) in model {
            match texts.get(key) {
                None => faults.push(format!("{language} has no text for {key}; add it beside the {first} one")),
                Some(found) if found.shown != shows.shown => faults.push(format!(
                    "{language} {key} shows {:?} and {first} shows {:?}; they have to show the same",
                    found.shown, shows.shown
                )),
                Some(_) => {}
            }
        }
        for key in texts.keys().filter(|key| !model.contains_key(*key)) {
            faults.push(format!("{language} has a text for {key} and {first} has none; take it out or add it there"));
        }
    }
}

/// The texts of a resource with their keys.
pub fn entries<'r>(resource: &'r Resource<&'r str>) -> Vec<(String, &'r Pattern<&'r str>)> {
    let mut all = Vec::new();
    for entry in &resource.body {
        let (key, value, attributes) = match entry {
            Entry::Message(message) => (message.id.name.to_owned(), message.value.as_ref(), &message.attributes),
            Entry::Term(term) => (format!("-{}", term.id.name), Some(&term.value), &term.attributes),
            _ => continue,
        };
        all.extend(value.map(|value| (key.clone(), value)));
        for attribute in attributes {
            all.push((format!("{key}.{}", attribute.id.name), &attribute.value));
        }
    }
    all
}

fn gather(pattern: &Pattern<&str>, shows: &mut Shows) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            gather_expression(expression, shows);
        }
    }
}

fn gather_expression(expression: &Expression<&str>, shows: &mut Shows) {
    match expression {
        Expression::Inline(inline) => gather_inline(inline, shows),
        Expression::Select { selector, variants } => {
            if let InlineExpression::VariableReference { id } = selector {
                shows.chosen_by.insert(id.name.to_owned());
            }
            for variant in variants {
                gather(&variant.value, shows);
            }
        }
    }
}

fn gather_inline(inline: &InlineExpression<&str>, shows: &mut Shows) {
    match inline {
        InlineExpression::VariableReference { id } => {
            shows.shown.insert(id.name.to_owned());
        }
        InlineExpression::MessageReference { id, attribute } => {
            let attribute = attribute.as_ref().map(|a| format!(".{}", a.name)).unwrap_or_default();
            shows.refers.insert(format!("{}{attribute}", id.name));
        }
        InlineExpression::TermReference { id, .. } => {
            shows.refers.insert(format!("-{}", id.name));
        }
        InlineExpression::Placeable { expression } => gather_expression(expression, shows),
        InlineExpression::StringLiteral { .. }
        | InlineExpression::NumberLiteral { .. }
        | InlineExpression::FunctionReference { .. } => {}
    }
}
