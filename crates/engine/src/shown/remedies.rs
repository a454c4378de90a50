//! What would help: changes to the build, each with what it comes to.

use fitup_core::build::Build;
use fitup_core::search;
use fitup_view as view;

use super::ctx::{Ctx, verdict};
use crate::link;

/// Remedies shown at once; the best stand first.
const SHOWN: usize = 4;

/// The remedies of a build.
pub fn remedies(ctx: Ctx, build: &Build) -> view::Remedies {
    let told = search::remedies(ctx.desk, build);
    let one = |remedy: &search::Remedy| view::Remedy {
        build: link::text_of(ctx.catalogue(), &remedy.build),
        steps: ctx.words.remedy_steps(ctx.catalogue(), remedy),
        settles: ctx.words.remedy_settles(ctx.catalogue(), remedy),
        verdict: verdict(remedy.verdict),
        word: ctx.words.verdict(remedy.verdict),
        effect: ctx.words.remedy_effect(ctx.catalogue(), remedy).join(" · "),
        leaves: ctx.words.remedy_leaves(ctx.catalogue(), remedy),
    };
    let more = told.found.len().saturating_sub(SHOWN);
    view::Remedies {
        of: link::text_of(ctx.catalogue(), build),
        none: told.none.and_then(|none| ctx.words.no_remedy(none)),
        found: told.found.iter().map(one).collect(),
        at_once: u32::try_from(SHOWN).unwrap_or_default(),
        more: (more > 0).then(|| ctx.text_with("ui-remedies-more", &[("count", more.into())])),
    }
}
