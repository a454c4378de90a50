//! Typed quantities: a length cannot be added to a mass. The only conversion factors of the
//! project stand in this folder.
//!
//! Every type holds one `f64` in the SI unit named in its first line. Each has a `…Unit` enum
//! with symbol and factor, so that a file or a reader can choose another unit.

mod angle;
mod decimal;
mod flow;
mod force;
mod length;
mod macros;
mod mass;
mod money;
mod power;
mod pressure;
mod stated;
mod torque;
mod work;
mod written;

pub use angle::{Angle, AngleUnit};
pub use decimal::decimal;
pub use flow::{Flow, FlowUnit};
pub use force::{Force, ForceUnit, STANDARD_GRAVITY};
pub use length::{Length, LengthUnit};
pub use mass::{Mass, MassUnit};
pub use money::Money;
pub use power::{Power, PowerUnit};
pub use pressure::{Pressure, PressureUnit};
pub use stated::{Source, Stated, Tool};
pub use torque::{Torque, TorqueUnit};
pub use work::{Work, WorkUnit};
pub use written::{fixed, places, shortest};
