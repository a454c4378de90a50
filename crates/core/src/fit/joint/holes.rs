//! Bolt patterns: the carried plate laid on the carrier's, bolts through both.

use super::mend::{mend, opened_up};
use super::overlay::overlay;
use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting, Side};
use crate::finding::{Check, Finding, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::lay::{Lay, Outcome, lay, pattern_of};
use crate::fit::mating::bolt_pattern::{MOST_HOLES, Registration};
use crate::item::{BoltPattern, Hole};
use crate::quantity::Length;

/// The holes of both plates against each other, and whether as many bolts go in as have to.
pub(super) fn judge(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    let mut mating = lined_up(context, meeting, carrier, carried);
    let holes = [carrier, carried].map(|pattern| pattern.holes.len());
    let is_stated = carrier.required.or(carried.required).is_some();
    let goes_on = mating.findings.iter().all(|finding| finding.verdict < Verdict::CheckFirst);
    if goes_on && !is_stated && holes[0] != holes[1] {
        mating.findings.push(
            meeting
                .finding("bolts-unknown", Verdict::CheckFirst)
                .with("bolts", count(holes[0].min(holes[1])))
                .with("holes", count(holes[0].max(holes[1])))
                .check(Check::Ask { a: meeting.carrier.0, b: meeting.carried.0 }),
        );
    }
    mating
}

/// The holes of both plates against each other, with those opened up that are decided to be.
fn lined_up(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    for (side, holes) in [(Side::Carrier, carrier), (Side::Carried, carried)] {
        if holes.holes.is_empty() {
            return meeting.unknown("holes-unknown", side, "holes").into();
        }
    }
    let opened = [meeting.carrier, meeting.carried].iter().any(|&(item, port)| context.opened_by(item, port).is_some());
    if !opened {
        return as_they_are(context, meeting, carrier, carried);
    }
    let [before_carrier, before_carried] =
        [meeting.carrier, meeting.carried].map(|(item, port)| pattern_of(&context.port_before(item, port).kind));
    let before = before_carrier.zip(before_carried).map(|(a, b)| as_they_are(context, meeting, a, b));
    if let Some(before) = before.filter(|before| before.findings.iter().all(|f| f.verdict == Verdict::BoltsUp)) {
        return before;
    }
    match lay(carrier, carried) {
        Some(lay) => {
            let plates = Plates { carrier: &carrier.holes, carried: &carried.holes, lay: &lay };
            match lay.outcome.best().filter(|found| found.fits()) {
                Some(found) => opened_up(context, meeting, &plates, found),
                None => laid(context, meeting, &plates),
            }
        }
        None => meeting.unknown("holes-unknown", Side::Carrier, "bolt").into(),
    }
}

/// The patterns as they are, opened up nowhere.
fn as_they_are(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    let known = context.lay(meeting.carrier, meeting.carried);
    let made = if known.is_none() { lay(carrier, carried) } else { None };
    match known.or(made.as_ref()) {
        Some(lay) => laid(context, meeting, &Plates { carrier: &carrier.holes, carried: &carried.holes, lay }),
        None => meeting.unknown("holes-unknown", Side::Carrier, "bolt").into(),
    }
}

fn laid(context: &Context, meeting: &Meeting, plates: &Plates) -> Mating {
    match &plates.lay.outcome {
        Outcome::Best(found) => weigh(context, meeting, plates, found),
        Outcome::NoPairing => mend(context, meeting, plates, None),
        Outcome::AtMost(margin) if certain_to_miss(meeting, *margin) => mend(context, meeting, plates, None),
        Outcome::AtMost(_) | Outcome::TooMany => too_many(meeting, plates).into(),
        // A pattern that means nothing is not known.
        Outcome::Senseless => meeting.unknown("holes-unknown", Side::Carried, "holes").into(),
    }
}

/// Patterns too large to be compared in time: the eye at the plates has to do it.
fn too_many(meeting: &Meeting, plates: &Plates) -> Finding {
    meeting
        .finding("holes-too-many", Verdict::CheckFirst)
        .with("holes", count(plates.carrier.len().max(plates.carried.len())))
        .with("most", count(MOST_HOLES))
        .check(meeting.compare())
}

/// Whether a lay with this margin, the best there is, misses even if the two least known holes help as much as they can.
fn certain_to_miss(meeting: &Meeting, margin: Length) -> bool {
    Weighed::new(margin, &meeting.greatest_hole_half_ranges()).is_some_and(|most| most.decided == Decided::Misfits)
}

/// Two plates with the lay of one on the other.
pub(super) struct Plates<'a> {
    pub carrier: &'a [Hole],
    pub carried: &'a [Hole],
    pub lay: &'a Lay,
}

