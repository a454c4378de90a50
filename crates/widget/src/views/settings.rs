//! Language, colours and starting again, behind one button.

use fitup_words::Lang;
use web_sys::KeyboardEvent;
use yew::prelude::*;

use super::icon::{Glyph, icon};
use super::select::{Choice, select};
use crate::ctx::use_ctx;
use crate::state::{Action, Edit, Theme};

#[derive(Properties, PartialEq)]
pub struct SettingsProps {
    /// Colours.
    pub theme: Theme,
}

/// The settings.
#[component]
pub fn Settings(props: &SettingsProps) -> Html {
    let ctx = use_ctx();
    let open = use_state(|| false);
    let button = use_node_ref();
    let toggle = use_callback(open.clone(), |_: MouseEvent, open| open.set(!**open));
    let close_on_escape = {
        let (open, button) = (open.clone(), button.clone());
        move |event: KeyboardEvent| {
            if event.key() == "Escape" && *open {
                open.set(false);
                if let Some(button) = button.cast::<web_sys::HtmlElement>() {
                    let _ = button.focus();
                }
            }
        }
    };
    let lang = ctx.words.reader().lang;
    let languages = Lang::ALL.into_iter().map(|one| Choice {
        value: one.tag().to_owned(),
        shown: one.own_name().to_owned(),
        lang: Some(one.tag()),
        chosen: one == lang,
    });
    let speak = ctx.act.reform(move |tag: String| Action::Speak(Lang::from_tag(&tag).unwrap_or(lang)));
    let themes = Theme::ALL.iter().map(|theme| Choice {
        value: theme.name().to_owned(),
        shown: ctx.text(&format!("ui-theme-{}", theme.name())),
        lang: None,
        chosen: *theme == props.theme,
    });
    let colour = ctx.act.reform(|name: String| Action::Theme(Theme::named(&name).unwrap_or_default()));
    html! {
        <div class="settings" onkeydown={close_on_escape}>
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
                    <button type="button" class="button" onclick={ctx.on(|| Edit::Empty)}>
                        { ctx.text("ui-start-again") }
                    </button>
                </div>
            }
        </div>
    }
}
