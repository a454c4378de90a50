//! Benchmarks and the synthetic catalogue.

mod catalogue_text;

pub use catalogue_text::catalogue_text;
