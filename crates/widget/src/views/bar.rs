//! The bar over the sheet: name, undo and redo, units, settings.

use fitup_words::Units;
use yew::prelude::*;

use super::icon::{Glyph, icon};
use super::settings::Settings;
use crate::ctx::use_ctx;
use crate::state::{Action, Theme};

#[derive(Properties, PartialEq)]
pub struct BarProps {
    /// Whether there is something to undo.
    pub can_undo: bool,
    /// Whether there is something to redo.
    pub can_redo: bool,
    /// Colours.
    pub theme: Theme,
    /// The catalogue's name.
    pub name: AttrValue,
}

/// The bar.
#[component]
pub fn Bar(props: &BarProps) -> Html {
    let ctx = use_ctx();
    let units = ctx.words.reader().units;
    let step = |glyph: Glyph, key: &str, action: Action, can: bool| {
        let act = ctx.act.clone();
        html! {
            <button
                type="button" class="button bare" disabled={!can} aria-label={ctx.text(key)} title={ctx.text(key)}
                onclick={move |_| act.emit(action.clone())}
            >
                { icon(glyph) }
            </button>
        }
    };
    let unit = |choice: Units, shown: &'static str, key: &str| {
        let act = ctx.act.clone();
        html! {
            <button
                type="button" aria-pressed={(units == choice).to_string()}
                onclick={move |_| act.emit(Action::MeasureIn(choice))}
            >
                <span aria-hidden="true">{ shown }</span>
                <span class="unseen">{ ctx.text(key) }</span>
            </button>
        }
    };
    html! {
        <header class="bar">
            <h1 class="bar-name">{ "Fit-up" }</h1>
            <p class="bar-catalogue">{ props.name.clone() }</p>
            <div class="bar-tools">
                { step(Glyph::Undo, "ui-undo", Action::Undo, props.can_undo) }
                { step(Glyph::Redo, "ui-redo", Action::Redo, props.can_redo) }
                <div class="switch" role="group" aria-label={ctx.text("ui-units")}>
                    { unit(Units::Metric, "mm", "ui-units-metric") }
                    { unit(Units::Us, "in", "ui-units-us") }
                </div>
                <Settings theme={props.theme} />
            </div>
        </header>
    }
}
