//! How much room an element has.

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::*;
use web_sys::{Element, ResizeObserver};
use yew::prelude::*;

/// Steps of the width in pixels: a drag of the window's edge does not redraw at every pixel.
const STEP: i32 = 8;

/// Width and height of the node in CSS pixels, in steps; `None` until it is known.
#[hook]
pub fn use_room(node: &NodeRef) -> Option<(i32, i32)> {
    let room = use_state_eq(|| None::<(i32, i32)>);
    {
        let (node, room) = (node.clone(), room.setter());
        use_effect_with((), move |()| {
            let element = node.cast::<Element>();
            let measure = Closure::<dyn Fn(js_sys::Array)>::new(move |entries: js_sys::Array| {
                let entry = entries.get(0).dyn_into::<web_sys::ResizeObserverEntry>();
                let Some(element) = entry.ok().map(|entry| entry.target()) else { return };
                let (width, height) = (element.client_width(), element.client_height());
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
