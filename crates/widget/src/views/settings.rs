//! Language, colours and starting again, behind one button.

use fitup_view::{Edit, Lang, Theme};
use yew::prelude::*;

use super::icon::{Glyph, icon};
use super::select::{Choice, select};
use crate::ctx::use_ctx;
use crate::hooks::use_outside;
use crate::state::Action;

/// The settings.
#[component]
pub fn Settings() -> Html {
    let ctx = use_ctx();
    let open = use_state(|| false);
    let (panel, button) = (use_node_ref(), use_node_ref());
    let left = use_callback(open.setter(), |(), open| open.set(false));
    use_outside(&panel, &button, *open, left);
    let toggle = use_callback(open.clone(), |_: MouseEvent, open| open.set(!**open));
    let again = {
        let (act, open, button) = (ctx.act.clone(), open.setter(), button.clone());
        move |_: MouseEvent| {
            act.emit(Action::Edit(Edit::Empty));
            open.set(false);
            // An element that is there can take the focus.
            let _ = button.cast::<web_sys::HtmlElement>().map(|button| button.focus());
        }
    };
    let lang = ctx.reader.lang;
    let languages = Lang::ALL.iter().copied().map(|one| Choice {
        value: one.name().to_owned(),
        shown: one.own_name().to_owned(),
        lang: Some(one.name()),
        chosen: one == lang,
    });
    let speak = ctx.act.reform(move |tag: String| Action::Speak(Lang::of_tag(&tag).unwrap_or(lang)));
    let themes = Theme::ALL.iter().map(|theme| Choice {
        value: theme.name().to_owned(),
        shown: ctx.text(&format!("ui-theme-{}", theme.name())),
        lang: None,
        chosen: *theme == ctx.theme,
    });
    let colour = ctx.act.reform(|name: String| Action::Theme(Theme::named(&name).unwrap_or_default()));
    html! {
        <div class="settings" ref={panel}>
            <button
                type="button" class="button bare" ref={button} aria-expanded={open.to_string()}
                aria-label={ctx.text("ui-settings")} title={ctx.text("ui-settings")} onclick={toggle}
            >
                { icon(Glyph::Settings) }
            </button>
            if *open {
                <div class="settings-panel">
                    <label>
                        <span>{ ctx.text("ui-language") }</span>
                        { select(None, languages.collect(), speak) }
                    </label>
                    <label>
                        <span>{ ctx.text("ui-theme") }</span>
                        { select(None, themes.collect(), colour) }
                    </label>
                    <button type="button" class="button" onclick={again}>
                        { ctx.text("ui-start-again") }
                    </button>
                </div>
            }
        </div>
    }
}
