//! Bolt patterns: the carried plate laid on the carrier's, bolts through both.

use std::borrow::Cow;

use super::mend::{mend, opened_up};
use super::overlay::overlay;
use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting, bolts, side_plates};
use crate::finding::{Check, Count, Dimension, Finding, Margin, Probability, Verdict};
use crate::findings;
use crate::fit::context::Context;
use crate::fit::desk::plate_pair::{Outcome, PlatePair, compare};
use crate::fit::mating::bolt_pattern::{Lay, MOST_HOLES};
use crate::item::{BoltPattern, DimensionName, End, Hole};
use crate::quantity::Length;

findings! {
    /// As many bolts go in as have to.
    HolesMeet = "holes-meet", Fit { bolts: Count, margin: Margin, worst_case: Length }
    /// Too close to call.
    HolesMayMeet = "holes-may-meet", Fit {
        bolts: Count, margin: Margin, worst_case: Length, probability: Probability, settles: Option<Length>,
    }
    /// Fewer bolts go in than the larger pattern has holes, and nobody says how many have to.
    BoltsUnknown = "bolts-unknown", Fit { bolts: Count, holes: Count }
    /// The patterns are too large to be compared.
    HolesTooMany = "holes-too-many", Fit { holes: Count, most: Count }
    /// Holes or bolt are not stated.
    HolesUnknown = "holes-unknown", Fit { missing: Dimension }
}

/// The holes of both plates against each other, and whether as many bolts go in as have to.
pub(super) fn judge(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    let mut mating = lined_up(context, meeting, carrier, carried);
    if mating.findings.iter().all(|finding| finding.verdict < Verdict::WontMount)
        && let Some(pair) = pair_of(context, meeting, carrier, carried)
    {
        mating.findings.extend(side_plates::judge(meeting, carrier, carried));
        mating.findings.extend(bolts::judge(meeting, [carrier, carried], &pair));
    }
    let holes = [carrier, carried].map(|pattern| pattern.holes.len());
    let is_stated = carrier.required.or(carried.required).is_some();
    let goes_on = mating.findings.iter().all(|finding| finding.verdict < Verdict::CheckFirst);
    if goes_on && !is_stated && holes[0] != holes[1] {
        let fact = BoltsUnknown { bolts: holes[0].min(holes[1]), holes: holes[0].max(holes[1]) };
        let check = Check::Ask { a: meeting.carrier.0, b: meeting.carried.0 };
        mating.findings.push(meeting.finding(fact, Verdict::CheckFirst).check(check));
    }
    mating
}

/// The holes of both plates against each other, with those opened up that are decided to be.
fn lined_up(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    for (side, holes) in [(End::Carrier, carrier), (End::Carried, carried)] {
        if holes.holes.is_empty() {
            return unknown(meeting, side, BoltPattern::HOLES.name()).into();
        }
    }
    let opened = [meeting.carrier, meeting.carried].iter().any(|&(item, port)| context.opened_by(item, port).is_some());
    if !opened {
        return as_they_are(context, meeting, carrier, carried);
    }
    let [before_carrier, before_carried] =
        [meeting.carrier, meeting.carried].map(|(item, port)| context.port_before(item, port).kind.pattern());
    let before = before_carrier.zip(before_carried).map(|(a, b)| as_they_are(context, meeting, a, b));
    if let Some(before) = before.filter(|before| before.findings.iter().all(|f| f.verdict == Verdict::BoltsUp)) {
        return before;
    }
    match compare(carrier, carried) {
        Some(pair) => {
            let plates = Plates { carrier: &carrier.holes, carried: &carried.holes, pair: &pair };
            match pair.outcome.best().filter(|found| found.fits()) {
                Some(found) => opened_up(context, meeting, &plates, found),
                None => laid(context, meeting, &plates),
            }
        }
        None => unknown(meeting, End::Carrier, BoltPattern::BOLT.name()).into(),
    }
}

/// The patterns as they are, opened up nowhere.
fn as_they_are(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    match context.plate_pair(meeting.carrier, meeting.carried) {
        Some(pair) => laid(context, meeting, &Plates { carrier: &carrier.holes, carried: &carried.holes, pair: &pair }),
        None => unknown(meeting, End::Carrier, BoltPattern::BOLT.name()).into(),
    }
}

