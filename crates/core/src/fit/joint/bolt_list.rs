//! The bolts of a joint as a workshop lays them out: which, how many, how long, what goes under their heads, and the holes to make.

use super::holes::pair_of;
use super::mend::{HolesDrilled, HolesNeedDrilling, HolesNeedOpening, HolesOpened};
use super::{Meeting, bolts, metal, side_plates};
use crate::build::StackJoint;
use crate::finding::{Fact, Finding, Verdict};
use crate::fit::context::Context;
use crate::fit::desk::plate_pair::{PlatePair, thread_of};
use crate::fit::mating::bolt_pattern::Plate;
use crate::fit::mating::bolted_joint::{InHole, in_hole};
use crate::fit::mating::hardware::bolt_length;
use crate::fit::mating::thread::{Thread, threads_between};
use crate::item::{BoltPattern, End, HoleKind, ItemRef, Role};
use crate::quantity::{Length, Torque};

/// The bolts of a joint that are alike. What is not known is for the manual to say.
#[derive(Debug, Clone, PartialEq)]
pub struct Bolts {
    /// What the joint is for.
    pub role: Role,
    /// The item that carries.
    pub carrier: ItemRef,
    /// The item that is carried.
    pub carried: ItemRef,
    /// How many, on each side of the machine where the joint is a pair of side plates.
    pub number: Option<usize>,
    /// Whether there are as many on the other side of the machine.
    pub on_both_sides: bool,
    /// Their thread as the catalogue names it.
    pub thread: Option<String>,
    /// Their nominal diameter.
    pub size: Option<Length>,
    /// What they screw into.
    pub into: BoltsInto,
    /// Thickness of the plates that they clamp, washers and tapped plate apart.
    pub grip: Option<Length>,
    /// The shortest length under the head, of those that bolts are made in, that does.
    pub length: Option<Length>,
    /// Items whose holes are so wide that a plate washer has to bear on them.
    pub plate_washers: Vec<ItemRef>,
    /// Property class, as the catalogue states it.
    pub class: Option<String>,
    /// Tightening torque, as the catalogue states it.
    pub torque: Option<Torque>,
    /// Holes that have to be made before they go in.
    pub holes: Vec<HoleToMake>,
}

/// What bolts screw into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BoltsInto {
    /// Nuts.
    Nuts,
    /// Tapped holes of this item.
    Tapped(ItemRef),
    /// Not known.
    Unknown,
}

impl Bolts {
    /// Plain washers to each bolt: under the head, and under the nut if there is one; a plate washer takes the place of one.
    pub const fn washers(&self) -> Option<usize> {
        match self.into {
            BoltsInto::Nuts => Some(2 - self.plate_washers.len()),
            BoltsInto::Tapped(_) => Some(1 - self.plate_washers.len()),
            BoltsInto::Unknown => None,
        }
    }
}

/// A hole that is drilled or opened up.
#[derive(Debug, Clone, PartialEq)]
pub struct HoleToMake {
    /// Into which item.
    pub item: ItemRef,
    /// Into which of its ports.
    pub port: String,
    /// Whether it is one that is there, opened up.
    pub is_opened: bool,
    /// How wide it then is.
    pub diameter: Length,
    /// Its centre in the port's plane: to the right when looking at the face.
    pub u: Length,
    /// Along the port's up.
    pub v: Length,
    /// From its centre to the plate's edge at least; `None` = not known.
    pub to_edge: Option<Length>,
    /// What that has to be at least.
    pub least_to_edge: Length,
}

