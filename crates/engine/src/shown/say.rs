//! Findings in the reader's words.

use fitup_core::finding::{Check, Finding, Subject, Value};
use fitup_view::{Line, LineRole, Said, Span};
use fitup_words::LengthStyle;

use super::ctx::Ctx;

/// A finding in a sentence for a shopper.
pub fn sentence(ctx: Ctx, finding: &Finding) -> Said {
    said(ctx.words.shopper(ctx.catalogue(), finding).spans)
}

/// A finding for a workshop: figures, evidence with its chain; a line each.
pub fn workshop(ctx: Ctx, finding: &Finding) -> Vec<Line> {
    let role = |role| match role {
        fitup_words::LineRole::Sentence => LineRole::Says,
        fitup_words::LineRole::Evidence
        | fitup_words::LineRole::Step
        | fitup_words::LineRole::Parts
        | fitup_words::LineRole::Caution => LineRole::Rests,
    };
    let lines = ctx.words.workshop(ctx.catalogue(), finding);
    lines.into_iter().map(|line| Line { role: role(line.role), said: said(line.spans) }).collect()
}

/// What would settle a finding.
pub fn check(ctx: Ctx, check: &Check) -> Line {
    Line { role: LineRole::Check, said: said(ctx.words.check(ctx.catalogue(), check)) }
}

/// Spans with figures kept in one piece and part numbers set apart.
fn said(spans: Vec<fitup_words::Span>) -> Said {
    let one = |span| match span {
        fitup_words::Span::Text(text) | fitup_words::Span::Label(text) => Span::Text(text),
        fitup_words::Span::Figure { text, .. } => Span::Figure(text),
        fitup_words::Span::Part(number) => Span::Part(number),
        fitup_words::Span::Item { label, .. } => Span::Item(label),
    };
    spans.into_iter().map(one).collect()
}

/// What a finding is about, as a heading.
pub fn subject(ctx: Ctx, finding: &Finding) -> String {
    match finding.subject {
        Subject::Item(item) => ctx.label(item).to_owned(),
        _ => ctx.words.area(finding),
    }
}

/// What is said, as plain text.
pub fn plain(said: &Said) -> String {
    let text = |span: &Span| match span {
        Span::Text(text) | Span::Figure(text) | Span::Part(text) | Span::Item(text) => text.clone(),
    };
    said.iter().map(text).collect()
}

/// A value of the footprint.
pub fn value(ctx: Ctx, value: &Value) -> String {
    match value {
        Value::Length(length) => ctx.length(*length),
        other => ctx.words.value(ctx.catalogue(), other),
    }
}

/// A change of a value of the footprint, with its sign.
pub fn change(ctx: Ctx, change: &Value) -> String {
    let reader = ctx.words.reader();
    match change {
        Value::Length(length) => reader.length(*length, LengthStyle::Change),
        Value::Mass(mass) => reader.mass_more(*mass),
        Value::Angle(angle) => reader.angle_more(*angle),
        other => value(ctx, other),
    }
}
