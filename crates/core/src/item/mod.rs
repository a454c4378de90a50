//! What the dealer's catalogue says: machines, what can be on them, frames, seats, implements, adapters, trailers,
//! sites, the parts they are made of, and the maker's guide. Data only, no judgement.

mod adapter;
mod body;
mod catalogue;
mod equipment;
mod flatten;
mod frame;
mod guide;
mod id;
mod implement;
mod machine;
mod outline;
mod part;
mod port;
mod seat;
mod site;
mod standing;
mod trailer;

pub use adapter::{Adapter, Sleeve};
pub use body::{Body, Point3, Serials, Stock, bears_joint};
pub use catalogue::{Catalogue, CatalogueName};
pub use equipment::{AxleChange, Changes, Equipment, HydraulicChange, On};
pub use flatten::{FLATTENING, Run, flatten};
pub use frame::Frame;
pub use guide::{Guide, GuideRow, Named};
pub use id::{AdapterId, EquipmentId, FrameId, ImplementId, ItemRef, MachineId, SeatId, SiteId, TrailerId};
pub use implement::{ArmLink, DiggingArm, HydraulicNeed, Implement, ImplementKind, Mount, Stabilisers};
pub use machine::{Axle, FrontAxle, HydraulicSupply, Machine, OperatorSeat, RollOverBar, Station};
pub use outline::{Carrier, PathCommand, Shape, ShapeRole, View};
pub use part::{Part, PartNumber, PartsList, PartsListRow, Replacement, plain_number};
pub use port::Refused;
pub use port::span_of;
pub use port::{
    BoltPattern, Coupler, CouplerGender, Dimension, DimensionName, Electric, End, Hole, HoleKind, HookRack, HookSide,
    Line, Metal, PinForm, PinPoint, Pins, Place, Port, PortKind, Pose, PowerTakeOff, PtoRotation, Role, SeatBase, Slot,
    ThreePoint, Towards, dimension_names,
};
pub use seat::{FrontSeatEffect, Seat, SeatKind, SeatMoves, SeatState, SuppliedWith};
pub use site::Site;
pub use standing::Switched;
pub use trailer::{RampSize, Trailer};
