//! Joints by the classes of their two ports.

use crate::build::{Build, Linkage};
use crate::finding::Verdict;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::fit::joint;
use crate::item::{End, ItemRef, Role};
use crate::ordered::Map;

use super::ports::PortClasses;
use super::{Choice, with};

/// What joints of two classes of ports come to, as far as it has been asked.
#[derive(Debug, Default)]
pub(super) struct Joints {
    by_role: Map<Role, Vec<Option<Verdict>>>,
}

impl Joints {
    /// The verdict of a joint of a linkage between the items of a choice. The closure is not to
    /// be asked here: it depends on where the ports of both items sit.
    pub fn verdict(
        &mut self,
        desk: &Desk,
        ports: &PortClasses,
        side: &Build,
        linkage: &Linkage,
        joint: usize,
        choice: Choice,
    ) -> Verdict {
        let (role, carrier, carried) = ends(linkage, joint, choice);
        let (carriers, count) = (ports.count(role, End::Carrier), ports.count(role, End::Carried));
        let listed = usize::from(desk.listed_at(role, carrier.0, carried.0).is_some());
        let (a, b) = (ports.of(carrier.0, carrier.1), ports.of(carried.0, carried.1));
        let known = self.by_role.or_insert_with(role, || vec![None; carriers * count * 2]);
        *known[(a * count + b) * 2 + listed].get_or_insert_with(|| judge(desk, side, linkage, joint, choice))
    }
}

/// Role, carrying item and port, carried item and port of a joint.
fn ends(linkage: &Linkage, joint: usize, choice: Choice) -> (Role, (ItemRef, usize), (ItemRef, usize)) {
    let stack = linkage.unplaced();
    let joint = &stack.joints[joint];
    let end = |(at, port): (usize, usize)| (super::item_at(stack.placed[at].item, choice), port);
    (joint.role, end(joint.carrier), end(joint.carried))
}

/// Judges a joint of a linkage between the items of a choice.
pub(super) fn judge(desk: &Desk, side: &Build, linkage: &Linkage, joint: usize, choice: Choice) -> Verdict {
    let build = with(side, choice);
    let context = Context::placed(desk, &build, linkage.stand(desk.catalogue(), &build));
    let findings = joint::judge(&context, &context.stack.joints[joint]).findings;
    findings.iter().map(|finding| finding.verdict).max().unwrap_or_default()
}
