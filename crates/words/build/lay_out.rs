//! Lays texts out for the program, so that it need not know Fluent: a line each, the key, a tab and
//! the text, in the order of the keys. See `src/texts.rs`, which reads them.

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

use crate::check::entries;
use crate::marks::{BAR, CLOSE, OPEN};

/// All the texts of one language's files (name, text).
pub fn lay_out(files: &[(String, String)], faults: &mut Vec<String>) -> String {
    let mut lines = Vec::new();
    for (_, text) in files {
        let resource = match parser::parse(text.as_str()) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        for (key, pattern) in entries(&resource) {
            let mut line = format!("{key}\t");
            if let Err(what) = write(pattern, &mut line) {
                faults.push(format!("{key} holds {what}; write it out"));
            }
            lines.push(line);
        }
    }
    lines.sort_unstable();
    lines.join("\n")
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
