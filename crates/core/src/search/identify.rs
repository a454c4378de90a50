//! Identify: which ports of the catalogue an unknown unit could be, by what was measured, read and seen of it.

use crate::build::Measurement;
use crate::fit::Desk;
use crate::item::{ItemRef, PartNumber, Port, PortKind, plain_number};
use crate::order;
use crate::quantity::Length;

/// What is known of a connecting place of an unknown unit.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Observed<'a> {
    /// The kind of port, if it is told by looking at it; what it states is not looked at.
    pub kind: Option<&'a PortKind>,
    /// Of hooks and pins, the half that is seen, as [`PortKind::half`] names it.
    pub half: Option<&'a str>,
    /// What was measured; `item` and `port` are not looked at, since that is what is asked.
    pub measured: &'a [Measurement],
    /// Part numbers on the piece; spaces, hyphens and letter case do not count.
    pub numbers: &'a [PartNumber],
    /// How many holes or pinned points there are.
    pub count: Option<usize>,
}

/// A port that could be the one on the unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// The item.
    pub item: ItemRef,
    /// Its port.
    pub port: String,
    /// Its share of the likelihood of all candidates, 0 to 1.
    pub likelihood: f64,
    /// Greatest difference between a measured and a stated dimension, in units of what the two
    /// may be off together; up to 1 is explained by their half ranges.
    pub worst: f64,
    /// How many of the measured dimensions the port states.
    pub compared: usize,
    /// Whether it bears the numbers that were read; `None` if none were read or none are listed.
    pub bears: Option<bool>,
    /// Whether it has as many holes or points; `None` if they were not counted or none are stated.
    pub counts: Option<bool>,
}

/// A further look that would tell the leading candidates apart.
#[derive(Debug, Clone, PartialEq)]
pub enum TellApart {
    /// Measure a dimension.
    Measure {
        /// The dimension, as measurements name it.
        dimension: String,
        /// What the first candidate states.
        first: Length,
        /// What the second candidate states.
        second: Length,
    },
    /// Read the part numbers.
    Read {
        /// What the first candidate bears.
        first: Vec<PartNumber>,
        /// What the second candidate bears.
        second: Vec<PartNumber>,
    },
    /// Count the holes or points.
    Count {
        /// How many the first candidate has.
        first: usize,
        /// How many the second candidate has.
        second: usize,
    },
}

/// What was observed comes to.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Identified {
    /// Candidates, likeliest first.
    pub candidates: Vec<Candidate>,
    /// What to look at next to tell the first two apart, most telling first.
    pub tell_apart: Vec<TellApart>,
}

/// Logarithm of the likelihood of a difference at the edge of what is explained: three standard deviations. What a port does
/// not state counts so, so that silence neither wins nor loses outright.
const SILENT: f64 = -0.5 * 3.0 * 3.0;

/// The same for other part numbers than those read, or another count of holes: six standard deviations. Own choice: a reading
/// may be wrong or a plate changed, though seldom.
const ANOTHER: f64 = -0.5 * 6.0 * 6.0;

/// Ranks the catalogue's ports by how well they explain what was observed.
///
/// Each difference between a measured and a stated dimension counts as normal with its standard
/// deviation a third of the two half ranges together (root of the sum of squares), as in every
/// tolerance judgement here. A port of which nothing that was observed is stated is left out.
pub fn identify(desk: &Desk, observed: &Observed) -> Identified {
    let mut scored: Vec<(f64, Candidate)> = Vec::new();
    for item in desk.catalogue().items() {
        let body = desk.catalogue().body(item);
        for port in &body.ports {
            let is_kind = |kind| std::mem::discriminant(kind) == std::mem::discriminant(&port.kind);
            if observed.kind.is_none_or(is_kind)
                && observed.half.is_none_or(|half| half == port.kind.half())
                && let Some((log, candidate)) = weigh(observed, item, port, &body.bearing(port))
            {
                scored.push((log, candidate));
            }
        }
    }
    order::sort(&mut scored, |a, b| {
        b.0.total_cmp(&a.0).then_with(|| (a.1.item, &a.1.port).cmp(&(b.1.item, &b.1.port)))
    });
    // Likelihoods against the best one, so that far-off measurements do not all vanish.
    let best = scored.first().map_or(0.0, |first| first.0);
    let sum: f64 = scored.iter().map(|(log, _)| libm::exp(log - best)).sum();
    let candidates: Vec<Candidate> = scored
        .into_iter()
        .map(|(log, candidate)| Candidate { likelihood: libm::exp(log - best) / sum, ..candidate })
        .collect();
    let tell_apart = tell_apart(desk, &candidates, observed);
    Identified { candidates, tell_apart }
}

