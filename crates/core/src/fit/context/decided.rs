//! Drilling and opening up that the user has decided on, and the workshop time they take.
//!
//! A decision never makes a verdict better than *bolts up with work*: the holes are still to be made. What it changes is that
//! the joint is judged with the holes made. Their workshop time counts among the parts to buy either way.

use std::collections::BTreeMap;

use crate::build::{Build, Change};
use crate::fit::mating::bolt_pattern::GREATEST_OPENING;
use crate::item::{Body, BoltPattern, Catalogue, HoleKind, ItemRef, Port};
use crate::quantity::{Length, Work};

/// Workshop time to mark, drill and deburr one hole in the plate of a frame or deck: a quarter of an hour. Common practice,
/// no source.
pub const DRILLING: Work = Work::from_hours(0.25);

/// Workshop time to open up one hole: a tenth of an hour. Common practice, no source.
pub const OPENING: Work = Work::from_hours(0.1);

/// Why a decided drilling or opening cannot be done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NotPossible {
    /// The item has no port of that name.
    NoPort,
    /// The port has no holes.
    NoHoles,
    /// More than a hole may be opened up, or not a size at all.
    TooMuch,
}

/// The port of an item that a decision names: its index, or why there is nothing to do it to.
pub(crate) fn port_in(body: &Body, name: &str) -> Result<usize, NotPossible> {
    let ports = &body.ports;
    let index = ports.iter().position(|port| port.name == name).ok_or(NotPossible::NoPort)?;
    match ports[index].kind.pattern() {
        Some(pattern) if !pattern.holes.is_empty() => Ok(index),
        _ => Err(NotPossible::NoHoles),
    }
}

/// Whether holes may be opened up by this much.
pub(crate) fn may_open(by: Length) -> Result<(), NotPossible> {
    if by > Length::ZERO && by.m() <= GREATEST_OPENING { Ok(()) } else { Err(NotPossible::TooMuch) }
}

/// How much the holes of each port are opened up; of several decisions for a port the last counts.
pub(crate) fn openings(catalogue: &Catalogue, build: &Build) -> BTreeMap<(ItemRef, usize), Length> {
    let items = build.items();
    let mut openings = BTreeMap::new();
    for change in &build.side.changes {
        if let Change::OpenUp { item, port, by } = change
            && items.contains(item)
            && may_open(*by).is_ok()
            && let Ok(index) = port_in(catalogue.body(*item), port)
        {
            openings.insert((*item, index), *by);
        }
    }
    openings
}

/// The port with its clearance holes opened up.
pub(crate) fn opened(port: &Port, by: Length) -> Port {
    let mut port = port.clone();
    if let Some(pattern) = port.kind.pattern_mut() {
        for hole in pattern.holes.iter_mut().filter(|hole| hole.kind == HoleKind::Plain) {
            hole.diameter.value += by;
        }
    }
    port
}

/// Workshop time to open up the clearance holes of a pattern.
pub(crate) fn opening_work(pattern: &BoltPattern) -> Work {
    let holes = pattern.holes.iter().filter(|hole| hole.kind == HoleKind::Plain).count();
    times(OPENING, holes)
}

/// Workshop time for so many pieces of work.
#[allow(clippy::cast_precision_loss, reason = "counts of holes are far below 2^52")]
pub(crate) fn times(each: Work, count: usize) -> Work {
    each * count as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Hole;

    #[test]
    fn a_hole_is_opened_up_by_more_than_nothing_and_by_no_more_than_it_bears() {
        for (by, possible) in [(0.0, false), (-0.1, false), (1e-9, true), (GREATEST_OPENING, true), (1.001e-3, false)] {
            assert_eq!(may_open(Length::from_m(by)).is_ok(), possible, "{by}");
        }
        assert_eq!(may_open(Length::from_m(f64::NAN)), Err(NotPossible::TooMuch));
    }

    #[test]
    fn only_clearance_holes_take_time_to_open_up() {
        let hole = |kind| Hole { kind, ..Hole::drawn(Length::ZERO, Length::ZERO, Length::from_mm(12.0)) };
        let holes = [HoleKind::Plain, HoleKind::Tapped, HoleKind::Plain].map(hole).to_vec();
        let work = opening_work(&BoltPattern { holes, ..BoltPattern::default() });
        assert!((work.hours() - 0.2).abs() < 1e-12);
        assert!((times(DRILLING, 4).hours() - 1.0).abs() < 1e-12);
    }
}
