//! The table of a port kind: the dimensions that decide whether it mates, each with its name, the field it stands in, and what
//! can be entered for it.
//!
//! What is stated, what was measured, where it comes from, how far it may be off and what can still be measured all come from
//! this one table. A new dimension is its field and a line:
//!
//! ```text
//! table! {
//!     HookRack, besides [side]
//!     size SPREAD "spread" spread;     a size: above zero
//!     distance SETBACK "setback" setback;     zero or more
//!     place AT_X "at-x" x;             of any sign
//!     told CATEGORY "category";        decides too, but is read off or asked for, not measured
//! }
//! ```
//!
//! A field that is neither on a line nor named after `besides` does not compile.

use std::fmt::{self, Display, Formatter};

use crate::quantity::{Length, Stated};

/// The values that a length may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sign {
    /// A size: above zero.
    AboveZero,
    /// A distance: zero or more.
    NotBelowZero,
    /// A place against some origin: any.
    Any,
}

/// A dimension of a `K`, as a line of its table.
#[derive(Debug)]
pub struct Line<K> {
    pub(super) what: &'static str,
    pub(super) length: Option<Field<K>>,
}

/// The field that a measurable line stands for.
#[derive(Debug)]
pub(super) struct Field<K> {
    pub sign: Sign,
    pub get: fn(&K) -> Option<Stated<Length>>,
    pub put: fn(&mut K, Stated<Length>),
}

impl<K> Line<K> {
    /// The name that texts and files know it by.
    pub const fn name(&self) -> DimensionName {
        DimensionName { part: None, what: self.what }
    }

    /// What is stated of it; `None` also if it is no length.
    pub fn of(&self, kind: &K) -> Option<Stated<Length>> {
        self.length.as_ref().and_then(|field| (field.get)(kind))
    }
}

/// The name of a dimension of a port, as texts and files know it: "spread", "hole-3-u", "point-2-diameter".
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct DimensionName {
    /// What it is one of, and which, from 0.
    pub(super) part: Option<(&'static str, usize)>,
    pub(super) what: &'static str,
}

impl DimensionName {
    /// Whether this is the name written.
    pub fn is(&self, written: &str) -> bool {
        match self.part {
            None => self.what == written,
            Some((part, index)) => numbered(written, part) == Some((index, self.what)),
        }
    }
}

impl Display for DimensionName {
    fn fmt(&self, f: &mut Formatter) -> fmt::Result {
        match self.part {
            None => f.write_str(self.what),
            Some((part, index)) => write!(f, "{part}-{}-{}", index + 1, self.what),
        }
    }
}

/// A dimension that can be measured on a port, with what is stated of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dimension {
    /// Its name.
    pub name: DimensionName,
    /// What is stated or was measured.
    pub stated: Option<Stated<Length>>,
}

/// Why a measurement cannot be entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refused {
    /// The item has no port of that name.
    NoPort,
    /// The port has no such dimension.
    NoDimension,
    /// No unit has that value: not a number, too large, or no size where one is needed.
    Impossible,
    /// It cannot be off by so much: less than nothing, or of a size more than the size itself.
    HalfRange,
}

