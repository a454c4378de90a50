//! The engine of one element: what is asked of it, and what it says.

use fitup_view::{Ask, Here, Lang, Look, Part, Reader};
use wasm_bindgen::JsValue;
use web_sys::HtmlElement;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::event;
use crate::port::{Heard, Port};
use crate::state::{Action, Notice, Session, Trouble};
use crate::texts::lend;

/// Begins an engine for the element, teaches it the language that is shown, asks it whenever something else is to be shown, and
/// tells the page what changes.
#[hook]
pub fn use_engine(
    host: &HtmlElement,
    session: &Session,
    reader: Option<Reader>,
    here: Option<Here>,
    act: Callback<Action>,
) -> Port {
    let port = {
        let (host, act) = (host.clone(), act.clone());
        use_memo((), move |()| Port::new(Callback::from(move |heard| hear(&host, &act, heard))))
    };
    {
        let port = port.clone();
        use_effect_with((), move |()| move || port.close());
    }
    let taught = use_state_eq(|| None::<Lang>);
    {
        let (port, act, taught) = (port.clone(), act.clone(), taught.setter());
        use_effect_with(reader.map(|reader| reader.lang), move |lang| {
            let Some(lang) = *lang else { return };
            spawn_local(async move {
                match lend(lang).await {
                    Some(texts) => {
                        port.teach(lang, texts);
                        taught.set(Some(lang));
                    }
                    None => act.emit(Action::Unspoken(lang)),
                }
            });
        });
    }
    {
        let port = port.clone();
        use_effect_with(session.no_engine, move |trouble| {
            if trouble.is_none() {
                port.retry_if_ended();
            }
        });
    }
    {
        let port = port.clone();
        // Nothing is asked in a language that the engine has not been taught.
        let wanted = reader.filter(|reader| *taught == Some(reader.lang)).map(|reader| session.ask(reader));
        let wanted = wanted.map(|ask| Ask { look: Look { here, ..ask.look }, ..ask });
        use_effect_with((wanted, session.read), move |(wanted, _)| {
            wanted.clone().into_iter().for_each(|ask| port.ask(ask));
        });
    }
    (*port).clone()
}

fn hear(host: &HtmlElement, act: &Callback<Action>, heard: Heard) {
    match heard {
        Heard::Here => act.emit(Action::Tell(Some(Notice::Here))),
        Heard::Read(address, supplied) => act.emit(Action::Read(address, supplied)),
        Heard::Said(Part::Change(detail), _) => event::tell_json(host, event::CHANGE, &detail),
        Heard::Said(part, asked) => act.emit(Action::Said(part, asked)),
        Heard::Restarted(reason) => {
            web_sys::console::warn_1(&JsValue::from_str(&reason));
            event::tell(host, event::ERROR, &[("kind", "engine-restarted"), ("reason", &reason)]);
            act.emit(Action::Tell(Some(Notice::Restarted)));
        }
        Heard::Failed(trouble, reason) => {
            event::tell(host, event::ERROR, &[("kind", "no-engine"), ("reason", &reason)]);
            act.emit(Action::NoEngine(trouble));
        }
    }
}

/// Sends `fitup-error`.
pub fn tell_trouble(host: &HtmlElement, trouble: &Trouble) {
    match trouble {
        Trouble::NoAddress => event::tell(host, event::ERROR, &[("kind", "no-address")]),
        Trouble::Unreachable { address, reason } => {
            event::tell(host, event::ERROR, &[("kind", "unreachable"), ("address", address), ("reason", reason)]);
        }
        Trouble::Broken { address, problems, is_newer } => {
            let kind = if *is_newer { "newer-format" } else { "broken" };
            event::tell_with(host, event::ERROR, &[("kind", kind), ("address", address)], ("problems", problems));
        }
    }
}
