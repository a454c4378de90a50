//! The end of the way: the build as a link, a code, a text, a message, a table, a file.

pub(super) mod hand;
mod job;

use std::rc::Rc;

use fitup_view::{Away, Mode};
use gloo::events::EventListener;
use web_sys::HtmlDialogElement;
use yew::platform::spawn_local;
use yew::prelude::*;

use super::icon::{Glyph, icon_button};
use crate::ctx::{Ctx, svg, use_ctx};
use crate::event;
use crate::hooks::print_alone;
use crate::state::{Action, Memo};

#[derive(Properties, PartialEq)]
pub struct TakeAwayProps {
    /// What is taken along, once it is made.
    pub away: Option<Rc<Away>>,
    /// The dealer's address.
    pub contact: Option<AttrValue>,
    /// What is written to it.
    pub memo: Rc<Memo>,
}

/// How it went to hand something over.
#[derive(Debug, Clone, PartialEq)]
enum Told {
    /// Nothing was tried yet.
    Nothing,
    /// It is in the clipboard.
    Copied,
    /// The browser refused; this is what it was about.
    Refused(String),
}

/// What is taken along, over everything else.
#[component]
pub fn TakeAway(props: &TakeAwayProps) -> Html {
    let ctx = use_ctx();
    let node = use_node_ref();
    {
        let (node, act) = (node.clone(), ctx.act.clone());
        use_effect_with((), move |()| {
            let dialog = node.cast::<HtmlDialogElement>();
            let closed = dialog.map(|dialog| {
                // One that is open already stays so.
                let _ = dialog.show_modal();
                EventListener::new(&dialog, "close", move |_| act.emit(Action::TakeAway(false)))
            });
            move || drop(closed)
        });
    }
    let close = {
        let node = node.clone();
        Callback::from(move |_: MouseEvent| node.cast::<HtmlDialogElement>().iter().for_each(HtmlDialogElement::close))
    };
    let told = use_state_eq(|| Told::Nothing);
    let hands = Hands { ctx: ctx.clone(), told: told.setter() };
    html! {
        <dialog class="away" ref={node} aria-labelledby="away-title">
            <div class="away-head">
                <h2 id="away-title">{ ctx.text("ui-take-away") }</h2>
                { icon_button(Glyph::Close, ctx.text("ui-close"), ctx.text("ui-close"), true, close) }
            </div>
            if let Some(away) = &props.away {
                <div class="away-body">
                    { code(&ctx, away) }
                    // At a counter nobody leaves the page: the code is the way out.
                    if ctx.mode != Mode::Kiosk {
                        { job::job(&ctx, &props.memo) }
                        { ways(&hands, away, props.contact.as_deref()) }
                        { refused(&ctx, &told) }
                    }
                </div>
            }
            <p class="away-told" role="status">
                { (*told == Told::Copied).then(|| ctx.text("ui-take-copied")) }
            </p>
        </dialog>
    }
}

/// The code, and what to do with it.
fn code(ctx: &Ctx, away: &Away) -> Html {
    html! {
        <div class="away-code">
            <p class="away-of">{ away.title.clone() }</p>
            if let Some(code) = &away.code {
                { svg(code) }
                <p class="small soft">{ ctx.text("ui-qr-code.meaning") }</p>
            } else {
                <p class="soft">{ ctx.text("ui-qr-code-too-long") }</p>
            }
        </div>
    }
}

/// What the ways to hand over have in common.
#[derive(Clone)]
struct Hands {
    ctx: Ctx,
    told: UseStateSetter<Told>,
}

impl Hands {
    /// Tells the page that the build was handed over, and how.
    fn tell(&self, kind: &str, away: &Away) {
        let fields = [("kind", kind), ("link", &*away.of), ("address", &*away.address)];
        event::tell_with(&self.ctx.host, event::SHARE, &fields, ("build", &away.file));
    }

