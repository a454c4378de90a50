//! The whole widget in one element.

use std::rc::Rc;

use fitup_view::{Lang, Mode, Reader, Theme, Units};
use web_sys::HtmlElement;
use yew::prelude::*;

use crate::boundary::{self, LastWords};
use crate::ctx::Ctx;
use crate::hooks::{
    recall, tell_trouble, use_address, use_catalogue, use_engine, use_focus, use_here, use_idle, use_jobs,
    use_preferences, use_printing, use_scheme, use_texts, use_update,
};
use crate::same::Same;
use crate::state::{Action, Notice, Session, Trouble};
use crate::texts;
use crate::views::{Idle, TakeAway, paper, sheet};

/// Seconds that a kiosk waits for somebody unless its page says otherwise. Common practice, no source.
const IDLE: u32 = 60;
/// Seconds between its question and a fresh start, at most.
const WARNING: u32 = 20;

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
    /// `system`, `light`, `dark` or `outdoor`.
    #[prop_or_default]
    pub theme: Option<AttrValue>,
    /// Seconds without a sign of anybody, after which a kiosk asks whether somebody is there.
    #[prop_or_default]
    pub idle: Option<AttrValue>,
    /// A build to start with.
    #[prop_or_default]
    pub build: Option<AttrValue>,
    /// The dealer's address for `mailto:`.
    #[prop_or_default]
    pub contact: Option<AttrValue>,
    /// The page that links to a build lead to; without it the page itself.
    #[prop_or_default]
    pub address: Option<AttrValue>,
}

impl Reducible for Same<Session> {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        Rc::new(Self::new(self.after(action)))
    }
}

/// The widget.
#[component]
pub fn App(props: &AppProps) -> Html {
    let session = use_reducer(|| Same::new(Session::beginning_with(recall(&props.host))));
    let act = {
        let dispatcher = session.dispatcher();
        use_callback((), move |action, ()| dispatcher.dispatch(action))
    };
    let printing = use_printing();
    use_focus(&props.host);
    let attempt = use_state(|| 0u32);
    let texts = use_texts(lang(&session, props), act.clone());
    let spoken = texts.as_ref().map(|(lang, _)| *lang);
    let reader = spoken.map(|lang| Reader { lang, units: units(&session, props) });
    let here = use_here(&props.host, props.address.clone(), reader, &session.history);
    let port = use_engine(&props.host, &session, reader, here, act.clone());
    use_catalogue(props.catalogue.clone(), *attempt, port.clone(), act.clone());
    let mode = props.mode.as_deref().and_then(Mode::named).unwrap_or_default();
    // At a counter everybody comes after somebody else: nothing is kept.
    use_jobs(&props.host, mode != Mode::Kiosk, session.job(), session.jobs(), act.clone());
    use_preferences(props.host.clone(), session.preferences);
    use_address(props.host.clone(), props.build.clone(), session.address(), mode, act.clone());
    use_effect_with((props.host.clone(), session.trouble.clone()), |(host, trouble)| {
        if let Some(trouble) = trouble {
            tell_trouble(host, trouble);
        }
    });

    let retry = use_callback((attempt, port), |(), (attempt, _)| attempt.set(**attempt + 1));
    let scheme = use_scheme(&props.host);
    let update = use_update();
    let warned = use_state(|| false);
    let idle = (mode == Mode::Kiosk).then(|| if *warned { idle(props).min(WARNING) } else { idle(props) });
    let left = {
        let (warned, update, retry, act) = (warned.clone(), update.clone(), retry.clone(), act.clone());
        let untouched = session.is_untouched();
        Callback::from(move |()| match (&update, untouched) {
            (Some(take), true) => take.emit(()),
            (None, true) => {}
            (_, false) if *warned => {
                warned.set(false);
                act.emit(Action::Clear);
                retry.emit(());
            }
            (_, false) => warned.set(true),
        })
    };
    use_idle(idle, (*warned, session.is_untouched(), update.is_some()), left);
    let missing = texts.is_none() && session.notice == Some(Notice::Unspoken(Lang::En));
    use_effect_with((props.host.clone(), missing), |(host, missing)| {
        if *missing {
            let address = texts::address(Lang::En);
            tell_trouble(host, &Trouble::Unreachable { address, reason: String::new() });
        }
    });
    use_effect_with(texts.clone(), |texts| {
        let Some((_, texts)) = texts else { return };
        let text = |key: &str| texts.text(key);
        let (title, body, reload) = (text("ui-failed"), text("ui-failed.meaning"), text("ui-reload"));
        boundary::prepare(LastWords { title, body, reload });
    });
    let (Some((_, texts)), Some(reader)) = (texts, reader) else {
        return if missing { speechless(lang(&Session::default(), props)) } else { Html::default() };
    };
    let ctx = Ctx {
        texts,
        reader,
        act,
        mode,
        host: props.host.clone(),
        theme: theme(&session, props, mode).or(scheme).unwrap_or_default(),
    };
    let stay = warned.then(|| Callback::from(move |()| warned.set(false)));
    html! {
        <ContextProvider<Ctx> context={ctx.clone()}>
            { sheet(&ctx, &session, &retry, update.as_ref(), over(&ctx, &session, props, printing)) }
            if let Some(stay) = stay {
                <Idle {stay} />
            }
        </ContextProvider<Ctx>>
    }
}

/// What is taken along, while it is open; what goes to paper, while the page prints or may be asked to.
fn over(ctx: &Ctx, session: &Session, props: &AppProps, printing: bool) -> Html {
    let away = session.away_at_hand();
    html! {
        <>
            if session.taking {
                <TakeAway
                    away={away.cloned()} memo={Rc::clone(session.history.memo())} contact={props.contact.clone()}
                />
            }
            { away.filter(|_| printing || session.taking).map(|away| paper(ctx, away)) }
        </>
    }
}

/// What is shown when there are no texts to show anything with.
fn speechless(lang: Lang) -> Html {
    html! { <div class="fitup" lang={lang.name()}><p class="trouble" role="alert">{ lang.unspoken() }</p></div> }
}

/// The reader's choice, else the attribute, else the browser's first language that there is.
fn lang(session: &Session, props: &AppProps) -> Lang {
    let attribute = || props.lang.as_deref().and_then(Lang::of_tag);
    let browser = || {
        let languages = web_sys::window()?.navigator().languages();
        languages.iter().filter_map(|tag| tag.as_string()).find_map(|tag| Lang::of_tag(&tag))
    };
    session.lang().or_else(attribute).or_else(browser).unwrap_or_default()
}

/// The reader's choice, else the attribute, else by the browser's region.
fn units(session: &Session, props: &AppProps) -> Units {
    let attribute = || props.units.as_deref().and_then(Units::named);
    let browser = || web_sys::window()?.navigator().language().filter(|tag| tag.ends_with("-US")).map(|_| Units::Us);
    session.preferences.units.or_else(attribute).or_else(browser).unwrap_or_default()
}

/// The reader's choice, else the attribute, else what the way in asks for: a yard is out of doors.
fn theme(session: &Session, props: &AppProps, mode: Mode) -> Option<Theme> {
    let attribute = || props.theme.as_deref().and_then(Theme::named);
    let usual = || (mode == Mode::Yard).then_some(Theme::Outdoor);
    session.preferences.theme.or_else(attribute).or_else(usual)
}

/// Seconds that a kiosk waits.
fn idle(props: &AppProps) -> u32 {
    props.idle.as_deref().and_then(|idle| idle.parse().ok()).filter(|&seconds| seconds > 0).unwrap_or(IDLE)
}
