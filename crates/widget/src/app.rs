//! The whole widget in one element.

use std::rc::Rc;

use fitup_words::{Lang, Units};
use web_sys::HtmlElement;
use yew::prelude::*;

use crate::hooks::{tell_trouble, use_address, use_catalogue, use_words};
use crate::same::Same;
use crate::shown::Shown;
use crate::state::{Action, Mode, Notice, Session, Trouble};
use crate::texts;

/// The element's attributes, as they stand.
#[derive(Properties, Clone, PartialEq)]
pub struct AppProps {
    /// The element, for events.
    pub host: HtmlElement,
    /// Address of the catalogue.
    #[prop_or_default]
    pub catalogue: Option<AttrValue>,
    /// `page`, `kiosk` or `yard`.
    #[prop_or_default]
    pub mode: Option<AttrValue>,
    /// Language.
    #[prop_or_default]
    pub lang: Option<AttrValue>,
    /// `metric` or `us`.
    #[prop_or_default]
    pub units: Option<AttrValue>,
    /// A build to start with.
    #[prop_or_default]
    pub build: Option<AttrValue>,
    /// The dealer's address for `mailto:`.
    #[prop_or_default]
    pub contact: Option<AttrValue>,
}

impl Reducible for Session {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        Rc::new(self.after(action))
    }
}

/// The widget.
#[component]
pub fn App(props: &AppProps) -> Html {
    let session = use_reducer(Session::default);
    let act = {
        let dispatcher = session.dispatcher();
        use_callback((), move |action, ()| dispatcher.dispatch(action))
    };
    let attempt = use_state(|| 0u32);
    use_catalogue(props.catalogue.clone(), *attempt, act.clone());
    use_address(props.host.clone(), props.build.clone(), session.address(), act.clone());

    let words = use_words(lang(&session, props), units(&session, props), act.clone());
    let retry = use_callback(attempt, |(), attempt| attempt.set(**attempt + 1));
    let missing = words.is_none() && session.notice == Some(Notice::Unspoken(Lang::En));
    use_effect_with((props.host.clone(), missing), |(host, missing)| {
        if *missing {
            let address = texts::address(Lang::En);
            tell_trouble(host, &Trouble::Unreachable { address, reason: String::new() });
        }
    });
    let Some(words) = words else {
        return if missing { speechless(lang(&Session::default(), props)) } else { Html::default() };
    };
    let mode = props.mode.as_deref().and_then(Mode::named).unwrap_or_default();
    let session = Same::from(Rc::new((*session).clone()));
    html! { <Shown host={props.host.clone()} {session} {words} {mode} {act} {retry} /> }
}

/// What is shown when there are no texts to show anything with.
fn speechless(lang: Lang) -> Html {
    html! { <div class="fitup" lang={lang.tag()}><p class="trouble" role="alert">{ lang.unspoken() }</p></div> }
}

/// The reader's choice, else the attribute, else the browser's first language that there is.
fn lang(session: &Session, props: &AppProps) -> Lang {
    let attribute = || props.lang.as_deref().and_then(Lang::from_tag);
    let browser = || {
        let languages = web_sys::window()?.navigator().languages();
        languages.iter().filter_map(|tag| tag.as_string()).find_map(|tag| Lang::from_tag(&tag))
    };
    session.lang.or_else(attribute).or_else(browser).unwrap_or_default()
}

/// The reader's choice, else the attribute, else by the browser's region.
fn units(session: &Session, props: &AppProps) -> Units {
    let attribute = || props.units.as_deref().and_then(Units::from_name);
    let browser = || web_sys::window()?.navigator().language().filter(|tag| tag.ends_with("-US")).map(|_| Units::Us);
    session.units.or_else(attribute).or_else(browser).unwrap_or_default()
}
