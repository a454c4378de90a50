//! Money, in the catalogue's one currency.

/// An amount in hundredths of the catalogue's currency, so that sums are exact.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default, Hash)]
pub struct Money(i64);

impl Money {
    /// No money.
    pub const ZERO: Self = Self(0);

    /// From hundredths of the currency.
    pub const fn from_hundredths(hundredths: i64) -> Self {
        Self(hundredths)
    }

    /// Hundredths of the currency.
    pub const fn hundredths(self) -> i64 {
        self.0
    }

    /// The sum, held at the largest amount instead of wrapping round.
    #[must_use]
    pub const fn plus(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }

    /// So many times the amount, held at the largest amount instead of wrapping round.
    #[must_use]
    pub const fn times(self, count: u32) -> Self {
        Self(self.0.saturating_mul(count as i64))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_are_exact_and_never_wrap() {
        assert_eq!(Money::from_hundredths(10).plus(Money::from_hundredths(20)).hundredths(), 30);
        assert_eq!(Money::from_hundredths(i64::MAX).times(3).hundredths(), i64::MAX);
    }
}
