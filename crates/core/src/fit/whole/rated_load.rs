//! A load against what is to bear it.

use crate::quantity::Mass;

/// A load and the greatest load allowed there, as far as they are known.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RatedLoad {
    /// The load; negative where it lifts.
    pub load: Option<Mass>,
    /// The greatest load allowed.
    pub rated: Option<Mass>,
    /// How far the load may be off either way. What is allowed is a limit and has no range of its own.
    pub off: Mass,
}

/// A load against a limit, as far as its range lets it be told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Against {
    /// Within the limit for certain.
    Within,
    /// So near to it that the range decides.
    Near,
    /// Over it for certain.
    Over,
}

impl Against {
    /// What is left up to a limit, with a range either way; a rounding is not over.
    pub fn of(left: f64, off: f64) -> Self {
        if left + off < -ROUNDING * off.max(1.0) {
            Self::Over
        } else if left - off < -ROUNDING * off.max(1.0) {
            Self::Near
        } else {
            Self::Within
        }
    }
}

/// What sums of masses or lengths may be off: a billionth of a kilogram or a metre.
const ROUNDING: f64 = 1e-9;

impl RatedLoad {
    /// What may still be added; negative = so much too much. `None` unless both are known.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::{fit::RatedLoad, quantity::Mass};
    /// let [rated, off] = [600.0, 5.0].map(Mass::from_kg);
    /// let axle = |load| RatedLoad { load: Some(Mass::from_kg(load)), rated: Some(rated), off };
    /// assert_eq!(axle(450.0).left(), Some(Mass::from_kg(150.0)));
    /// assert!(axle(606.0).is_over() && axle(604.0).is_near() && axle(596.0).is_near() && !axle(595.0).is_near());
    /// ```
    pub fn left(&self) -> Option<Mass> {
        self.rated.zip(self.load).map(|(rated, load)| rated - load)
    }

    /// What each of an axle's two tyres bears of it, against what one is rated for.
    #[must_use]
    pub fn of_each_tyre(&self, rated: Option<Mass>) -> Self {
        Self { load: self.load.map(|axle| axle / 2.0), rated, off: self.off / 2.0 }
    }

    /// How it stands against what is allowed. `None` unless both are known.
    pub fn against(&self) -> Option<Against> {
        self.left().map(|left| Against::of(left.kg(), self.off.kg()))
    }

    /// Whether it is for certain more than allowed.
    pub fn is_over(&self) -> bool {
        self.against() == Some(Against::Over)
    }

    /// Whether it may be more than allowed and may be less.
    pub fn is_near(&self) -> bool {
        self.against() == Some(Against::Near)
    }

    /// Whether what should stand there lifts off.
    pub fn lifts(&self) -> bool {
        self.load.is_some_and(|load| load < Mass::ZERO)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_not_known_is_neither_over_nor_lifting() {
        let ten = Some(Mass::from_kg(10.0));
        for (load, rated) in [(None, None), (ten, None), (None, ten)] {
            let known = RatedLoad { load, rated, ..RatedLoad::default() };
            assert!(known.left().is_none() && !known.is_over() && !known.lifts());
        }
        assert!(RatedLoad { load: Some(Mass::from_kg(-0.5)), ..RatedLoad::default() }.lifts());
    }
}
