//! The options of the open step as cards.

use fitup_core::build::{Build, Step};
use fitup_core::finding::{Question, Verdict};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::search::{Headline, Reach, Reachable};
use fitup_drawing::common_span;
use fitup_view::{Card, Look, Options};

use super::ctx::{Ctx, verdict};
use super::order;
use super::picture::{Lettering, card_sheet};
use super::steps::{shape, step_shown};
use crate::change::Pick;

/// What the options of a build lead to, and what stands over it.
#[derive(Debug, Clone, Copy, Default)]
pub struct Reached<'a> {
    /// What each option leads to; `None` as long as it is being worked out.
    pub reach: Option<&'a Reachable>,
    /// The headline.
    pub headline: Option<&'a Headline>,
}

/// The options of a step, as many of them as are looked at.
pub fn options(ctx: Ctx, build: &Build, step: Step, look: &Look, reached: Reached) -> Options {
    let all = Pick::all(ctx.catalogue(), step);
    let chosen = Pick::of(build, step);
    let nothing = Reachable::default();
    let hitch = ctx.text("ui-on-hitch");
    let reach = reached.reach.unwrap_or(&nothing);
    let picks = order::options(ctx.desk, reach, step, &look.search, look.sort, &hitch);
    // Digging arms stand as high as the machine; drawn to the same scale, a blade would be too small to see.
    let lettering = Lettering(ctx.words);
    let spans = [false, true].map(|arms| {
        let items = all.iter().filter_map(|pick| pick.item()).filter(|&item| is_arm(ctx.catalogue(), item) == arms);
        common_span(ctx.catalogue(), items, &card_sheet(&lettering))
    });
    let is_decided = Step::ALL.iter().all(|&other| other == step || other.chosen(build).is_some());
    let card = |pick: Pick| {
        // The card of what is picked says what the headline says, of the same build.
        let reach = match reached.headline {
            Some(headline) if Some(pick) == chosen => {
                Some(Reach { verdict: headline.verdict(), build: headline.build.clone(), counts: None })
            }
            _ => reach.through(step, pick.option).cloned(),
        };
        let on_hand = pick.item().is_some_and(|item| build.side.on_hand.contains(&item));
        Card {
            id: pick.item().map(|item| ctx.id(item)),
            chosen: Some(pick) == chosen,
            name: ctx.pick_label(pick),
            price: price(ctx, pick, on_hand),
            shape: pick
                .item()
                .map(|item| shape(ctx, item, spans[usize::from(is_arm(ctx.catalogue(), item))]))
                .unwrap_or_default(),
            ..told(ctx, reach.as_ref(), is_decided)
        }
    };
    let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    Options {
        step: step_shown(step),
        all: number(all.len()),
        found: number(picks.len()),
        cards: picks.iter().take(look.cards as usize).map(|&pick| card(pick)).collect(),
    }
}

fn price(ctx: Ctx, pick: Pick, on_hand: bool) -> String {
    match pick.item().map(|item| ctx.catalogue().body(item)) {
        None => String::new(),
        Some(_) if on_hand => ctx.text("ui-on-hand"),
        Some(body) => body.price.map_or_else(|| ctx.text("ui-price-on-request"), |price| ctx.price(price)),
    }
}

/// What an option still leads to and why to nothing better, in a card that says nothing else. As long as steps are open,
/// nothing that is well has the colour of an answer.
fn told(ctx: Ctx, reach: Option<&Reach>, is_decided: bool) -> Card {
    let reason = reach.and_then(|reach| reach.reason(ctx.desk));
    let question = reason.as_ref().map_or(Question::Fit, |finding| finding.question);
    Card {
        id: None,
        chosen: false,
        name: String::new(),
        price: String::new(),
        verdict: reach.map(|reach| verdict(reach.verdict)),
        coloured: reach.is_some_and(|reach| is_decided || reach.verdict > Verdict::BoltsUpWithWork),
        word: match reach {
            Some(reach) => ctx.words.reached(question, reach.verdict, is_decided),
            None => ctx.text("headline-open"),
        },
        why: reason.map(|finding| ctx.words.why(ctx.catalogue(), &finding)).unwrap_or_default(),
        shape: String::new(),
    }
}

/// Whether an item is a digging arm.
fn is_arm(catalogue: &Catalogue, item: ItemRef) -> bool {
    matches!(item, ItemRef::Implement(id) if catalogue.implement(id).arm.is_some())
}
