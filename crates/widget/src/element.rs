//! The element's life: mounted, updated when an attribute changes, unmounted.
//!
//! Roots are pooled: a Yew root keeps its listeners for ever, so a page that mounts and removes
//! the element again and again would grow. A removed element's root renders nothing and is taken
//! up by the next.

use std::collections::BTreeMap;

use std::cell::RefCell;

use wasm_bindgen::prelude::*;
use web_sys::{Element, HtmlElement};
use yew::prelude::*;

use crate::app::{App, AppProps};
use crate::boundary;

/// The attributes that are live.
const OBSERVED: [&str; 9] = ["catalogue", "mode", "lang", "units", "theme", "build", "contact", "address", "idle"];

/// The element's name.
#[wasm_bindgen]
pub fn tag() -> String {
    "fit-up".to_owned()
}

/// The attributes that are live.
#[wasm_bindgen]
pub fn observed() -> Vec<String> {
    OBSERVED.iter().map(|&name| name.to_owned()).collect()
}

/// The style sheet of the shadow root.
#[wasm_bindgen]
pub fn styles() -> String {
    crate::style::STYLES.to_owned()
}

/// Shows the widget in `slot` for the element `host`; the number answers for it from now on.
#[wasm_bindgen]
#[expect(clippy::needless_pass_by_value, reason = "elements come over from JavaScript by value")]
pub fn mount(host: HtmlElement, slot: Element) -> u32 {
    LIVES.with_borrow_mut(|lives| lives.mount(host, &slot))
}

/// Takes up a changed attribute.
#[wasm_bindgen]
pub fn update(id: u32, name: &str, value: Option<String>) {
    LIVES.with_borrow_mut(|lives| lives.update(id, name, value));
}

/// Frees what the element holds.
#[wasm_bindgen]
pub fn unmount(id: u32) {
    LIVES.with_borrow_mut(|lives| lives.unmount(id));
}

thread_local! {
    static LIVES: RefCell<Lives> = RefCell::new(Lives::default());
}

struct Life {
    root: Element,
    handle: yew::AppHandle<Shell>,
    props: AppProps,
}

#[derive(Default)]
struct Lives {
    last_id: u32,
    living: BTreeMap<u32, Life>,
    resting: Vec<(Element, yew::AppHandle<Shell>)>,
}

impl Lives {
    fn mount(&mut self, host: HtmlElement, slot: &Element) -> u32 {
        self.last_id += 1;
        let id = self.last_id;
        let mut props = yew::props!(AppProps { host });
        for name in OBSERVED {
            let value = props.host.get_attribute(name);
            set(&mut props, name, value);
        }
        let shell = ShellProps { inner: Some((id, props.clone())) };
        let (root, handle) = if let Some((root, mut handle)) = self.resting.pop() {
            handle.update(shell);
            (root, handle)
        } else {
            let document = slot.owner_document().expect("a mounted slot belongs to a document");
            let root = document.create_element("div").expect("div is a valid name");
            let handle = yew::Renderer::<Shell>::with_root_and_props(root.clone(), shell).render();
            (root, handle)
        };
        slot.append_child(&root).expect("the slot takes a child");
        boundary::guard(props.host.clone(), slot.clone());
        self.living.insert(id, Life { root, handle, props });
        id
    }

    fn update(&mut self, id: u32, name: &str, value: Option<String>) {
        if let Some(life) = self.living.get_mut(&id) {
            set(&mut life.props, name, value);
            life.handle.update(ShellProps { inner: Some((id, life.props.clone())) });
        }
    }

    fn unmount(&mut self, id: u32) {
        if let Some(mut life) = self.living.remove(&id) {
            boundary::release(&life.props.host);
            life.handle.update(ShellProps { inner: None });
            life.root.remove();
            self.resting.push((life.root, life.handle));
        }
    }
}

fn set(props: &mut AppProps, name: &str, value: Option<String>) {
    let value = value.map(AttrValue::from);
    match name {
        "catalogue" => props.catalogue = value,
        "mode" => props.mode = value,
        "lang" => props.lang = value,
        "units" => props.units = value,
        "theme" => props.theme = value,
        "idle" => props.idle = value,
        "build" => props.build = value,
        "contact" => props.contact = value,
        "address" => props.address = value,
        _ => {}
    }
}

#[derive(Properties, Clone, PartialEq)]
struct ShellProps {
    inner: Option<(u32, AppProps)>,
}

/// The pooled root's content; the key keeps a reused root from inheriting another life's state.
#[component]
fn Shell(props: &ShellProps) -> Html {
    match &props.inner {
        Some((id, inner)) => html! { <App key={*id} ..inner.clone() /> },
        None => Html::default(),
    }
}
