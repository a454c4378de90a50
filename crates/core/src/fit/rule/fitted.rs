//! What a frame needs on the machine and what it needs off it.

use super::{Rule, Seen, View};
use crate::finding::{Check, Finding, Grade, Name, Subject, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{EquipmentId, Frame, ItemRef, Machine};

findings! {
    /// Something on the machine has to come off for the frame.
    MustComeOff = "must-come-off", Fit { what: ItemRef, item: ItemRef }
    /// The frame needs something on the machine that is not there and can be put on.
    MustGoOn = "must-go-on", Fit { what: ItemRef, item: ItemRef }
    /// The frame needs something that the catalogue does not have for the machine.
    NothingToPutOn = "nothing-to-put-on", Fit { what: Name, item: ItemRef }
    /// A piece of equipment that is on needs a port that the machine does not have.
    EquipmentLacks = "equipment-lacks", Fit { what: Name, item: ItemRef }
}

/// Things the frame excludes have to come off; things it requires have to go on; what is on needs what carries it.
pub(super) struct FittedOnMachine;

/// What is on the machine as it stands, and what else is for it, each with its kind in the catalogue's words.
#[derive(PartialEq)]
pub struct Fitted<'c> {
    on: Vec<(EquipmentId, &'c str)>,
    off: Vec<(EquipmentId, &'c str)>,
    lacks: Vec<(EquipmentId, &'c [String])>,
}

impl<'c> View<'c, Machine> for Fitted<'c> {
    fn of(desk: &'c Desk, item: ItemRef, machine: &'c Machine) -> Self {
        let catalogue = desk.catalogue();
        let is_on = |id: EquipmentId| machine.on.iter().any(|on| on.id == id);
        let of_machine = match item {
            ItemRef::Machine(id) => catalogue.equipment_for(id).collect(),
            _ => Vec::new(),
        };
        let off = of_machine.into_iter().filter(|&(id, _)| !is_on(id));
        Self {
            on: machine.on.iter().map(|on| (on.id, catalogue.equipment(on.id).kind.as_str())).collect(),
            off: off.map(|(id, piece)| (id, piece.kind.as_str())).collect(),
            lacks: machine.on.iter().map(|on| (on.id, on.lacks.as_slice())).collect(),
        }
    }
}

/// What the frame excludes and requires.
#[derive(PartialEq)]
pub struct Wants<'c> {
    excludes: &'c [String],
    requires: &'c [String],
}

impl<'c> View<'c, Frame> for Wants<'c> {
    fn of(_: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self { excludes: &frame.excludes, requires: &frame.requires }
    }
}

impl Rule for FittedOnMachine {
    type Machine<'c> = Fitted<'c>;
    type Frame<'c> = Wants<'c>;
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(machine) = &seen.machine else { return };
        let Fitted { on, off, lacks } = &machine.sees;
        for &(id, lacks) in lacks {
            let item = ItemRef::Equipment(id);
            for what in lacks {
                let fact = EquipmentLacks { what: what.clone(), item };
                out.push(Finding::of(fact, Subject::Item(item), Verdict::WontMount, Grade::Listed));
            }
        }
        let Some(frame) = seen.frame() else { return };
        let item = frame.item;
        let subject = Subject::Item(item);
        for &(id, _) in on.iter().filter(|(_, kind)| frame.sees.excludes.iter().any(|excluded| excluded == kind)) {
            let fact = MustComeOff { what: ItemRef::Equipment(id), item };
            out.push(Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Listed));
        }
        for required in frame.sees.requires.iter().filter(|required| !on.iter().any(|(_, kind)| kind == *required)) {
            out.push(if let Some(&(id, _)) = off.iter().find(|(_, kind)| kind == required) {
                let fact = MustGoOn { what: ItemRef::Equipment(id), item };
                Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Listed)
            } else {
                let fact = NothingToPutOn { what: required.clone(), item };
                Finding::of(fact, subject, Verdict::CheckFirst, Grade::None)
                    .check(Check::Look { item: machine.item, what: required.clone() })
            });
        }
    }
}
