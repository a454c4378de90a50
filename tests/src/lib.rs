//! End-to-end and published-value tests.
