//! Every human word.
