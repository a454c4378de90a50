//! Outlines laid out for judging: flattened once, arms in their transport pose.

use crate::build::{ArmAngles, Placement, arm_pose};
use crate::item::{Carrier, Catalogue, ItemRef, ShapeRole, View, flatten};
use crate::quantity::Length;

/// A shape as straight runs in the item's local axes, metres.
#[derive(Debug, Clone, PartialEq)]
pub struct FlatShape {
    /// Index in the item's shapes.
    pub shape: usize,
    /// View.
    pub view: View,
    /// What it shows.
    pub role: ShapeRole,
    /// What it moves with.
    pub carrier: Carrier,
    /// Whether others have to keep clear of it.
    pub clearance: bool,
    /// The runs; links of an arm stand in their transport pose.
    pub runs: Vec<Vec<(f64, f64)>>,
}

/// Flattens an item's shapes; a digging arm's links are posed as in transport.
pub(crate) fn flat_shapes(catalogue: &Catalogue, item: ItemRef) -> Vec<FlatShape> {
    let pose = match item {
        ItemRef::Implement(id) => catalogue.implement(id).arm.map(|arm| arm_pose(&arm, ArmAngles::transport(&arm))),
        _ => None,
    };
    catalogue
        .body(item)
        .shapes
        .iter()
        .enumerate()
        .map(|(index, shape)| {
            let mut runs = flatten(shape);
            if let Some(link) = pose.and_then(|pose| pose.link(shape.carrier)) {
                for (a, b) in runs.iter_mut().flatten() {
                    let (x, z) = link.point(Length::from_m(*a), Length::from_m(*b));
                    (*a, *b) = (x.m(), z.m());
                }
            }
            FlatShape {
                shape: index,
                view: shape.view,
                role: shape.role,
                carrier: shape.carrier,
                clearance: shape.clearance,
                runs,
            }
        })
        .collect()
}

/// Points of a view moved to where the item stands, metres.
///
/// Side (x, z) turns and shifts with the placement; plan (x, y) and rear (y, z) only shift and turn half round: to pitch them asks
/// for the coordinate that they do not have. A joint stands with two degrees at the most (more is a finding of its own), which
/// shortens a plan by less than a thousandth; what it moves a point of a metre's height along the machine, 35 mm, the side view has.
pub fn placed(view: View, placement: &Placement, (a, b): (f64, f64)) -> (f64, f64) {
    let sign = if placement.reversed { -1.0 } else { 1.0 };
    match view {
        View::Side => {
            let (x, z) = placement.side(Length::from_m(a), Length::from_m(b));
            (x.m(), z.m())
        }
        View::Plan => (placement.at.x.m() + sign * a, placement.at.y.m() + sign * b),
        View::Rear => (placement.at.y.m() + sign * a, placement.at.z.m() + b),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Point3;
    use crate::quantity::Angle;

    #[test]
    fn a_view_shifts_with_its_item_and_turns_half_round_with_it() {
        let at = Point3 { x: Length::from_m(10.0), y: Length::from_m(20.0), z: Length::from_m(40.0) };
        let as_it_is = Placement { at, pitch: Angle::ZERO, reversed: false };
        let turned = Placement { reversed: true, ..as_it_is };
        for (view, straight, round) in [
            (View::Side, (13.0, 42.0), (7.0, 42.0)),
            (View::Plan, (13.0, 22.0), (7.0, 18.0)),
            (View::Rear, (23.0, 42.0), (17.0, 42.0)),
        ] {
            assert_eq!(placed(view, &as_it_is, (3.0, 2.0)), straight, "{view:?}");
            assert_eq!(placed(view, &turned, (3.0, 2.0)), round, "{view:?} turned");
        }
    }
}
