//! What everything that is shown is made with: words and catalogue.

use fitup_core::fit::Desk;
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Length, Money};
use fitup_core::{finding, search};
use fitup_view as view;
use fitup_words::{Arg, LengthStyle, Words};

use crate::change::Pick;

/// Words in the reader's language and units, and the catalogue.
#[derive(Clone, Copy)]
pub struct Ctx<'a> {
    /// The words.
    pub words: &'a Words,
    /// The catalogue, laid out; an empty one until there is one.
    pub desk: &'a Desk,
}

impl<'a> Ctx<'a> {
    /// The catalogue.
    pub fn catalogue(self) -> &'a Catalogue {
        self.desk.catalogue()
    }

    /// A text.
    pub fn text(self, key: &str) -> String {
        self.words.ui(key, &[])
    }

    /// A text with values in it.
    pub fn text_with(self, key: &str, args: &[(&str, Arg)]) -> String {
        self.words.ui(key, args)
    }

    /// An item's id.
    pub fn id(self, item: ItemRef) -> String {
        self.catalogue().body(item).id.clone()
    }

    /// An item's label.
    pub fn label(self, item: ItemRef) -> &'a str {
        &self.catalogue().body(item).label
    }

    /// A pick's label.
    pub fn pick_label(self, pick: Pick) -> String {
        pick.item().map_or_else(|| self.text("ui-on-hitch"), |item| self.label(item).to_owned())
    }

    /// The price of an item as it is offered; nothing for one that comes free with another.
    pub fn price(self, price: Money) -> String {
        if price.hundredths() == 0 { String::new() } else { self.money(price) }
    }

    /// An amount in the catalogue's currency.
    pub fn money(self, amount: Money) -> String {
        self.words.reader().money(amount, &self.catalogue().name.currency)
    }

    /// A length as it is drawn.
    pub fn length(self, length: Length) -> String {
        self.words.reader().length(length, LengthStyle::Drawn)
    }

    /// What stands over an answer.
    pub fn headline(self, headline: Option<&search::Headline>) -> view::Headline {
        let told = self.words.headline(self.catalogue(), headline);
        view::Headline { verdict: told.verdict.map(verdict), word: told.word, reason: told.reason }
    }
}

/// A verdict as it is shown.
pub const fn verdict(verdict: finding::Verdict) -> view::Verdict {
    match verdict {
        finding::Verdict::BoltsUp => view::Verdict::BoltsUp,
        finding::Verdict::BoltsUpWithWork => view::Verdict::BoltsUpWithWork,
        finding::Verdict::CheckFirst => view::Verdict::CheckFirst,
        finding::Verdict::WontMount => view::Verdict::WontMount,
    }
}