impl Plates<'_> {
    /// The bolts that have to go in, as a figure.
    pub fn bolts(&self) -> Value {
        count(self.lay.required)
    }
}

/// A count as a figure.
pub(super) fn count(number: usize) -> Value {
    Value::Count(i64::try_from(number).unwrap_or(i64::MAX))
}

fn weigh(context: &Context, meeting: &Meeting, plates: &Plates, found: &Registration) -> Mating {
    let Some(tightest) = Tightest::of(meeting, found) else {
        return meeting.unknown("holes-unknown", Side::Carried, "holes").into();
    };
    let figures = |finding: Finding| {
        finding
            .with("bolts", plates.bolts())
            .with("margin", Value::Length(tightest.margin))
            .with("worst-case", Value::Length(tightest.weighed.worst_case()))
    };
    let finding = match tightest.decided(meeting, found) {
        Decided::Fits => figures(meeting.finding("holes-meet", Verdict::BoltsUp)),
        Decided::Misfits => return mend(context, meeting, plates, Some((found, tightest.weighed.worst_case()))),
        Decided::Open => {
            let finding = figures(meeting.finding("holes-may-meet", Verdict::CheckFirst));
            let (item, port, dimension) = tightest.loosest(meeting);
            tightest.weighed.open(finding, item, port, &dimension).check(meeting.compare())
        }
    };
    Mating { findings: vec![finding], overlay: Some(overlay(plates, found)) }
}

/// The pair of holes with the least to spare, each hole as uncertain as it is known.
struct Tightest {
    pair: (usize, usize),
    half_ranges: [Length; 2],
    margin: Length,
    weighed: Weighed,
}

impl Tightest {
    fn of(meeting: &Meeting, found: &Registration) -> Option<Self> {
        let mut tightest: Option<(Length, Self)> = None;
        for pair in &found.pairs {
            let half_ranges = meeting.hole_half_ranges((pair.a, pair.b));
            let margin = Length::from_m(pair.margin);
            let weighed = Weighed::new(margin, &half_ranges)?;
            let to_spare = margin - weighed.worst_case();
            if tightest.as_ref().is_none_or(|(least, _)| to_spare < *least) {
                tightest = Some((to_spare, Self { pair: (pair.a, pair.b), half_ranges, margin, weighed }));
            }
        }
        tightest.map(|(_, tightest)| tightest)
    }

    /// Certain to fit if the tightest pair is; certain to miss only if the best margin is short by more than the two least
    /// known holes could give it, since another lay might be the best of the real plates.
    fn decided(&self, meeting: &Meeting, found: &Registration) -> Decided {
        if self.weighed.decided == Decided::Fits {
            return Decided::Fits;
        }
        if certain_to_miss(meeting, Length::from_m(found.margin)) { Decided::Misfits } else { Decided::Open }
    }

    /// The one of the two holes that is known less well, as a check names it.
    fn loosest<'m>(&self, meeting: &'m Meeting) -> (crate::item::ItemRef, &'m str, String) {
        let [carrier, carried] = self.half_ranges;
        let (item, port, hole) = if carrier > carried {
            (meeting.carrier.0, meeting.carrier_port, self.pair.0)
        } else {
            (meeting.carried.0, meeting.carried_port, self.pair.1)
        };
        (item, &port.name, format!("hole-{}-u", hole + 1))
    }
}
