//! How much room an element has.

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::*;
use web_sys::{Element, ResizeObserver};
use yew::prelude::*;

/// Steps of the width in pixels: a drag of the window's edge does not redraw at every pixel.
const STEP: u32 = 8;

/// Width and height of the node in CSS pixels, in steps; `None` until it is known.
#[hook]
pub fn use_room(node: &NodeRef) -> Option<(u32, u32)> {
    let room = use_state_eq(|| None::<(u32, u32)>);
    {
        let (node, room) = (node.clone(), room.setter());
        use_effect_with((), move |()| {
            let element = node.cast::<Element>();
            let measure = Closure::<dyn Fn(js_sys::Array)>::new(move |entries: js_sys::Array| {
                let entry = entries.get(0).dyn_into::<web_sys::ResizeObserverEntry>();
                let Some(element) = entry.ok().map(|entry| entry.target()) else { return };
                let size = |pixels: i32| u32::try_from(pixels).unwrap_or_default();
                let (width, height) = (size(element.client_width()), size(element.client_height()));
                if width > 0 && height > 0 {
                    room.set(Some((width / STEP * STEP, height / STEP * STEP)));
                }
            });
            let observer = ResizeObserver::new(measure.as_ref().unchecked_ref()).ok();
            if let (Some(observer), Some(element)) = (&observer, &element) {
                observer.observe(element);
            }
            move || {
                if let Some(observer) = observer {
                    observer.disconnect();
                }
                drop(measure);
            }
        });
    }
    *room
}
