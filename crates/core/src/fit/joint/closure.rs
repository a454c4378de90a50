//! The closure: a frame placed by its axle anchor has to meet the machine's front anchor too.
//!
//! The bolts or pins at the axle leave the frame a little freedom. Within it the front anchor has to meet its mounting: along the
//! machine, in height, sideways, and looking at it.

use super::Meeting;
use super::holes::pair_of;
use super::uncertain::{Decided, Weighed};
use crate::finding::{Dimension, Finding, Margin, PartSize, Probability, Verdict};
use crate::fit::context::Context;
use crate::fit::desk::joined::{frame, hangs, place};
use crate::fit::mating::bolt_pattern::{Hole, Lay, Motion};
use crate::fit::mating::closure_in_space::{Allowed, Limit, Met, front_met, met_as_placed, misses_by_more_than};
use crate::fit::mating::facing::{PortFrame, joined};
use crate::fit::mating::freedom::{Anchor, Held};
use crate::fit::mating::pins::{self, Pinned};
use crate::fit::mating::side_plates::{DRAWN_TOGETHER, MOST_SHIMS};
use crate::item::{BoltPattern, End, Pins, Place, Port, PortKind, Pose, Role};
use crate::quantity::{Angle, Length};
use crate::{findings, words};

findings! {
    /// The frame meets the front anchor too; what a slot there gives.
    ClosureMeets = "closure-meets", Fit { margin: Margin, worst_case: Length, off_by: Length, slot: Option<PartSize> }
    /// It does not; by how much it is longer or shorter between its anchors.
    ClosureMisses = "closure-misses", Fit {
        margin: Margin, worst_case: Length, off_by: Length, longer: Length, longer_way: LongerWay,
    }
    /// It does not; by how much its front comes too high or too low.
    ClosureHeightOff = "closure-height-off", Fit {
        margin: Margin, worst_case: Length, off_by: Length, higher: Length, higher_way: HigherWay,
    }
    /// The front plates lie too far apart sideways, or cross.
    ClosureAside = "closure-aside", Fit { off_by: Length, limit: Length, aside_way: AsideWay }
    /// The front plates do not look at each other, or not the same way up.
    ClosureFacesApart = "closure-faces-apart", Fit {}
    /// Too close to call.
    ClosureOpen = "closure-open", Fit {
        margin: Margin, worst_case: Length, off_by: Length, probability: Probability, settles: Option<Length>,
    }
    /// A port's place is not stated.
    ClosureUnknown = "closure-unknown", Fit { missing: Dimension }
}

words! {
    /// Which way a length differs.
    LongerWay { Longer = "longer", Shorter = "shorter" }
}

words! {
    /// Which way a height differs.
    HigherWay { Higher = "higher", Lower = "lower" }
}

words! {
    /// Which way two plates are off sideways.
    AsideWay { Apart = "apart", Crossing = "crossing" }
}

/// How far front plates may cross as they are drawn: the frame springs. Common practice, no source.
const CROSSING_LIMIT: Length = Length::from_m(DRAWN_TOGETHER);

/// How far apart front plates may lie on one side: shims make up for it. Common practice, no source.
const SHIM_LIMIT: Length = Length::from_m(0.5 * MOST_SHIMS);

/// How far two faces may be from looking straight at each other. Common practice, no source: above it washers lie on edge.
const FACING_LIMIT: Angle = Angle::from_deg(3.0);

