//! The catalogue file: reading, checking, writing.
