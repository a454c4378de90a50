//! Masses along the machine and their moment about a line across it.

use super::input::{InputError, between, not_negative, sound};

/// A mass and where along the machine its centre of gravity lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PointMass {
    /// Mass, kilograms.
    pub mass: f64,
    /// x of its centre of gravity, metres.
    pub x: f64,
}

/// Shortest span that a load is shared over, metres: a millimetre. Anything shorter is a slip of the unit
/// and would make loads of no meaning. Common practice, no source.
const SHORTEST_SPAN: f64 = 1e-3;

/// `span`, if loads can be shared over it.
///
/// # Errors
/// Not [`sound`], or shorter than [`SHORTEST_SPAN`].
pub(super) fn span(what: &'static str, span: f64) -> Result<f64, InputError> {
    between(what, span, SHORTEST_SPAN, super::LARGEST)
}

/// Nothing, if every body can be computed with.
///
/// # Errors
/// A negative mass, or a number that is not [`sound`].
pub(super) fn sound_bodies(bodies: &[PointMass]) -> Result<(), InputError> {
    for body in bodies {
        not_negative("mass", body.mass)?;
        sound("mass-x", body.x)?;
    }
    Ok(())
}

/// Moment of the bodies about the line at `about`, kg·m; bodies ahead of the line count positive.
///
/// A balance that is exact on paper stays exact: what is no more than rounding is 0.
pub(super) fn moment(bodies: &[PointMass], about: f64) -> f64 {
    let sum: f64 = bodies.iter().map(|body| body.mass * (body.x - about)).sum();
    without_rounding(sum, bodies.iter().flat_map(|body| [body.mass * body.x, body.mass * about]))
}

/// `value`, or 0 when it is no more than the rounding of the terms it is made of.
pub(super) fn without_rounding(value: f64, terms: impl IntoIterator<Item = f64>) -> f64 {
    /// Some thousand roundings of a double: far below any mass that a scale can tell. Common practice, no source.
    const ROUNDING: f64 = 1e-13;
    let size: f64 = terms.into_iter().map(f64::abs).sum();
    if value.abs() <= ROUNDING * size { 0.0 } else { value }
}

/// `a` less `b`, and 0 where they differ by no more than rounding.
pub(super) fn difference(a: f64, b: f64) -> f64 {
    without_rounding(a - b, [a, b])
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;

    #[test]
    fn a_balance_exact_on_paper_is_exact() {
        let bodies = [PointMass { mass: 0.1, x: 0.3 }, PointMass { mass: 0.3, x: -0.1 }];
        assert_eq!(moment(&bodies, 0.0), 0.0);
        assert_eq!(moment(&[], 1.0), 0.0);
        assert_eq!(moment(&[PointMass { mass: 10.0, x: 2.0 }], -1.0), 30.0);
    }

    #[test]
    fn what_is_no_more_than_rounding_is_nothing() {
        assert_eq!(difference(0.1 + 0.2, 0.3), 0.0);
        assert_eq!(difference(-0.3, -0.1 - 0.2), 0.0);
        assert_eq!(difference(0.3 + 1e-12, 0.3), 0.3 + 1e-12 - 0.3);
        // A ten-million-millionth of what it is made of is still rounding, three of them are not.
        assert_eq!((without_rounding(1e-13, [-1.0]), without_rounding(3e-13, [-1.0, 1.0])), (0.0, 3e-13));
        assert_eq!(without_rounding(-3e-13, [2.0]), -3e-13);
    }

    #[test]
    fn bodies_and_spans_of_no_meaning_are_named() {
        assert_eq!(sound_bodies(&[PointMass { mass: -1.0, x: 0.0 }]).map_err(|e| e.what), Err("mass"));
        assert_eq!(sound_bodies(&[PointMass { mass: 1.0, x: f64::NAN }]).map_err(|e| e.what), Err("mass-x"));
        assert_eq!(span("wheelbase", 0.0).map_err(|e| e.what), Err("wheelbase"));
        assert_eq!(span("wheelbase", 1e-3), Ok(1e-3));
    }
}
