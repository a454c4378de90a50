//! The four steps as they stand, and what else is in the build.

use fitup_core::build::{Build, Step};
use fitup_core::item::ItemRef;
use fitup_drawing::silhouette;
use fitup_view::{Also, Extra, StepHead};

use super::ctx::Ctx;
use super::picture::{Lettering, card_sheet, titled};
use crate::change::Pick;

/// The step as a page calls it.
pub const fn step_shown(step: Step) -> fitup_view::Step {
    match step {
        Step::Machine => fitup_view::Step::Machine,
        Step::Frame => fitup_view::Step::Frame,
        Step::Seat => fitup_view::Step::Seat,
        Step::Implement => fitup_view::Step::Implement,
    }
}

/// The four steps.
pub fn steps(ctx: Ctx, build: &Build) -> Vec<StepHead> {
    let one = |step: Step| {
        let chosen = Pick::of(build, step);
        let item = chosen.and_then(Pick::item);
        let on_hand = item.is_some_and(|item| build.side.on_hand.contains(&item));
        let aside = match item {
            Some(_) if on_hand => ctx.text("ui-on-hand"),
            Some(item) => ctx.catalogue().body(item).price.map(|price| ctx.price(price)).unwrap_or_default(),
            None if chosen.is_some() => String::new(),
            None => ctx.text_with("ui-options", &[("count", Pick::all(ctx.catalogue(), step).len().into())]),
        };
        StepHead {
            step: step_shown(step),
            chosen: chosen.map(|pick| ctx.pick_label(pick)),
            item: item.map(|item| ctx.id(item)),
            on_hand,
            shape: item.map(|item| shape(ctx, item, None)).unwrap_or_default(),
            aside,
        }
    };
    Step::ALL.into_iter().map(one).collect()
}

/// An item's outline at card size; `span` is the length in metres that fills the width. The card says what it is: to a screen
/// reader the outline says nothing.
pub fn shape(ctx: Ctx, item: ItemRef, span: Option<f64>) -> String {
    let lettering = Lettering(ctx.words);
    titled(&silhouette(ctx.catalogue(), item, span, &card_sheet(&lettering)), "").svg
}

/// Adapters and work decided on, each to be taken out again.
pub fn also(ctx: Ctx, build: &Build) -> Vec<Also> {
    let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let (adapters, changes) = (&build.side.adapters, &build.side.changes);
    let adapters = adapters.iter().enumerate().map(|(at, &id)| Also {
        words: ctx.label(ItemRef::Adapter(id)).to_owned(),
        extra: Extra::Adapter(number(at), number(adapters.len())),
    });
    let work = changes.iter().enumerate().map(|(at, change)| Also {
        words: ctx.words.change(ctx.catalogue(), change),
        extra: Extra::Change(number(at), number(changes.len())),
    });
    adapters.chain(work).collect()
}
