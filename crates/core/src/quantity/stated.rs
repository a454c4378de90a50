//! A value with the way it is known.

use super::Length;

/// The tool a value was taken with in the yard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Tool {
    /// A vernier or digital caliper.
    Caliper,
    /// A tape or folding rule.
    Tape,
    /// A photograph with a sheet of known size in it.
    Photograph,
}

/// Where a stated value comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Source {
    /// The maker's literature states it.
    Listed,
    /// Read from a drawing.
    #[default]
    Drawing,
    /// Measured on a unit.
    Measured(Tool),
}

impl Source {
    /// Half range of a length known this way when nothing better is said.
    ///
    /// Caliper ±0.1 mm and tape ±1.5 mm: common practice, no source. A photograph ±3 mm: own choice, since what is taken from
    /// one states its own (`dimension::photo_spans`). Drawing and literature
    /// ±0.2 mm: common practice for drilled steel plate, no source. Larger values turn more
    /// joints from *bolts up* into *check first*.
    pub const fn usual_half_range(self) -> Length {
        match self {
            Self::Listed | Self::Drawing => Length::from_mm(0.2),
            Self::Measured(Tool::Caliper) => Length::from_mm(0.1),
            Self::Measured(Tool::Tape) => Length::from_mm(1.5),
            Self::Measured(Tool::Photograph) => Length::from_mm(3.0),
        }
    }
}

/// A value, how far it may be off either way, and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Stated<T> {
    /// The value.
    pub value: T,
    /// Half range, when the row states one.
    pub plus_minus: Option<T>,
    /// Where the value comes from.
    pub source: Source,
}

impl<T> Stated<T> {
    /// A value read from a drawing, with nothing said of its tolerance.
    pub const fn drawn(value: T) -> Self {
        Self { value, plus_minus: None, source: Source::Drawing }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_caliper_is_finer_than_a_drawing_and_a_tape_is_coarser() {
        let of = |source: Source| source.usual_half_range();
        assert!(of(Source::Measured(Tool::Caliper)) < of(Source::Drawing));
        assert!(of(Source::Drawing) < of(Source::Measured(Tool::Tape)));
        assert_eq!(of(Source::Listed), of(Source::Drawing));
        assert_eq!(Stated::drawn(7).plus_minus, None, "nothing is said of its tolerance");
    }
}
