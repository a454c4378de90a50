//! What every view may use: words, catalogue, and the way to make something happen.

use fitup_core::finding::Verdict;
use fitup_core::fit::Desk;
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::Money;
use fitup_words::{Arg, Words};
use yew::prelude::*;

use crate::same::Same;
use crate::state::{Action, Edit, Mode, Pick};

/// What every view may use.
#[derive(Clone, PartialEq)]
pub struct Ctx {
    /// Words in the reader's language and units.
    pub words: Same<Words>,
    /// The catalogue, laid out; an empty one until there is one.
    pub desk: Same<Desk>,
    /// Makes something happen.
    pub act: Callback<Action>,
    /// The way in.
    pub mode: Mode,
}

impl Ctx {
    /// The catalogue.
    pub fn catalogue(&self) -> &Catalogue {
        self.desk.catalogue()
    }

    /// A text.
    pub fn text(&self, key: &str) -> String {
        self.words.ui(key, &[])
    }

    /// A text with values in it.
    pub fn text_with(&self, key: &str, args: &[(&str, Arg)]) -> String {
        self.words.ui(key, args)
    }

    /// An item's label.
    pub fn label(&self, item: ItemRef) -> &str {
        &self.catalogue().body(item).label
    }

    /// A pick's label.
    pub fn pick_label(&self, pick: Pick) -> String {
        pick.item().map_or_else(|| self.text("ui-on-hitch"), |item| self.label(item).to_owned())
    }

    /// The price of an item as it is offered; nothing for one that comes free with another.
    pub fn price(&self, price: Money) -> String {
        if price.hundredths() == 0 { String::new() } else { self.money(price) }
    }

    /// An amount in the catalogue's currency.
    pub fn money(&self, amount: Money) -> String {
        self.words.reader().money(amount, &self.catalogue().name.currency)
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
        Some(Verdict::BoltsUp) => "is-bolts",
        Some(Verdict::BoltsUpWithWork) => "is-work",
        Some(Verdict::CheckFirst) => "is-check",
        Some(Verdict::WontMount) => "is-wont",
    }
}
