//! Compatibility and dimension core: pure functions over plain data.