/// The bolts of a joint of the stack; none if it is no bolted one or its plates certainly do not go together.
pub(crate) fn bolts(context: &Context, joint: &StackJoint, findings: &[&Finding]) -> Vec<Bolts> {
    let meeting = Meeting::new(context, joint);
    let patterns = (meeting.carrier_port.kind.pattern(), meeting.carried_port.kind.pattern());
    let (Some(carrier), Some(carried)) = patterns else { return Vec::new() };
    if findings.iter().any(|finding| finding.verdict == Verdict::WontMount) {
        return Vec::new();
    }
    let both = [carrier, carried];
    let pair = pair_of(context, &meeting, carrier, carried);
    match pair.as_deref().and_then(|pair| laid_out(&meeting, both, pair)) {
        Some(mut all) => {
            if let (Some(first), Some(pair)) = (all.first_mut(), pair.as_deref()) {
                first.holes = holes_to_make(context, &meeting, pair, findings);
            }
            all
        }
        None => vec![unknown(&meeting, both)],
    }
}

/// What the ports state alone, where the lay of the plates is not known.
fn unknown(meeting: &Meeting, both: [&BoltPattern; 2]) -> Bolts {
    let size = bolts::nominal_of(meeting, both);
    Bolts {
        role: meeting.role,
        carrier: meeting.carrier.0,
        carried: meeting.carried.0,
        number: both.iter().find_map(|pattern| pattern.required).map(|number| number as usize),
        on_both_sides: side_plates::is_pair(meeting, both),
        thread: thread(both),
        size,
        into: BoltsInto::Unknown,
        grip: None,
        length: None,
        plate_washers: Vec::new(),
        class: agreed(both.map(|pattern| pattern.class.as_ref())).cloned(),
        torque: agreed(both.map(|pattern| pattern.torque.as_ref())).copied(),
        holes: Vec::new(),
    }
}

/// What both sides say of the bolts, or the one that says it; `None` where they say different things.
fn agreed<T: PartialEq>(said: [Option<&T>; 2]) -> Option<&T> {
    match said {
        [Some(one), Some(other)] if one != other => None,
        [one, other] => one.or(other),
    }
}

/// The thread's name; `None` where the sides name two.
fn thread(both: [&BoltPattern; 2]) -> Option<String> {
    let [one, other] = both.map(thread_of);
    let differ = one.zip(other).is_some_and(|(one, other)| !one.is_same_as(&other));
    let named = both.iter().find(|pattern| thread_of(pattern).is_some()).filter(|_| !differ)?;
    named.thread.clone()
}

/// The bolts by what they screw into; `None` where the lay is not known.
fn laid_out(meeting: &Meeting, both: [&BoltPattern; 2], pair: &PlatePair) -> Option<Vec<Bolts>> {
    let lay = pair.lay()?;
    let drilled = if is_drilled(pair) { pair.drilling.as_ref().map_or(0, |drilling| drilling.holes.len()) } else { 0 };
    let kinds = lay.pairs.iter().map(|paired| {
        let kind = |pattern: &BoltPattern, at: usize| pattern.holes.get(at).map_or(HoleKind::Plain, |hole| hole.kind);
        [kind(both[0], paired.a), kind(both[1], paired.b)]
    });
    let mut groups: Vec<(Option<End>, usize)> = Vec::new();
    let mut add = |into, count| match groups.iter_mut().find(|(known, _)| *known == into) {
        Some((_, number)) => *number += count,
        None => groups.push((into, count)),
    };
    for kind in kinds {
        add(
            match kind {
                [HoleKind::Plain, HoleKind::Plain] => None,
                [HoleKind::Tapped, _] => Some(End::Carrier),
                [_, HoleKind::Tapped] => Some(End::Carried),
            },
            1,
        );
    }
    // Holes that are drilled are clearance holes in both plates.
    if drilled > 0 {
        add(None, drilled);
    }
    let common = unknown(meeting, both);
    let lines = groups.into_iter().map(|(tapped, number)| {
        let (into, grip, engaged) = match tapped {
            None => (BoltsInto::Nuts, both[0].plate.zip(both[1].plate).map(|(one, other)| one + other), Some(None)),
            Some(end) => {
                let (own, other) = if end == End::Carrier { (both[0], both[1]) } else { (both[1], both[0]) };
                let asked = own.metal.zip(common.size).map(|(metal, size)| Some(bolts::engaged_in(metal, size)));
                (BoltsInto::Tapped(meeting.end(end).0), other.plate, asked)
            }
        };
        let thread = common.thread.as_deref().and_then(Thread::read).or_else(|| coarse(common.size?));
        let length = thread.zip(grip).zip(engaged).and_then(|((thread, grip), engaged)| {
            bolt_length(&thread, grip.m(), engaged.map(Length::m)).map(Length::from_m)
        });
        let plate_washers = [(End::Carrier, both[0]), (End::Carried, both[1])]
            .into_iter()
            .filter(|(end, pattern)| Some(*end) != tapped && common.size.is_some_and(|size| is_wide(pattern, size)))
            .map(|(end, _)| meeting.end(end).0)
            .collect();
        Bolts { number: Some(number), into, grip, length, plate_washers, ..common.clone() }
    });
    Some(lines.collect())
}

