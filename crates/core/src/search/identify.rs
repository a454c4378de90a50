//! Identify: which port of the catalogue an unknown unit's measurements speak of.

use crate::build::Measurement;
use crate::fit::{Desk, dimension_of, dimensions};
use crate::item::{ItemRef, PortKind};
use crate::order;
use crate::quantity::{Length, Source};

/// A port that could be the measured one.
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
}

/// A further measurement that would tell the leading candidates apart.
#[derive(Debug, Clone, PartialEq)]
pub struct TellApart {
    /// The dimension, as measurements name it.
    pub dimension: String,
    /// What the first candidate states.
    pub first: Length,
    /// What the second candidate states.
    pub second: Length,
}

/// What the measurements say.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Identified {
    /// Candidates, likeliest first.
    pub candidates: Vec<Candidate>,
    /// What to measure next, most telling first.
    pub tell_apart: Vec<TellApart>,
}

/// Ranks the catalogue's ports of a kind by how well they explain measurements.
///
/// Each difference between a measured and a stated dimension counts as normal with its standard
/// deviation a third of the two half ranges together (root of the sum of squares), as in every
/// tolerance judgement here. A port that does not state a measured dimension is given the
/// likelihood of a difference at the edge of what is explained, so that silence neither wins nor
/// loses outright. Ports that state none of them are left out.
/// The `item` and `port` of the measurements are not looked at: that is what is asked.
pub fn identify(desk: &Desk, kind: &PortKind, measured: &[Measurement]) -> Identified {
    let mut scored: Vec<(f64, Candidate)> = Vec::new();
    for item in desk.catalogue().items() {
        for port in &desk.catalogue().body(item).ports {
            if std::mem::discriminant(&port.kind) != std::mem::discriminant(kind) {
                continue;
            }
            let mut log = 0.0;
            let mut worst = 0.0_f64;
            let mut compared = 0;
            for measurement in measured.iter().filter(|m| m.value.m().is_finite()) {
                match dimension_of(port, &measurement.dimension) {
                    Some((stated, half_range)) => {
                        let off = off(measurement, stated, half_range);
                        log -= 0.5 * (3.0 * off) * (3.0 * off);
                        worst = worst.max(off);
                        compared += 1;
                    }
                    None => log -= 0.5 * 9.0,
                }
            }
            if compared > 0 {
                scored.push((log, Candidate { item, port: port.name.clone(), likelihood: 0.0, worst, compared }));
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
    let tell_apart = tell_apart(desk, &candidates, measured);
    Identified { candidates, tell_apart }
}

fn off(measurement: &Measurement, stated: Length, half_range: Length) -> f64 {
    let tool = measurement.plus_minus.unwrap_or(Source::Measured(measurement.tool).usual_half_range());
    let both = libm::hypot(tool.m(), half_range.m());
    let difference = (measurement.value - stated).m().abs();
    if both > 0.0 { difference / both } else { difference * f64::MAX }
}

/// Dimensions not yet measured in which the two leading ports differ by more than they may be off.
fn tell_apart(desk: &Desk, candidates: &[Candidate], measured: &[Measurement]) -> Vec<TellApart> {
    let [first, second, ..] = candidates else { return Vec::new() };
    let port = |candidate: &Candidate| {
        desk.catalogue().body(candidate.item).ports.iter().find(|port| port.name == candidate.port)
    };
    let (Some(a), Some(b)) = (port(first), port(second)) else { return Vec::new() };
    let mut telling: Vec<(f64, TellApart)> = dimensions(a)
        .into_iter()
        .filter(|dimension| !measured.iter().any(|m| m.dimension == *dimension))
        .filter_map(|dimension| {
            let ((x, p), (y, q)) = (dimension_of(a, &dimension)?, dimension_of(b, &dimension)?);
            let apart = (x - y).m().abs() / (p + q).m().max(f64::MIN_POSITIVE);
            (apart > 1.0).then_some((apart, TellApart { dimension, first: x, second: y }))
        })
        .collect();
    order::sort(&mut telling, |a, b| b.0.total_cmp(&a.0).then_with(|| a.1.dimension.cmp(&b.1.dimension)));
    telling.into_iter().map(|(_, tell)| tell).collect()
}