/// Below this a difference is none but for rounding. Own choice: a nanometre.
const ROUNDING: Length = Length::from_m(1e-9);

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
    let face = |port: &Port| port.pose.and_then(|pose| frame(&pose));
    let Some((machine_axle, machine_front)) = face(axle.carrier_port).zip(face(front.carrier_port)) else {
        return Some(unknown(front, End::Carrier));
    };
    let Some((frame_axle, frame_front)) = face(axle.carried_port).zip(face(front.carried_port)) else {
        return Some(unknown(front, End::Carried));
    };
    // What is missing of a joint is said by the joint itself, and so is that it does not go together.
    let (at_axle, at_front) = (Bolts::of(context, &axle)?, Bolts::of(context, front)?);
    let placing = joined(&machine_axle, &frame_axle, &at_axle.rests, 0.0);
    let [axle_anchor, front_anchor] = [
        at_axle.anchor(machine_axle, frame_axle.moved(&placing)),
        at_front.anchor(machine_front, frame_front.moved(&placing)),
    ];
    let allowed = Allowed {
        gap: [-CROSSING_LIMIT.m(), SHIM_LIMIT.m()],
        facing: FACING_LIMIT.rad(),
        axle_side_play: at_axle.side_play,
    };
    // Where no figure is asked for, a frame that misses however it moves is told of as it is placed.
    let is_missed = |off: Length| misses_by_more_than(off.m(), &axle_anchor, &front_anchor, &allowed);
    let is_far = context.verdict_alone
        && Weighed::new(Length::ZERO, &half_ranges(front, &axle)).is_some_and(|all| is_missed(all.worst_case()));
    let met =
        if is_far { met_as_placed(&front_anchor, &allowed) } else { front_met(&axle_anchor, &front_anchor, &allowed)? };
    let off = front_anchor.carried.at().map(Length::from_m);
    let wanted = machine_front.at().map(Length::from_m);
    Some(say(front, &axle, &met, [off[0] - wanted[0], off[2] - wanted[2]], at_front.slot()))
}

/// How far the four ports may be from where they are stated.
fn half_ranges(front: &Meeting, axle: &Meeting) -> [Length; 4] {
    let ([a, b], [c, d]) = (front.place_half_ranges(), axle.place_half_ranges());
    [a, b, c, d]
}

fn unknown(front: &Meeting, side: End) -> Finding {
    front.unknown(side, Pose::NAME, |missing| ClosureUnknown { missing })
}

fn say(front: &Meeting, axle: &Meeting, met: &Met, [longer, higher]: [Length; 2], slot: Length) -> Finding {
    if met.limit == Limit::Facing {
        return front.finding(ClosureFacesApart {}, Verdict::WontMount);
    }
    let gap = Length::from_m(met.gap);
    if gap < Length::ZERO {
        let crossing = met.gaps[0] < -CROSSING_LIMIT.m();
        let (aside_way, limit) =
            if crossing { (AsideWay::Crossing, CROSSING_LIMIT) } else { (AsideWay::Apart, SHIM_LIMIT) };
        return front.finding(ClosureAside { off_by: limit - gap, limit, aside_way }, Verdict::WontMount);
    }
    let margin = Length::from_m(met.bolts);
    let off_by = Length::from_m(libm::hypot(longer.m(), higher.m()));
    let Some(weighed) = Weighed::new(margin, &half_ranges(front, axle)) else {
        return unknown(front, End::Carried);
    };
    let worst_case = weighed.worst_case();
    match weighed.decided {
        Decided::Fits => {
            let slot = (slot > Length::ZERO).then_some(slot);
            front.finding(ClosureMeets { margin, worst_case, off_by, slot }, Verdict::BoltsUp)
        }
        Decided::Misfits if met.limit == Limit::Height => {
            let higher_way = if higher < -ROUNDING { HigherWay::Lower } else { HigherWay::Higher };
            let fact = ClosureHeightOff { margin, worst_case, off_by, higher: higher.abs(), higher_way };
            front.finding(fact, Verdict::WontMount)
        }
        Decided::Misfits => {
            let longer_way = if longer < -ROUNDING { LongerWay::Shorter } else { LongerWay::Longer };
            let fact = ClosureMisses { margin, worst_case, off_by, longer: longer.abs(), longer_way };
            front.finding(fact, Verdict::WontMount)
        }
        Decided::Open => {
            let (probability, settles) = (weighed.probability(), weighed.settles());
            let (item, port) = front.end(End::Carried);
            front
                .finding(ClosureOpen { margin, worst_case, off_by, probability, settles }, Verdict::CheckFirst)
                .check(weighed.check(item, &port.name, Place::AT_X.name()))
                .check(front.compare())
        }
    }
}

