//! A digging arm's links in a pose.

use crate::item::{Carrier, DiggingArm};
use crate::quantity::{Angle, Length};

/// Angles of a digging arm: boom over the horizontal, dipper and bucket each against the link
/// before it, all counter-clockwise in (u, z) with u outward (to the rear).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmAngles {
    /// Boom elevation.
    pub boom: Angle,
    /// Dipper against the boom: 0 = straight on, negative = folded down.
    pub dipper: Angle,
    /// Bucket against the dipper.
    pub bucket: Angle,
}

impl ArmAngles {
    /// The transport pose that the catalogue states.
    pub const fn transport(arm: &DiggingArm) -> Self {
        Self { boom: arm.boom.transport, dipper: arm.dipper.transport, bucket: arm.bucket.transport }
    }
}

/// Where a link lies in the implement's side view.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LinkPose {
    /// First pin, x in the implement's axes.
    pub x: Length,
    /// First pin, z.
    pub z: Length,
    /// Direction of the link over the horizontal, outward.
    pub direction: Angle,
}

impl LinkPose {
    /// A point of the link's own axes (along the link, to its upper side when it lies level) in
    /// the implement's side view.
    ///
    /// The arm's plane is seen from the machine's right-hand side, where outward (u) is −x; a link
    /// lying level outward has its own second axis pointing up.
    pub fn point(&self, along: Length, up: Length) -> (Length, Length) {
        let (sin, cos) = libm::sincos(self.direction.rad());
        let outward = along * cos - up * sin;
        (self.x - outward, self.z + along * sin + up * cos)
    }
}

/// The poses of boom, dipper and bucket.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmPose {
    /// Boom.
    pub boom: LinkPose,
    /// Dipper.
    pub dipper: LinkPose,
    /// Bucket.
    pub bucket: LinkPose,
    /// Bucket tip, (x, z) in the implement's axes.
    pub tip: (Length, Length),
}

impl ArmPose {
    /// The pose of the link that carries a shape; `None` for the item itself.
    pub const fn link(&self, carrier: Carrier) -> Option<LinkPose> {
        match carrier {
            Carrier::Item => None,
            Carrier::Boom => Some(self.boom),
            Carrier::Dipper => Some(self.dipper),
            Carrier::Bucket => Some(self.bucket),
        }
    }
}

/// Places the links of a digging arm.
///
/// Frame: the implement's axes, side view; the arm swung straight back.
///
/// # Examples
/// With every link level the tip lies the sum of the lengths behind the boom foot.
pub fn arm_pose(arm: &DiggingArm, angles: ArmAngles) -> ArmPose {
    let boom = LinkPose { x: arm.swing_x - arm.foot_u, z: arm.foot_z, direction: angles.boom };
    let (x, z) = boom.point(arm.boom.length, Length::ZERO);
    let dipper = LinkPose { x, z, direction: angles.boom + angles.dipper };
    let (x, z) = dipper.point(arm.dipper.length, Length::ZERO);
    let bucket = LinkPose { x, z, direction: angles.boom + angles.dipper + angles.bucket };
    ArmPose { boom, dipper, bucket, tip: bucket.point(arm.bucket.length, Length::ZERO) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::ArmLink;

    fn link(mm: f64) -> ArmLink {
        ArmLink {
            length: Length::from_mm(mm),
            least: Angle::from_deg(-180.0),
            greatest: Angle::from_deg(180.0),
            transport: Angle::ZERO,
            mass: None,
            centre: None,
        }
    }

    fn arm() -> DiggingArm {
        DiggingArm {
            swing_x: Length::from_mm(-100.0),
            foot_u: Length::from_mm(150.0),
            foot_z: Length::from_mm(500.0),
            boom: link(1200.0),
            dipper: link(900.0),
            bucket: link(500.0),
            swing: Angle::from_deg(80.0),
            stabilisers: None,
            lift_at_full_reach: None,
        }
    }

    fn close(a: (Length, Length), mm: (f64, f64)) {
        assert!((a.0.mm() - mm.0).abs() < 1e-9 && (a.1.mm() - mm.1).abs() < 1e-9, "{} {}", a.0.mm(), a.1.mm());
    }

    #[test]
    fn level_links_reach_straight_back() {
        let level = ArmAngles { boom: Angle::ZERO, dipper: Angle::ZERO, bucket: Angle::ZERO };
        close(arm_pose(&arm(), level).tip, (-100.0 - 150.0 - 2600.0, 500.0));
    }

    #[test]
    fn a_folded_arm_hangs_down() {
        let folded = ArmAngles { boom: Angle::from_deg(90.0), dipper: Angle::from_deg(-180.0), bucket: Angle::ZERO };
        close(arm_pose(&arm(), folded).tip, (-250.0, 500.0 + 1200.0 - 900.0 - 500.0));
    }

    #[test]
    fn the_second_axis_of_a_level_link_points_up_and_of_a_standing_one_to_the_machine() {
        let pose = LinkPose { x: Length::ZERO, z: Length::ZERO, direction: Angle::ZERO };
        close(pose.point(Length::ZERO, Length::from_mm(10.0)), (0.0, 10.0));
        let pose = LinkPose { direction: Angle::from_deg(90.0), ..pose };
        close(pose.point(Length::ZERO, Length::from_mm(10.0)), (10.0, 0.0));
    }
}
