//! The languages.

/// A language that every text is written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Lang {
    /// English as the British write it, and everyone who names no region.
    #[default]
    En,
    /// English as the Americans write it.
    EnUs,
    /// German.
    De,
    /// Spanish.
    Es,
    /// French.
    Fr,
}

impl Lang {
    /// Every language.
    pub const ALL: [Self; 5] = [Self::En, Self::EnUs, Self::De, Self::Es, Self::Fr];

    /// Its tag (BCP 47), as `lang` attributes take it.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::EnUs => "en-US",
            Self::De => "de",
            Self::Es => "es",
            Self::Fr => "fr",
        }
    }

    /// What its speakers call it.
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::En => "English",
            Self::EnUs => "English (US)",
            Self::De => "Deutsch",
            Self::Es => "Español",
            Self::Fr => "Français",
        }
    }

    /// What is said when not even the texts can be had: all that is left to say it with.
    pub const fn unspoken(self) -> &'static str {
        match self {
            Self::En | Self::EnUs => "The texts could not be loaded. Load the page again.",
            Self::De => "Die Texte ließen sich nicht laden. Laden Sie die Seite neu.",
            Self::Es => "No se han podido cargar los textos. Vuelva a cargar la página.",
            Self::Fr => "Les textes n’ont pas pu être chargés. Rechargez la page.",
        }
    }

    /// Whether it is English of either sort.
    pub const fn is_english(self) -> bool {
        matches!(self, Self::En | Self::EnUs)
    }

    /// The language whose texts it goes by where it has none of its own.
    #[must_use]
    pub const fn base(self) -> Self {
        match self {
            Self::EnUs => Self::En,
            other => other,
        }
    }

    /// The language of a tag. The region counts only where it writes otherwise: `de-AT` is German, `en-US` is not `en-GB`.
    ///
    /// # Examples
    /// ```
    /// use fitup_words::Lang;
    /// assert_eq!(Lang::from_tag("de-AT"), Some(Lang::De));
    /// assert_eq!(Lang::from_tag("en_us"), Some(Lang::EnUs));
    /// assert_eq!(Lang::from_tag("en-GB"), Some(Lang::En));
    /// assert_eq!(Lang::from_tag("nl"), None);
    /// ```
    pub fn from_tag(tag: &str) -> Option<Self> {
        let of = |tag: &str| Self::ALL.into_iter().find(|lang| lang.tag().eq_ignore_ascii_case(tag));
        let mut parts = tag.split(['-', '_']);
        let language = parts.next().unwrap_or_default();
        // Between language and region a script may stand: `en-Latn-US`.
        let mut regions = parts.filter(|part| part.len() == 2);
        regions.next().and_then(|region| of(&format!("{language}-{region}"))).or_else(|| of(language))
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
