//! Remedies: changes to a build that lift its verdict, each a whole re-judged build.

use super::checks::checks;
use super::combine::combine;
use crate::build::{Build, Carrying, Change};
use crate::finding::{Fact, Finding, Subject, Verdict};
use crate::fit::EquipmentAnswers;
use crate::fit::joint::{HolesNeedDrilling, HolesNeedOpening, PinsNeedSleeve};
use crate::fit::mating::bolt_pattern::GREATEST_OPENING;
use crate::fit::rule::{
    BarInTheWay, DriverSeatMoves, EquipmentInTheWay, FrontAxleLifts, FrontAxleLight, FrontAxleNearLeast, GateLow,
    MustComeOff, MustGoOn, RampDrags, RampTight, RearSeatMoves, SeatsClash, Use,
};
use crate::fit::{Answer, Desk, judge};
use crate::item::{AdapterId, End, ItemRef, Role, SeatId, SeatState};
use crate::quantity::{Angle, Length, Mass, Money, Work};

/// One step of a remedy.
#[derive(Debug, Clone, PartialEq)]
pub enum RemedyStep {
    /// Put this adapter in.
    Adapter(AdapterId),
    /// Take another seat arrangement.
    Seat(SeatId),
    /// Take another frame, or the bare hitch.
    Carry(Carrying),
    /// Do this to the machine.
    Change(Change),
}

/// A remedy.
#[derive(Debug, Clone, PartialEq)]
pub struct Remedy {
    /// What is changed.
    pub steps: Vec<RemedyStep>,
    /// The build with the change.
    pub build: Build,
    /// The worse of fit and work of that build.
    pub verdict: Verdict,
    /// Findings that asked for something and are gone with the change.
    pub settles: Vec<Finding>,
    /// Findings that are as bad as the worst of that build, of any question; none where all is well.
    pub leaves: Vec<Finding>,
    /// What has to be bought more than before; negative = less; `None` = a price is missing.
    pub buy_more: Option<Money>,
    /// Workshop time more than before.
    pub work_more: Work,
    /// Length more than before; `None` = not known.
    pub length_more: Option<Length>,
    /// Departure angle more than before; `None` = not known, or nothing limits it.
    pub departure_more: Option<Angle>,
}

/// What a search for remedies comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Remedies {
    /// The remedies, best first.
    pub found: Vec<Remedy>,
    /// Why there is none; `None` where there are some.
    pub none: Option<NoRemedy>,
}

/// Why there is no remedy.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NoRemedy {
    /// It bolts up as it is.
    NotNeeded,
    /// Some of the four steps are not chosen yet: those choices decide first.
    NotChosenYet,
    /// What is open has to be measured, looked at or asked; no change to the build settles it.
    ChecksDecide,
    /// The catalogue is so large that not everything was tried.
    NotAllTried,
    /// No adapter, seat, frame or work of the catalogue helps, nor up to [`MOST_STEPS`](super::MOST_STEPS) of them together.
    NothingHelps,
}

/// Changes that give a better verdict than the build has, best first: by verdict, then by what the new parts cost, hours, added
/// length and number of steps.
///
/// Drilling, a sleeve or something put on make no verdict better, since they are work either way; deciding on them is offered
/// all the same where the findings ask for it and nothing keeps the set from being mounted, with the workshop time it takes.
///
/// Tried: what the findings name (taking off, putting on, drilling, opening up, ballast, longer ramps, the front seat forward,
/// the bar folded), every other seat, every other frame or the hitch, and adapters; up to three of them together, of whatever
/// kind. A remedy that holds a step it could do without is left out.
pub fn remedies(desk: &Desk, build: &Build) -> Remedies {
    let now = judge(desk, build);
    let (found, all_tried) =
        if now.rank().1 == Verdict::BoltsUp { (Vec::new(), true) } else { combine(desk, build, &now) };
    let none = found.is_empty().then(|| why_none(desk, build, &now, all_tried));
    Remedies { found, none }
}

