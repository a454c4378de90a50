//! Fit: joint by joint and rule by rule, one file each; `judge` brings them together.

mod answer;
mod codes;
pub mod mating;

pub use answer::{Answer, ComeBy, EndAngle, Footprint, Joint, Overlay, OverlayHole, PartsLine, PartsToBuy};
pub use codes::{CODES, Code, MISSING};
