//! Work that can wait until the picture is painted.

use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// What `work` gives, worked out `millis` after `deps` last changed. Until then what it gave
/// before, or `None`.
#[hook]
pub fn use_later<D, T>(millis: u32, deps: D, work: impl Fn(&D) -> T + 'static) -> Option<T>
where
    D: Clone + PartialEq + 'static,
    T: Clone + 'static,
{
    let result = use_state(|| None::<T>);
    {
        let result = result.setter();
        use_effect_with(deps, move |deps| {
            let deps = deps.clone();
            let timeout = Timeout::new(millis, move || result.set(Some(work(&deps))));
            move || drop(timeout)
        });
    }
    (*result).clone()
}
