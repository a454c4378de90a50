//! Readings that are asked about before they are taken.

use super::measuring::stated_of;
use crate::build::{Build, Measurement};
use crate::fit::{Desk, stack};
use crate::item::{ItemRef, span_of};
use crate::quantity::Length;

/// What speaks against a reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Doubt {
    /// The reading.
    pub reading: Length,
    /// What is stated instead.
    pub stated: Length,
    /// Of which item: the unit's own, or the one that it meets.
    pub of: ItemRef,
}

/// Share of what is stated that a reading may be away from it before it is asked about. Own choice: wear and tolerances come to
/// less, a slip of the finger and inches for millimetres come to more. A greater one lets misreadings pass, a smaller one asks
/// of parts that differ from series to series.
const FAR: f64 = 0.2;

/// How often the two half ranges together a reading may be away, where that is more. Own choice.
const OFTEN: f64 = 3.0;

/// What speaks against a measurement: its first reading that is far from what the drawing says of the unit; where that says
/// nothing, from what is stated of the piece that it meets.
pub fn doubt(desk: &Desk, build: &Build, measured: &Measurement) -> Option<Doubt> {
    let desk = desk.standing(&build.side);
    let own = stated_of(desk, measured.item, &measured.port, &measured.dimension).map(|stated| (measured.item, stated));
    let (of, (stated, half)) = own.or_else(|| of_partner(desk, build, measured))?;
    let readings =
        if measured.readings.is_empty() { std::slice::from_ref(&measured.value) } else { &measured.readings };
    let off = measured.plus_minus.unwrap_or_default() + half;
    let most = (stated.abs() * FAR).max(off * OFTEN);
    readings.iter().find(|&&reading| (reading - stated).abs() > most).map(|&reading| Doubt { reading, stated, of })
}

/// What the port that meets this one states of the dimension; holes are numbered on each side by themselves.
fn of_partner(desk: &Desk, build: &Build, measured: &Measurement) -> Option<(ItemRef, (Length, Length))> {
    let name = &measured.dimension;
    if name.starts_with("hole-") || name.starts_with("point-") || span_of(name).is_some() {
        return None;
    }
    let (catalogue, stack) = (desk.catalogue(), stack(desk, build));
    let end = |(at, port): (usize, usize)| {
        let item = stack.placed[at].item;
        (item, &catalogue.body(item).ports[port].name)
    };
    stack.joints.iter().find_map(|joint| {
        let ends = [end(joint.carrier), end(joint.carried)];
        let at = ends.iter().position(|(item, port)| *item == measured.item && **port == measured.port)?;
        let (item, port) = ends[1 - at];
        Some((item, stated_of(desk, item, port, name)?))
    })
}
