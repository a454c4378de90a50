//! What is said of a unit in the yard: measured, read off it, looked for.

use crate::item::{ItemRef, PartNumber};
use crate::quantity::{Length, Source, Tool};

/// What the tape or caliper says of the unit in the yard.
#[derive(Debug, Clone, PartialEq)]
pub struct Measurement {
    /// The item.
    pub item: ItemRef,
    /// Its port.
    pub port: String,
    /// The dimension, kebab-case, as the checks name it ("bore", "spread", "hole-1-to-hole-3").
    pub dimension: String,
    /// The value.
    pub value: Length,
    /// The tool.
    pub tool: Tool,
    /// Half range, if it is said to differ from the tool's usual one.
    pub plus_minus: Option<Length>,
    /// The single readings, where it was measured more than once.
    pub readings: Vec<Length>,
    /// Free note.
    pub note: String,
}

impl Measurement {
    /// One reading, as good as its tool usually is.
    pub fn new(
        item: ItemRef,
        port: impl Into<String>,
        dimension: impl Into<String>,
        value: Length,
        tool: Tool,
    ) -> Self {
        let (port, dimension) = (port.into(), dimension.into());
        Self { item, port, dimension, value, tool, plus_minus: None, readings: Vec::new(), note: String::new() }
    }

    /// The same measured more than once: the value is the middle of the readings, so that none is farther from it than need be.
    #[must_use]
    pub fn of_readings(self, readings: Vec<Length>) -> Self {
        let least = readings.iter().copied().reduce(Length::min);
        let most = readings.iter().copied().reduce(Length::max);
        let value = least.zip(most).map_or(self.value, |(least, most)| (least + most) * 0.5);
        Self { value, readings, ..self }
    }

    /// How far it may be off: as it says or as its tool usually is, and no less than the farthest of its readings.
    pub fn half_range(&self) -> Length {
        let said = self.plus_minus.unwrap_or(Source::Measured(self.tool).usual_half_range());
        self.readings.iter().map(|reading| (*reading - self.value).abs()).fold(said, Length::max)
    }
}

/// Part numbers read off the piece that bears a port of the unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NumberRead {
    /// The item.
    pub item: ItemRef,
    /// Its port.
    pub port: String,
    /// The numbers on it, all of them; spaces, hyphens and letter case do not count.
    pub parts: Vec<PartNumber>,
    /// Who read them, in their own words.
    pub by: String,
    /// When, in their own words.
    pub when: String,
}

/// Whether something is there on the unit in the yard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Presence {
    /// Seen.
    Yes,
    /// Looked, not there.
    No,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::MachineId;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn taken(tool: Tool) -> Measurement {
        Measurement::new(ItemRef::Machine(MachineId::at(0)), "plate", "bolt", mm(12.0), tool)
    }

    #[test]
    fn readings_meet_in_their_middle_and_none_is_farther_off_than_it_may_be() {
        let near = taken(Tool::Caliper).of_readings(vec![mm(12.1), mm(12.05)]);
        assert!((near.value - mm(12.075)).abs() < mm(1e-9));
        assert_eq!(near.half_range(), mm(0.1), "the tool is no better than that");
        let worn = taken(Tool::Caliper).of_readings(vec![mm(12.0), mm(12.8), mm(12.3)]);
        assert!((worn.value - mm(12.4)).abs() < mm(1e-9) && (worn.half_range() - mm(0.4)).abs() < mm(1e-9));
        assert_eq!(taken(Tool::Tape).of_readings(Vec::new()), taken(Tool::Tape));
    }

    #[test]
    fn what_is_said_of_the_half_range_stands_over_the_tool() {
        let said = Measurement { plus_minus: Some(mm(0.02)), ..taken(Tool::Tape) };
        assert_eq!((said.half_range(), taken(Tool::Tape).half_range()), (mm(0.02), mm(1.5)));
    }
}
