//! From the tree to the wire types, with every fault on the way.
//!
//! A fault ends serde's decoding of a row. So each fault is written down, the value at fault is
//! replaced by one that stands for anything, and the row is decoded again, until it comes through.

mod fault;
mod table;
mod value;

pub use table::decode;