/// The bolts or pins of an anchor.
struct Bolts {
    /// Where the lay of the patterns lets the carried plate rest.
    rests: Motion,
    /// Along the pins, either way, metres.
    side_play: f64,
    held: Vec<Held>,
    /// Pins lie along u, bolts square to the face.
    pinned: bool,
}

impl Bolts {
    /// `None` if they are not known, or do not go in.
    fn of(context: &Context, meeting: &Meeting) -> Option<Self> {
        match (&meeting.carrier_port.kind, &meeting.carried_port.kind) {
            (PortKind::BoltPattern(a), PortKind::BoltPattern(b)) => {
                let pair = pair_of(context, meeting, a, b)?;
                let mended = pair.opening.as_ref().map(|opening| &opening.lay);
                let mended = mended.or(pair.drilling.as_ref().map(|drilling| &drilling.lay));
                let lay = pair.outcome.best().filter(|lay| lay.fits()).or(mended).or(pair.outcome.best())?;
                let rests = pair.rests;
                Some(Self { rests, side_play: 0.0, held: bolted([a, b], pair.bolt.m(), lay), pinned: false })
            }
            (PortKind::Pins(a), PortKind::Pins(b)) => pinned(a, b),
            _ => None,
        }
    }

    fn anchor(&self, carrier: PortFrame, carried: PortFrame) -> Anchor {
        let along = |face: PortFrame| if self.pinned { face.along_pins() } else { face };
        Anchor { carrier: along(carrier), carried: along(carried), held: self.held.clone() }
    }

    /// The travel that a slot gives every bolt.
    fn slot(&self) -> Length {
        let travel = |half: [f64; 2]| 2.0 * libm::hypot(half[0], half[1]);
        let of = self.held.iter().map(|held| travel(held.carrier_slot).max(travel(held.carried_slot)));
        of.reduce(f64::min).map_or(Length::ZERO, Length::from_m)
    }
}

fn bolted([a, b]: [&BoltPattern; 2], bolt: f64, lay: &Lay) -> Vec<Held> {
    let holes = |pattern: &BoltPattern| -> Vec<Hole> {
        pattern.holes.iter().map(crate::fit::desk::plate_pair::mating_hole).collect()
    };
    let nowhere = PortFrame::new([0.0; 3], [0.0, 0.0, 1.0], [0.0, 1.0, 0.0]).expect("square axes");
    Anchor::bolted(nowhere, nowhere, [&holes(a), &holes(b)], bolt, lay).held
}

/// Pins in their bores, those that meet by where they are. The height of a point that states none is that of its port, as for the
/// joint itself.
fn pinned(carrier: &Pins, carried: &Pins) -> Option<Bolts> {
    let places = |pins: &Pins| -> Vec<_> { pins.points.iter().map(place).collect() };
    let (a, b) = (places(carrier), places(carried));
    let Some(Pinned::Paired(joint)) = pins::pinned(&a, &b) else { return None };
    let mut side_play = f64::INFINITY;
    let mut held = Vec::new();
    for pair in &joint.pairs {
        let heights = [a[pair.lug].height, b[pair.clevis].height];
        held.push(Held::round([0.0, heights[0]], [0.0, heights[1]], 0.5 * pair.running?.abs()));
        side_play = side_play.min(0.5 * pair.side_play.unwrap_or_default().abs());
    }
    let side_play = if side_play.is_finite() { side_play } else { 0.0 };
    Some(Bolts { rests: hangs(carrier, carried), side_play, held, pinned: true })
}
