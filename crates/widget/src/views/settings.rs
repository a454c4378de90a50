//! Language, colours and starting again, behind one button.

use fitup_words::Lang;
use web_sys::{HtmlSelectElement, KeyboardEvent};
use yew::prelude::*;

use super::icon::{Glyph, icon};
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
    let speak = {
        let act = ctx.act.clone();
        move |event: Event| {
            if let Some(lang) = chosen(&event).and_then(|tag| Lang::from_tag(&tag)) {
                act.emit(Action::Speak(lang));
            }
        }
    };
    let colour = {
        let act = ctx.act.clone();
        move |event: Event| {
            if let Some(theme) = chosen(&event).and_then(|name| Theme::named(&name)) {
                act.emit(Action::Theme(theme));
            }
        }
    };
    let lang = ctx.words.reader().lang;
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
                        <select class="entry" onchange={speak}>
                            for one in Lang::ALL {
                                <option key={one.tag()} value={one.tag()} lang={one.tag()} selected={one == lang}>
                                    { one.own_name() }
                                </option>
                            }
                        </select>
                    </label>
                    <label>
                        <span>{ ctx.text("ui-theme") }</span>
                        <select class="entry" onchange={colour}>
                            for theme in Theme::ALL.iter().copied() {
                                <option key={theme.name()} value={theme.name()} selected={theme == props.theme}>
                                    { ctx.text(&format!("ui-theme-{}", theme.name())) }
                                </option>
                            }
                        </select>
                    </label>
                    <button type="button" class="button" onclick={ctx.on(|| Edit::Empty)}>
                        { ctx.text("ui-start-again") }
                    </button>
                </div>
            }
        </div>
    }
}

fn chosen(event: &Event) -> Option<String> {
    event.target_dyn_into::<HtmlSelectElement>().map(|select| select.value())
}
