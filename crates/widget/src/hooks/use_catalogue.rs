//! Loads the catalogue and says how far it has come.

use std::cell::Cell;
use std::rc::Rc;

use fitup_catalogue::{Code, Reading, read_bytes};
use fitup_core::fit::Desk;
use web_sys::AbortController;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::fetch::fetch;
use crate::state::{Action, Trouble};

/// Loads the catalogue at `address` whenever it or `attempt` changes.
#[hook]
pub fn use_catalogue(address: Option<AttrValue>, attempt: u32, act: Callback<Action>) {
    use_effect_with((address, attempt), move |(address, _)| {
        let abort = AbortController::new().ok();
        let wanted = Rc::new(Cell::new(true));
        match address.clone().filter(|address| !address.is_empty()) {
            None => act.emit(Action::Failed(Trouble::NoAddress)),
            Some(address) => {
                act.emit(Action::Loading);
                let signal = abort.as_ref().map(AbortController::signal);
                let wanted = Rc::clone(&wanted);
                let act = act.clone();
                spawn_local(async move {
                    // What comes of an address that is no longer wanted is dropped.
                    let act = Callback::from(move |action| {
                        if wanted.get() {
                            act.emit(action);
                        }
                    });
                    let progress = |so_far, of| act.emit(Action::Progress(so_far, of));
                    let action = match fetch(&address, signal.as_ref(), &progress).await {
                        Ok(bytes) => outcome(&address, read_bytes(&bytes)),
                        Err(reason) => Action::Failed(Trouble::Unreachable { address: address.to_string(), reason }),
                    };
                    act.emit(action);
                });
            }
        }
        move || {
            wanted.set(false);
            if let Some(abort) = abort {
                abort.abort();
            }
        }
    });
}

fn outcome(address: &str, reading: Reading) -> Action {
    if let Some(catalogue) = reading.catalogue {
        return Action::Loaded(Rc::new(Desk::new(catalogue)));
    }
    let address = address.to_owned();
    match reading.problems.iter().find(|problem| problem.code == Code::NewerFormat) {
        Some(problem) => Action::Failed(Trouble::Newer { address, problem: problem.clone() }),
        None => Action::Failed(Trouble::Broken { address, problems: reading.problems }),
    }
}
