//! The judgement of a whole build.

use super::answer::{Answer, Joint};
use super::cautions::cautions;
use super::context::Context;
use super::desk::Desk;
use super::footprint::footprint;
use super::loads::loads;
use super::parts::parts_to_buy;
use super::{joint, rule};
use crate::build::{Build, Stack, StackJoint};
use crate::finding::{Check, Finding, Grade, Standing, Subject, Value, Verdict};
use crate::item::{ItemRef, Role};
use crate::order;

/// Judges a build: every joint, every rule, what it measures and what has to be bought.
///
/// Total: any build of any catalogue gives an answer; what is not known is a finding. The same
/// build gives the same answer bit for bit, natively and in wasm.
pub fn judge(desk: &Desk, build: &Build) -> Answer {
    let context = Context::new(desk, build);
    let mut findings = Vec::new();
    let mut joints = Vec::new();
    for stack_joint in &context.stack.joints {
        let mating = joint::judge(&context, stack_joint);
        joints.push(describe(&context, stack_joint, mating.overlay));
        findings.extend(mating.findings);
    }
    unanswered(&context, &mut findings);
    for rule in rule::RULES {
        (rule.judge)(&context, &mut findings);
    }
    let loads = loads(&context).and_then(Result::ok);
    let measured = footprint(&context, loads.as_ref(), false);
    for rule in rule::TRAVEL {
        rule(&context, &measured, &mut findings);
    }
    sort(&mut findings);
    for joint in &mut joints {
        let subject = Subject::Joint(joint.role, joint.carrier.0, joint.carried.0);
        joint.findings = (0..findings.len()).filter(|&i| findings[i].subject == subject).collect();
        joint.verdict = joint.findings.iter().map(|&i| findings[i].verdict).max().unwrap_or_default();
    }
    let verdict = findings.iter().map(|finding| finding.verdict).max().unwrap_or_default();
    let (standing, guide_row) = standing(desk, build);
    Answer {
        verdict,
        standing,
        guide_row,
        complete: build.is_complete(),
        joints,
        footprint: measured,
        bare: footprint(&context, loads.as_ref(), true),
        parts: parts_to_buy(&context, &findings),
        cautions: cautions(desk.catalogue(), build, &findings),
        findings,
        stack: context.stack,
    }
}

/// The verdict of the four steps alone, for searches that visit many builds: trailer and site are questions about
/// the finished machine and mark no option down.
pub fn verdict(desk: &Desk, build: &Build) -> Verdict {
    let context = Context::new(desk, build);
    let mut findings = Vec::new();
    for stack_joint in &context.stack.joints {
        findings.extend(joint::judge(&context, stack_joint).findings);
    }
    unanswered(&context, &mut findings);
    for rule in rule::RULES {
        (rule.judge)(&context, &mut findings);
    }
    findings.iter().map(|finding| finding.verdict).max().unwrap_or_default()
}

fn standing(desk: &Desk, build: &Build) -> (Option<Standing>, Option<usize>) {
    if !build.is_complete() {
        return (None, None);
    }
    let row = desk
        .catalogue()
        .guide
        .as_ref()
        .and_then(|guide| guide.set(build.machine, build.carrying.frame(), build.seating.seat(), build.implement));
    let standing = if row.is_some() { Standing::Listed } else { Standing::OffGuide };
    (Some(standing), row)
}

/// Ports that ask for something the build does not have.
fn unanswered(context: &Context, findings: &mut Vec<Finding>) {
    for open in &context.stack.open {
        let port = context.port(open.item, open.port);
        findings.push(
            Finding::new("nothing-answers", Subject::Item(open.item), unanswered_role(open.role), Grade::Drawing)
                .with("role", Value::Label(role_name(open.role).to_owned()))
                .with("port", Value::Label(port.name.clone()))
                .check(Check::Look { item: open.item, what: port.name.clone() }),
        );
    }
}

const fn unanswered_role(role: Role) -> Verdict {
    match role {
        // Without a case drain, a switch or a coupler the workshop runs a line.
        Role::CaseDrain | Role::Wiring | Role::Pressure | Role::Return => Verdict::BoltsUpWithWork,
        _ => Verdict::WontMount,
    }
}

/// What the ports that nothing answers come to.
pub(super) fn unanswered_verdict(stack: &Stack) -> Verdict {
    stack.open.iter().map(|open| unanswered_role(open.role)).max().unwrap_or_default()
}

/// The role as figures name it; the words translate it.
pub const fn role_name(role: Role) -> &'static str {
    match role {
        Role::AxleAnchor => "axle-anchor",
        Role::FrontAnchor => "front-anchor",
        Role::Rack => "rack",
        Role::Hitch => "hitch",
        Role::SeatDeck => "seat-deck",
        Role::PowerTakeOff => "power-take-off",
        Role::Pressure => "pressure",
        Role::Return => "return",
        Role::CaseDrain => "case-drain",
        Role::Wiring => "wiring",
    }
}

fn sort(findings: &mut [Finding]) {
    order::sort(findings, |a, b| {
        (b.verdict.cmp(&a.verdict)).then_with(|| a.subject.cmp(&b.subject)).then_with(|| a.code.cmp(b.code))
    });
}

fn describe(context: &Context, stack_joint: &StackJoint, overlay: Option<super::Overlay>) -> Joint {
    let end = |(at, port): (usize, usize)| (context.stack.placed[at].item, port);
    let (carrier, carried) = (end(stack_joint.carrier), end(stack_joint.carried));
    let name = |(item, port): (ItemRef, usize)| (item, context.port(item, port).name.clone());
    let parts = |(item, port): (ItemRef, usize)| context.catalogue().body(item).bearing(context.port(item, port));
    let base = context.stack.placed[stack_joint.carrier.0].placement;
    let at = context.port(carrier.0, carrier.1).pose.zip(base).map(|(pose, base)| {
        let point = base.point(pose.at);
        (point.x, point.y, point.z)
    });
    Joint {
        role: stack_joint.role,
        carrier: name(carrier),
        carried: name(carried),
        carrier_parts: parts(carrier),
        carried_parts: parts(carried),
        verdict: Verdict::default(),
        findings: Vec::new(),
        overlay,
        at,
    }
}
