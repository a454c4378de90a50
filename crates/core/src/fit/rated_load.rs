//! A load against what is to bear it.

use crate::quantity::Mass;

/// A load and the greatest load allowed there, as far as they are known.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RatedLoad {
    /// The load; negative where it lifts.
    pub load: Option<Mass>,
    /// The greatest load allowed.
    pub rated: Option<Mass>,
}

impl RatedLoad {
    /// What may still be added; negative = so much too much. `None` unless both are known.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::{fit::RatedLoad, quantity::Mass};
    /// let axle = |load| RatedLoad { load: Some(Mass::from_kg(load)), rated: Some(Mass::from_kg(600.0)) };
    /// assert_eq!(axle(450.0).left(), Some(Mass::from_kg(150.0)));
    /// assert!(axle(601.0).is_over() && !axle(600.0).is_over());
    /// ```
    pub fn left(&self) -> Option<Mass> {
        self.rated.zip(self.load).map(|(rated, load)| rated - load)
    }

    /// Whether it is known to be more than allowed.
    pub fn is_over(&self) -> bool {
        self.left().is_some_and(|left| left < Mass::ZERO)
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
            let known = RatedLoad { load, rated };
            assert!(known.left().is_none() && !known.is_over() && !known.lifts());
        }
        assert!(RatedLoad { load: Some(Mass::from_kg(-0.5)), rated: None }.lifts());
    }
}