    /// A callback that copies a text.
    fn copies(&self, kind: &'static str, away: &Away, text: &str) -> Callback<MouseEvent> {
        let (hands, away, text) = (self.clone(), away.clone(), text.to_owned());
        Callback::from(move |_| {
            let (hands, away, text) = (hands.clone(), away.clone(), text.clone());
            spawn_local(async move {
                if hand::copy(&text).await {
                    hands.told.set(Told::Copied);
                    hands.tell(kind, &away);
                } else {
                    hands.told.set(Told::Refused(text));
                }
            });
        })
    }

    /// A callback that hands over to the device.
    fn shares(&self, away: &Away) -> Callback<MouseEvent> {
        let (hands, away) = (self.clone(), away.clone());
        Callback::from(move |_| {
            let (hands, away) = (hands.clone(), away.clone());
            spawn_local(async move {
                match hand::share(&away.title, &away.address).await {
                    hand::Shared::Taken => hands.tell("share", &away),
                    // Whoever changes their mind needs no message.
                    hand::Shared::LeftOff => {}
                    hand::Shared::Refused => hands.told.set(Told::Refused(away.text.clone())),
                }
            });
        })
    }

    /// A callback that prints the fit sheet, which stands beside as long as this is open.
    fn prints(&self, away: &Away) -> Callback<MouseEvent> {
        let (hands, away) = (self.clone(), away.clone());
        Callback::from(move |_| {
            print_alone(&hands.ctx.host);
            hands.tell("print", &away);
        })
    }

    /// A callback that only tells the page.
    fn tells(&self, kind: &'static str, away: &Away) -> Callback<MouseEvent> {
        let (hands, away) = (self.clone(), away.clone());
        Callback::from(move |_| hands.tell(kind, &away))
    }
}

/// Every other way.
fn ways(hands: &Hands, away: &Away, contact: Option<&str>) -> Html {
    let ctx = &hands.ctx;
    let contact = contact.filter(|contact| hand::is_address(contact));
    let mail = if contact.is_some() { "ui-take-mail-dealer" } else { "ui-take-mail" };
    let button =
        |key: &str, onclick| html! { <button type="button" class="button" {onclick}>{ ctx.text(key) }</button> };
    let file = |key: &str, kind: &'static str, sort: &str, text: &str, ending: &str| {
        html! {
            <a
                class="button" href={hand::data(sort, text)} download={format!("{}.{ending}", away.name)}
                onclick={hands.tells(kind, away)}
            >
                { ctx.text(key) }
            </a>
        }
    };
    html! {
        <div class="away-ways">
            <p class="small soft">{ ctx.text("ui-take-away.meaning") }</p>
            <label class="away-link">
                <span>{ ctx.text("ui-take-link") }</span>
                <input class="entry" readonly=true value={away.address.clone()} />
            </label>
            <div class="away-buttons">
                { button("ui-take-copy-link", hands.copies("link", away, &away.address)) }
                if hand::can_share() {
                    { button("ui-take-share", hands.shares(away)) }
                }
                { button("ui-take-copy-text", hands.copies("text", away, &away.text)) }
                <a
                    class="button" href={hand::mail(contact.unwrap_or_default(), &away.title, &away.text)}
                    onclick={hands.tells("mail", away)}
                >
                    { ctx.text(mail) }
                </a>
                { button("ui-print-sheet", hands.prints(away)) }
                { file("ui-take-parts", "csv", "text/csv", &away.parts, "csv") }
                { file("ui-take-file", "json", "application/json", &away.file, "json") }
            </div>
        </div>
    }
}

/// What the browser would not take, to be copied by hand.
fn refused(ctx: &Ctx, told: &Told) -> Html {
    let Told::Refused(text) = told else { return Html::default() };
    html! {
        <div class="away-refused" role="alert">
            <p>{ ctx.text("ui-take-refused") }</p>
            <textarea class="entry" readonly=true rows="6" aria-label={ctx.text("ui-take-as-text")} value={text.clone()} />
        </div>
    }
}