/// What has a table of lengths.
pub(super) trait Lengths {
    /// Shows every measurable dimension, in the order of the table; `part` is what they belong to.
    fn each(&self, part: Option<(&'static str, usize)>, see: &mut dyn FnMut(Dimension));

    /// Enters what was measured for a dimension by its name.
    fn put(&mut self, name: &str, measured: Stated<Length>) -> Result<(), Refused>;
}

/// [`Lengths::each`] for the lines of one table.
pub(super) fn each<K>(lines: &[Line<K>], of: &K, part: Option<(&'static str, usize)>, see: &mut dyn FnMut(Dimension)) {
    for Line { what, length } in lines {
        if let Some(field) = length {
            see(Dimension { name: DimensionName { part, what }, stated: (field.get)(of) });
        }
    }
}

/// [`Lengths::put`] for the lines of one table.
pub(super) fn put<K>(lines: &[Line<K>], into: &mut K, name: &str, measured: Stated<Length>) -> Result<(), Refused> {
    let line = lines.iter().find(|line| line.what == name);
    let field = line.and_then(|line| line.length.as_ref()).ok_or(Refused::NoDimension)?;
    let possible = match field.sign {
        Sign::AboveZero => measured.value > Length::ZERO,
        Sign::NotBelowZero => measured.value >= Length::ZERO,
        Sign::Any => true,
    };
    if !possible {
        return Err(Refused::Impossible);
    }
    let off = measured.plus_minus.unwrap_or_default();
    if off < Length::ZERO || field.sign == Sign::AboveZero && off > measured.value {
        return Err(Refused::HalfRange);
    }
    (field.put)(into, measured);
    Ok(())
}

/// "hole-3-u" → (2, "u").
pub(super) fn numbered<'n>(name: &'n str, part: &str) -> Option<(usize, &'n str)> {
    let (number, what) = name.strip_prefix(part)?.strip_prefix('-')?.split_once('-')?;
    let number: usize = number.parse().ok()?;
    Some((number.checked_sub(1)?, what))
}

/// The table of a kind, see the head of this file. `each ["hole" holes: Hole]` says that every hole has a table of its own, whose
/// names begin with "hole-1-", "hole-2-" …
macro_rules! table {
    (
        $kind:ident, besides [$($besides:ident),*] $(, each [$part:literal $parts:ident: $of_part:ident])?
        $($how:ident $line:ident $what:literal $($field:ident)?;)*
    ) => {
        impl $kind {
            $(
                #[doc = concat!("The dimension named \"", $what, "\".")]
                pub const $line: $crate::item::Line<Self> = $crate::item::Line {
                    what: $what,
                    length: $crate::item::port::table::field!($how $($field)?),
                };
            )*

            /// Every name of the table.
            pub(super) const NAMES: &[&str] = &[$($what),*];
            $(
                #[doc = concat!("The name of a dimension of one of them, counted from 0: \"", $part, "-1-…\".")]
                pub const fn nth(index: usize, line: &$crate::item::Line<$of_part>) -> $crate::item::DimensionName {
                    $crate::item::DimensionName { part: Some(($part, index)), what: line.what }
                }
            )?
        }

        impl $crate::item::port::table::Lengths for $kind {
            fn each(
                &self,
                part: Option<(&'static str, usize)>,
                see: &mut dyn FnMut($crate::item::Dimension),
            ) {
                // A field that is neither on a line nor left out does not compile.
                let Self { $($besides: _,)* $($parts: _,)? $($($field: _,)?)* } = self;
                $crate::item::port::table::each(&[$(Self::$line),*], self, part, see);
                $(
                    for (index, one) in self.$parts.iter().enumerate() {
                        one.each(Some(($part, index)), see);
                    }
                )?
            }

            fn put(
                &mut self,
                name: &str,
                measured: $crate::quantity::Stated<$crate::quantity::Length>,
            ) -> Result<(), $crate::item::Refused> {
                $(
                    if let Some((index, what)) = $crate::item::port::table::numbered(name, $part) {
                        let one = self.$parts.get_mut(index).ok_or($crate::item::Refused::NoDimension)?;
                        return one.put(what, measured);
                    }
                )?
                $crate::item::port::table::put(&[$(Self::$line),*], self, name, measured)
            }
        }
    };
}

/// The field of a line. A field may leave its length unsaid (`Option`) or not.
macro_rules! field {
    (told) => {
        None
    };
    (size $field:ident) => {
        $crate::item::port::table::field!($field, AboveZero)
    };
    (distance $field:ident) => {
        $crate::item::port::table::field!($field, NotBelowZero)
    };
    (place $field:ident) => {
        $crate::item::port::table::field!($field, Any)
    };
    ($field:ident, $sign:ident) => {
        Some($crate::item::port::table::Field {
            sign: $crate::item::port::table::Sign::$sign,
            get: |of| of.$field.into(),
            put: |into, measured| into.$field = measured.into(),
        })
    };
}

pub(super) use field;
pub(super) use table;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbered_names_are_read_from_one() {
        assert_eq!(numbered("hole-3-u", "hole"), Some((2, "u")));
        assert_eq!(numbered("hole-0-u", "hole"), None);
        assert_eq!(numbered("hole-x-u", "hole"), None);
        assert_eq!(numbered("holes-1-u", "hole"), None);
        assert_eq!(numbered("spread", "hole"), None);
    }

    #[test]
    fn a_name_is_what_it_is_written_as_and_nothing_else() {
        let name = DimensionName { part: Some(("hole", 9)), what: "u" };
        assert_eq!(name.to_string(), "hole-10-u");
        assert!(name.is("hole-10-u") && !name.is("hole-1-u") && !name.is("hole-10-v") && !name.is("u"));
    }
}
