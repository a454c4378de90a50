//! The best complete sets.

use fitup_core::build::{Build, Step};
use fitup_core::search::{self, Set};
use fitup_view::{self as view, Look, SetOrder, SetShown};
use fitup_words::verdict_key;

use super::ctx::{Ctx, verdict};
use super::steps::step_shown;
use crate::change::Pick;
use crate::link;

/// The view; `found` is nothing as long as the sets are being looked for.
pub fn sets(ctx: Ctx, build: &Build, look: &Look, found: Option<&search::Sets>) -> view::Sets {
    let is_kept = |step: Step| !look.set_free.contains(&step_shown(step));
    let picked = Step::ALL.into_iter().filter_map(|step| Some((step, Pick::of(build, step)?)));
    let kept: Vec<_> = picked.map(|(step, pick)| (step_shown(step), ctx.pick_label(pick), is_kept(step))).collect();
    let is_settled = kept.len() == Step::ALL.len() && kept.iter().all(|&(.., is_kept)| is_kept);
    let says = found.map(|found| match found.found.len() {
        _ if is_settled => ctx.text("sets-all-kept"),
        0 => ctx.text("sets-none"),
        _ if !found.is_exact => ctx.text("sets-not-all"),
        _ => ctx.text("sets-says"),
    });
    view::Sets {
        kept,
        orders: SetOrder::ALL.iter().map(|&order| (order, ctx.words.set_order(ordered(order)))).collect(),
        found: found.map(|found| {
            // What every set has goes without saying.
            let is_told = |step: Step| is_settled || Pick::of(build, step).is_none() || !is_kept(step);
            found.found.iter().map(|set| shown(ctx, set, is_told)).collect()
        }),
        says,
    }
}

fn shown(ctx: Ctx, set: &Set, is_told: impl Fn(Step) -> bool) -> SetShown {
    let told = Step::ALL.into_iter().filter(|&step| is_told(step)).filter_map(|step| Pick::of(&set.build, step));
    let named: Vec<String> = told.map(|pick| ctx.pick_label(pick)).collect();
    SetShown {
        build: link::text_of(ctx.catalogue(), &set.build),
        name: named.join(" + "),
        verdict: verdict(set.verdict),
        word: ctx.text(verdict_key(set.verdict)),
        unbeaten: set.is_unbeaten.then(|| ctx.text("sets-unbeaten")),
        measures: ctx.words.set_measures(ctx.catalogue(), set),
    }
}

/// The order as the search calls it.
pub const fn ordered(order: SetOrder) -> search::SetOrder {
    match order {
        SetOrder::Price => search::SetOrder::Price,
        SetOrder::Length => search::SetOrder::Length,
        SetOrder::Departure => search::SetOrder::Departure,
        SetOrder::Hours => search::SetOrder::Hours,
        SetOrder::OnHand => search::SetOrder::OnHand,
    }
}
