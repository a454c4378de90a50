//! Loads the catalogue and says how far it has come.

use std::cell::Cell;
use std::rc::Rc;

use web_sys::AbortController;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::fetch::{Fetched, fetch};
use crate::port::Port;
use crate::state::{Action, Trouble};

/// Loads the catalogue at `address` for the engine whenever it or `attempt` changes.
#[hook]
pub fn use_catalogue(address: Option<AttrValue>, attempt: u32, port: Port, act: Callback<Action>) {
    use_effect_with((address, attempt), move |(address, _)| {
        let abort = AbortController::new().ok();
        let wanted = Rc::new(Cell::new(true));
        match address.clone().filter(|address| !address.is_empty()) {
            None => act.emit(Action::Failed(Trouble::NoAddress)),
            Some(address) => {
                act.emit(Action::Loading);
                port.want();
                let signal = abort.as_ref().map(AbortController::signal);
                let wanted = Rc::clone(&wanted);
                let act = act.clone();
                spawn_local(async move {
                    // What comes of an address that is no longer wanted is dropped.
                    let act = {
                        let wanted = Rc::clone(&wanted);
                        Callback::from(move |action| {
                            if wanted.get() {
                                act.emit(action);
                            }
                        })
                    };
                    let progress = |so_far, of| act.emit(Action::Progress(so_far, of));
                    match fetch(&address, signal.as_ref(), &progress).await {
                        Ok(Fetched { bytes, kept }) if wanted.get() => {
                            act.emit(Action::Kept(kept));
                            port.read(&address, &bytes);
                        }
                        Ok(_) => {}
                        Err(reason) => {
                            act.emit(Action::Failed(Trouble::Unreachable { address: address.to_string(), reason }));
                        }
                    }
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
