//! Findings, checks and remedies in the reader's words.

use fitup_core::build::{Change, Measurement};
use fitup_core::finding::{Finding, Subject, Value};
use fitup_core::item::ItemRef;
use fitup_core::quantity::Length;
use fitup_core::search::{Remedy, RemedyStep};
use fitup_words::{Arg, LengthStyle, Line, LineRole, Span};
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

/// A remedy's steps, a phrase each.
pub fn remedy_steps(ctx: &Ctx, remedy: &Remedy) -> Vec<String> {
    let item = |item| Arg::from(ctx.words.item(ctx.catalogue(), item));
    let words = |key: &str, args: &[(&str, Arg)]| ctx.text_with(key, args);
    let one = |step: &RemedyStep| match step {
        RemedyStep::Adapter(id) => words("remedy-adapter", &[("item", item(ItemRef::Adapter(*id)))]),
        RemedyStep::Seat(id) => words("remedy-seat", &[("item", item(ItemRef::Seat(*id)))]),
        RemedyStep::Carry(carrying) => match carrying.frame() {
            Some(id) => words("remedy-frame", &[("item", item(ItemRef::Frame(id)))]),
            None => words("remedy-hitch", &[]),
        },
        RemedyStep::Change(change) => change_words(ctx, change),
    };
    remedy.steps.iter().map(one).collect()
}

/// Work decided on, in a phrase.
pub fn change_words(ctx: &Ctx, change: &Change) -> String {
    let reader = ctx.words.reader();
    let item = |item| Arg::from(ctx.words.item(ctx.catalogue(), item));
    match change {
        Change::Drill { item: of, port } => {
            ctx.text_with("remedy-drill", &[("port", port.clone().into()), ("item", item(*of))])
        }
        Change::OpenUp { item: of, port, by } => ctx.text_with(
            "remedy-open-up",
            &[("port", port.clone().into()), ("item", item(*of)), ("by", reader.length(*by, LengthStyle::Fine).into())],
        ),
        Change::FrontSeatForward => ctx.text("remedy-front-seat-forward"),
        Change::FoldRollOverBar => ctx.text("remedy-fold-roll-over-bar"),
        Change::TakeOff(what) => ctx.text_with("remedy-take-off", &[("what", what.clone().into())]),
        Change::PutOn(what) => ctx.text_with("remedy-put-on", &[("what", what.clone().into())]),
        Change::Ramps { length } => {
            ctx.text_with("remedy-ramps", &[("length", reader.length(*length, LengthStyle::Drawn).into())])
        }
        Change::Ballast { mass, x } => {
            let behind = x.si() < 0.0;
            let key = if behind { "remedy-ballast-behind" } else { "remedy-ballast" };
            let place = reader.length(x.abs(), LengthStyle::Drawn);
            ctx.text_with(key, &[("mass", reader.mass(*mass).into()), ("x", place.into())])
        }
    }
}

/// What a remedy costs in money, time and length, in a line.
pub fn remedy_effect(ctx: &Ctx, remedy: &Remedy) -> String {
    let reader = ctx.words.reader();
    let money = match remedy.buy_more {
        None => ctx.text("remedy-price-open"),
        Some(more) => {
            let more = reader.money_more(more, &ctx.catalogue().name.currency);
            ctx.text_with("remedy-costs", &[("money", more.into())])
        }
    };
    let work = ctx.text_with("remedy-takes", &[("work", reader.work_more(remedy.work_more).into())]);
    let length = remedy
        .length_more
        .map(|more| ctx.text_with("remedy-length", &[("length", reader.length(more, LengthStyle::Change).into())]));
    [Some(money), Some(work), length].into_iter().flatten().collect::<Vec<_>>().join(" · ")
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
