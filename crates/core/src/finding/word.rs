//! Coded words: figures that are one of a few words. The texts choose by them or show a translation.

/// Declares coded words: a type of its own, or words for a type that is there already.
///
/// `shown as "axle-"` says that a text may show the word by the message `axle-front`; without it the word only chooses between
/// variants of a text.
///
/// # Examples
/// ```
/// use fitup_core::finding::{Kind, Quantity, Value};
/// use fitup_core::words;
///
/// words! {
///     /// A side of the machine.
///     SideName, shown as "side-" { Left = "left", Right = "right" }
/// }
/// assert_eq!(SideName::Left.word(), "left");
/// assert_eq!(SideName::KIND, Kind::Word { words: &["left", "right"], shown: Some("side-") });
/// ```
/// For a type that is there already, `words! { for Station, shown as "station-" { Open = "open", Cab = "cab" } }`.
#[macro_export]
macro_rules! words {
    (for $name:ident $(, shown as $shown:literal)? { $($variant:ident = $word:literal),+ $(,)? }) => {
        impl $name {
            /// The coded word, kebab-case.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $word),+ }
            }
        }

        impl $crate::finding::Quantity for $name {
            type Of = Self;
            const KIND: $crate::finding::Kind = $crate::finding::Kind::Word {
                words: &[$($word),+],
                shown: $crate::shown_as!($($shown)?),
            };

            fn value(of: Self) -> Option<$crate::finding::Value> {
                Some($crate::finding::Value::Word(of.word()))
            }

            fn read(value: Option<&$crate::finding::Value>) -> Option<Self> {
                match value {
                    $(Some(&$crate::finding::Value::Word($word)) => Some(Self::$variant),)+
                    _ => None,
                }
            }
        }
    };
    ($(#[$doc:meta])* $name:ident $(, shown as $shown:literal)? { $($variant:ident = $word:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name {
            $(#[doc = concat!("`", $word, "`.")] $variant),+
        }

        $crate::words!(for $name $(, shown as $shown)? { $($variant = $word),+ });
    };
}

/// The start of the messages that translate a word, if any do.
#[doc(hidden)]
#[macro_export]
macro_rules! shown_as {
    () => {
        None
    };
    ($shown:literal) => {
        Some($shown)
    };
}