fn why_none(desk: &Desk, build: &Build, now: &Answer, all_tried: bool) -> NoRemedy {
    let worst = now.rank().1;
    if worst == Verdict::BoltsUp {
        NoRemedy::NotNeeded
    } else if !build.is_complete() {
        NoRemedy::NotChosenYet
    } else if worst == Verdict::CheckFirst && !checks(desk, build, now).is_empty() {
        NoRemedy::ChecksDecide
    } else if all_tried {
        NoRemedy::NothingHelps
    } else {
        NoRemedy::NotAllTried
    }
}

/// How many findings ask for work, or for things, that nobody has decided on yet.
pub(super) fn undecided(answer: &Answer) -> usize {
    let asks = |finding: &&Finding| {
        finding.verdict > Verdict::BoltsUp
            && (PinsNeedSleeve::read(finding).is_some() || !changes_named_by(finding).is_empty())
    };
    answer.findings.iter().filter(asks).count()
}

/// Changes that the findings themselves name.
pub(super) fn named_changes(findings: &[Finding]) -> Vec<Change> {
    let mut changes: Vec<Change> = Vec::new();
    for change in findings.iter().flat_map(changes_named_by) {
        if !changes.contains(&change) {
            changes.push(change);
        }
    }
    changes
}

/// Changes that one finding names.
fn changes_named_by(finding: &Finding) -> Vec<Change> {
    let equipment = |what| if let ItemRef::Equipment(id) = what { Some(id) } else { None };
    let comes_off = MustComeOff::read(finding).map(|fact| fact.what);
    let comes_off = comes_off.or_else(|| EquipmentInTheWay::read(finding).map(|fact| fact.what));
    let goes_on = MustGoOn::read(finding).map(|fact| fact.what);
    let goes_on = goes_on.or_else(|| EquipmentAnswers::read(finding).map(|fact| fact.what));
    let change = comes_off
        .and_then(equipment)
        .map(Change::TakeOff)
        .or_else(|| goes_on.and_then(equipment).map(Change::PutOn))
        .or_else(|| HolesNeedDrilling::read(finding).map(|fact| Change::Drill { item: fact.side, port: fact.port }))
        .or_else(|| by_hand(DriverSeatMoves::read(finding)?.state).map(Change::DriverSeat))
        .or_else(|| by_hand(RearSeatMoves::read(finding)?.state).map(Change::RearSeat))
        .or_else(|| BarInTheWay::read(finding).map(|_| Change::FoldRollOverBar))
        .or_else(|| GateLow::read(finding)?.folded.map(|_| Change::FoldRollOverBar))
        .or_else(|| RampDrags::read(finding)?.shortest.and_then(ramps))
        .or_else(|| RampTight::read(finding)?.shortest.and_then(ramps))
        .or_else(|| FrontAxleLight::read(finding).and_then(|fact| ballast(fact.ballast, fact.ballast_at)))
        .or_else(|| FrontAxleNearLeast::read(finding).and_then(|fact| ballast(fact.ballast, fact.ballast_at)))
        .or_else(|| FrontAxleLifts::read(finding).and_then(|fact| ballast(fact.ballast, fact.ballast_at)));
    change.into_iter().chain(openings(finding)).chain(ways_out(finding)).collect()
}

/// Where two seats clash, every other way that the one may stand which was to make room.
fn ways_out(finding: &Finding) -> Vec<Change> {
    let Some(clash) = SeatsClash::read(finding) else { return Vec::new() };
    let (of, now): (fn(SeatState) -> Change, SeatState) = match clash.used {
        Use::Working => (Change::DriverSeat, clash.driver),
        Use::Driving => (Change::RearSeat, clash.behind),
    };
    [SeatState::Slid, SeatState::Folded, SeatState::Off].into_iter().filter(|&way| way != now).map(of).collect()
}

/// The state of a seat that is brought there by hand. One that comes off is work whether that is decided or not.
fn by_hand(state: SeatState) -> Option<SeatState> {
    (state != SeatState::Off).then_some(state)
}

