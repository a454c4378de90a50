//! The way to a place in the file, written out only when something is wrong there.

use std::fmt;

/// A place: a step from the one above it.
#[derive(Debug, Clone, Copy)]
pub struct At<'a> {
    above: Option<&'a At<'a>>,
    step: Place<'a>,
}

#[derive(Debug, Clone, Copy)]
enum Place<'a> {
    Top,
    Field(&'a str),
    Index(usize),
}

impl<'a> At<'a> {
    /// The file itself.
    pub const TOP: At<'static> = At { above: None, step: Place::Top };

    /// A field of the file.
    pub const fn top(field: &'a str) -> Self {
        Self { above: None, step: Place::Field(field) }
    }

    /// A field of the record here.
    #[must_use]
    pub const fn field(&'a self, field: &'a str) -> Self {
        Self { above: Some(self), step: Place::Field(field) }
    }

    /// The name of the last field on the way here.
    pub fn last(&self) -> &'a str {
        match (self.step, self.above) {
            (Place::Field(field), _) => field,
            (_, Some(above)) => above.last(),
            (_, None) => "",
        }
    }

    /// An element of the list here.
    #[must_use]
    pub const fn index(&'a self, index: usize) -> Self {
        Self { above: Some(self), step: Place::Index(index) }
    }
}

impl fmt::Display for At<'_> {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        if let Some(above) = self.above {
            above.fmt(f)?;
        }
        match (self.step, self.above.map(|above| above.step)) {
            (Place::Top, _) => Ok(()),
            (Place::Index(index), _) => write!(f, "[{index}]"),
            (Place::Field(field), None | Some(Place::Top)) => f.write_str(field),
            (Place::Field(field), Some(_)) => write!(f, ".{field}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_is_written_as_the_way_to_it() {
        let table = At::top("machines");
        let row = table.index(3);
        assert_eq!(row.field("ports").to_string(), "machines[3].ports");
        assert_eq!(At::TOP.to_string(), "");
        assert_eq!(At::TOP.field("units").field("length").to_string(), "units.length");
    }
}
