//! Parts to buy: what the build needs, what is on hand, what it costs.

use fitup_core::build::Build;
use fitup_core::fit::{Answer, ComeBy, PartsLine};
use fitup_core::item::{Equipment, EquipmentId};
use fitup_view as view;

use super::ctx::Ctx;

/// The table of parts.
pub fn parts(ctx: Ctx, build: &Build, answer: &Answer) -> view::Parts {
    let parts = &answer.parts;
    let reader = ctx.words.reader();
    let line = |line: &PartsLine| view::PartsLine {
        item: Some((ctx.id(line.item), line.come_by == ComeBy::OnHand)),
        kind: ctx.words.kind(line.item),
        label: ctx.label(line.item).to_owned(),
        quantity: reader.count(line.quantity.into()),
        price: match line.come_by {
            ComeBy::OnHand => ctx.text("ui-on-hand"),
            ComeBy::ComesWith(other) => ctx.text_with("ui-comes-with", &[("item", ctx.label(other).into())]),
            ComeBy::Buy => line.price.map_or_else(|| ctx.text("ui-price-on-request"), |price| ctx.money(price)),
        },
    };
    let fitting = |fitting: &String| view::PartsLine {
        item: None,
        kind: String::new(),
        label: fitting.clone(),
        quantity: reader.count(1),
        price: ctx.text("come-by-elsewhere"),
    };
    // Fittings belong to the items that need them: without items there are none.
    let fittings = parts.fittings.iter().filter(|_| !parts.lines.is_empty());
    view::Parts {
        lines: parts.lines.iter().map(line).chain(fittings.map(fitting)).collect(),
        total: total(ctx, answer),
        work: ctx.words.strip_total(&answer.strip),
        bolts: bolts(ctx, answer),
        equipment: equipment(ctx, build),
        strip: strip(ctx, answer),
    }
}

/// What can be on the machine, in the order of the catalogue.
fn equipment(ctx: Ctx, build: &Build) -> Vec<view::EquipmentLine> {
    let Some(machine) = build.choices.machine else { return Vec::new() };
    let on = &ctx.catalogue().machine(machine).on;
    let pieces = ctx.catalogue().equipment_for(machine);
    let line = |(id, piece): (EquipmentId, &Equipment)| view::EquipmentLine {
        id: piece.body.id.clone(),
        label: piece.body.label.clone(),
        is_on: on.iter().any(|on| on.id == id),
    };
    pieces.map(line).collect()
}

/// What comes off, moves and goes on, each with its hours.
fn strip(ctx: Ctx, answer: &Answer) -> Option<(String, Vec<String>)> {
    let line = |step| {
        let told = ctx.words.strip_step(ctx.catalogue(), step);
        ctx.words.strip_hours(step).map_or(told.clone(), |hours| format!("{told} ({hours})"))
    };
    let lines: Vec<String> = answer.strip.steps.iter().map(line).collect();
    (!lines.is_empty()).then(|| (ctx.text("strip-title"), lines))
}

/// The bolts of the joints, and the holes to make for them.
fn bolts(ctx: Ctx, answer: &Answer) -> Option<(String, Vec<String>)> {
    let lines: Vec<String> =
        answer.bolts.iter().flat_map(|bolts| ctx.words.bolt_lines(ctx.catalogue(), bolts)).collect();
    (!lines.is_empty()).then(|| (ctx.text("bolts-title"), lines))
}

/// What is to buy comes to, or the least of it where prices are missing.
pub fn total(ctx: Ctx, answer: &Answer) -> String {
    match (answer.parts.total, answer.parts.known()) {
        (Some(total), (_, 0)) => ctx.money(total),
        (_, (known, open)) => {
            let known = ctx.money(known);
            ctx.text_with("total-at-least", &[("known", known.into()), ("open", open.into())])
        }
    }
}