/// The holes a finding asks to be opened up, on either side of its joint, in whole tenths of a millimetre as reamers and drills
/// are sold (common practice, no source).
fn openings(finding: &Finding) -> Vec<Change> {
    let (Subject::Joint(_, carrier, carried), Some(fact)) = (finding.subject, HolesNeedOpening::read(finding)) else {
        return Vec::new();
    };
    let open_up = |(item, by, port): (ItemRef, Option<Length>, String)| {
        // A figure that is a whole tenth but for rounding stays that tenth.
        let tenths = (by?.mm() * 10.0 - 1e-6).ceil();
        let by = Length::from_m(Length::from_mm(tenths / 10.0).m().min(GREATEST_OPENING));
        Some(Change::OpenUp { item, port, by })
    };
    let plates = [(carrier, fact.open_carrier, fact.carrier_port), (carried, fact.open_carried, fact.carried_port)];
    plates.into_iter().filter_map(open_up).collect()
}

/// Ballast, rounded up to whole weights of 5 kg as they are sold (common practice, no source).
fn ballast(mass: Mass, x: Length) -> Option<Change> {
    let whole = (mass.kg() / 5.0).ceil() * 5.0;
    (whole.is_finite() && whole > 0.0).then_some(Change::Ballast { mass: Mass::from_kg(whole), x })
}

/// Ramps that would clear, rounded up to whole 100 mm as they are made (common practice, no source).
fn ramps(shortest: Length) -> Option<Change> {
    let whole = (shortest.mm() / 100.0).ceil() * 100.0;
    whole.is_finite().then_some(Change::Ramps { length: Length::from_mm(whole) })
}

/// Adapters whose ports can answer something of this build, or that sleeve a bore.
pub(super) fn useful_adapters(desk: &Desk, build: &Build) -> Vec<AdapterId> {
    let catalogue = desk.standing(&build.side).catalogue();
    let offers = |role: Role, end: End| {
        build.items().into_iter().any(|item| catalogue.body(item).ports.iter().any(|p| p.role == role && p.end == end))
    };
    (0..catalogue.adapters.len())
        .map(AdapterId::at)
        .filter(|&id| !build.side.adapters.contains(&id))
        .filter(|&id| {
            let ports = &catalogue.body(ItemRef::Adapter(id)).ports;
            let hangs = ports.iter().any(|p| p.end == End::Carried && offers(p.role, End::Carrier));
            let takes = ports.iter().any(|p| p.end == End::Carrier && offers(p.role, End::Carried));
            catalogue.adapter(id).sleeve.is_some() || hangs || takes
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::{Grade, Verdict};
    use crate::item::{FrameId, MachineId};

    #[test]
    fn holes_are_opened_up_by_the_next_whole_tenth_of_a_millimetre() {
        let (machine, frame) = (ItemRef::Machine(MachineId::at(0)), ItemRef::Frame(FrameId::at(0)));
        for (wanted, tenth) in [(0.43, 0.5), (0.4, 0.4), (0.401, 0.5), (0.04, 0.1), (0.98, 1.0), (1.0, 1.0)] {
            let subject = Subject::Joint(Role::AxleAnchor, machine, frame);
            let by = Length::from_mm(wanted);
            let fact = HolesNeedOpening {
                bolts: 4,
                open_by: by,
                margin: Length::ZERO,
                open_carrier: None,
                open_carried: Some(by),
                carrier_port: "hood".to_owned(),
                carried_port: "axle plate".to_owned(),
                work: Work::ZERO,
            };
            let finding = Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Drawing);
            let [Change::OpenUp { item, port, by }] = &openings(&finding)[..] else { panic!("one plate is opened up") };
            assert_eq!((*item, port.as_str()), (frame, "axle plate"));
            assert!((by.mm() - tenth).abs() < 1e-9, "{wanted}: {}", by.mm());
        }
    }
}
