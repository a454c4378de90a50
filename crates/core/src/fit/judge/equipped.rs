//! What comes off the machine and what goes on it, whether that is decided or only found to be needed.

use std::collections::BTreeSet;

use crate::finding::{Fact, Finding};
use crate::fit::context::Context;
use crate::fit::rule::{EquipmentInTheWay, MustComeOff, MustGoOn};
use crate::item::{EquipmentId, ItemRef, Machine};

/// Equipment that changes its place.
pub(super) struct Equipped {
    /// It comes off.
    pub off: BTreeSet<EquipmentId>,
    /// It goes on.
    pub on: BTreeSet<EquipmentId>,
}

impl Equipped {
    /// What a build decides on, and what its findings ask for.
    pub fn of(context: &Context, machine: &Machine, findings: &[Finding]) -> Self {
        let catalogue = context.catalogue();
        let is_sold_with = |id: EquipmentId| machine.fitted.contains(&catalogue.equipment(id).body.id);
        let is_for = |id: EquipmentId| catalogue.equipment(id).machines.contains(&machine.body.id);
        let (mut off, mut on) = (BTreeSet::new(), BTreeSet::new());
        for (id, is_on) in context.build.side.switched() {
            match (is_sold_with(id), is_on) {
                (true, false) => off.insert(id),
                (false, true) if is_for(id) => on.insert(id),
                _ => continue,
            };
        }
        for finding in findings {
            let in_the_way = || EquipmentInTheWay::read(finding).map(|fact| fact.what);
            let comes_off = MustComeOff::read(finding).map(|fact| fact.what).or_else(in_the_way);
            if let Some(ItemRef::Equipment(id)) = comes_off {
                off.insert(id);
            }
            if let Some(ItemRef::Equipment(id)) = MustGoOn::read(finding).map(|fact| fact.what) {
                on.insert(id);
            }
        }
        Self { off, on }
    }
}
