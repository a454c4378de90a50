//! Places in the catalogue's tables. A build refers to items by these; files and links refer to
//! them by the id strings of the rows.

macro_rules! ids {
    ($( $(#[$doc:meta])* $name:ident; )+) => { $(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(pub u32);

        impl $name {
            /// The row's index in its table.
            pub const fn index(self) -> usize { self.0 as usize }

            /// The id of the row at `index`.
            pub fn at(index: usize) -> Self {
                Self(u32::try_from(index).expect("tables are far below 2^32 rows"))
            }
        }
    )+ };
}

ids! {
    /// A row of the table of machines.
    MachineId;
    /// A row of the table of mounting frames.
    FrameId;
    /// A row of the table of seat arrangements.
    SeatId;
    /// A row of the table of implements.
    ImplementId;
    /// A row of the table of adapters.
    AdapterId;
    /// A row of the table of equipment.
    EquipmentId;
    /// A row of the table of trailers.
    TrailerId;
    /// A row of the table of sites.
    SiteId;
}

/// Any item that a stack can be made of, or that a machine can have on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ItemRef {
    /// A machine.
    Machine(MachineId),
    /// A mounting frame.
    Frame(FrameId),
    /// A seat arrangement.
    Seat(SeatId),
    /// An implement.
    Implement(ImplementId),
    /// An adapter.
    Adapter(AdapterId),
    /// A piece of equipment: it stands with the machine that it is on, as one.
    Equipment(EquipmentId),
}

impl ItemRef {
    /// What kind of item it is, kebab-case, as messages and pictures name it.
    pub const fn kind(self) -> &'static str {
        match self {
            Self::Machine(_) => "machine",
            Self::Frame(_) => "frame",
            Self::Seat(_) => "seat",
            Self::Implement(_) => "implement",
            Self::Adapter(_) => "adapter",
            Self::Equipment(_) => "equipment",
        }
    }
}
