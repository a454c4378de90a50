//! Benchmarks, the synthetic catalogues and the builds that are timed.

mod cases;
mod catalogue_text;
mod pace;
mod yard;

pub use cases::{RAMP, WHEELS, builds, completed, long_underside, ramp_roll_of_a_long_underside};
pub use catalogue_text::catalogue_text;
pub use pace::{Pace, pace};
pub use yard::{SIZES, Size, yard};
