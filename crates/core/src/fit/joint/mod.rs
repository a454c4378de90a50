//! Joints, one kind a file. A joint is judged by listing, then by lineage, then by dimensions;
//! where listing and dimensions disagree, that is said.

mod closure;
mod coupler;
mod hitch;
mod holes;
mod hooks;
mod listing;
mod mend;
mod overlay;
mod pins;
mod seat_base;
mod take_off;
mod uncertain;
mod wiring;

use super::answer::Overlay;
use super::context::Context;
use super::found::Found;
use crate::build::StackJoint;
use crate::finding::{Check, Evidence, Finding, Grade, Subject, Value, Verdict};
use crate::item::{ItemRef, Port, PortKind, Role};
use crate::order;
use crate::quantity::Source;

/// A joint under judgement.
pub(super) struct Meeting<'a> {
    pub role: Role,
    pub carrier: (ItemRef, usize),
    pub carried: (ItemRef, usize),
    pub carrier_port: &'a Port,
    pub carried_port: &'a Port,
    /// What was measured on the two ports.
    found: [Option<&'a Found>; 2],
}

impl<'a> Meeting<'a> {
    pub fn new(context: &'a Context, joint: &StackJoint) -> Self {
        let end = |(at, port): (usize, usize)| (context.stack.placed[at].item, port);
        let (carrier, carried) = (end(joint.carrier), end(joint.carried));
        Self {
            role: joint.role,
            carrier,
            carried,
            carrier_port: context.port(carrier.0, carrier.1),
            carried_port: context.port(carried.0, carried.1),
            found: [carrier, carried].map(|(item, port)| context.found(item, port)),
        }
    }

    pub const fn subject(&self) -> Subject {
        Subject::Joint(self.role, self.carrier.0, self.carried.0)
    }

    /// A finding about this joint whose values come from the two ports.
    pub fn finding(&self, code: &'static str, verdict: Verdict) -> Finding {
        let mut finding = Finding::new(code, self.subject(), verdict, Grade::Drawing);
        finding.evidence = self.dimension_evidence();
        finding
    }

    /// The item and port of one side.
    pub const fn end(&self, side: Side) -> (ItemRef, &'a Port) {
        match side {
            Side::Carrier => (self.carrier.0, self.carrier_port),
            Side::Carried => (self.carried.0, self.carried_port),
        }
    }

    /// A finding that says what is not known of this joint, with the check that would tell.
    pub fn unknown(&self, code: &'static str, end: Side, dimension: &str) -> Finding {
        let (item, port) = self.end(end);
        let mut finding = Finding::new(code, self.subject(), Verdict::CheckFirst, Grade::None)
            .with("missing", Value::Label(dimension.to_owned()))
            .check(Check::Measure { item, port: port.name.clone(), dimension: dimension.to_owned(), within: None });
        if !self.carrier_port.parts.is_empty() || !self.carried_port.parts.is_empty() {
            finding = finding.check(self.compare());
        }
        finding
    }

    /// The check that compares the part numbers on both sides.
    pub fn compare(&self) -> Check {
        Check::CompareParts {
            a: (self.carrier.0, self.carrier_port.name.clone()),
            b: (self.carried.0, self.carried_port.name.clone()),
        }
    }

    /// Evidence of values: *measured* if a tool was used on either port, else *drawing*.
    fn dimension_evidence(&self) -> Evidence {
        let mut evidence = Evidence::of(Grade::Drawing);
        for port in [self.carrier_port, self.carried_port] {
            evidence.tools.extend(sources(port).into_iter().filter_map(|source| match source {
                Source::Measured(tool) => Some(tool),
                _ => None,
            }));
        }
        evidence.tools.extend(self.found.iter().flatten().flat_map(|found| found.tools()));
        order::sort_by_key(&mut evidence.tools, |&tool| tool);
        evidence.tools.dedup();
        if !evidence.tools.is_empty() {
            evidence.grade = Grade::Measured;
        }
        evidence
    }
}

/// One side of a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    Carrier,
    Carried,
}

/// What the dimensions of a joint come to.
pub(super) struct Mating {
    pub findings: Vec<Finding>,
    pub overlay: Option<Overlay>,
}

