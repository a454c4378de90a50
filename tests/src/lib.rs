//! End-to-end and published-value tests, and what they stand on.

pub mod answers;
#[cfg(feature = "browser")]
pub mod browser;
pub mod published;
pub mod stories;
