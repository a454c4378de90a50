//! The digging arm at work: depth, reach, loading height, swing.

use super::{Ask, Missing, MissingOf};
use crate::build::{ArmAngles, Build, Placement};
use crate::dimension::{self, ArmPlan, Digging, DiggingArm, Loading, SwingReach, Swivel, digging, loading, swing_arc};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{self, ArmLink, Axle, ImplementId, ItemRef, ShapeRole, View};
use crate::plane::Point;
use crate::quantity::{Angle, Length};

/// Length of the flat bottom that the flat depth is told for: 2 ft, as SAE J49 has it (from memory: the standard's text was not
/// read).
pub const FLAT_BOTTOM: Length = Length::from_foot(2.0);

/// What the digging arm of the build reaches, the machine level on its tyres.
#[derive(Debug, Clone, PartialEq)]
pub struct ArmAtWork {
    /// The arm as the figures take it, in its own plane: u outward from the swing centre, z from the ground; plain SI.
    pub arm: DiggingArm,
    /// A pose to show it in: the tip on the ground, well out.
    pub pose: Option<ArmAngles>,
    /// x of the swing centre in the machine's axes.
    pub swing_x: Length,
    /// Depth, height, reach and the edge of the reach, plain SI.
    pub reach: Digging,
    /// Reach at ground level from the rear axle.
    pub reach_from_axle: Option<Length>,
    /// Greatest height over which the hanging bucket empties, and the reach there; plain SI.
    pub loading: Option<Loading>,
    /// Swing to either side that the arm allows.
    pub swing: Angle,
    /// How far it swings to the left and to the right before its plan meets something.
    pub free_swing: Option<[(Angle, Option<SwingStop>); 2]>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

/// Share of the reach at ground level that the arm is shown at. By eye.
const SHOWN: f64 = 0.8;

/// What stops the arm's swing in plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SwingStop {
    /// A rear tyre.
    Tyre,
    /// A stabiliser's foot.
    Stabiliser,
}

/// What the build's digging arm reaches. `None` without one that stands anywhere.
pub fn arm_at_work(desk: &Desk, build: &Build) -> Option<ArmAtWork> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<ArmAtWork> {
    let placed = PlacedArm::of(context)?;
    let arm = placed.plane();
    let reach = digging(&arm, Some(FLAT_BOTTOM.m())).ok()?;
    let mut ask = Ask::default();
    let free_swing = free_swing(context, &placed, &reach, &mut ask);
    Some(ArmAtWork {
        reach_from_axle: reach.reach_at_ground.map(|reach| Length::from_m(reach) - placed.swing_x),
        pose: reach.reach_at_ground.and_then(|far| Some(placed.posed(reaching(&arm, far * SHOWN, 0.0)?))),
        loading: loading(&arm).ok().flatten(),
        swing_x: placed.swing_x,
        swing: placed.arm.swing,
        arm,
        reach,
        free_swing,
        missing: ask.0,
    })
}

/// A digging arm where it stands.
pub(super) struct PlacedArm {
    pub id: ImplementId,
    pub arm: item::DiggingArm,
    pub placement: Placement,
    /// x of the swing centre in the machine's axes.
    pub swing_x: Length,
}

impl PlacedArm {
    pub fn of(context: &Context) -> Option<Self> {
        let (id, implement) = context.implement()?;
        context.machine()?;
        let arm = implement.arm?;
        let placement = context.placement(ItemRef::Implement(id))?;
        let (swing_x, _) = placement.side(arm.swing_x, arm.foot_z);
        Some(Self { id, arm, placement, swing_x })
    }

    /// The pose of the implement's own links for an attitude over the ground.
    pub fn posed(&self, attitude: dimension::Attitude) -> ArmAngles {
        ArmAngles {
            boom: Angle::from_rad(attitude.boom) + self.placement.pitch,
            dipper: Angle::from_rad(attitude.dipper),
            bucket: Angle::from_rad(attitude.bucket),
        }
    }

    /// The arm in its own plane over the ground. A pitch of the implement turns the boom's limits with it.
    pub fn plane(&self) -> DiggingArm {
        let (foot_x, foot_z) = self.placement.side(self.arm.swing_x - self.arm.foot_u, self.arm.foot_z);
        let swivel = |link: ArmLink, turn: Angle| Swivel {
            least: (link.least + turn).rad(),
            greatest: (link.greatest + turn).rad(),
        };
        DiggingArm {
            foot: Point::new((self.swing_x - foot_x).m(), foot_z.m()),
            boom: self.arm.boom.length.m(),
            dipper: self.arm.dipper.length.m(),
            bucket: self.arm.bucket.length.m(),
            // Nose up lowers what reaches out behind.
            boom_elevation: swivel(self.arm.boom, -self.placement.pitch),
            dipper_relative: swivel(self.arm.dipper, Angle::ZERO),
            bucket_relative: swivel(self.arm.bucket, Angle::ZERO),
        }
    }
}