impl From<Finding> for Mating {
    fn from(finding: Finding) -> Self {
        Self { findings: vec![finding], overlay: None }
    }
}

/// Judges one joint.
pub(super) fn judge(context: &Context, joint: &StackJoint) -> Mating {
    let meeting = Meeting::new(context, joint);
    let listing = listing::find(context, &meeting);
    let mut mating = by_dimensions(context, &meeting);
    let Some(listing) = listing else { return mating };
    // The listing decides unless the dimensions say for certain that it cannot be so.
    let contradiction = mating.findings.iter().find(|f| f.verdict == Verdict::WontMount).map(|found| {
        let mut finding = meeting.finding("listing-and-dimensions-disagree", Verdict::CheckFirst);
        for name in ["margin", "worst-case"] {
            if let Some(value) = found.figure(name) {
                finding = finding.with(name, value.clone());
            }
        }
        finding.check(meeting.compare())
    });
    // Of what the dimensions say beside a listing, only work to be done still matters.
    mating.findings.retain(|f| f.verdict == Verdict::BoltsUpWithWork);
    mating.findings.extend(contradiction);
    mating.findings.insert(0, listing);
    mating
}

fn by_dimensions(context: &Context, meeting: &Meeting) -> Mating {
    let mut mating = by_kind(context, meeting);
    if meeting.role == Role::FrontAnchor {
        mating.findings.extend(closure::judge(context, meeting));
    }
    mating
}

fn by_kind(context: &Context, meeting: &Meeting) -> Mating {
    match (&meeting.carrier_port.kind, &meeting.carried_port.kind) {
        (PortKind::BoltPattern(a), PortKind::BoltPattern(b)) => holes::judge(context, meeting, a, b),
        (PortKind::Pins(a), PortKind::Pins(b)) => pins::judge(context, meeting, a, b),
        (PortKind::HookRack(a), PortKind::HookRack(b)) => hooks::judge(meeting, a, b),
        (PortKind::ThreePoint(a), PortKind::ThreePoint(b)) => hitch::judge(meeting, a, b),
        (PortKind::PowerTakeOff(a), PortKind::PowerTakeOff(b)) => take_off::judge(meeting, a, b).into(),
        (PortKind::Coupler(a), PortKind::Coupler(b)) => coupler::judge(meeting, a, b).into(),
        (PortKind::SeatBase(a), PortKind::SeatBase(b)) => seat_base::judge(context, meeting, a, b),
        (PortKind::Electric(a), PortKind::Electric(b)) => wiring::judge(meeting, a, b).into(),
        (a, b) => meeting
            .finding("kinds-differ", Verdict::WontMount)
            .with("carrier", Value::Label(kind_name(a).to_owned()))
            .with("carried", Value::Label(kind_name(b).to_owned()))
            .into(),
    }
}

/// The kind of a port as figures name it; the words translate it.
const fn kind_name(kind: &PortKind) -> &'static str {
    match kind {
        PortKind::BoltPattern(_) => "bolt-pattern",
        PortKind::Pins(_) => "pins",
        PortKind::HookRack(_) => "hook-rack",
        PortKind::ThreePoint(_) => "three-point",
        PortKind::PowerTakeOff(_) => "power-take-off",
        PortKind::Coupler(_) => "coupler",
        PortKind::SeatBase(_) => "seat-base",
        PortKind::Electric(_) => "electric",
    }
}

/// Where the values of a port come from.
fn sources(port: &Port) -> Vec<Source> {
    let mut all = vec![port.source];
    match &port.kind {
        PortKind::Pins(pins) => {
            all.extend(pins.spread.map(|s| s.source));
            for point in &pins.points {
                all.extend([point.diameter, point.width, point.height].into_iter().flatten().map(|s| s.source));
            }
        }
        PortKind::HookRack(r) => {
            all.extend([r.diameter, r.spread, r.drop, r.latch, r.setback].into_iter().flatten().map(|s| s.source));
        }
        PortKind::ThreePoint(h) => {
            all.extend([h.lower_pin, h.upper_pin, h.span, h.mast].into_iter().flatten().map(|s| s.source));
        }
        _ => {}
    }
    all
}