/// Whether the plates go together only once holes are drilled.
fn is_drilled(pair: &PlatePair) -> bool {
    pair.outcome.best().is_none_or(|best| !best.fits()) && pair.opening.is_none()
}

/// The thread of a bolt that is called by its diameter: the coarse one.
fn coarse(size: Length) -> Option<Thread> {
    let near = Length::from_mm(0.01);
    threads_between((size - near).m(), (size + near).m()).into_iter().next()
}

fn is_wide(pattern: &BoltPattern, bolt: Length) -> bool {
    let plain = pattern.holes.iter().filter(|hole| hole.kind == HoleKind::Plain);
    plain.map(|hole| in_hole(hole.diameter.value.m(), bolt.m())).any(|hole| hole == InHole::NeedsPlateWasher)
}

/// The holes that the findings of the joint say are made.
fn holes_to_make(context: &Context, meeting: &Meeting, pair: &PlatePair, findings: &[&Finding]) -> Vec<HoleToMake> {
    fn told<F: Fact>(findings: &[&Finding]) -> Vec<F> {
        findings.iter().filter_map(|finding| F::read(finding)).collect()
    }
    let opened_up: Vec<ItemRef> = told::<HolesOpened>(findings).into_iter().map(|fact| fact.side).collect();
    let opens = !told::<HolesNeedOpening>(findings).is_empty();
    let drills = !told::<HolesNeedDrilling>(findings).is_empty() || !told::<HolesDrilled>(findings).is_empty();
    let mut made = Vec::new();
    for (into, end) in [(Plate::A, End::Carrier), (Plate::B, End::Carried)] {
        let (item, port) = meeting.end(end);
        let (index, other) = match end {
            End::Carrier => (meeting.carrier.1, meeting.carried_port),
            End::Carried => (meeting.carried.1, meeting.carrier_port),
        };
        let Some(before) = context.port_before(item, index).kind.pattern() else { continue };
        let mut holes = Vec::new();
        if opened_up.contains(&item) {
            holes.extend(port.kind.pattern().map(metal::decided).unwrap_or_default());
        }
        if let Some(opening) = pair.opening.as_ref().filter(|_| opens) {
            holes.extend(metal::opened(before, into, &opening.holes));
        }
        if let Some((drilling, through)) = pair.drilling.as_ref().filter(|_| drills).zip(other.kind.pattern()) {
            let of_side: Vec<_> = drilling.holes.iter().copied().filter(|hole| hole.into == into).collect();
            holes.extend(metal::drilled(end, through, &of_side));
        }
        made.extend(holes.iter().map(|hole| HoleToMake {
            item,
            port: port.name.clone(),
            is_opened: hole.is_opened(),
            diameter: hole.diameter,
            u: hole.u,
            v: hole.v,
            to_edge: metal::to_edge(before, hole),
            least_to_edge: metal::least_to_edge(hole),
        }));
    }
    made
}