/// How well a port explains it; `None` if it states nothing of it.
fn weigh(observed: &Observed, item: ItemRef, port: &Port, borne: &[PartNumber]) -> Option<(f64, Candidate)> {
    let (mut log, mut worst, mut compared) = (0.0, 0.0_f64, 0);
    for measurement in observed.measured.iter().filter(|m| m.value.m().is_finite()) {
        match port.stated(&measurement.dimension) {
            Some(stated) => {
                let off = off(measurement, stated.value, port.half_range(&stated));
                log -= 0.5 * (3.0 * off) * (3.0 * off);
                worst = worst.max(off);
                compared += 1;
            }
            None => log += SILENT,
        }
    }
    let bears = (!observed.numbers.is_empty() && !borne.is_empty()).then(|| {
        let borne: Vec<String> = borne.iter().map(|number| plain_number(number)).collect();
        observed.numbers.iter().all(|read| borne.contains(&plain_number(read)))
    });
    let counts = observed.count.zip(count(port)).map(|(seen, stated)| seen == stated);
    for (was_seen, is_so) in [(!observed.numbers.is_empty(), bears), (observed.count.is_some(), counts)] {
        log += match is_so {
            _ if !was_seen => 0.0,
            Some(true) => 0.0,
            Some(false) => ANOTHER,
            None => SILENT,
        };
    }
    let says_something = compared > 0 || bears.is_some() || counts.is_some();
    let port = port.name.clone();
    says_something.then_some((log, Candidate { item, port, likelihood: 0.0, worst, compared, bears, counts }))
}

/// How many holes or points a port states.
fn count(port: &Port) -> Option<usize> {
    let count = match &port.kind {
        PortKind::Pins(pins) => pins.points.len(),
        kind => kind.pattern()?.holes.len(),
    };
    (count > 0).then_some(count)
}

fn off(measurement: &Measurement, stated: Length, half_range: Length) -> f64 {
    let both = libm::hypot(measurement.half_range().m(), half_range.m());
    let difference = (measurement.value - stated).m().abs();
    if both > 0.0 { difference / both } else { difference * f64::MAX }
}

/// What was not yet looked at and differs between the two leading ports: their numbers and counts, then dimensions that differ by
/// more than they may be off.
fn tell_apart(desk: &Desk, candidates: &[Candidate], observed: &Observed) -> Vec<TellApart> {
    let [first, second, ..] = candidates else { return Vec::new() };
    let port = |candidate: &Candidate| {
        let body = desk.catalogue().body(candidate.item);
        Some((body, body.ports.iter().find(|port| port.name == candidate.port)?))
    };
    let (Some((of_a, a)), Some((of_b, b))) = (port(first), port(second)) else { return Vec::new() };
    let mut next = Vec::new();
    let (borne, other) = (of_a.bearing(a), of_b.bearing(b));
    if observed.numbers.is_empty() && !borne.is_empty() && !other.is_empty() && borne != other {
        next.push(TellApart::Read { first: borne, second: other });
    }
    if let (None, Some(first), Some(second)) = (observed.count, count(a), count(b))
        && first != second
    {
        next.push(TellApart::Count { first, second });
    }
    let mut telling: Vec<(f64, TellApart)> = a
        .measurable()
        .into_iter()
        .filter(|name| !observed.measured.iter().any(|m| m.dimension == *name))
        .filter_map(|dimension| {
            let (x, y) = (a.stated(&dimension)?, b.stated(&dimension)?);
            let both = a.half_range(&x) + b.half_range(&y);
            let apart = (x.value - y.value).m().abs() / both.m().max(f64::MIN_POSITIVE);
            let tell = TellApart::Measure { dimension, first: x.value, second: y.value };
            (apart > 1.0).then_some((apart, tell))
        })
        .collect();
    order::sort(&mut telling, |a, b| b.0.total_cmp(&a.0));
    next.extend(telling.into_iter().map(|(_, tell)| tell));
    next
}
