//! A point or free vector of space.

/// A point or free vector of space: x, y, z.
pub type Vector = [f64; 3];

/// The sum.
pub fn plus(a: Vector, b: Vector) -> Vector {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

/// The first less the second.
pub fn minus(a: Vector, b: Vector) -> Vector {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

/// A vector `factor` times as long.
pub fn times(a: Vector, factor: f64) -> Vector {
    a.map(|part| part * factor)
}

/// Scalar product.
pub fn dot(a: Vector, b: Vector) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// Vector product, right-handed.
///
/// # Examples
/// ```
/// use fitup_core::space::cross;
/// assert_eq!(cross([1.0, 0.0, 0.0], [0.0, 1.0, 0.0]), [0.0, 0.0, 1.0]);
/// ```
pub fn cross(a: Vector, b: Vector) -> Vector {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/// Length.
pub fn norm(a: Vector) -> f64 {
    libm::hypot(libm::hypot(a[0], a[1]), a[2])
}

/// The angle between two vectors, 0 to π; 0 where one has no length.
///
/// # Accuracy
/// Full digits at every angle: by both products, not by the cosine alone.
pub fn angle_between(a: Vector, b: Vector) -> f64 {
    libm::atan2(norm(cross(a, b)), dot(a, b))
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;

    #[test]
    fn the_vector_product_is_square_to_both_and_right_handed() {
        let (a, b) = ([1.0, 2.0, -3.0], [0.5, -1.0, 4.0]);
        let c = cross(a, b);
        assert!(dot(a, c).abs() < 1e-12 && dot(b, c).abs() < 1e-12);
        assert!(norm(minus(cross(b, a), times(c, -1.0))) < 1e-12);
        assert_eq!(plus([1.0, 2.0, 3.0], [1.0, 1.0, 1.0]), [2.0, 3.0, 4.0]);
    }

    #[test]
    fn small_and_straight_angles_keep_their_digits() {
        let small = angle_between([1.0, 0.0, 0.0], [1.0, 1e-9, 0.0]);
        assert!((small - 1e-9).abs() < 1e-18);
        assert_eq!(angle_between([0.0, 0.0, 2.0], [0.0, 0.0, -1.0]), core::f64::consts::PI);
        assert_eq!(angle_between([0.0; 3], [1.0, 0.0, 0.0]), 0.0);
    }
}
