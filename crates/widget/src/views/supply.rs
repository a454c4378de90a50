//! How the catalogue fares: on its way, missing, broken, too new.

use fitup_view::{Problem, Problems};
use yew::prelude::*;

use crate::ctx::{Ctx, use_ctx};
use crate::hooks::use_later;
use crate::state::{Supply, Trouble};

/// Milliseconds after which a catalogue counts as slow.
const SLOW: u32 = 6000;

#[derive(Properties, PartialEq)]
pub struct SupplyStateProps {
    /// How far it has come.
    pub supply: Supply,
    /// Why it could not be loaded.
    pub trouble: Option<Trouble>,
    /// What is wrong with it.
    pub problems: Option<Problems>,
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
        Trouble::Broken { address, is_newer, .. } => {
            let key = if *is_newer { "ui-catalogue-newer" } else { "ui-catalogue-broken" };
            (key, address.as_str(), props.problems.as_ref().map(list).unwrap_or_default())
        }
    };
    trouble_of(&ctx, key, address, more, props)
}

fn trouble_of(ctx: &Ctx, key: &str, address: &str, more: Html, props: &SupplyStateProps) -> Html {
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

fn list(problems: &Problems) -> Html {
    html! {
        <>
            <ol class="problems">
                for (at, problem) in problems.listed.iter().enumerate() {
                    <li key={at}>{ told(problem) }</li>
                }
            </ol>
            if let Some(more) = problems.more.clone() {
                <p class="soft">{ more }</p>
            }
        </>
    }
}

/// A problem: where, what, and what mends it.
fn told(problem: &Problem) -> Html {
    html! {
        <>
            <span class="problem-place">{ problem.place.clone() }</span>
            <span>{ problem.sentence.clone() }</span>
            <span class="soft">{ problem.mend.clone() }</span>
        </>
    }
}
