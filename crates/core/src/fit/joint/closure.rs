//! The closure: a frame placed by its axle anchor has to meet the machine's front anchor too.

use super::uncertain::{Decided, Weighed};
use super::{Meeting, Side};
use crate::finding::{Finding, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::mating::closure::{Allowances, Anchors, closure};
use crate::item::{BoltPattern, Port, PortKind, Role};
use crate::quantity::Length;

/// The distance left over at the front anchor; `None` if the frame has no axle anchor in this
/// build, since then nothing has to close.
pub(super) fn judge(context: &Context, front: &Meeting) -> Option<Finding> {
    let axle = context
        .stack
        .joints
        .iter()
        .find(|joint| {
            joint.role == Role::AxleAnchor
                && context.stack.placed[joint.carrier.0].item == front.carrier.0
                && context.stack.placed[joint.carried.0].item == front.carried.0
        })
        .map(|joint| Meeting::new(context, joint))?;
    let place = |port: &Port| port.pose.map(|pose| [pose.at.x.m(), pose.at.z.m()]);
    let machine = place(axle.carrier_port).zip(place(front.carrier_port));
    let frame = place(axle.carried_port).zip(place(front.carried_port));
    let Some((machine_axle, machine_front)) = machine else {
        return Some(front.unknown("closure-unknown", Side::Carrier, "pose"));
    };
    let Some((frame_axle, frame_front)) = frame else {
        return Some(front.unknown("closure-unknown", Side::Carried, "pose"));
    };
    let (Some(at_axle), Some(at_front)) = (play(&axle), play(front)) else {
        // What is missing is said by the joint itself.
        return None;
    };
    let allowances = Allowances { axle: at_axle.round.m(), front: at_front.round.m(), front_slot: at_front.slot.m() };
    let closed = closure(
        &Anchors { axle: frame_axle, front: frame_front },
        &Anchors { axle: machine_axle, front: machine_front },
        allowances,
    )?;
    let margin = Length::from_m(closed.turning.map_or(closed.margin_level, |turning| turning.margin));
    Some(say(front, &axle, margin, Length::from_m(closed.residual_length), at_front.slot, closed.residual[0]))
}

fn say(front: &Meeting, axle: &Meeting, margin: Length, off_by: Length, slot: Length, longer: f64) -> Finding {
    let [a, b] = front.place_half_ranges();
    let [c, d] = axle.place_half_ranges();
    let Some(weighed) = Weighed::new(margin, &[a, b, c, d]) else {
        return front.unknown("closure-unknown", Side::Carried, "pose");
    };
    let base = |code, verdict| {
        front
            .finding(code, verdict)
            .with("margin", Value::Length(margin))
            .with("worst-case", Value::Length(weighed.worst_case()))
            .with("off-by", Value::Length(off_by))
    };
    match weighed.decided {
        Decided::Fits => base("closure-meets", Verdict::BoltsUp).with("slot", Value::Length(slot)),
        Decided::Misfits => {
            base("closure-misses", Verdict::WontMount).with("longer", Value::Length(Length::from_m(longer)))
        }
        Decided::Open => {
            let finding = base("closure-open", Verdict::CheckFirst);
            weighed.open(finding, front.carried.0, &front.carried_port.name, "at-x").check(front.compare())
        }
    }
}

struct Play {
    /// How far the centres may lie apart in any direction.
    round: Length,
    /// Travel of a slot along the machine's x, on top.
    slot: Length,
}

/// The play of an anchor's bolts or pins; `None` if it is not known.
fn play(meeting: &Meeting) -> Option<Play> {
    match (&meeting.carrier_port.kind, &meeting.carried_port.kind) {
        (PortKind::BoltPattern(a), PortKind::BoltPattern(b)) => {
            let bolt = a.bolt.or(b.bolt)?;
            let round = least_play(a, bolt)? + least_play(b, bolt)?;
            Some(Play { round, slot: least_slot(a).max(least_slot(b)) })
        }
        (PortKind::Pins(a), PortKind::Pins(b)) => {
            let running =
                a.points.iter().zip(&b.points).map(|(a, b)| Some((a.diameter?.value - b.diameter?.value).abs()));
            let least = running.reduce(|a, b| Some(a?.min(b?)))??;
            Some(Play { round: least / 2.0, slot: Length::ZERO })
        }
        _ => None,
    }
}

fn least_play(pattern: &BoltPattern, bolt: Length) -> Option<Length> {
    let plays = pattern.holes.iter().map(|hole| match hole.kind {
        crate::item::HoleKind::Plain => (hole.diameter - bolt) / 2.0,
        crate::item::HoleKind::Tapped => Length::ZERO,
    });
    plays.reduce(Length::min)
}

/// Travel that every hole of the pattern has along the plate's u, which is the machine's x on a
/// side plate.
fn least_slot(pattern: &BoltPattern) -> Length {
    let along = |angle: f64| libm::sin(angle).abs() < 1e-6;
    let travels = pattern
        .holes
        .iter()
        .map(|hole| hole.slot.filter(|slot| along(slot.direction.rad())).map_or(Length::ZERO, |slot| slot.travel));
    travels.reduce(Length::min).unwrap_or(Length::ZERO)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::{Hole, HoleKind, Slot};
    use crate::quantity::Angle;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    /// Diameter, kind, and travel and direction of a slot.
    type Cut = (f64, HoleKind, Option<(f64, f64)>);

    fn pattern(holes: &[Cut]) -> BoltPattern {
        let hole = |&(diameter, kind, slot): &Cut| Hole {
            u: Length::ZERO,
            v: Length::ZERO,
            diameter: mm(diameter),
            kind,
            slot: slot.map(|(travel, degrees)| Slot { travel: mm(travel), direction: Angle::from_deg(degrees) }),
        };
        BoltPattern { holes: holes.iter().map(hole).collect(), ..BoltPattern::default() }
    }

    #[test]
    fn the_tightest_hole_gives_the_play_and_a_thread_none() {
        use HoleKind::{Plain, Tapped};
        let play = |holes: &[Cut]| least_play(&pattern(holes), mm(12.0));
        assert_eq!(play(&[(16.0, Plain, None), (14.0, Plain, None)]), Some((mm(14.0) - mm(12.0)) / 2.0));
        assert_eq!(play(&[(16.0, Plain, None), (12.0, Tapped, None)]), Some(Length::ZERO));
        assert_eq!(play(&[]), None);
    }

    #[test]
    fn a_slot_counts_along_the_machine_and_by_its_shortest_hole() {
        let slots = |slots: &[(f64, f64)]| {
            let holes: Vec<_> = slots.iter().map(|&slot| (13.5, HoleKind::Plain, Some(slot))).collect();
            least_slot(&pattern(&holes))
        };
        assert_eq!(slots(&[(20.0, 0.0), (10.0, 180.0)]), mm(10.0));
        assert_eq!(slots(&[(20.0, 0.0), (10.0, 90.0)]), Length::ZERO);
        assert_eq!(slots(&[(20.0, -90.0)]), Length::ZERO);
        assert_eq!(slots(&[]), Length::ZERO);
        assert_eq!(least_slot(&pattern(&[(13.5, HoleKind::Plain, None)])), Length::ZERO);
    }
}