type FreeSwing = [(Angle, Option<SwingStop>); 2];

fn free_swing(context: &Context, placed: &PlacedArm, reach: &Digging, ask: &mut Ask) -> Option<FreeSwing> {
    let half_width =
        ask.need(MissingOf::Item(ItemRef::Implement(placed.id)), Unstated::Outline, half_width(context, placed.id));
    let (machine_id, machine) = context.machine()?;
    let tyres = ask.need(MissingOf::Item(ItemRef::Machine(machine_id)), Unstated::Track, tyres(&machine.rear));
    let (half_width, tyres, length) = (half_width?, tyres?, reach.reach_at_ground?);
    let mut stops: Vec<(SwingStop, Vec<Point>)> = tyres.into_iter().map(|tyre| (SwingStop::Tyre, tyre)).collect();
    if let Some(pads) = placed.arm.stabilisers {
        let x = placed.placement.side(pads.x, Length::ZERO).0.m();
        let half = pads.spread.m() / 2.0;
        stops.extend([half, -half].map(|y| (SwingStop::Stabiliser, vec![Point::new(x, y)])));
    }
    let plan = ArmPlan { centre: Point::new(placed.swing_x.m(), 0.0), length, half_width };
    let lines: Vec<&[Point]> = stops.iter().map(|(_, line)| line.as_slice()).collect();
    let free = swing_arc(&plan, &lines, placed.arm.swing.rad()).ok()?;
    let told = |side: SwingReach| (Angle::from_rad(side.angle), side.stop.map(|index| stops[index].0));
    Some(free.map(told))
}

/// Half the width of boom, dipper and bucket, seen from above or from behind.
fn half_width(context: &Context, id: ImplementId) -> Option<f64> {
    let is_link = |role| matches!(role, ShapeRole::Boom | ShapeRole::Dipper | ShapeRole::Bucket);
    let shapes = context.desk.outline(ItemRef::Implement(id)).iter();
    let seen = shapes.filter(|shape| shape.view != View::Side && is_link(shape.role));
    let across = seen.flat_map(|shape| {
        let above = shape.view == View::Plan;
        shape.runs.iter().flatten().map(move |&(a, b)| if above { b.abs() } else { a.abs() })
    });
    across.reduce(f64::max)
}

/// The rear tyres in plan, each a closed line.
fn tyres(rear: &Axle) -> Option<[Vec<Point>; 2]> {
    let (track, width) = (rear.track?.m(), rear.tyre_width?.m());
    let radius = rear.overall_radius.or(rear.static_loaded_radius)?.m();
    Some([1.0, -1.0].map(|side| {
        let (inner, outer) = (side * (track - width) / 2.0, side * (track + width) / 2.0);
        let corners = [(-radius, inner), (radius, inner), (radius, outer), (-radius, outer), (-radius, inner)];
        corners.map(|(x, y)| Point::new(x, y)).to_vec()
    }))
}

/// The attitude that puts the tip on a place, as the drawing's pose; `None` where none does.
///
/// `u` is outward from the swing centre, `z` from the ground.
pub(super) fn reaching(arm: &DiggingArm, u: f64, z: f64) -> Option<dimension::Attitude> {
    dimension::attitude(arm, Point::new(u, z)).ok().flatten()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Length;

    #[test]
    fn a_rear_tyre_seen_from_above_is_a_closed_rectangle_about_the_axle() {
        let [track, tyre_width, overall_radius] = [1000.0, 200.0, 400.0].map(|mm| Some(Length::from_mm(mm)));
        let rear = Axle { track, tyre_width, overall_radius, ..Axle::default() };
        let around = |line: &[Point]| line.iter().map(|point| (point.x, point.y)).collect::<Vec<_>>();
        let [left, right] = tyres(&rear).unwrap();
        assert_eq!(around(&left), [(-0.4, 0.4), (0.4, 0.4), (0.4, 0.6), (-0.4, 0.6), (-0.4, 0.4)]);
        assert_eq!(around(&right), [(-0.4, -0.4), (0.4, -0.4), (0.4, -0.6), (-0.4, -0.6), (-0.4, -0.4)]);
    }
}
