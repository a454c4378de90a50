//! The item list: the four steps, one open at a time.

use fitup_core::build::{Build, Step};
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::also::also;
use super::step::StepItem;
use crate::ctx::use_ctx;
use crate::same::Same;
use crate::state::{Pick, Sort};

#[derive(Properties, PartialEq)]
pub struct StepsProps {
    /// The build.
    pub build: Same<Build>,
    /// What each option leads to.
    pub reach: Option<Same<Reachable>>,
    /// The open step.
    pub open: Option<Step>,
    /// The search in it.
    pub search: AttrValue,
    /// The order of its options.
    pub sort: Sort,
}

/// The item list.
#[component]
pub fn Steps(props: &StepsProps) -> Html {
    let ctx = use_ctx();
    let StepsProps { build, reach, open, search, sort } = props;
    let unanswered = |step: &Step| step.chosen(build).is_none();
    let next_after = |step: Step| {
        let at = step as usize + 1;
        let around = Step::ALL[at..].iter().chain(&Step::ALL[..at - 1]);
        around.copied().find(unanswered)
    };
    html! {
        <>
        <ol class="steps" aria-label={ctx.text("ui-steps")}>
            for step in Step::ALL {
                <StepItem
                    key={step.name()} {step} chosen={Pick::of(build, step)}
                    on_hand={Pick::of(build, step).and_then(Pick::item).is_some_and(|i| build.on_hand.contains(&i))}
                    open={*open == Some(step)} roomy={open.is_none()} next={next_after(step)}
                    build={(*open == Some(step)).then(|| build.clone())}
                    reach={reach.clone().filter(|_| *open == Some(step))}
                    search={if *open == Some(step) { search.clone() } else { AttrValue::default() }} sort={*sort}
                />
            }
        </ol>
        { also(&ctx, build) }
        </>
    }
}
