//! The table of seat arrangements.

use fitup_core::item as core;

use super::body::item_row;
use super::define::{choice, record, words};
use super::machine::Station;
use super::value::{Hours, Length};

item_row! {
    /// A seat arrangement. Local origin: where its base meets the deck; of a turning seat, the machine's origin.
    Seat => core::Seat {
        /// Hours to put it on; left out = not known.
        optional fitting: Option<Hours>,
        /// Kind.
        required kind: SeatKind,
        /// What it comes with; left out = kit.
        optional supplied_with: SuppliedWith,
        /// Stations it can be used in; left out = not known.
        optional stations: Vec<Station>,
        /// Seat index point over the local origin, facing the implement.
        optional index_point: Option<IndexPoint>,
        /// Radius of the circle it sweeps when it turns.
        optional swivel_radius: Option<Length>,
        /// What it does to the operator's seat.
        required front_seat: FrontSeatEffect,
        /// Least room needed behind the seat index point to the implement's controls.
        optional least_room: Option<Length>,
        /// Farthest the controls may be behind the seat index point.
        optional greatest_reach: Option<Length>,
        /// Whether it has an operator-presence switch; left out = not known.
        optional presence_switch: Option<bool>,
        /// How it gets out of the way of the operator's seat while the machine is driven; left out = it stays as it stands.
        optional moves: SeatMoves,
    }
}

record! {
    /// How a seat gets out of the way.
    #[derive(Copy, Default)]
    pub struct SeatMoves => core::SeatMoves {
        /// Whether its back folds down; shapes of the role `seat_folded` outline it so. Left out = false.
        optional folds: bool,
        /// How far it slides forward, in its own axes; left out = not at all.
        optional slides: Length,
        /// Hours to take it off; left out = not known whether it comes off.
        optional off: Option<Hours>,
    }
}

words! {
    /// The kinds of seat arrangement.
    pub enum SeatKind => core::SeatKind {
        /// The operator's seat turns round.
        Turning "turning",
        /// A second seat stands behind.
        Separate "separate",
        /// The implement brings its own.
        ImplementsOwn "implements_own",
        /// The operator's seat as it is, facing forward.
        Forward "forward",
    }
}

words! {
    /// What a seat arrangement comes with.
    #[derive(Default)]
    pub enum SuppliedWith => core::SuppliedWith {
        /// Bought as a kit.
        #[default]
        Kit "kit",
        /// Comes with the machine.
        Machine "machine",
        /// Comes with the frame.
        Frame "frame",
        /// Comes with the implement.
        Implement "implement",
    }
}

choice! {
    /// What an arrangement does to the operator's own seat.
    #[derive(Copy)]
    pub enum FrontSeatEffect => core::FrontSeatEffect {
        /// Leaves it alone.
        None "none",
        /// It is this seat, turned round.
        Turns "turns",
        /// Its back has to flip forward.
        FlipsForward "flips_forward",
        /// It has to slide forward so far.
        SlidesForward(Length) "slides_forward",
        /// It has to come off.
        ComesOff "comes_off",
    }
}

record! {
    /// A point in the side view.
    #[derive(Copy)]
    pub struct IndexPoint {
        /// Forward.
        required x: Length,
        /// Up.
        required z: Length,
    }
}
