//! Where the widget stands in the page's address: build, open step and view, in the fragment,
//! beside whatever else the page keeps there.

use fitup_view::{Step, View};

/// The name a widget has in the fragment; several widgets on one page have one each.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Key(String);

impl Key {
    /// The key of an element's id; without one, `fit-up`.
    pub fn of(element_id: &str) -> Self {
        let usable: String = element_id.chars().filter(|c| c.is_ascii_alphanumeric() || *c == '-').collect();
        Self(if usable.is_empty() { "fit-up".to_owned() } else { usable })
    }

    /// The name.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

/// A place to come back to.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Address {
    /// The link text of the build; `None` = nothing chosen.
    pub link: Option<String>,
    /// The open step.
    pub step: Option<Step>,
    /// The view.
    pub view: View,
}

impl Address {
    /// Reads a fragment, with or without its `#`. What cannot be read as a step or view counts as
    /// not there; the link is handed on as it stands.
    pub fn read(fragment: &str, key: &Key) -> Self {
        let mut address = Self::default();
        for (name, value) in pairs(fragment) {
            if name == key.0 {
                address.link = (!value.is_empty()).then(|| value.to_owned());
            } else if let Some(rest) = name.strip_prefix(&key.0) {
                match rest {
                    ".step" => address.step = Step::named(value),
                    ".view" => address.view = View::named(value).unwrap_or_default(),
                    _ => {}
                }
            }
        }
        address
    }

    /// The fragment, without its `#`, that holds this address and everything of `before` that is
    /// not this widget's.
    pub fn write(&self, before: &str, key: &Key) -> String {
        let own = |name: &str| name.strip_prefix(&key.0).is_some_and(|rest| ["", ".step", ".view"].contains(&rest));
        let mut parts: Vec<String> = before
            .trim_start_matches('#')
            .split('&')
            .filter(|part| !part.is_empty() && !own(part.split('=').next().unwrap_or_default()))
            .map(str::to_owned)
            .collect();
        if let Some(link) = &self.link {
            parts.push(format!("{}={link}", key.0));
        }
        if let Some(step) = self.step {
            parts.push(format!("{}.step={}", key.0, step.name()));
        }
        if self.view != View::default() {
            parts.push(format!("{}.view={}", key.0, self.view.name()));
        }
        parts.join("&")
    }
}

/// Name and value of each part of a fragment.
pub(super) fn pairs(fragment: &str) -> impl Iterator<Item = (&str, &str)> {
    fragment.trim_start_matches('#').split('&').filter_map(|part| part.split_once('='))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_is_read_as_it_was_written() {
        let key = Key::of("");
        for address in [
            Address::default(),
            Address { link: Some("1.AbC_-9".into()), step: Some(Step::Seat), view: View::Loading },
            Address { link: None, step: Some(Step::Machine), view: View::Fit },
        ] {
            assert_eq!(Address::read(&format!("#{}", address.write("", &key)), &key), address);
        }
    }

    #[test]
    fn what_the_page_and_other_widgets_keep_there_stays() {
        let (a, b) = (Key::of("left"), Key::of("right"));
        let before = "#contents&left=1.old&left.step=seat&right=1.keep&x=3";
        let after = Address { link: Some("1.new".into()), ..Address::default() }.write(before, &a);
        assert_eq!(after, "contents&right=1.keep&x=3&left=1.new");
        assert_eq!(Address::read(&after, &b).link.as_deref(), Some("1.keep"));
    }

    #[test]
    fn a_key_that_begins_like_another_is_not_mistaken_for_it() {
        let key = Key::of("fit");
        let after = Address::default().write("fit-up=1.other&fit.step=seat", &key);
        assert_eq!(after, "fit-up=1.other");
    }

    #[test]
    fn nonsense_counts_as_not_there() {
        let key = Key::of("<b>");
        assert_eq!(key, Key::of("b"));
        let address = Address::read("#b.step=wheels&b.view=%00&b=&b&=&&", &key);
        assert_eq!(address, Address::default());
    }
}
