//! How wire types are defined: the fields once, from which come the struct, its reading, its
//! writing and its schema.

/// Defines a record: each field is `required`, or `optional` and then of a type whose default
/// means that it was left out. After `=>` stands the core's type with the same fields, if there is
/// one: lowering to it comes from the same description.
macro_rules! record {
    ($(#[$meta:meta])* pub struct $name:ident => $core:path {
        $( $(#[$doc:meta])* $need:ident $field:ident: $ty:ty, )*
    }) => {
        $crate::wire::define::record! {
            $(#[$meta])*
            pub struct $name { $( $(#[$doc])* $need $field: $ty, )* }
        }

        impl $crate::lower::Lower for $name {
            type Core = $core;

            fn lower(&self, units: $crate::lower::Units) -> $core {
                $core { $($field: $crate::lower::Lower::lower(&self.$field, units)),* }
            }
        }
    };
    ($(#[$meta:meta])* pub struct $name:ident { $($fields:tt)* }) => {
        $crate::wire::define::record! { @fields [$(#[$meta])*] $name [] [] $($fields)* }
    };
    (@fields $metas:tt $name:ident [$($struct:tt)*] [$($decode:tt)*]
        $(#[$doc:meta])* required $field:ident: $ty:ty, $($rest:tt)*) => {
        $crate::wire::define::record! {
            @fields $metas $name
            [$($struct)* $(#[$doc])* pub $field: $ty,]
            [$($decode)* (required Required $field)]
            $($rest)*
        }
    };
    (@fields $metas:tt $name:ident [$($struct:tt)*] [$($decode:tt)*]
        $(#[$doc:meta])* optional $field:ident: $ty:ty, $($rest:tt)*) => {
        $crate::wire::define::record! {
            @fields $metas $name
            [$($struct)* $(#[$doc])*
                #[serde(default, skip_serializing_if = "crate::wire::define::is_left_out")]
                pub $field: $ty,]
            [$($decode)* (optional Optional $field)]
            $($rest)*
        }
    };
    (@fields [$($metas:tt)*] $name:ident [$($struct:tt)*] [$(($need:ident $how:ident $field:ident))*]) => {
        $($metas)*
        #[derive(Debug, Clone, PartialEq, serde::Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(deny_unknown_fields)]
        pub struct $name { $($struct)* }

        impl $name {
            /// Every field with whether it has to be there, in the order of the format.
            pub const FIELDS: &'static [(&'static str, $crate::decode::Need)] =
                &[$((stringify!($field), $crate::decode::Need::$how)),*];
        }

        $crate::decode_fields! { $name [$(($need $field))*] }
    };
}

/// Defines a list of words; after `=>` the core's, if they are the same.
macro_rules! words {
    ($(#[$meta:meta])* pub enum $name:ident => $core:path {
        $( $(#[$doc:meta])* $variant:ident $word:literal, )+
    }) => {
        $crate::wire::define::words! {
            $(#[$meta])*
            pub enum $name { $( $(#[$doc])* $variant $word, )+ }
        }

        impl $crate::lower::Lower for $name {
            type Core = $core;

            fn lower(&self, _: $crate::lower::Units) -> $core {
                type Core = $core;
                match self { $(Self::$variant => Core::$variant,)+ }
            }
        }
    };
    ($(#[$meta:meta])* pub enum $name:ident { $( $(#[$doc:meta])* $variant:ident $word:literal, )+ }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub enum $name { $( $(#[$doc])* #[serde(rename = $word)] $variant, )+ }

        impl $name {
            /// The word as the file writes it.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $word,)+ }
            }
        }

        $crate::decode_words! { $name $($variant $word)+ }
    };
}

/// Defines a choice: words, some of them with something beside them; after `=>` the core's, if it
/// is the same.
macro_rules! choice {
    ($(#[$meta:meta])* pub enum $name:ident => $core:path {
        $( $(#[$doc:meta])* $variant:ident $(($content:ty))? $word:literal, )+
    }) => {
        $crate::wire::define::choice! {
            $(#[$meta])*
            pub enum $name { $( $(#[$doc])* $variant $(($content))? $word, )+ }
        }

        impl $crate::lower::Lower for $name {
            type Core = $core;

            fn lower(&self, units: $crate::lower::Units) -> $core {
                type Core = $core;
                match self {
                    $($crate::wire::define::choice!(@bind it $variant $($content)?) => {
                        $crate::wire::define::choice!(@lower it units Core $variant $($content)?)
                    })+
                }
            }
        }
    };
    ($(#[$meta:meta])* pub enum $name:ident {
        $( $(#[$doc:meta])* $variant:ident $(($content:ty))? $word:literal, )+
    }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub enum $name { $( $(#[$doc])* #[serde(rename = $word)] $variant $(($content))?, )+ }

        impl $name {
            /// The word as the file writes it.
            pub const fn name(&self) -> &'static str {
                match self { $($crate::wire::define::choice!(@any $variant $($content)?) => $word,)+ }
            }
        }

        impl $crate::decode::Decode for $name {
            fn decode(
                node: $crate::tree::Node<'_>,
                at: $crate::decode::At<'_>,
                report: &mut $crate::decode::Report,
            ) -> Self {
                let alone = [$($crate::wire::define::choice!(@alone $($content)?)),+];
                let Some((chosen, content)) = $crate::decode::chosen(node, &[$($word),+], &alone, at, report) else {
                    return Self::invented();
                };
                let mut left = chosen;
                $(
                    if left == 0 {
                        return $crate::wire::define::choice!(@decode content at report $word $variant $($content)?);
                    }
                    left = left.wrapping_sub(1);
                )+
                let _ = left;
                Self::invented()
            }

            fn invented() -> Self {
                $crate::wire::define::choice!(@first $($variant $(($content))?),+)
            }
        }
    };
    (@any $variant:ident $content:ty) => { Self::$variant(_) };
    (@any $variant:ident) => { Self::$variant };
    (@bind $it:ident $variant:ident $content:ty) => { Self::$variant($it) };
    (@bind $it:ident $variant:ident) => { Self::$variant };
    (@lower $it:ident $units:ident $core:ident $variant:ident $content:ty) => {
        $core::$variant($crate::lower::Lower::lower($it, $units))
    };
    (@lower $it:ident $units:ident $core:ident $variant:ident) => { $core::$variant };
    (@alone $content:ty) => { false };
    (@alone) => { true };
    (@decode $node:ident $at:ident $report:ident $word:literal $variant:ident $content:ty) => {
        Self::$variant($crate::decode::Decode::decode($node, $at.field($word), $report))
    };
    (@decode $node:ident $at:ident $report:ident $word:literal $variant:ident) => { Self::$variant };
    (@first $variant:ident ($content:ty) $($rest:tt)*) => { Self::$variant($crate::decode::Decode::invented()) };
    (@first $variant:ident $($rest:tt)*) => { Self::$variant };
}

pub(crate) use {choice, record, words};

/// Whether an optional field says nothing.
pub fn is_left_out<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}
