//! What every view may use: the page's own texts, and the way to make something happen.

use fitup_view::{Edit, Mode, Reader, Theme, Verdict};
use web_sys::HtmlElement;
use yew::prelude::*;

use crate::same::Same;
use crate::state::Action;
use crate::texts::Texts;

/// What every view may use.
#[derive(Clone, PartialEq)]
pub struct Ctx {
    /// The page's own texts.
    pub texts: Same<Texts>,
    /// Who reads.
    pub reader: Reader,
    /// Makes something happen.
    pub act: Callback<Action>,
    /// The way in.
    pub mode: Mode,
    /// The colours.
    pub theme: Theme,
    /// The element.
    pub host: HtmlElement,
}

impl Ctx {
    /// A text.
    pub fn text(&self, key: &str) -> String {
        self.texts.text(key)
    }

    /// Makes something happen.
    pub fn act(&self, action: Action) {
        self.act.emit(action);
    }

    /// A callback that edits the build, whatever the event.
    pub fn on<E: 'static>(&self, edit: impl Fn() -> Edit + 'static) -> Callback<E> {
        let act = self.act.clone();
        Callback::from(move |_| act.emit(Action::Edit(edit())))
    }
}

/// What every view may use.
#[hook]
pub fn use_ctx() -> Ctx {
    use_context::<Ctx>().expect("every view stands inside the app, which gives it")
}

/// The class of a verdict.
pub const fn verdict_class(verdict: Option<Verdict>) -> &'static str {
    match verdict {
        None => "is-open",
        Some(verdict) => verdict.name(),
    }
}

/// Markup of the engine: numbers and escaped words only.
pub fn svg(markup: &str) -> Html {
    if markup.is_empty() { Html::default() } else { Html::from_html_unchecked(AttrValue::from(markup.to_owned())) }
}
