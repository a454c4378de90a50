//! Metal round holes that are drilled or opened up: how far it is to the plate's edge and to the next hole.

use super::Meeting;
use crate::finding::{Check, Finding, Name, PartSize, Verdict};
use crate::fit::context::Context;
use crate::fit::mating::bolt_pattern::{self as pattern, Drilled, Opened};
use crate::fit::mating::bolted_joint::{LEAST_EDGE, LEAST_SPACING};
use crate::fit::mating::tolerance::{Contribution, Standing, assess};
use crate::item::{BoltPattern, End, HoleKind, ItemRef};
use crate::quantity::Length;
use crate::{findings, words};

findings! {
    /// A hole that is made would leave too little metal.
    MetalTooLittle = "metal-too-little", Fit {
        hole: PartSize, metal: PartSize, least: PartSize, towards: Towards, side: ItemRef, port: Name,
    }
    /// How much metal is left round a hole that is made is not known.
    MetalUnknown = "metal-unknown", Fit { hole: PartSize, least: PartSize, side: ItemRef, port: Name }
}

words! {
    /// What a hole comes near to.
    Towards { Edge = "edge", Hole = "hole" }
}

/// A hole that is made: where, and how wide it then is.
pub(super) struct Made {
    pub u: Length,
    pub v: Length,
    pub diameter: Length,
    /// The hole of the pattern that it was before.
    was: Option<usize>,
}

impl Made {
    /// Whether it was there before, and is only opened up.
    pub const fn is_opened(&self) -> bool {
        self.was.is_some()
    }
}

/// The holes of one side that are opened up as the lay asks.
pub(super) fn opened(pattern: &BoltPattern, into: pattern::Plate, opened: &[Opened]) -> Vec<Made> {
    let of_side = opened.iter().filter(|opened| opened.side == into);
    let made = of_side.filter_map(|opened| {
        let hole = pattern.holes.get(opened.hole)?;
        let diameter = hole.diameter.value + Length::from_m(opened.by);
        Some(Made { u: hole.u.value, v: hole.v.value, diameter, was: Some(opened.hole) })
    });
    made.collect()
}

/// Every clearance hole of a side that is opened up as decided, as it is after that.
pub(super) fn decided(pattern: &BoltPattern) -> Vec<Made> {
    let plain = pattern.holes.iter().enumerate().filter(|(_, hole)| hole.kind == HoleKind::Plain);
    plain
        .map(|(at, hole)| Made { u: hole.u.value, v: hole.v.value, diameter: hole.diameter.value, was: Some(at) })
        .collect()
}

/// Holes drilled into one side, marked through those of the other. The carried plate is laid as it is seen through its back.
pub(super) fn drilled(side: End, through: &BoltPattern, holes: &[Drilled]) -> Vec<Made> {
    let way = if side == End::Carried { -1.0 } else { 1.0 };
    let made = holes.iter().filter_map(|hole| {
        let diameter = through.holes.get(hole.through)?.diameter.value;
        Some(Made { u: Length::from_m(way * hole.u), v: Length::from_m(hole.v), diameter, was: None })
    });
    made.collect()
}

/// What is found of the metal round the holes that are made in one side.
pub(super) fn round(context: &Context, meeting: &Meeting, side: End, made: &[Made]) -> Option<Finding> {
    let (item, port) = meeting.end(side);
    let index = if side == End::Carrier { meeting.carrier.1 } else { meeting.carried.1 };
    // Where the plate ends is as it was before holes were opened.
    let pattern = context.port_before(item, index).kind.pattern()?;
    let name = || port.name.clone();
    let scarce = |hole: &Made, metal, least, towards| {
        let fact = MetalTooLittle { hole: hole.diameter, metal, least, towards, side: item, port: name() };
        Some(meeting.finding(fact, Verdict::WontMount))
    };
    let mut unknown: Option<(Length, Length)> = None;
    for hole in made {
        let least = hole.diameter * LEAST_SPACING;
        if let Some(next) = to_next(pattern, hole).filter(|next| *next < least) {
            return scarce(hole, next, least, Towards::Hole);
        }
        let least = least_to_edge(hole);
        let standing = pattern.edge.zip(to_edge(pattern, hole)).and_then(|(edge, left)| {
            let half_range = port.half_range(&edge).m();
            let assessed = assess((left - least).m(), &[Contribution { half_range, sensitivity: 1.0 }])?;
            Some((assessed.standing, left))
        });
        match standing {
            Some((Standing::CertainFit, _)) => {}
            Some((Standing::CertainMisfit, left)) => return scarce(hole, left.max(Length::ZERO), least, Towards::Edge),
            _ => unknown = unknown.filter(|(_, most)| *most >= least).or(Some((hole.diameter, least))),
        }
    }
    let (hole, least) = unknown?;
    let fact = MetalUnknown { hole, least, side: item, port: name() };
    let dimension = BoltPattern::EDGE.name().to_string();
    let check = Check::Measure { item, port: name(), dimension, within: None };
    Some(meeting.finding(fact, Verdict::CheckFirst).check(check))
}

/// From the centre of a hole to the edge of its plate at least, as far as that is stated.
pub(super) fn to_edge(pattern: &BoltPattern, made: &Made) -> Option<Length> {
    pattern.edge.map(|edge| edge.value - beyond(pattern, made))
}

/// What that has to be at least.
pub(super) fn least_to_edge(made: &Made) -> Length {
    made.diameter * LEAST_EDGE
}

/// From a hole to the nearest other one.
fn to_next(pattern: &BoltPattern, made: &Made) -> Option<Length> {
    let others = pattern.holes.iter().enumerate().filter(|(at, _)| Some(*at) != made.was);
    let apart = |u: Length, v: Length| Length::from_m(libm::hypot((u - made.u).m(), (v - made.v).m()));
    others.map(|(_, hole)| apart(hole.u.value, hole.v.value)).reduce(Length::min)
}

/// How far a hole lies outside those that the plate has.
fn beyond(pattern: &BoltPattern, made: &Made) -> Length {
    let outside = |at: Length, all: &mut dyn Iterator<Item = Length>| {
        let range = all.fold(None, |range: Option<(Length, Length)>, one| {
            Some(range.map_or((one, one), |(least, most)| (least.min(one), most.max(one))))
        });
        range.map_or(Length::ZERO, |(least, most)| (least - at).max(at - most).max(Length::ZERO))
    };
    let u = outside(made.u, &mut pattern.holes.iter().map(|hole| hole.u.value));
    let v = outside(made.v, &mut pattern.holes.iter().map(|hole| hole.v.value));
    u.max(v)
}
