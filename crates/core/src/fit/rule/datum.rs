//! A datum that a row may leave unsaid.

use crate::finding::{Fact, Finding, Unstated};

/// A value that a row may leave unsaid. It cannot be used without saying what its absence means.
///
/// It goes by a name, so that its absence can be found and asked about; one that is [`Unnamed`] cannot. Two are equal if both
/// state the same or both state nothing.
///
/// # Examples
/// ```
/// use fitup_core::fit::rule::Datum;
/// let least = Datum::unnamed(Some(12.0));
/// assert_eq!(least.or_taken_as(0.0, "an implement without a least runs on any power"), 12.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Datum<T, Name = Unstated> {
    what: Name,
    value: Option<T>,
}

/// In place of the name of a datum whose absence is never found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Unnamed;

impl<T> Datum<T, Unnamed> {
    /// A value whose absence is never found.
    pub const fn unnamed(value: Option<T>) -> Self {
        Self { what: Unnamed, value }
    }
}

impl<T> Datum<T> {
    /// A value of this name.
    pub const fn new(what: Unstated, value: Option<T>) -> Self {
        Self { what, value }
    }

    /// The value; if it is not stated, what `tell` says of its name is found: a *check first* finding.
    pub fn need(self, out: &mut Vec<Finding>, tell: impl FnOnce(Unstated) -> Finding) -> Option<T> {
        if self.value.is_none() {
            out.push(tell(self.what));
        }
        self.value
    }
}

impl<T, Name: Copy> Datum<T, Name> {
    /// The same with another value.
    pub fn map<U>(self, with: impl FnOnce(T) -> U) -> Datum<U, Name> {
        Datum { what: self.what, value: self.value.map(with) }
    }

    /// Both together; where one is not stated, they go by the name of the first that is not.
    pub fn and<U>(self, other: Datum<U, Name>) -> Datum<(T, U), Name> {
        let what = if self.value.is_some() { other.what } else { self.what };
        Datum { what, value: self.value.zip(other.value) }
    }

    /// This one, or else the other.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        if self.value.is_some() { self } else { other }
    }

    /// Only whether it is stated, for a rule that does not look at the value.
    pub const fn stated(&self) -> Datum<(), Name> {
        Datum { what: self.what, value: if self.value.is_some() { Some(()) } else { None } }
    }

    /// The value; if it is not stated, this finding of another rule says so.
    pub fn or_said_by<F: Fact>(self) -> Option<T> {
        self.value
    }

    /// The value; if it is not stated, this one in its place, for this reason.
    pub fn or_taken_as(self, other: T, _reason: &'static str) -> T {
        self.value.unwrap_or(other)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::{Grade, Subject, Verdict};
    use crate::fit::rule::lift::LiftUnknown;

    #[test]
    fn what_is_needed_and_not_stated_is_found_by_its_name() {
        let tell = |what| {
            assert_eq!(what, Unstated::Mass);
            Finding::of(LiftUnknown { missing: what }, Subject::Drive, Verdict::CheckFirst, Grade::None)
        };
        let mut out = Vec::new();
        assert_eq!(Datum::new(Unstated::Mass, Some(1)).need(&mut out, tell), Some(1));
        assert!(out.is_empty());
        assert_eq!(Datum::new(Unstated::Mass, None::<u8>).need(&mut out, tell), None);
        assert_eq!(out.len(), 1);
    }

    #[test]
    fn stated_data_are_alike_whatever_they_state() {
        let of = |value| Datum::new(Unstated::Mass, value);
        assert!(of(Some(1)) != of(Some(2)) && of(Some(1)).stated() == of(Some(2)).stated());
        assert!(of(Some(1)).stated() != of(None).stated());
        assert_eq!((of(None).or_taken_as(7, "usual"), of(Some(1)).or_taken_as(7, "usual")), (7, 1));
    }
}
