//! Notices that nobody is there any more.

use std::cell::RefCell;
use std::rc::Rc;

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// What tells that somebody is there.
const SIGNS: [&str; 5] = ["pointerdown", "pointermove", "keydown", "wheel", "input"];

/// Calls `left` when for so many seconds there has been no sign of anybody; `None` = never. A change of `anew` counts as a sign.
#[hook]
pub fn use_idle<D: PartialEq + 'static>(seconds: Option<u32>, anew: D, left: Callback<()>) {
    use_effect_with((seconds, anew), move |&(seconds, _)| {
        let document = web_sys::window().and_then(|window| window.document());
        let watching = seconds.zip(document).map(|(seconds, document)| {
            let waiting = Rc::new(RefCell::new(None));
            let wait = {
                let waiting = Rc::clone(&waiting);
                move || {
                    let left = left.clone();
                    *waiting.borrow_mut() = Some(Timeout::new(seconds.saturating_mul(1000), move || left.emit(())));
                }
            };
            wait();
            let listeners = SIGNS.map(|sign| {
                let wait = wait.clone();
                EventListener::new(&document, sign, move |_| wait())
            });
            (waiting, listeners)
        });
        move || {
            if let Some((waiting, listeners)) = watching {
                drop(listeners);
                waiting.take();
            }
        }
    });
}
