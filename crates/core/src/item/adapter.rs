//! Adapters: what goes between two ports.

use super::Body;
use crate::quantity::{Length, Work};

/// An adapter. Its ports of end *carried* go to the carrier, those of end *carrier* take the
/// next item; the pose between them is in its local axes.
#[derive(Debug, Clone, PartialEq)]
pub struct Adapter {
    /// What every item has.
    pub body: Body,
    /// Work it takes to fit.
    pub work: Work,
    /// Bores it lines: a sleeve for a pin joint rather than a piece between two faces.
    pub sleeve: Option<Sleeve>,
}

/// A sleeve that lines a bore so that a thinner pin fits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sleeve {
    /// Outer diameter.
    pub outer: Length,
    /// Inner diameter.
    pub inner: Length,
    /// How many come in the set.
    pub count: u32,
}
