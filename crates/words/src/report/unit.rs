//! What is said of the units in the yard, as plain data.

use std::collections::BTreeMap;

use fitup_core::build::{Presence, Side};
use fitup_core::item::Catalogue;
use fitup_core::quantity::Length;
use serde::Serialize;

use super::figures::tidy;
use super::finding::{ReadReport, tool_name};
use super::id;

/// What is said of the units.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct UnitReport {
    /// What was measured.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub measured: Vec<MeasuredReport>,
    /// Part numbers that were read.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub numbers_read: Vec<ReadReport>,
    /// What was looked for.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub looked: Vec<LookedReport>,
    /// Serial numbers by item.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub serials: BTreeMap<String, u64>,
}

impl UnitReport {
    /// Whether nothing is said.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// A measurement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MeasuredReport {
    /// The item.
    pub item: String,
    /// Its port.
    pub port: String,
    /// The dimension.
    pub dimension: String,
    /// The value.
    pub mm: Option<f64>,
    /// How far it may be off: as was said, as the tool usually is, or as the readings are apart.
    pub plus_minus_mm: Option<f64>,
    /// The tool.
    pub tool: &'static str,
    /// The single readings, where there are several.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub readings_mm: Vec<Option<f64>>,
    /// Free note.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// Something that was looked for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LookedReport {
    /// The item.
    pub item: String,
    /// What was looked for.
    pub what: String,
    /// Whether it is there.
    pub there: bool,
}

pub(super) fn report(catalogue: &Catalogue, side: &Side) -> UnitReport {
    let mm = |length: Length| tidy(length.mm());
    let measured = side.measured.iter().map(|it| MeasuredReport {
        item: id(catalogue, it.item),
        port: it.port.clone(),
        dimension: it.dimension.clone(),
        mm: mm(it.value),
        plus_minus_mm: mm(it.half_range()),
        tool: tool_name(it.tool),
        readings_mm: it.readings.iter().map(|&reading| mm(reading)).collect(),
        note: it.note.clone(),
    });
    let read = side.read.iter().map(|it| ReadReport {
        item: id(catalogue, it.item),
        port: it.port.clone(),
        parts: it.parts.clone(),
        by: it.by.clone(),
        when: it.when.clone(),
    });
    let looked = side.looked.iter().map(|((item, what), seen)| LookedReport {
        item: id(catalogue, *item),
        what: what.clone(),
        there: *seen == Presence::Yes,
    });
    UnitReport {
        measured: measured.collect(),
        numbers_read: read.collect(),
        looked: looked.collect(),
        serials: side.serials.iter().map(|(&item, &number)| (id(catalogue, item), number)).collect(),
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::build::{Measurement, NumberRead};
    use fitup_core::quantity::Tool;
    use fitup_yard::{FRAME, MACHINE, Yard};

    use super::*;

    #[test]
    fn everything_said_of_a_unit_is_told_by_ids_and_nothing_said_is_nothing_told() {
        let yard = Yard::new();
        assert!(report(&yard.catalogue, &Side::default()).is_empty());
        let mut side = Side::default();
        let readings = [40.0, 40.6].map(Length::from_mm).to_vec();
        let bar = Measurement::new(FRAME, "rack", "diameter", Length::ZERO, Tool::Caliper);
        side.measured.push(bar.of_readings(readings));
        side.read.push(NumberRead {
            item: FRAME,
            port: "rack".to_owned(),
            parts: vec!["AX-1104".to_owned()],
            by: "J.".to_owned(),
            when: "Monday".to_owned(),
        });
        side.looked.insert((MACHINE, "axle plate/hole-1".to_owned()), Presence::No);
        side.serials.insert(MACHINE, 120);
        let told = report(&yard.catalogue, &side);
        assert_eq!((told.measured[0].mm, told.measured[0].plus_minus_mm), (Some(40.3), Some(0.3)));
        assert_eq!(told.numbers_read[0].parts, ["AX-1104"]);
        assert!(!told.looked[0].there && told.serials.values().eq([&120]));
    }
}
