//! Rows of the tables: what is not word for word as in the file.

use fitup_core::item as core;
use fitup_core::quantity::Length;

use super::{Lower, Units};
use crate::wire::adapter::Adapter;
use crate::wire::equipment::Equipment;
use crate::wire::machine::{FrontAxle, Machine};
use crate::wire::part::{Part, Serves};
use crate::wire::seat::IndexPoint;

impl Machine {
    /// The core's row, with the fields of every item.
    pub fn lower(&self, body: core::Body, units: Units) -> core::Machine {
        core::Machine {
            body,
            station: self.station.lower(units),
            wheelbase: self.wheelbase.lower(units),
            rear: self.rear.lower(units).unwrap_or_default(),
            front: self.front.lower(units).unwrap_or_default(),
            front_axle: match self.front_axle {
                None => core::FrontAxle::Unknown,
                Some(FrontAxle::Fixed) => core::FrontAxle::Fixed,
                Some(FrontAxle::Oscillating(pivot)) => {
                    core::FrontAxle::Oscillating { pivot_height: pivot.pivot_height.lower(units) }
                }
            },
            centre_of_gravity_height: self.centre_of_gravity_height.lower(units),
            turning_radius: self.turning_radius.lower(units),
            roll_over_bar: self.roll_over_bar.lower(units),
            cab_rear: self.cab_rear.lower(units),
            operator_seat: self.operator_seat.lower(units),
            hydraulics: self.hydraulics.lower(units).unwrap_or_default(),
            fitted: self.fitted.lower(units),
            on: Vec::new(),
        }
    }
}

impl Equipment {
    /// The core's row, with the fields of every item.
    pub fn lower(&self, body: core::Body, units: Units) -> core::Equipment {
        let changes = self.changes.unwrap_or_default();
        core::Equipment {
            body,
            kind: self.kind.clone(),
            machines: self.machines.clone(),
            needs: self.needs.clone(),
            blocks: self.blocks.clone(),
            hides: self.hides.clone(),
            changes: core::Changes {
                rear: changes.rear.lower(units).unwrap_or_default(),
                front: changes.front.lower(units).unwrap_or_default(),
                hydraulics: changes.hydraulics.lower(units).unwrap_or_default(),
                lift: changes.lift.lower(units),
            },
            on: self.hours_on.lower(units),
            off: self.hours_off.lower(units),
        }
    }
}

impl Adapter {
    /// The core's row, with the fields of every item.
    pub fn lower(&self, body: core::Body, units: Units) -> core::Adapter {
        core::Adapter { body, work: self.hours.lower(units), sleeve: self.sleeve.lower(units) }
    }
}

impl Lower for IndexPoint {
    type Core = (Length, Length);

    fn lower(&self, units: Units) -> (Length, Length) {
        (self.x.lower(units), self.z.lower(units))
    }
}

impl Lower for Part {
    type Core = core::Part;

    fn lower(&self, _: Units) -> core::Part {
        core::Part {
            number: self.number.clone(),
            name: self.name.clone(),
            replaced: self
                .replaced
                .as_ref()
                .map(|it| core::Replacement { by: it.by.clone(), both_ways: it.serves == Serves::BothWays }),
        }
    }
}
