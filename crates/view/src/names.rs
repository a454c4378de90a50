//! Small closed lists, each with the names it has in attributes, addresses, classes and message keys.

use serde::{Deserialize, Serialize};

/// An enum of which every one has a name, and the way back from it.
macro_rules! names {
    ($( #[$about:meta] )* $type:ident { $( $( #[$of:meta] )* $variant:ident = $name:literal ),+ $(,)? }) => {
        $( #[$about] )*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        pub enum $type { $( $( #[$of] )* $variant ),+ }

        impl $type {
            /// Every one, as they are offered.
            pub const ALL: &[Self] = &[ $( Self::$variant ),+ ];

            /// Its name in attributes, addresses and message keys.
            pub const fn name(self) -> &'static str {
                match self { $( Self::$variant => $name ),+ }
            }

            /// The one of a name.
            pub fn named(name: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.name() == name)
            }
        }
    };
}

/// The first of the list is what holds where nothing is said.
macro_rules! first_by_default {
    ($( $type:ident ),+) => {
        $( impl Default for $type { fn default() -> Self { Self::ALL[0] } } )+
    };
}

names! {
    /// A language, by its tag (BCP 47).
    Lang {
        /// English as the British write it, and everyone who names no region.
        En = "en",
        /// English as the Americans write it.
        EnUs = "en-US",
        /// German.
        De = "de",
        /// Spanish.
        Es = "es",
        /// French.
        Fr = "fr",
    }
}
names! {
    /// The units that figures are shown in.
    Units {
        /// Millimetres, kilograms, bar, litres.
        Metric = "metric",
        /// Feet and inches, pounds, psi, US gallons.
        Us = "us",
    }
}
names! {
    /// One of the ways in.
    Mode {
        /// Embedded in a page.
        Page = "page",
        /// Full screen in a showroom.
        Kiosk = "kiosk",
        /// On a tablet in the yard.
        Yard = "yard",
    }
}
names! {
    /// Colours.
    Theme {
        /// As the system says.
        System = "system",
        /// Light.
        Light = "light",
        /// Dark.
        Dark = "dark",
        /// Black on white for sunlight.
        Outdoor = "outdoor",
    }
}
names! {
    /// A view on the build.
    View {
        /// Joints and their evidence.
        Fit = "fit",
        /// What is open, to be measured and looked for.
        Measure = "measure",
        /// Parts to buy.
        Parts = "parts",
        /// On a trailer's ramp.
        Loading = "loading",
        /// Axle loads and ballast.
        Weight = "weight",
        /// The arm at work.
        Digging = "digging",
        /// Gate and path.
        Site = "site",
        /// The best complete sets.
        Sets = "sets",
        /// Builds side by side.
        Compare = "compare",
        /// Two parts lists beside each other.
        Lists = "lists",
        /// Which unit it could be.
        Identify = "identify",
    }
}
names! {
    /// In which order the options of a step stand.
    Sort {
        /// Best verdict still reachable first, then cheapest.
        Verdict = "verdict",
        /// Cheapest first; without a price last.
        Price = "price",
        /// Shortest finished machine first; unknown last.
        Length = "length",
        /// By name.
        Name = "name",
    }
}
names! {
    /// What complete sets of one answer are ordered by first.
    SetOrder {
        /// The cheapest first.
        Price = "price",
        /// The shortest machine first.
        Length = "length",
        /// The greatest departure angle first.
        Departure = "departure",
        /// The fewest hours first.
        Hours = "hours",
        /// The fewest items to buy first.
        OnHand = "on-hand",
    }
}
names! {
    /// How the machine is looked at.
    DrawingView {
        /// From the right.
        Side = "side",
        /// From above.
        Plan = "plan",
    }
}
names! {
    /// One of the four choices.
    Step {
        /// The machine.
        Machine = "machine",
        /// What carries the implement.
        Frame = "frame",
        /// The seat.
        Seat = "seat",
        /// The implement.
        Implement = "implement",
    }
}
names! {
    /// A verdict, best first; the name is its class.
    Verdict {
        /// It bolts up.
        BoltsUp = "is-bolts",
        /// It bolts up with work.
        BoltsUpWithWork = "is-work",
        /// Something has to be checked first.
        CheckFirst = "is-check",
        /// It will not mount.
        WontMount = "is-wont",
    }
}
names! {
    /// How firm the evidence is.
    Grade {
        /// The maker's guide lists it.
        Listed = "listed",
        /// The same part.
        SamePart = "same-part",
        /// A part that may stand for it.
        ReplacedPart = "replaced-part",
        /// Measured.
        Measured = "measured",
        /// By the drawing's dimensions.
        Drawing = "drawing",
        /// None.
        None = "none",
    }
}
names! {
    /// What something was measured with.
    Tool {
        /// A caliper.
        Caliper = "caliper",
        /// A tape.
        Tape = "tape",
    }
}
names! {
    /// Why a link could not be read; the name is the key of what is said.
    LinkTrouble {
        /// It is cut off or has been changed.
        CutOff = "ui-link-cut-off",
        /// A newer version made it.
        Newer = "ui-link-newer",
        /// It is no link of ours.
        NotOurs = "ui-link-not-ours",
    }
}
first_by_default!(Lang, Units, Mode, Theme, View, Sort, SetOrder, DrawingView);

impl Lang {
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

    /// The language of a tag. The region counts only where it writes otherwise: `de-AT` is German, `en-US` is not `en-GB`.
    ///
    /// # Examples
    /// ```
    /// use fitup_view::Lang;
    /// assert_eq!(Lang::of_tag("de-AT"), Some(Lang::De));
    /// assert_eq!(Lang::of_tag("en_us"), Some(Lang::EnUs));
    /// assert_eq!(Lang::of_tag("en-GB"), Some(Lang::En));
    /// assert_eq!(Lang::of_tag("nl"), None);
    /// ```
    pub fn of_tag(tag: &str) -> Option<Self> {
        let of = |tag: &str| Self::ALL.iter().copied().find(|lang| lang.name().eq_ignore_ascii_case(tag));
        let mut parts = tag.split(['-', '_']);
        let language = parts.next().unwrap_or_default();
        // Between language and region a script may stand: `en-Latn-US`.
        let mut regions = parts.filter(|part| part.len() == 2);
        regions.next().and_then(|region| of(&format!("{language}-{region}"))).or_else(|| of(language))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn everything_is_found_by_the_name_it_gives() {
        assert!(Mode::ALL.iter().all(|&m| Mode::named(m.name()) == Some(m)));
        assert!(Theme::ALL.iter().all(|&t| Theme::named(t.name()) == Some(t)));
        assert!(View::ALL.iter().all(|&v| View::named(v.name()) == Some(v)));
        assert!(Sort::ALL.iter().all(|&s| Sort::named(s.name()) == Some(s)));
        assert!(Step::ALL.iter().all(|&s| Step::named(s.name()) == Some(s)));
        assert_eq!(View::named("wheels"), None);
    }

    #[test]
    fn where_nothing_is_said_the_first_holds() {
        assert_eq!((Lang::default(), Units::default(), View::default()), (Lang::En, Units::Metric, View::Fit));
    }
}
