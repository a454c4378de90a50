//! The one definition of what a quantity is; each quantity's file names its units.

/// Defines a quantity type and its unit enum.
macro_rules! quantity {
    (
        $(#[$doc:meta])* $name:ident / $unit:ident {
            $( $(#[$unit_doc:meta])* $variant:ident, $from:ident, $to:ident, $symbol:literal, $factor:expr; )+
        }
    ) => {
        $(#[$doc])*
        #[must_use]
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        /// A unit that values of this quantity are written in.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $unit { $( $(#[$unit_doc])* $variant, )+ }

        impl $unit {
            /// Every unit, in the order of the table.
            pub const ALL: &'static [Self] = &[ $( Self::$variant, )+ ];

            /// The symbol as files and readers write it.
            pub const fn symbol(self) -> &'static str {
                match self { $( Self::$variant => $symbol, )+ }
            }

            /// The SI value of one of this unit.
            pub const fn factor(self) -> f64 {
                match self { $( Self::$variant => $factor, )+ }
            }

            /// The unit written as `symbol`, if it is one of this quantity's.
            pub fn from_symbol(symbol: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|unit| unit.symbol() == symbol)
            }
        }

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0);

            /// From the SI value.
            pub const fn from_si(value: f64) -> Self { Self(value) }

            /// The SI value.
            pub const fn si(self) -> f64 { self.0 }

            /// From a number written in `unit`.
            pub const fn new(value: f64, unit: $unit) -> Self { Self(value * unit.factor()) }

            /// The number to write in `unit`.
            pub const fn value_in(self, unit: $unit) -> f64 { self.0 / unit.factor() }

            $(
                #[doc = concat!("From a number of ", $symbol, ".")]
                pub const fn $from(value: f64) -> Self { Self(value * $factor) }

                #[doc = concat!("The number of ", $symbol, ".")]
                pub const fn $to(self) -> f64 { self.0 / $factor }
            )+

            /// Without its sign.
            pub const fn abs(self) -> Self { Self(self.0.abs()) }

            /// The smaller of two.
            pub const fn min(self, other: Self) -> Self { Self(self.0.min(other.0)) }

            /// The larger of two.
            pub const fn max(self, other: Self) -> Self { Self(self.0.max(other.0)) }

            /// A total order, so that answers can be sorted.
            pub fn total_cmp(&self, other: &Self) -> std::cmp::Ordering { self.0.total_cmp(&other.0) }
        }

        impl std::ops::Add for $name { type Output = Self; fn add(self, o: Self) -> Self { Self(self.0 + o.0) } }
        impl std::ops::Sub for $name { type Output = Self; fn sub(self, o: Self) -> Self { Self(self.0 - o.0) } }
        impl std::ops::Neg for $name { type Output = Self; fn neg(self) -> Self { Self(-self.0) } }
        impl std::ops::Mul<f64> for $name { type Output = Self; fn mul(self, k: f64) -> Self { Self(self.0 * k) } }
        impl std::ops::Div<f64> for $name { type Output = Self; fn div(self, k: f64) -> Self { Self(self.0 / k) } }
        impl std::ops::Div for $name { type Output = f64; fn div(self, o: Self) -> f64 { self.0 / o.0 } }
        impl std::ops::AddAssign for $name { fn add_assign(&mut self, o: Self) { self.0 += o.0; } }
        impl std::iter::Sum for $name { fn sum<I: Iterator<Item = Self>>(all: I) -> Self { Self(all.map(|q| q.0).sum()) } }

        #[cfg(test)]
        mod laws {
            use super::*;

            #[test]
            fn every_unit_round_trips_and_is_found_by_its_symbol() {
                for &unit in $unit::ALL {
                    assert_eq!($unit::from_symbol(unit.symbol()), Some(unit));
                    for value in [0.0, 1.0, -2.5, 1234.567, 1e-6, 1e9] {
                        let back = $name::new(value, unit).value_in(unit);
                        assert!((back - value).abs() <= value.abs() * 4.0 * f64::EPSILON, "{value} {unit:?}: {back}");
                    }
                }
                assert_eq!($unit::from_symbol("furlong per fortnight"), None);
            }

            #[test]
            fn any_value_survives_the_way_through_every_unit() {
                let chance = crate::search::tests::chance::Chance::new(7);
                for _ in 0..1_000 {
                    let digits = f64::from(u32::try_from(chance.below(2_000_001)).expect("small")) - 1e6;
                    let power = i32::try_from(chance.below(13)).expect("small") - 9;
                    let value = digits * 10_f64.powi(power);
                    let mut quantity = $name::from_si(value);
                    for &unit in $unit::ALL {
                        quantity = $name::new(quantity.value_in(unit), unit);
                    }
                    let off = (quantity.si() - value).abs();
                    assert!(off <= value.abs() * 8.0 * f64::EPSILON, "{value}: {quantity:?}");
                }
            }
        }
    };
}

pub(crate) use quantity;
