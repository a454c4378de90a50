//! Remedies: changes to a build that lift its verdict, each a whole re-judged build.

use crate::build::{Build, Carrying, Change, Seating};
use crate::finding::{Finding, Subject, Value, Verdict};
use crate::fit::mating::bolt_pattern::GREATEST_OPENING;
use crate::fit::{Answer, Desk, judge, verdict};
use crate::item::{AdapterId, End, FrameId, ItemRef, Role, SeatId};
use crate::order;
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
    /// Its verdict.
    pub verdict: Verdict,
    /// Findings that asked for something and are gone with the change.
    pub settles: Vec<Finding>,
    /// Findings that are as bad as its verdict; none where it bolts up.
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

/// Adapters put between two ports at most.
pub const MOST_ADAPTERS: usize = 3;

/// Builds judged at most, so that a catalogue of thousands of adapters cannot hold the page up.
/// Common practice, no source.
const MOST_TRIED: usize = 4_000;

/// Changes that give a better verdict than the build has, best first: by verdict, then number of
/// steps, then what has to be bought, hours and added length.
///
/// Drilling, a sleeve or something put on make no verdict better, since they are work either way; deciding on them is offered
/// all the same where the findings ask for it and nothing keeps the set from being mounted, with the workshop time it takes.
///
/// Tried: what the findings themselves name (taking off, putting on, drilling, opening up, ballast, longer ramps, the front seat
/// forward), every other seat, every other frame, and up to three adapters, each alone and
/// adapters together. A remedy that holds a step it could do without is left out.
pub fn remedies(desk: &Desk, build: &Build) -> Vec<Remedy> {
    let now = judge(desk, build);
    if now.verdict == Verdict::BoltsUp {
        return Vec::new();
    }
    let mut search = Search { desk, build, now: &now, undecided: undecided(&now), tried: 0, found: Vec::new() };
    let named = named_changes(&now.findings);
    for change in &named {
        search.attempt(vec![RemedyStep::Change(change.clone())]);
    }
    if named.len() > 1 {
        search.attempt(named.into_iter().map(RemedyStep::Change).collect());
    }
    if build.seating != Seating::Open {
        for index in 0..desk.catalogue().seats.len() {
            search.attempt(vec![RemedyStep::Seat(SeatId::at(index))]);
        }
    }
    if build.carrying != Carrying::Open {
        search.attempt(vec![RemedyStep::Carry(Carrying::Hitch)]);
        for index in 0..desk.catalogue().frames.len() {
            search.attempt(vec![RemedyStep::Carry(Carrying::Frame(FrameId::at(index)))]);
        }
    }
    search.adapters(&useful_adapters(desk, build), &mut Vec::new());
    let mut found: Vec<Remedy> =
        search.found.iter().filter(|remedy| !has_a_step_too_many(remedy, &search.found)).cloned().collect();
    order::sort(&mut found, by_worth);
    found
}

/// Whether fewer of its steps do as well.
fn has_a_step_too_many(remedy: &Remedy, all: &[Remedy]) -> bool {
    all.iter().any(|other| {
        other.verdict <= remedy.verdict
            && other.steps.len() < remedy.steps.len()
            && remedy.settles.iter().all(|settled| other.settles.iter().any(|it| is_same(it, settled)))
            && other.steps.iter().all(|step| remedy.steps.contains(step))
    })
}

struct Search<'a> {
    desk: &'a Desk,
    build: &'a Build,
    now: &'a Answer,
    /// What the build as it is leaves undecided.
    undecided: usize,
    tried: usize,
    found: Vec<Remedy>,
}

