//! Joints, one kind a file. A joint is judged by listing, then by lineage, then by dimensions;
//! where listing and dimensions disagree, that is said.

mod bolt_list;
mod bolts;
mod closure;
mod coupler;
mod hitch;
mod holes;
mod hooks;
mod listing;
mod mend;
mod metal;
mod number;
pub(crate) mod overlay;
mod pins;
mod seat_base;
mod side_plates;
mod take_off;
mod turned;
mod uncertain;
mod wiring;

use crate::build::StackJoint;
use crate::finding::{Check, Declared, Evidence, Fact, Finding, Grade, Margin, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::item::{DimensionName, End, ItemRef, Port, PortKind, Role};
use crate::order;
use crate::quantity::{Length, Source};
use crate::{findings, words};
use metal::MetalUnknown;
use overlay::Overlay;

pub(crate) use bolt_list::bolts as bolts_of;
pub use bolt_list::{Bolts, BoltsInto, HoleToMake};
pub(crate) use mend::{HolesDrilled, HolesNeedDrilling, HolesNeedOpening, HolesOpened};
pub(crate) use pins::PinsNeedSleeve;

findings! {
    /// The two ports are of kinds that do not go together.
    KindsDiffer = "kinds-differ", Fit { carrier: JoinsBy, carried: JoinsBy }
    /// The guide lists the two, and what was measured on the unit says that they cannot be joined.
    MeasuredAgainstListing = "measured-against-listing", Fit { unit: ItemRef, margin: Option<Margin> }
    /// The guide lists the two, and by their dimensions they cannot be joined.
    ListingAndDimensionsDisagree = "listing-and-dimensions-disagree", Fit {
        margin: Option<Margin>, worst_case: Option<Length>,
    }
}

words! {
    /// What a port joins by: its kind, or of pins and hook racks its half.
    JoinsBy, shown as "port-kind-" {
        BoltPattern = "bolt-pattern",
        Pins = "pins",
        HookRack = "hook-rack",
        ThreePoint = "three-point",
        PowerTakeOff = "power-take-off",
        Coupler = "coupler",
        SeatBase = "seat-base",
        Electric = "electric",
        Lug = "lug",
        Clevis = "clevis",
        Bar = "bar",
        Hook = "hook",
    }
}

/// What joints can say, a list for each file.
pub(crate) const SAID: &[&[&Declared]] = &[
    DECLARED,
    bolts::DECLARED,
    closure::DECLARED,
    coupler::DECLARED,
    hitch::DECLARED,
    holes::DECLARED,
    hooks::DECLARED,
    listing::DECLARED,
    mend::DECLARED,
    metal::DECLARED,
    number::DECLARED,
    pins::DECLARED,
    side_plates::DECLARED,
    take_off::DECLARED,
    turned::DECLARED,
    wiring::DECLARED,
];

/// A joint under judgement.
pub(crate) struct Meeting<'a> {
    pub role: Role,
    pub carrier: (ItemRef, usize),
    pub carried: (ItemRef, usize),
    pub carrier_port: &'a Port,
    pub carried_port: &'a Port,
    /// Where the values of the two ports come from.
    evidence: Evidence,
}

impl<'a> Meeting<'a> {
    pub fn new(context: &'a Context, joint: &StackJoint) -> Self {
        let end = |(at, port): (usize, usize)| (context.stack.placed[at].item, port);
        let (carrier, carried) = (end(joint.carrier), end(joint.carried));
        let (carrier_port, carried_port) = (context.port(carrier.0, carrier.1), context.port(carried.0, carried.1));
        let evidence = evidence(&[carrier_port, carried_port]);
        Self { role: joint.role, carrier, carried, carrier_port, carried_port, evidence }
    }

    pub const fn subject(&self) -> Subject {
        Subject::Joint(self.role, self.carrier.0, self.carried.0)
    }

    /// A finding about this joint whose values come from the two ports.
    pub fn finding<F: Fact>(&self, fact: F, verdict: Verdict) -> Finding {
        let mut finding = Finding::of(fact, self.subject(), verdict, Grade::Drawing);
        finding.evidence = self.evidence.clone();
        finding
    }

    /// The item and port of one side.
    pub const fn end(&self, side: End) -> (ItemRef, &'a Port) {
        match side {
            End::Carrier => (self.carrier.0, self.carrier_port),
            End::Carried => (self.carried.0, self.carried_port),
        }
    }

