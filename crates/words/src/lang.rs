//! The languages.

/// A language that every text is written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Lang {
    /// English.
    #[default]
    En,
    /// German.
    De,
    /// Spanish.
    Es,
    /// French.
    Fr,
}

impl Lang {
    /// Every language.
    pub const ALL: [Self; 4] = [Self::En, Self::De, Self::Es, Self::Fr];

    /// Its tag (BCP 47), as `lang` attributes take it.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::De => "de",
            Self::Es => "es",
            Self::Fr => "fr",
        }
    }

    /// What its speakers call it.
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::En => "English",
            Self::De => "Deutsch",
            Self::Es => "Español",
            Self::Fr => "Français",
        }
    }

    /// What is said when not even the texts can be had: all that is left to say it with.
    pub const fn unspoken(self) -> &'static str {
        match self {
            Self::En => "The texts could not be loaded. Load the page again.",
            Self::De => "Die Texte ließen sich nicht laden. Laden Sie die Seite neu.",
            Self::Es => "No se han podido cargar los textos. Vuelva a cargar la página.",
            Self::Fr => "Les textes n’ont pas pu être chargés. Rechargez la page.",
        }
    }

    /// The language of a tag, whatever region it names: `de-AT` is German.
    ///
    /// # Examples
    /// ```
    /// use fitup_words::Lang;
    /// assert_eq!(Lang::from_tag("de-AT"), Some(Lang::De));
    /// assert_eq!(Lang::from_tag("nl"), None);
    /// ```
    pub fn from_tag(tag: &str) -> Option<Self> {
        let language = tag.split(['-', '_']).next().unwrap_or_default();
        Self::ALL.into_iter().find(|lang| lang.tag().eq_ignore_ascii_case(language))
    }
}

/// The units that figures are shown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Units {
    /// Millimetres, kilograms, bar, litres.
    #[default]
    Metric,
    /// Feet and inches, pounds, psi, US gallons.
    Us,
}

impl Units {
    /// As attributes and files write it.
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Metric => "metric",
            Self::Us => "us",
        }
    }

    /// The units written so.
    pub fn from_name(name: &str) -> Option<Self> {
        [Self::Metric, Self::Us].into_iter().find(|units| units.as_str().eq_ignore_ascii_case(name))
    }
}
