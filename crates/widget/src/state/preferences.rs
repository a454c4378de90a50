//! What the reader chose for the eyes, and how it is kept from one visit to the next.

use fitup_view::{Lang, Theme, Units};

use super::address::pairs;

/// What the reader chose; `None` = nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Preferences {
    /// Language.
    pub lang: Option<Lang>,
    /// Units.
    pub units: Option<Units>,
    /// Colours.
    pub theme: Option<Theme>,
}

impl Preferences {
    /// Reads what [`Self::write`] gives. What cannot be read counts as not chosen.
    pub fn read(kept: &str) -> Self {
        let mut read = Self::default();
        for (name, value) in pairs(kept) {
            match name {
                "lang" => read.lang = Lang::of_tag(value),
                "units" => read.units = Units::named(value),
                "theme" => read.theme = Theme::named(value),
                _ => {}
            }
        }
        read
    }

    /// One line: `lang=de&units=us&theme=dark`, without what was not chosen.
    pub fn write(self) -> String {
        let theme = self.theme.map(Theme::name);
        let chosen = [("lang", self.lang.map(Lang::name)), ("units", self.units.map(Units::name)), ("theme", theme)];
        let parts: Vec<String> =
            chosen.into_iter().filter_map(|(name, value)| Some(format!("{name}={}", value?))).collect();
        parts.join("&")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn preferences_are_read_as_they_were_written() {
        for lang in [None, Some(Lang::De), Some(Lang::En)] {
            for units in [None, Some(Units::Metric), Some(Units::Us)] {
                for theme in [None, Some(Theme::System), Some(Theme::Dark)] {
                    let chosen = Preferences { lang, units, theme };
                    assert_eq!(Preferences::read(&chosen.write()), chosen);
                }
            }
        }
        assert_eq!(Preferences::default().write(), "");
    }

    #[test]
    fn what_another_hand_put_there_counts_as_not_chosen() {
        for kept in ["", "lang", "lang=&units=furlong&theme=pink", "{\"lang\":\"de\"}", "&&==&x=1"] {
            assert_eq!(Preferences::read(kept), Preferences::default(), "{kept}");
        }
        assert_eq!(Preferences::read("lang=xx&units=us").units, Some(Units::Us));
    }
}
