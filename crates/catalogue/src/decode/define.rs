//! How records and words that are read are defined: the fields once, from which comes the reading.
//!
//! The wire types of the catalogue add writing and a schema to these; see `wire::define`.

/// Defines a record that is read. Each field is `required`; or `optional`, of a type whose default
/// means that it was left out; or `nullable`, which may be `null` as well. A field `r#type` is read
/// from `type`.
///
/// # Examples
/// ```
/// use fitup_catalogue::decode::read;
/// use fitup_catalogue::{read_record, read_words};
///
/// read_record! {
///     /// A wheel.
///     #[derive(Debug)]
///     pub struct Wheel {
///         required pub radius_mm: f64,
///         nullable pub end: Option<End>,
///     }
/// }
/// read_words! {
///     /// An end of the machine.
///     #[derive(Debug, PartialEq)]
///     pub enum End { Rear "rear", Front "front" }
/// }
///
/// let wheel: Wheel = read(r#"{"radius_mm": 380, "end": "rear"}"#).unwrap();
/// assert_eq!((wheel.radius_mm, wheel.end), (380.0, Some(End::Rear)));
/// let problems = read::<Wheel>(r#"{"radius": 380, "end": "left"}"#).unwrap_err();
/// assert_eq!(problems.len(), 3); // a field too many, one too few, a word that is none
/// ```
#[macro_export]
macro_rules! read_record {
    ($(#[$meta:meta])* $vis:vis struct $name:ident {
        $( $(#[$doc:meta])* $need:ident $open:vis $field:ident: $ty:ty, )*
    }) => {
        $(#[$meta])*
        $vis struct $name { $( $(#[$doc])* $open $field: $ty, )* }
        $crate::decode_fields! { $name [$(($need $field))*] }
    };
}

/// The reading of a record by its fields.
#[doc(hidden)]
#[macro_export]
macro_rules! decode_fields {
    ($name:ident [$(($need:ident $field:ident))*]) => {
        impl $crate::decode::Decode for $name {
            fn decode(
                node: $crate::tree::Node<'_>,
                at: $crate::decode::At<'_>,
                report: &mut $crate::decode::Report,
            ) -> Self {
                let mut value = Self { $($field: $crate::decode::$need()),* };
                let mut record = $crate::decode::Record::open(node, at, &[$(const { $crate::decode::bare(stringify!($field)) }),*], report);
                $( record.$need(const { $crate::decode::bare(stringify!($field)) }, &mut value.$field); )*
                value
            }

            fn invented() -> Self {
                Self { $($field: $crate::decode::Decode::invented()),* }
            }
        }
    };
}

/// Defines a list of words that is read.
#[macro_export]
macro_rules! read_words {
    ($(#[$meta:meta])* $vis:vis enum $name:ident { $( $(#[$doc:meta])* $variant:ident $word:literal ),+ $(,)? }) => {
        $(#[$meta])*
        $vis enum $name { $( $(#[$doc])* $variant, )+ }
        $crate::decode_words! { $name $($variant $word)+ }
    };
}

/// The reading of a list of words.
#[doc(hidden)]
#[macro_export]
macro_rules! decode_words {
    ($name:ident $first:ident $first_word:literal $($variant:ident $word:literal)*) => {
        impl $crate::decode::Decode for $name {
            fn decode(
                node: $crate::tree::Node<'_>,
                at: $crate::decode::At<'_>,
                report: &mut $crate::decode::Report,
            ) -> Self {
                let found = $crate::decode::word(node, &[$first_word $(, $word)*], at, report);
                [$(Self::$variant),*].into_iter().nth(found.unwrap_or_default().wrapping_sub(1)).unwrap_or(Self::$first)
            }

            fn invented() -> Self {
                Self::$first
            }
        }
    };
}
