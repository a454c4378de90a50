//! The maker's guide: the sets sold together.

use super::{FrameId, ImplementId, ItemRef, MachineId, SeatId};

/// A column of a guide row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Named<T> {
    /// Any item of the column.
    Any,
    /// The column does not apply (no frame: the implement hangs on the hitch).
    Without,
    /// This item.
    This(T),
}

impl<T: Copy + PartialEq> Named<T> {
    /// Whether the column admits `choice` (`None` = nothing of the kind in the build).
    pub fn admits(self, choice: Option<T>) -> bool {
        match self {
            Self::Any => true,
            Self::Without => choice.is_none(),
            Self::This(item) => choice == Some(item),
        }
    }

    /// The item that the column names, if it names one.
    pub fn item(self) -> Option<T> {
        match self {
            Self::This(item) => Some(item),
            Self::Any | Self::Without => None,
        }
    }

    fn names(self, item: T) -> Mention {
        match self {
            Self::Any => Mention::ByAny,
            Self::This(this) if this == item => Mention::ByName,
            _ => Mention::Not,
        }
    }
}

/// One set of the guide.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct GuideRow {
    /// Machine column.
    pub machine: Named<MachineId>,
    /// Frame column.
    pub frame: Named<FrameId>,
    /// Seat column.
    pub seat: Named<SeatId>,
    /// Implement column.
    pub implement: Named<ImplementId>,
}

/// The guide.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Guide {
    /// Its name.
    pub name: String,
    /// Its date as printed, ISO 8601.
    pub date: String,
    /// The sets.
    pub rows: Vec<GuideRow>,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Mention {
    Not,
    ByAny,
    ByName,
}

impl Guide {
    /// Index of the first row that lists the whole set.
    pub fn set(
        &self,
        machine: Option<MachineId>,
        frame: Option<FrameId>,
        seat: Option<SeatId>,
        implement: Option<ImplementId>,
    ) -> Option<usize> {
        self.rows.iter().position(|row| {
            row.machine.admits(machine)
                && row.frame.admits(frame)
                && row.seat.admits(seat)
                && row.implement.admits(implement)
        })
    }

    /// Index of the first row that lists the two items together: both by name, or one by name
    /// and the other by `any`. Two columns of `any` say nothing about a pair.
    pub fn pair(&self, a: ItemRef, b: ItemRef) -> Option<usize> {
        self.rows.iter().position(|row| row.names_both(a, b))
    }
}

impl GuideRow {
    /// Whether the row lists the two items together: both by name, or one by name and the other
    /// by `any`.
    pub fn names_both(&self, a: ItemRef, b: ItemRef) -> bool {
        let (a, b) = (self.mention(a), self.mention(b));
        a != Mention::Not && b != Mention::Not && (a == Mention::ByName || b == Mention::ByName)
    }

    fn mention(&self, item: ItemRef) -> Mention {
        match item {
            ItemRef::Machine(id) => self.machine.names(id),
            ItemRef::Frame(id) => self.frame.names(id),
            ItemRef::Seat(id) => self.seat.names(id),
            ItemRef::Implement(id) => self.implement.names(id),
            ItemRef::Adapter(_) | ItemRef::Equipment(_) => Mention::Not,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_columns_of_any_list_no_pair_and_one_does() {
        let guide = Guide {
            rows: vec![GuideRow {
                machine: Named::Any,
                frame: Named::This(FrameId(1)),
                seat: Named::Any,
                implement: Named::Without,
            }],
            ..Guide::default()
        };
        assert_eq!(guide.pair(ItemRef::Machine(MachineId(0)), ItemRef::Seat(SeatId(0))), None);
        assert_eq!(guide.pair(ItemRef::Machine(MachineId(0)), ItemRef::Frame(FrameId(1))), Some(0));
        assert_eq!(guide.pair(ItemRef::Frame(FrameId(1)), ItemRef::Implement(ImplementId(0))), None);
        assert_eq!(guide.set(None, Some(FrameId(1)), None, None), Some(0));
        assert_eq!(guide.set(None, Some(FrameId(1)), None, Some(ImplementId(2))), None);
    }
}
