//! Findings, checks and remedies in the reader's words.

use fitup_core::build::Measurement;
use fitup_core::finding::{Finding, Subject, Value};
use fitup_core::quantity::Length;
use fitup_words::{LengthStyle, Line, LineRole, Span};
use yew::prelude::*;

use crate::ctx::Ctx;

/// A finding in a few words, for cards and the title block.
pub fn short(ctx: &Ctx, finding: &Finding) -> String {
    ctx.words.short(ctx.catalogue(), finding)
}

/// A finding in a sentence for a shopper.
pub fn sentence(ctx: &Ctx, finding: &Finding) -> Html {
    spans(&ctx.words.shopper(ctx.catalogue(), finding).spans)
}

/// A finding for a workshop: figures, evidence with its chain, checks; a line each.
pub fn workshop(ctx: &Ctx, finding: &Finding) -> Vec<(LineRole, Html)> {
    let lines: Vec<Line> = ctx.words.workshop(ctx.catalogue(), finding);
    lines.iter().map(|line| (line.role, spans(&line.spans))).collect()
}

/// Spans with figures kept in one piece and part numbers set apart.
pub fn spans(spans: &[Span]) -> Html {
    spans
        .iter()
        .map(|span| match span {
            Span::Text(text) | Span::Label(text) => html! { { text.clone() } },
            Span::Figure { text, .. } => html! { <span class="said-figure">{ text.clone() }</span> },
            Span::Part(number) => html! { <span class="part-number">{ number.clone() }</span> },
            Span::Item { label, .. } => html! { <span class="said-item">{ label.clone() }</span> },
        })
        .collect()
}

/// What a finding is about, as a heading.
pub fn subject(ctx: &Ctx, finding: &Finding) -> String {
    match finding.subject {
        Subject::Item(item) => ctx.label(item).to_owned(),
        _ => ctx.words.area(finding),
    }
}

/// A value of the footprint.
pub fn value(ctx: &Ctx, value: &Value) -> String {
    match value {
        Value::Length(length) => ctx.words.reader().length(*length, LengthStyle::Drawn),
        other => ctx.words.value(ctx.catalogue(), "footprint", other),
    }
}

/// A length as it is drawn.
pub fn length(ctx: &Ctx, length: Length) -> String {
    ctx.words.reader().length(length, LengthStyle::Drawn)
}

/// A change of a value of the footprint, with its sign.
pub fn change(ctx: &Ctx, change: &Value) -> String {
    let reader = ctx.words.reader();
    match change {
        Value::Length(length) => reader.length(*length, LengthStyle::Change),
        Value::Mass(mass) => reader.mass_more(*mass),
        Value::Angle(angle) => reader.angle_more(*angle),
        other => value(ctx, other),
    }
}

/// A measurement in a line.
pub fn measured(ctx: &Ctx, measured: &Measurement) -> String {
    format!(
        "{}, {}: {} ({})",
        ctx.label(measured.item),
        ctx.words.value_name(&measured.dimension),
        ctx.words.reader().length(measured.value, LengthStyle::Part),
        ctx.words.tool(measured.tool)
    )
}
