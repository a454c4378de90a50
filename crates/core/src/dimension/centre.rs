//! Common centre of gravity.

/// Where the common centre of gravity of several bodies lies along one axis: the mean of their places, each counted by
/// its mass; `None` where nothing has mass.
///
/// # Shape
/// Pairs of mass and place.
///
/// # Units
/// Kilograms and metres.
///
/// # Frame
/// Any axis, the same for all bodies.
///
/// # Source
/// Definition of the centre of mass.
///
/// # Examples
/// ```
/// use fitup_core::dimension::centre;
/// assert_eq!(centre([(100.0, 1.0), (300.0, 2.0)]), Some(1.75));
/// assert_eq!(centre([]), None);
/// ```
pub fn centre(bodies: impl IntoIterator<Item = (f64, f64)>) -> Option<f64> {
    let (mass, moment) = bodies.into_iter().fold((0.0, 0.0), |(mass, moment), (m, at)| (mass + m, moment + m * at));
    (mass > 0.0).then(|| moment / mass)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_has_no_centre_and_a_body_without_mass_does_not_pull() {
        assert_eq!(centre([(0.0, 3.0)]), None);
        assert_eq!(centre([(f64::NAN, 3.0)]), None);
        assert_eq!(centre([(2.0, 1.5), (0.0, 9.0)]), Some(1.5));
    }
}