    /// A finding that says which dimension is not known of this joint, with the check that would tell.
    pub fn unknown<F: Fact>(&self, end: End, dimension: DimensionName, fact: impl FnOnce(String) -> F) -> Finding {
        let (item, port) = self.end(end);
        let mut finding = Finding::of(fact(dimension.to_string()), self.subject(), Verdict::CheckFirst, Grade::None)
            .check(Check::Measure { item, port: port.name.clone(), dimension: dimension.to_string(), within: None });
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
}

/// What the dimensions of a joint come to.
pub(crate) struct Mating {
    pub findings: Vec<Finding>,
    pub overlay: Option<Overlay>,
}

impl From<Finding> for Mating {
    fn from(finding: Finding) -> Self {
        Self { findings: vec![finding], overlay: None }
    }
}

/// Judges one joint.
pub(crate) fn judge(context: &Context, joint: &StackJoint) -> Mating {
    let meeting = Meeting::new(context, joint);
    let listing = listing::find(context, &meeting);
    let (mating, is_listed) = (by_dimensions(context, &meeting), listing.is_some());
    let stands = with_listing(context, &meeting, listing, mating);
    number::told(context, &meeting, is_listed, stands)
}

fn with_listing(context: &Context, meeting: &Meeting, listing: Option<Finding>, mut mating: Mating) -> Mating {
    let Some(listing) = listing else { return mating };
    // What the row states of a part that is not there says nothing against the one that is.
    if number::differs(context, meeting) {
        mating.findings.retain(|f| f.evidence.grade == Grade::Measured);
    }
    // The listing decides unless the dimensions say for certain that it cannot be so.
    let contradiction = mating.findings.iter().find(|f| f.verdict == Verdict::WontMount).map(|found| {
        let (margin, worst_case) = (missed_by(found), length(found, "worst-case"));
        let measured = [meeting.carried, meeting.carrier].into_iter().find(|&port| context.is_measured(port));
        if let Some((unit, _)) = measured {
            return meeting.finding(MeasuredAgainstListing { unit, margin }, Verdict::WontMount);
        }
        let fact = ListingAndDimensionsDisagree { margin, worst_case };
        meeting.finding(fact, Verdict::CheckFirst).check(meeting.compare())
    });
    if contradiction.as_ref().is_some_and(|told| told.verdict == Verdict::WontMount) {
        // What was measured on the unit outranks any list about it, and says itself by how much.
        mating.findings.retain(|f| f.verdict == Verdict::WontMount);
        mating.findings.extend(contradiction);
        return mating;
    }
    // Of what the dimensions say beside a listing, only work to be done still matters, and whether the metal bears it.
    mating.findings.retain(|f| f.verdict == Verdict::BoltsUpWithWork || MetalUnknown::read(f).is_some());
    mating.findings.extend(contradiction);
    mating.findings.insert(0, listing);
    mating
}

fn length(found: &Finding, name: &str) -> Option<Length> {
    match found.figure(name) {
        Some(&Value::Length(length)) => Some(length),
        _ => None,
    }
}

/// What is left of the limit that a finding says is not kept; below zero as it is none.
fn missed_by(found: &Finding) -> Option<Length> {
    let past = |name| length(found, name).zip(length(found, "limit")).map(|(is, limit)| limit - is);
    length(found, "margin")
        .or_else(|| Some(-length(found, "over").or_else(|| length(found, "short"))?))
        .or_else(|| past("off-by").or_else(|| past("gap")))
}

fn by_dimensions(context: &Context, meeting: &Meeting) -> Mating {
    let mut mating = by_kind(context, meeting);
    mating.findings.extend(turned::judge(context, meeting));
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
        (a, b) => {
            let fact = KindsDiffer { carrier: joins_by(a), carried: joins_by(b) };
            meeting.finding(fact, Verdict::WontMount).into()
        }
    }
}

const fn joins_by(kind: &PortKind) -> JoinsBy {
    match kind {
        PortKind::BoltPattern(_) => JoinsBy::BoltPattern,
        PortKind::Pins(_) => JoinsBy::Pins,
        PortKind::HookRack(_) => JoinsBy::HookRack,
        PortKind::ThreePoint(_) => JoinsBy::ThreePoint,
        PortKind::PowerTakeOff(_) => JoinsBy::PowerTakeOff,
        PortKind::Coupler(_) => JoinsBy::Coupler,
        PortKind::SeatBase(_) => JoinsBy::SeatBase,
        PortKind::Electric(_) => JoinsBy::Electric,
    }
}

/// Evidence of values: *measured* if a tool was used on a length of either port, else *drawing*.
fn evidence(ports: &[&Port]) -> Evidence {
    let mut evidence = Evidence::of(Grade::Drawing);
    evidence.tools.extend(ports.iter().flat_map(|port| port.sources()).filter_map(|source| match source {
        Source::Measured(tool) => Some(tool),
        _ => None,
    }));
    order::sort(&mut evidence.tools, Ord::cmp);
    evidence.tools.dedup();
    if !evidence.tools.is_empty() {
        evidence.grade = Grade::Measured;
    }
    evidence
}
