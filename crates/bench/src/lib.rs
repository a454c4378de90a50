//! Benchmarks and the synthetic catalogue.
