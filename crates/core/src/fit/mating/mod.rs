//! Whether two ports mate by their dimensions: plain numbers in, margins out.
//!
//! Knows holes, pins, hooks and the standards' tables, but no machine and no catalogue. Everything is in metres and radians.
//! A margin is a signed length: what is left over before the parts no longer go together.

pub mod bolt_pattern;
pub mod closure;
pub mod tolerance;
