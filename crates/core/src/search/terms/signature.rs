//! Signatures: the ports of an item in their order, as far as joining asks.

use std::collections::BTreeSet;

use std::mem::discriminant;

use crate::build::Step;
use crate::fit::desk::Desk;
use crate::item::{End, Role};

use super::classes::Classes;

/// Options whose items have the same ports in the same order, as far as joining asks.
pub(super) fn signatures(desk: &Desk, options: [usize; 4]) -> Classes {
    let mixed = mixed_roles(desk);
    let signature = |step: Step, option: usize| {
        step.item(option).map(|item| {
            let ports = desk.catalogue().body(item).ports.iter();
            ports
                .map(|port| {
                    let kind = mixed.contains(&port.role).then(|| discriminant(&port.kind));
                    (port.role, port.end, kind)
                })
                .collect::<Vec<_>>()
        })
    };
    let known: [Vec<_>; 4] =
        Step::ALL.map(|step| (0..options[step as usize]).map(|option| signature(step, option)).collect());
    Classes::new(options, &BTreeSet::default(), |step, a, b| known[step as usize][a] == known[step as usize][b])
}

/// Roles of which some item carries by ports of more than one kind: only there does a carried
/// port choose by its kind.
fn mixed_roles(desk: &Desk) -> BTreeSet<Role> {
    let mut mixed = BTreeSet::default();
    for item in desk.catalogue().items() {
        let carriers: Vec<_> =
            desk.catalogue().body(item).ports.iter().filter(|port| port.end == End::Carrier).collect();
        for (at, a) in carriers.iter().enumerate() {
            for b in &carriers[at + 1..] {
                if a.role == b.role && discriminant(&a.kind) != discriminant(&b.kind) {
                    mixed.insert(a.role);
                }
            }
        }
    }
    mixed
}
