//! Joints by the classes of their two ports.

use std::collections::BTreeMap;

use crate::build::{Assembly, Stack, StackJoint};
use crate::finding::Verdict;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::fit::joint;
use crate::item::{End, ItemRef, Role};

use super::ports::PortClasses;
use super::{Choice, Given, with};

/// What joints of two classes of ports come to, as far as it has been asked.
#[derive(Debug, Default)]
pub(super) struct Joints {
    by_role: BTreeMap<Role, Vec<Option<Verdict>>>,
    closures: BTreeMap<Closure, Verdict>,
}

/// What a closure depends on: of the ports at the axle, if there is such a joint, and at the front the class and the place of
/// the carrying and of the carried one; and whether the two items are listed together.
type Closure = (Option<[[usize; 2]; 2]>, [[usize; 2]; 2], bool);

impl Joints {
    /// The verdict of a joint of an assembly between the items of a choice.
    pub fn verdict(
        &mut self,
        desk: &Desk,
        ports: &PortClasses,
        given: &Given,
        assembly: &Assembly,
        joint: usize,
        choice: Choice,
    ) -> Verdict {
        let (role, carrier, carried) = ends(assembly, joint, choice);
        if role == Role::FrontAnchor {
            return self.closure(desk, ports, given, assembly, joint, choice);
        }
        let (carriers, count) = (ports.count(role, End::Carrier), ports.count(role, End::Carried));
        let listed = usize::from(desk.listed_at(role, carrier.0, carried.0).is_some());
        let (a, b) = (ports.of(carrier.0, carrier.1), ports.of(carried.0, carried.1));
        let known = self.by_role.entry(role).or_insert_with(|| vec![None; carriers * count * 2]);
        *known[(a * count + b) * 2 + listed].get_or_insert_with(|| judge(desk, given, assembly, joint, choice))
    }

    /// The verdict of a closure, which depends on where the ports of both items sit, too.
    fn closure(
        &mut self,
        desk: &Desk,
        ports: &PortClasses,
        given: &Given,
        assembly: &Assembly,
        joint: usize,
        choice: Choice,
    ) -> Verdict {
        let Stack { joints, placed, .. } = assembly.unplaced();
        let items = |joint: &StackJoint| [joint.carrier.0, joint.carried.0].map(|at| placed[at].item);
        let of_axle = |axle: &StackJoint| axle.role == Role::AxleAnchor && items(axle) == items(&joints[joint]);
        let of = |(item, port)| [ports.of(item, port), ports.place_of(item, port)];
        // Without an axle anchor only the front anchor's own holes have to meet.
        let axle = joints.iter().position(of_axle).map(|axle| {
            let (_, carrier, carried) = ends(assembly, axle, choice);
            [of(carrier), of(carried)]
        });
        let (role, carrier, carried) = ends(assembly, joint, choice);
        let key = (axle, [of(carrier), of(carried)], desk.listed_at(role, carrier.0, carried.0).is_some());
        *self.closures.entry(key).or_insert_with(|| judge(desk, given, assembly, joint, choice))
    }
}

/// Role, carrying item and port, carried item and port of a joint.
fn ends(assembly: &Assembly, joint: usize, choice: Choice) -> (Role, (ItemRef, usize), (ItemRef, usize)) {
    let stack = assembly.unplaced();
    let joint = &stack.joints[joint];
    let end = |(at, port): (usize, usize)| (super::item_at(stack.placed[at].item, choice), port);
    (joint.role, end(joint.carrier), end(joint.carried))
}

/// Judges a joint of an assembly between the items of a choice.
pub(super) fn judge(desk: &Desk, given: &Given, assembly: &Assembly, joint: usize, choice: Choice) -> Verdict {
    let build = with(given, choice);
    let mut context = Context::placed(desk, &build, &given.units, assembly.stand(&build, &given.units.at(desk)));
    context.verdict_alone = true;
    let findings = joint::judge(&context, &context.stack.joints[joint]).findings;
    findings.iter().map(|finding| finding.verdict).max().unwrap_or_default()
}
