//! The table of implements.

use fitup_core::item as core;

use super::body::{Point, item_row};
use super::define::{record, words};
use super::seat::{IndexPoint, SeatMoves};
use super::value::{Angle, Flow, Hours, Length, Mass, Power, Pressure};

item_row! {
    /// An implement. Local origin: the reference point of its mount, on the carrier's face. Mass and centre of gravity
    /// are in transport.
    Implement => core::Implement {
        /// Hours to put it on; left out = not known.
        optional fitting: Option<Hours>,
        /// Kind.
        required kind: ImplementKind,
        /// How it is carried.
        required mount: Mount,
        /// Digging arm, if it is one and its links are known.
        optional arm: Option<DiggingArm>,
        /// Where the operator's levers are, if it has any.
        optional console: Option<Point>,
        /// Whether it is worked from a seat facing the rear; left out = true for a digging arm, false for others.
        optional worked_from_seat: Option<bool>,
        /// What it asks of the hydraulics. A digging arm, and an auger, cutter or flail without a drive shaft, always has
        /// some: left out, it is asked for. Left out of any other implement = none.
        optional hydraulics: Option<HydraulicNeed>,
        /// Least power at the take-off or engine.
        optional power_least: Option<Power>,
        /// Greatest power it stands.
        optional power_most: Option<Power>,
        /// Whether it brings its own seat, outlined by shapes of the role `seat`; left out = not known.
        optional own_seat: Option<bool>,
        /// Seat index point of its own seat.
        optional own_seat_index: Option<IndexPoint>,
        /// How its own seat gets out of the way; left out = it stays as it stands, and whether it comes off is not known.
        optional own_seat_moves: SeatMoves,
        /// Width over all in transport.
        optional transport_width: Option<Length>,
    }
}

words! {
    /// The kinds of implement.
    pub enum ImplementKind => core::ImplementKind {
        /// Digging arm (backhoe).
        DiggingArm "digging_arm",
        /// Post-hole auger.
        Auger "auger",
        /// Stump cutter.
        StumpCutter "stump_cutter",
        /// Flail mower.
        Flail "flail",
        /// Rotary cutter.
        RotaryCutter "rotary_cutter",
        /// Box blade or grader blade.
        Blade "blade",
        /// Pallet forks.
        Forks "forks",
        /// Ballast block.
        Ballast "ballast",
    }
}

words! {
    /// How an implement is carried.
    pub enum Mount => core::Mount {
        /// On a frame's rack.
        Rack "rack",
        /// On the three-point hitch.
        ThreePoint "three_point",
    }
}

record! {
    /// What an implement asks of the hydraulics.
    #[derive(Copy)]
    pub struct HydraulicNeed => core::HydraulicNeed {
        /// Least flow it works with.
        optional flow_min: Option<Flow>,
        /// Greatest flow it stands.
        optional flow_max: Option<Flow>,
        /// Least pressure it works with.
        optional pressure_min: Option<Pressure>,
        /// Greatest pressure it stands.
        optional pressure_max: Option<Pressure>,
        /// Double-acting outlets it occupies.
        required outlets: u32,
        /// Whether it has to be fed by power-beyond.
        optional power_beyond: Option<bool>,
    }
}

record! {
    /// A digging arm: boom, dipper and bucket on a swing post. u runs outward (to the rear) from the swing centre.
    #[derive(Copy)]
    pub struct DiggingArm => core::DiggingArm {
        /// Swing centre, x in the implement's axes.
        required swing_x: Length,
        /// Boom foot, outward from the swing centre.
        required foot_u: Length,
        /// Boom foot, z in the implement's axes.
        required foot_z: Length,
        /// Boom; its angles are over the horizontal.
        required boom: ArmLink,
        /// Dipper; its angles are against the boom, 0 = straight on, negative = folded down.
        required dipper: ArmLink,
        /// Bucket; its angles are against the dipper.
        required bucket: ArmLink,
        /// Swing to either side.
        required swing: Angle,
        /// Stabilisers.
        optional stabilisers: Option<Stabilisers>,
        /// Load the hydraulics lift at full reach at ground level.
        optional lift_at_full_reach: Option<Mass>,
    }
}

record! {
    /// One link of a digging arm.
    #[derive(Copy)]
    pub struct ArmLink => core::ArmLink {
        /// Pin to pin, or pin to tip.
        required length: Length,
        /// Least angle.
        required least: Angle,
        /// Greatest angle.
        required greatest: Angle,
        /// Angle in transport.
        required transport: Angle,
        /// Mass of the link with its cylinder.
        optional mass: Option<Mass>,
        /// Centre of gravity along the link from its first pin.
        optional centre: Option<Length>,
    }
}

record! {
    /// Stabilisers.
    #[derive(Copy)]
    pub struct Stabilisers => core::Stabilisers {
        /// Centre to centre of the pads, down.
        required spread: Length,
        /// Width over the stabilisers in transport.
        required transport_width: Length,
        /// x of the pads in the implement's axes.
        required x: Length,
    }
}
