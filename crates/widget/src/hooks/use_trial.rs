//! A build tried while a slider moves, taken when it is let go.

use fitup_core::build::Build;
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::same::Same;
use crate::state::{Action, Edit};

/// The build as tried, and two callbacks: one tries an edit, the other takes it for good.
#[hook]
pub fn use_trial(ctx: &Ctx, build: &Same<Build>) -> (Same<Build>, Callback<Edit>, Callback<Edit>) {
    let tried = use_state(|| None::<(Same<Build>, Same<Build>)>);
    // What was tried on another build is forgotten.
    let shown = tried.as_ref().filter(|(base, _)| base == build).map_or_else(|| build.clone(), |(_, it)| it.clone());
    let live = {
        let (ctx, build, tried) = (ctx.clone(), build.clone(), tried.setter());
        Callback::from(move |edit: Edit| {
            tried.set(Some((build.clone(), Same::new(edit.apply(ctx.catalogue(), &build)))));
        })
    };
    let act = ctx.act.clone();
    let done = Callback::from(move |edit: Edit| act.emit(Action::Edit(edit)));
    (shown, live, done)
}
