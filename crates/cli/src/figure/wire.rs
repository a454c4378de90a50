//! Shapes that several figures read and tell.

use fitup_catalogue::decode::Filled;
use fitup_catalogue::read_record;
use fitup_core::dimension::PointMass;
use fitup_core::plane::Point;
use fitup_core::quantity::Length;
use serde_json::{Value, json};

read_record! {
    /// A named open polyline of the side view.
    #[derive(Debug)]
    pub struct Item {
        /// Name told in the result.
        required pub name: String,
        /// Its points (x, z).
        required pub points_mm: Filled<[f64; 2]>,
    }
}

/// The items' points in metres.
pub fn lines(items: &[Item]) -> Vec<Vec<Point>> {
    items.iter().map(|item| item.points_mm.iter().map(|&[x, z]| Point::new(m(x), m(z))).collect()).collect()
}

/// Tells the point that governs, and the item of the line it lies on; null where nothing does.
pub fn tell_point(result: &mut Value, governs: Option<(Point, usize)>, items: &[Item]) {
    result["point_x_mm"] = mm(governs.map(|(point, _)| point.x));
    result["point_z_mm"] = mm(governs.map(|(point, _)| point.y));
    result["item"] = json!(governs.map(|(_, line)| &items[line].name));
}

read_record! {
    /// A mass along the machine.
    #[derive(Debug)]
    pub struct Body {
        /// Not told again; it may stand in the case for whoever reads that.
        nullable name: Option<String>,
        /// Its mass.
        required pub mass_kg: f64,
        /// x of its centre of gravity.
        required pub x_mm: f64,
    }
}

/// The bodies in metres.
pub fn bodies(bodies: &[Body]) -> Vec<PointMass> {
    bodies.iter().map(|body| PointMass { mass: body.mass_kg, x: m(body.x_mm) }).collect()
}

/// Puts `value` under `key`, or leaves the key out when there is nothing to tell.
pub fn set(result: &mut Value, key: &str, value: Option<impl Into<Value>>) {
    if let Some(value) = value {
        result[key] = value.into();
    }
}

/// Metres from millimetres.
pub fn m(mm: f64) -> f64 {
    Length::from_mm(mm).m()
}

/// A length in millimetres, or null.
pub fn mm(length: impl Into<Option<f64>>) -> Value {
    number(length.into().map(|length| Length::from_m(length).mm()))
}

/// An angle in degrees, or null.
pub fn deg(angle: impl Into<Option<f64>>) -> Value {
    number(angle.into().map(f64::to_degrees))
}

/// A number, or null for none. JSON would silently make null of what is not finite as well.
fn number(value: Option<f64>) -> Value {
    debug_assert!(value.is_none_or(f64::is_finite), "figures are finite or not there");
    json!(value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_and_angles_are_told_in_the_keys_units() {
        assert_eq!(mm(0.38), json!(380.0));
        assert_eq!(mm(None), Value::Null);
        assert_eq!(deg(Some(std::f64::consts::PI)), json!(180.0));
    }
}
