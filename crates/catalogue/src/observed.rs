//! What was observed of a connecting place of an unknown unit, as data.

use fitup_core::build::Measurement;
use fitup_core::item::{ItemRef, MachineId};
use fitup_core::quantity::{Length, Tool};

use crate::build_file::ToolFile;
use crate::decode;
use crate::problem::Problem;
use crate::wire::define::record;

record! {
    /// What is known of the place. Everything may be left out.
    pub struct ObservedFile {
        /// The kind of port, if it is told by looking at it.
        optional kind: Option<String>,
        /// Of hooks and pins, the half that is seen: `bar`, `hook`, `lug`, `clevis`.
        optional half: Option<String>,
        /// What was measured.
        optional measured: Vec<ObservedLength>,
        /// Part numbers on the piece.
        optional numbers: Vec<String>,
        /// How many holes or points there are.
        optional count: Option<u32>,
    }
}

record! {
    /// A dimension that was measured.
    pub struct ObservedLength {
        /// The dimension, as measurements name it.
        required dimension: String,
        /// Its value in millimetres.
        required mm: f64,
        /// The tool; left out = the coarser one.
        optional tool: Option<ToolFile>,
        /// Half range in millimetres.
        optional plus_minus_mm: Option<f64>,
    }
}

impl ObservedFile {
    /// Reads it from JSON.
    ///
    /// # Errors
    /// Everything that is wrong with it.
    pub fn read(text: &str) -> Result<Self, Vec<Problem>> {
        decode::read(text)
    }

    /// What was measured. Which item it is of is what is asked.
    pub fn measurements(&self) -> Vec<Measurement> {
        let of = |one: &ObservedLength| {
            let tool = match one.tool {
                Some(ToolFile::Caliper) => Tool::Caliper,
                Some(ToolFile::Tape) | None => Tool::Tape,
                Some(ToolFile::Photograph) => Tool::Photograph,
            };
            let unknown = ItemRef::Machine(MachineId::at(0));
            Measurement {
                plus_minus: one.plus_minus_mm.map(Length::from_mm),
                ..Measurement::new(unknown, "", one.dimension.trim(), Length::from_mm(one.mm), tool)
            }
        };
        self.measured.iter().map(of).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::problem::Code;

    #[test]
    fn what_was_measured_is_as_good_as_its_tool_unless_it_says_otherwise() {
        let text = r#"{"measured": [{"dimension": "spread", "mm": 460, "tool": "caliper", "plus_minus_mm": 0.3},
            {"dimension": "drop", "mm": 240}], "numbers": ["AX-1"], "count": 4}"#;
        let read = ObservedFile::read(text).expect("it is right");
        let measured = read.measurements();
        assert_eq!((measured[0].half_range(), measured[0].tool), (Length::from_mm(0.3), Tool::Caliper));
        assert_eq!((measured[1].tool, read.count, read.kind), (Tool::Tape, Some(4), None));
    }

    #[test]
    fn what_is_not_known_is_a_problem_with_its_place() {
        let problems = ObservedFile::read(r#"{"measured": [{"dimension": "spread"}], "colour": "red"}"#).unwrap_err();
        let told: Vec<_> = problems.iter().map(|problem| (problem.code, problem.path.as_str())).collect();
        assert!(told.contains(&(Code::MissingField, "measured[0]")), "{told:?}");
        assert!(told.iter().any(|(code, _)| *code == Code::UnknownField), "{told:?}");
    }
}