/// The lay of two patterns as they will be: as the catalogue has them, unless measured or opened up.
pub(super) fn pair_of<'c>(
    context: &'c Context,
    meeting: &Meeting,
    carrier: &BoltPattern,
    carried: &BoltPattern,
) -> Option<Cow<'c, PlatePair>> {
    let opened = [meeting.carrier, meeting.carried].iter().any(|&(item, port)| context.opened_by(item, port).is_some());
    if opened {
        return compare(carrier, carried).map(Cow::Owned);
    }
    context.plate_pair(meeting.carrier, meeting.carried)
}

fn laid(context: &Context, meeting: &Meeting, plates: &Plates) -> Mating {
    match &plates.pair.outcome {
        Outcome::Best(found) => weigh(context, meeting, plates, found),
        Outcome::NoPairing => mend(context, meeting, plates, None),
        Outcome::AtMost(margin) if certain_to_miss(meeting, *margin) => mend(context, meeting, plates, None),
        Outcome::AtMost(_) | Outcome::TooMany => too_many(meeting, plates).into(),
        // A pattern that means nothing is not known.
        Outcome::Senseless => unknown(meeting, End::Carried, BoltPattern::HOLES.name()).into(),
    }
}

fn unknown(meeting: &Meeting, side: End, dimension: DimensionName) -> Finding {
    meeting.unknown(side, dimension, |missing| HolesUnknown { missing })
}

/// Patterns too large to be compared in time: the eye at the plates has to do it.
fn too_many(meeting: &Meeting, plates: &Plates) -> Finding {
    let fact = HolesTooMany { holes: plates.carrier.len().max(plates.carried.len()), most: MOST_HOLES };
    meeting.finding(fact, Verdict::CheckFirst).check(meeting.compare())
}

/// Whether a lay with this margin, the best there is, misses even if the two least known holes help as much as they can.
fn certain_to_miss(meeting: &Meeting, margin: Length) -> bool {
    Weighed::new(margin, &meeting.greatest_hole_half_ranges()).is_some_and(|most| most.decided == Decided::Misfits)
}

/// Two plates with the lay of one on the other.
pub(super) struct Plates<'a> {
    pub carrier: &'a [Hole],
    pub carried: &'a [Hole],
    pub pair: &'a PlatePair,
}

impl Plates<'_> {
    /// The bolts that have to go in.
    pub const fn bolts(&self) -> usize {
        self.pair.required
    }
}

fn weigh(context: &Context, meeting: &Meeting, plates: &Plates, found: &Lay) -> Mating {
    let Some(tightest) = Tightest::of(meeting, found) else {
        return unknown(meeting, End::Carried, BoltPattern::HOLES.name()).into();
    };
    let (bolts, margin, weighed) = (plates.bolts(), tightest.margin, &tightest.weighed);
    let worst_case = weighed.worst_case();
    let finding = match tightest.decided(meeting, found) {
        Decided::Fits => meeting.finding(HolesMeet { bolts, margin, worst_case }, Verdict::BoltsUp),
        Decided::Misfits => return mend(context, meeting, plates, Some((found, worst_case))),
        Decided::Open => {
            let (probability, settles) = (weighed.probability(), weighed.settles());
            let (item, port, dimension) = tightest.loosest(meeting);
            meeting
                .finding(HolesMayMeet { bolts, margin, worst_case, probability, settles }, Verdict::CheckFirst)
                .check(weighed.check(item, port, dimension))
                .check(meeting.compare())
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
    fn of(meeting: &Meeting, found: &Lay) -> Option<Self> {
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
    fn decided(&self, meeting: &Meeting, found: &Lay) -> Decided {
        if self.weighed.decided == Decided::Fits {
            return Decided::Fits;
        }
        if certain_to_miss(meeting, Length::from_m(found.margin)) { Decided::Misfits } else { Decided::Open }
    }

    /// The one of the two holes that is known less well, as a check names it.
    fn loosest<'m>(&self, meeting: &'m Meeting) -> (crate::item::ItemRef, &'m str, DimensionName) {
        let [carrier, carried] = self.half_ranges;
        let (item, port, hole) = if carrier > carried {
            (meeting.carrier.0, meeting.carrier_port, self.pair.0)
        } else {
            (meeting.carried.0, meeting.carried_port, self.pair.1)
        };
        (item, &port.name, BoltPattern::nth(hole, &Hole::U))
    }
}