impl Search<'_> {
    fn adapters(&mut self, useful: &[AdapterId], chosen: &mut Vec<AdapterId>) {
        if chosen.len() == MOST_ADAPTERS {
            return;
        }
        for (index, &id) in useful.iter().enumerate() {
            chosen.push(id);
            self.attempt(chosen.iter().copied().map(RemedyStep::Adapter).collect());
            self.adapters(&useful[index + 1..], chosen);
            chosen.pop();
        }
    }

    /// Judges the build with the steps taken and keeps it if its verdict is better.
    fn attempt(&mut self, steps: Vec<RemedyStep>) {
        if self.tried == MOST_TRIED {
            return;
        }
        self.tried += 1;
        let build = with_steps(self.build, &steps);
        if build == *self.build {
            return;
        }
        // A decision on holes, ramps or a sleeve may make no verdict better, yet it lifts a finding: what was needed is planned.
        let may_decide = self.now.verdict < Verdict::WontMount
            && steps.iter().all(|step| matches!(step, RemedyStep::Change(_) | RemedyStep::Adapter(_)))
            && self.undecided > 0;
        // Trailer and site only add to what the four steps find: most attempts end here.
        let steps_alone = verdict(self.desk, &build);
        if steps_alone > self.now.verdict || steps_alone == self.now.verdict && !may_decide {
            return;
        }
        let answer = judge(self.desk, &build);
        let decides = may_decide && answer.verdict == self.now.verdict && undecided(&answer) < self.undecided;
        if answer.verdict < self.now.verdict || decides {
            let asks = |finding: &&Finding| finding.verdict > Verdict::BoltsUp;
            let is_gone = |finding: &&Finding| !answer.findings.iter().any(|after| is_same(after, finding));
            let is_left = |finding: &&Finding| finding.verdict == answer.verdict;
            self.found.push(Remedy {
                verdict: answer.verdict,
                settles: self.now.findings.iter().filter(asks).filter(is_gone).cloned().collect(),
                leaves: answer.findings.iter().filter(asks).filter(is_left).cloned().collect(),
                buy_more: difference(answer.parts.total, self.now.parts.total),
                work_more: answer.parts.work - self.now.parts.work,
                length_more: answer.footprint.length.zip(self.now.footprint.length).map(|(a, b)| a - b),
                departure_more: departure(&answer).zip(departure(self.now)).map(|(a, b)| a - b),
                steps,
                build,
            });
        }
    }
}

fn departure(answer: &Answer) -> Option<Angle> {
    answer.footprint.departure.map(|end| end.angle)
}

/// Whether two findings say the same of the same.
fn is_same(a: &Finding, b: &Finding) -> bool {
    a.code == b.code && a.subject == b.subject
}

fn difference(after: Option<Money>, before: Option<Money>) -> Option<Money> {
    Some(Money::from_hundredths(after?.hundredths().saturating_sub(before?.hundredths())))
}

fn with_steps(build: &Build, steps: &[RemedyStep]) -> Build {
    let mut build = build.clone();
    for step in steps {
        match step {
            RemedyStep::Adapter(id) => build.adapters.push(*id),
            RemedyStep::Seat(id) => build.seating = Seating::This(*id),
            RemedyStep::Carry(carrying) => build.carrying = *carrying,
            RemedyStep::Change(change) => {
                if !build.changes.contains(change) {
                    build.changes.push(change.clone());
                }
            }
        }
    }
    build
}

/// How many findings ask for work, or for things, that nobody has decided on yet.
fn undecided(answer: &Answer) -> usize {
    let asks = |finding: &&Finding| {
        finding.verdict > Verdict::BoltsUp
            && (finding.code == "pins-need-sleeve" || !changes_named_by(finding).is_empty())
    };
    answer.findings.iter().filter(asks).count()
}

/// Changes that the findings themselves name.
fn named_changes(findings: &[Finding]) -> Vec<Change> {
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
    let label = || match finding.figure("what") {
        Some(Value::Label(what)) => Some(what.clone()),
        _ => None,
    };
    let change = match finding.code {
        "must-come-off" => label().map(Change::TakeOff),
        "must-go-on" => label().map(Change::PutOn),
        "holes-need-drilling" => drill(finding),
        "front-seat-in-the-way" => Some(Change::FrontSeatForward),
        "bar-in-the-way" => Some(Change::FoldRollOverBar),
        "gate-low" => finding.figure("folded").map(|_| Change::FoldRollOverBar),
        "ramp-drags" | "ramp-tight" => ramps(finding),
        "front-axle-light" | "front-axle-lifts" => ballast(finding),
        _ => None,
    };
    change.into_iter().chain(openings(finding)).collect()
}

fn drill(finding: &Finding) -> Option<Change> {
    let (Some(Value::Item(item)), Some(Value::Label(port))) = (finding.figure("side"), finding.figure("port")) else {
        return None;
    };
    Some(Change::Drill { item: *item, port: port.clone() })
}

