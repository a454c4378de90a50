//! A small invented yard for tests, to turn one thing of at a time: a machine, a frame, a seat and two implements that bolt
//! up by their dimensions alone, and the adapters that go with them. Nothing is listed and nothing is missing.

mod adapter;
mod finding;
mod frame;
mod implement;
mod machine;
mod port;
mod seat;
mod yard;

pub use finding::finding;
pub use port::{SQUARE, block, coupler, drawn, hitch, hole, lead, mm, pins, plate, point, port, rack};
pub use yard::Yard;

use fitup_core::item::{AdapterId, FrameId, ImplementId, ItemRef, MachineId, SeatId};

pub const MACHINE: ItemRef = ItemRef::Machine(MachineId(0));
pub const OTHER_MACHINE: ItemRef = ItemRef::Machine(MachineId(1));
pub const FRAME: ItemRef = ItemRef::Frame(FrameId(0));
pub const OTHER_FRAME: ItemRef = ItemRef::Frame(FrameId(1));
pub const SEAT: ItemRef = ItemRef::Seat(SeatId(0));
pub const ARM: ItemRef = ItemRef::Implement(ImplementId(0));
pub const FLAIL: ItemRef = ItemRef::Implement(ImplementId(1));
pub const SPACER: AdapterId = AdapterId(0);
pub const SLEEVE: AdapterId = AdapterId(1);
