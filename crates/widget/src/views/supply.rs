//! How the catalogue fares: on its way, missing, broken, too new.

use fitup_catalogue::{Problem, Severity};
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::hooks::use_later;
use crate::state::{Supply, Trouble};

/// Problems listed at most; the rest are counted.
const LISTED: usize = 50;
/// Milliseconds after which a catalogue counts as slow.
const SLOW: u32 = 6000;

#[derive(Properties, PartialEq)]
pub struct SupplyStateProps {
    /// How far it has come.
    pub supply: Supply,
    /// Why it is not to be had.
    pub trouble: Option<Trouble>,
    /// Whether there is a catalogue to work with.
    pub ready: bool,
    /// Loads it again.
    pub retry: Callback<()>,
}

/// Progress or trouble; nothing once all is well.
#[component]
pub fn SupplyState(props: &SupplyStateProps) -> Html {
    let ctx = use_ctx();
    let loading = matches!(props.supply, Supply::Loading(..) | Supply::Idle);
    let slow = use_later(SLOW, loading, |&loading| loading).unwrap_or_default() && loading;
    if let Supply::Loading(so_far, of) = props.supply {
        let value = of.map(|_| so_far.to_string());
        return html! {
            <div class="supply" role="status">
                <p>{ ctx.text("ui-loading-catalogue") }</p>
                <progress {value} max={of.map(|of| of.to_string())} aria-label={ctx.text("ui-loading-catalogue")} />
                <p class="small soft">{ slow.then(|| ctx.text("ui-catalogue-slow")) }</p>
            </div>
        };
    }
    let Some(trouble) = &props.trouble else { return Html::default() };
    let (key, address, more) = match trouble {
        Trouble::NoAddress => ("ui-catalogue-no-address", "", Html::default()),
        Trouble::Unreachable { address, reason } => {
            ("ui-catalogue-missing", address.as_str(), html! { <p class="soft">{ reason.clone() }</p> })
        }
        Trouble::Newer { address, problem } => {
            ("ui-catalogue-newer", address.as_str(), list(&ctx, std::slice::from_ref(problem)))
        }
        Trouble::Broken { address, problems } => ("ui-catalogue-broken", address.as_str(), list(&ctx, problems)),
    };
    let retry = props.retry.clone();
    html! {
        <div class="trouble" role="alert">
            <h2>{ ctx.text(key) }</h2>
            if !address.is_empty() {
                <p class="address">{ address.to_owned() }</p>
            }
            if props.ready {
                <p>{ ctx.text("ui-catalogue-kept") }</p>
            }
            { more }
            <button type="button" class="button" onclick={move |_| retry.emit(())}>{ ctx.text("ui-try-again") }</button>
        </div>
    }
}

fn list(ctx: &crate::ctx::Ctx, problems: &[Problem]) -> Html {
    let errors = problems.iter().filter(|problem| problem.code.severity() == Severity::Error);
    html! {
        <>
            <ol class="problems">
                for (at, problem) in errors.clone().take(LISTED).enumerate() {
                    <li key={at}>{ told(ctx, problem) }</li>
                }
            </ol>
            if errors.clone().count() > LISTED {
                <p class="soft">
                    { ctx.text_with("ui-more-problems", &[("count", (errors.count() - LISTED).into())]) }
                </p>
            }
        </>
    }
}

/// A problem: where, what, and what mends it.
fn told(ctx: &crate::ctx::Ctx, problem: &Problem) -> Html {
    let told = ctx.words.problem(problem);
    html! {
        <>
            <span class="problem-place">{ told.place }</span>
            <span>{ told.sentence }</span>
            <span class="soft">{ told.mend }</span>
        </>
    }
}