/// The holes a finding asks to be opened up, on either side of its joint, in whole tenths of a millimetre as reamers and drills
/// are sold (common practice, no source).
fn openings(finding: &Finding) -> Vec<Change> {
    let Subject::Joint(_, carrier, carried) = finding.subject else { return Vec::new() };
    [(carrier, "open-carrier", "carrier-port"), (carried, "open-carried", "carried-port")]
        .into_iter()
        .filter_map(|(item, by, port)| match (finding.figure(by), finding.figure(port)) {
            (Some(Value::Length(by)), Some(Value::Label(port))) => {
                // A figure that is a whole tenth but for rounding stays that tenth.
                let tenths = (by.mm() * 10.0 - 1e-6).ceil();
                let by = Length::from_m(Length::from_mm(tenths / 10.0).m().min(GREATEST_OPENING));
                Some(Change::OpenUp { item, port: port.clone(), by })
            }
            _ => None,
        })
        .collect()
}

/// The ballast a finding asks for, rounded up to whole weights of 5 kg as they are sold (common
/// practice, no source).
fn ballast(finding: &Finding) -> Option<Change> {
    let (Some(Value::Mass(mass)), Some(Value::Length(x))) = (finding.figure("ballast"), finding.figure("ballast-at"))
    else {
        return None;
    };
    let whole = (mass.kg() / 5.0).ceil() * 5.0;
    (whole.is_finite() && whole > 0.0).then_some(Change::Ballast { mass: Mass::from_kg(whole), x: *x })
}

/// Ramps that would clear, rounded up to whole 100 mm as they are made (common practice, no source).
fn ramps(finding: &Finding) -> Option<Change> {
    let Some(Value::Length(shortest)) = finding.figure("shortest") else { return None };
    let whole = (shortest.mm() / 100.0).ceil() * 100.0;
    whole.is_finite().then_some(Change::Ramps { length: Length::from_mm(whole) })
}

/// Adapters whose ports can answer something of this build, or that sleeve a bore.
fn useful_adapters(desk: &Desk, build: &Build) -> Vec<AdapterId> {
    let catalogue = desk.catalogue();
    let offers = |role: Role, end: End| {
        build.items().into_iter().any(|item| catalogue.body(item).ports.iter().any(|p| p.role == role && p.end == end))
    };
    (0..catalogue.adapters.len())
        .map(AdapterId::at)
        .filter(|&id| !build.adapters.contains(&id))
        .filter(|&id| {
            let ports = &catalogue.body(ItemRef::Adapter(id)).ports;
            let hangs = ports.iter().any(|p| p.end == End::Carried && offers(p.role, End::Carrier));
            let takes = ports.iter().any(|p| p.end == End::Carrier && offers(p.role, End::Carried));
            catalogue.adapter(id).sleeve.is_some() || hangs || takes
        })
        .collect()
}

fn by_worth(a: &Remedy, b: &Remedy) -> std::cmp::Ordering {
    let money = |remedy: &Remedy| remedy.buy_more.map_or(i64::MAX, Money::hundredths);
    let length = |remedy: &Remedy| remedy.length_more.map_or(f64::INFINITY, Length::m);
    (a.verdict.cmp(&b.verdict))
        .then_with(|| a.steps.len().cmp(&b.steps.len()))
        .then_with(|| money(a).cmp(&money(b)))
        .then_with(|| a.work_more.total_cmp(&b.work_more))
        .then_with(|| length(a).total_cmp(&length(b)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::{Grade, Verdict};
    use crate::item::{FrameId, ItemRef, MachineId, Role};

    #[test]
    fn holes_are_opened_up_by_the_next_whole_tenth_of_a_millimetre() {
        let (machine, frame) = (ItemRef::Machine(MachineId::at(0)), ItemRef::Frame(FrameId::at(0)));
        for (wanted, tenth) in [(0.43, 0.5), (0.4, 0.4), (0.401, 0.5), (0.04, 0.1), (0.98, 1.0), (1.0, 1.0)] {
            let subject = Subject::Joint(Role::AxleAnchor, machine, frame);
            let finding = Finding::new("holes-need-opening", subject, Verdict::BoltsUpWithWork, Grade::Drawing)
                .with("open-carried", Value::Length(Length::from_mm(wanted)))
                .with("carried-port", Value::Label("axle plate".to_owned()));
            let [Change::OpenUp { item, port, by }] = &openings(&finding)[..] else { panic!("one plate is opened up") };
            assert_eq!((*item, port.as_str()), (frame, "axle plate"));
            assert!((by.mm() - tenth).abs() < 1e-9, "{wanted}: {}", by.mm());
        }
    }
}
