//! Ports: what is not word for word as in the file.

use fitup_core::item as core;
use fitup_core::quantity::Stated;

use super::{Lower, Units};
use crate::wire::port::{BoltPattern, Hole, Port, Pose};

impl Lower for Port {
    type Core = core::Port;

    fn lower(&self, units: Units) -> core::Port {
        let mut port = core::Port {
            name: self.name.lower(units),
            role: self.role.lower(units),
            end: self.end.lower(units),
            pose: self.pose.lower(units),
            parts: self.parts.lower(units),
            serials: self.serials.lower(units).unwrap_or_default(),
            tolerance: self.tolerance.lower(units),
            source: self.source.lower(units),
            kind: self.kind.lower(units),
        };
        // What a file states without a source of its own comes from where the port's lengths do.
        port.spread_source();
        port
    }
}

impl Lower for Pose {
    type Core = core::Pose;

    fn lower(&self, units: Units) -> core::Pose {
        core::Pose { at: self.at.lower(units).into(), faces: self.faces.lower(units), up: self.up.lower(units) }
    }
}

impl Lower for BoltPattern {
    type Core = core::BoltPattern;

    fn lower(&self, units: Units) -> core::BoltPattern {
        core::BoltPattern {
            holes: self.holes.lower(units),
            plate: self.plate.lower(units),
            metal: self.metal.lower(units),
            bolt: self.bolt.lower(units).map(Stated::drawn),
            edge: self.edge.lower(units).map(Stated::drawn),
            pair_width: self.pair_width.lower(units).map(Stated::drawn),
            thread: self.thread.lower(units),
            class: self.class.lower(units),
            torque: self.torque.lower(units),
            required: self.required.lower(units),
            may_flip: self.may_flip.lower(units),
        }
    }
}

impl Lower for Hole {
    type Core = core::Hole;

    fn lower(&self, units: Units) -> core::Hole {
        core::Hole {
            u: Stated::drawn(self.u.lower(units)),
            v: Stated::drawn(self.v.lower(units)),
            diameter: Stated::drawn(self.diameter.lower(units)),
            kind: self.kind.lower(units),
            slot: self.slot.lower(units),
        }
    }
}
