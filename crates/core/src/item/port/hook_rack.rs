//! Hooks on a bar, held by a latch pin.

use super::table::table;
use crate::quantity::{Length, Stated};

/// Hooks on a bar.
#[derive(Debug, Clone, PartialEq)]
pub struct HookRack {
    /// Which half of the joint this is.
    pub side: HookSide,
    /// Diameter of the bar, or opening of the hook.
    pub diameter: Option<Stated<Length>>,
    /// Distance between the two hooks, or length between the bar's ends.
    pub spread: Option<Stated<Length>>,
    /// From the bar's centre down to the latch pin.
    pub drop: Option<Stated<Length>>,
    /// Latch pin, or its bore.
    pub latch: Option<Stated<Length>>,
    /// From the rack's face back to the bar's centre.
    pub setback: Option<Stated<Length>>,
}

impl HookRack {
    /// This half, with nothing stated of it yet.
    pub const fn of(side: HookSide) -> Self {
        Self { side, diameter: None, spread: None, drop: None, latch: None, setback: None }
    }
}

/// Which half of a hook rack a port is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HookSide {
    /// The bar and the latch bore (on the rack).
    Bar,
    /// The hooks and the latch pin (on the implement).
    Hook,
}

table! {
    HookRack, besides [side]
    size DIAMETER "diameter" diameter;
    size SPREAD "spread" spread;
    size DROP "drop" drop;
    size LATCH "latch" latch;
    distance SETBACK "setback" setback;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_half_alone_states_no_length() {
        let rack = HookRack::of(HookSide::Hook);
        assert_eq!(rack.side, HookSide::Hook);
        assert_eq!([rack.diameter, rack.spread, rack.drop, rack.latch, rack.setback], [None; 5]);
    }
}
